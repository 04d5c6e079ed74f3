using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Design.Tests;

/// <summary>A job with one constraint less, a limit relaxed, or more to make it from: the answer is never worse. A job turned: the answer is the same.</summary>
public class RelaxedJobTests
{
    public static TheoryData<string> Names => Examples.Names;

    // Coarse, so that it is quick: the order of the answers must hold whatever the mesh.
    private static readonly SearchEffort Coarse = new(new StrengthDetail(10, 4, 2));

    /// <summary>Ways to relax a job; those that do not apply leave it as it is.</summary>
    private static readonly (string Name, Func<Job, Job> Relax)[] Ways =
    [
        ("first keep-out taken away", j => j.Body.KeepOuts.IsEmpty ? j : j with { Body = j.Body with { KeepOuts = j.Body.KeepOuts.RemoveAt(0) } }),
        ("all keep-outs taken away", j => j with { Body = j.Body with { KeepOuts = [] } }),
        ("less wrap", j => With(j, p => p with { MinWrap = 0.4 * p.MinWrap })),
        ("a little less wrap", j => With(j, p => p with { MinWrap = p.MinWrap - Angle.FromDegrees(0.7) })),
        ("less clearance of the fitting", j => With(j, p => p with { FittingClearance = 0.5 * p.FittingClearance })),
        ("less clearance of what moves", j => With(j, p => p with { SweepClearance = 0.5 * p.SweepClearance })),
        ("less clearance of the outer", j => With(j, p => p with { OuterClearance = 0.5 * p.OuterClearance })),
        ("less clearance of keep-outs", j => With(j, p => p with { KeepOutClearance = 0.25 * p.KeepOutClearance })),
        ("more of the adjuster", j => With(j, p => p with { AdjusterReserve = 0.2 })),
        ("thinner sheet allowed", j => With(j, p => p with { MinThickness = 1 })),
        ("thicker sheet allowed", j => With(j, p => p with { MaxThickness = 8 })),
        ("all materials allowed", j => With(j, p => p with { Materials = [] })),
        ("less yield factor", j => With(j, p => p with { MinYieldFactor = 1 })),
        ("less endurance factor", j => With(j, p => p with { MinEnduranceFactor = 1.2 })),
        ("less frequency ratio", j => With(j, p => p with { MinFrequencyRatio = 1.1 })),
        ("more give allowed", j => With(j, p => p with { MaxGive = 1.5 * p.MaxGive })),
        ("less over-travel needed", j => With(j, p => p with { MinOverTravel = 0.5 * p.MinOverTravel })),
        ("one sheet more", j => j with { Shop = j.Shop with { Stock = j.Shop.Stock.Add(new(j.Shop.Stock[0].Material, 3.5)) } }),
        ("one die more", j => j with { Shop = j.Shop with { Dies = j.Shop.Dies.Add(new(28, 4.5)) } }),
        ("longer adjuster", j => j.Vehicle.Cable.OuterEnd is PlainFerrule f
            ? j with { Vehicle = j.Vehicle with { Cable = j.Vehicle.Cable with { OuterEnd = f with { Range = 2.3 * f.Range } } } } : j),
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void Shipped_jobs_never_get_worse(string name)
    {
        var job = Examples.Read(name);
        var before = Answer(job, Coarse);
        foreach (var (way, relax) in Ways)
        {
            IsNoWorse(before, Answer(relax(job), Coarse), $"{name}, {way}");
        }
    }

    [Fact]
    public void Random_jobs_never_get_worse()
    {
        // Few jobs need more ways each, or by chance none of them makes an answer cheaper.
        var ways = LongRun.IsOn ? 2 : 4;
        var changed = 0;
        Gen.Select(RandomJobs.Job, Gen.Int[0, Ways.Length - 1].Array[ways]).Check(LongRun.Of(40), drawn =>
        {
            var (job, picked) = drawn;
            var before = Answer(job, SearchEffort.WithoutStrength);
            foreach (var way in picked)
            {
                var after = Answer(Ways[way].Relax(job), SearchEffort.WithoutStrength);
                IsNoWorse(before, after, Ways[way].Name);
                changed += after.Cost < before.Cost ? 1 : 0;
            }
        });
        Assert.True(changed > LongRun.AtLeast(2), $"Only {changed} answers became cheaper: nothing was relaxed.");
    }

    // Quarter turns about the throttle shaft: boxes keep their axes.
    [Fact]
    public void Turning_the_whole_job_by_quarter_turns_changes_nothing() =>
        TurningChangesNothing(RandomJobs.Job, Gen.Int[1, 3].Select(quarters => quarters * Angle.Right), 1);

    // By any angle a box stands tilted.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Turning_a_job_by_any_angle_changes_nothing(uint stream) =>
        TurningChangesNothing(stream == 1 ? WithoutBoxes : RandomJobs.Job, Gen.Int[1, 359_999].Select(thousandths => Angle.FromDegrees(thousandths / 1000.0)), stream);

    // Its cheapest bracket stands where the wire ends exactly at the end of the groove, and fails for that; brackets farther from the end pass.
    [Fact]
    public void A_job_whose_cheapest_bracket_stands_at_the_end_of_the_groove_stays_the_same_turned() => Gen
        .Select(WithoutBoxes, Gen.Double[0, 360].Select(Angle.FromDegrees))
        .CheckOne("1EJE_ze_I6F1", drawn => Assert.True(IsTheSameTurned(drawn.Item1, drawn.Item2)));

    private static readonly Gen<Job> WithoutBoxes = RandomJobs.Job.Select(j => j with
    {
        Body = j.Body with
        {
            KeepOuts = [.. j.Body.KeepOuts.Where(k => k is not KeepOutBox)],
            SpringRooms = [.. j.Body.SpringRooms.Where(k => k is not KeepOutBox)],
        },
    });

    private static void TurningChangesNothing(Gen<Job> jobs, Gen<Angle> turns, uint stream)
    {
        var compared = 0;
        Gen.Select(jobs, turns).Check(LongRun.Of(30), drawn => compared += IsTheSameTurned(drawn.Item1, drawn.Item2) ? 1 : 0, stream);
        Assert.True(compared > LongRun.AtLeast(7), $"Only {compared} jobs had a bracket.");
    }

    // Whether there was a bracket to compare; fails where the job turned has another answer.
    private static bool IsTheSameTurned(Job drawn, Angle by)
    {
        var job = drawn.OpeningCounterClockwise();
        var (one, other) = (Designer.Solve(job, SearchEffort.WithoutStrength), Designer.Solve(Turned(job, by), SearchEffort.WithoutStrength));
        Assert.Equal(one.Bracket is null, other.Bracket is null);
        Assert.Equal(one.Verdict.Kind, other.Verdict.Kind);
        if (one.Search!.Best is not { } best)
        {
            return false;
        }

        Assert.Equal(best.Candidate.Cost, other.Search!.Best!.Candidate.Cost, 1e-9);
        Assert.Equal(one.Bracket!.Mass, other.Bracket!.Mass, 1e-15);
        Assert.Equal(one.Checks.Select(c => (c.Code, c.Number, c.State)), other.Checks.Select(c => (c.Code, c.Number, c.State)));
        foreach (var (a, b) in one.Checks.Zip(other.Checks))
        {
            Assert.Equal(a.Limit, b.Limit, 1e-9 * Math.Max(1, Math.Abs(a.Limit)));
            var within = SearchedTo(a.Id, Math.Max(a.Value, b.Value));
            Assert.True(a.Value.Equals(b.Value) || Math.Abs(a.Value - b.Value) <= within, $"{a.Code}: {a.Value:R} and {b.Value:R}, {by.Degrees:R} degrees turned.");
        }

        return true;
    }

    // How far two searches for the same value may come out apart: none but the clearances and gaps in space are searched for.
    private static double SearchedTo(CheckId id, double value) => id switch
    {
        // Clearance.Least tells a distance too small by this at most, its way through the boxes hangs on the last bit, and it need not know how deep an overlap is.
        CheckId.KeepOut or CheckId.BodyClearance or CheckId.BoltRoom or CheckId.StopRoom or CheckId.LipApart or CheckId.FlangesApart or CheckId.MovingParts
            or CheckId.OuterClearance => value <= 0 ? 1 : Math.Max(SpaceDemand.Error, value / 50),

        // SolidGap settles a gap to a nanometre, and follows an overlap no farther than directions by 1e-6 rad.
        CheckId.QuadrantOverlap or CheckId.QuadrantClearance or CheckId.WireOverlap or CheckId.WireClearance or CheckId.OuterEndClearance or CheckId.OuterMoving => 1e-5,
        _ => 1e-9 * Math.Max(1, Math.Abs(value)),
    };

    // What is printed in inches is the same bracket, to the last bit.
    [Theory]
    [MemberData(nameof(Names))]
    public void Units_change_nothing(string name)
    {
        var job = Examples.Read(name);
        var (one, other) = (Designer.Solve(job), Designer.Solve(job with { Units = job.Units == UnitSystem.Inch ? UnitSystem.Metric : UnitSystem.Inch }));
        Assert.Equal(one.Offers.Select(o => (o.Candidate.Cost, o.Mass, o.GiveFound)), other.Offers.Select(o => (o.Candidate.Cost, o.Mass, o.GiveFound)));
        Assert.Equal(one.Checks.Select(c => (c.Code, c.Number, c.Value, c.Limit, c.State)), other.Checks.Select(c => (c.Code, c.Number, c.Value, c.Limit, c.State)));
    }

    private readonly record struct Outcome(int Rank, double Cost);

    // Nothing passes, something is not known, all passes; where nothing passes the cost is that of no bracket.
    private static Outcome Answer(Job job, SearchEffort effort)
    {
        var solution = Designer.Solve(job, effort);
        Assert.True(solution.Search!.IsCertain);
        var rank = solution.Verdict.Kind switch { VerdictKind.Passes => 2, VerdictKind.NotProven => 1, _ => 0 };
        return new(rank, solution.Search.Best?.Candidate.Cost ?? double.PositiveInfinity);
    }

    private static void IsNoWorse(Outcome before, Outcome after, string what)
    {
        Assert.True(after.Rank >= before.Rank, $"{what}: the verdict became worse.");

        // A bracket with which the mechanism works may cost more than the one that was shown where it worked with none.
        Assert.True(after.Rank > before.Rank || after.Cost <= before.Cost + 1e-9, $"{what}: the best went from {before.Cost} to {after.Cost}.");
    }

    private static Job With(Job job, Func<Preferences, Preferences> change) => job with { Preferences = change(job.Preferences) };

    private static Job Turned(Job job, Angle by)
    {
        Vector3 V(Vector3 v) => v.Rotate(new(0, 0, 1), by);
        ThrottlePoint P(ThrottlePoint p) => new(V(p.Vector));
        KeepOut K(KeepOut keepOut) => keepOut switch
        {
            KeepOutBox b when Math.Abs(Math.Sin(2 * by.Radians)) < 1e-9 => Box(b.Name, P(b.Min).Vector, P(b.Max).Vector),
            KeepOutBox b => KeepOutTiltedBox.Of(b.Name, P(b.Min), [P(b.Min + new Vector3(b.Max.X - b.Min.X, 0, 0)), P(b.Min + new Vector3(0, b.Max.Y - b.Min.Y, 0)), P(b.Min + new Vector3(0, 0, b.Max.Z - b.Min.Z))]),
            KeepOutCylinder c => c with { From = P(c.From), To = P(c.To) },
            _ => throw new NotSupportedException(),
        };
        var (body, mount) = (job.Body, job.Body.Mount);
        return job with
        {
            Body = body with
            {
                Quadrant = body.Quadrant with { Pocket = body.Quadrant.Pocket with { Value = body.Quadrant.Pocket.Value + by } },
                Mount = new(new(V(mount.Plane.Point), V(mount.Plane.Normal)), [.. mount.Holes.Select(h => h with { At = P(h.At) })]),
                KeepOuts = [.. body.KeepOuts.Select(K)],
                SpringRooms = [.. body.SpringRooms.Select(K)],
                BoreAxis = body.BoreAxis is { } bore ? bore with { Direction = bore.Direction + by } : null,
            },
        };
    }

    private static KeepOutBox Box(string name, Vector3 a, Vector3 b) => new(
        name, new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z)), new(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z)));
}
