using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Measuring;

/// <summary>The sketches of the worksheet. Letters stand for the blanks beside them; nothing is to scale.</summary>
internal static class Sketches
{
    /// <summary>The sketch of a section, with the letters of its blanks.</summary>
    public static SheetBlock Of(WorksheetSection section)
    {
        var s = new Sketcher(section.Blanks);
        Action<Sketcher> draw = section.Sketch switch
        {
            SketchKind.Quadrant => Quadrant,
            SketchKind.QuadrantEdge => QuadrantEdge,
            SketchKind.Pocket => Pocket,
            SketchKind.Valve => Valve,
            SketchKind.Torque => Torque,
            SketchKind.Mount => Mount,
            SketchKind.BoreAxis => BoreAxis,
            SketchKind.KeepOut => KeepOut,
            SketchKind.EccentricGroove => EccentricGroove,
            SketchKind.GrooveTable => GrooveTable,
            SketchKind.Cable => Cable,
            SketchKind.OuterEnds => OuterEnds,
            SketchKind.Pedal => Pedal,
            SketchKind.Drag => Drag,
            SketchKind.OuterStiffness => OuterStiffness,
            SketchKind.Bulkhead => Bulkhead,
            SketchKind.OtherCable => OtherCable,
            _ => Fitted,
        };
        draw(s);
        return s.Block;
    }

    /// <summary>The quadrant as seen from outside.</summary>
    private static void Quadrant(Sketcher s)
    {
        const double pitch = 15, outer = 17, hub = 6, pocket = -35, end = 125;
        var o = Vector2.Zero;
        s.Arc(o, outer, pocket - 12, end);
        s.Arc(o, pitch, pocket, end, LineKind.Centre);
        s.Line(Sketcher.Polar(hub, pocket - 12), Sketcher.Polar(outer, pocket - 12));
        s.Line(Sketcher.Polar(hub, end), Sketcher.Polar(outer, end));
        s.Arc(o, hub, end, 360 + pocket - 12);
        s.Circle(o, 2.5);
        s.Circle(Sketcher.Polar(pitch, pocket), 1.8);
        var leave = Sketcher.Polar(pitch, 100);
        var way = Sketcher.Polar(1, 190);
        s.Line(leave, leave + 24 * way);
        s.Box((leave + 24 * way).X - 5, (leave + 24 * way).Y - 3, 5, 5.2);
        s.Text(SketchText.Stop, leave + 24 * way + new Vector2(-2.5, -6.5));
        s.Axes(o, 35, 30);
        s.Leader(Sketcher.Polar(pitch, 35), Sketcher.Polar(26, 41), s["pitch_radius"]);
        s.Leader(Sketcher.Polar(hub, 225), Sketcher.Polar(23, 225), s["hub_radius"]);
        s.Corner(o, pocket, -pocket, 26, s["pocket_angle"], outer);
        s.Turn(o, 9.5, 20, 80);
        s.Text(s["rotation"], Sketcher.Polar(11.2, 55) + new Vector2(0.6, -1));
        s.Arc(o, 21, pocket, end, LineKind.Dimension);
        s.Head(Sketcher.Polar(21, end), Sketcher.Polar(1, end + 86));
        s.Head(Sketcher.Polar(21, pocket), Sketcher.Polar(1, pocket - 86));
        s.Text(s["groove_extent"], Sketcher.Polar(23.2, 72) + new Vector2(0, -0.6));
    }

    /// <summary>The quadrant from its edge.</summary>
    private static void QuadrantEdge(Sketcher s)
    {
        s.Box(-6, -17, 3.5, 34);
        s.Box(2.5, -17, 3.5, 34);
        s.Line(new(-2.5, 13), new(2.5, 13));
        s.Line(new(-2.5, -13), new(2.5, -13));
        s.Box(-16, -2.5, 10, 5);
        s.Box(6, -2.5, 6, 5);
        s.Line(new(0, -21), new(0, 21), LineKind.Centre);
        s.Line(new(-22, 0), new(34, 0), LineKind.Centre);
        s.ArrowTo(new(34, 0), new(37, 0));
        s.Text(SketchText.ZAxis, new(25, 2));
        s.Text(SketchText.Bore, new(-24, -1.2), TextAlign.Right);
        s.Across(new(-2.5, 17), new(2.5, 17), 25, s["groove_width"]);
        s.Across(new(-6, -17), new(6, -17), -25, s["thickness"]);
        s.Up(new(-6, 0), new(-6, 17), -14, s["outer_radius"]);
        s.Leader(new(0, 21), new(9, 21), SketchText.GroovePlane);
    }

