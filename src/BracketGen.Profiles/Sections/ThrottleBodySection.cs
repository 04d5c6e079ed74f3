using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>A throttle body's file.</summary>
internal static class ThrottleBodySection
{
    private static readonly Key<string> Name = new("name", new TextForm(80), "Name of the throttle body.");

    private static readonly Key<OpeningSense> Opens = new(
        "opens",
        new WordForm<OpeningSense>(("counter-clockwise", OpeningSense.CounterClockwise), ("clockwise", OpeningSense.Clockwise)),
        "Which way the quadrant turns when the valve opens, looking at the quadrant from outside.");

    private static readonly Key<double> Bore = new("bore", QuantityForm.Length(10, 200), "Diameter of the bore.");

    private static readonly Key<double> ShaftDiameter = new(
        "shaft_diameter", QuantityForm.Length(2, 50), "Diameter of the throttle shaft where it crosses the bore.");

    private static readonly Key<Quadrant> Quadrant = new("quadrant", QuadrantSection.Form, "The grooved sector that the cable pulls.");

    private static readonly Key<ImmutableArray<OtherGroove>> OtherGrooves = Key<ImmutableArray<OtherGroove>>.WithDefault(
        "other_grooves", new ListForm<OtherGroove>(OtherGrooveSection.Form, 0, 4), "Grooves of the quadrant for other cables than the one from the pedal.", []);

    private static readonly Key<double> FreeArc = new(
        "free_arc", QuantityForm.Angle(0, 330),
        "Arc of the first groove over which the end fitting can stay behind while another cable opens the valve. If left out, it is not known.", isRequired: false);

    private static readonly Key<ReturnSprings> Springs = new("return_springs", ReturnSpringsSection.Form, "The springs that close the valve.");

    private static readonly Key<Measured> ShaftDrag = Key<Measured>.WithDefault(
        "shaft_drag", new MeasuredForm(new QuantityForm(UnitTable.NewtonMetre, 0, 5), 2),
        "Drag torque at the throttle shaft, cable off: half the difference between the torques read as the valve opens and as it closes (default: assumed, up to 0.04 N m; common practice, no source).",
        new(ThrottleBody.UsualShaftDrag, 0, Evidence.Assumed));

    private static readonly Key<double> Inertia = new(
        "inertia", QuantityForm.Number(0.1, 100_000), "Moment of inertia of plate, shaft and quadrant about the throttle shaft, in kg mm²; no unit. If left out, it is estimated from bore and radii.", isRequired: false);

    private static readonly Key<MountFace> Mount = new("mount", MountSection.Form, "The flat face that the bracket bolts to.");

    private static readonly Key<ImmutableArray<KeepOut>> KeepOuts = Key<ImmutableArray<KeepOut>>.WithDefault(
        "keep_out", new ListForm<KeepOut>(KeepOutSection.Form, 0, 100), "Boxes and cylinders that bracket, cable and quadrant must stay clear of.", []);

    private static readonly Key<BoreAxis> BoreAxis = new(
        "bore_axis", BoreAxisSection.Form, "Where the bore lies, and the casting round it. If left out, nothing is known of the casting.", isRequired: false);

    private static readonly Key<BodyShape> Shape = Key<BodyShape>.WithDefault(
        "body_shape",
        new WordForm<BodyShape>(("bore and bosses", BodyShape.BoreAndBosses), ("keep-outs", BodyShape.KeepOuts)),
        "What stands for the casting: a cylinder round the bore and one under each boss, or the keep-outs alone, which then describe all of it.",
        BodyShape.BoreAndBosses);

    private static readonly Key<ImmutableArray<KeepOut>> SpringRooms = Key<ImmutableArray<KeepOut>>.WithDefault(
        "spring_room", new ListForm<KeepOut>(KeepOutSection.Form, 0, 12), "The space of each return spring as a box or cylinder, with all that it moves through.", []);

    private static readonly Key<double> ClosedAngle = Key<double>.WithDefault(
        "valve", ValveSection.Form, "The valve. If left out: closed at 7 degrees (common practice, no source).", ValveSection.Usual);

    private static readonly Key<SensorReadings> Sensor = new(
        "sensor", SensorSection.Form, "Readings of the position sensor at the two stops. Leave out if there is none.", isRequired: false);

    private static readonly Key<Engine> Engine = new(
        "engine", EngineSection.Form, "The engine that shakes the bracket. If left out, the bracket's frequency is calculated but not checked.", isRequired: false);

    private static readonly Key<Shaking> Shaking = Key<Shaking>.WithDefault(
        "shaking", ShakingSection.Form, "How the mount face shakes. If left out, a published test is assumed for comparison, and decides nothing.", Design.Inputs.Shaking.Usual);

