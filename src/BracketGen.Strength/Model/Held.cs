using System.Collections.Immutable;

namespace BracketGen.Strength.Model;

/// <summary>One freedom of one node that does not move, or moves by a given amount.</summary>
/// <param name="Node">The node.</param>
/// <param name="Freedom">The freedom.</param>
/// <param name="Value">Displacement (mm) or rotation (rad); zero if it is simply held.</param>
public readonly record struct Held(int Node, Freedom Freedom, double Value = 0)
{
    /// <summary>All six freedoms of <paramref name="nodes"/> at zero: the sheet clamped under a washer.</summary>
    public static ImmutableArray<Held> Clamped(IEnumerable<int> nodes) =>
        [.. nodes.SelectMany(n => Enumerable.Range(0, 6).Select(f => new Held(n, (Freedom)f)))];
}

/// <summary>One of the six ways a node of a shell can move.</summary>
public enum Freedom
{
    /// <summary>Along x (mm).</summary>
    X,

    /// <summary>Along y (mm).</summary>
    Y,

    /// <summary>Along z (mm).</summary>
    Z,

    /// <summary>Rotation about x, right-hand rule (rad).</summary>
    AboutX,

    /// <summary>Rotation about y, right-hand rule (rad).</summary>
    AboutY,

    /// <summary>Rotation about z, right-hand rule (rad).</summary>
    AboutZ,
}