    /// <summary>The pocket, from the quadrant's face for a barrel or ball and for a nipple, and in section.</summary>
    private static void Pocket(Sketcher s)
    {
        s.Chain(LineKind.Visible, false, new(-6, 9.2), new(-6, 17), new(-31, 17), new(-31, -1), new(-6, -1), new(-6, 6.8));
        s.Arc(new(-22, 8), 5, 13.9, 346.1);
        s.Line(new(-17.15, 9.2), new(-6, 9.2));
        s.Line(new(-17.15, 6.8), new(-6, 6.8));
        s.Across(new(-27, 8), new(-17, 8), 22, s["diameter"]);
        s.Up(new(-6, 6.8), new(-6, 9.2), -1, s["slot_width"]);
        s.Text(SketchText.BarrelOrBall, new(-18.5, -5.5));

        s.Chain(LineKind.Visible, false, new(36, 9.2), new(36, 17), new(12, 17), new(12, -1), new(36, -1), new(36, 6.8));
        s.Chain(LineKind.Visible, false, new(36, 9.2), new(28, 9.2), new(28, 12), new(15, 12), new(15, 4), new(28, 4), new(28, 6.8), new(36, 6.8));
        s.Up(new(15, 4), new(15, 12), 7, s["width"]);
        s.Across(new(15, 12), new(28, 12), 22, s["length"]);
        s.Text(SketchText.Nipple, new(24, -5.5));

        s.Chain(
            LineKind.Visible, true, new(-12, -26), new(16, -26), new(16, -13), new(7, -13), new(7, -21), new(-3, -21), new(-3, -13), new(-12, -13));
        s.Up(new(7, -21), new(16, -13), 22, s["depth"]);
        s.Text(SketchText.PocketSection, new(2, -30.5));
    }

    /// <summary>The valve in its bore, and the sensor with its slots.</summary>
    private static void Valve(Sketcher s)
    {
        s.Line(new(-16, 12), new(16, 12));
        s.Line(new(-16, -12), new(16, -12));
        s.Line(new(0, -15), new(0, 15), LineKind.Centre);
        s.Circle(Vector2.Zero, 2.5);
        var up = Sketcher.Polar(12.2, 78);
        s.Line(0.21 * up, up);
        s.Line(-0.21 * up, -1 * up);
        s.Corner(Vector2.Zero, 78, 12, 18, s["closed_angle"], 12.5);
        s.Up(new(-16, -12), new(-16, 12), -22, s["bore"]);
        s.Leader(Sketcher.Polar(2.5, -30), new(8, -6.5), s["shaft_diameter"]);
        Vector2 sensor = new(36, -1);
        s.Circle(sensor, 12);
        s.Circle(sensor, 5);
        foreach (var side in (double[])[90, 270])
        {
            s.Arc(sensor, 7.6, side - 35, side + 35);
            s.Arc(sensor, 10.4, side - 35, side + 35);
            s.Arc(sensor + Sketcher.Polar(9, side + 35), 1.4, side + 35, side + 215);
            s.Arc(sensor + Sketcher.Polar(9, side - 35), 1.4, side + 145, side + 325);
            s.Circle(sensor + Sketcher.Polar(9, side), 1);
        }

        s.Corner(sensor, 90, 35, 16, s["slot"], 10.5);
        s.Text(SketchText.Sensor, sensor + new Vector2(0, -16.5));
    }

