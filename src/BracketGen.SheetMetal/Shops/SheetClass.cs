using System.Collections.Immutable;

namespace BracketGen.SheetMetal.Shops;

/// <summary>Sheet of which only the kind of metal is known: a magnet and a scratch tell that much of a bought part.</summary>
/// <remarks>
/// Each stands for the weakest sheet of its kind that is sold for bent parts, so that a part that is strong enough as this one is strong enough as any of them.
/// </remarks>
public static class SheetClass
{
    /// <summary>The classes, each by the word that a bracket's file gives.</summary>
    public static ImmutableArray<Material> All { get; } =
    [
        Weakest("steel", SheetLibrary.Of("DC01")!),
        Weakest("stainless steel", SheetLibrary.Of("ASTM A240 304L")!),
        Weakest("aluminium", SheetLibrary.Aluminium("EN AW-1050A O", 20, 65, null, 0.5, 1, 2700, "EN 485-2: Rp0.2 20, Rm 65 MPa; from memory")) with { Modulus = 69_000, Endurance = 19 },
    ];

    /// <summary>The class that a word names; null where it names none.</summary>
    /// <param name="word">The word.</param>
    public static Material? Of(string word) => All.FirstOrDefault(m => m.Designation == word);

    private static Material Weakest(string word, Material sheet) => sheet with { Designation = word, MaxTensile = null, Source = $"the weakest usual: {sheet.Designation}, {sheet.Source}" };
}
