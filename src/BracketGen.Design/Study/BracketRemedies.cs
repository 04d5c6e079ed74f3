using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;

namespace BracketGen.Design.Study;

/// <summary>What makes a bracket good for a job, tried whole.</summary>
/// <param name="Changes">What to do, all of it.</param>
/// <param name="Trial">The job solved with it, strength included.</param>
public sealed record BracketRemedy(ImmutableArray<BracketChange> Changes, BracketTrial Trial);

/// <summary>Looks for what a fitter can do to a bracket so that nothing fails, and tries each of it whole.</summary>
/// <remarks>
/// A change counts when the whole job with it, strength included, fails nothing. What fails without strength fails with it, so each is tried without it first. Trials
/// are counted, not timed: the same bracket gets the same remedies.
/// </remarks>
public sealed class BracketRemedies
{
    private const int MostQuick = 700, MostPairs = 400, MostWhole = 24;

    // Where only strength or the mechanism fails, moving the stop seldom helps: fewer are tried whole.
    private const int MostOfStrength = 10;

    // How far a bend may be bent again (degrees), how far a new hole for the stop is looked for (mm), and in what steps (our judgement, no source).
    private const int MostDegrees = 15;

    private const double MostMoved = 24, MoveStep = 2;

    // So many larger changes of a kind are tried for one that is surer.
    private const int MostSurer = 3;

    private const double MostFreePlay = 6, FreePlayStep = 0.5;

    private readonly Job _job;
    private readonly Bracket _bracket;
    private readonly double _plusMinus;
    private readonly StrengthDetail _strength;
    private readonly int _mostWhole;
    private int _quick, _whole;

    private BracketRemedies(Job job, Bracket bracket, double plusMinus, StrengthDetail strength) =>
        (_job, _bracket, _plusMinus, _strength, _mostWhole) = (job, bracket, plusMinus, strength, BracketTrial.MayPass(job, bracket) ? MostOfStrength : MostWhole);

    /// <summary>What was found, and whether a limit kept something from being tried.</summary>
    /// <param name="Remedies">The remedies, the smallest first; pairs only where no single one serves. Empty where there is none.</param>
    /// <param name="IsCutShort">Whether others may exist.</param>
    public readonly record struct Found(ImmutableArray<BracketRemedy> Remedies, bool IsCutShort);

    /// <summary>The remedies for a bracket that fails a job; none where nothing fails.</summary>
    /// <param name="trial">The bracket as it is on the job.</param>
    /// <param name="bracket">The bracket, its mount flange in its own coordinates.</param>
    /// <param name="thicknessPlusMinus">How exactly its thickness was read (mm, either way).</param>
    /// <param name="strength">How finely it is meshed; strength is proven also where it was not asked for.</param>
    public static Found Of(BracketTrial trial, Bracket bracket, double thicknessPlusMinus, StrengthDetail? strength = null) =>
        trial.NothingFails || BeyondWork(trial).Any()
            ? new([], false)
            : new BracketRemedies(trial.Job, bracket, thicknessPlusMinus, strength ?? StrengthDetail.Usual).Find();

    /// <summary>The failing checks that no work on the bracket can correct: they lie in cable, pedal or throttle body, in its sheet or in how it was bent.</summary>
    /// <param name="trial">The bracket as it is on the job.</param>
    public static IEnumerable<Check> BeyondWork(BracketTrial trial) => trial.Solution?.Checks.Where(c => c.Fails && c.Kind != CheckKind.Advice
        && (TravelChecks.IsBeyondTheBracket(c) || c.Id is CheckId.BendRadius or CheckId.SheetAllowed or CheckId.ClipNeck or CheckId.EndMaxSheet or CheckId.EndMinSheet)) ?? [];

