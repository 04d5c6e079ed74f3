using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Part;

/// <summary>One sheet on the mount face, with what the shop bends it with: sketches every bracket of it.</summary>
/// <remarks>
/// Each sketch depends on sheet, die and place alone, never on what else there is: another sheet, die or limit adds sketches, and changes or removes none. A die that
/// cracks the sheet across its grain makes no bracket that passes; it gives the plain brackets of one bend only, so that its failed check shows a
/// shop with no other die what is wrong.
/// </remarks>
internal sealed class BracketTools
{
    // By the width of the bends, see BracketShape.Make; and whether a return lip is tried on it.
    private static readonly (double[] Widths, bool WithLip)[] OneBend = [([0], false), ([0.5], false), ([1], true), ([1.5], false)];

    private static readonly (double[] Widths, bool WithLip)[] OneBendCracked = [([0], false)];

    // Two bends have so many layouts of their own that the widths between show nothing more; only those with a bend of 90° are worth a third bend or a wider neck.
    private static readonly (double[] Widths, bool WithLip)[] TwoBends = [([0, 0], false), ([1, 1], false)];

    private static readonly (double[] Widths, bool WithLip)[] TwoSquareBends = [([0, 0], false), ([1, 1], true), ([1.5, 1], false)];

    private static readonly bool[] Both = [true, false];
    private static readonly int[] Sides = [1, -1];

    private readonly SheetOnMount _sheet;
    private readonly Shop _shop;
    private readonly Way[] _ways;

    public BracketTools(SheetOnMount sheet, Shop shop)
    {
        (_sheet, _shop) = (sheet, shop);
        var (stock, group) = (sheet.Stock, sheet.Stock.Material.BendGroup);
        _ways =
        [
            .. shop.Dies.Where(d => d.Suits(stock.Thickness)).OrderBy(d => d.Opening).Select(d => (Die: (PressBrakeDie?)d, Radius: d.InsideRadiusIn(group)))
                .Concat(shop.Tools.Clamps.Where(c => stock.Thickness <= c.MaxThickness).Select(c => c.Radius).Distinct().Order().Select(r => (Die: (PressBrakeDie?)null, Radius: r)))
                .Select(w => (w.Die, w.Radius, Rule: shop.RuleFor(stock, w.Radius)))
                .Select(w => new Way(w.Die, w.Radius, w.Rule, SecondFlange.Of(sheet, w.Radius, w.Rule))),
        ];
    }

    // A die, or a bar or clamp, with the second mount flange that it makes.
    private sealed record Way(PressBrakeDie? Die, double Radius, BendRule Rule, SecondFlange? Second);

    /// <summary>Most flat width (mm) that any of the tools leaves between the holes of both faces and the bend of the second mount flange (<see cref="SecondFlange.Room"/>); null where there is no second face.</summary>
    public double? RoomAtSecond => _sheet.Mount.Second is null || _ways.Length == 0 ? null : _ways.Max(w => SecondFlange.Room(_sheet, w.Radius, w.Rule));

    /// <summary>The sheet.</summary>
    public SheetOnMount Sheet => _sheet;

    /// <summary>Every bracket that gets to a placement with so many bends, before its outline is drawn.</summary>
    /// <param name="placement">Where the stop is.</param>
    /// <param name="bends">Number of bends, at most two; a return flange that stiffens is not counted.</param>
    /// <param name="stiffened">Whether those with a return flange are wanted, or those without.</param>
    /// <param name="bound">Leaves out brackets of two bends that cost too much; null leaves out none.</param>
    public IEnumerable<BracketDraft> Drafts(StopPlacement placement, int bends, bool stiffened, TwoBendBound? bound = null) => bends switch
    {
        0 => stiffened ? [] : Plates(placement),
        1 => _ways.SelectMany(w => Bent(placement, w, Layouts.OneBend, _ => Cracks(w) ? OneBendCracked : OneBend, stiffened)),
        _ => _ways.Where(w => !Cracks(w)).SelectMany(way => Bent(
            placement, way, (choice, mount, rule) => Layouts.TwoBends(choice, mount, rule, bound?.For(rule)).Where(c => !CracksAlongGrain(c.Joints[1].Across, c.Joints[0].Across, way.Radius)),
            chain => chain.Joints.Any(IsSquare) ? TwoSquareBends : TwoBends, stiffened)),
    };

