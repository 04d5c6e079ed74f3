using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Measuring;

/// <summary>Draws what is measured so far, to scale: what is not known is not drawn.</summary>
public static class SoFarPicture
{
    // Room on the paper (mm): about that of the worksheet's sketches, so that letters have one size on the page.
    private const double Width = 110, Height = 75, Between = 10, MaxScale = 2;

    // Whoever mistypes a length must see the rest of the part still: what is larger is left out (mm).
    private const double Largest = 2000;

    // The axes show where the origin is before anything else is known (mm).
    private const double Around = 22;

    /// <summary>The throttle body from outside along its shaft, and from the right of that view (third angle); an SVG document.</summary>
    public static string Of(BodySoFar body) => ToScale(body).Svg;

    /// <summary>
    /// The same with where it stands: the scale of the view along the shaft (mm on the paper for one of the part), where the document has the shaft's axis in that view (y runs down), and how far to the right that view goes.
    /// </summary>
    public static (string Svg, double Scale, Vector2 Shaft, double Right) ToScale(BodySoFar body)
    {
        var (front, side) = (BoxOf(body, p => p.XY), BoxOf(body, p => new(-p.Z, p.Y)));
        var scale = Math.Min(MaxScale, Math.Min((Width - Between) / (front.Width + side.Width), Height / Math.Max(front.Height, side.Height)));
        // Both views share y; the second stands to the right of the first.
        var apart = front.Max.X - side.Min.X + Between / scale;
        var s = new Sketcher([]);
        Front(new(s, scale, Vector2.Zero), body);
        Side(new(s, scale, new(apart, 0)), body);
        var below = scale * Math.Min(front.Min.Y, side.Min.Y) - 6;
        s.Text(SoFarText.FromOutside, new(scale * front.Min.X, below), TextAlign.Left);
        s.Text(SoFarText.FromRight, new(scale * (apart + side.Min.X), below), TextAlign.Left);
        var svg = WithBar(s, scale, new(scale * front.Min.X, below - 9));
        var shaft = SvgWriter.OriginOf(s.Block);
        return (svg, scale, shaft, shaft.X + scale * front.Max.X + Between / 2);
    }

    /// <summary>The cable's end with its fitting, and under it pull and pad travel; an SVG document.</summary>
    public static string Of(CableSoFar cable)
    {
        const double stub = 25, gap = 9;
        var end = Known(cable.EndWidth) ?? Known(cable.Outer) ?? 8;
        double left = Known(cable.FreeInnerLength) ?? 0, longest = new[] { left + (Known(cable.FittingLength) ?? 0), Known(cable.Pull) ?? 0, Known(cable.PadTravel) ?? 0, 20 }.Max();
        var scale = Math.Min(MaxScale, Width / (longest + stub));
        var s = new Sketcher([]);
        var v = new View(s, scale, Vector2.Zero);
        if (Known(cable.FreeInnerLength) is { } free)
        {
            var half = (Known(cable.Wire) ?? 0) / 2;
            v.Line(new(-free, half), new(0, half));
            v.Line(new(-free, -half), new(0, -half));
            var across = Known(cable.FittingDiameter);
            if (across is { } d && !cable.IsBall && Known(cable.FittingLength) is { } length)
            {
                // A barrel lies across the wire: its end is seen as long as it is.
                var (along, over) = cable.IsAlongWire ? (length, d) : (d, length);
                v.Rectangle(new(new(-free - along / 2, -over / 2), new(-free + along / 2, over / 2)));
            }
            else if (across is { } ball)
            {
                v.Circle(new(-free, 0), ball / 2);
            }
        }

        if (Known(cable.Outer) is { } outer)
        {
            v.Rectangle(new(new(0, -outer / 2), new(stub, outer / 2)));
        }

        if (Known(cable.Range) is { } range and > 0)
        {
            v.Rectangle(new(new(-range / 2, -0.35 * end), new(range / 2, 0.35 * end)), LineKind.Dimension);
        }

        if (Known(cable.EndWidth) is { } width)
        {
            v.Line(new(0, -width / 2), new(0, width / 2));
        }

        v.Line(new(0, -end), new(0, end), LineKind.Centre);
        var y = scale * -end - 6;
        s.Text(SoFarText.CableEnd, new(-scale * longest, y), TextAlign.Left);
        foreach (var (what, length) in new[] { (SoFarText.Pull, Known(cable.Pull)), (SoFarText.PadTravel, Known(cable.PadTravel)) })
        {
            if (length is { } l)
            {
                y -= gap;
                s.ArrowTo(new(0, y), new(-scale * l, y), LineKind.Visible);
                s.Text(what, new(2, y - 0.9), TextAlign.Left);
            }
        }

        return WithBar(s, scale, new(-scale * longest, y - 11));
    }

