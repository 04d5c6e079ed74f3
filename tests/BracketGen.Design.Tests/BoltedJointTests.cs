using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Cutting;
using BracketGen.Strength.Life;

namespace BracketGen.Design.Tests;

/// <summary>The screws of a whole bracket, and how long it lasts.</summary>
public sealed class BoltedJointTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");
    private static readonly Solution Answer = Designer.Solve(Plover, SearchEffort.Whole);

    private static StrengthReport Report(Job job) => StrengthStudy.Of(job, Answer.Travel, Answer.Placement!, Answer.Bracket!, StrengthDetail.Usual);

    private static Check Of(StrengthReport report, CheckId id) => report.Checks.Single(c => c.Id == id);

    [Fact]
    public void Screws_hold_what_statics_asks_of_them()
    {
        // From the force and the place of the seat alone, without a finite element: pulls and tilting moments are in balance with it, and the force along the face is shared out as on any group of
        // screws (Shigley, bolted joints loaded in shear): F/n and M r/Σr².
        var report = Answer.Strength!;
        var (face, bracket, force) = (Plover.Body.Mount.Plane, Answer.Bracket!, report.Stamped.Response.Force);
        Vector3 At(FlatPoint p) => bracket.Folded.Fold(p, bracket.Stock.Thickness / 2).Vector;
        Vector3[] centres = [.. bracket.Holes.Where(h => h.Thread is not null).Select(h => face.FootOf(At(h.Centre)))];
        var middle = (centres[0] + centres[1]) / 2;
        var moment = (At(bracket.Stop.Centre) - middle).Cross(force);
        var inFace = force - force.Dot(face.Normal) * face.Normal;
        var squares = centres.Sum(c => (c - middle).Dot(c - middle));
        Assert.Equal(force.Dot(face.Normal), report.Joints.Sum(j => j.Stamped.Pull), 1e-6 * force.Length);
        for (var i = 0; i < 2; i++)
        {
            var share = inFace / 2 + moment.Dot(face.Normal) / squares * face.Normal.Cross(centres[i] - middle);
            Assert.Equal(share.Length, report.Joints[i].Stamped.Across, 1e-5 * force.Length);
            Assert.Equal(0, report.Joints[i].Stamped.Twist);
        }

        // What tilts the whole bracket is taken by both washers and by the difference of their pulls over their distance; magnitudes can only add up to more.
        var tilt = moment - moment.Dot(face.Normal) * face.Normal;
        var couple = report.Joints.Select((j, i) => j.Stamped.Pull * (centres[i] - middle).Length).Sum(Math.Abs);
        Assert.True(tilt.Length <= report.Joints.Sum(j => j.Stamped.Tilt) + couple + 1e-6 * tilt.Length);
    }

    [Fact]
    public void Loads_grow_with_the_tension_and_with_what_shakes()
    {
        var report = Answer.Strength!;
        var joint = report.Joints[1];
        Assert.Equal(joint.Stamped.Across / report.Stamped.Tension, joint.Opening.Across / report.Opening.Tension, 1e-9);

        // All of it at the stop: two screws hold no less than half of what 20 g makes of the mass, across and off the face together.
        var swinging = (Answer.Bracket!.Mass + report.End.Mass) * BoltedJoint.AssumedShaking * 9806.65;
        Assert.True(report.Joints.Sum(j => j.Shaken.Pull + j.Shaken.Across) >= swinging);
    }

    [Fact]
    public void What_nobody_measured_leaves_it_not_known()
    {
        var mount = Plover.Body.Mount;
        var unmeasured = Report(Plover with { Body = Plover.Body with { Mount = mount with { Flatness = null, Holes = [.. mount.Holes.Select(h => h with { ThreadDepth = null })] } } });
        Assert.Equal(CheckState.NotKnown, Of(unmeasured, CheckId.ThreadDepth).State);
        var endurance = Of(unmeasured, CheckId.Endurance);
        Assert.True(endurance.Unfavourable < endurance.Value);

        // A flat face costs nothing, a rough one much, and measured is measured.
        StrengthReport Flat(double flatness) => Report(Plover with { Body = Plover.Body with { Mount = mount with { Flatness = flatness } } });
        Assert.Null(Of(Flat(0), CheckId.Endurance).Unfavourable);
        Assert.True(Flat(0.1).EnduranceFactor < Flat(0).EnduranceFactor);
        Assert.Equal(endurance.Unfavourable!.Value, Flat(MountFace.FlatnessAtWorst).EnduranceFactor, 1e-4);
        Assert.True(Of(Flat(0.5), CheckId.Endurance).Fails);
    }

    [Fact]
    public void Heat_is_counted_as_far_as_it_is_known()
    {
        StrengthReport At(double? temperature) => Report(Plover with { Life = Plover.Life with { Temperature = temperature } });
        var (cold, warm, hot, beyond) = (At(20), At(null), At(200), At(400));
        Assert.Null(Of(cold, CheckId.StampedYield).Unfavourable);
        Assert.Equal(cold.YieldFactor, warm.YieldFactor);

        // Carbon steel keeps its strength to 100 °C (EN 1993-1-2, table 3.1); at 200 °C 0.9 of its modulus is left.
        Assert.Equal(cold.YieldFactor, Of(warm, CheckId.StampedYield).Unfavourable!.Value, 1e-9);
        Assert.Equal(cold.Opening.Give / 0.9, hot.Opening.Give, 1e-4 * cold.Opening.Give);
        Assert.Equal(Math.Sqrt(0.9) * cold.Frequencies[0], hot.Frequencies[0], 0.02);
        Assert.True(hot.YieldFactor < cold.YieldFactor);
        Assert.All([CheckId.StampedYield, CheckId.Endurance, CheckId.StopGive, CheckId.Resonance], id => Assert.NotEqual(CheckState.Passes, Of(beyond, id).State));
    }

    [Fact]
    public void Cut_edges_and_shaking_shorten_the_life()
    {
        var report = Answer.Strength!;
        StrengthReport With(CuttingProcess process) => Report(Plover with { Shop = Plover.Shop with { Process = process } });
        Assert.True(With(CuttingProcess.Plasma).EnduranceFactor <= report.EnduranceFactor);
        Assert.True(report.EnduranceFactor <= With(CuttingProcess.WaterJet).EnduranceFactor);
        Assert.InRange(report.EnduranceFactor, 0, StrengthStudy.EnduranceFactor(report.Opening.LargestStress, report.Metal.Line.Amplitude(Plover.Life.Openings), report.Metal.Yield));

        // The same place, as one would by hand: (1 - constant/yield) / (amplitude/permitted + amplitude/yield).
        var life = report.Life;
        Assert.Equal((1 - life.Constant / report.Metal.Yield) / (life.Openings / life.Permitted + life.Openings / report.Metal.Yield), life.Factor, 1e-3);

        var stresses = report.Opening.Response.Solution.Stresses;
        LifeFinding Shaken(double times) => LifeFinding.Of(
            report.Flat, report.Flat.OnEdge(), stresses, 3e6, report.Metal, [], new([.. stresses.Select(s => new Strength.Analysis.NodeStress(times * s.Top, times * s.Bottom))], 1e9));
        Assert.True(Shaken(4).Factor < Shaken(0).Factor);

        // Steel, by hand with Soderberg's line: an opening that shakes swings farther, or the pedal is held open and shakes about the whole stress.
        foreach (var times in (double[])[0.1, 0.5, 3])
        {
            var found = Shaken(times);
            double opening = 2 * found.Openings, yield = report.Metal.Yield;
            var expected = Math.Min(
                1 / ((0.5 + times) * opening / found.Permitted + opening / 2 / yield),
                1 / (times * opening / found.Permitted + opening / yield));
            Assert.Equal(expected, found.Factor, 1e-4 * expected);
        }

        Assert.True(Shaken(4).Factor < Shaken(0.1).Factor);
        Assert.True(Shaken(0.1).Factor < Shaken(0).Factor);
        Assert.Equal(Shaken(0).Factor, LifeFinding.Of(report.Flat, report.Flat.OnEdge(), stresses, 3e6, report.Metal, [], null).Factor);
    }

    [Fact]
    public void Metals_are_told_apart_by_weight_and_stiffness()
    {
        var families = Plover.Shop.Stock.Select(s => (s.Material.Designation, StrengthMetal.FamilyOf(s.Material))).Distinct().ToDictionary();
        Assert.Equal(MetalFamily.CarbonSteel, families["S235JR"]);
        Assert.Equal(MetalFamily.CarbonSteel, families["DC01"]);
        Assert.Equal(MetalFamily.Aluminium, families["EN AW-5754 H22"]);
        Assert.Equal(MetalFamily.StainlessSteel, families["1.4301"]);
        Assert.Equal(MetalFamily.Other, StrengthMetal.FamilyOf(Plover.Shop.Stock[0].Material with { Density = 8.9e-9, Modulus = 120_000 }));
    }
}
