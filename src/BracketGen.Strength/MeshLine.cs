using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Strength;

/// <summary>A line in the flat pattern that the mesh's edges must follow, with the edge length wanted along it.</summary>
/// <remarks>What lies outside the metal is left out.</remarks>
/// <param name="Line">The line: straight, or an arc up to a full circle.</param>
/// <param name="Size">Edge length wanted along it (mm), positive.</param>
public readonly record struct MeshLine(Segment Line, double Size)
{
    /// <summary>Lines that cut a bend zone into <paramref name="rows"/> equal rows, both borders included.</summary>
    /// <param name="start">One border of the zone.</param>
    /// <param name="end">The other border, running the same way.</param>
    /// <param name="rows">Rows of triangles over the bend, at least one; four keep a right angle's chords within 1 % of its arc.</param>
    /// <param name="size">Edge length wanted (mm).</param>
    public static ImmutableArray<MeshLine> AcrossZone(LineSegment start, LineSegment end, int rows, double size)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(rows, 1);
        return [.. Enumerable.Range(0, rows + 1).Select(i => (double)i / rows).Select(f => new MeshLine(
            new LineSegment(start.Start + f * (end.Start - start.Start), start.End + f * (end.End - start.End)), size))];
    }

    /// <summary>The rim of a washer, a seat or any other disc.</summary>
    /// <param name="disc">The disc.</param>
    /// <param name="size">Edge length wanted (mm).</param>
    public static MeshLine Rim(Disc disc, double size) =>
        new(new ArcSegment(disc.Centre, disc.Radius, Angle.Zero, new(2 * Math.PI)), size);
}