    private static void Front(View v, BodySoFar body)
    {
        v.Axes(Around);
        if (Known(body.ShaftDiameter) is { } shaft)
        {
            v.Circle(Vector2.Zero, shaft / 2);
        }

        if (Known(body.HubRadius) is { } hub)
        {
            v.Circle(Vector2.Zero, hub, LineKind.Dimension);
        }

        var way = body.OpensClockwise ? -1 : 1;
        if (Pitch(body) is { } groove)
        {
            if (body is { PocketAngle: { } pocket, GrooveExtent: { } extent })
            {
                v.Arc(groove.Centre, groove.Radius, pocket, way * extent, LineKind.Centre);
            }
            else
            {
                v.Circle(groove.Centre, groove.Radius, LineKind.Centre);
            }
        }

        if (body.GroovePoints.Length > 1)
        {
            v.Chain(body.GroovePoints.Where(Fits), LineKind.Centre);
        }

        if (Known(body.OuterRadius) is { } rim)
        {
            if (body is { PocketAngle: { } pocket, GrooveExtent: { } extent })
            {
                v.Arc(Vector2.Zero, rim, pocket, way * extent, LineKind.Visible);
                v.Line(Vector2.Zero, Vector2.FromPolar(rim, new(pocket)));
                v.Line(Vector2.Zero, Vector2.FromPolar(rim, new(pocket + way * extent)));
            }
            else
            {
                v.Circle(Vector2.Zero, rim);
            }
        }

        if (body.PocketAngle is { } closed && PocketRadius(body) is { } radius)
        {
            var size = (Known(body.PocketSize) ?? 3) / 2;
            v.Circle(Vector2.FromPolar(radius, new(closed)), size);
            if (body.Rotation is { } turn)
            {
                // Where the pocket is with the valve wide open.
                v.Circle(Vector2.FromPolar(radius, new(closed + way * turn)), size, LineKind.Adjacent);
            }
        }

        if (body.BoreDirection is { } direction)
        {
            var along = Vector2.FromPolar(1, new(direction));
            var (ahead, behind) = Casting(body);
            v.Line(-(behind + 6) * along, (ahead + 6) * along, LineKind.Centre);
            foreach (var half in new[] { Known(body.CastingDiameter) / 2, Known(body.Bore) / 2 }.OfType<double>())
            {
                var across = half * along.Left;
                v.Chain([ahead * along + across, -behind * along + across, -behind * along - across, ahead * along - across, ahead * along + across], half * 2 == body.Bore ? LineKind.Hidden : LineKind.Adjacent);
            }
        }

        Mount(v, body, p => p.XY);
        Boxes(v, body, p => p.XY);
    }

