using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Kit;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Standards;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>A part on a list, before its bundle and its bracket are looked up.</summary>
/// <param name="Part">The part; of a bracket all but its measurements.</param>
/// <param name="Bundle">Name of the bundle it comes with; null for none.</param>
/// <param name="File">File of a bracket; null for every other part.</param>
internal sealed record PartEntry(KitPart Part, string? Bundle, Located<string>? File)
{
    public KitPart WithBracket(MeasuredBracket? bracket) => bracket is null ? Part : Part with
    {
        Measures = new BracketMeasures(File!.Value, bracket),
        Price = Part.Price ?? (Part.Bundle is null ? bracket.Price : null),
    };
}

/// <summary>The file of a list of parts.</summary>
internal sealed record PartsFile(string Name, ImmutableArray<PartEntry> Entries);

/// <summary>A list of parts: <c>[[parts]]</c> and <c>[[bundles]]</c>.</summary>
internal static class PartsSection
{
    private static readonly Key<string> ListName = new("name", new TextForm(80), "Name of the list.");

    private static readonly Key<string> Name = new("name", new TextForm(60), "Name of the part.");

    private static readonly Key<PartSource> Source = new(
        "source", new WordForm<PartSource>(("kept", PartSource.Kept), ("donor", PartSource.Donor), ("bought", PartSource.Bought), ("made", PartSource.Made)),
        "Where it comes from: kept (it is there already), donor (off another vehicle or engine), bought, or made.");

    private static readonly Key<string> From = new("from", new TextForm(80), "Seller, shelf or number, in your words.", isRequired: false);

    private static readonly Key<double> Price = new(
        "price", QuantityForm.Number(0, 1_000_000), "Price of one, in the currency of the job's shop; no unit. If left out: nothing for a kept part, not known for any other.", isRequired: false);

    private static readonly Key<int> Quantity = new("quantity", new CountForm(1, 10_000), "How many there are. If left out: as many as are wanted.", isRequired: false);

    private static readonly Key<string> Bundle = new("bundle", new TextForm(60), "Name of the bundle that it comes with, which has the price.", isRequired: false);

    private static readonly Key<bool> Condition = Key<bool>.WithDefault(
        "condition", new WordForm<bool>(("new", true), ("used", false)), "New or used. A used part is checked before it is bought or fitted.", false);

    private static readonly Key[] Common = [Name, Source, From, Price, Quantity, Bundle, Condition];

    // A sensor.
    private static readonly Key<FlatPoint> SlotAt = new("at", new FlangePointForm(), "Middle of the hole or slot, from the axis of the throttle shaft, seen from outside as the sensor sits.");

    private static readonly Key<double> SlotWidth = new("width", QuantityForm.Length(2, 30), "Diameter of the hole, or width of the slot.");

    private static readonly Key<double> Arc = Key<double>.WithDefault(
        "arc", QuantityForm.Angle(0, 120), "Angle about the shaft's axis that the middle line of the slot spans, from the middle of the one end's rounding to that of the other; 0 for a round hole.", 0);

    private static readonly Key<ImmutableArray<SensorSlot>> Slots = new(
        "slots",
        new ListForm<SensorSlot>(new Section<SensorSlot>([SlotAt, SlotWidth, Arc], v => new(new(v.Get(SlotAt).OfPattern(), new(v.Get(Arc) / 2)), v.Get(SlotWidth))), 1, 6),
        "The sensor's holes or slots for its screws.", isRequired: false);

    private static readonly Key<double> ClosedVolts = new(
        "closed_volts", QuantityForm.Volts(0, 24), "Reading on this throttle body with the valve on its closed stop, sensor in the middle of its slots.", isRequired: false);

    private static readonly Key<double> OpenVolts = new("open_volts", QuantityForm.Volts(0, 24), "The same with the valve held on its wide-open stop.", isRequired: false);

    private static readonly Key<double> VoltsPerDegree = new(
        "volts_per_degree", QuantityForm.Number(0.001, 1), "Change of the reading for one degree of the throttle shaft, in V, as its maker gives it; no unit.", isRequired: false);

    private static readonly Key<double> MinVolts = Key<double>.WithDefault(
        "min_volts", QuantityForm.Volts(0, 24), "Minimum reading that still follows the shaft (default: 5 % of 5 V, common practice, no source).", PositionSensor.UsualMinVolts);

