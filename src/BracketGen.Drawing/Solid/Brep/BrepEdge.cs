namespace BracketGen.Drawing.Solid.Brep;

/// <summary>An edge of a solid: a piece of a line or circle between two corners, or a whole circle from one corner to itself.</summary>
/// <param name="Start">Number of the corner where it begins.</param>
/// <param name="End">Number of the corner where it ends.</param>
/// <param name="Curve">What it lies on, run through from start to end.</param>
public sealed record BrepEdge(int Start, int End, BrepCurve Curve);

/// <summary>An edge as one of its two faces uses it.</summary>
/// <param name="Edge">Number of the edge.</param>
/// <param name="IsForward">Whether it is travelled from its start to its end.</param>
public readonly record struct BrepEdgeUse(int Edge, bool IsForward)
{
    /// <summary>The same edge, travelled the other way.</summary>
    public BrepEdgeUse Reversed => new(Edge, !IsForward);
}