    private static void Side(View v, BodySoFar body)
    {
        v.AxisUp(Around);
        Func<Vector3, Vector2> seen = p => new(-p.Z, p.Y);
        if (Known(body.OuterRadius) is { } rim)
        {
            var half = (Known(body.Thickness) ?? 0) / 2;
            v.Rectangle(new(new(-half, -rim), new(half, rim)));
        }

        if (body.BoreDirection is { } direction && Known(body.BoreZ) is { } z && (Known(body.CastingDiameter) ?? Known(body.Bore)) is { } diameter)
        {
            var (ahead, behind) = Casting(body);
            double up = Math.Sin(direction), over = diameter / 2 * Math.Abs(Math.Cos(direction));
            v.Rectangle(new(new(-z - diameter / 2, Math.Min(ahead * up, -behind * up) - over), new(-z + diameter / 2, Math.Max(ahead * up, -behind * up) + over)), LineKind.Adjacent);
        }

        Mount(v, body, seen);
        Boxes(v, body, seen);
    }

    private static void Mount(View v, BodySoFar body, Func<Vector3, Vector2> seen)
    {
        foreach (var (number, at, boss) in body.Holes.Where(h => Fits(h.At)))
        {
            v.Cross(seen(at));
            if (Known(boss) is { } d)
            {
                v.Circle(seen(at), d / 2, LineKind.Dimension);
            }

            v.Label(SoFarText.Hole(number), seen(at));
        }

        if (body.Normal is { Length: > 0 } normal && body.Holes.FirstOrDefault(h => Fits(h.At)) is { Number: > 0 } first)
        {
            v.Arrow(seen(first.At), seen(normal.Unit), 12);
        }
    }

    private static void Boxes(View v, BodySoFar body, Func<Vector3, Vector2> seen)
    {
        foreach (var (name, min, max) in body.KeepOuts.Where(k => Fits(k.Min) && Fits(k.Max)))
        {
            var box = Bounds.Around([seen(min), seen(max)]);
            v.Rectangle(box, LineKind.Adjacent);
            v.Label(name, new(box.Min.X, box.Max.Y));
        }
    }

    private static Bounds BoxOf(BodySoFar body, Func<Vector3, Vector2> seen)
    {
        var rim = new[] { Around, Known(body.OuterRadius), Pitch(body) is { } g ? g.Radius + g.Centre.Length : null }.Max() ?? Around;
        List<Vector3> all = [new(-rim, -rim, -Around / 2), new(rim, rim, Around / 2), .. body.GroovePoints.Where(Fits).Select(p => new Vector3(p.X, p.Y, 0))];
        foreach (var (_, at, boss) in body.Holes.Where(h => Fits(h.At)))
        {
            var half = (Known(boss) ?? 4) / 2 * new Vector3(1, 1, 1);
            all.AddRange([at - half, at + half]);
        }

        foreach (var (_, min, max) in body.KeepOuts.Where(k => Fits(k.Min) && Fits(k.Max)))
        {
            all.AddRange([min, max]);
        }

        if (body.BoreDirection is { } direction)
        {
            var (ahead, behind) = Casting(body);
            var along = Vector2.FromPolar(1, new(direction));
            var half = (Known(body.CastingDiameter) ?? Known(body.Bore) ?? 0) / 2;
            var z = Known(body.BoreZ) ?? 0;
            all.AddRange(new[] { ahead, -behind }.SelectMany(a => new[] { half, -half }.Select(h => a * along + h * along.Left)).Select(p => new Vector3(p.X, p.Y, z)));
            all.AddRange([new(0, 0, z - half), new(0, 0, z + half)]);
        }

        return Bounds.Around(all.Select(seen));
    }

    // The picture as a document, with a bar that says how large it is.
    private static string WithBar(Sketcher s, double scale, Vector2 at)
    {
        var length = new[] { 200, 100, 50, 20 }.FirstOrDefault(l => scale * l <= 40, 10);
        s.Line(at, at + new Vector2(scale * length, 0));
        foreach (var x in new[] { 0, scale * length })
        {
            s.Line(at + new Vector2(x, -1.2), at + new Vector2(x, 1.2));
        }

        s.Text(FormattableString.Invariant($"{length} mm"), at + new Vector2(scale * length + 2, -0.9), TextAlign.Left);
        return SvgWriter.Write(s.Block);
    }

