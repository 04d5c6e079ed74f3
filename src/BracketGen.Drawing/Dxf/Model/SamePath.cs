using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Model;

/// <summary>Tells whether two entities run along the same path, whichever way and from wherever.</summary>
internal static class SamePath
{
    /// <summary>The entities less those on the path of an earlier one on the same layer.</summary>
    public static ImmutableArray<DxfEntity> LeaveOut(IEnumerable<DxfEntity> entities)
    {
        // What runs along one path has one middle: a sheet of nested parts has tens of thousands of entities.
        var kept = ImmutableArray.CreateBuilder<DxfEntity>();
        var near = new Dictionary<(long, long), List<DxfEntity>>();
        foreach (var entity in entities)
        {
            var middle = entity.Bounds.Centre;
            (long, long) Cell(double dx, double dy) => ((long)Math.Floor(middle.X + dx), (long)Math.Floor(middle.Y + dy));
            const double off = 10 * Tolerance.Point;
            if (!new[] { Cell(-off, -off), Cell(off, -off), Cell(-off, off), Cell(off, off) }.Distinct()
                .Any(c => near.GetValueOrDefault(c)?.Exists(k => k.Layer == entity.Layer && Same(k, entity)) is true))
            {
                kept.Add(entity);
                if (!near.TryGetValue(Cell(0, 0), out var here))
                {
                    near.Add(Cell(0, 0), here = []);
                }

                here.Add(entity);
            }
        }

        return kept.ToImmutable();
    }

    private static bool Same(DxfEntity a, DxfEntity b) => (a, b) switch
    {
        (DxfText p, DxfText q) => p == q,
        (DxfText, _) or (_, DxfText) => false,
        (DxfCircle p, DxfCircle q) => Near(p.Centre, q.Centre) && Math.Abs(p.Radius - q.Radius) <= Tolerance.Point,
        (DxfPolyline { Closed: true } p, DxfPolyline { Closed: true } q) => p.Vertices.Length == q.Vertices.Length
            && SameRing([.. p.Segments], [.. q.Segments]),
        (DxfCircle, _) or (_, DxfCircle) or (DxfPolyline { Closed: true }, _) or (_, DxfPolyline { Closed: true }) => false,
        _ => SameChain([.. a.Segments], [.. b.Segments]),
    };

    private static bool SameRing(ImmutableArray<Segment> a, ImmutableArray<Segment> b) =>
        Enumerable.Range(0, b.Length).Any(turn => SameChain(a, [.. b[turn..], .. b[..turn]]));

    private static bool SameChain(ImmutableArray<Segment> a, ImmutableArray<Segment> b) => a.Length == b.Length
        && (a.Zip(b).All(t => Same(t.First, t.Second))
            || a.Zip(b.Reverse()).All(t => Same(t.First, t.Second.Reversed)));

    // A line and an arc that share ends and middle are the same, and so are two arcs.
    private static bool Same(Segment a, Segment b) =>
        Near(a.Start, b.Start) && Near(a.End, b.End) && Near(a.PointAt(0.5), b.PointAt(0.5));

    private static bool Near(Vector2 a, Vector2 b) => a.DistanceTo(b) <= Tolerance.Point;
}
