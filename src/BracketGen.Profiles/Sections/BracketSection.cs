using System.Collections.Immutable;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>A bracket's file, with the place of its material: that is held against the job's shop.</summary>
internal sealed record BracketFile(MeasuredBracket Bracket, Located<string> Material);

/// <summary>A bracket's file: one that is there already.</summary>
internal static class BracketSection
{
    internal static readonly Key<string> Name = new("name", new TextForm(80), "Name of the bracket.");

    internal static readonly Key<string> Source = new("source", new TextForm(120), "Where it is from: who sold it or made it, and the number on it.");

    internal static readonly Key<double> Price = new("price", QuantityForm.Number(0, 1_000_000), "What it costs, in the currency of the job's shop; no unit. If left out: not known.", isRequired: false);

    internal static readonly Key<Located<string>> Material = new(
        "material", new LocatedForm<string>(new TextForm(60)),
        "Designation of one of the shop's materials where the sheet is known; else its class alone: steel, stainless steel or aluminium, which counts as the weakest usual one.");

    internal static readonly Key<Measured> Thickness = new("thickness", new MeasuredForm(QuantityForm.Length(0.5, 12), 1), "Thickness of the sheet, with a caliper where the paint is off.");

    private static readonly FlangeCornerForm Corner = new(mayRound: true);

    private static readonly Key<ImmutableArray<FlangeCorner>> Outline = new(
        "outline", new ListForm<FlangeCorner>(Corner, 3, 200),
        "Corners of the mount flange in order, [x, y] or [x, y, radius of its rounding], drawn up to the corner line of each bend.");

    // A flange that is drawn so roughly is not measured (mm).
    private const double MostPlusMinus = 5;

    internal static readonly Key<double> OutlinePlusMinus = new(
        "outline_plus_minus", QuantityForm.Length(0, MostPlusMinus), "How far each coordinate of the corners may be off, each way. If left out: assumed, 0.1 mm, caliper.", isRequired: false);

    private static readonly Key<FlatPoint> At = new("at", new FlangePointForm(), "Centre of the hole on the mount flange.");

    private static readonly Key<Measured> Diameter = new("diameter", new MeasuredForm(QuantityForm.Length(2, 40), 2), "Diameter of the hole. A caliper's 0.05 mm are always counted.");

    internal static readonly Key<double> HolePlusMinus = new(
        "plus_minus", QuantityForm.Length(0, MostPlusMinus), "How far each coordinate of its centre may be off, each way. If left out: assumed, 0.1 mm, caliper.", isRequired: false);

    private static readonly Key<Measured> SlotLength = new("length", new MeasuredForm(QuantityForm.Length(2, 100), 2), "Length over all, from end to end.");

    private static readonly Key<FlatPoint> SlotAlong = new(
        "along", new FlangePointForm(), "Its direction, of any length: [x, y] of the mount flange. If left out: [1, 0].", isRequired: false);

    private static readonly Key<(Measured Length, Vector2 Along)> Slot = new(
        "slot", new Section<(Measured, Vector2)>([SlotLength, SlotAlong], v => (v.Get(SlotLength), v.Get(SlotAlong, new(1, 0)).Vector.Unit), [new([SlotAlong], v => CheckLength(v, SlotAlong))]),
        "Of a slotted hole: at is its middle, diameter its width. If left out: a round hole.", isRequired: false);

    private static readonly Key<ImmutableArray<MeasuredHole>> Holes = new(
        "holes", new ListForm<MeasuredHole>(new Section<MeasuredHole>(
            [At, HolePlusMinus, Diameter, Slot], HoleOf, [new([Diameter, Slot], CheckSlot)]), 1, 12),
        "The holes of the mount flange that a bolt may go through: H1, H2 in this order.");

    private static readonly Key<int> From = new(
        "from", new CountForm(0, 5), "Flange that the bend starts from: 0 is the mount flange, 1 the flange of the first bend. If left out: that of the bend before.", isRequired: false);

