using System.Collections.Immutable;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>An order's file: products of a line, how many, and for whom.</summary>
internal static class OrderSection
{
    // Longer than any key or number that a line can give.
    private const int MaxName = 120;

    private static readonly Key<string> Family = new(
        "family", new FileForm(), "File of the product line, from this file's folder. If left out: the command names it.", isRequired: false);

    private static readonly Key<Located<string>> Part = Named("part_number", "Number of a part that the line makes. The order then goes to every variant that this part serves.");

    private static readonly Key<Located<string>> Variant = Named("variant", "Key of a variant: the name of its folder.");

    private static readonly Key<Located<string>> Catalogue = Named("catalogue_number", "Number that the register gave a variant, also where another variant's part serves it.");

    private static readonly Key<int> Quantity = new("quantity", new CountForm(1, LineOrder.MaxPieces), "How many pieces.");

    private static readonly Key<string> Reference = new(
        "customer_reference", new TextForm(LineOrder.MaxReference), "The customer's own reference: each has a packing list of its own.", isRequired: false);

    private static readonly Key<UnitSystem> Units = new(
        "units", new WordForm<UnitSystem>(("mm", UnitSystem.Metric), ("in", UnitSystem.Inch)), "Units of the customer's sheets. If left out: those of the line.", isRequired: false);

    private static readonly Key<ImmutableArray<OrderedItem>> Items = new(
        "items",
        new ListForm<OrderedItem>(
            new Section<OrderedItem>(
                [Part, Variant, Catalogue, Quantity, Reference, Units],
                v =>
                {
                    var (by, key) = v.Has(Part) ? (OrderedBy.Part, Part) : v.Has(Variant) ? (OrderedBy.Variant, Variant) : (OrderedBy.CatalogueNumber, Catalogue);
                    var name = v.Get(key);
                    return new(by, name.Value, v.Get(Quantity), v.Has(Reference) ? v.Get(Reference) : "", v.Has(Units) ? v.Get(Units) : null, name.Written.Place.Line);
                },
                oneOf: [Part, Variant, Catalogue]),
            1, LineOrder.MaxItems),
        "What is ordered.");

    public static Section<LineOrder> Form { get; } = new([Family, Items], v => new(v.Has(Family) ? v.Get(Family) : null, v.Get(Items)));

    private static Key<Located<string>> Named(string key, string help) => new(key, new LocatedForm<string>(new TextForm(MaxName)), help, isRequired: false);
}
