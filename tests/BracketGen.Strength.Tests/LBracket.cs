using BracketGen.Geometry;
using BracketGen.Strength.Parts;

namespace BracketGen.Strength.Tests;

/// <summary>
/// The bracket that is also given to CalculiX: two flanges at a right angle, two M6 holes with washers, a seat with a hole for the
/// adjuster. Steel, 3 mm; inside radius 3 mm, so the middle surface bends on 4.5 mm.
/// </summary>
internal static class LBracket
{
    public const double Thickness = 3;
    public const double HalfWidth = 25;

    private const double Radius = 4.5;
    private const double Foot = 26;
    private const double Arc = Radius * Math.PI / 2;
    private const double Top = 80;

    public static readonly Disc Seat = new(new(0, 66), 9);

    /// <summary>Pull of the outer on the stop: along the cable, nearly square to the upright flange (N).</summary>
    public static readonly Vector3 Force = new(12, 145, -30);

    public static FoldedPart Part { get; } = new()
    {
        Flat = new(
            new Contour([
                new LineSegment(new(-HalfWidth, -15), new(HalfWidth, -15)),
                new LineSegment(new(HalfWidth, -15), new(HalfWidth, 60)),
                new ArcSegment(new(HalfWidth - 20, 60), 20, Angle.Zero, Angle.Right),
                new LineSegment(new(HalfWidth - 20, Top), new(-HalfWidth + 20, Top)),
                new ArcSegment(new(-HalfWidth + 20, 60), 20, Angle.Right, Angle.Right),
                new LineSegment(new(-HalfWidth, 60), new(-HalfWidth, -15)),
            ]),
            [
                Contour.Circle(new(-14, 0), 3.3),
                Contour.Circle(new(14, 0), 3.3),
                Contour.Circle(Seat.Centre, 4.2),
            ]),
        MiddleSurface = Fold,
        Bends = [new(new(new(-40, Foot), new(40, Foot)), new(new(-40, Foot + Arc), new(40, Foot + Arc)))],
        Thickness = Thickness,
        Material = new(210000, 0.3, 7.85e-9),
        Washers = [new(new(-14, 0), 6), new(new(14, 0), 6)],
        Seat = Seat,
    };

    /// <summary>The foot lies in z = 0; the other flange stands up towards +z.</summary>
    public static ThrottlePoint Fold(FlatPoint p)
    {
        var angle = Math.Clamp((p.Y - Foot) / Radius, 0, Math.PI / 2);
        var beyond = Math.Max(0, p.Y - Foot - Arc);
        return new(p.X, Math.Min(p.Y, Foot) + Radius * Math.Sin(angle), Radius * (1 - Math.Cos(angle)) + beyond);
    }
}