    private static readonly Key<ImmutableArray<FlatPoint>> Line = new(
        "line", new ListForm<FlatPoint>(new FlangePointForm(), 2, 2),
        "Both ends of the bend, on the corner line: where the outsides of the two flanges would meet. The new flange lies to the left of the way from the first to the second.");

    internal static readonly Key<double> LinePlusMinus = new(
        "line_plus_minus", QuantityForm.Length(0, MostPlusMinus), "How far each coordinate of both ends may be off, each way. If left out: assumed, 0.2 mm, square and caliper.", isRequired: false);

    internal static readonly Key<Measured> Included = new(
        "included_angle", new MeasuredForm(QuantityForm.Angle(30, 175), 20, MeasuredBracket.UsualDirection.Degrees),
        "Included angle between the two flanges, with a bevel protractor: 90 for a square bend. Without a ±: assumed, 1 degree.");

    internal static readonly Key<bool> Up = new(
        "goes", new WordForm<bool>(("up", true), ("down", false)), "Up is away from the mount face, seen with the flange that the bend starts from flat on the table as the mount flange lies.");

    internal static readonly Key<Measured> Radius = new(
        "inside_radius", new MeasuredForm(QuantityForm.Length(0.1, 50), 5, MeasuredBracket.UsualRadius), "Inside radius of the bend, with a radius gauge. Without a ±: assumed, 0.25 mm.");

    private static readonly Key<double> Relief = Key<double>.WithDefault(
        "relief", QuantityForm.Length(0, 20), "Width of the cuts beside the bend, where the flange that it starts from runs on past it.", 0);

    private static readonly Key<ImmutableArray<FlangeCorner>> FlangeOutline = new(
        "outline", new ListForm<FlangeCorner>(Corner, 3, 200),
        "Corners of the new flange in order, [u, v] or [u, v, radius of its rounding]: u along the corner line from the first end of the bend, v from it up the flange, drawn down to v = 0.");

    private static readonly Section<(MeasuredBend Bend, bool HasFrom)> BendForm = new(
        [From, Line, LinePlusMinus, Included, Up, Radius, Relief, FlangeOutline, OutlinePlusMinus],
        v => (new()
        {
            From = v.Get(From, 0),
            Start = v.Get(Line)[0],
            End = v.Get(Line)[1],
            Included = new(v.Get(Included).Value),
            IsUp = v.Get(Up),
            InsideRadius = v.Get(Radius).Value,
            Relief = v.Get(Relief),
            Outline = v.Get(FlangeOutline),
            LinePlusMinus = v.Get(LinePlusMinus, MeasuredBracket.UsualLine),
            IncludedPlusMinus = new(v.Get(Included).PlusMinus),
            RadiusPlusMinus = v.Get(Radius).PlusMinus,
            OutlinePlusMinus = v.Get(OutlinePlusMinus, MeasuredStop.UsualReading),
            IsAssumed = (!v.Has(LinePlusMinus), IsAssumed(v.Get(Included)), IsAssumed(v.Get(Radius)), !v.Has(OutlinePlusMinus)),
        }, v.Has(From)),
        [new([Line], CheckLine)]);

    private static readonly Key<ImmutableArray<(MeasuredBend Bend, bool HasFrom)>> Bends = Key<ImmutableArray<(MeasuredBend, bool)>>.WithDefault(
        "bends", new ListForm<(MeasuredBend, bool)>(BendForm, 0, 5), "The bends, in order from the mount flange to the stop. If left out: a flat plate.", []);

    private static readonly Key<Vector3> StopAt = new(
        "at", VectorForm.Point, "Middle of the stop's hole on the side that the outer bears on: x and y of the mount flange, z up from the mount face.");

    internal static readonly Key<double> StopPlusMinus = new(
        "plus_minus", QuantityForm.Length(0, 5), "How far each of the three readings may be off, each way. If left out: assumed, 0.1 mm, caliper and height gauge.", isRequired: false);

    private static readonly Key<Measured> StopDiameter = new("diameter", new MeasuredForm(QuantityForm.Length(2, 60), 2), "Diameter of a round hole.", isRequired: false);