    private static (Vector2 Centre, double Radius)? Pitch(BodySoFar body) =>
        body.Groove is { } groove && Known(groove.Radius) is not null && Fits(groove.Centre) ? groove : null;

    private static double? PocketRadius(BodySoFar body) =>
        Pitch(body)?.Radius ?? (body.GroovePoints.Length > 0 && Fits(body.GroovePoints[0]) ? body.GroovePoints[0].Length : null);

    private static (double Ahead, double Behind) Casting(BodySoFar body) =>
        body.Casting is { } casting && Known(casting.Ahead) is not null && Known(casting.Behind) is not null ? casting : (Around, Around);

    private static double? Known(double? length) => length is { } l && Math.Abs(l) <= Largest ? l : null;

    private static bool Fits(Vector3 p) => Known(p.X) is not null && Known(p.Y) is not null && Known(p.Z) is not null;

    private static bool Fits(Vector2 p) => Known(p.X) is not null && Known(p.Y) is not null;

    /// <summary>One view: places in mm of the part, drawn at a scale and shifted.</summary>
    private sealed record View(Sketcher Sketch, double Scale, Vector2 Shift)
    {
        public void Line(Vector2 from, Vector2 to, LineKind kind = LineKind.Visible)
        {
            // A point has no line.
            if ((to - from).Length > 0)
            {
                Sketch.Line(At(from), At(to), kind);
            }
        }

        public void Circle(Vector2 centre, double radius, LineKind kind = LineKind.Visible)
        {
            if (radius > 0)
            {
                Sketch.Circle(At(centre), Scale * radius, kind);
            }
        }

        public void Arc(Vector2 centre, double radius, double from, double sweep, LineKind kind)
        {
            if (Math.Abs(sweep) >= 2 * Math.PI)
            {
                Circle(centre, radius, kind);
            }
            else if (radius > 0 && sweep != 0)
            {
                Sketch.Arc(At(centre), Scale * radius, new Angle(from).Degrees, new Angle(from + sweep).Degrees, kind);
            }
        }

        public void Rectangle(Bounds box, LineKind kind = LineKind.Visible) =>
            Sketch.Box(At(box.Min).X, At(box.Min).Y, Scale * box.Width, Scale * box.Height, kind);

        public void Chain(IEnumerable<Vector2> points, LineKind kind)
        {
            var all = points.Select(At).ToArray();
            if (all.Length > 1)
            {
                Sketch.Chain(kind, false, all);
            }
        }

        public void Cross(Vector2 at)
        {
            Sketch.Line(At(at) - new Vector2(1.5, 0), At(at) + new Vector2(1.5, 0));
            Sketch.Line(At(at) - new Vector2(0, 1.5), At(at) + new Vector2(0, 1.5));
        }

        public void Label(string text, Vector2 at) => Sketch.Text(text, At(at) + new Vector2(1.6, 1.4), TextAlign.Left);

        public void Arrow(Vector2 from, Vector2 way, double length)
        {
            // Seen end on, an arrow is a point.
            if ((length * way).Length > 1)
            {
                Sketch.ArrowTo(At(from), At(from) + length * way);
            }
        }

        public void Axes(double length) => Sketch.Axes(At(Vector2.Zero), Scale * length, Scale * length);

        public void AxisUp(double length)
        {
            var o = At(Vector2.Zero);
            Sketch.ArrowTo(o, o + new Vector2(0, Scale * length), LineKind.Centre);
            Sketch.ArrowTo(o, o - new Vector2(Scale * length / 2, 0), LineKind.Centre);
            Sketch.Text("y", o + new Vector2(0, Scale * length + 1.5));
            Sketch.Text("z", o - new Vector2(Scale * length / 2 + 2.5, 1.2));
        }

        private Vector2 At(Vector2 p) => Scale * (p + Shift);
    }
}
