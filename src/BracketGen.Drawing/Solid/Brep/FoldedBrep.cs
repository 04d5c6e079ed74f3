using System.Collections.Immutable;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Drawing.Solid.Brep;

/// <summary>Makes the exact solid of a folded sheet.</summary>
public static class FoldedBrep
{
    /// <summary>
    /// The solid of <paramref name="sheet"/>: each flange has a top and a bottom plane, each bend an inside and an outside cylinder, and
    /// the cut edge is made of planes and cylinders square to the sheet. A plane that runs on from a flange over a bend is one face.
    /// </summary>
    /// <exception cref="ArgumentException">A bend is not crossed by just two edges of the outline.</exception>
    public static BrepSolid Of(FoldedSheet sheet) => new Builder(sheet).Build();

    /// <summary>A piece of a contour of the blank, with the edges it makes at the bottom and at the top of the sheet.</summary>
    private sealed record Side(OutlinePiece Piece, int From, int To, int Bottom, int Top);

    /// <summary>A bend: the side that leads over it, the side that leads back, and its straight edges, each as (bottom, top).</summary>
    private sealed record Strip(Bend Bend, Side Over, Side Back, (int Bottom, int Top) Near, (int Bottom, int Top) Far);

    private sealed class Builder(FoldedSheet sheet)
    {
        private readonly List<Vector3> _corners = [];
        private readonly List<BrepEdge> _edges = [];
        private readonly List<BrepFace> _faces = [];
        private readonly Dictionary<int, int> _rises = [];
        private readonly double _thickness = sheet.Flat.Thickness;

        // Corners come in pairs: 2 k lies at the bottom of the sheet, 2 k + 1 at its top, both over point k of the flat pattern.
        private static int BottomOf(int point) => 2 * point;

        private static int TopOf(int point) => 2 * point + 1;

        public BrepSolid Build()
        {
            var flat = sheet.Flat;
            var outline = SidesOf(OutlinePiece.Of(flat));
            var strips = flat.Bends.Select(b => StripOf(b, outline)).ToList();
            var holes = flat.Blank.Holes.Select(hole =>
            {
                var flange = flat.ZoneOf(new(hole.Bounds.Centre)).Flange;
                return (Flange: flange, Sides: SidesOf([.. hole.Segments.Select(s => new OutlinePiece(s, flange, null))]));
            }).ToList();
            for (var flange = 0; flange < flat.FlangeCount; flange++)
            {
                var sides = outline.Where(s => s.Piece.Bend is null && s.Piece.Flange == flange).ToList();
                FlangeFaces(flange, sides, strips, holes.Where(h => h.Flange == flange).Select(h => h.Sides));
            }

            strips.ForEach(BendFaces);
            Walls(outline);
            holes.ForEach(h => Walls(h.Sides));
            return new([.. _corners], [.. _edges], [.. _faces]);
        }

        private List<Side> SidesOf(List<OutlinePiece> pieces)
        {
            var first = _corners.Count / 2;
            foreach (var piece in pieces)
            {
                var point = piece.Segment.Start;
                var flange = piece.Bend is { } bend && bend.Depth(new(point)) > bend.Allowance / 2 ? bend.To : piece.Flange;
                _corners.Add(sheet.Flanges[flange].ToWorld(point));
                _corners.Add(sheet.Flanges[flange].ToWorld(point, _thickness));
            }

            return
            [
                .. pieces.Select((piece, i) =>
                {
                    int from = first + i, to = first + (i + 1) % pieces.Count;
                    return new Side(piece, from, to, AddEdge(piece, BottomOf(from), BottomOf(to), 0), AddEdge(piece, TopOf(from), TopOf(to), _thickness));
                }),
            ];
        }