    private static readonly Key<Measured> SlotWidth = new("slot_width", new MeasuredForm(QuantityForm.Length(2, 60), 2), "Width of a slot that is open to the edge.", isRequired: false);

    private static readonly Key<FlatPoint> SlotTowards = new(
        "slot_towards", new FlangePointForm(), "The slot's way out, of any length: [u, v] of the stop flange. If left out: up the flange, [0, 1].", isRequired: false);

    private static readonly Key<Measured> Side = new("side", new MeasuredForm(QuantityForm.Length(2, 60), 2), "Side of a square hole.", isRequired: false);

    private static readonly Key<double> CornerRadius = Key<double>.WithDefault(
        "corner_radius", QuantityForm.Length(0.05, 10), "Radius of the corners of a square hole (default: common practice, no source).", 0.5);

    private static readonly Key<double> Flats = new("flats", QuantityForm.Length(2, 60), "Width across the two flats of a round hole that has them.", isRequired: false);

    private static readonly Key<FlatPoint> Along = new(
        "along", new FlangePointForm(), "Direction of a side of the square, or of the flats, of any length: [u, v] of the stop flange. If left out: along the bend, [1, 0].", isRequired: false);

    internal static readonly Key<Vector3> Direction = new(
        "direction", VectorForm.Direction,
        "The way the seat faces, from the quadrant to the outer, of any length: x and y of the mount flange, z up. If left out: square to the flange as the bends give it, on the side that its middle lies on.", isRequired: false);

    internal static readonly Key<double> DirectionPlusMinus = new(
        "direction_plus_minus", QuantityForm.Angle(0, 20),
        "How far the direction may be off, each way. If left out: assumed, 1 degree, bevel protractor; without a direction what the angles of the bends may be off.", isRequired: false);

    private static readonly Key<int> StopFlange = new("flange", new CountForm(0, 5), "Flange that the stop is in: 0 is the mount flange, 1 that of the first bend. If left out: that of the last bend.", isRequired: false);

    private static readonly Section<MeasuredOpening> StopForm = new(
        [StopAt, StopPlusMinus, StopDiameter, Flats, SlotWidth, SlotTowards, Side, CornerRadius, Along, Direction, DirectionPlusMinus, StopFlange],
        v => new()
        {
            At = (new(v.Get(StopAt).XY), v.Get(StopAt).Z),
            PlusMinus = v.Get(StopPlusMinus, MeasuredStop.UsualReading),
            Size = v.Get(v.Has(StopDiameter) ? StopDiameter : v.Has(Side) ? Side : SlotWidth),
            Outline = v.Has(Side) ? new SquareHole(v.Get(Along, new(1, 0)).Vector.Unit, v.Get(CornerRadius))
                : v.Has(StopDiameter) && v.Has(Flats) ? new FlatSidedHole(v.Get(Along, new(1, 0)).Vector.Unit, v.Get(Flats))
                : null,
            SlotTowards = v.Has(SlotWidth) ? v.Get(SlotTowards, new(0, 1)).Vector : null,
            Direction = v.Has(Direction) ? v.Get(Direction) : null,
            DirectionPlusMinus = v.Has(DirectionPlusMinus) ? new(v.Get(DirectionPlusMinus)) : v.Has(Direction) ? MeasuredBracket.UsualDirection : Angle.Zero,
            Flange = v.OrNull(StopFlange),
            IsAssumed = (!v.Has(StopPlusMinus), !v.Has(DirectionPlusMinus)),
        },
        [
            new([SlotTowards], v => CheckLength(v, SlotTowards)), new([Along], v => CheckLength(v, Along)),
            new([Flats, StopDiameter], v => Compare.LessThan(v, Flats, v.OrNull(Flats) ?? 0, v.OrNull(StopDiameter)?.Value ?? double.PositiveInfinity, StopDiameter)),
            new([CornerRadius, Side], v => Compare.LessThan(v, CornerRadius, v.Get(CornerRadius), v.OrNull(Side)?.Value / 2 ?? double.PositiveInfinity, Side)),
        ],
        oneOf: [StopDiameter, SlotWidth, Side]);

