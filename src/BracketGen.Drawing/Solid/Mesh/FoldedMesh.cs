using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Drawing.Solid.Mesh;

/// <summary>A folded sheet as a closed triangle mesh, with its edges.</summary>
/// <remarks>
/// Throttle frame, mm. Vertices lie on the exact surfaces; facets stay within the chord error of them. Neighbouring triangles
/// share their vertices, so the mesh has no gaps.
/// </remarks>
public sealed class FoldedMesh
{
    private FoldedMesh(
        ImmutableArray<Vector3> vertices, ImmutableArray<MeshTriangle> triangles, ImmutableArray<MeshNormals> normals, ImmutableArray<MeshEdge> edges)
    {
        Vertices = vertices;
        Triangles = triangles;
        Normals = normals;
        Edges = edges;
    }

    /// <summary>The vertices (mm).</summary>
    public ImmutableArray<Vector3> Vertices { get; }

    /// <summary>The triangles, counter-clockwise seen from outside.</summary>
    public ImmutableArray<MeshTriangle> Triangles { get; }

    /// <summary>The exact surface's outward normals at the corners of each triangle, in the order of the triangles.</summary>
    public ImmutableArray<MeshNormals> Normals { get; }

    /// <summary>Edges of the solid: contours of the faces, corners of the cut, limits of the bends, and the facets' own edges.</summary>
    public ImmutableArray<MeshEdge> Edges { get; }

    /// <summary>Enclosed volume (mm³), by the divergence theorem.</summary>
    public double Volume => Triangles.Sum(t => Vertices[t.A].Dot(Vertices[t.B].Cross(Vertices[t.C]))) / 6;

    /// <summary>The mesh of <paramref name="sheet"/>, its facets within <paramref name="chord"/> (mm) of the round surfaces.</summary>
    public static FoldedMesh Of(FoldedSheet sheet, double chord = Tolerance.Chord) => new Builder(sheet, chord).Build();

    private sealed class Builder(FoldedSheet sheet, double chord)
    {
        private readonly List<Vector3> _vertices = [];
        private readonly List<MeshTriangle> _triangles = [];
        private readonly List<MeshNormals> _normals = [];
        private readonly List<MeshEdge> _edges = [];
        private readonly List<Vector2> _flat = [];
        private readonly double _thickness = sheet.Flat.Thickness;

        // Vertices come in pairs: 2 k lies at the bottom of the sheet, 2 k + 1 at its top, both over flat point k.
        private static int Bottom(int k) => 2 * k;

        private static int Top(int k) => 2 * k + 1;

        public FoldedMesh Build()
        {
            var flat = sheet.Flat;
            var loops = Enumerable.Range(0, flat.FlangeCount).Select(_ => new List<List<int>> { new() }).ToArray();
            var sides = flat.Bends.ToDictionary(b => b, _ => new List<List<int>>());
            foreach (var (piece, points) in Contour(OutlinePiece.Of(flat)))
            {
                if (piece.Bend is { } bend)
                {
                    sides[bend].Add(bend.Depth(new(_flat[points[0]])) < bend.Depth(new(_flat[points[^1]])) ? points : [.. points.AsEnumerable().Reverse()]);
                    continue;
                }

                var loop = loops[piece.Flange][0];
                loop.AddRange(loop.Count > 0 && loop[^1] == points[0] ? points.Skip(1) : points);
            }

            foreach (var hole in flat.Blank.Holes)
            {
                var flange = flat.ZoneOf(new(hole.Bounds.Centre)).Flange;
                var pieces = Contour([.. hole.Segments.Select(s => new OutlinePiece(s, flange, null))]);
                loops[flange].Add([.. pieces.SelectMany(p => p.Points.SkipLast(1))]);
            }

            for (var flange = 0; flange < loops.Length; flange++)
            {
                Face(loops[flange], sheet.Flanges[flange].Z);
            }

            foreach (var bend in flat.Bends)
            {
                Strip(bend, sides[bend]);
            }

            return new([.. _vertices], [.. _triangles], [.. _normals], [.. _edges]);
        }

