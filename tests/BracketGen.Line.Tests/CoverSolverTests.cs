using BracketGen.Line.Sharing;
using Google.OrTools.LinearSolver;

namespace BracketGen.Line.Tests;

/// <summary>The set cover against Google OR-Tools (its mixed-integer solver SCIP) on random families, too large for brute force.</summary>
public class CoverSolverTests
{
    private const int Families = 50, Seed = 20260302;

    // Cables of rising length on several bodies, bridged by adjusters, with gaps where something is in the way: what a line's covers look like.
    private static (int Rows, SetCover.Set[] Sets) Family(Random random)
    {
        var rows = random.Next(8, 31);
        var places = Enumerable.Range(0, rows).Select(_ => (Body: random.Next(1 + rows / 15), Length: Math.Round(100 + 60 * random.NextDouble(), 1))).ToArray();
        var reach = 1 + 6 * random.NextDouble();
        var made = Enumerable.Range(0, 3 * rows).Select(i => i < rows ? places[i] : (places[random.Next(rows)].Body, Length: Math.Round(100 + 60 * random.NextDouble(), 1)));
        return (rows, [.. made.Select((m, s) => (m, Rows: Enumerable.Range(0, rows).Where(r => r == s || (places[r].Body == m.Body && Math.Abs(places[r].Length - m.Length) <= reach && random.NextDouble() > 0.2)).ToArray()))
            .Where(s => s.Rows.Length > 0)
            .Select(s => new SetCover.Set(s.Rows, [.. s.Rows.Select(r => Math.Round(Math.Abs(places[r].Length - s.m.Length) / reach, 3))]))]);
    }

    // No order in them at all: what is hard for branch and bound.
    private static (int Rows, SetCover.Set[] Sets) Disorder(Random random)
    {
        var rows = random.Next(8, 26);
        int[][] covered = [.. Enumerable.Range(0, random.Next(15, 46)).Select(_ => Enumerable.Range(0, rows).Where(_ => random.NextDouble() < 0.15).ToArray()).Where(s => s.Length > 0)];
        var bare = Enumerable.Range(0, rows).Where(r => !covered.Any(s => s.Contains(r))).Select(r => (int[])[r]);
        return (rows, [.. covered.Concat(bare).Select(s => new SetCover.Set(s, [.. s.Select(_ => random.Next(1000) / 1000.0)]))]);
    }

    [SkippableTheory]
    [InlineData(true)]
    [InlineData(false)]
    public void Covers_are_as_few_and_as_cheap_as_OrTools_proves(bool isFamily)
    {
        Skip.IfNot(Runs(), "the native library of OR-Tools does not run here");
        var random = new Random(Seed + (isFamily ? 0 : 1));
        for (var i = 0; i < Families; i++)
        {
            var (rows, sets) = isFamily ? Family(random) : Disorder(random);
            var cover = SetCover.Solve(rows, sets);
            var (number, cost) = Mixed(rows, sets);
            Assert.True(cover.IsCheapest, $"family {i} was stopped");
            Assert.Equal(number, cover.AtLeast);
            Assert.Equal(number, cover.Chosen.Length);
            Assert.Equal(cost, Enumerable.Range(0, rows).Sum(r => cover.Chosen.Min(s => CostOf(sets[s], r))), 1e-6);
        }
    }

    [Fact]
    public void A_search_that_is_stopped_says_what_it_has_proven()
    {
        var random = new Random(Seed + 2);
        var stopped = 0;
        for (var i = 0; i < Families; i++)
        {
            var (rows, sets) = Disorder(random);
            var whole = SetCover.Solve(rows, sets);
            var short_ = SetCover.Solve(rows, sets, work: 1);
            Assert.InRange(short_.AtLeast, 0, whole.Chosen.Length);
            Assert.InRange(short_.Chosen.Length, whole.Chosen.Length, rows);
            Assert.All(Enumerable.Range(0, rows), r => Assert.Contains(short_.Chosen, s => sets[s].Rows.Contains(r)));
            stopped += short_.IsCheapest ? 0 : 1;
        }

        Assert.True(stopped > 0, "none was stopped: the test proves nothing");
    }

    // One set more can only help; one row more can cost one set at the most, its own.
    [Fact]
    public void More_sets_never_need_more_parts_and_a_row_more_needs_one_at_the_most()
    {
        var random = new Random(Seed + 3);
        for (var i = 0; i < Families; i++)
        {
            var (rows, sets) = i % 2 == 0 ? Family(random) : Disorder(random);
            var fewest = SetCover.Solve(rows, sets).Chosen.Length;
            int[] joined = [.. sets[0].Rows.Union(sets[^1].Rows).Order()];
            Assert.InRange(SetCover.Solve(rows, [.. sets, new(joined, new double[joined.Length])]).Chosen.Length, 1, fewest);
            SetCover.Set[] with = [.. sets.Select(s => random.NextDouble() < 0.2 ? new SetCover.Set([.. s.Rows, rows], [.. s.Costs, 0]) : s), new([rows], [0])];
            Assert.InRange(SetCover.Solve(rows + 1, with).Chosen.Length, fewest, fewest + 1);
        }
    }

    private static double CostOf(SetCover.Set set, int row) => Array.IndexOf(set.Rows, row) is >= 0 and var at ? set.Costs[at] : double.PositiveInfinity;

    // The number first, then the cost with that number.
    private static (int Number, double Cost) Mixed(int rows, SetCover.Set[] sets)
    {
        using var fewest = Model(rows, sets, out var count);
        fewest.Minimize(new SumVarArray(count));
        var number = (int)Math.Round(Solve(fewest));
        using var cheapest = Model(rows, sets, out var taken);
        cheapest.Add(new SumVarArray(taken) <= number);
        var cost = cheapest.Objective();
        cost.SetMinimization();
        for (var r = 0; r < rows; r++)
        {
            var by = new List<Variable>();
            for (var s = 0; s < sets.Length; s++)
            {
                if (double.IsFinite(CostOf(sets[s], r)))
                {
                    var use = cheapest.MakeNumVar(0, 1, $"u{r}.{s}");
                    cheapest.Add(use <= taken[s]);
                    cost.SetCoefficient(use, CostOf(sets[s], r));
                    by.Add(use);
                }
            }

            cheapest.Add(new SumVarArray([.. by]) == 1);
        }

        return (number, Solve(cheapest));
    }

    private static Solver Model(int rows, SetCover.Set[] sets, out Variable[] taken)
    {
        var model = Solver.CreateSolver("SCIP");
        Variable[] vars = taken = [.. sets.Select((_, s) => model.MakeBoolVar($"s{s}"))];
        for (var r = 0; r < rows; r++)
        {
            model.Add(new SumVarArray([.. Enumerable.Range(0, sets.Length).Where(s => sets[s].Rows.Contains(r)).Select(s => vars[s])]) >= 1);
        }

        return model;
    }

    private static double Solve(Solver model)
    {
        using var exact = new MPSolverParameters();
        exact.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        Assert.Equal(Solver.ResultStatus.OPTIMAL, model.Solve(exact));
        return model.Objective().Value();
    }

    private static bool Runs()
    {
        try
        {
            using var solver = Solver.CreateSolver("SCIP");
            return solver is not null;
        }
        catch (Exception problem) when (problem is TypeInitializationException or DllNotFoundException)
        {
            return Environment.GetEnvironmentVariable("CI") == "true";
        }
    }
}