    // Flat but for the second mount flange, where there is one.
    private IEnumerable<BracketDraft> Plates(StopPlacement placement)
    {
        BracketShape.Choice[] choices = _sheet.Mount.Second is null ? [new(_sheet, placement, null)] : [.. _ways.Where(w => w.Second is not null && !Cracks(w)).Select(w => ChoiceOf(placement, w))];
        foreach (var choice in choices)
        {
            foreach (var seatOnTop in Both)
            {
                if (Layouts.IsLevel(_sheet.Frame, BracketShape.StopBottom(placement, _sheet.Stock.Thickness, seatOnTop))
                    && BracketShape.Sketch(choice, [], seatOnTop, []) is { } plate)
                {
                    yield return plate;
                }
            }
        }
    }

    private BracketShape.Choice ChoiceOf(StopPlacement placement, Way way) =>
        new(_sheet, placement, way.Die) { InsideRadius = way.Radius, Press = _shop.Tools.Press ?? new(), Second = way.Second };

    private IEnumerable<BracketDraft> Bent(
        StopPlacement placement, Way way, Func<BracketShape.Choice, Frame, BendRule, IEnumerable<Layouts.Chain>> layouts,
        Func<Layouts.Chain, (double[] Widths, bool WithLip)[]> shapes, bool stiffened)
    {
        if (_sheet.Mount.Second is not null && way.Second is null)
        {
            yield break;
        }

        var choice = ChoiceOf(placement, way);
        foreach (var chain in layouts(choice, _sheet.Frame, way.Rule))
        {
            if (!Layouts.IsClear(choice, chain))
            {
                foreach (var notched in stiffened || Cracks(way) || !Layouts.IsAmongBolts(choice, chain) ? [] : Notched(choice, chain))
                {
                    yield return notched;
                }

                continue;
            }

            foreach (var (widths, withLip) in shapes(chain))
            {
                if (stiffened && !withLip)
                {
                    continue;
                }

                if (BracketShape.Sketch(choice, chain.Joints, chain.SeatOnTop, widths) is not { } draft)
                {
                    continue;
                }

                foreach (var wanted in stiffened ? Lipped(draft, way.Rule) : [draft])
                {
                    yield return wanted;
                }
            }
        }
    }

    private static IEnumerable<BracketDraft> Notched(BracketShape.Choice choice, Layouts.Chain chain) =>
        from isWide in Both
        select BracketShape.SketchNotched(choice, chain.Joints[0], chain.SeatOnTop, isWide) into notched
        where notched is not null
        select notched;

    // On two bends the lip turns away from the quadrant only, to the side on which the seat faces: towards it, it is soon in the way. A return flange of the mount
    // flange turns away from the casting, one of the middle flange to the inside of the first bend, where the bracket is closed.
    private IEnumerable<BracketDraft> Lipped(BracketDraft draft, BendRule rule) =>
        from side in Sides
        from lipped in (draft.Joints.Count == 1 ? Both : [draft.SeatOnTop]).Select(up => ReturnLip.On(draft, rule, side, up))
            .Append(ReturnLip.Along(draft, 0, rule, side, up: true))
            .Append(ReturnLip.Along(draft, 1, rule, side, draft.Bends[0].IsUp))
        where lipped is not null && !CracksAlongGrain(lipped.Bends[^1].Across, lipped.Bends[0].Across, lipped.Bends[^1].InsideRadius)
        select lipped;

    private static bool IsSquare(Joint joint) => BracketCost.IsSquare(joint.Turn);

    // The sheet is laid with its grain across the first bend.
    private bool Cracks(Way way) => way.Radius < _sheet.Stock.Material.MinRadiusAcrossGrain * _sheet.Stock.Thickness;

    private bool CracksAlongGrain(Vector2 across, Vector2 first, double insideRadius) =>
        !BendGrain.IsAcross(across, first) && insideRadius < _sheet.Stock.Material.MinRadiusAlongGrain * _sheet.Stock.Thickness;
}
