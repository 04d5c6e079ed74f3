using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Profiles.Sections;

/// <summary>What a throttle body has for other parts: <c>[sensor_mount]</c>, <c>[idle_mount]</c>, <c>[pressure_port]</c>, <c>[flange]</c>.</summary>
internal static class OpeningSections
{
    /// <summary>Two holes are never nearer (mm): between them there would be no metal.</summary>
    private const double LeastApart = 3;

    private static readonly WordForm<DriveShape> Shapes = new(
        ("D", DriveShape.D), ("double D", DriveShape.DoubleD), ("tongue", DriveShape.Tongue), ("slot", DriveShape.Slot), ("square", DriveShape.Square));

    /// <summary>Shape of the shaft's end, on the throttle body and on a sensor.</summary>
    public static readonly Key<DriveShape> Drive = new(
        "drive", Shapes, "Shape of the throttle shaft's end that turns the sensor: round with one flat (D) or two (double D), a tongue, a slot, or square. Of a sensor: the shaft's end that it is made for.", isRequired: false);

    /// <summary>Its size.</summary>
    public static readonly Key<Measured> DriveSize = new(
        "drive_size", new MeasuredForm(QuantityForm.Length(1, 30), 1), "Across the flats of the shaft's end, thickness of its tongue, width of its slot. Of a sensor: the same of what takes it.", isRequired: false);

    private static readonly Key<FastenerThread> Thread = new("thread", new FastenerThreadForm(), "Thread of the holes: M4, M5, #10-32 UNF.", isRequired: false);

    private static readonly Key<double> Depth = new("thread_depth", QuantityForm.Length(1, 100), "Depth of full thread, by a screw turned in by hand.", isRequired: false);

    /// <summary>Middles of holes.</summary>
    public static Key<ImmutableArray<FlatPoint>> HolesKey(int min, string from) => new(
        "holes", new ListForm<FlatPoint>(new FlangePointForm(), min, 8), $"Middles of the holes, [x, y] each, {from}", isRequired: false);

    private static readonly Key<ImmutableArray<FlatPoint>> AboutShaft = HolesKey(1, "from the axis of the throttle shaft, seen from outside.");

    private static readonly Key<ImmutableArray<FlatPoint>> Anywhere = HolesKey(1, "seen from outside; any origin, the same for the passages.");

    private static readonly Key<ImmutableArray<FlatPoint>> AboutPort = HolesKey(0, "from the middle of the bore, seen from outside; [] if the sensor is held otherwise.");

    private static readonly Key<ImmutableArray<FlatPoint>> AboutBore = HolesKey(1, "from the middle of the throttle body's bore.");

    /// <summary>How far a coordinate may be off.</summary>
    public static readonly Key<double> PlusMinus = Key<double>.WithDefault(
        "plus_minus", QuantityForm.Length(0, 5), "How far each coordinate may be off, each way (default: caliper from hole to hole, common practice, no source).", ScrewPattern.UsualPlusMinus);

    private static readonly Key<FlatPoint> At = new("at", new FlangePointForm(), "Middle of the passage.");

    private static readonly Key<double> Diameter = new("diameter", QuantityForm.Length(1, 200), "Diameter of the passage.");

    /// <summary>Passages of a face.</summary>
    public static readonly Section<Port> Port = new([At, Diameter], v => new(v.Get(At).OfPattern(), v.Get(Diameter)));

    /// <summary>Passages for air.</summary>
    public static readonly Key<ImmutableArray<Port>> Air = new("air", new ListForm<Port>(Port, 1, 4), "Passages for air that open in the face.", isRequired: false);

    /// <summary>Passages for water.</summary>
    public static readonly Key<ImmutableArray<Port>> Water = new(
        "water", new ListForm<Port>(Port, 0, 4), "Passages for water that open in the face; [] if there are none. If left out, it is not known.", isRequired: false);

    private static readonly Key<bool> SealedBy = Key<bool>.WithDefault(
        "sealed_by", new WordForm<bool>(("gasket", true), ("rings", false)), "What seals the idle valve: a gasket of its own, or rings that come with the valve.", true);

    private static readonly Key<Measured> Bore = new("bore", new MeasuredForm(QuantityForm.Length(2, 60), 1), "Diameter of the bore that the sensor's nose goes into.", isRequired: false);

    public static Section<SensorMount> SensorMount { get; } = new(
        [Drive, DriveSize, Thread, Depth, AboutShaft, PlusMinus],
        v => new(v.OrNull(Drive), v.OrNull(DriveSize), Screws(v, AboutShaft)), [new([AboutShaft], v => CheckApart(v, AboutShaft))]);

    public static Section<IdleMount> IdleMount { get; } = new(
        [Thread, Depth, Anywhere, Air, Water, PlusMinus, SealedBy],
        v => new(Screws(v, Anywhere), v.OrNull(Air), v.OrNull(Water)) { PlusMinus = v.Get(PlusMinus), HasGasket = v.Get(SealedBy) }, [new([Anywhere], v => CheckApart(v, Anywhere))]);

    public static Section<PressurePort> PressurePort { get; } = new(
        [Bore, Thread, Depth, AboutPort, PlusMinus], v => new(v.OrNull(Bore), Screws(v, AboutPort)), [new([AboutPort], v => CheckApart(v, AboutPort))]);

    public static Section<ScrewPattern?> Flange { get; } = new(
        [Thread, AboutBore, PlusMinus], v => Screws(v, AboutBore), [new([AboutBore], v => CheckApart(v, AboutBore))]);

    /// <summary>Reports holes that run into each other.</summary>
    public static void CheckApart(SectionValues values, Key<ImmutableArray<FlatPoint>> key)
    {
        if (!values.Has(key))
        {
            return;
        }

        var holes = values.Get(key);
        for (var i = 1; i < holes.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (holes[i].DistanceTo(holes[j]) < LeastApart)
                {
                    values.ReportItem(key, i, "", new HolesOverlap(j + 1, LeastApart, holes[i].DistanceTo(holes[j])));
                }
            }
        }
    }

    /// <summary>A point of a pattern, read as a point of a flange.</summary>
    public static PatternPoint OfPattern(this FlatPoint point) => new(point.Vector);

    private static ScrewPattern? Screws(SectionValues values, Key<ImmutableArray<FlatPoint>> holes) => values.Has(holes)
        ? new([.. values.Get(holes).Select(OfPattern)], values.Has(Thread) ? values.Get(Thread) : null) { PlusMinus = values.Get(PlusMinus), Depth = values.OrNull(Depth) }
        : null;
}