    /// <summary>Closing torque with a spring balance on a lever: all springs, then each alone.</summary>
    private static void Torque(Sketcher s)
    {
        var o = Vector2.Zero;
        s.Circle(o, 9);
        Levers(o, 30);
        s.Box(26.5, 6, 4, 9);
        s.Line(new(28.5, 1), new(28.5, 6));
        s.ArrowTo(new(28.5, 15), new(28.5, 22));
        s.Text(SketchText.Force, new(28.5, 23.5));
        s.Across(new(0, -9), new(28.5, -1), -15, SketchText.Lever);
        s.Turn(o, 12, 100, 140);
        s.Text(SketchText.Opens, Sketcher.Polar(14, 122), TextAlign.Right);
        s.Turn(o, 22, 17, 4);
        s.Text(s["torque_closed"], Sketcher.Polar(19.6, 10) + new Vector2(0, -0.9));
        s.Turn(o, 22, 58, 45);
        s.Text(s["torque_open"], Sketcher.Polar(24, 52) + new Vector2(0.4, -0.9));
        s.Turn(o, 12, 215, 165);
        s.Text(s["shaft_drag"], Sketcher.Polar(15, 190) + new Vector2(0, -1.2));

        for (var i = 1; i <= 2; i++)
        {
            Vector2 at = new(i == 1 ? -30 : 14, -42);
            s.Circle(at, 5);
            Levers(at, 20);
            s.Turn(at, 15, 20, 5);
            s.Text(s[$"{i} closed"], at + Sketcher.Polar(17.5, 12) + new Vector2(0, -0.9));
            s.Turn(at, 15, 58, 43);
            s.Text(s[$"{i} open"], at + Sketcher.Polar(17.2, 50) + new Vector2(0.4, -0.9));
            s.Text(SketchText.Alone(i), at + new Vector2(7, -9));
        }

        void Levers(Vector2 at, double reach)
        {
            s.Circle(at, 2);
            s.Chain(LineKind.Visible, false, at + new Vector2(1.75, 1), at + new Vector2(reach, 1), at + new Vector2(reach, -1), at + new Vector2(1.75, -1));
            s.Line(at + Sketcher.Polar(2, 62), at + Sketcher.Polar(reach * 0.9, 62), LineKind.Adjacent);
        }
    }

    /// <summary>The mount face: holes from the origin, from the front and from the side.</summary>
    private static void Mount(Sketcher s)
    {
        Vector2 first = new(-27, -10), second = new(-24, 9);
        s.Chain(LineKind.Visible, true, new(-34, -16), new(-20, -16), new(-17, 15), new(-31, 15));
        foreach (var hole in (Vector2[])[first, second])
        {
            s.Circle(hole, 2);
            s.Circle(hole, 4.5);
        }

        s.Text("H1", new(-12.5, -8.8));
        s.Text("H2", new(-12.5, 10.2));
        s.Axes(Vector2.Zero, 11, 12);
        s.Circle(Vector2.Zero, 8);
        s.Across(new(-27, -14.5), new(0, -8), -22, s["1x"]);
        s.Up(new(-22.5, -10), new(17, 0), 21, s["1y"]);
        s.Across(new(-24, 13.5), new(0, 17), 23, s["2x"]);
        s.Up(new(-19.5, 9), new(17, 0), 28, s["2y"]);
        s.Leader(first + Sketcher.Polar(2, 200), new(-39, -13), s["thread"]);
        s.Leader(second + Sketcher.Polar(4.5, 150), new(-39, 17), s["boss_diameter"]);

        const double side = -56;
        Vector2 low = new(-8, side - 12), high = new(-4, side + 14);
        Vector2 along = (high - low).Unit, normal = new(along.Y, -along.X);
        s.Chain(LineKind.Visible, true, low, high, new(-30, side + 14), new(-30, side - 12));
        Vector2 h1 = low + 5 * along, h2 = low + 21.5 * along;
        s.Line(h1 - 9 * normal, h1 + 3 * normal, LineKind.Centre);
        s.Line(h2 - 9 * normal, h2 + 3 * normal, LineKind.Centre);
        s.Text("H1", h1 + new Vector2(-12, -1.2));
        s.Text("H2", h2 + new Vector2(-12, -1.2));
        var middle = 0.5 * (h1 + h2);
        s.ArrowTo(middle, middle + 12 * normal);
        s.Text(s["normal"], middle + new Vector2(6, 0.6));
        s.Line(new(20, side - 16), new(20, side + 16), LineKind.Centre);
        s.Box(18, side - 8, 4, 16);
        s.Across(h1, new(20, side - 16), side - 21, s["1z"]);
        s.Across(h2, new(20, side + 16), side + 21, s["2z"]);
        s.Text(SketchText.GroovePlane, new(23, side - 14), TextAlign.Left);
    }

