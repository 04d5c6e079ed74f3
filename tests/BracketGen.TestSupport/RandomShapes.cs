using BracketGen.Geometry;
using CsCheck;

namespace BracketGen.TestSupport;

/// <summary>Generators of outlines and regions as brackets have them: lines, arcs both ways, rounded corners, round and long holes.</summary>
public static class RandomShapes
{
    /// <summary>Points in a square of 100 mm about the origin.</summary>
    public static readonly Gen<Vector2> Point = Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], (x, y) => new Vector2(x, y));

    /// <summary>Angles of up to three turns either way.</summary>
    public static readonly Gen<Angle> Direction = Gen.Double[-20, 20].Select(a => new Angle(a));

    /// <summary>Lines and arcs, up to full circles, either way.</summary>
    public static readonly Gen<Segment> Segment = Gen.OneOf(
        Gen.Select(Point, Gen.Double[0.5, 50], Direction, Gen.Double[-1, 1], (c, r, from, sweep) =>
            (Segment)new ArcSegment(c, r, from, new(2 * Math.PI * (Math.Abs(sweep) < 0.01 ? 1 : sweep)))),
        Gen.Select(Point, Direction, Gen.Double[0.5, 50], (start, way, length) =>
            (Segment)new LineSegment(start, start + Vector2.FromPolar(length, way))));

    /// <summary>Counter-clockwise outlines around the origin that hold a disc of 20 mm about it; a few may cross themselves.</summary>
    public static readonly Gen<Contour> Outline =
        Gen.Select(Gen.Double[-0.2, 0.2], Gen.Double[40, 80], Gen.Double[-0.1, 0.6], Gen.Bool, Gen.Double[0.5, 6])
            .Array[5, 9]
            .Select(corners => Build([.. corners.Select((c, i) => (
                Corner: Vector2.FromPolar(c.Item2, new(2 * Math.PI * (i + c.Item1) / corners.Length)),
                Bulge: c.Item4 && Math.Abs(c.Item3) > 0.02 ? c.Item3 : 0,
                Rounding: c.Item5 > 1.5 ? c.Item5 : 0))]));

    /// <summary>Flat parts: an outline with up to four holes, round or long, all apart.</summary>
    public static readonly Gen<Region> Region = Gen.Select(
        Outline,
        Gen.Select(Gen.Int[0, 2], Gen.Double[0.5, 4], Gen.Double[0.5, 3.5], Direction).Array[4],
        (outline, holes) => new Region(outline, holes.SelectMany((h, i) =>
        {
            Vector2 centre = new(i % 2 == 0 ? -9 : 9, i < 2 ? -9 : 9);
            return h.Item1 switch
            {
                0 => Array.Empty<Contour>(),
                1 => [Contour.Circle(centre, h.Item2)],
                _ => [Slot(centre, h.Item3, 8 - h.Item3, h.Item4)],
            };
        })));

    /// <summary>A long hole: two half circles of <paramref name="radius"/>, their centres <paramref name="apart"/> from each other.</summary>
    public static Contour Slot(Vector2 centre, double radius, double apart, Angle along)
    {
        var half = Vector2.FromPolar(apart / 2, along);
        return TangentOutline.Around([new(centre - half, radius), new(centre + half, radius)]);
    }

    /// <summary>The arc from <paramref name="start"/> to <paramref name="end"/>; bulge is tan(sweep/4), zero a line.</summary>
    public static Segment Bulged(Vector2 start, Vector2 end, double bulge)
    {
        if (bulge == 0)
        {
            return new LineSegment(start, end);
        }

        var sweep = 4 * Math.Atan(bulge);
        var chord = end - start;
        var radius = chord.Length / 2 / Math.Sin(Math.Abs(sweep) / 2);
        var centre = start + 0.5 * chord + 0.5 / Math.Tan(sweep / 2) * chord.Left;
        return new ArcSegment(centre, radius, (start - centre).Polar, new(sweep));
    }

    private static Contour Build((Vector2 Corner, double Bulge, double Rounding)[] corners)
    {
        var contour = new Contour(corners.Select((c, i) => Bulged(c.Corner, corners[(i + 1) % corners.Length].Corner, c.Bulge)));
        for (var i = corners.Length - 1; i >= 0; i--)
        {
            if (corners[i].Rounding > 0)
            {
                contour = Fillet.Round(contour, i, corners[i].Rounding) ?? contour;
            }
        }

        return contour;
    }
}
