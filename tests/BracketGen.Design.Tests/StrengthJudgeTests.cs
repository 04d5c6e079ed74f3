using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Strength.Model;
using BracketGen.Strength.Parts;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests;

/// <summary>The judge of strength says what the whole study says, and each of its bounds is one.</summary>
public sealed class StrengthJudgeTests
{
    // So many candidates of a job, evenly over all that can be cut. Twice as many were judged once, and no verdict differed.
    private static readonly int Few = LongRun.Of(60);

    [Theory]
    [MemberData(nameof(Examples.Names), MemberType = typeof(Examples))]
    public void Every_candidate_is_judged_as_the_whole_study_does_and_no_bound_is_crossed(string name)
    {
        var job = Examples.Read(name).OpeningCounterClockwise();
        var pool = CandidateSearch.All(job).Where(CandidateSearch.Promising).ToArray();
        pool = [.. Enumerable.Range(0, Few).Select(i => pool[(int)((long)i * pool.Length / Few)])];
        var judge = new StrengthJudge(job, StrengthDetail.Usual, FrequencyRule.Separation);
        var findings = new StrengthFinding[pool.Length];
        Parallel.For(0, pool.Length, i =>
        {
            var candidate = pool[i];
            var whole = StrengthStudy.Of(job, candidate.Travel, candidate.Placement, candidate.Bracket, StrengthDetail.Usual);
            findings[i] = judge.Judge(candidate.StopOf(job), candidate.Bracket);
            SameVerdict(whole, findings[i]);
            BoundsHold(job, candidate, whole);
        });

        // The bounds take a bracket as held on one face.
        if (job.Body.Mount.Second is not null)
        {
            Assert.DoesNotContain(findings, f => f.Means == StrengthMeans.Bound);
            return;
        }

        // It is worth having: bounds alone reject some, and fewer than a third need the whole report.
        Assert.Contains(findings, f => f.Means == StrengthMeans.Bound);
        Assert.InRange(findings.Count(f => f.Means == StrengthMeans.Full), 0, pool.Length / 3);
    }

    private static void SameVerdict(StrengthReport whole, StrengthFinding finding)
    {
        Assert.Equal(whole.Checks.All(CandidateSearch.IsGoodEnough), finding.IsStrong);
        if (finding.Report is { } report)
        {
            Assert.Equal(whole.Checks.AsEnumerable(), report.Checks);
            Assert.Equal(whole.Frequencies.AsEnumerable(), report.Frequencies);
            Assert.Equal(whole.Modes[^1].Shape.AsEnumerable(), report.Modes[^1].Shape);
            Assert.Equal(whole.Stamped.Response.Solution.Stresses.AsEnumerable(), report.Stamped.Response.Solution.Stresses);
            Assert.Equal(
                (whole.GivePerTension, whole.Opening.Give, whole.Opening.LargestStress, whole.Stamped.Tension, whole.Stamped.LargestStress, whole.LimitingFootForce),
                (report.GivePerTension, report.Opening.Give, report.Opening.LargestStress, report.Stamped.Tension, report.Stamped.LargestStress, report.LimitingFootForce));
        }

        if (finding.Failed is { } failed)
        {
            var found = whole.Checks.Single(c => c.Id == failed.Id);
            Assert.True(found.Fails && failed.Fails && double.IsFinite(failed.Value), failed.Code);
            Assert.True(found.Margin <= failed.Margin + 1e-9 * Math.Abs(failed.Limit), $"{failed.Code}: {found.Value} is better than the bound {failed.Value}");
        }
    }

    private static void BoundsHold(Job job, Candidate candidate, StrengthReport whole)
    {
        var tension = new StopTension(StopMechanism.Of(job, candidate.Travel, candidate.Placement));
        var part = BracketModel.Of(candidate.Bracket, tension.Stop.EndIn(candidate.Bracket.Stock.Thickness), whole.Metal);
        var bounds = StrengthBounds.Of(candidate.Bracket, part);

        // Without the margins: on these meshes the bounds hold as they are.
        Assert.InRange(bounds.StressAtLeast(tension.UnitForce), 0, whole.Stamped.LargestStress / whole.Stamped.Tension);
        Assert.InRange(bounds.StressAtLeast(tension.UnitForceAtLargest), 0, whole.Opening.LargestStress / whole.Opening.Tension);
        Assert.InRange(bounds.GiveAtLeast(tension.UnitForce), 0, whole.GivePerTension);
        Assert.True(bounds.FrequencyAtMost(part.SeatBody) >= whole.Frequencies[0]);
        var spread = tension.SpreadAtLeast(candidate.Bracket);
        Assert.True(tension.ProofAtLeast(whole.GivePerTension, spread) <= (1 + 1e-12) * whole.Stamped.Tension);
        Assert.True(tension.ProofAtLeast(2 * whole.GivePerTension, spread) <= tension.ProofAtLeast(whole.GivePerTension, spread));
        Assert.True(tension.ProofAtLeast(double.PositiveInfinity, spread) >= tension.Largest);
        Assert.Equal(whole.Opening.Tension, tension.Largest, 1e-12 * tension.Largest);
    }