    /// <summary>The bore's axis and the casting round it: from the side, and along the throttle shaft.</summary>
    private static void BoreAxis(Sketcher s)
    {
        s.Circle(new(-10, 0), 13);
        s.Circle(new(-10, 0), 9);
        s.Line(new(-28, 0), new(34, 0), LineKind.Centre);
        s.Line(new(24, -13), new(24, 13), LineKind.Centre);
        s.Box(22, -9, 4, 18);
        s.Line(new(-10, -15), new(-10, 15), LineKind.Centre);
        s.Across(new(-10, -15), new(24, -13), -20, s["z"]);
        s.Up(new(-10, -13), new(-10, 13), -31, s["outside_diameter"]);
        s.Text(SketchText.GroovePlane, new(27, 10.5), TextAlign.Left);

        Vector2 o = new(-4, -56), way = Sketcher.Polar(1, 22), side = way.Left;
        s.Chain(LineKind.Visible, true, o + 21 * way + 8 * side, o - 17 * way + 8 * side, o - 17 * way - 8 * side, o + 21 * way - 8 * side);
        s.Line(o - 20 * way, o + 24 * way, LineKind.Centre);
        s.Circle(o, 2.5);
        s.Axes(o, 36, 25);
        s.Corner(o, 0, 22, 30, s["direction"], 24);
        s.Along(o + 8 * side, o + 21 * way + 8 * side, 6, s["ahead"]);
        s.Along(o - 17 * way + 8 * side, o + 8 * side, 6, s["behind"]);
    }

    /// <summary>A box that the bracket must stay out of.</summary>
    private static void KeepOut(Sketcher s)
    {
        s.Chain(LineKind.Visible, true, new(0, 0), new(20, 0), new(20, 14), new(0, 14));
        s.Chain(LineKind.Visible, false, new(0, 14), new(7, 19), new(27, 19), new(27, 5), new(20, 0));
        s.Line(new(20, 14), new(27, 19));
        s.Chain(LineKind.Hidden, false, new(0, 0), new(7, 5), new(7, 19));
        s.Line(new(7, 5), new(27, 5), LineKind.Hidden);
        s.Leader(new(7, 5), new(-8, -4), s["min"]);
        s.Leader(new(20, 14), new(33, 23), s["max"]);
        s.Axes(new(40, 0), 10, 10);
        s.ArrowTo(new(40, 0), new(36, -4), LineKind.Centre);
        s.Text("z", new(33.5, -5.5));
    }

    /// <summary>A groove that is round about a centre beside the shaft.</summary>
    private static void EccentricGroove(Sketcher s)
    {
        Vector2 o = Vector2.Zero, centre = Sketcher.Polar(12, 20);
        s.Arc(centre, 17, -35, 125);
        s.Circle(o, 2.5);
        s.Axes(o, 38, 29);
        s.Circle(centre, 0.6);
        s.Along(o, centre, -9, s["offset"]);
        s.Corner(o, 0, 20, 33, s["direction"], 12);
        var tip = centre + Sketcher.Polar(17, 95);
        s.ArrowTo(centre, tip);
        s.Text(s["radius"], 0.4 * centre + 0.6 * tip + new Vector2(2.2, -1));
    }

    /// <summary>A groove of any other shape, measured point by point.</summary>
    private static void GrooveTable(Sketcher s)
    {
        Vector2 centre = new(3, 4);
        const double pocket = -40;
        s.Arc(centre, 17, -48, 125);
        s.Circle(Vector2.Zero, 2.5);
        s.Axes(Vector2.Zero, 32, 30);
        for (var on = 0; on <= 150; on += 30)
        {
            var ray = Sketcher.Polar(1, pocket + on);
            var along = centre.Dot(ray);
            var reach = along + Math.Sqrt(along * along - centre.Dot(centre) + 17 * 17);
            s.ArrowTo(3 * ray, reach * ray);
            s.Text(s[$"{on}"], (reach + 3.2) * ray + new Vector2(0, -1.2));
        }

        s.Text(SketchText.Pocket, new(17.5, -12), TextAlign.Left);
    }

