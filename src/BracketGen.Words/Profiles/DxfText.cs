using BracketGen.Design.Part;
using BracketGen.Profiles.Errors;
using BracketGen.Units;

namespace BracketGen.Words.Profiles;

/// <summary>A flat pattern in DXF that cannot be used: what is allowed, and what to do.</summary>
internal static class DxfText
{
    public static string Allowed(DxfWrong wrong, UnitSystem units) => wrong.Mistake switch
    {
        DxfMistake.Binary => "a DXF file as text (ASCII)",
        DxfMistake.NotPairs => "a group code, a whole number, and its value on the next line",
        DxfMistake.NoEntities => "a DXF file with a section ENTITIES",
        DxfMistake.BadNumber => "a number up to a million",
        DxfMistake.NumberMissing => "an entity with all its coordinates",
        DxfMistake.TooMuch => $"a drawing with up to {DxfWrong.MostPieces} lines, circles and points",
        DxfMistake.NoUnit => "a drawing that says its unit ($INSUNITS), or the key flat_pattern_unit",
        DxfMistake.OtherUnit => "the unit that the drawing says ($INSUNITS)",
        DxfMistake.NoLayer => $"a layer of the drawing: {Layers(wrong)}",
        DxfMistake.OpenContour => $"lines that meet end to end, within {units.WriteFine(Quantity.Length, DxfWrong.Together)}, round the whole outline",
        DxfMistake.Fork => "two ends at each point, no line drawn twice",
        DxfMistake.NoContour => "a closed outline of lines and arcs",
        DxfMistake.OutsideOutline => "one part: everything that is cut inside its outline",
        DxfMistake.NotRound => "round holes, and one outline",
        DxfMistake.BendCount => $"as many bend lines on the bend layer as bends: {wrong.Detail}",
        _ => $"a place within {units.WriteLimit(Quantity.Length, DxfWrong.Near)} of a circle of the drawing, or of the round bottom of a slot",
    };

    public static string Advice(DxfWrong wrong, UnitSystem units) => wrong.Mistake switch
    {
        DxfMistake.Binary => "Save the drawing as DXF in text form.",
        DxfMistake.NotPairs => "The file is damaged or cut off. Save the drawing again.",
        DxfMistake.NoEntities => "This is no drawing. Check the path.",
        DxfMistake.BadNumber => "The file is damaged. Save the drawing again.",
        DxfMistake.NumberMissing => "The file is damaged. Save the drawing again.",
        DxfMistake.TooMuch => "Save the flat pattern alone, splines as arcs.",
        DxfMistake.NoUnit => "Measure a distance in the drawing and write flat_pattern_unit = \"mm\" or \"in\".",
        DxfMistake.OtherUnit => "Delete flat_pattern_unit, or correct it.",
        DxfMistake.NoLayer => "Correct the name, including capital letters.",
        DxfMistake.OpenContour => $"On layer {wrong.Detail} this line ends, and the nearest other end is {units.WriteFine(Quantity.Length, wrong.Value)} away. Close the contour in the drawing; splines and ellipses are not read, save them as arcs. If the layer is not cut, name the others: cut_layers.",
        DxfMistake.Fork => $"On layer {wrong.Detail} more than two lines meet at the end of this one. Delete what is drawn twice, or name the layers that are cut: cut_layers.",
        DxfMistake.NoContour => $"Layers of the drawing: {Layers(wrong)}. Name those that are cut: cut_layers. What is drawn in blocks is not read.",
        DxfMistake.OutsideOutline => $"On layer {wrong.Detail} this lies outside the outline. Save one part alone, or name the layers that are cut: cut_layers.",
        DxfMistake.NotRound => $"On layer {wrong.Detail} this is cut out and is not round. Such cut-outs are not read: measure the formed part instead.",
        DxfMistake.BendCount => $"There {(wrong.Value == 1 ? "is 1 bend line" : FormattableString.Invariant($"are {wrong.Value:0} bend lines"))}. Write a table [[bends]] for each, in the order of the drawing, or name the layer: bend_layer; or give line in each.",
        _ => $"The nearest circle is {units.Write(Quantity.Length, wrong.Value)} away. Read the place in the drawing again; for a hole that is drilled and not cut give diameter too.",
    };

    public static string Allowed(DrawnFault fault) => fault switch
    {
        DrawnFault.BendOffMetal => "a bend line through one flange, from edge to edge, with its whole strip in the metal",
        DrawnFault.HolesApart => "holes in one flange, the mount flange",
        DrawnFault.HoleInBend => "a hole in the flat of a flange",
        DrawnFault.HoleElsewhere => "no other holes than those of the mount flange and the stop's",
        _ => "bends that lead from the mount flange from one flange to the next",
    };

    public static string Advice(DrawnFault fault) => fault switch
    {
        DrawnFault.BendOffMetal => "Check the ends of the bend line, the allowance and the outline. Bend lines that cross, and bends that share a strip, are not read.",
        DrawnFault.HolesApart => "Name only the holes that hold the bracket on the casting.",
        DrawnFault.HoleInBend => "Read its place in the drawing again, and check the bend lines.",
        DrawnFault.HoleElsewhere => "Holes in other flanges weaken them and are not read: measure the formed part instead.",
        _ => "Check the bend lines: each must join a new flange to one that is joined already.",
    };

    private static string Layers(DxfWrong wrong) => wrong.Detail.Length > 0 ? wrong.Detail : "none";
}