        /// <summary>Walls and edges along a closed contour; the flat points of each piece, both ends included.</summary>
        private List<(OutlinePiece Piece, List<int> Points)> Contour(List<OutlinePiece> pieces)
        {
            var first = _flat.Count;
            var runs = new List<(OutlinePiece Piece, List<int> Points)>();
            foreach (var piece in pieces)
            {
                var count = StepsOf(piece);
                var points = new List<int>(count + 1);
                for (var i = 0; i < count; i++)
                {
                    points.Add(AddPoint(piece.Segment.PointAt((double)i / count), piece));
                }

                runs.Add((piece, points));
            }

            for (var i = 0; i < runs.Count; i++)
            {
                runs[i].Points.Add(i + 1 < runs.Count ? runs[i + 1].Points[0] : first);
            }

            var normals = new List<(Vector3 Before, Vector3 After, bool IsCorner, int Point)>();
            for (var r = 0; r < runs.Count; r++)
            {
                var (piece, points) = runs[r];
                for (var i = 0; i + 1 < points.Count; i++)
                {
                    int a = points[i], b = points[i + 1];
                    Vector3 normalA = WallNormal(piece, i, points.Count - 1), normalB = WallNormal(piece, i + 1, points.Count - 1);
                    Add(Bottom(a), Bottom(b), Top(b), normalA, normalB, normalB);
                    Add(Bottom(a), Top(b), Top(a), normalA, normalB, normalA);
                    var normal = (_vertices[Bottom(b)] - _vertices[Bottom(a)]).Cross(_vertices[Top(a)] - _vertices[Bottom(a)]).Unit;
                    var before = runs[(r + runs.Count - 1) % runs.Count].Piece.Segment.EndTangent;
                    var isCorner = i == 0 && Math.Abs(before.Cross(piece.Segment.StartTangent)) > SmoothJoin;
                    normals.Add((default, normal, isCorner, a));
                }

                _edges.Add(new([.. points.Select(Bottom)], MeshEdgeKind.Sharp, Circle: CircleOf(piece, points, false)));
                _edges.Add(new([.. points.Select(Top)], MeshEdgeKind.Sharp, Circle: CircleOf(piece, points, true)));
            }

            for (var i = 0; i < normals.Count; i++)
            {
                var (_, after, isCorner, point) = normals[i];
                var before = normals[(i + normals.Count - 1) % normals.Count].After;
                if (isCorner)
                {
                    _edges.Add(new([Bottom(point), Top(point)], MeshEdgeKind.Sharp));
                }
                else if (before.DistanceTo(after) > SmoothJoin)
                {
                    _edges.Add(new([Bottom(point), Top(point)], MeshEdgeKind.Smooth, before, after));
                }
            }

            return runs;
        }

        /// <summary>A kink below this (rad) cannot be seen: two pieces are taken to run over into each other.</summary>
        private const double SmoothJoin = 1e-3;

        private int StepsOf(OutlinePiece piece) => piece switch
        {
            { Bend: { } bend } => StepsOf(bend),
            { Segment: ArcSegment arc } => Steps(arc.Radius, arc.Sweep.Radians),
            _ => 1,
        };

        private int StepsOf(Bend bend) => Steps(bend.InsideRadius + _thickness, bend.Turn.Radians);

        // A step's sagitta is 2 r sin²(step/4).
        private int Steps(double radius, double sweep) =>
            Math.Max(2, (int)Math.Ceiling(Math.Abs(sweep) / (4 * Math.Asin(Math.Sqrt(Math.Min(0.5, chord / (2 * radius)))))));

        private void Add(int a, int b, int c, Vector3 normalA, Vector3 normalB, Vector3 normalC)
        {
            _triangles.Add(new(a, b, c));
            _normals.Add(new(normalA, normalB, normalC));
        }

        /// <summary>Out of the metal, which is on the left of travel; the same all along a straight piece, within a bend too.</summary>
        private Vector3 WallNormal(OutlinePiece piece, int step, int steps)
        {
            var out_ = piece.Segment is ArcSegment arc
                ? Math.Sign(arc.Sweep.Radians) * (arc.PointAt((double)step / steps) - arc.Centre).Unit
                : -piece.Segment.StartTangent.Left;
            return sheet.Flanges[piece.Flange].ToWorldDirection(Vector3.From(out_));
        }