    /// <summary>The cable's end.</summary>
    private static void Cable(Sketcher s)
    {
        s.Box(-32, -2.5, 14, 5);
        s.Line(new(-32, 1), new(-18, 1), LineKind.Hidden);
        s.Line(new(-32, -1), new(-18, -1), LineKind.Hidden);
        s.Box(-18, -4, 3, 8);
        s.Line(new(-15, 0.4), new(22.5, 0.4), LineKind.Dimension);
        s.Line(new(-15, -0.4), new(22.5, -0.4), LineKind.Dimension);
        s.Circle(new(27.5, 0), 5);
        s.Across(new(-15, -4), new(27.5, -5), -13, s["free_inner_length"]);
        s.Leader(new(-23, -2.5), new(-26, -9), s["outer_diameter"]);
        s.Leader(new(-32, 0.6), new(-34.5, 7), s["outer_bore"]);
        s.Up(new(27.5, -5), new(27.5, 5), 37.5, s["diameter"]);
        s.Leader(new(3, 0.4), new(7, 7), s["wire_diameter"]);
        s.Text(SketchText.Outer, new(-25, 4.8));
        s.Text(SketchText.Seat, new(-16.5, 6.5));

        s.Box(22.5, -33, 10, 14);
        s.Line(new(-5, -25.6), new(22.5, -25.6), LineKind.Dimension);
        s.Line(new(-5, -26.4), new(22.5, -26.4), LineKind.Dimension);
        s.Up(new(32.5, -33), new(32.5, -19), 37.5, s["length"]);
        s.Text(SketchText.FromAbove, new(-7, -27.2), TextAlign.Right);
    }

    /// <summary>Three kinds of outer's end.</summary>
    private static void OuterEnds(Sketcher s)
    {
        s.Box(-30, 23, 18, 6);
        s.Box(-12, 21, 4, 10);
        s.Box(-5, 21, 4, 10);
        s.Box(-8, 23, 3, 6);
        s.Box(-1, 23, 9, 6);
        s.Line(new(8, 26), new(24, 26), LineKind.Dimension);
        s.Up(new(-12, 21), new(-12, 31), -34.5, s["across_flats"]);
        s.Across(new(-12, 31), new(-8, 31), 36, s["nut_height"]);
        s.Across(new(-1, 31), new(8, 29), 42, s["range"]);
        s.Leader(new(5, 23), new(9, 18.5), s["thread"]);
        s.Text(SketchText.Adjuster, new(10, 29), TextAlign.Left);

        s.Box(-30, 3, 18, 6);
        s.Box(-12, 1, 4, 10);
        s.Box(-8, 3.5, 8, 5);
        s.Line(new(0, 6), new(24, 6), LineKind.Dimension);
        s.Up(new(-12, 1), new(-12, 11), -34.5, s["shoulder_diameter"]);
        s.Leader(new(-4, 8.5), new(-1, 13), s["nose_diameter"]);
        s.Text(SketchText.Ferrule, new(10, 9), TextAlign.Left);

        s.Box(-30, -17, 18, 6);
        s.Box(-12, -19, 3, 10);
        s.Box(-9, -16.5, 4, 5);
        s.Box(-5, -19, 3, 10);
        s.Line(new(-2, -14), new(24, -14), LineKind.Dimension);
        s.Up(new(-12, -19), new(-12, -9), -34.5, s["collar_diameter"]);
        s.Leader(new(-7, -11.5), new(-1, -4.5), s["neck_diameter"]);
        s.Across(new(-9, -19), new(-5, -19), -25, s["neck_length"]);
        s.Text(SketchText.Clip, new(10, -11), TextAlign.Left);
    }

    /// <summary>The pedal: pad travel, its own force and the wire pulled.</summary>
    private static void Pedal(Sketcher s)
    {
        Vector2 pivot = new(0, 12);
        s.Circle(pivot, 2);
        var pad = pivot + Sketcher.Polar(34, 250);
        s.Line(pivot + Sketcher.Polar(2, 250), pad);
        Vector2 face = pad + Sketcher.Polar(1.2, 160), half = Sketcher.Polar(5, 250);
        s.Chain(LineKind.Visible, true, pad - half, pad + half, face + half, face - half);
        s.ArrowTo(face + Sketcher.Polar(13, 160), face);
        s.Text(s["pad_load"], face + Sketcher.Polar(11, 160) + new Vector2(0.5, 1.6));
        var floor = pivot + Sketcher.Polar(34, 285);
        s.Line(pivot + Sketcher.Polar(2, 285), floor, LineKind.Adjacent);
        Vector2 top = pivot + Sketcher.Polar(12, 70), pulled = pivot + Sketcher.Polar(12, 105);
        s.Line(pivot + Sketcher.Polar(2, 70), top);
        s.Line(pivot + Sketcher.Polar(2, 105), pulled, LineKind.Adjacent);
        s.Line(top, top + new Vector2(26, 0));
        s.Box(24, top.Y - 2, 5, 4);
        s.Text(SketchText.Cable, new(17, top.Y + 2));
        s.Across(pulled, top, top.Y + 7, s["available_pull"]);
        s.Turn(pivot, 31, 250, 285);
        s.Text(s["lever_ratio"], pivot + Sketcher.Polar(28, 268) + new Vector2(0, -1));
        s.Line(new(28, -27), new(-24, -35));
        s.Text(SketchText.Floor, new(14, -35.5));
    }

