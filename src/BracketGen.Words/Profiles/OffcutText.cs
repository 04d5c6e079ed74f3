using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Units;

namespace BracketGen.Words.Profiles;

/// <summary>Outlines of offcuts that cannot be used.</summary>
internal static class OffcutText
{
    public static string Allowed(OffcutWrong wrong, UnitSystem units) => wrong.Mistake switch
    {
        OffcutMistake.NoContour => "a closed outline of lines and arcs",
        OffcutMistake.Open => $"lines that meet end to end, within {units.WriteFine(Quantity.Length, DxfWrong.Together)}, round the whole outline",
        OffcutMistake.Fork => "two ends at each point, no line drawn twice",
        OffcutMistake.Outside => "one outline; what is drawn inside it is cut out already",
        _ => $"an outline within {units.Number(Quantity.Length, Offcut.MostLength)} x {units.Write(Quantity.Length, Offcut.MostWidth)}, at least {units.Write(Quantity.Length, Offcut.Least)} each way",
    };

    public static string Advice(OffcutWrong wrong, UnitSystem units) => wrong.Mistake switch
    {
        OffcutMistake.NoContour => "Draw the edge of the offcut as a closed line. What is drawn in blocks is not read.",
        OffcutMistake.Open => $"On layer {wrong.Layer} this line ends, and the nearest other end is {units.WriteFine(Quantity.Length, wrong.Value)} away. Close the contour in the drawing, or delete what is no edge; splines and ellipses are not read, save them as arcs.",
        OffcutMistake.Fork => $"On layer {wrong.Layer} more than two lines meet at the end of this one. Delete what is drawn twice, and what is no edge.",
        OffcutMistake.Outside => $"On layer {wrong.Layer} this lies outside the outline or crosses it. Save one offcut alone.",
        _ => $"This one is {units.Number(Quantity.Length, wrong.Value)} x {units.Write(Quantity.Length, wrong.Width)}. Check the unit of the drawing ($INSUNITS); where it says none, that of the family counts.",
    };
}
