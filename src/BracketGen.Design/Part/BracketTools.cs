using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Part;

/// <summary>One sheet on the mount face, with the dies of the shop that bend it: sketches every bracket of it.</summary>
internal sealed class BracketTools
{
    private static readonly double[] Widths = [0, 0.5, 1];

    // Two bends have so many shapes of their own that the widths between show nothing more.
    private static readonly double[] ExtremeWidths = [0, 1];
    private static readonly bool[] Both = [true, false];

    private readonly SheetOnMount _sheet;
    private readonly (PressBrakeDie Die, BendRule Rule)[] _acrossGrain, _alongGrain;

    public BracketTools(SheetOnMount sheet, Shop shop)
    {
        _sheet = sheet;
        _acrossGrain = [.. DiesFor(shop, sheet.Stock, sheet.Stock.Material.MinRadiusAcrossGrain)];
        _alongGrain = [.. DiesFor(shop, sheet.Stock, sheet.Stock.Material.MinRadiusAlongGrain).Take(1)];
    }

    /// <summary>The sheet.</summary>
    public SheetOnMount Sheet => _sheet;

    /// <summary>Every bracket that gets to a placement with so many bends, before its outline is drawn.</summary>
    /// <param name="placement">Where the stop is.</param>
    /// <param name="bends">Number of bends, at most two.</param>
    /// <param name="bound">Leaves out brackets of two bends that cost too much; null leaves out none.</param>
    public IEnumerable<BracketDraft> Drafts(StopPlacement placement, int bends, TwoBendBound? bound = null) => bends switch
    {
        0 => Plates(placement),
        1 => Bent(placement, _acrossGrain, Layouts.OneBend, Widths),
        _ => Bent(placement, _alongGrain, (choice, mount, rule) => Layouts.TwoBends(choice, mount, rule, bound), ExtremeWidths),
    };

    private IEnumerable<BracketDraft> Plates(StopPlacement placement)
    {
        var choice = new BracketShape.Choice(_sheet, placement, null);
        foreach (var seatOnTop in Both)
        {
            if (Layouts.IsLevel(_sheet.Frame, BracketShape.StopBottom(placement, _sheet.Stock.Thickness, seatOnTop))
                && BracketShape.Sketch(choice, [], seatOnTop, []) is { } plate)
            {
                yield return plate;
            }
        }
    }

    private IEnumerable<BracketDraft> Bent(
        StopPlacement placement, (PressBrakeDie Die, BendRule Rule)[] dies,
        Func<BracketShape.Choice, Frame, BendRule, IEnumerable<Layouts.Chain>> layouts, double[] widths)
    {
        foreach (var (die, rule) in dies)
        {
            var choice = new BracketShape.Choice(_sheet, placement, die);
            foreach (var chain in layouts(choice, _sheet.Frame, rule))
            {
                if (!Layouts.IsClear(choice, chain))
                {
                    continue;
                }

                foreach (var width in widths)
                {
                    if (BracketShape.Sketch(choice, chain.Joints, chain.SeatOnTop, chain.Joints.Count == 1 ? [width] : [width, width]) is { } draft)
                    {
                        yield return draft;
                    }
                }
            }
        }
    }

    // The narrowest die that suits and does not crack the sheet gives the tightest bend, which is what a short flange wants; the next one is kinder to the sheet.
    private static IEnumerable<(PressBrakeDie, BendRule)> DiesFor(Shop shop, Stock stock, double leastRatio) =>
        shop.Dies.Where(d => d.Suits(stock.Thickness)).OrderBy(d => d.Opening)
            .OrderBy(d => d.InsideRadius < leastRatio * stock.Thickness).Take(2)
            .Select(d => (d, shop.RuleFor(stock, d.InsideRadius)));
}
