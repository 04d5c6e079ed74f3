using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.TestSupport;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Bends and discs laid out by hand: a bend on the line x = 10 across +x, 4 mm of allowance and 2 mm of straight edge on either side.</summary>
/// <remarks>Flange 0 ends at x = 8, flange 1 begins at x = 16. Turned in the plane the answers stay, while the outline begins elsewhere.</remarks>
internal sealed record BlankLayout(Bend[] Bends, Disc[][] Discs)
{
    public const double Straight = 2, Allowance = 4;

    /// <summary>Degrees by which a layout is turned.</summary>
    public static readonly double[] Turns = [0, 37, 90, 143, 180, 217, 270, 300];

    public Contour? Draw(double radius, double straight = Straight) => BlankOutline.Draw(Bends, Discs, straight, radius);

    public bool KeepApart(double straight = Straight) => BlankOutline.KeepApart(Bends, Discs, straight);

    public BlankLayout Turned(double degrees)
    {
        var angle = Angle.FromDegrees(degrees);
        return new(
            [.. Bends.Select(b => b with { Start = b.Start.Rotate(angle), End = b.End.Rotate(angle) })],
            [.. Discs.Select(f => f.Select(d => d with { Centre = d.Centre.Rotate(angle) }).ToArray())]);
    }

    /// <summary>With <paramref name="more"/> on <paramref name="flange"/>.</summary>
    public BlankLayout With(int flange, params Disc[] more) =>
        this with { Discs = [.. Discs.Select((d, i) => i == flange ? [.. d, .. more] : d)] };

    public static Bend Across(int from, int to, FlatPoint start, FlatPoint end, double allowance = Allowance) => new()
    {
        From = from, To = to, Start = start, End = end, Turn = Angle.Right, InsideRadius = 2, Allowance = allowance, Rule = new Din6935Rule(),
    };

    public static Disc[] Points(params Vector2[] corners) => [.. corners.Select(c => new Disc(c, 0))];

    /// <summary>A strip 20 mm wide with a bend at each of <paramref name="at"/>, from x = 0 to <paramref name="length"/>.</summary>
    public static BlankLayout Strip(double length, params double[] at) => new(
        [.. at.Select((x, i) => Across(i, i + 1, new(x, 20), new(x, 0)))],
        [Points(new Vector2(0, 0), new Vector2(0, 20)), .. at.Skip(1).Select(_ => Array.Empty<Disc>()), Points(new(length, 0), new(length, 20))]);

    /// <summary>Two flanges that grow wider (or narrower) away from the bend by <paramref name="wider"/> on either side, over 6 mm.</summary>
    public static BlankLayout Flared(double wider) => new(
        [Across(0, 1, new(10, 20), new(10, 0))],
        [Points(new(2, -wider), new(2, 20 + wider)), Points(new(22, -wider), new(22, 20 + wider))]);
}