    /// <summary>The pedal's arm with two cables hooked to it, and the end fitting of the second.</summary>
    private static void OtherCable(Sketcher s)
    {
        Vector2 pivot = new(-14, 6);
        s.Circle(pivot, 2);
        s.Line(pivot + Sketcher.Polar(2, 250), pivot + Sketcher.Polar(20, 250));
        s.Line(pivot + Sketcher.Polar(2, 80), pivot + Sketcher.Polar(14, 80));
        Vector2 upper = pivot + Sketcher.Polar(14, 80), lower = pivot + Sketcher.Polar(8, 80);
        s.Line(upper, upper + new Vector2(14, 0));
        s.Box(upper.X + 14, upper.Y - 2, 5, 4);
        s.Text(SketchText.ToThrottle, upper + new Vector2(21, -1), TextAlign.Left);
        s.Line(lower, lower + new Vector2(14, -3));
        s.Box(lower.X + 14, lower.Y - 5, 5, 4);
        s.Text(SketchText.OtherCable, lower + new Vector2(21, -4), TextAlign.Left);
        Vector2 end = new(24, -10);
        s.Line(end + new Vector2(-16, 0), end + new Vector2(-3, 0));
        s.Box(end.X - 3, end.Y - 4, 6, 8);
        s.Across(end + new Vector2(-3, -4), end + new Vector2(3, -4), end.Y - 9, s["diameter"]);
        s.Up(end + new Vector2(3, -4), end + new Vector2(3, 4), end.X + 9, s["length"]);
    }

    /// <summary>Drag of the cable: a spring balance at either end, the other end free or with a weight on it.</summary>
    private static void Drag(Sketcher s)
    {
        foreach (var y in new[] { 0.0, -16, -34 })
        {
            s.Line(new(-9, y + 1), new(9, y + 1));
            s.Line(new(-9, y - 1), new(9, y - 1));
            s.Line(new(-15, y), new(15, y));
            s.Circle(new(-16.5, y), 1.5);
            s.Circle(new(16.5, y), 1.5);
        }

        s.Box(-26, -2, 7, 4);
        s.Line(new(-19, 0), new(-18, 0));
        s.ArrowTo(new(-26, 0), new(-32, 0));
        s.Text(s["closing_drag"], new(-29, 2));
        foreach (var (y, mark) in new[] { (-16.0, "opening_drag"), (-34, "pull") })
        {
            s.Box(19, y - 2, 7, 4);
            s.Line(new(18, y), new(19, y));
            s.ArrowTo(new(26, y), new(32, y));
            s.Text(s[mark], new(29, y + 2));
        }

        s.Line(new(-18, -34), new(-22.5, -34));
        s.Circle(new(-22.5, -36), 2);
        s.Line(new(-24.5, -36), new(-24.5, -42));
        s.Box(-27.5, -48, 6, 6);
        s.Text(s["weight"], new(-24.5, -46.2));
        s.Text(SketchText.FittingEnd, new(-16.5, -6.5));
        s.Text(SketchText.PedalEnd, new(16.5, -6.5));
    }

    /// <summary>Stiffness of the outer: the fitting held fast, a weight on the pedal end, a dial gauge beside it.</summary>
    private static void OuterStiffness(Sketcher s)
    {
        foreach (var (from, to) in new[] { (-12.0, -9.0), (9, 12) })
        {
            s.Line(new(from, -6), new(from, 6));
            s.Line(new(to, -6), new(to, 6));
        }

        s.Line(new(-9, 1), new(9, 1));
        s.Line(new(-9, -1), new(9, -1));
        s.Line(new(-20, 0), new(21, 0));
        s.Circle(new(-21.5, 0), 1.5);
        s.Box(-26, -3, 3, 6);
        s.Text(SketchText.FittingEnd, new(-21.5, -6.5));
        s.Text(SketchText.Stop, new(-10.5, 8));
        s.Text(SketchText.Bulkhead, new(10.5, 8));

        // Over a roller and down to the weight.
        s.Circle(new(21, -3), 3);
        s.Line(new(24, -3), new(24, -16));
        s.Box(21, -22, 6, 6);
        s.Text(s["weight"], new(24, -20.2));
        s.Circle(new(33, -12), 3);
        s.Line(new(30, -12), new(24, -12));
        s.Text(s["movement"], new(33, -18));
    }

