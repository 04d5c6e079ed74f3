using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
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
    public void Turning_the_whole_job_by_quarter_turns_changes_nothing() => TurningChangesNothing(Gen.Int[1, 3].Select(quarters => quarters * Angle.Right));

    private static void TurningChangesNothing(Gen<Angle> turns)
    {
        var compared = 0;
        Gen.Select(RandomJobs.Job, turns).Check(LongRun.Of(40), drawn =>
        {
            var (job, by) = (drawn.Item1.OpeningCounterClockwise(), drawn.Item2);
            if (job.Body.Quadrant.Groove is not CircularGroove || job.Bulkhead is not null)
            {
                return;
            }

            var (one, other) = (Designer.Solve(job, SearchEffort.WithoutStrength), Designer.Solve(Turned(job, by), SearchEffort.WithoutStrength));
            Assert.Equal(one.Bracket is null, other.Bracket is null);
            Assert.Equal(one.Verdict.Kind, other.Verdict.Kind);
            if (one.Search!.Best is { } best)
            {
                compared++;
                Assert.Equal(best.Candidate.Cost, other.Search!.Best!.Candidate.Cost, 1e-9);
                Assert.Equal(one.Bracket!.Mass, other.Bracket!.Mass, 1e-15);
                foreach (var (a, b) in one.Checks.Zip(other.Checks))
                {
                    Assert.Equal(a.Code, b.Code);
                    Assert.Equal(a.State, b.State);
                }
            }
        });
        Assert.True(compared > LongRun.AtLeast(10), $"Only {compared} jobs had a bracket.");
    }

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
            KeepOutBox b => Box(b.Name, P(b.Min).Vector, P(b.Max).Vector),
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
