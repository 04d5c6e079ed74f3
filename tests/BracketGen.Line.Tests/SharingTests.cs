using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Line.Tests;

/// <summary>The set cover against brute force, and the line's parts against every check made anew.</summary>
public class SharingTests
{
    private static readonly Gen<(int Rows, SetCover.Set[] Sets)> Covers =
        from rows in Gen.Int[1, 9]
        from masks in Gen.Int[1, (1 << rows) - 1].Array[0, 9]
        from costs in Gen.Int[0, 20].Array[200]
        let whole = masks.Concat(Enumerable.Range(0, rows).Select(r => 1 << r).Where((_, r) => masks.All(m => (m >> r & 1) == 0))).ToArray()
        select (rows, whole.Select((m, s) =>
        {
            var covered = Enumerable.Range(0, rows).Where(r => (m >> r & 1) != 0).ToArray();
            return new SetCover.Set(covered, [.. covered.Select(r => costs[(10 * s + r) % 200] / 20.0)]);
        }).ToArray());

    [Fact]
    public void The_cover_is_as_small_and_as_cheap_as_brute_force_finds()
    {
        Covers.Check(600, problem =>
        {
            var (rows, sets) = problem;
            var (chosen, _, isCheapest) = SetCover.Solve(rows, sets);
            var (number, cost) = BruteForce(rows, sets);
            Assert.True(isCheapest);
            Assert.Equal(number, chosen.Length);
            Assert.Equal(cost, CostOf(rows, sets, chosen)!.Value, 1e-9);
        });
    }

    // Stretches of a row, as cables of rising length that adjusters bridge: greedy from the left is known to be best there.
    [Fact]
    public void Stretches_are_covered_as_well_as_by_the_rule_for_intervals()
    {
        Gen.Int[0, 400].Array[5, 60].Check(60, lengths =>
        {
            int[] sorted = [.. lengths.Distinct().Order()];
            const int reach = 35;
            SetCover.Set[] sets = [.. sorted.Select(at =>
            {
                var rows = Enumerable.Range(0, sorted.Length).Where(r => Math.Abs(sorted[r] - at) <= reach).ToArray();
                return new SetCover.Set(rows, [.. rows.Select(r => (double)Math.Abs(sorted[r] - at))]);
            })];
            var fewest = 0;
            for (var r = 0; r < sorted.Length;)
            {
                // The farthest bracket that still reaches this one, and on to the first that it does not reach.
                var at = sorted.Last(l => l <= sorted[r] + reach);
                fewest++;
                while (r < sorted.Length && sorted[r] <= at + reach)
                {
                    r++;
                }
            }

            Assert.Equal(fewest, SetCover.Solve(sorted.Length, sets).Chosen.Length);
        });
    }

    [Fact]
    public void A_row_in_no_set_is_an_error() =>
        Assert.Throws<ArgumentException>(() => SetCover.Solve(2, [new([0], [0.0])]));

    // A line small enough to try every bracket on every combination in full, and every choice of brackets.
    [Fact]
    public void The_lines_parts_are_as_few_as_brute_force_over_full_checks_finds()
    {
        var (_, run, parts) = Estuary.Solved;
        var selection = FewestParts.Of(run.Family, parts, null, 2);
        SetCover.Set[] serves = [.. parts.Select(part =>
        {
            int[] rows = [.. Enumerable.Range(0, parts.Length).Where(served => parts[served] == part
                || MountMatch.Of(part.Bracket, parts[served].Job.Body.Mount).Any(m => GivenBracket.On(parts[served].Job, part.Bracket, m) is { } s && Fits.OutcomeOf(s) is Outcome.Passes or Outcome.NotProven))];
            return new SetCover.Set(rows, new double[rows.Length]);
        })];
        Assert.Equal(BruteForce(parts.Length, serves).Number, selection.Parts.Count);
        Assert.True(selection.Parts.Count < parts.Length, "nothing is shared: the test would prove little");
        Assert.All(selection.Services, s =>
        {
            Assert.Contains(s.By, selection.Parts);
            Assert.Contains(parts.IndexOf(s.Served), serves[parts.IndexOf(s.By)].Rows);
        });
        Assert.Equal(parts, selection.Services.Select(s => s.Served));
    }

    [Fact]
    public void A_shared_part_is_checked_in_full_and_its_margin_is_told()
    {
        var (_, run, parts) = Estuary.Solved;
        var shared = FewestParts.Of(run.Family, parts, null, 1).Services.Where(s => s.IsShared).ToArray();
        Assert.NotEmpty(shared);
        foreach (var service in shared)
        {
            var solution = GivenBracket.On(service.Served.Job, service.By.Bracket, service.Mount)!;
            Assert.Equal(Outcome.NotProven, Fits.OutcomeOf(solution));
            Assert.Equal(Fits.Of(solution).Margins, service.Fit.Margins);

            // The adjuster takes up what one cable has over the other, on the same body and with the same free play.
            var difference = service.Served.Job.Vehicle.Cable.FreeInnerLength.Value - service.By.Job.Vehicle.Cable.FreeInnerLength.Value;
            Assert.Equal(difference, service.Fit.AdjusterShift, 1e-5);
            var cost = MarginCost.Of(service);
            Assert.NotNull(cost.Dearest);
            Assert.True(cost.Dearest.Spare < cost.DearestBefore!.Spare);
            var reserve = service.Fit.Margins.Single(m => m.Code == "adjuster-reserve");
            Assert.True(reserve.Spare < service.Served.Made.Fit!.Margins.Single(m => m.Code == "adjuster-reserve").Spare);
        }
    }

    [Fact]
    public void Every_combination_may_have_its_own_part()
    {
        var parts = Estuary.Solved.Parts;
        var own = FewestParts.Own(parts);
        Assert.Equal(parts, own.Parts);
        Assert.DoesNotContain(own.Services, s => s.IsShared);
    }

    private static (int Number, double Cost) BruteForce(int rows, SetCover.Set[] sets)
    {
        var best = (Number: int.MaxValue, Cost: double.PositiveInfinity);
        for (var choice = 1; choice < 1 << sets.Length; choice++)
        {
            int[] chosen = [.. Enumerable.Range(0, sets.Length).Where(s => (choice >> s & 1) != 0)];
            if (chosen.Length <= best.Number && CostOf(rows, sets, chosen) is { } cost && (chosen.Length < best.Number || cost < best.Cost))
            {
                best = (chosen.Length, cost);
            }
        }

        return best;
    }

    private static double? CostOf(int rows, SetCover.Set[] sets, int[] chosen)
    {
        var sum = 0.0;
        for (var row = 0; row < rows; row++)
        {
            double[] costs = [.. chosen.Where(s => sets[s].Rows.Contains(row)).Select(s => sets[s].Costs[Array.IndexOf(sets[s].Rows, row)])];
            if (costs.Length == 0)
            {
                return null;
            }

            sum += costs.Min();
        }

        return sum;
    }
}
