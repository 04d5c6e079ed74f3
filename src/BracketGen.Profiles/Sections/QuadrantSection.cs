using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[quadrant]</c> of a throttle body.</summary>
internal static class QuadrantSection
{
    private static readonly Key<Measured> PitchRadius = new(
        "pitch_radius", new MeasuredForm(QuantityForm.Length(5, 200), 20), "Radius of the wire's centre line in a groove that is round about the throttle shaft.", isRequired: false);

    private static readonly Key<Groove> GrooveShape = new(
        "groove", GrooveSection.Form, "Groove of another shape, instead of pitch_radius.", isRequired: false);

    private static readonly Key<Measured> Rotation = new(
        "rotation", new MeasuredForm(QuantityForm.Angle(10, 170), 20), "Rotation from the closed stop to the wide-open stop.");

    private static readonly Key<Measured> PocketAngle = new(
        "pocket_angle", new MeasuredForm(QuantityForm.Angle(-360, 360), 20), "Polar angle of the end fitting's centre at the closed stop, counter-clockwise from the x axis.");

    private static readonly Key<double> GrooveExtent = new(
        "groove_extent", QuantityForm.Angle(10, 330), "Arc of groove, from the pocket on, that can carry the wire.");

    private static readonly Key<double> GrooveWidth = new("groove_width", QuantityForm.Length(0.5, 20), "Width of the groove.");

    private static readonly Key<double> SlotWidth = new(
        "slot_width", QuantityForm.Length(0.5, 20), "Width of the pocket slot, through which the wire enters the pocket.");

    private static readonly Key<FittingPocket> Pocket = new(
        "pocket", PocketSection.Form, "The pocket that holds the end fitting. If left out, nothing is known of how it is held.", isRequired: false);

    private static readonly Key<double> OuterRadius = new("outer_radius", QuantityForm.Length(5, 250), "Radius over the rims.");

    private static readonly Key<double> Thickness = new(
        "thickness", QuantityForm.Length(1, 60), "Thickness over the rims.");

    private static readonly Key<double> HubRadius = new(
        "hub_radius",
        QuantityForm.Length(2, 250),
        "Radius of the hub: all of the quadrant but its grooved sector lies inside it. If left out, the whole disc of outer_radius counts as moving.",
        isRequired: false);

    public static Section<Quadrant> Form { get; } = new(
        [PitchRadius, GrooveShape, Rotation, PocketAngle, GrooveExtent, GrooveWidth, SlotWidth, OuterRadius, Thickness, HubRadius, Pocket],
        v => new()
        {
            Groove = v.Has(GrooveShape) ? v.Get(GrooveShape) : new CircularGroove(v.Get(PitchRadius)),
            Rotation = MeasuredAngle.FromRadians(v.Get(Rotation)),
            Pocket = MeasuredAngle.FromRadians(v.Get(PocketAngle)),
            GrooveExtent = new(v.Get(GrooveExtent)),
            GrooveWidth = v.Get(GrooveWidth),
            SlotWidth = v.Get(SlotWidth),
            PocketShape = v.Has(Pocket) ? v.Get(Pocket) : null,
            OuterRadius = v.Get(OuterRadius),
            Thickness = v.Get(Thickness),
            HubRadius = v.Get(HubRadius, v.Get(OuterRadius)),
        },
        [
            new([OuterRadius, PitchRadius], v => Compare.AtLeast(v, OuterRadius, v.Get(PitchRadius).Value, PitchRadius)),
            new([Thickness, GrooveWidth], v => Compare.AtLeast(v, Thickness, v.Get(GrooveWidth), GrooveWidth)),
        ],
        [PitchRadius, GrooveShape]);
}