    private static readonly Key<MeasuredOpening> Stop = new("stop", StopForm, "The hole or slot that the outer sits in.");

    public static Section<BracketFile> Form { get; } = new(
        [Name, Source, Price, Material, Thickness, Outline, OutlinePlusMinus, Holes, Bends, Stop],
        v => new(Of(v), v.Get(Material)),
        [new([Thickness, Outline, Holes, Bends, Stop], CheckShape)]);

    private static MeasuredBracket Of(SectionValues v) => new()
    {
        Name = v.Get(Name, ""),
        Source = v.Get(Source, ""),
        Price = v.OrNull(Price),
        Material = v.Has(Material) ? v.Get(Material).Value : "",
        Thickness = v.Get(Thickness),
        MountFlange = v.Get(Outline),
        OutlinePlusMinus = v.Get(OutlinePlusMinus, MeasuredStop.UsualReading),
        IsOutlineAssumed = !v.Has(OutlinePlusMinus),
        Holes = v.Get(Holes),
        Bends = [.. v.Get(Bends).Select((b, i) => b.HasFrom ? b.Bend : b.Bend with { From = i })],
        Stop = v.Get(Stop),
    };

    private static MeasuredHole HoleOf(SectionValues v) => new(v.Get(At), v.Get(Diameter).Value)
    {
        PlusMinus = v.Get(HolePlusMinus, MeasuredStop.UsualReading),
        DiameterPlusMinus = v.Get(Diameter).PlusMinus,
        IsAssumed = !v.Has(HolePlusMinus),
        Slot = v.Has(Slot) ? new(v.Get(Slot).Along, v.Get(Slot).Length.Value - v.Get(Diameter).Value) : null,
        SlotPlusMinus = v.Has(Slot) ? v.Get(Slot).Length.PlusMinus : 0,
    };

    private static void CheckSlot(SectionValues values)
    {
        if (values.Has(Slot) && values.Get(Slot).Length.Value <= values.Get(Diameter).Value)
        {
            values.Report(Slot, new Compared(Relation.MoreThan, Diameter.Name, Quantity.Length, values.Get(Diameter).Value, CompareReason.Contains));
        }
    }

    internal static bool IsAssumed(Measured reading) => reading.Evidence == Evidence.Assumed;

    private static void CheckLine(SectionValues values)
    {
        if (values.Get(Line)[0].DistanceTo(values.Get(Line)[1]) < 1)
        {
            values.Report(Line, new Contradiction(Contradictory.BendLineEnds));
        }
    }

    private static void CheckLength(SectionValues values, Key<FlatPoint> key)
    {
        if (values.Has(key) && values.Get(key).Vector.Length < Tolerance.NoDirection)
        {
            values.Report(key, new ValueWrong(ValueMistake.ZeroDirection, VectorForm.Direction.Allowed));
        }
    }

    private static void CheckShape(SectionValues values)
    {
        if (!values.Has(Thickness) || !values.Has(Outline) || !values.Has(Holes) || !values.Has(Stop))
        {
            return;
        }

        // The metal is no matter of the shape.
        if (MeasuredShape.Of(Of(values), SheetClass.All[0]).Mistake is not { } mistake)
        {
            return;
        }

        var problem = new BracketShapeWrong(mistake);
        switch (mistake)
        {
            case { Fault: ShapeFault.HoleOffMetal, Item: { } hole }:
                values.ReportItem(Holes, hole, "at", problem);
                break;
            case { Fault: ShapeFault.HoleOffMetal or ShapeFault.StopOffFlange or ShapeFault.SlotNotOpen } or { Fault: ShapeFault.NoSuchFlange, Bend: null }:
                values.Report(Stop, problem);
                break;
            case { Bend: { } bend }:
                values.ReportItem(Bends, bend, mistake.Fault is ShapeFault.NoEdgeOnBend or ShapeFault.NoRelief ? "line" : mistake.Fault == ShapeFault.NoSuchFlange ? "from" : "outline", problem);
                break;
            default:
                values.Report(Outline, problem);
                break;
        }
    }
}
