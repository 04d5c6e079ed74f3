using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Tests.Solid;

/// <summary>Volume (mm³) and area (mm²) of a folded sheet from its flat pattern, put together from what tables of solids know.</summary>
/// <remarks>
/// A flange is a plate: area times thickness. A bend is a sector of a ring, its cross-section A (R² - r²) / 2 for bend angle A, inside
/// radius r and outside radius R, as long as the bend. The flat strip that becomes the bend counts for nothing: its neutral fibre keeps
/// its length, its volume is not kept.
/// </remarks>
internal sealed record PlatesAndRings(double Volume, double Area)
{
    public static PlatesAndRings Of(FlatPattern flat)
    {
        var t = flat.Thickness;
        var plates = flat.Blank.Area - flat.Bends.Sum(b => b.Length * b.Allowance);

        // The cut edge runs along all contours, but over the bends it is two ends of the ring each.
        var cut = flat.Blank.CutLength - flat.Bends.Sum(b => 2 * b.Allowance);
        double Section(Bend b) => b.Turn.Magnitude.Radians * (Math.Pow(b.InsideRadius + t, 2) - Math.Pow(b.InsideRadius, 2)) / 2;
        double Girth(Bend b) => b.Turn.Magnitude.Radians * (2 * b.InsideRadius + t);
        return new(
            plates * t + flat.Bends.Sum(b => Section(b) * b.Length),
            2 * plates + cut * t + flat.Bends.Sum(b => Girth(b) * b.Length + 2 * Section(b)));
    }
}