    private static readonly Key<double> MaxVolts = Key<double>.WithDefault(
        "max_volts", QuantityForm.Volts(0, 24), "Maximum reading that still follows the shaft (default: 95 % of 5 V, common practice, no source).", PositionSensor.UsualMaxVolts);

    private static readonly Key<double> Thickness = new("flange_thickness", QuantityForm.Length(0.5, 60), "Thickness under the heads of its screws.", isRequired: false);

    private static readonly Section<PartEntry> Sensor = Of(
        [OpeningSections.Drive, OpeningSections.DriveSize, Slots, OpeningSections.PlusMinus, ClosedVolts, OpenVolts, VoltsPerDegree, MinVolts, MaxVolts, Thickness],
        v => new SensorMeasures
        {
            Drive = v.OrNull(OpeningSections.Drive),
            Size = v.OrNull(OpeningSections.DriveSize),
            Slots = v.OrNull(Slots),
            PlusMinus = v.Get(OpeningSections.PlusMinus),
            Volts = v.Has(ClosedVolts) ? (v.Get(ClosedVolts), v.Get(OpenVolts)) : null,
            VoltsPerAngle = v.OrNull(VoltsPerDegree) * 180 / Math.PI,
            Range = (v.Get(MinVolts), v.Get(MaxVolts)),
            Thickness = v.OrNull(Thickness),
        },
        [new([ClosedVolts, OpenVolts], CheckVolts), new([MinVolts, MaxVolts], v => Compare.InOrder(v, MinVolts, MaxVolts, Units.Quantity.Voltage))],
        [new Together(ClosedVolts, OpenVolts)]);

    // Holes in a flange.
    private static readonly Key<ImmutableArray<FlatPoint>> Holes = OpeningSections.HolesKey(1, "seen from outside as the part sits; any origin, the same for the passages.");

    private static readonly Key<ImmutableArray<FlatPoint>> AboutNose = OpeningSections.HolesKey(1, "from the middle of the nose, seen from outside as the sensor sits.");

    private static readonly Key<double> HoleDiameter = new("hole_diameter", QuantityForm.Length(2, 40), "Diameter of the holes, the smallest of them.", isRequired: false);

    private static readonly Section<PartEntry> IdleValve = Of(
        [Holes, HoleDiameter, OpeningSections.Air, OpeningSections.Water, OpeningSections.PlusMinus, Thickness],
        v => new IdleMeasures(FlangeOf(v, Holes), v.OrNull(OpeningSections.Air), v.OrNull(OpeningSections.Water), v.OrNull(Thickness)), [new([Holes], v => OpeningSections.CheckApart(v, Holes))]);

    private static Key<Measured> Ring(string name, double min, double max, string help) => new(name, new MeasuredForm(QuantityForm.Length(min, max), 1), help, isRequired: false);

    private static readonly Key<Measured> Nose = Ring("nose_diameter", 2, 60, "Diameter of the nose that goes into the bore.");

    private static readonly Key<Measured> GrooveDiameter = Ring("groove_diameter", 1, 60, "Diameter of the bottom of the O-ring's groove, with the ring off.");

    private static readonly Key<Measured> GrooveWidth = Ring("groove_width", 0.5, 15, "Width of the groove.");

    private static readonly Key<Measured> RingSection = Ring("ring_section", 0.5, 10, "Diameter of the O-ring's section.");

    private static readonly Key<Measured> RingInside = Ring("ring_inside", 1, 60, "Inside diameter of the O-ring, off the sensor.");

    private static readonly Section<PartEntry> Pressure = Of(
        [Nose, GrooveDiameter, GrooveWidth, RingSection, RingInside, AboutNose, HoleDiameter, OpeningSections.PlusMinus, Thickness],
        v => new PressureMeasures
        {
            Nose = v.OrNull(Nose),
            GrooveDiameter = v.OrNull(GrooveDiameter),
            GrooveWidth = v.OrNull(GrooveWidth),
            RingSection = v.OrNull(RingSection),
            RingInside = v.OrNull(RingInside),
            Holes = FlangeOf(v, AboutNose),
            Thickness = v.OrNull(Thickness),
        },
        [new([AboutNose], v => OpeningSections.CheckApart(v, AboutNose)), new([Nose, GrooveDiameter], CheckGroove)]);

