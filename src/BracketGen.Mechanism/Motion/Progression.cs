using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;

namespace BracketGen.Mechanism.Motion;

/// <summary>One point of the progression: pedal, valve and flow area as parts of their full range, 0 to 1.</summary>
/// <param name="Pedal">Part of the pad's stroke.</param>
/// <param name="Valve">Part of the valve's rotation.</param>
/// <param name="Area">Open area over the open area at the wide-open stop.</param>
public readonly record struct ProgressionPoint(double Pedal, double Valve, double Area);

/// <summary>How the foot changes the flow: pedal to valve to flow area.</summary>
/// <param name="Points">The curve at equal steps of pad travel, released to floor.</param>
/// <param name="PedalAtFirstMove">Part of the stroke at which the valve begins to move.</param>
/// <param name="Suddenness">
/// Off-idle gain: the flow area gained in the first tenth of the stroke after the valve begins to move,
/// as a part of all that can be gained, over that tenth. 1 is proportional; 2 means that a tenth of the stroke opens a fifth of
/// the area. Our own measure, no source.
/// </param>
public sealed record Progression(ImmutableArray<ProgressionPoint> Points, double PedalAtFirstMove, double Suddenness)
{
    /// <summary>Off-idle gain above which a vehicle is hard to drive slowly (our judgement, no source).</summary>
    public const double Sudden = 2;

    /// <summary>The progression of a valve with the given travel and lever.</summary>
    /// <param name="travel">The travel under load.</param>
    /// <param name="lever">The pedal's lever.</param>
    /// <param name="valve">The valve.</param>
    /// <param name="steps">Number of steps of pad travel.</param>
    public static Progression Of(LoadedTravel travel, PedalLever lever, ButterflyValve valve, int steps = 100)
    {
        double closed = valve.AreaFraction(Angle.Zero), open = valve.AreaFraction(travel.Travel.Rotation);
        double PullAt(double pedal) => lever.PullAt(pedal * lever.FullStroke);
        var first = lever.PadAt(travel.PullAt(Angle.Zero)) / lever.FullStroke;
        var pedals = Enumerable.Range(0, steps + 1).Select(i => (double)i / steps).ToList();
        var openings = travel.OpeningsAt([.. pedals.Select(PullAt), PullAt(first + 0.1)]);
        return new(
            [.. pedals.Zip(openings, (pedal, opening) =>
                new ProgressionPoint(pedal, opening.Radians / travel.Travel.Rotation.Radians, valve.AreaFraction(opening) / open))],
            first,
            (valve.AreaFraction(openings[^1]) - closed) / (open - closed) / 0.1);
    }

    /// <inheritdoc/>
    public bool Equals(Progression? other) => other is not null && PedalAtFirstMove == other.PedalAtFirstMove
        && Suddenness == other.Suddenness && Points.SequenceEqual(other.Points);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Points.Length, PedalAtFirstMove, Suddenness);
}