    private static readonly Key<SensorMount> SensorMount = new(
        "sensor_mount", OpeningSections.SensorMount, "The end of the throttle shaft that turns the position sensor, and the holes round it. If left out, it is not known what sensor fits.", isRequired: false);

    private static readonly Key<IdleMount> IdleMount = new(
        "idle_mount", OpeningSections.IdleMount, "The face that the idle valve sits on. If left out, it is not known what valve fits.", isRequired: false);

    private static readonly Key<PressurePort> PressurePort = new(
        "pressure_port", OpeningSections.PressurePort, "The bore for the nose of the pressure sensor. If left out, it is not known what sensor fits.", isRequired: false);

    private static readonly Key<ScrewPattern?> Flange = new(
        "flange", OpeningSections.Flange, "The holes of the flange towards the manifold. If left out, it is not known what gasket fits.", isRequired: false);

    public static Section<ThrottleBody> Form { get; } = new(
        [
            Name, Opens, Bore, ShaftDiameter, Quadrant, Springs, ShaftDrag, Inertia, Mount, KeepOuts, BoreAxis, Shape, SpringRooms, ClosedAngle, Sensor, Engine, Shaking, OtherGrooves, FreeArc,
            SensorMount, IdleMount, PressurePort, Flange,
        ],
        v => new()
        {
            Name = v.Get(Name),
            Opens = v.Get(Opens),
            Bore = v.Get(Bore),
            ShaftDiameter = v.Get(ShaftDiameter),
            Quadrant = v.Get(Quadrant),
            Springs = v.Get(Springs),
            ShaftDrag = v.Get(ShaftDrag),
            MeasuredInertia = v.Has(Inertia) ? v.Get(Inertia) / 1000 : null,
            Mount = v.Get(Mount),
            KeepOuts = v.Get(KeepOuts),
            BoreAxis = v.Has(BoreAxis) ? v.Get(BoreAxis) : null,
            Shape = v.Get(Shape),
            SpringRooms = v.Get(SpringRooms),
            ValveClosedAngle = new Angle(v.Get(ClosedAngle)),
            Sensor = v.Has(Sensor) ? v.Get(Sensor).Over(v.Get(Quadrant).Rotation.Value) : null,
            Engine = v.Has(Engine) ? v.Get(Engine) : null,
            Shaking = v.Get(Shaking),
            OtherGrooves = [.. v.Get(OtherGrooves).Select(g => g with { Quadrant = g.Quadrant with { Rotation = v.Get(Quadrant).Rotation } })],
            FreeArc = v.OrNull(FreeArc) is { } arc ? new Angle(arc) : null,
            Openings = new()
            {
                Sensor = v.Get(SensorMount, null!),
                Idle = v.Get(IdleMount, null!),
                Pressure = v.Get(PressurePort, null!),
                Flange = v.Get(Flange, null),
            },
        },
        [
            new([BoreAxis, Bore], CheckCasting),
            new([Bore, ShaftDiameter], v => Compare.MoreThan(v, Bore, v.Get(ShaftDiameter), ShaftDiameter)),
            new([Opens, Quadrant], CheckGroove),
            new([Opens, Quadrant, OtherGrooves], v => OtherGrooveSection.Check(v, OtherGrooves, v.Get(Quadrant), q => v.Get(Opens).Turned(q))),
        ]);

    private static void CheckCasting(SectionValues values)
    {
        if (values.Has(BoreAxis) && values.Get(BoreAxis).OutsideDiameter <= values.Get(Bore))
        {
            values.Report(BoreAxis, new Compared(Relation.MoreThan, Bore.Name, Quantity.Length, values.Get(Bore), CompareReason.Contains));
        }
    }

    /// <summary>Distance of a groove's farthest point from the throttle shaft's axis (mm).</summary>
    /// <param name="quadrant">The quadrant, opening counter-clockwise.</param>
    /// <param name="sign">1 where the groove runs from its pocket with the opening, -1 where it runs against it.</param>
    internal static double Farthest(Quadrant quadrant, int sign) => Enumerable.Range(0, 49)
        .Max(i => quadrant.Groove.PointWithNormal(quadrant.Groove.NormalAt(new(quadrant.Pocket.Value.Radians + sign * i / 48.0 * quadrant.GrooveExtent.Radians))).Length);

    // Which part of the groove carries the wire depends on the sense of opening, so this cannot be seen within [quadrant].
    private static void CheckGroove(SectionValues values)
    {
        var quadrant = values.Get(Opens).Turned(values.Get(Quadrant));
        var farthest = Farthest(quadrant, 1);
        if (farthest > quadrant.OuterRadius + Tolerance.SameSize)
        {
            values.Report(Quadrant, new GrooveOutsideRim(farthest));
        }
    }
}
