using System.Collections.Immutable;
using BracketGen.Units;

namespace BracketGen.Profiles.Family;

/// <summary>What an ordered product is named by.</summary>
public enum OrderedBy
{
    /// <summary>The number of a part that is made.</summary>
    Part,

    /// <summary>The key of a variant.</summary>
    Variant,

    /// <summary>The number that the register gave a variant, whether its own part is made or another's serves it.</summary>
    CatalogueNumber,
}

/// <summary>A line of an order.</summary>
/// <param name="By">What the product is named by.</param>
/// <param name="Name">The name as written.</param>
/// <param name="Quantity">Pieces.</param>
/// <param name="Reference">The customer's own reference; empty where there is none.</param>
/// <param name="Units">The customer's units; null for those of the family.</param>
/// <param name="Line">Line of the file, from 1.</param>
public sealed record OrderedItem(OrderedBy By, string Name, int Quantity, string Reference, UnitSystem? Units, int Line);

/// <summary>An order of a product line.</summary>
/// <param name="FamilyFile">The family's file, from the order's folder; null where the order does not name it.</param>
/// <param name="Items">What is ordered, in order.</param>
public sealed record LineOrder(string? FamilyFile, ImmutableArray<OrderedItem> Items)
{
    /// <summary>Maximum number of pieces in one line, and in one order: every piece gets its label.</summary>
    public const int MaxPieces = 10_000;

    /// <summary>Maximum number of lines.</summary>
    public const int MaxItems = 2_000;

    /// <summary>Maximum length of a customer's reference.</summary>
    public const int MaxReference = 60;
}
