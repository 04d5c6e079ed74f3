using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Views;

/// <summary>Joins what lies on one line or circle into long strokes, each stretch drawn once: visible before tangent before hidden.</summary>
internal sealed class LineMerger
{
    /// <summary>Lines this near (mm) are one: a facet's edge stands for the outline of a round surface to within the chord error.</summary>
    private const double Same = 0.03;

    private const double SameDirection = 1e-4;

    private static readonly LineKind[] Order = [LineKind.Visible, LineKind.Tangent, LineKind.Hidden];

    private readonly List<(Vector2 Point, Vector2 Along, List<(double From, double To, LineKind Kind)> Spans)> _lines = [];
    private readonly List<(Vector2 Centre, double Radius, List<(double From, double To, LineKind Kind)> Spans)> _circles = [];
    private readonly List<ViewLine> _chains = [];

    public void AddLine(Vector2 from, Vector2 to, LineKind kind)
    {
        if (from.DistanceTo(to) < Tolerance.SameSize)
        {
            return;
        }

        var along = (to - from).Unit;
        var at = _lines.FindIndex(l => Math.Abs(l.Along.Cross(along)) < SameDirection
            && Math.Abs(l.Along.Cross(from - l.Point)) < Same && Math.Abs(l.Along.Cross(to - l.Point)) < Same);
        if (at < 0)
        {
            _lines.Add((from, along, []));
            at = _lines.Count - 1;
        }

        var line = _lines[at];
        double a = line.Along.Dot(from - line.Point), b = line.Along.Dot(to - line.Point);
        line.Spans.Add((Math.Min(a, b), Math.Max(a, b), kind));
    }

    public void AddArc(ArcSegment arc, LineKind kind)
    {
        var at = _circles.FindIndex(c => c.Centre.DistanceTo(arc.Centre) < Same && Math.Abs(c.Radius - arc.Radius) < Same);
        if (at < 0)
        {
            _circles.Add((arc.Centre, arc.Radius, []));
            at = _circles.Count - 1;
        }

        const double turn = 2 * Math.PI;
        var from = arc.Sweep.Radians > 0 ? arc.From.Radians : arc.From.Radians + arc.Sweep.Radians;
        from -= turn * Math.Floor(from / turn);
        var to = from + Math.Abs(arc.Sweep.Radians);
        var spans = _circles[at].Spans;
        spans.Add((from, Math.Min(to, turn), kind));
        if (to > turn)
        {
            spans.Add((0, to - turn, kind));
        }
    }

    public void AddChain(IReadOnlyList<Vector2> points, LineKind kind)
    {
        var distinct = points.Where((p, i) => i == 0 || p.DistanceTo(points[i - 1]) > Tolerance.OnLimit).ToList();
        if (distinct.Count > 1)
        {
            _chains.Add(new(null, distinct, kind));
        }
    }

    public IReadOnlyList<ViewLine> Lines()
    {
        var result = new List<ViewLine>();
        foreach (var (point, along, spans) in _lines)
        {
            result.AddRange(Settle(spans, Same).Select(s =>
                new ViewLine(new LineSegment(point + s.From * along, point + s.To * along), [], s.Kind)));
        }

        foreach (var (centre, radius, spans) in _circles)
        {
            foreach (var (from, to, kind) in CloseAtZero(Settle(spans, Same / radius)))
            {
                result.Add(new(new ArcSegment(centre, radius, new(from), new(Math.Min(to - from, 2 * Math.PI))), [], kind));
            }
        }

        result.AddRange(_chains);

        // The narrow lines first: where two touch, the wide one lies on top.
        return [.. result.OrderByDescending(l => Array.IndexOf(Order, l.Kind))];
    }

    /// <summary>Each kind's stretches joined, and cut off where a kind before it is drawn already.</summary>
    private static List<(double From, double To, LineKind Kind)> Settle(List<(double From, double To, LineKind Kind)> spans, double gap)
    {
        var result = new List<(double From, double To, LineKind Kind)>();
        foreach (var kind in Order)
        {
            var joined = new List<(double From, double To)>();
            foreach (var (from, to, _) in spans.Where(s => s.Kind == kind).OrderBy(s => s.From))
            {
                if (joined.Count > 0 && from <= joined[^1].To + gap)
                {
                    joined[^1] = (joined[^1].From, Math.Max(joined[^1].To, to));
                }
                else
                {
                    joined.Add((from, to));
                }
            }

            foreach (var taken in result.ToList())
            {
                joined = [.. joined.SelectMany(s => Without(s, (taken.From, taken.To)))];
            }

            result.AddRange(joined.Where(s => s.To - s.From > gap).Select(s => (s.From, s.To, kind)));
        }

        return result;
    }

    private static IEnumerable<(double From, double To)> Without((double From, double To) span, (double From, double To) cut)
    {
        if (cut.To <= span.From || cut.From >= span.To)
        {
            return [span];
        }

        return new[] { (span.From, cut.From), (cut.To, span.To) }.Where(s => s.Item2 > s.Item1);
    }

    private static List<(double From, double To, LineKind Kind)> CloseAtZero(List<(double From, double To, LineKind Kind)> spans)
    {
        const double turn = 2 * Math.PI, near = 1e-6;
        foreach (var kind in Order)
        {
            int first = spans.FindIndex(s => s.Kind == kind && s.From < near), last = spans.FindIndex(s => s.Kind == kind && s.To > turn - near);
            if (first >= 0 && last >= 0 && first != last)
            {
                spans[last] = (spans[last].From, turn + spans[first].To, kind);
                spans.RemoveAt(first);
            }
        }

        return spans;
    }
}
