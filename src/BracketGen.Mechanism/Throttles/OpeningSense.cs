namespace BracketGen.Mechanism.Throttles;

/// <summary>Which way the quadrant turns when the valve opens, seen from outside along the throttle shaft.</summary>
public enum OpeningSense
{
    /// <summary>Counter-clockwise: the sense in which the solver computes.</summary>
    CounterClockwise,

    /// <summary>Clockwise: mirrored on the way in and back on the way out.</summary>
    Clockwise,
}
