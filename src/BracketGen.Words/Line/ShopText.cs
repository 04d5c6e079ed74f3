using BracketGen.Units;

namespace BracketGen.Words.Line;

/// <summary>What a web shop says of a product.</summary>
public static class ShopText
{
    /// <summary>Title of a product: what it is and what it is bolted to.</summary>
    public static string Title(string partNumber, IEnumerable<string> bodies) => $"Throttle cable bracket {partNumber} for {string.Join(", ", bodies)}";

    /// <summary>What the customer reads: what it is, what is in the bag, what to mind.</summary>
    /// <param name="designation">Material.</param>
    /// <param name="thickness">Thickness (mm).</param>
    /// <param name="bends">Number of bends.</param>
    /// <param name="mass">Mass (t).</param>
    /// <param name="units">Units.</param>
    public static string Text(string designation, double thickness, int bends, double mass, UnitSystem units) =>
        $"Holds the outer of the throttle cable at the throttle body. {CatalogueText.PartFacts(designation, thickness, bends, mass, units)} "
        + $"In the bag: the bracket, the fasteners that hold it, a set-up sheet for your vehicle. {Cautions.All[0]}";

    /// <summary>Why a product is not for sale.</summary>
    public const string NotProven = "not proven for any vehicle";
}
