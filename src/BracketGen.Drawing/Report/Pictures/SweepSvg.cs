using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Pictures;

/// <summary>Quadrant, wire, outer and bracket seen along the throttle shaft.</summary>
internal sealed class SweepSvg
{
    private readonly ReportScene _scene;
    private readonly SweepMotion _motion;
    private readonly string _viewBox;
    private readonly string _still;
    private readonly double _letter;

    public SweepSvg(ReportScene scene)
    {
        (_scene, _motion) = (scene, scene.Motion);
        var quadrant = _motion.Quadrant;
        var cable = scene.Job.Vehicle.Cable;

        // The quadrant closed, half open and open: between those it sweeps little more.
        var bounds = Bounds.Around(((double[])[0, 0.5, 1]).SelectMany(f => quadrant.Outline.Select(p => PathData.Down(p.Rotate(quadrant.TurnAt(f * _motion.Travel.Rotation))))))
            .Union(Bounds.Around([_motion.Seat, _motion.Seat + (OuterEndShape.Length(cable) + OuterEndShape.ShownOuter) * _motion.Towards]).Grow(8));
        if (scene.Mesh is { } mesh)
        {
            bounds = bounds.Union(Bounds.Around(mesh.Vertices.Select(v => PathData.Down(v.XY))));
        }

        // The names of the two stops stand outside the rim, about nine letters long; a small screen sets them larger.
        _letter = Math.Max(bounds.Width, bounds.Height) / 40;
        foreach (var opening in (Angle[])[Angle.Zero, _motion.Travel.Rotation])
        {
            var (at, side) = (NameAt(opening), SideOf(opening));
            bounds = bounds.Union(Bounds.Around([at + new Vector2((side - 1) * 4.2 * _letter, 0), at + new Vector2((side + 1) * 4.2 * _letter, 0)]).Grow(_letter));
        }

        bounds = bounds.Grow(4);
        string N(double value) => PathData.Number(value);
        _viewBox = $"{N(bounds.Min.X)} {N(bounds.Min.Y)} {N(bounds.Width)} {N(bounds.Height)}";
        _still = Still();
    }

    /// <summary>One position of the pedal as a picture with a text alternative.</summary>
    public void Write(HtmlWriter html, SweepPosition position, string label)
    {
        using var svg = html.Open("svg", ("class", "sweep"), ("viewBox", _viewBox), ("role", "img"), ("aria-label", label), ("style", FormattableString.Invariant($"--letter:{_letter:0.##}px")));
        html.Markup(_still);
        var turn = FormattableString.Invariant($"rotate({_motion.Turned(position.Wire.Opening):0.###})");
        using (html.Open("g", ("class", "turning"), ("transform", turn)))
        {
            var cable = _scene.Job.Vehicle.Cable;
            html.Void("path", ("class", "quadrant"), ("d", new PathData().Chain(_motion.Quadrant.Outline.Select(PathData.Down)).Close().ToString()));
            html.Void("path", ("class", "groove"), ("d", new PathData().Chain(_motion.Groove).ToString()));
            Circle(html, "pocket", _motion.Fitting, cable.Fitting.Diameter / 2 + 0.8);
        }

        Circle(html, "shaft", Vector2.Zero, Math.Min(_motion.Quadrant.HubRadius * 0.6, _scene.Job.Body.ShaftDiameter / 2));
        html.Void("path", ("class", "wire"), ("d", new PathData().Chain(_motion.WirePath(position.Wire)).ToString()));
        using (html.Open("g", ("class", "turning"), ("transform", turn)))
        {
            Circle(html, "fitting", _motion.Fitting, _scene.Job.Vehicle.Cable.Fitting.Diameter / 2);
        }
    }

    /// <summary>What does not move: the bracket, and the outer that it holds.</summary>
    private string Still()
    {
        var html = new HtmlWriter();
        if (_scene.Mesh is { } mesh)
        {
            var view = Frame.FromZX(Vector3.Zero, new(0, 0, 1), new(1, 0, 0));
            SolidSvg.Write(html, mesh, view);
        }

        var cable = _scene.Job.Vehicle.Cable;
        var thickness = _scene.Solution.Bracket?.Stock.Thickness ?? 0;
        foreach (var (from, to, diameter) in OuterEndShape.Of(cable, thickness).Append((OuterEndShape.Length(cable), OuterEndShape.Length(cable) + OuterEndShape.ShownOuter, cable.OuterDiameter)))
        {
            Vector2 along = _motion.Towards, across = diameter / 2 * along.Left;
            Vector2 a = _motion.Seat + from * along, b = _motion.Seat + to * along;
            html.Void("path", ("class", "outer"), ("d", new PathData().Chain([a + across, b + across, b - across, a - across]).Close().ToString()));
        }

        // The two ends of the fitting's way, outside the rim.
        Mark(html, Angle.Zero, SweepText.ClosedMark);
        Mark(html, _motion.Travel.Rotation, SweepText.OpenMark);
        return html.ToString();
    }

    private void Mark(HtmlWriter html, Angle opening, string text)
    {
        var outwards = Outwards(opening);
        var rim = _motion.Quadrant.OuterRadius;
        html.Void("path", ("class", "mark"), ("d", new PathData().MoveTo((rim + 1) * outwards).LineTo((rim + 4) * outwards).ToString()));
        var at = NameAt(opening) + new Vector2(0, 0.35 * _letter);
        html.Line("text", text, ("class", "note"), ("x", PathData.Number(at.X)), ("y", PathData.Number(at.Y)), ("text-anchor", SideOf(opening) switch { > 0 => "start", < 0 => "end", _ => "middle" }));
    }

    private Vector2 Outwards(Angle opening) => PathData.Down(_motion.Quadrant.Fitting.Rotate(_motion.Quadrant.TurnAt(opening))).Unit;

    /// <summary>1 where a name runs to the right of its mark, -1 to the left, 0 over it.</summary>
    private int SideOf(Angle opening) => Outwards(opening).X switch { > 0.3 => 1, < -0.3 => -1, _ => 0 };

    private Vector2 NameAt(Angle opening) => (_motion.Quadrant.OuterRadius + 4 + 0.6 * _letter) * Outwards(opening);

    private static void Circle(HtmlWriter html, string style, Vector2 centre, double radius) => html.Void(
        "circle", ("class", style), ("cx", PathData.Number(centre.X)), ("cy", PathData.Number(centre.Y)), ("r", PathData.Number(radius)));
}