    private Found Find()
    {
        // Holes that nothing goes through come first: without them no other change serves.
        var needed = Needed();
        List<BracketRemedy> found = [];
        if (needed.Length > 0 && Try(needed) is { } enough)
        {
            return new([enough], false);
        }

        foreach (var family in Families())
        {
            if (Smallest(family, needed) is { } served)
            {
                found.Add(served);
            }
        }

        if (found.Count == 0 && Pair(needed) is { } pair)
        {
            found.Add(pair);
        }

        return new([.. found.OrderBy(r => r.Changes.Length).ThenBy(r => r.Changes.Sum(c => c.Effort))], _quick >= MostQuick + MostPairs || _whole >= _mostWhole);
    }

    // The smallest with which every check passes, if it is not much larger than the smallest with which nothing fails: within the ± of the readings a little more is surer.
    private BracketRemedy? Smallest(IEnumerable<BracketChange> family, ImmutableArray<BracketChange> needed)
    {
        BracketRemedy? smallest = null;
        var more = 0;
        foreach (var change in family)
        {
            var served = Try([.. needed, change]);
            smallest ??= served;
            if (served is { Trial.Kind: VerdictKind.Passes })
            {
                return served;
            }

            if (smallest is not null && ++more > MostSurer)
            {
                break;
            }
        }

        return smallest;
    }

    private ImmutableArray<BracketChange> Needed()
    {
        var needed = ImmutableArray.CreateBuilder<BracketChange>();
        var bolts = _bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).ToArray();
        if (bolts.Length >= _job.Body.Mount.Holes.Length && Fits(_bracket) is false)
        {
            var thread = _job.Body.Mount.Holes.Select(h => h.Thread).MaxBy(t => t.Diameter)!;
            var opened = new[] { thread.ClearanceFine, thread.ClearanceMedium, thread.ClearanceCoarse }
                .Where(d => bolts.Any(b => b.Diameter < d))
                .Select(d => new OpenBoltHoles(bolts.Min(b => b.Diameter), d))
                .FirstOrDefault(o => Fits(o.Apply(_job, _bracket)!.Value.Item2));
            if (opened is not null)
            {
                needed.Add(opened);
            }
        }

        var seat = StopSeat.For(_job.Vehicle.Cable, _job.Preferences.StopOpening, _bracket.Stock.Thickness, _bracket.Stock.Material.Finish);
        if (_bracket.Stop.Diameter - _bracket.Stop.PlusMinus < StopSeat.MinOpening(_job.Vehicle.Cable.OuterEnd))
        {
            needed.Add(new OpenStop(_bracket.Stop.Diameter, seat.Opening, _bracket.Stop.IsSlot));
        }

