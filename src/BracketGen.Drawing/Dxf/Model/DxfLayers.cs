using System.Collections.Immutable;

namespace BracketGen.Drawing.Dxf.Model;

/// <summary>The layers of a flat pattern, named in plain words so that a shop need not ask.</summary>
public static class DxfLayers
{
    /// <summary>The beam goes through here, and nowhere else: outlines and holes, all closed.</summary>
    public static readonly DxfLayer CutThrough = new("CUT_THROUGH", 7, 50);

    /// <summary>Middle of a bend, for the press brake. Not cut and not marked.</summary>
    public static readonly DxfLayer FoldLine = new("FOLD_LINE", 5, 25);

    /// <summary>Marked on the surface at low power, or left out: part number, bend numbers, centre marks.</summary>
    public static readonly DxfLayer SurfaceMark = new("SURFACE_MARK", 3, 18);

    /// <summary>For the eye alone, neither cut nor marked: what the file is, where that must not be mistaken.</summary>
    public static readonly DxfLayer Note = new("NOTE", 8, 13);

    /// <summary>For reading, neither cut nor marked: part number, material, thickness and quantity, where they are asked for.</summary>
    public static readonly DxfLayer PartText = new("PART_TEXT", 9, 13);

    /// <summary>The three of every flat pattern.</summary>
    public static readonly ImmutableArray<DxfLayer> All = [CutThrough, FoldLine, SurfaceMark];
}
