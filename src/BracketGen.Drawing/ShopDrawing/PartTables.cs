using BracketGen.Design.Part;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Bending;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>The tables of holes and bends; drawing and report print the same.</summary>
/// <remarks>Positions are counted from the flat pattern's lower left corner, as in the cut file.</remarks>
internal static class PartTables
{
    /// <summary>One row a hole.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Holes(Bracket bracket, OuterEnd end, ValueFormat value) =>
    [
        .. bracket.Holes.Select(h =>
        {
            var at = h.Centre - bracket.Flat.Blank.Outline.Bounds.Min;
            return (IReadOnlyList<string>)
                [h.Name, value.Length(at.X), value.Length(at.Y), Opening(h, value), OuterRadius(bracket, h, value), PartTableText.Purpose(h, end)];
        }),
    ];

    /// <summary>Heads and rows of the bends, one row a bend; lines askew to the axes are given by their ends.</summary>
    public static (IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows) Bends(Bracket bracket, ValueFormat value)
    {
        // Lines square to the axes are dimensioned on the view; the others are given by their ends.
        var oblique = bracket.Flat.Bends.Any(IsOblique);
        var corner = bracket.Flat.Blank.Outline.Bounds.Min;
        string Point(FlatPoint flat) => $"{value.Length((flat - corner).X)}; {value.Length((flat - corner).Y)}";
        var rows = bracket.Flat.Bends.Select((b, i) =>
        {
            List<string> row =
            [
                BracketScene.NameOf(i), PartTableText.Direction(b), value.Degrees(b.Turn.Magnitude), value.Radius(b.InsideRadius),
                value.Length(b.Allowance), bracket.Die is { } die ? value.Length(die.Opening) : PartTableText.Nothing, b.Rule.Name,
            ];
            if (oblique)
            {
                row.InsertRange(5, IsOblique(b) ? [Point(b.CentreLine.Start), Point(b.CentreLine.End)] : [PartTableText.Nothing, PartTableText.Nothing]);
            }

            return (IReadOnlyList<string>)row;
        }).ToList();
        return (PartTableText.BendHeads(oblique), rows);
    }

    private static string Opening(BracketHole hole, ValueFormat value) => hole.Towards is { } towards
        ? PartTableText.Slot(value.Length(hole.Diameter), value.Degrees(FullTurn(towards.Polar)))
        : value.Diameter(hole.Diameter);

    /// <summary>Directions in 0° to 360°; what rounds to 360° is 0°.</summary>
    private static Angle FullTurn(Angle angle)
    {
        var degrees = angle.Degrees < -0.04 ? angle.Degrees + 360 : angle.Degrees;
        return Angle.FromDegrees(Math.Max(0, degrees));
    }

    private static string OuterRadius(Bracket bracket, BracketHole hole, ValueFormat value)
    {
        var radii = bracket.Flat.Blank.Outline.Segments.OfType<ArcSegment>()
            .Where(a => a.Centre.DistanceTo(hole.Centre.Vector) < Tolerance.SameSize && a.Sweep.Radians > 0)
            .Select(a => value.Radius(a.Radius))
            .Distinct();
        var text = string.Join(", ", radii);
        return text.Length > 0 ? text : PartTableText.Nothing;
    }

    private static bool IsOblique(Bend bend) => !FlatView.IsLevel(bend) && !FlatView.IsUpright(bend);
}