    [Fact]
    public void Bounds_of_a_cantilever_strip_are_those_of_beam_theory()
    {
        // A strip 20 wide and 3 thick, washer at one end, force at 90: free from 20 to the seat's rim at 84. Beam theory with the plate's stiffness D b for E I
        // (Timoshenko and Woinowsky-Krieger, article 2: bending to a cylinder). With the curvature up to the seat's rim only: ∫ s² ds from 6 to 70.
        const double b = 20, t = 3, e = 210000, nu = 0.3, far = 70, near = 6;
        var bounds = Strip(b, t, new(e, nu, 0));
        var stiffness = e * t * t * t / 12 / (1 - nu * nu) * b;
        var closed = (far * far * far - near * near * near) / (3 * stiffness);
        Vector3 out_ = new(0, 0, 1), along = new(1, 0, 0), side = new(0, 1, 0);
        Assert.InRange(bounds.GiveAtLeast(out_), 0.985 * closed, closed);
        Assert.Equal((far - near) * (1 - nu * nu) / (e * b * t), bounds.GiveAtLeast(along), 1e-4 * bounds.GiveAtLeast(along));

        // Root stress 6 F L/(b t²), times √3/2 because its partner along the root is not known; a pull F/(b t); in the plane the plastic modulus t b²/4.
        var root = Math.Sqrt(3) / 2 * 6 * far / (b * t * t);
        Assert.Equal(root, bounds.StressAtLeast(out_), 1e-4 * root);
        Assert.Equal(Math.Sqrt(3) / 2 / (b * t), bounds.StressAtLeast(along), 1e-12);
        Assert.Equal(Math.Sqrt(3) / 2 * far / (t * b * b / 4), bounds.StressAtLeast(side), 1e-4 * bounds.StressAtLeast(side));
        Assert.Equal(root + Math.Sqrt(3) / 2 / (b * t), bounds.StressAtLeast(out_ + along), 1e-4 * root);

        // A mass on a light spring: ω² = 1/(m give).
        const double mass = 1e-4;
        var tip = new SeatBody(mass, 0, 0, 0);
        var frequency = Math.Sqrt(1 / (mass * closed)) / (2 * Math.PI);
        Assert.InRange(bounds.FrequencyAtMost(tip), frequency, 1.01 * frequency);

        // With its own mass: the static shape gives 33/140 of it at the tip (Young and Budynas, Roark's Formulas, table of natural frequencies: cantilever with end mass, 3 E I/((M + 0.24 m) L³)).
        const double density = 7.85e-9, length = far;
        var heavy = Strip(b, t, new(e, nu, density)).FrequencyAtMost(tip);
        var roark = Math.Sqrt(3 * stiffness / ((mass + 33.0 / 140 * density * b * t * length) * length * length * length)) / (2 * Math.PI);
        Assert.InRange(heavy, roark, 1.03 * roark);
        Assert.True(heavy < bounds.FrequencyAtMost(tip));

        // A body whose centre is off the sheet and that has inertia turns with the tip too: its square over the shape's slope there, 3/(2 L) of the deflection (a tip load, Timoshenko).
        var (out0, inertia) = (12.0, 5e-3);
        var slope = 3.0 / 2 / length;
        var turning = Math.Sqrt(3 * stiffness / ((mass + 33.0 / 140 * density * b * t * length + slope * slope * (mass * out0 * out0 + inertia)) * length * length * length)) / (2 * Math.PI);
        Assert.InRange(Strip(b, t, new(e, nu, density)).FrequencyAtMost(new(mass, out0, 1, inertia)), turning, 1.03 * turning);

        // Two of the three motions of a flat strip bend nothing. Askew in space they are round-off, and must not make a low frequency.
        foreach (var turn in new[] { 0.3, 1.1, 2.7 })
        {
            Vector3 z = new Vector3(Math.Sin(turn), 0.4, Math.Cos(turn)).Unit, x = z.Cross(new(0.2, 1, 0.1)).Unit;
            Assert.Equal(heavy, Strip(b, t, new(e, nu, density), Frame.FromZX(new(7, -3, 11), z, x)).FrequencyAtMost(tip), 1e-6 * heavy);
        }
    }