    /// <summary>Where the outer comes out of the bulkhead, and its way to the stop.</summary>
    private static void Bulkhead(Sketcher s)
    {
        s.Line(new(-30, -16), new(-30, 18));
        s.Line(new(-32, -16), new(-32, 18));
        s.Circle(new(-30, 6), 1);
        Vector2 bend = new(-8, 16);
        s.Line(new(-29, 6), new(-8, 6));
        s.Arc(bend, 10, -90, 0);
        s.Line(new(2, 16), new(2, 22));
        s.Box(-1, 22, 6, 4);
        s.Text(SketchText.Stop, new(7, 22.8), TextAlign.Left);
        s.ArrowTo(new(-30, 6), new(-19, 6), LineKind.Visible);
        s.Text(s["direction"], new(-19, 7.4));
        s.Leader(new(-31, 6), new(-35, 11), s["point"]);
        s.ArrowTo(bend, bend + Sketcher.Polar(10, -40));
        s.Text(s["min_bend_radius"], bend + Sketcher.Polar(5, -40) + new Vector2(1.6, 0.8));

        // Along the outer from the bulkhead to the stop's seat, outside the bend.
        s.ArrowTo(new(-14, 2.5), new(-30, 2.5));
        s.Line(new(-14, 2.5), new(-8, 2.5), LineKind.Dimension);
        s.Arc(bend, 13.5, -90, 0, LineKind.Dimension);
        s.ArrowTo(new(5.5, 16), new(5.5, 22));
        s.Text(s["outer_length"], new(-18, -0.6));

        s.ArrowTo(new(-24, -12), new(-24, -3), LineKind.Visible);
        s.Text(s["up"], new(-21.5, -8));
        s.Text(SketchText.Bulkhead, new(-31, 20.5));
        Vector2 body = new(22, -10);
        s.Axes(body, 11, 13);
        s.Circle(body, 6);
        s.Across(new(-30, -16), new(22, -17), -23, SketchText.NegativeX);
        s.ArrowTo(body + new Vector2(-11, 0), body + new Vector2(-17, 0));
        s.ArrowTo(body + new Vector2(-11, 0), body + new Vector2(-7, 0));
        s.Text(s["engine_movement"], body + new Vector2(-12, 1.4));
        s.Turn(body, 9, 45, 75);
        s.Turn(body, 9, 45, 15);
        s.Text(s["roll"], body + Sketcher.Polar(11.4, 45) + new Vector2(0.4, -1));
    }

    /// <summary>Free play and pedal travel on the vehicle.</summary>
    private static void Fitted(Sketcher s)
    {
        s.Arc(new(22, -8), 13, -20, 120);
        s.Circle(new(22, -8), 3);
        var leave = new Vector2(22, -8) + Sketcher.Polar(13, 95);
        s.Line(leave, new(-18, leave.Y));
        s.Chain(LineKind.Adjacent, false, leave, new(4, leave.Y + 4), new(-18, leave.Y));
        s.Box(-25, leave.Y - 3, 7, 6);
        s.Text(SketchText.Stop, new(-21.5, leave.Y - 6.5));
        s.Text(s["--free-play"], new(4, leave.Y + 5.5));

        Vector2 pivot = new(-14, -12);
        s.Circle(pivot, 1.5);
        s.Line(pivot + Sketcher.Polar(1.5, 245), pivot + Sketcher.Polar(24, 245));
        s.Line(pivot + Sketcher.Polar(1.5, 285), pivot + Sketcher.Polar(24, 285), LineKind.Adjacent);
        s.Turn(pivot, 21, 245, 285);
        s.Text(s["--pedal-travel"], pivot + Sketcher.Polar(18, 265) + new Vector2(0, -1));
        s.Line(new(2, -35), new(-30, -40));
        s.Text(SketchText.Floor, new(-6, -42.5));
    }
}
