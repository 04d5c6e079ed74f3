using BracketGen.Design.Part;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Units;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Pictures;

/// <summary>The flat pattern with its bend lines, the names of holes and bends, and its overall size.</summary>
internal static class FlatSvg
{
    public static void Write(HtmlWriter html, UnitSystem units, Bracket bracket)
    {
        var corner = bracket.Flat.Blank.Outline.Bounds.Min;
        var flat = bracket.Flat.Shift(-corner);
        var size = flat.Blank.Outline.Bounds.Max;
        var letter = Math.Max(4, Math.Max(size.X, size.Y) / 26);
        var room = 2.6 * letter;
        string N(double value) => PathData.Number(value);
        string Length(double value) => units.Write(Quantity.Length, value);
        using var svg = html.Open(
            "svg", ("viewBox", $"{N(-room)} {N(-size.Y - letter)} {N(size.X + room + letter)} {N(size.Y + letter + room)}"), ("role", "img"),
            ("aria-label", FlatText.Spoken(bracket)), ("style", FormattableString.Invariant($"--letter:{0.9 * letter:0.##}px")));
        var blank = new PathData();
        foreach (var contour in flat.Blank.Contours)
        {
            blank.Contour(contour);
        }

        html.Void("path", ("class", "sheet"), ("d", blank.ToString()), ("fill-rule", "evenodd"));
        for (var i = 0; i < flat.Bends.Length; i++)
        {
            var bend = flat.Bends[i];
            var (start, end) = (bend.CentreLine.Start.Vector, bend.CentreLine.End.Vector);
            var past = letter / 2 * bend.Along;
            html.Void("path", ("class", "bend"), ("d", new PathData().MoveTo(PathData.Down(start - past)).LineTo(PathData.Down(end + past)).ToString()));
            var along = LinearDimension.Readable(bend.Along);
            var at = PathData.Down(0.5 * (start + end) + 0.35 * letter * along.Left);
            var turn = FormattableString.Invariant($"rotate({-along.Polar.Degrees:0.##} {N(at.X)} {N(at.Y)})");
            html.Line(
                "text", FlatText.BendName(BracketScene.NameOf(i), bend.IsUp, ValueFormat.Tabled(units).Degrees(bend.Turn.Magnitude)), ("class", "note bendname"),
                ("x", N(at.X)), ("y", N(at.Y)), ("text-anchor", "middle"), ("transform", turn));
        }

        foreach (var hole in bracket.Holes)
        {
            var at = PathData.Down(hole.Centre.Vector - corner) + new Vector2(0, 0.35 * letter);
            html.Line("text", hole.Name, ("class", "note name"), ("x", N(at.X)), ("y", N(at.Y)), ("text-anchor", "middle"));
        }

        Size(html, Length(size.X), new(0, letter), new(size.X, letter), letter, "");
        Size(html, Length(size.Y), new(-letter, 0), new(-letter, -size.Y), letter, FormattableString.Invariant($"rotate(-90 {N(-1.3 * letter)} {N(-size.Y / 2)})"));
    }

    private static void Size(HtmlWriter html, string text, Vector2 from, Vector2 to, double letter, string turn)
    {
        var across = 0.35 * letter * (to - from).Unit.Left;
        html.Void("path", ("class", "size"), ("d", new PathData()
            .MoveTo(from).LineTo(to).MoveTo(from + across).LineTo(from - across).MoveTo(to + across).LineTo(to - across).ToString()));
        var middle = 0.5 * (from + to) + (turn.Length == 0 ? new Vector2(0, 1.1 * letter) : new Vector2(-0.3 * letter, 0));
        html.Line(
            "text", text, ("class", "note"), ("x", PathData.Number(middle.X)), ("y", PathData.Number(middle.Y)),
            ("text-anchor", "middle"), ("transform", turn.Length > 0 ? turn : null));
    }
}