    private static readonly Key<KitNeedKind> Seals = new(
        "seals", new WordForm<KitNeedKind>(("flange", KitNeedKind.FlangeGasket), ("idle valve", KitNeedKind.IdleGasket)),
        "What it seals: the flange of the throttle body (measured from the middle of the bore) or the idle valve.");

    private static readonly Key<ImmutableArray<Port>> Openings = new(
        "openings", new ListForm<Port>(OpeningSections.Port, 1, 8), "Its openings for the bore or the passages; the smaller diameter of each.", isRequired: false);

    private static readonly Section<PartEntry> Gasket = Of(
        [Seals, Holes, HoleDiameter, Openings, OpeningSections.PlusMinus], v => new GasketMeasures(v.Get(Seals), FlangeOf(v, Holes), v.OrNull(Openings)), [new([Holes], v => OpeningSections.CheckApart(v, Holes))]);

    private static readonly Key<FastenerThread> Thread = new("thread", new FastenerThreadForm(), "Thread of the screws: M4, M5, #10-32 UNF.");

    private static readonly Key<double> Length = new("length", QuantityForm.Length(3, 200), "Length under the head.");

    private static readonly Section<PartEntry> Screws = Of([Thread, Length], v => new ScrewMeasures(v.Get(Thread), v.Get(Length)), []);

    private static Key<Measured> Torque(string name, string help) => new(name, new MeasuredForm(new QuantityForm(UnitTable.NewtonMetre, 0.01, 50), 20), help);

    private static readonly Key<Measured> TorqueClosed = Torque("torque_closed", "Its closing torque at the throttle shaft on the closed stop, fitted as it will be, the others unhooked, read as the valve closes.");

    private static readonly Key<Measured> TorqueOpen = Torque("torque_open", "The same on the wide-open stop.");

    private static readonly Section<PartEntry> Spring = Of([TorqueClosed, TorqueOpen], v => new SpringMeasures(new(v.Get(TorqueClosed), v.Get(TorqueOpen))), []);

    private static readonly Key<Cable> CableKey = new("cable", CableSection.Form, "The cable, with the keys of [cable] of a vehicle.");

    private static readonly Section<PartEntry> CablePart = Of([CableKey], v => new CableMeasures(v.Get(CableKey)), []);

    private static readonly Key<double> MinHeight = new("min_height", QuantityForm.Length(0, 300), "Smallest height above the floor under the pad that it can be set to; the floor as it is, carpet and mat in place.");

    private static readonly Key<double> MaxHeight = new("max_height", QuantityForm.Length(0, 300), "Greatest such height; the same as min_height if it cannot be set.");

    private static readonly Section<PartEntry> PedalStop = Of([MinHeight, MaxHeight], v => new PedalStopMeasures(v.Get(MinHeight), v.Get(MaxHeight)), [new([MinHeight, MaxHeight], CheckHeights)]);

    private static readonly Key<Located<string>> File = new("file", new LocatedForm<string>(new FileForm()), "File of the bracket, from this file's folder: it is judged as the command check does.");

    // Its measurements are those of its file; until that is read it has none.
    private static readonly Section<PartEntry> Bracket = Of([File], _ => new ScrewMeasures(FastenerThread.All[0], 0), []);

    private static readonly Key<ImmutableArray<PartEntry>> Parts = new(
        "parts",
        new ListForm<PartEntry>(
            new Variants<PartEntry>(
                "kind", "What the part is.", ("position sensor", Sensor), ("idle valve", IdleValve), ("pressure sensor", Pressure), ("gasket", Gasket), ("screws", Screws), ("return spring", Spring),
                ("cable", CablePart), ("pedal stop", PedalStop), ("bracket", Bracket)),
            1, 200),
        "The parts at hand.");

    private static readonly Key<ImmutableArray<PartBundle>> Bundles = Key<ImmutableArray<PartBundle>>.WithDefault(
        "bundles", new ListForm<PartBundle>(new Section<PartBundle>([Name, Source, From, Price], v => new(v.Get(Name), v.Get(Source), v.OrNull(Price)) { From = v.Get(From, null!) }), 0, 40),
        "Several parts at one price: a donor throttle body, a box of parts.", []);