        private int AddEdge(OutlinePiece piece, int start, int end, double height)
        {
            if (piece.Bend is { } bend)
            {
                var (point, axis) = AxisOf(bend);
                var foot = point + (_corners[start] - point).Dot(axis) * axis;
                var isOver = piece.Segment.StartTangent.Dot(bend.Across) > 0;
                return AddCircle(start, end, foot, isOver == bend.Turn.Radians > 0 ? axis : -axis, RadiusOf(bend, height));
            }

            var frame = sheet.Flanges[piece.Flange];
            return piece.Segment is ArcSegment arc
                ? AddCircle(start, end, frame.ToWorld(arc.Centre, height), arc.Sweep.Radians > 0 ? frame.Z : -frame.Z, arc.Radius)
                : AddLine(start, end);
        }

        private (Vector3 Point, Vector3 Direction) AxisOf(Bend bend)
        {
            var (point, direction) = sheet.AxisOf(bend);
            return (point.Vector, direction);
        }

        private double RadiusOf(Bend bend, double height) => bend.InsideRadius + (bend.IsUp ? _thickness - height : height);

        private int AddCircle(int start, int end, Vector3 centre, Vector3 axis, double radius) =>
            Add(new(start, end, new BrepCircle(centre, axis, (_corners[start] - centre).Unit, radius)));

        private int AddLine(int start, int end) =>
            Add(new(start, end, new BrepLine(_corners[start], (_corners[end] - _corners[start]).Unit)));

        private int Add(BrepEdge edge)
        {
            _edges.Add(edge);
            return _edges.Count - 1;
        }

        /// <summary>The edge from the bottom of the sheet to its top over a point of the flat pattern.</summary>
        private int RiseAt(int point)
        {
            if (!_rises.TryGetValue(point, out var edge))
            {
                _rises.Add(point, edge = AddLine(BottomOf(point), TopOf(point)));
            }

            return edge;
        }

        private Strip StripOf(Bend bend, List<Side> outline)
        {
            var sides = outline.Where(s => s.Piece.Bend == bend).ToList();
            var over = sides.Find(s => s.Piece.Segment.StartTangent.Dot(bend.Across) > 0);
            var back = sides.Find(s => s.Piece.Segment.StartTangent.Dot(bend.Across) < 0);
            if (sides.Count != 2 || over is null || back is null)
            {
                throw new ArgumentException($"Bend {bend.To} is crossed by {sides.Count} edges of the outline, where two are expected.");
            }

            (int Bottom, int Top) Across(int from, int to) => (AddLine(BottomOf(from), BottomOf(to)), AddLine(TopOf(from), TopOf(to)));
            return new(bend, over, back, Across(over.From, back.To), Across(back.From, over.To));
        }

        private void FlangeFaces(int flange, List<Side> outline, List<Strip> strips, IEnumerable<List<Side>> holes)
        {
            List<List<(int Bottom, int Top)>> loops = [FlangeLoop(flange, outline, strips)];
            loops.AddRange(holes.Select(hole => hole.Select(s => (s.Bottom, s.Top)).ToList()));
            var frame = sheet.Flanges[flange];
            var point = outline[0].From;
            _faces.Add(new(
                new BrepPlane(_corners[TopOf(point)], frame.Z, frame.X), true,
                [.. loops.Select(l => l.Select(e => new BrepEdgeUse(e.Top, true)).ToImmutableArray())]));
            _faces.Add(new(
                new BrepPlane(_corners[BottomOf(point)], -frame.Z, frame.X), true,
                [.. loops.Select(l => l.AsEnumerable().Reverse().Select(e => new BrepEdgeUse(e.Bottom, false)).ToImmutableArray())]));
        }

        /// <summary>Round a flange with the metal on the left: along its cut edge, and along its bends where they begin.</summary>
        private static List<(int Bottom, int Top)> FlangeLoop(int flange, List<Side> outline, List<Strip> strips)
        {
            var loop = new List<(int Bottom, int Top)>();
            for (var i = 0; i < outline.Count; i++)
            {
                loop.Add((outline[i].Bottom, outline[i].Top));
                var next = outline[(i + 1) % outline.Count].From;
                for (var at = outline[i].To; at != next;)
                {
                    var (edge, end) = strips.Select(s =>
                            s.Bend.From == flange && s.Over.From == at ? (s.Near, s.Back.To)
                            : s.Bend.To == flange && s.Back.From == at ? (s.Far, s.Over.To)
                            : (default, -1))
                        .First(b => b.Item2 >= 0);
                    loop.Add(edge);
                    at = end;
                }
            }

            return loop;
        }

