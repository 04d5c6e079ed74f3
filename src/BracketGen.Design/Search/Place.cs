using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Search;

/// <summary>A place of the stop with what every bracket there has in common, each found once, when first asked for.</summary>
internal sealed class Place
{
    private readonly Lazy<Travel> _travel;
    private readonly Lazy<double> _tension;
    private readonly Lazy<ImmutableArray<Check>> _checks;

    private Place(Job job, StopPlacement placement, Lazy<Travel> travel)
    {
        (Placement, _travel, OuterLine) = (placement, travel, Surroundings.LineOf(job, placement));
        _tension = new(() => Travel.Sweep.Max(w => job.Body.Springs.TorqueAt(w.Opening.Radians / Travel.Rotation.Radians) / Math.Max(1, w.Arm)));
        Wire = Surroundings.WireOf(job, placement, () => Travel);
        Stop = new(() => StopMechanism.Of(job, Travel, placement));
        _checks = new(() =>
            [.. TravelChecks.Of(job, Travel), .. MechanismChecks.OfPlacement(job, Travel, placement)]);
    }

    /// <summary>The place for a leaving angle with the adjuster <paramref name="shift"/> (mm) off mid range; null where there is none.</summary>
    public static Place? At(Job job, Angle leaving, double shift)
    {
        double freePlay = job.Preferences.FreePlay.Value, pull = job.Vehicle.Pedal.AvailablePull.Value;
        if (StopPlacement.At(job.Body.Quadrant, job.Vehicle.Cable.FreeInnerLength.Value, freePlay, leaving, shift) is not { } placement)
        {
            return null;
        }

        if (job.Body.Quadrant.Groove is CircularGroove)
        {
            return new(job, placement, new(() => Travel.Solve(job.Body.Quadrant, placement.Seat.XY, placement.FreePlay, pull)));
        }

        // A groove that is not round may come over the stop as it turns: no wire can run there.
        return Travel.TrySolve(job.Body.Quadrant, placement.Seat.XY, placement.FreePlay, pull) is { } travel ? new(job, placement, new(travel)) : null;
    }

    /// <summary>Where the stop is.</summary>
    public StopPlacement Placement { get; }

    /// <summary>The mechanism there, whatever bracket holds the stop.</summary>
    public Lazy<StopMechanism> Stop { get; }

    /// <summary>The wire there over the sweep.</summary>
    public Lazy<ImmutableArray<Rod>> Wire { get; }

    /// <summary>The outer's line from there.</summary>
    public Lazy<ImmutableArray<ThrottlePoint>> OuterLine { get; }

    /// <summary>What the pedal does with it there.</summary>
    public Travel Travel => _travel.Value;

    /// <summary>Largest tension in the wire over an opening (N).</summary>
    public double Tension => _tension.Value;

    /// <summary>The checks of travel and place.</summary>
    public ImmutableArray<Check> Checks => _checks.Value;

    /// <summary>Whether travel and place alone do not rule out whatever gets there.</summary>
    public bool IsGoodEnough => Checks.All(CandidateSearch.IsGoodEnough);
}
