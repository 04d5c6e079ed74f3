using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;

namespace BracketGen.Design.Inputs;

/// <summary>What a cable does that does not come from the pedal.</summary>
public enum CableDuty
{
    /// <summary>It opens the valve for the cruise control.</summary>
    CruiseControl,

    /// <summary>It tells an automatic gearbox how far the valve is open.</summary>
    KickDown,

    /// <summary>It opens the valve from a lever that stays where it is put.</summary>
    HandThrottle,

    /// <summary>It raises the idle speed.</summary>
    IdleUp,

    /// <summary>Something else.</summary>
    Other,
}

/// <summary>A cable that the vehicle brings besides the one from the pedal.</summary>
/// <param name="Name">Its name in the user's words; no other cable of the vehicle has it.</param>
/// <param name="Duty">What it does.</param>
/// <param name="From">Where it comes from, in the user's words.</param>
public sealed record OtherCable(string Name, CableDuty Duty, string From)
{
    /// <summary>What is fixed on its wire's end; null where nobody looked.</summary>
    public EndFitting? Fitting { get; init; }

    /// <summary>The whole cable; null where it was not measured, as for one that is left out.</summary>
    public Cable? Cable { get; init; }

    /// <summary>Wire (mm) that its far end pulls over its whole stroke, or needs drawn from closed to wide open; null where it was not measured.</summary>
    public Measured? Stroke { get; init; }

    /// <summary>Wire (mm) that can be drawn before the far end meets its own stop; null where it was not measured.</summary>
    public double? MaxStroke { get; init; }

    /// <summary>Wire (mm) that the far end takes up by itself while the valve opens without it; null where it takes up none or nobody measured it.</summary>
    public double? TakeUp { get; init; }

    /// <summary>Pull at the end fitting (N) that draws the wire, the largest over the stroke, far end connected; null where it was not measured.</summary>
    public Measured? DrawForce { get; init; }

    /// <summary>Whether an end of it is hooked to the pedal; null where nobody looked.</summary>
    public bool? IsOnPedal { get; init; }

    /// <summary>Whether something with a drive of its own pulls it.</summary>
    public bool HasActuator => Duty is CableDuty.CruiseControl or CableDuty.IdleUp;
}
