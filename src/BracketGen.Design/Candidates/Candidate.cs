using System.Collections.Immutable;
using BracketGen.Mechanism;

namespace BracketGen.Design;

/// <summary>One bracket that could be made, with what is known of it so far.</summary>
/// <remarks>Opening counter-clockwise. Most candidates are never looked at closely, so their checks are made when asked for.</remarks>
public sealed class Candidate
{
    private readonly Lazy<ImmutableArray<Check>> _quickChecks;

    /// <summary>A candidate whose quick checks are found by <paramref name="quickChecks"/>.</summary>
    public Candidate(
        StopPlacement placement, Travel travel, Bracket bracket, double give, double cost, Func<ImmutableArray<Check>> quickChecks)
    {
        (Placement, Travel, Bracket, Give, Cost) = (placement, travel, bracket, give, cost);
        _quickChecks = new(quickChecks);
    }

    /// <summary>Where the stop is.</summary>
    public StopPlacement Placement { get; }

    /// <summary>What the pedal does with it there.</summary>
    public Travel Travel { get; }

    /// <summary>The bracket.</summary>
    public Bracket Bracket { get; }

    /// <summary>Rough give of the stop along the wire under its largest tension (mm).</summary>
    public double Give { get; }

    /// <summary>Figure of merit, see <see cref="CandidateCost"/>: less is better.</summary>
    public double Cost { get; }

    /// <summary>Travel, stop and flat-pattern checks.</summary>
    public ImmutableArray<Check> QuickChecks => _quickChecks.Value;
}
