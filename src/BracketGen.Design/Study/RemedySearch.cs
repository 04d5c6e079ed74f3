using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Units;

namespace BracketGen.Design.Study;

/// <summary>Looks for changes of a job's inputs that let a bracket pass, and tries each of them whole.</summary>
/// <remarks>
/// The walk is coarse and without strength, which is cheap: what fails without strength fails with it. A change counts when the job so changed, strength and
/// tolerances included, has a bracket with which nothing fails. Trials and solves are counted, so that the same job gives the same remedies.
/// </remarks>
internal sealed class RemedySearch
{
    // One trial judges so many brackets by strength at most, and all together so many: past that a remedy is not proven and not printed.
    private const int SolvesOfATrial = 300, SolvesOfAll = 3_000;

    // Likewise shapes: a remedy that only a search among more of them would show is not found.
    private const int ShapesOfATrial = 1_000, ShapesOfAll = 30_000;

    private const int MostTrials = 200, MostPairTrials = 60;

    private readonly Job _job;
    private readonly SearchEffort _whole;
    private int _solves, _trials, _shapes;
    private bool _isCut;

    /// <summary>A search.</summary>
    /// <param name="job">The job, opening counter-clockwise, none chosen.</param>
    /// <param name="effort">How far it was searched; strength is proven also where it was not asked for.</param>
    public RemedySearch(Job job, SearchEffort effort)
    {
        _job = job;
        _whole = new(effort.Strength ?? StrengthDetail.Usual) { MaxSolves = Math.Min(effort.MaxSolves, SolvesOfATrial), MaxShapes = ShapesOfATrial };
    }

    /// <summary>Whether a limit kept something from being tried in full.</summary>
    public bool IsCutShort => _isCut || IsAtEnd;

    private bool IsAtEnd => _trials >= MostTrials || _solves >= SolvesOfAll || _shapes >= ShapesOfAll;

    /// <summary>The ways, the smallest change first; pairs where no single change serves.</summary>
    public ImmutableArray<WayOpened> Ways()
    {
        var settings = Setting.Of(_job).ToList();
        List<(WayOpened Way, double Effort)> found = [.. Edits()];
        foreach (var either in settings.GroupBy(s => (s.Input, s.What)))
        {
            if (either.Select(s => Least(s, _job) is var (steps, way) ? (way, (double)steps / s.Most) : ((WayOpened, double)?)null).OfType<(WayOpened Way, double Effort)>().ToList() is { Count: > 0 } served)
            {
                found.Add(served.MinBy(s => s.Effort));
            }
        }

        // A measurement is no change to pair with another.
        if (found.Count == 0 && Pair([.. settings.Where(s => s.Input != ChangedInput.OuterStiffness)]) is { } pair)
        {
            return [pair];
        }

        return [.. found.OrderBy(f => f.Way.Changes.Length).ThenBy(f => f.Effort).Select(f => f.Way)];
    }

    // Of sheets to be bought the first of a material that serves is enough, and one in stock makes buying it needless.
    private IEnumerable<(WayOpened Way, double Effort)> Edits()
    {
        var served = new HashSet<string>();
        foreach (var edit in JobEdit.Of(_job))
        {
            var what = edit.Changes[0].What ?? edit.Changes[0].Input.ToString();
            if (!served.Contains(what) && (edit.Only is null || Quick(edit.Only) && Whole(edit.Only) is not null) && Whole(edit.Apply(_job)) is { } solution)
            {
                served.Add(what);
                yield return (new(edit.Changes, Decides(solution)), edit.Changes.Any(c => c.Input == ChangedInput.Stock) ? 1 : 0.5);
            }
        }
    }

    private (int Steps, WayOpened Way)? Least(Setting setting, Job job)
    {
        if (Doubling(setting.Most, 2, 0, steps => Quick(setting.Applied(job, steps))) is not { } quick)
        {
            return null;
        }

        // The last that served is the one that is found.
        Solution? served = null;
        bool Serves(int steps)
        {
            var tried = Quick(setting.Applied(job, steps)) ? Whole(setting.Applied(job, steps)) : null;
            served = tried ?? served;
            return tried is not null;
        }

        return Doubling(setting.Most, quick, quick - 1, Serves) is { } proven ? (proven, new([setting.Change(proven)], Decides(served!))) : null;
    }

