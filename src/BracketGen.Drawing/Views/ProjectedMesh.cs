using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Views;

/// <summary>A mesh seen along one direction, ready to be asked what lies before a point.</summary>
/// <remarks>Triangles are kept by the fields of a grid over the picture they touch.</remarks>
internal sealed class ProjectedMesh
{
    /// <summary>Something this little (mm) before a point does not hide it: it is the surface that the point itself lies on.</summary>
    private const double OwnSurface = 0.03;

    /// <summary>A point this little outside a facet's rim (mm², twice an area) lies on it: else light falls through the seam between two facets.</summary>
    private const double Rim = 1e-9;

    private const int Fields = 24;

    private readonly Vector3[] _points;
    private readonly MeshTriangle[] _triangles;
    private readonly List<int>[] _grid;
    private readonly Vector2 _least;
    private readonly Vector2 _field;

    public ProjectedMesh(FoldedMesh mesh, Frame view)
        : this(mesh.Vertices, mesh.Triangles, view)
    {
    }

    public ProjectedMesh(IEnumerable<Vector3> vertices, IEnumerable<MeshTriangle> triangles, Frame view)
    {
        View = view;
        _points = [.. vertices.Select(view.ToLocal)];
        Bounds = Bounds.Around(_points.Select(p => p.XY));
        _least = Bounds.Min - new Vector2(1, 1);
        _field = new((Bounds.Width + 2) / Fields, (Bounds.Height + 2) / Fields);
        _grid = [.. Enumerable.Range(0, Fields * Fields).Select(_ => new List<int>())];

        // Of a closed solid the facets towards the eye hide all that the others would.
        _triangles = [.. triangles.Where(t => Area(t) > Rim)];
        for (var i = 0; i < _triangles.Length; i++)
        {
            var t = _triangles[i];
            Vector2 a = _points[t.A].XY, b = _points[t.B].XY, c = _points[t.C].XY;
            var (x0, y0) = FieldOf(new(Math.Min(a.X, Math.Min(b.X, c.X)), Math.Min(a.Y, Math.Min(b.Y, c.Y))));
            var (x1, y1) = FieldOf(new(Math.Max(a.X, Math.Max(b.X, c.X)), Math.Max(a.Y, Math.Max(b.Y, c.Y))));
            for (var y = y0; y <= y1; y++)
            {
                for (var x = x0; x <= x1; x++)
                {
                    _grid[y * Fields + x].Add(i);
                }
            }
        }
    }

    public Frame View { get; }

    public Bounds Bounds { get; }

    /// <summary>A vertex in the view: x and y of the picture, z towards the eye (mm).</summary>
    public Vector3 this[int vertex] => _points[vertex];

    public bool IsHidden(Vector3 point)
    {
        var xy = point.XY;
        if (xy.X < Bounds.Min.X || xy.X > Bounds.Max.X || xy.Y < Bounds.Min.Y || xy.Y > Bounds.Max.Y)
        {
            return false;
        }

        var (fx, fy) = FieldOf(xy);
        foreach (var i in _grid[fy * Fields + fx])
        {
            var t = _triangles[i];
            Vector3 a = _points[t.A], b = _points[t.B], c = _points[t.C];
            double u = (b.XY - a.XY).Cross(xy - a.XY), v = (c.XY - b.XY).Cross(xy - b.XY), w = (a.XY - c.XY).Cross(xy - c.XY);
            if (u < -Rim || v < -Rim || w < -Rim)
            {
                continue;
            }

            if ((v * a.Z + w * b.Z + u * c.Z) / (u + v + w) > point.Z + OwnSurface)
            {
                return true;
            }
        }

        return false;
    }

    private double Area(MeshTriangle t) => (_points[t.B].XY - _points[t.A].XY).Cross(_points[t.C].XY - _points[t.A].XY);

    private (int X, int Y) FieldOf(Vector2 p) => (
        Math.Clamp((int)((p.X - _least.X) / _field.X), 0, Fields - 1),
        Math.Clamp((int)((p.Y - _least.Y) / _field.Y), 0, Fields - 1));
}
