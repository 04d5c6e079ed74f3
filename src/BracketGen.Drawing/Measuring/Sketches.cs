using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Measuring;

/// <summary>The sketches of the worksheet. Letters stand for the blanks beside them; nothing is to scale.</summary>
internal static class Sketches
{
    /// <summary>The sketch of a kind.</summary>
    public static SheetBlock Of(SketchKind kind) => kind switch
    {
        SketchKind.Quadrant => Quadrant(),
        SketchKind.QuadrantEdge => QuadrantEdge(),
        SketchKind.Valve => Valve(),
        SketchKind.Torque => Torque(),
        SketchKind.Mount => Mount(),
        SketchKind.MountSide => MountSide(),
        SketchKind.KeepOut => KeepOut(),
        SketchKind.GrooveTable => GrooveTable(),
        SketchKind.Cable => Cable(),
        SketchKind.OuterEnds => OuterEnds(),
        SketchKind.Pedal => Pedal(),
        SketchKind.Drag => Drag(),
        SketchKind.Bulkhead => Bulkhead(),
        _ => Fitted(),
    };

    /// <summary>The quadrant as seen from outside.</summary>
    private static SheetBlock Quadrant()
    {
        var s = new Sketcher();
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
        s.Leader(Sketcher.Polar(pitch, 35), Sketcher.Polar(26, 41), "A");
        s.Corner(o, pocket, -pocket, 26, "B", outer);
        s.Turn(o, 9.5, 20, 80);
        s.Text("C", Sketcher.Polar(11.2, 55) + new Vector2(0.6, -1));
        s.Arc(o, 21, pocket, end, LineKind.Dimension);
        s.Head(Sketcher.Polar(21, end), Sketcher.Polar(1, end + 86));
        s.Head(Sketcher.Polar(21, pocket), Sketcher.Polar(1, pocket - 86));
        s.Text("D", Sketcher.Polar(23.2, 72) + new Vector2(0, -0.6));
        return s.Block;
    }

    /// <summary>The quadrant from its edge.</summary>
    private static SheetBlock QuadrantEdge()
    {
        var s = new Sketcher();
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
        s.Across(new(-2.5, 17), new(2.5, 17), 25, "E");
        s.Across(new(-6, -17), new(6, -17), -25, "F");
        s.Up(new(-6, 0), new(-6, 17), -14, "G");
        s.Leader(new(0, 21), new(9, 21), SketchText.GroovePlane);
        return s.Block;
    }

    /// <summary>A groove that is not round about the shaft.</summary>
    private static SheetBlock GrooveTable()
    {
        var s = new Sketcher();
        Vector2 centre = new(3, 4);
        s.Arc(centre, 17, -35, 125);
        s.Circle(Vector2.Zero, 2.5);
        s.Axes(Vector2.Zero, 30, 28);
        foreach (var degrees in (double[])[-30, 30, 60, 90 + 30])
        {
            var ray = Sketcher.Polar(1, degrees);
            var along = centre.Dot(ray);
            s.ArrowTo(3 * ray, (along + Math.Sqrt(along * along - centre.Dot(centre) + 17 * 17)) * ray);
        }

        s.Circle(Sketcher.Polar(17, -30) + new Vector2(0.4, -0.2), 1.8);
        s.Text(SketchText.Pocket, new(19, -12.5), TextAlign.Left);
        return s.Block;
    }

    /// <summary>The valve in its bore, and the spring balance on the lever.</summary>
    private static SheetBlock Valve()
    {
        var s = new Sketcher();
        s.Line(new(-22, 12), new(22, 12));
        s.Line(new(-22, -12), new(22, -12));
        s.Line(new(0, -15), new(0, 15), LineKind.Centre);
        s.Circle(Vector2.Zero, 2.5);
        var up = Sketcher.Polar(12.2, 78);
        s.Line(0.21 * up, up);
        s.Line(-0.21 * up, -1 * up);
        s.Corner(Vector2.Zero, 78, 12, 18, "J", 12.5);
        s.Up(new(-22, -12), new(-22, 12), -28, "H");
        s.Leader(Sketcher.Polar(2.5, -30), new(12, -6.5), SketchText.Shaft);
        return s.Block;
    }

