using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Throttles;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Study;

/// <summary>Why a job has no passing bracket, and what would give it one.</summary>
/// <param name="Obstacles">The checks in the way, the one that stops most first.</param>
/// <param name="Ways">The smallest changes that open a way, one an input; empty where none was found within reason.</param>
public sealed record Diagnosis(ImmutableArray<Obstacle> Obstacles, ImmutableArray<WayOpened> Ways)
{
    /// <summary>Least change looked for (mm): what a workshop can set.</summary>
    private const double Resolution = 0.5;

    internal static readonly ImmutableArray<double> UsualThicknesses = [1.5, 2, 2.5, 3, 4, 5, 6];

    /// <summary>The diagnosis of a solution that offers nothing; null where there is an offer. Takes as long as some tens of searches.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="effort">How far it was searched.</param>
    public static Diagnosis? Of(Solution solution, SearchEffort effort) => solution.Offers.IsEmpty && solution.Search is { } search
        ? new(search.Obstacles, [.. WaysOf(solution.Job.OpeningCounterClockwise(), effort with { WithOthers = false }).OrderBy(w => Effort(w))])
        : null;

    private static IEnumerable<WayOpened> WaysOf(Job job, SearchEffort effort)
    {
        bool Passes(Job changed) => BracketSearch.Any(changed, effort) is not null;
        double? Least(Func<double, Job> changed, double most, bool bothWays) => LeastChange(changed, most, bothWays, Passes);
        var cable = job.Vehicle.Cable;
        Job WithCable(Cable changed) => job with { Vehicle = job.Vehicle with { Cable = changed } };

        var length = cable.FreeInnerLength;
        if (Least(by => WithCable(cable with { FreeInnerLength = length with { Value = length.Value + by } }), 80, bothWays: true) is { } longer)
        {
            yield return new(ChangedInput.FreeInnerLength, null, length.Value, length.Value + longer);
        }

        var range = cable.OuterEnd.AdjusterRange;
        if (Least(by => WithCable(cable with { OuterEnd = WithRange(cable.OuterEnd, range + by) }), 60, bothWays: false) is { } wider)
        {
            yield return new(ChangedInput.AdjusterRange, null, range, range + wider);
        }

        var quadrant = job.Body.Quadrant;
        Job Grown(double by) => job with
        {
            Body = job.Body with
            {
                Quadrant = quadrant with { Groove = quadrant.Groove.Grown(by), OuterRadius = quadrant.OuterRadius + by },
            },
        };
        var radius = quadrant.Groove.Support(quadrant.PocketNormal);
        if (Least(Grown, 0.4 * radius, bothWays: true) is { } larger)
        {
            yield return new(ChangedInput.QuadrantRadius, null, radius, radius + larger);
        }

        for (var i = 0; i < job.Body.KeepOuts.Length; i++)
        {
            var keepOut = job.Body.KeepOuts[i];
            var index = i;
            Job Moved(double by) => job with
            {
                Body = job.Body with { KeepOuts = job.Body.KeepOuts.SetItem(index, new KeepOutMovedOff(keepOut, by)) },
            };
            if (Least(Moved, 60, bothWays: false) is { } off)
            {
                yield return new(ChangedInput.KeepOut, keepOut.Name, 0, off);
            }
        }

        foreach (var material in job.Shop.Stock.Select(s => s.Material).Distinct())
        {
            foreach (var thickness in UsualThicknesses.Except(job.Shop.Stock.Where(s => s.Material == material).Select(s => s.Thickness)))
            {
                if (Passes(WithOnly(job, material, thickness)))
                {
                    yield return new(ChangedInput.Stock, material.Designation, 0, thickness);
                    break;
                }
            }
        }
    }

    /// <summary>The job with a single sheet in stock, allowed.</summary>
    internal static Job WithOnly(Job job, Material material, double thickness) => job with
    {
        Shop = job.Shop with { Stock = [new Stock(material, thickness)] },
        Preferences = job.Preferences with
        {
            Materials = [],
            MinThickness = Math.Min(thickness, job.Preferences.MinThickness),
            MaxThickness = Math.Max(thickness, job.Preferences.MaxThickness),
        },
    };

    // The least change, doubled until a way opens and then halved back to it. A way may open and close again in between: what is
    // found is a change that serves, and none half as large as the last one that did not was seen to.
    private static double? LeastChange(Func<double, Job> changed, double most, bool bothWays, Func<Job, bool> passes)
    {
        double low = 0;
        for (var step = 2.0; ; step *= 2)
        {
            var high = Math.Min(step, most);
            var signs = bothWays ? new[] { 1.0, -1.0 } : [1.0];
            foreach (var sign in signs)
            {
                if (!passes(changed(sign * high)))
                {
                    continue;
                }

                var (fails, serves) = (low, high);
                while (serves - fails > Resolution)
                {
                    var middle = (fails + serves) / 2;
                    (fails, serves) = passes(changed(sign * middle)) ? (fails, middle) : (middle, serves);
                }

                return sign * serves;
            }

            if (high >= most)
            {
                return null;
            }

            low = high;
        }
    }

    private static OuterEnd WithRange(OuterEnd end, double range) => end switch
    {
        ThreadedAdjuster a => a with { Range = range },
        PlainFerrule f => f with { Range = range },
        SlottedClip c => c with { Range = range },
        _ => end,
    };

    private static double Effort(WayOpened way) => Math.Abs(way.To - way.From);
}
