using System.Collections.Immutable;
using BracketGen.Mechanism;

namespace BracketGen.Design;

/// <summary>One bracket that could be made, with what is known of it so far.</summary>
/// <remarks>Opening counter-clockwise. Immutable, thread-safe.</remarks>
/// <param name="Placement">Where the stop is.</param>
/// <param name="Travel">What the pedal does with it there.</param>
/// <param name="Bracket">The bracket.</param>
/// <param name="QuickChecks">Travel, stop and flat-pattern checks.</param>
/// <param name="Cost">Figure of merit, see <see cref="CandidateCost"/>: less is better.</param>
public sealed record Candidate(
    StopPlacement Placement, Travel Travel, Bracket Bracket, ImmutableArray<Check> QuickChecks, double Cost);