        return needed.ToImmutable();
    }

    // Whether some way of it goes onto the bolts with holes of the size for the threads.
    private bool Fits(Bracket bracket) => BracketWay.Of(_job, bracket)
        .Any(w => w.Bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).Zip(_job.Body.Mount.Holes).All(p => p.First.Thread == p.Second.Thread));

    // Each a list of the same change, the smallest first.
    private IEnumerable<IEnumerable<BracketChange>> Families()
    {
        yield return FreePlays();
        yield return PlateUnder.Usual.Select(t => new PlateUnder(t));
        for (var bend = 0; bend < _bracket.Flat.Bends.Length; bend++)
        {
            if (Carries(bend))
            {
                yield return Bendings(bend, -1);
                yield return Bendings(bend, 1);
            }
        }

        yield return Redrillings();
    }

    private IEnumerable<BracketChange> FreePlays()
    {
        var now = _job.Preferences.FreePlay.Value;
        for (var step = 1; step * FreePlayStep <= MostFreePlay; step++)
        {
            yield return new SetFreePlay(now, now + step * FreePlayStep);
            if (now - step * FreePlayStep >= Math.Max(FreePlayStep, _job.Preferences.MinFreePlay))
            {
                yield return new SetFreePlay(now, now - step * FreePlayStep);
            }
        }
    }

    // Bends between mount and stop; a lip moves nothing.
    private bool Carries(int bend)
    {
        for (var flange = _bracket.Stop.Flange; flange > 0; flange = _bracket.Flat.Bends[flange - 1].From)
        {
            if (flange == bend + 1)
            {
                return true;
            }
        }

        return false;
    }

    private IEnumerable<BracketChange> Bendings(int bend, int sign)
    {
        var included = new Angle(Math.PI - _bracket.Flat.Bends[bend].Turn.Magnitude.Radians);
        for (var degrees = 1; degrees <= MostDegrees; degrees++)
        {
            var to = included + Angle.FromDegrees(sign * degrees);
            if (to.Degrees is > 30 and < 175)
            {
                yield return new BendFurther(bend, included, to);
            }
        }
    }

    private IEnumerable<BracketChange> Redrillings()
    {
        if (_bracket.Stop.IsSlot)
        {
            yield break;
        }

        var seat = StopSeat.For(_job.Vehicle.Cable, _job.Preferences.StopOpening, _bracket.Stock.Thickness, _bracket.Stock.Material.Finish);
        var least = seat.MetalRadius(_bracket.Stock.Thickness);
        var (u, v) = BracketEdit.Axes(_bracket);
        var steps = (int)(MostMoved / MoveStep);
        var flange = _bracket.Folded.Flanges[_bracket.Stop.Flange];
        var mount = _bracket.Folded.Flanges[0];
        var (at, _) = _bracket.FoldedSeat;
        foreach (var (i, k) in
            from i in Enumerable.Range(-steps, 2 * steps + 1)
            from k in Enumerable.Range(-steps, 2 * steps + 1)
            where i * i + k * k <= steps * steps && (i, k) != (0, 0)
            orderby i * i + k * k, i, k
            select (i, k))
        {
            if (BracketEdit.Redrilled(_bracket, i * MoveStep, k * MoveStep, seat.Opening) is { } redrilled && redrilled.Stop.MetalRadius >= least)
            {
                var moved = at + flange.ToWorldDirection(Vector3.From(i * MoveStep * u + k * MoveStep * v));
                yield return new RedrillStop(i * MoveStep, k * MoveStep, seat.Opening, (mount.ToFlat(moved), mount.ToLocal(moved.Vector).Z), _bracket.StopBend is null);
            }
        }
    }

    // Coarse steps of two different changes, the smaller sums first.
    private BracketRemedy? Pair(ImmutableArray<BracketChange> needed)
    {
        var families = Families().Select(f => f.ToArray()).Where(f => f.Length > 0).ToArray();
        var limit = _quick + MostPairs;
        var pairs =
            from a in Enumerable.Range(0, families.Length)
            from b in Enumerable.Range(a + 1, families.Length - a - 1)
            from one in Thinned(families[a])
            from other in Thinned(families[b])
            where !(one is BendFurther x && other is BendFurther y && x.Bend == y.Bend)
            orderby one.Effort + other.Effort
            select (One: one, Other: other);
        foreach (var (one, other) in pairs)
        {
            if (_quick >= limit)
            {
                return null;
            }

            if (Try([.. needed, one, other]) is { } served)
            {
                return served;
            }
        }

        return null;
    }

    // A handful over the whole family.
    private static IEnumerable<BracketChange> Thinned(BracketChange[] family)
    {
        const int most = 8;
        return family.Length <= most ? family : Enumerable.Range(0, most).Select(i => family[i * (family.Length - 1) / (most - 1)]);
    }

    private BracketRemedy? Try(ImmutableArray<BracketChange> changes)
    {
        if (_quick >= MostQuick + MostPairs || _whole >= _mostWhole)
        {
            return null;
        }

        var (job, bracket) = (_job, _bracket);
        foreach (var change in changes)
        {
            if (change.Apply(job, bracket) is not var (nextJob, nextBracket))
            {
                return null;
            }

            (job, bracket) = (nextJob, nextBracket);
        }

        _quick++;
        if (!BracketTrial.MayPass(job, bracket))
        {
            return null;
        }

        _whole++;
        var trial = BracketTrial.Of(job, bracket, _plusMinus, _strength);
        return trial.NothingFails ? new(changes, trial) : null;
    }
}