    [Fact]
    public void A_bend_turns_the_moment_with_the_sheet()
    {
        // A strip bent up by a right angle: pulled along the mount flange, the bend and the flange before it carry the force times the height of the seat over the middle surface (statics).
        const double b = 20, t = 3, radius = 3, allowance = 6;
        var bend = new Bend { From = 0, To = 1, Start = new(60, b), End = new(60, 0), Turn = Angle.Right, InsideRadius = radius, Allowance = allowance, Rule = new Din6935Rule() };
        var flat = new FlatPattern { Blank = new(Contour.Polygon([new(0, 0), new(110, 0), new(110, b), new(0, b)]), []), Thickness = t, Bends = [bend] };
        var folded = new FoldedSheet(flat, Frame.Identity);
        var seat = folded.Fold(new(90, b / 2), t / 2).Vector;
        var height = seat.Z - t / 2;
        var cuts = StraightCuts.Of(folded, [new(new(10, b / 2), 10)], new(new(90, b / 2), 6), 1);
        var before = cuts.Where(c => c.Top.Z > 0.999 && c.Centre.X < 59).ToArray();
        Assert.NotEmpty(before);
        Assert.All(before, c => Assert.Equal(height, Math.Abs(c.OutOfPlane(seat, new(1, 0, 0))), 1e-9));
        Assert.All(before, c => Assert.Equal(1, Math.Abs(c.Across(new(1, 0, 0))), 1e-9));
        Assert.All(cuts, c => Assert.Equal(b, c.Metal, 1e-9));
        Assert.Equal(Math.PI / 2 * (radius + t / 2), cuts.Where(c => Math.Abs(c.Top.Z) is > 0.01 and < 0.99).Sum(c => c.Width), 1e-9);
    }

    [Fact]
    public void Sheet_under_a_washer_and_skew_bends_are_not_cut()
    {
        // The washer reaches as far as the seat: no line keeps clear of both.
        var flat = new FlatPattern { Blank = new(Contour.Polygon([new(0, 0), new(40, 0), new(40, 30), new(0, 30)]), []), Thickness = 2, Bends = [] };
        Assert.Empty(StraightCuts.Of(new(flat, Frame.Identity), [new(new(10, 15), 12)], new(new(30, 15), 9), 0));
    }

    [Fact]
    public void Quantile_of_a_sum_of_readings()
    {
        // One reading: 98 % of its ±. Two alike make a triangle, P(sum > q) = (2 - q)²/8; three (3 - q)³/48 near the end (Irwin and Hall, 1927; from memory). A reading without ± adds nothing.
        Assert.Equal(0.98 * 3, PullSpread.Quantile([3, 0], 0.99), 1e-12);
        Assert.Equal(2 - Math.Sqrt(0.08), PullSpread.Quantile([1, 1], 0.99), 1e-9);
        Assert.Equal(3 - Math.Cbrt(0.48), PullSpread.Quantile([1, 1, 1], 0.99), 1e-9);
        Assert.Equal(0, PullSpread.Quantile([0, 0], 0.99));
        Assert.True(PullSpread.Quantile([1, 0.4, 0.3], 0.99) > PullSpread.Quantile([1, 0.4], 0.99));
    }

    private static StrengthBounds Strip(double width, double thickness, SheetMaterial material, Frame? at = null)
    {
        var flat = new FlatPattern
        {
            Blank = new(Contour.Polygon([new(0, 0), new(100, 0), new(100, width), new(0, width)]), []),
            Thickness = thickness,
            Bends = [],
        };
        var folded = new FoldedSheet(flat, at ?? Frame.Identity);
        Disc washer = new(new(10, width / 2), 10), seat = new(new(90, width / 2), 6);
        return new(StraightCuts.Of(folded, [washer], seat, 0), folded.Fold(new(seat.Centre), thickness / 2).Vector, folded.TopAt(new(seat.Centre)), thickness, material);
    }
}