        private void BendFaces(Strip strip)
        {
            var bend = strip.Bend;
            var (point, axis) = AxisOf(bend);
            var middle = (_corners[TopOf(strip.Over.From)] - point).Rotate(axis, 0.5 * bend.Turn);
            var away = -(middle - middle.Dot(axis) * axis).Unit;
            var loop = new[]
            {
                (new BrepEdgeUse(strip.Over.Bottom, true), new BrepEdgeUse(strip.Over.Top, true)),
                (new(strip.Far.Bottom, false), new(strip.Far.Top, false)),
                (new(strip.Back.Bottom, true), new(strip.Back.Top, true)),
                (new(strip.Near.Bottom, false), new(strip.Near.Top, false)),
            };

            // Bent up, the top of the sheet looks at the axis and its bottom away from it.
            _faces.Add(new(new BrepCylinder(point, axis, away, RadiusOf(bend, _thickness)), !bend.IsUp, [[.. loop.Select(u => u.Item2)]]));
            _faces.Add(new(
                new BrepCylinder(point, axis, away, RadiusOf(bend, 0)), bend.IsUp, [[.. loop.Reverse().Select(u => u.Item1.Reversed)]]));
        }

        /// <summary>The cut edge along a closed contour, its pieces that lie in one plane joined.</summary>
        private void Walls(List<Side> contour)
        {
            var surfaces = contour.Select(SurfaceOf).ToList();
            var count = contour.Count;
            var first = Math.Max(0, Enumerable.Range(0, count).ToList().FindIndex(i => !LiesIn(surfaces[(i + count - 1) % count], surfaces[i], contour[i])));
            for (var i = 0; i < count;)
            {
                var begin = (first + i) % count;
                var run = new List<Side>();
                do
                {
                    run.Add(contour[(first + i) % count]);
                    i++;
                }
                while (i < count && LiesIn(surfaces[begin], surfaces[(first + i) % count], contour[(first + i) % count]));

                var facesOut = run[0].Piece is not { Bend: null, Segment: ArcSegment { Sweep.Radians: < 0 } };
                _faces.Add(new(surfaces[begin], facesOut,
                [
                    [
                        .. run.Select(s => new BrepEdgeUse(s.Bottom, true)),
                        new(RiseAt(run[^1].To), true),
                        .. run.AsEnumerable().Reverse().Select(s => new BrepEdgeUse(s.Top, false)),
                        new(RiseAt(run[0].From), false),
                    ],
                ]));
            }
        }

        /// <summary>Whether a side, which lies on <paramref name="own"/>, lies also in the plane <paramref name="surface"/>.</summary>
        private bool LiesIn(BrepSurface surface, BrepSurface own, Side side) =>
            surface is BrepPlane plane && own is BrepPlane other && plane.Normal.Dot(other.Normal) > 0
            && new[] { BottomOf(side.From), TopOf(side.From), BottomOf(side.To), TopOf(side.To) }.All(c => plane.DistanceTo(_corners[c]) < Tolerance.Point);

        private BrepSurface SurfaceOf(Side side)
        {
            var (piece, start) = (side.Piece, _corners[BottomOf(side.From)]);
            var frame = sheet.Flanges[piece.Flange];
            if (piece is { Bend: null, Segment: ArcSegment arc })
            {
                var towards = arc.IsFullCircle ? arc.Start - arc.Centre : arc.Centre - arc.PointAt(0.5);
                return new BrepCylinder(frame.ToWorld(arc.Centre), frame.Z, frame.ToWorldDirection(Vector3.From(towards.Unit)), arc.Radius);
            }

            // The metal is on the left of travel. In a bend, the plane is square to the bend's axis and the same all along.
            var along = piece.Segment.StartTangent;
            return new BrepPlane(start, frame.ToWorldDirection(Vector3.From(-along.Left)), frame.Z);
        }
    }
}
