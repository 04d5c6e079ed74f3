using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Strength.Meshing;

/// <summary>What to mesh, and how finely.</summary>
public sealed record MeshRequest
{
    /// <summary>How fast the size grows where nothing else is said (mm per mm).</summary>
    public const double UsualGrowth = 0.3;

    /// <summary>Angle of an arc that an edge spans where nothing else is said (rad): twelve edges round a hole, three round a quarter fillet.</summary>
    public const double UsualAnglePerEdge = Math.PI / 6;

    /// <summary>A request.</summary>
    /// <param name="region">The flat pattern.</param>
    /// <param name="size">Edge length wanted where nothing asks for less (mm), positive.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is not positive.</exception>
    public MeshRequest(Region region, double size)
    {
        if (!(size > 0 && double.IsFinite(size)))
        {
            throw new ArgumentOutOfRangeException(nameof(size), size, "The mesh size must be more than zero (mm).");
        }

        Region = region;
        Size = size;
        HoleSize = size;
    }

    /// <summary>The flat pattern.</summary>
    public Region Region { get; }

    /// <summary>Edge length wanted where nothing asks for less (mm).</summary>
    public double Size { get; }

    /// <summary>Edge length wanted at the holes (mm).</summary>
    public double HoleSize { get; init; }

    /// <summary>Lines that edges must follow: bend zones, rims of washers and seats.</summary>
    public ImmutableArray<MeshLine> Lines { get; init; } = [];

    /// <summary>Places where the mesh is to be finer than anything else asks for.</summary>
    public ImmutableArray<FineSpot> Spots { get; init; } = [];

    /// <summary>How fast the size may grow with distance from where it is small (mm per mm).</summary>
    public double Growth { get; init; } = UsualGrowth;

    /// <summary>Largest angle of an arc that one edge may span (rad).</summary>
    public double AnglePerEdge { get; init; } = UsualAnglePerEdge;

    /// <summary>The same for hollow arcs of the outline, where stress gathers (rad).</summary>
    public double FilletAnglePerEdge { get; init; } = UsualAnglePerEdge;
}

/// <summary>A place in the flat pattern with the edge length wanted there.</summary>
/// <param name="At">The place.</param>
/// <param name="Size">Edge length (mm), positive.</param>
public readonly record struct FineSpot(FlatPoint At, double Size);

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
