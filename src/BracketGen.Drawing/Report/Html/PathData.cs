using System.Globalization;
using System.Text;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Report.Html;

/// <summary>Data of an SVG path, in the picture's own coordinates (y down).</summary>
internal sealed class PathData
{
    private readonly StringBuilder _data = new();

    public PathData MoveTo(Vector2 p) => Add('M', p);

    public PathData LineTo(Vector2 p) => Add('L', p);

    public PathData Close()
    {
        _data.Append('Z');
        return this;
    }

    public PathData Chain(IEnumerable<Vector2> points)
    {
        var first = true;
        foreach (var p in points)
        {
            Add(first ? 'M' : 'L', p);
            first = false;
        }

        return this;
    }

    /// <summary>A closed contour of a drawing whose y runs up.</summary>
    public PathData Contour(Contour contour)
    {
        MoveTo(Down(contour.Segments[0].Start));
        foreach (var segment in contour.Segments)
        {
            Along(segment);
        }

        return Close();
    }

    /// <summary>Circle, as two halves: SVG cannot say a full one in one arc.</summary>
    public PathData Circle(Vector2 centre, double radius)
    {
        MoveTo(centre + new Vector2(radius, 0));
        Arc(radius, false, centre - new Vector2(radius, 0));
        Arc(radius, false, centre + new Vector2(radius, 0));
        return Close();
    }

    /// <summary>A number as it stands in a picture: to a hundredth.</summary>
    public static string Number(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);

    public override string ToString() => _data.ToString();

    /// <summary>From a drawing whose y runs up to a picture whose y runs down.</summary>
    public static Vector2 Down(Vector2 p) => new(p.X, -p.Y);

    private void Along(Segment segment)
    {
        if (segment is not ArcSegment arc)
        {
            LineTo(Down(segment.End));
            return;
        }

        foreach (var part in Math.Abs(arc.Sweep.Radians) > Math.PI ? (double[])[0.5, 1] : [1])
        {
            Arc(arc.Radius, arc.Sweep.Radians < 0, Down(arc.PointAt(part)));
        }
    }

    private void Arc(double radius, bool clockwise, Vector2 to) => _data
        .Append('A').Append(Number(radius)).Append(' ').Append(Number(radius)).Append(" 0 0 ").Append(clockwise ? '1' : '0')
        .Append(' ').Append(Number(to.X)).Append(' ').Append(Number(to.Y));

    private PathData Add(char command, Vector2 p)
    {
        _data.Append(command).Append(Number(p.X)).Append(' ').Append(Number(p.Y));
        return this;
    }
}
