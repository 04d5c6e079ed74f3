using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>The tables of holes, bends and points; drawing and report print the same.</summary>
/// <remarks>Positions are counted from the first hole, x through the second.</remarks>
internal static class PartTables
{
    /// <summary>One row a hole.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Holes(Bracket bracket, Job job, ValueFormat value) =>
    [
        .. bracket.Holes.Select(h =>
        {
            var at = FromDatum(bracket, h.Centre);
            var end = job.Vehicle.Cable.OuterEnd;
            var making = HoleMaking.Of(bracket, h, end, job.Shop.Process);
            return (IReadOnlyList<string>)
                [h.Name, value.Length(at.X), value.Length(at.Y), Opening(h, making, value), PartTableText.Purpose(h, end)];
        }),
    ];

    /// <summary>One row a bend, its line given by its ends.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Bends(Bracket bracket, ValueFormat value)
    {
        string Point(FlatPoint flat) => FromDatum(bracket, flat) is var at ? $"{value.Length(at.X)}; {value.Length(at.Y)}" : "";
        return
        [
            .. bracket.Flat.Bends.Select((b, i) => (IReadOnlyList<string>)
            [
                BracketScene.NameOf(i), PartTableText.Direction(b), BendAngle(b, value), value.Degrees(Angle.Straight - b.Turn.Magnitude), value.Radius(b.InsideRadius),
                value.Length(b.Allowance), Point(b.CentreLine.Start), Point(b.CentreLine.End), bracket.Die is { } die ? value.Length(die.Opening) : BendStepText.BentOver(bracket, i), b.Rule.Name,
            ]),
        ];
    }

    /// <summary>
    /// One row a point of the outline, counter-clockwise: where it is, and the edge from it to the next; of an arc its radius and its centre,
    /// of one that runs clockwise (an inside corner, the bottom of a slot) that it is hollow.
    /// </summary>
    public static IReadOnlyList<IReadOnlyList<string>> Points(Bracket bracket, ValueFormat value) =>
    [
        .. bracket.Edges().Select((edge, i) =>
        {
            var start = FromDatum(bracket, new(edge.Start));
            var (name, centre) = edge is ArcSegment arc
                ? (arc.Sweep.Radians > 0 ? value.Radius(arc.Radius) : PartTableText.Hollow(value.Radius(arc.Radius)), FromDatum(bracket, new(arc.Centre)))
                : (PartTableText.Line, (Vector2?)null);
            return (IReadOnlyList<string>)
            [
                PartTableText.Point(i), value.Length(start.X), value.Length(start.Y), name,
                centre is { } c ? value.Length(c.X) : PartTableText.Nothing, centre is { } d ? value.Length(d.Y) : PartTableText.Nothing,
            ];
        }),
    ];

    /// <summary>How far the sheet is bent from flat, with the deviation that the probabilities use.</summary>
    public static string BendAngle(Bend bend, ValueFormat value) => value.Degrees(bend.Turn.Magnitude, LengthTolerance.PlusMinus(SeatTolerances.BendAngle.Radians));

    private static Vector2 FromDatum(Bracket bracket, FlatPoint flat) => flat - bracket.Holes[0].Centre;

    private static string Opening(BracketHole hole, HoleMaking making, ValueFormat value)
    {
        var size = LengthTolerance.PlusMinus(making.Size);
        return hole.Outline switch
        {
            SquareHole square => PartTableText.Square(value.Length(hole.Diameter, size), value.Radius(square.Corner), value.Degrees(FullTurn(square.Along.Polar))),
            FlatSidedHole flats => PartTableText.FlatSided(value.Diameter(hole.Diameter, size), value.Length(flats.AcrossFlats, size), value.Degrees(FullTurn(flats.Along.Polar))),
            SlottedHole slot => PartTableText.Slotted(value.Length(hole.Diameter, size), value.Length(hole.Diameter + slot.Travel, size), value.Degrees(HalfTurn(slot.Along.Polar))),
            _ => hole.Towards is { } towards ? PartTableText.Slot(value.Length(hole.Diameter, size), value.Degrees(FullTurn(towards.Polar)))
                : making.IsDrilled ? PartTableText.Drilled(value.Diameter(hole.Diameter, size))
                : value.Diameter(hole.Diameter, size),
        };
    }

    // A slot has no sense: 0° to 180°.
    private static Angle HalfTurn(Angle angle) => FullTurn(angle) is { Degrees: var degrees } turn && degrees >= 179.96 ? Angle.FromDegrees(Math.Max(0, degrees - 180)) : turn;

    /// <summary>Directions in 0° to 360°; what rounds to 360° is 0°.</summary>
    private static Angle FullTurn(Angle angle)
    {
        var degrees = angle.Degrees < -0.04 ? angle.Degrees + 360 : angle.Degrees;
        return Angle.FromDegrees(Math.Max(0, degrees));
    }
}
