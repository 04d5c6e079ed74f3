using System.Collections.Immutable;
using System.Text;
using BracketGen.Design.Checks;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Line.Costing;
using BracketGen.Line.Lists;
using BracketGen.Line.Solving;
using BracketGen.Words;
using BracketGen.Words.Line;

namespace BracketGen.Line.Orders;

/// <summary>The products of a line for a web shop: a list, and a picture of each.</summary>
public static class ShopImport
{
    /// <summary>Folder of the pictures within the line's.</summary>
    public const string Pictures = "pictures";

    // The picture stands alone: a page's style does not reach into it.
    private const string Style = "<style>path{fill:none;stroke:#1a1a1a;stroke-width:1.4;vector-effect:non-scaling-stroke;stroke-linejoin:round;stroke-linecap:round}</style>";

    /// <summary>A product a row. What is proven for no variant is listed and not for sale; fits has only what is proven.</summary>
    public static ListTable Products(LineReport report)
    {
        var (family, services) = (report.Family.Family, report.Selection.Services.ToLookup(s => s.By));
        return new(
            "shop",
            [
                "product_number", "revision", "title", "text", "for_sale", "why_not", "price", "currency", .. family.Rates.Quantities.Select(q => "price_at_" + Counted.Number(q)),
                "weight_g", "fits", "not_proven_for", "picture",
            ],
            [
                .. report.Selection.Parts.Select(part =>
                {
                    var (bracket, cost) = (part.Bracket, PartCost.Of(part.Bracket, family.Cutting, family.Rates));
                    var proven = services[part].Where(s => s.Fit.Verdict == VerdictKind.Passes).ToArray();
                    return (ImmutableArray<ListCell>)
                    [
                        part.Made.PartNumber, part.Made.Revision, ShopText.Title(part.Made.PartNumber, services[part].Select(s => s.Served.Combination.BodyName).Distinct()),
                        ShopText.Text(bracket.Stock.Material.Designation, bracket.Stock.Thickness, bracket.Flat.Bends.Length, bracket.Mass, family.Units),
                        LineText.YesNo(proven.Length > 0), proven.Length > 0 ? "" : ShopText.NotProven,
                        ListCell.Of(cost.PriceFor(1), 2), family.Rates.Currency, .. family.Rates.Quantities.Select(q => ListCell.Of(cost.PriceFor(q), 2)),
                        ListCell.Of(bracket.Mass * 1e6, 1), Titles(proven), Titles(services[part].Except(proven)), $"{Pictures}/{Name(part)}",
                    ];
                }),
            ]);
    }

    /// <summary>Name and bytes of every picture.</summary>
    /// <param name="report">The line.</param>
    /// <param name="threads">How many to draw at once.</param>
    public static IReadOnlyList<(string Name, byte[] Bytes)> PicturesOf(LineReport report, int threads)
    {
        var parts = report.Selection.Parts;
        var pictures = new (string, byte[])[parts.Count];
        Parallel.For(0, parts.Count, new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, threads) }, i => pictures[i] =
            (Name(parts[i]), Encoding.UTF8.GetBytes(BracketPicture.Formed(parts[i].Bracket).Replace("><path", $">{Style}<path", StringComparison.Ordinal) + "\n")));
        return pictures;
    }

    private static string Name(LinePart part) => part.Made.PartNumber + ".svg";

    private static string Titles(IEnumerable<Service> services) => string.Join("; ", services.Select(s => s.Served.Combination.Title));
}
