using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Meshing;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Parts;

/// <summary>A formed part, bolted down, with a loaded seat: the input of the strength calculation.</summary>
public sealed record FoldedPart
{
    /// <summary>The flat pattern.</summary>
    public required Region Flat { get; init; }

    /// <summary>Where each point of the flat pattern comes to lie on the folded middle surface (mm).</summary>
    /// <remarks>Flanges keep their measures; a bend may be longer on the middle surface than its zone, which is as long as the neutral axis.</remarks>
    public required Func<FlatPoint, ThrottlePoint> MiddleSurface { get; init; }

    /// <summary>The bends.</summary>
    public ImmutableArray<BendZone> Bends { get; init; } = [];

    /// <summary>Sheet thickness (mm).</summary>
    public required double Thickness { get; init; }

    /// <summary>The metal.</summary>
    public required SheetMaterial Material { get; init; }

    /// <summary>Washers, in the flat pattern: the sheet under them is clamped.</summary>
    public required ImmutableArray<Disc> Washers { get; init; }

    /// <summary>Outer rim of the seat that carries the load, in the flat pattern.</summary>
    public required Disc Seat { get; init; }

    /// <summary>What is fixed to the seat and swings with it.</summary>
    public SeatBody SeatBody { get; init; }

    /// <summary>The elastic sheet that it is bolted on; null where the washers hold it against something rigid.</summary>
    public ElasticBase? Base { get; init; }

    /// <summary>Meshes the flat pattern.</summary>
    /// <param name="size">Edge length away from holes and bends (mm).</param>
    /// <param name="holeSize">Edge length at holes, washers and the seat (mm).</param>
    /// <param name="bendRows">Rows of triangles across each bend, at least one.</param>
    /// <param name="growth">How fast the size may grow with distance from where it is small (mm per mm).</param>
    /// <param name="filletAngle">Largest angle of a hollow arc of the outline that one edge may span (rad).</param>
    /// <param name="spots">Where it is to be finer than that.</param>
    /// <exception cref="MeshException">The contours cross.</exception>
    public TriangleMesh Mesh(
        double size, double holeSize, int bendRows = 4, double growth = MeshRequest.UsualGrowth, double filletAngle = MeshRequest.UsualAnglePerEdge, ImmutableArray<FineSpot> spots = default)
    {
        var lines = Bends
            .SelectMany(b => MeshLine.AcrossZone(b.Start, b.End, bendRows, Math.Min(size, 2 * b.Width / bendRows)))
            .Concat((Washers.Contains(Seat) ? Washers : Washers.Append(Seat)).Select(d => MeshLine.Rim(d, Math.Min(size, holeSize))));
        return Mesher.Mesh(new(Flat, size) { HoleSize = Math.Min(size, holeSize), Lines = [.. lines], Growth = growth, FilletAnglePerEdge = filletAngle, Spots = spots.IsDefault ? [] : spots });
    }

    /// <summary>Folds, clamps and factorises the part on a mesh of its flat pattern.</summary>
    /// <exception cref="ArgumentException">A washer lies on no metal.</exception>
    /// <exception cref="NotHeldException">The washers do not hold the part.</exception>
    public PreparedPart Prepare(TriangleMesh flat)
    {
        foreach (var washer in Washers)
        {
            if (flat.NodesInRing(new(washer.Centre), 0, washer.Radius).IsEmpty)
            {
                throw new ArgumentException(FormattableString.Invariant(
                    $"The washer of radius {washer.Radius:0.##} mm at ({washer.Centre.X:0.##}, {washer.Centre.Y:0.##}) lies on no metal."));
            }
        }

        var clamped = Washers.SelectMany(w => flat.NodesInRing(new(w.Centre), 0, w.Radius)).Distinct().Order();
        var mesh = ShellMesh.Fold(flat, MiddleSurface);
        var model = new ShellModel(mesh, Thickness, Material, Held.Clamped(clamped))
        {
            Bodies = SeatBody.Mass > 0 ? [OnSeat(flat, mesh)] : [],
            Curvature = Bends.Any(b => b.InsideRadius is not null) ? [.. flat.Triangles.Select(t => CurvatureAt(flat, t))] : [],
        };
        return new(this, flat, model, ShellSystem.Factorise(model));
    }

    private SurfaceFactors CurvatureAt(TriangleMesh flat, Triangle t)
    {
        var middle = FlatPoint.Middle(flat.Nodes[t.A], FlatPoint.Middle(flat.Nodes[t.B], flat.Nodes[t.C]));
        foreach (var bend in Bends)
        {
            if (bend.InsideRadius is { } radius && bend.Holds(middle))
            {
                var inside = CurvedSheet.InsideFactor(radius / Thickness);
                return bend.IsInsideTop ? new(inside, 1) : new(1, inside);
            }
        }

        return new(1, 1);
    }

    // It hangs on the nodes that carry a force on the seat, in the same shares, so that its point of reference is the seat's centre.
    private AttachedBody OnSeat(TriangleMesh flat, ShellMesh folded)
    {
        var shares = SeatLoad.Shares(flat, Seat);
        var top = SeatLoad.TopOf(flat, folded, Seat);
        return new(shares, SeatBody.Mass, SeatBody.Height * top, top, SeatBody.AboutAxis, SeatBody.AboutAcross);
    }

    /// <summary>Meshes, folds, clamps and factorises the part.</summary>
    /// <param name="size">Edge length away from holes and bends (mm).</param>
    /// <param name="holeSize">Edge length at holes, washers and the seat (mm).</param>
    /// <param name="bendRows">Rows of triangles across each bend, at least one.</param>
    /// <exception cref="MeshException">The contours cross.</exception>
    /// <exception cref="NotHeldException">The washers do not hold the part.</exception>
    public PreparedPart Prepare(double size, double holeSize, int bendRows = 4) => Prepare(Mesh(size, holeSize, bendRows));
}

/// <summary>The strip of the flat pattern that becomes a bend.</summary>
/// <remarks>The borders run the same way and may stick out of the metal.</remarks>
/// <param name="Start">Where the bend begins.</param>
/// <param name="End">Where it ends.</param>
public readonly record struct BendZone(LineSegment Start, LineSegment End)
{
    /// <summary>Width of the strip (mm): the arc length of the middle surface.</summary>
    public double Width => Start.DistanceTo((End.Start + End.End) / 2);

    /// <summary>Inside radius (mm); null where the sheet's curvature is left out of the stresses.</summary>
    public double? InsideRadius { get; init; }

    /// <summary>Whether the inside of the bend is the top of the sheet.</summary>
    public bool IsInsideTop { get; init; }

    /// <summary>Whether a point lies in the strip.</summary>
    internal bool Holds(FlatPoint point)
    {
        var across = ((End.Start + End.End) / 2 - (Start.Start + Start.End) / 2).Unit;
        var depth = (point.Vector - Start.Start).Dot(across);
        return depth > 0 && depth < Width;
    }
}
