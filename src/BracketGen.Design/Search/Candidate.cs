using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.SheetMetal.Forming;

namespace BracketGen.Design.Search;

/// <summary>One bracket that could be made, with what is known of it so far.</summary>
/// <remarks>Most candidates are never looked at closely, so their checks are made when asked for.</remarks>
public sealed class Candidate : IMirrored<Candidate>
{
    private readonly Lazy<ImmutableArray<Check>> _quickChecks;
    private BendResult? _bent;

    /// <summary>A candidate whose quick checks are found by <paramref name="quickChecks"/>.</summary>
    public Candidate(
        StopPlacement placement, Travel travel, Bracket bracket, double give, double cost, Func<ImmutableArray<Check>> quickChecks)
    {
        (Placement, Travel, Bracket, Give, Cost) = (placement, travel, bracket, give, cost);
        _quickChecks = new(quickChecks);
    }

    /// <summary>Its place, with what all brackets there share; null where the candidate does not come from a search.</summary>
    internal Place? Place { get; init; }

    /// <summary>The mechanism at its stop, whatever bracket holds it.</summary>
    /// <param name="job">The job.</param>
    internal StopMechanism StopOf(Job job) => Place?.Stop.Value ?? StopMechanism.Of(job, Travel, Placement);

    /// <summary>What moves, hangs and stands round it.</summary>
    /// <param name="job">The job.</param>
    internal Surroundings Around(Job job) => new(Bracket, job, Placement, Travel, Place?.OuterLine, Place?.Wire);

    /// <summary>The same place and travel with another bracket that seats the outer alike.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">The bracket.</param>
    public Candidate With(Job job, Bracket bracket)
    {
        // The give is in proportion to the tension, whatever that is.
        var give = Give * StopGive.Of(bracket, 1) / StopGive.Of(Bracket, 1);
        var ofFlat = BracketChecks.OfFlat(Bracket, job.Vehicle.Cable, job.Shop.Process).Select(c => (c.Id, c.Number)).ToHashSet();
        return new(
            Placement, Travel, bracket, give, BracketCost.Of(bracket, Placement, give, job.Vehicle.Cable.OuterEnd.AdjusterRange, job.Shop.Rates).Total,
            () =>
            [
                .. QuickChecks.Where(c => !ofFlat.Contains((c.Id, c.Number))),
                .. BracketChecks.OfFlat(bracket, job.Vehicle.Cable, job.Shop.Process),
            ])
        {
            Place = Place,
        };
    }

    /// <inheritdoc/>
    public Candidate Mirrored() => new(Placement.Mirrored(), Travel.Mirrored(), Bracket.Mirrored(), Give, Cost, () => QuickChecks);

    /// <summary>Where the stop is.</summary>
    public StopPlacement Placement { get; }

    /// <summary>What the pedal does with it there.</summary>
    public Travel Travel { get; }

    /// <summary>The bracket; with its <see cref="Part.Bracket.Plan"/> once it was bent.</summary>
    public Bracket Bracket { get; private set; }

    /// <summary>What bending it with the shop's tools came to; null for a flat plate. Found once; one thread at a time.</summary>
    /// <param name="job">The job.</param>
    internal BendResult? Bend(Job job)
    {
        if (_bent is null && !Bracket.Flat.Bends.IsEmpty)
        {
            _bent = BendChecks.Bend(Bracket, job.Shop);
            Bracket = Bracket with { Plan = _bent.Plan };
        }

        return _bent;
    }

    /// <summary>Rough give of the stop along the wire under its largest tension (mm).</summary>
    public double Give { get; }

    /// <summary>What it costs with what its preferences are worth, see <see cref="BracketCost.Total"/>: less is better.</summary>
    public double Cost { get; }

    /// <summary>Travel, stop and flat-pattern checks.</summary>
    public ImmutableArray<Check> QuickChecks => _quickChecks.Value;
}