    /// <summary>Drag of the cable: a spring balance at either end, the other end free.</summary>
    private static SheetBlock Drag()
    {
        var s = new Sketcher();
        foreach (var y in new[] { 0.0, -16 })
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
        s.Text("A", new(-29, 2));
        s.Box(19, -18, 7, 4);
        s.Line(new(18, -16), new(19, -16));
        s.ArrowTo(new(26, -16), new(32, -16));
        s.Text("B", new(29, -14));
        s.Text(SketchText.FittingEnd, new(-16.5, -6.5));
        s.Text(SketchText.PedalEnd, new(16.5, -6.5));
        return s.Block;
    }

    /// <summary>Closing torque with a spring balance on a lever.</summary>
    private static SheetBlock Torque()
    {
        var s = new Sketcher();
        s.Circle(Vector2.Zero, 9);
        s.Circle(Vector2.Zero, 2);
        s.Line(new(2, 1), new(30, 1));
        s.Line(new(2, -1), new(30, -1));
        s.Line(new(30, -1), new(30, 1));
        s.Box(26.5, 6, 4, 9);
        s.Line(new(28.5, 1), new(28.5, 6));
        s.ArrowTo(new(28.5, 15), new(28.5, 22));
        s.Text(SketchText.Force, new(28.5, 23.5));
        s.Across(new(0, -9), new(28.5, -1), -15, SketchText.Lever);
        s.Turn(Vector2.Zero, 12, 30, 110);
        s.Text(SketchText.Opens, Sketcher.Polar(13, 75) + new Vector2(0, 1.5));
        return s.Block;
    }

    /// <summary>The mount face: holes from the origin.</summary>
    private static SheetBlock Mount()
    {
        var s = new Sketcher();
        s.Box(-34, -16, 14, 30);
        s.Circle(new(-27, -10), 2);
        s.Circle(new(-27, -10), 4.5);
        s.Circle(new(-27, 7), 2);
        s.Circle(new(-27, 7), 4.5);
        s.Text("1", new(-18, -11.2));
        s.Text("2", new(-18, 5.8));
        s.Axes(Vector2.Zero, 12, 15);
        s.Circle(Vector2.Zero, 8);
        s.Across(new(-27, -14.5), new(0, -8), -22, SketchText.FirstHole);
        s.Up(new(-31.5, -10), new(0, 0), -40, "y");
        return s.Block;
    }

    /// <summary>Depth of the mount face behind the groove, and its normal.</summary>
    private static SheetBlock MountSide()
    {
        var s = new Sketcher();
        s.Box(-20, -12, 12, 22);
        s.Line(new(-8, -15), new(-8, 16), LineKind.Dimension);
        s.ArrowTo(new(-8, 0), new(1, 0));
        s.Text(SketchText.Normal, new(-6.5, 1.8), TextAlign.Left);
        s.Line(new(20, -16), new(20, 16), LineKind.Centre);
        s.Box(18, -8, 4, 16);
        s.Across(new(-8, -12), new(20, -16), -21, "z");
        return s.Block;
    }

    /// <summary>A box that the bracket must stay out of.</summary>
    private static SheetBlock KeepOut()
    {
        var s = new Sketcher();
        s.Chain(LineKind.Visible, true, new(0, 0), new(20, 0), new(20, 14), new(0, 14));
        s.Chain(LineKind.Visible, false, new(0, 14), new(7, 19), new(27, 19), new(27, 5), new(20, 0));
        s.Line(new(20, 14), new(27, 19));
        s.Leader(new(0, 0), new(-8, -6), SketchText.Minimum);
        s.Leader(new(27, 19), new(32, 23), SketchText.Maximum);
        return s.Block;
    }

    /// <summary>The cable's end.</summary>
    private static SheetBlock Cable()
    {
        var s = new Sketcher();
        s.Box(-32, -2.5, 14, 5);
        s.Box(-18, -4, 3, 8);
        s.Line(new(-15, 0.4), new(22.5, 0.4), LineKind.Dimension);
        s.Line(new(-15, -0.4), new(22.5, -0.4), LineKind.Dimension);
        s.Circle(new(27.5, 0), 5);
        s.Across(new(-15, -4), new(27.5, -5), -13, "A");
        s.Up(new(-32, -2.5), new(-32, 2.5), -36, "C");
        s.Up(new(27.5, -5), new(27.5, 5), 38, "D");
        s.Leader(new(3, 0.4), new(7, 7), SketchText.Wire);
        s.Text(SketchText.Outer, new(-26, 4.8));
        s.Text(SketchText.Seat, new(-16.5, 6.5));
        return s.Block;
    }