    // The smallest number of steps that serves: doubled until one does, and halved back to it. A way may close again in between: what is found serves, and
    // the last one tried below it does not.
    private static int? Doubling(int most, int first, int fails, Func<int, bool> serves)
    {
        var start = fails;
        for (var by = Math.Max(1, first - start); ; by *= 2)
        {
            var at = Math.Min(start + by, most);
            if (serves(at))
            {
                while (at - fails > 1)
                {
                    var middle = (fails + at) / 2;
                    (fails, at) = serves(middle) ? (fails, middle) : (middle, at);
                }

                return at;
            }

            if (at >= most)
            {
                return null;
            }

            fails = at;
        }
    }

    // Both by the same part of what is within reason, smaller parts first; then each in turn as little as it can be.
    private WayOpened? Pair(List<Setting> settings)
    {
        var limit = _trials + MostPairTrials;
        foreach (var part in (ReadOnlySpan<double>)[0.1, 0.25, 0.6])
        {
            for (var i = 0; i < settings.Count; i++)
            {
                for (var k = i + 1; k < settings.Count; k++)
                {
                    var (one, other) = (settings[i], settings[k]);
                    if ((one.Input, one.What) == (other.Input, other.What) || _trials >= limit)
                    {
                        continue;
                    }

                    int Steps(Setting s) => Math.Clamp((int)Math.Ceiling(part * s.Most), 1, s.Most);
                    if (!Quick(other.Applied(one.Applied(_job, Steps(one)), Steps(other))))
                    {
                        continue;
                    }

                    if (Least(other with { Most = Steps(other) }, one.Applied(_job, Steps(one))) is not var (with, _))
                    {
                        continue;
                    }

                    if (Least(one with { Most = Steps(one) }, other.Applied(_job, with)) is var (least, way))
                    {
                        return new([one.Change(least), other.Change(with)], way.Decides);
                    }
                }
            }
        }

        return null;
    }

    private bool Quick(Job changed)
    {
        if (IsAtEnd)
        {
            return false;
        }

        _trials++;
        return !TravelFails(changed) && NothingFails(changed, SearchEffort.WithoutStrength with { MaxShapes = ShapesOfATrial }) is not null;
    }

    private Solution? Whole(Job changed)
    {
        if (IsAtEnd)
        {
            return null;
        }

        _trials++;
        return NothingFails(changed, _whole);
    }

    // On a round groove the travel is the same wherever the stop is: where it fails no bracket need be looked for.
    private static bool TravelFails(Job changed) => changed.Body.Quadrant.Groove is CircularGroove
        && Designer.CheckTravelTurned(changed).Checks.Any(c => c.Fails && c.Kind != CheckKind.Advice && TravelChecks.IsBeyondTheBracket(c));

    private Solution? NothingFails(Job changed, SearchEffort effort)
    {
        var (best, solves, shapes, isCertain) = BracketSearch.Cheapest(changed, effort);
        _solves += solves;
        _shapes += shapes;
        _isCut |= best is null && !isCertain;
        return best is not null && Designer.Answer(changed, best) is { NothingFails: true } solution ? solution : null;
    }

    // Checks of the yes-or-no kind stand at their limit whenever they pass, and those of making where the shape is drawn to it; a probability is held against
    // what is left up to certainty.
    private static Check? Decides(Solution solution) => solution.Checks
        .Where(c => c.Kind is not (CheckKind.Advice or CheckKind.Making) && double.IsFinite(c.Spare) && c.Spare > Tolerance.LimitSlack)
        .MinBy(c => c is { Unit: Quantity.Fraction, Bound: Bound.AtLeast, Limit: > 0 and < 1 } ? c.Margin / (1 - c.Limit) : c.Spare);
}