        private int AddPoint(Vector2 point, OutlinePiece piece)
        {
            _flat.Add(point);
            _vertices.Add(Place(point, 0, piece));
            _vertices.Add(Place(point, _thickness, piece));
            return _flat.Count - 1;
        }

        private Vector3 Place(Vector2 point, double height, OutlinePiece piece)
        {
            if (piece.Bend is not { } bend)
            {
                return sheet.Flanges[piece.Flange].ToWorld(point, height);
            }

            var depth = bend.Depth(new(point));
            var (centre, axis) = AxisOf(bend);
            var edge = sheet.Flanges[bend.From].ToWorld(point - depth * bend.Across, height);
            return centre + (edge - centre).Rotate(axis, depth / bend.Allowance * bend.Turn);
        }

        private (Vector3 Point, Vector3 Direction) AxisOf(Bend bend)
        {
            var (point, direction) = sheet.AxisOf(bend);
            return (point.Vector, direction);
        }

        private EdgeCircle? CircleOf(OutlinePiece piece, List<int> points, bool top)
        {
            if (piece.Bend is { } bend)
            {
                var (centre, axis) = AxisOf(bend);
                var point = _vertices[top ? Top(points[0]) : Bottom(points[0])];
                var foot = centre + (point - centre).Dot(axis) * axis;
                return new(foot, axis, point.DistanceTo(foot));
            }

            var frame = sheet.Flanges[piece.Flange];
            return piece.Segment is ArcSegment arc
                ? new(frame.ToWorld(arc.Centre, top ? _thickness : 0), frame.Z, arc.Radius)
                : null;
        }

        private void Face(List<List<int>> loops, Vector3 up)
        {
            var outline = loops[0];
            if (outline.Count > 1 && outline[0] == outline[^1])
            {
                outline.RemoveAt(outline.Count - 1);
            }

            if (outline.Count < 3)
            {
                return; // A flange that is nothing but the edge of a bend.
            }

            foreach (var (a, b, c) in EarClipper.Triangulate(_flat, loops))
            {
                Add(Top(a), Top(b), Top(c), up, up, up);
                Add(Bottom(a), Bottom(c), Bottom(b), -up, -up, -up);
            }
        }

        private void Strip(Bend bend, List<List<int>> sides)
        {
            if (sides.Count != 2)
            {
                throw new ArgumentException($"Bend {bend.To} is crossed by {sides.Count} edges of the outline, where two are expected.");
            }

            var startFirst = _flat[sides[0][0]].DistanceTo(bend.Start.Vector) < _flat[sides[1][0]].DistanceTo(bend.Start.Vector);
            var (start, end) = startFirst ? (sides[0], sides[1]) : (sides[1], sides[0]);
            var axis = sheet.AxisOf(bend).Direction;
            Vector3 UpAt(int i) => sheet.Flanges[bend.From].Z.Rotate(axis, (double)i / (start.Count - 1) * bend.Turn);
            for (var i = 0; i + 1 < start.Count; i++)
            {
                int a = start[i], b = end[i], c = end[i + 1], d = start[i + 1];
                Vector3 near = UpAt(i), far = UpAt(i + 1);
                Add(Top(a), Top(b), Top(c), near, near, far);
                Add(Top(a), Top(c), Top(d), near, far, far);
                Add(Bottom(a), Bottom(c), Bottom(b), -near, -far, -near);
                Add(Bottom(a), Bottom(d), Bottom(c), -near, -far, -far);
            }

            foreach (var top in (bool[])[true, false])
            {
                int At(int k) => top ? Top(k) : Bottom(k);
                var sign = top ? 1.0 : -1.0;
                var before = sign * sheet.Flanges[bend.From].Z;
                for (var i = 0; i < start.Count; i++)
                {
                    var isLast = i + 1 == start.Count;
                    Vector3 s = _vertices[At(start[i])], e = _vertices[At(end[i])];
                    var after = isLast
                        ? sign * sheet.Flanges[bend.To].Z
                        : sign * (e - s).Cross(_vertices[At(start[i + 1])] - s).Unit;
                    _edges.Add(new(
                        [At(start[i]), At(end[i])], i == 0 || isLast ? MeshEdgeKind.Tangent : MeshEdgeKind.Smooth, before, after));
                    before = after;
                }
            }
        }
    }
}