    /// <summary>Three kinds of outer's end.</summary>
    private static SheetBlock OuterEnds()
    {
        var s = new Sketcher();
        s.Box(-30, 15, 18, 6);
        s.Box(-12, 13, 4, 10);
        s.Box(-5, 13, 4, 10);
        s.Box(-8, 15, 3, 6);
        s.Box(-1, 15, 9, 6);
        s.Line(new(8, 18), new(24, 18), LineKind.Dimension);
        s.Text(SketchText.Adjuster, new(-8, 25.6));
        s.Leader(new(-1, 20), new(12, 22.5), "F");
        s.Box(-30, 0, 18, 6);
        s.Box(-12, -2, 4, 10);
        s.Box(-8, 0.5, 8, 5);
        s.Line(new(0, 3), new(24, 3), LineKind.Dimension);
        s.Text(SketchText.Ferrule, new(13, 6.5));
        s.Box(-30, -15, 18, 6);
        s.Box(-12, -17, 3, 10);
        s.Box(-9, -14.5, 4, 5);
        s.Box(-5, -17, 3, 10);
        s.Line(new(-2, -12), new(24, -12), LineKind.Dimension);
        s.Text(SketchText.Clip, new(13, -9.5));
        s.Across(new(-9, -17), new(-5, -17), -23, SketchText.Neck);
        return s.Block;
    }

    /// <summary>The pedal: pad travel and the wire pulled.</summary>
    private static SheetBlock Pedal()
    {
        var s = new Sketcher();
        Vector2 pivot = new(0, 12);
        s.Circle(pivot, 2);
        var pad = pivot + Sketcher.Polar(34, 250);
        s.Line(pivot + Sketcher.Polar(2, 250), pad);
        s.Line(pad + Sketcher.Polar(5, 160), pad + Sketcher.Polar(5, 340));
        var floor = pivot + Sketcher.Polar(34, 285);
        s.Line(pivot + Sketcher.Polar(2, 285), floor, LineKind.Adjacent);
        var top = pivot + Sketcher.Polar(12, 70);
        s.Line(pivot + Sketcher.Polar(2, 70), top);
        s.Line(top, top + new Vector2(26, 0));
        s.Box(24, top.Y - 2, 5, 4);
        s.Text(SketchText.Cable, new(17, top.Y + 2));
        s.Turn(pivot, 38, 250, 285);
        s.Text("A", pivot + Sketcher.Polar(35.5, 266) + new Vector2(0, -1));
        s.Line(new(28, -27), new(-24, -35));
        s.Text(SketchText.Floor, new(14, -35.5));
        return s.Block;
    }

    /// <summary>Where the outer comes out of the bulkhead.</summary>
    private static SheetBlock Bulkhead()
    {
        var s = new Sketcher();
        s.Line(new(-30, -16), new(-30, 18));
        s.Line(new(-32, -16), new(-32, 18));
        s.Circle(new(-30, 6), 1);
        s.ArrowTo(new(-29, 6), new(-17, 2));
        s.Text(SketchText.Direction, new(-14, 4.5), TextAlign.Left);
        s.Text(SketchText.Point, new(-34, 5), TextAlign.Right);
        s.Text(SketchText.Bulkhead, new(-31, 20.5));
        s.Axes(new(18, -10), 12, 14);
        s.Circle(new(18, -10), 6);
        s.Across(new(-30, -16), new(18, -16), -22, SketchText.NegativeX);
        return s.Block;
    }

    /// <summary>Free play and pedal travel on the vehicle.</summary>
    private static SheetBlock Fitted()
    {
        var s = new Sketcher();
        s.Arc(new(22, -8), 13, -20, 120);
        s.Circle(new(22, -8), 3);
        var leave = new Vector2(22, -8) + Sketcher.Polar(13, 95);
        s.Line(leave, new(-18, leave.Y));
        s.Chain(LineKind.Adjacent, false, leave, new(4, leave.Y + 4), new(-18, leave.Y));
        s.Box(-25, leave.Y - 3, 7, 6);
        s.Text(SketchText.Stop, new(-21.5, leave.Y - 6.5));
        s.Text(SketchText.FreePlay, new(4, leave.Y + 5.5));
        return s.Block;
    }
}
