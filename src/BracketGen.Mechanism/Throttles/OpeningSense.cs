using BracketGen.Geometry;

namespace BracketGen.Mechanism.Throttles;

/// <summary>Which way a throttle body opens, for the eye that looks at the quadrant from outside along the throttle shaft.</summary>
public enum OpeningSense
{
    /// <summary>Counter-clockwise: the way the solvers handle.</summary>
    CounterClockwise,

    /// <summary>Clockwise: mirrored on the way in and back on the way out.</summary>
    Clockwise,
}

/// <summary>Between the frame as measured and the frame in which a body is solved, where it opens counter-clockwise.</summary>
/// <remarks>The only place that asks which way a body opens, but for the words that say so.</remarks>
public static class OpeningSenses
{
    /// <summary>The other way.</summary>
    public static OpeningSense Opposite(this OpeningSense sense) =>
        sense == OpeningSense.Clockwise ? OpeningSense.CounterClockwise : OpeningSense.Clockwise;

    /// <summary>Something as measured in the frame in which it is solved, or something solved in the frame as measured: its mirror image for a body that opens clockwise.</summary>
    /// <param name="sense">Which way the body opens.</param>
    /// <param name="thing">What belongs to the body.</param>
    public static T Turned<T>(this OpeningSense sense, T thing)
        where T : IMirrored<T> => sense == OpeningSense.Clockwise ? thing.Mirrored() : thing;
}
