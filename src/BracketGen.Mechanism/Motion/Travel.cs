using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;

namespace BracketGen.Mechanism.Motion;

/// <summary>What the pedal does to the valve with the stop in one place: the travel from closed stop to wide-open stop.</summary>
/// <remarks>Lengths in mm of wire at the cable, angles in rad.</remarks>
public sealed record Travel : IMirrored<Travel>
{
    /// <summary>Slack taken up before the valve moves (mm).</summary>
    public required double FreePlay { get; init; }

    /// <summary>Pull the full pedal stroke gives (mm).</summary>
    public required double AvailablePull { get; init; }

    /// <summary>Pull from the closed stop to the wide-open stop, free play not counted (mm).</summary>
    public required double PullToWideOpen { get; init; }

    /// <summary>Full rotation of the valve.</summary>
    public required Angle Rotation { get; init; }

    /// <summary>Opening with the pedal on the floor, up to the full rotation.</summary>
    public required Angle Reached { get; init; }

    /// <summary>The wire at the closed stop.</summary>
    public required TautWire Closed { get; init; }

    /// <summary>The wire at the wide-open stop.</summary>
    public required TautWire WideOpen { get; init; }

    /// <summary>The wire with the pedal on the floor: at the opening <see cref="Reached"/>.</summary>
    public required TautWire OnFloor { get; init; }

    /// <summary>The wire at equal steps of opening, both ends included.</summary>
    public required ImmutableArray<TautWire> Sweep { get; init; }

    /// <summary>Over-travel: pull left at the floor after the valve is wide open (mm); negative if the valve does not open fully.</summary>
    public double OverTravel => AvailablePull - FreePlay - PullToWideOpen;

    /// <summary>Whether the valve reaches its wide-open stop.</summary>
    public bool ReachesWideOpen => OverTravel >= 0;

    /// <summary>Part of the pedal's stroke at which the valve begins to move.</summary>
    public double PedalAtFirstMove => FreePlay / AvailablePull;

    /// <summary>Part of the pedal's stroke at which the valve is wide open; above 1 if the stroke is too short.</summary>
    public double PedalAtWideOpen => (FreePlay + PullToWideOpen) / AvailablePull;

    /// <summary>Minimum moment arm over the sweep (mm), also between its steps: it must stay positive, or the wire cannot open the valve or holds it open.</summary>
    public required double LeastArm { get; init; }

    /// <summary>Minimum straight length over the sweep (mm).</summary>
    public double LeastStraight => Sweep.Min(w => w.Straight);

    /// <summary>Maximum change of wire direction over the sweep.</summary>
    public Angle Wander =>
        new(Sweep.Max(w => (w.Leaving - Closed.Leaving).Normalised.Radians) - Sweep.Min(w => (w.Leaving - Closed.Leaving).Normalised.Radians));

    /// <inheritdoc/>
    public Travel Mirrored() => this with
    {
        Closed = Closed.Mirrored(),
        WideOpen = WideOpen.Mirrored(),
        OnFloor = OnFloor.Mirrored(),
        Sweep = [.. Sweep.Select(w => w.Mirrored())],
    };

    private const int Steps = 48;

    // Where the arm falls at one step and rises at the next, its minimum lies between: there its slope changes sign, found by bisection.
    private static double MinArm(ImmutableArray<TautWire> sweep, Func<double, TautWire> at)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i <= Steps; i++)
        {
            least = Math.Min(least, sweep[i].Arm);
            if (i < Steps && sweep[i].ArmSlope < 0 && sweep[i + 1].ArmSlope > 0)
            {
                var (low, high) = ((double)i / Steps, (i + 1.0) / Steps);
                for (var half = 0; half < 30; half++)
                {
                    var wire = at((low + high) / 2);
                    least = Math.Min(least, wire.Arm);
                    (low, high) = wire.ArmSlope < 0 ? ((low + high) / 2, high) : (low, (low + high) / 2);
                }
            }
        }

        return least;
    }

    /// <summary>The same as <see cref="Solve"/>; null if the groove covers the stop somewhere in the sweep, so that no wire can run to it.</summary>
    public static Travel? TrySolve(Quadrant quadrant, Vector2 seat, double freePlay, double availablePull)
    {
        try
        {
            return Solve(quadrant, seat, freePlay, availablePull);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    /// <summary>Solves the travel for a stop at <paramref name="seat"/> (mm, in the groove's plane).</summary>
    /// <remarks>
    /// pull(θ) = L(0) - L(θ). Where the pull does not suffice, the opening reached solves pull(θ) = S - f by bisection: the
    /// pull grows with the opening as long as the arm is positive.
    /// </remarks>
    /// <exception cref="ArgumentException">The groove comes over the stop somewhere in the sweep: no wire can run to it.</exception>
    public static Travel Solve(Quadrant quadrant, Vector2 seat, double freePlay, double availablePull)
    {
        var rotation = quadrant.Rotation.Value;
        var pocket = quadrant.PocketNormal;
        TautWire At(double fraction) => TautWire.Solve(quadrant, pocket, seat, fraction * rotation);
        var sweep = ImmutableArray.CreateRange(Enumerable.Range(0, Steps + 1).Select(i => At((double)i / Steps)));
        TautWire closed = sweep[0], wideOpen = sweep[^1];
        var spare = availablePull - freePlay;
        double reached = 1;
        if (closed.Length - wideOpen.Length > spare)
        {
            var (low, high) = (0.0, 1.0);
            for (var i = 0; i < 60; i++)
            {
                reached = (low + high) / 2;
                (low, high) = closed.Length - At(reached).Length > spare ? (low, reached) : (reached, high);
            }
        }

        return new()
        {
            FreePlay = freePlay,
            AvailablePull = availablePull,
            PullToWideOpen = closed.Length - wideOpen.Length,
            Rotation = rotation,
            Reached = reached * rotation,
            Closed = closed,
            WideOpen = wideOpen,
            OnFloor = reached == 1 ? wideOpen : At(reached),
            Sweep = sweep,
            LeastArm = MinArm(sweep, At),
        };
    }
}
