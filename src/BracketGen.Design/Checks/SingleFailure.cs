namespace BracketGen.Design.Checks;

/// <summary>Which part is severed, loose or worse than it was measured.</summary>
public enum FailureId
{
    /// <summary>The wire breaks at the quadrant.</summary>
    WireAtQuadrant,

    /// <summary>The wire breaks at the pedal.</summary>
    WireAtPedal,

    /// <summary>The end fitting leaves its pocket.</summary>
    FittingOutOfPocket,

    /// <summary>The outer leaves the stop.</summary>
    OuterOffStop,

    /// <summary>Locknut or clip of the outer's end loosens.</summary>
    OuterEndLoose,

    /// <summary>One of the return springs breaks; <see cref="SingleFailure.Number"/> says which.</summary>
    ReturnSpring,

    /// <summary>The spring at the pedal breaks.</summary>
    PedalSpring,

    /// <summary>One bolt of the bracket is lost.</summary>
    BracketBolt,

    /// <summary>A frayed strand of the wire catches in the outer.</summary>
    StrandInOuter,

    /// <summary>Heat softens the outer, and the wire cuts into its liner.</summary>
    OuterSoftened,
}

/// <summary>Who asks what happens then.</summary>
public enum FailureRule
{
    /// <summary>49 CFR 571.124 S5.1: one of two sources of energy fails (from memory).</summary>
    EnergySource,

    /// <summary>49 CFR 571.124 S5.2: a component is severed or disconnected at a single point (from memory).</summary>
    SingleSeverance,

    /// <summary>Nobody but us.</summary>
    Ours,
}

/// <summary>What happens then.</summary>
public enum FailureAnswer
{
    /// <summary>The valve closes, whatever is assumed.</summary>
    Closes,

    /// <summary>The valve hangs open somewhere.</summary>
    Hangs,

    /// <summary>It closes with the usual values, but not at the bad end of what was assumed.</summary>
    NotKnown,

    /// <summary>This was not looked at.</summary>
    NotLookedAt,

    /// <summary>There is no such part.</summary>
    NotFitted,
}

/// <summary>One thing that breaks or comes loose, and whether the valve still closes.</summary>
/// <remarks>Weakest springs, most friction and drag, dirt and cold counted, as in the return checks.</remarks>
/// <param name="Id">What fails.</param>
/// <param name="Rule">Who asks.</param>
/// <param name="Answer">What happens.</param>
public sealed record SingleFailure(FailureId Id, FailureRule Rule, FailureAnswer Answer)
{
    /// <summary>Number of the return spring, from 1; null for everything else, and where the springs were not measured one by one.</summary>
    public int? Number { get; init; }

    /// <summary>Minimum closing torque left over the sweep (N·mm), negative where it hangs; null where it was not calculated.</summary>
    public double? TorqueLeft { get; init; }

    /// <summary>Time from wide open to closed (s); null where it was not calculated or the valve hangs.</summary>
    public double? ClosingTime { get; init; }
}