    public static Section<PartsFile> Form { get; } = new(
        [ListName, Bundles, Parts],
        v => new(v.Get(ListName), [.. v.Get(Parts).Select(e => e with { Part = e.Part with { Bundle = v.Get(Bundles).FirstOrDefault(b => b.Name == e.Bundle) } })]),
        [new([Bundles], CheckBundles), new([Bundles, Parts], CheckParts)]);

    private static Section<PartEntry> Of(Key[] keys, Func<SectionValues, PartMeasures> measures, Condition[] checks, ISchemaRule[]? rules = null) => new(
        [.. Common, .. keys],
        v => new(
            new(v.Get(Name), v.Get(Source), measures(v)) { From = v.Get(From, null!), Price = v.OrNull(Price), Quantity = v.OrNull(Quantity), IsNew = v.Get(Condition) },
            v.Get(Bundle, null!), v.Get(File, null!)),
        [.. checks, new([Price, Bundle], CheckPrice)], kinds: rules);

    private static FlangeHoles? FlangeOf(SectionValues values, Key<ImmutableArray<FlatPoint>> holes) => values.Has(holes)
        ? new([.. values.Get(holes).Select(OpeningSections.OfPattern)], values.OrNull(HoleDiameter), values.Get(OpeningSections.PlusMinus))
        : null;

    private static void CheckVolts(SectionValues values)
    {
        if (values.Has(ClosedVolts) != values.Has(OpenVolts))
        {
            values.Report(values.Has(ClosedVolts) ? ClosedVolts : OpenVolts, new Contradiction(Contradictory.OneReading));
        }
        else if (values.Has(ClosedVolts) && Math.Abs(values.Get(ClosedVolts) - values.Get(OpenVolts)) < SensorSection.LeastApart)
        {
            values.Report(OpenVolts, new Contradiction(Contradictory.SensorVolts));
        }
    }

    private static void CheckGroove(SectionValues values)
    {
        if (values.Has(Nose) && values.Has(GrooveDiameter) && values.Get(Nose).Value <= values.Get(GrooveDiameter).Value)
        {
            values.Report(Nose, new Compared(Relation.MoreThan, GrooveDiameter.Name, Units.Quantity.Length, values.Get(GrooveDiameter).Value, CompareReason.Contains));
        }
    }

    private static void CheckHeights(SectionValues values)
    {
        if (values.Get(MinHeight) > values.Get(MaxHeight))
        {
            values.Report(MinHeight, new WrongOrder(MinHeight.Name, values.Get(MinHeight), MaxHeight.Name, values.Get(MaxHeight), Units.Quantity.Length, IsAtMin: true, IsOneDefault: false, MayBeEqual: true));
        }
    }

    private static void CheckPrice(SectionValues values)
    {
        if (values.Has(Price) && values.Has(Bundle))
        {
            values.Report(Price, new Contradiction(Contradictory.PriceInBundle));
        }
    }

    private static void CheckBundles(SectionValues values) => CheckTwice(values, Bundles, [.. values.Get(Bundles).Select(b => b.Name)], Repeated.Bundle);

    private static void CheckParts(SectionValues values)
    {
        var parts = values.Get(Parts);
        CheckTwice(values, Parts, [.. parts.Select(p => p.Part.Name)], Repeated.Part);
        ImmutableArray<string> known = [.. values.Get(Bundles).Select(b => b.Name)];
        for (var i = 0; i < parts.Length; i++)
        {
            if (parts[i].Bundle is { } bundle && !known.Contains(bundle))
            {
                values.ReportItem(Parts, i, Bundle.Name, new NameUnknown(known, Nearest.To(bundle, known), NamedThing.Bundle));
            }
        }
    }

    private static void CheckTwice<T>(SectionValues values, Key<ImmutableArray<T>> key, ImmutableArray<string> names, Repeated what)
    {
        for (var i = 1; i < names.Length; i++)
        {
            if (names[..i].Contains(names[i]))
            {
                values.ReportItem(key, i, Name.Name, new GivenTwice(what));
            }
        }
    }
}
