using System.Collections.Immutable;
using BracketGen.Line.Costing;
using BracketGen.Line.Lists;
using BracketGen.Units;
using BracketGen.Words;
using BracketGen.Words.Line;
using BracketGen.Words.SetupSheet;

namespace BracketGen.Line.Orders;

/// <summary>The lists of an order.</summary>
public static class OrderLists
{
    /// <summary>Every line of the order: what is made for it and at what price, or why it is not sold.</summary>
    public static ListTable Order(SolvedOrder order)
    {
        var currency = order.Family.Family.Rates.Currency;
        return new(
            "order",
            [
                "line", "ordered_by", "ordered", "quantity", "customer_reference", "part_number", "revision", "variants", "sold", "verdict", "to_prove", "price_each",
                "price_all", "currency",
            ],
            [
                .. order.Items.Select(i =>
                {
                    var price = i.IsSold ? order.PriceOf(i) : 0;
                    return (ImmutableArray<ListCell>)
                    [
                        i.Item.Line, OrderText.By(i.Item.By), i.Item.Name, i.Item.Quantity, i.Item.Reference, i.Part.PartNumber, i.Part.Revision,
                        string.Join(' ', i.Variants.Select(v => v.Served.Combination.Key)), LineText.YesNo(i.IsSold), LineLists.Answer(i.Outcome), string.Join(' ', i.Open),
                        i.IsSold ? ListCell.Of(price, 2) : "", i.IsSold ? ListCell.Of(price * i.Item.Quantity, 2) : "", currency,
                    ];
                }),
            ]);
    }

    /// <summary>What the parts of the order cost, position by position.</summary>
    public static ListTable Costs(SolvedOrder order)
    {
        var family = order.Family.Family;
        return new(
            "costs",
            ["part_number", "pieces", "position", "each", "once_for_a_batch", "all", "currency"],
            [
                .. order.Parts.SelectMany(p => PartCost.Of(p.Part.Served.Bracket, family.Cutting, family.Rates).Items.Select(item => (ImmutableArray<ListCell>)
                [
                    p.Part.Served.Made.PartNumber, p.Pieces, item.What, ListCell.Of(item.Each, 4), ListCell.Of(item.Batch, 2), ListCell.Of(item.Each * p.Pieces + item.Batch, 2),
                    family.Rates.Currency,
                ])),
            ]);
    }

    /// <summary>Prices of the parts of the order by quantity, and what one costs in this order.</summary>
    public static ListTable Prices(SolvedOrder order)
    {
        var rates = order.Family.Family.Rates;
        return new(
            "prices",
            ["part_number", "pieces", "cost_each", "cost_all", "currency", .. rates.Quantities.Select(q => "price_at_" + Counted.Number(q))],
            [
                .. order.Parts.Select(p =>
                {
                    var cost = PartCost.Of(p.Part.Served.Bracket, order.Family.Family.Cutting, rates);
                    return (ImmutableArray<ListCell>)
                    [
                        p.Part.Served.Made.PartNumber, p.Pieces, ListCell.Of(cost.For(p.Pieces), 4), ListCell.Of(cost.For(p.Pieces) * p.Pieces, 2), rates.Currency,
                        .. rates.Quantities.Select(q => ListCell.Of(cost.PriceFor(q), 2)),
                    ];
                }),
            ]);
    }

    /// <summary>Everything to take off the shelf for the order: parts, screws, sheets of paper.</summary>
    public static ListTable PickList(SolvedOrder order) => new(
        "pick-list", ["count", "item", "size"], [.. Picked(order).Select(r => (ImmutableArray<ListCell>)[r.Count, r.Item, r.Size])]);

    /// <summary>What goes into the bags of each customer.</summary>
    public static ListTable PackingLists(SolvedOrder order) => new(
        "packing-lists",
        ["customer_reference", "ordered", "bags", "part_number", "revision", "in_each_bag", "all", "item", "size", "where"],
        [
            .. order.Sold.GroupBy(i => i.Item.Reference).SelectMany(c => c).SelectMany(i => Bag(order, i).Select(r => (ImmutableArray<ListCell>)
            [
                i.Item.Reference, i.Item.Name, i.Item.Quantity, i.Part.PartNumber, i.Part.Revision, r.Count, r.Count * i.Item.Quantity, r.Item, r.Size, r.Where,
            ])),
        ]);

    /// <summary>The same kinds of things counted together: brackets, what bolts them on, sheets of paper.</summary>
    internal static IEnumerable<(int Count, string Item, string Size)> Picked(SolvedOrder order) => order.Sold
        .SelectMany(i => Bag(order, i, order.Family.Family.Units).Select(r => (Count: r.Count * i.Item.Quantity, r.Item, r.Size)))
        .GroupBy(r => (r.Item, r.Size)).Select(g => (g.Sum(r => r.Count), g.Key.Item, g.Key.Size))
        .OrderBy(r => r.Item == OrderText.Bracket ? 0 : r.Item == OrderText.FittingSheet ? 2 : 1).ThenBy(r => r.Item, StringComparer.Ordinal).ThenBy(r => r.Size, StringComparer.Ordinal);

    /// <summary>What goes into one bag of a line, the bracket first.</summary>
    internal static IEnumerable<(int Count, string Item, string Size, string Where)> Bag(SolvedOrder order, SolvedItem item) =>
        Bag(order, item, item.Item.Units ?? order.Family.Family.Units);

    private static IEnumerable<(int Count, string Item, string Size, string Where)> Bag(SolvedOrder order, SolvedItem item, UnitSystem units)
    {
        yield return (1, OrderText.Bracket, OrderText.Code(item.Part.PartNumber, item.Part.Revision), "");
        var solution = OrderFiles.In(item.Variants[0].Solution!, units);
        foreach (var row in new SetupHardware(solution, solution.Bracket!).Bag())
        {
            yield return row;
        }

        var sheet = item.Item.Units ?? order.Family.Family.Units;
        foreach (var variant in item.Variants)
        {
            yield return (1, OrderText.FittingSheet, OrderFiles.FittingSheet(variant, sheet), "");
        }
    }
}
