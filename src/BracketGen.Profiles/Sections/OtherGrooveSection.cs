using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary>One <c>[[other_grooves]]</c> of a throttle body: a groove of the quadrant for another cable than the pedal's.</summary>
internal static class OtherGrooveSection
{
    private static readonly Key<string> Name = new("name", new TextForm(40), "Name of the groove, by which a job says which cable works in it.");

    private static readonly Key<GrooveRole> Role = new(
        "does", new WordForm<GrooveRole>(("opens", GrooveRole.Opening), ("closes", GrooveRole.Closing), ("pulled", GrooveRole.Pulled)),
        "What a cable in it does: it opens the valve, it closes the valve, or it is pulled by the quadrant as the valve opens.");

    private static readonly Key<double> Z = new(
        "z", QuantityForm.Length(-100, 100), "Middle plane of the groove, along the throttle shaft from that of the first groove; outwards positive.");

    private static readonly Key<double> FreeArc = new(
        "free_arc", QuantityForm.Angle(0, 330), "Arc over which the end fitting can stay behind while another cable opens the valve. If left out, it is not known.", isRequired: false);

    private static readonly Key<Measured> PitchRadius = new(
        "pitch_radius", new MeasuredForm(QuantityForm.Length(5, 200), 20), "Radius of the wire's centre line in a groove that is round about the throttle shaft.", isRequired: false);

    private static readonly Key<Groove> Shape = new("groove", GrooveSection.Form, "Groove of another shape, instead of pitch_radius.", isRequired: false);

    private static readonly Key<Measured> PocketAngle = new(
        "pocket_angle", new MeasuredForm(QuantityForm.Angle(-360, 360), 20), "Polar angle of the end fitting's centre at the closed stop, counter-clockwise from the x axis.");

    private static readonly Key<double> Extent = new(
        "groove_extent", QuantityForm.Angle(10, 330), "Arc of groove that can carry the wire, from the pocket on: with the opening if the cable opens, against it otherwise.");

    private static readonly Key<double> Width = new("groove_width", QuantityForm.Length(0.5, 20), "Width of the groove.");

    private static readonly Key<double> SlotWidth = new("slot_width", QuantityForm.Length(0.5, 20), "Width of the pocket slot, through which the wire enters the pocket.");

    private static readonly Key<FittingPocket> Pocket = new(
        "pocket", PocketSection.Form, "The pocket that holds the end fitting. If left out, nothing is known of how it is held.", isRequired: false);

    private static readonly Key<double> OuterRadius = new("outer_radius", QuantityForm.Length(5, 250), "Radius over the rims.");

    private static readonly Key<double> Thickness = new("thickness", QuantityForm.Length(1, 60), "Thickness over the rims.");

    public static Section<OtherGroove> Form { get; } = new(
        [Name, Role, Z, FreeArc, PitchRadius, Shape, PocketAngle, Extent, Width, SlotWidth, OuterRadius, Thickness, Pocket],
        v => new(v.Get(Name), v.Get(Role), v.Get(Z), new()
        {
            Groove = v.Has(Shape) ? v.Get(Shape) : new CircularGroove(v.Get(PitchRadius)),
            Rotation = new(Angle.Zero, Angle.Zero),
            Pocket = MeasuredAngle.FromRadians(v.Get(PocketAngle)),
            GrooveExtent = new(v.Get(Extent)),
            GrooveWidth = v.Get(Width),
            SlotWidth = v.Get(SlotWidth),
            PocketShape = v.Has(Pocket) ? v.Get(Pocket) : null,
            OuterRadius = v.Get(OuterRadius),
            Thickness = v.Get(Thickness),
            HubRadius = v.Get(OuterRadius),
        })
        {
            FreeArc = v.OrNull(FreeArc) is { } arc ? new Angle(arc) : null,
        },
        [
            new([OuterRadius, PitchRadius], v => Compare.AtLeast(v, OuterRadius, v.Get(PitchRadius).Value, PitchRadius)),
            new([Thickness, Width], v => Compare.AtLeast(v, Thickness, v.Get(Width), Width)),
        ],
        [PitchRadius, Shape]);

    /// <summary>Reports names given twice, and grooves that lie in one another or in the first.</summary>
    /// <param name="values">The body's values.</param>
    /// <param name="key">The key of the list.</param>
    /// <param name="first">The quadrant with the first groove.</param>
    /// <param name="turned">Turns a quadrant to the frame in which the body opens counter-clockwise.</param>
    public static void Check(SectionValues values, Key<ImmutableArray<OtherGroove>> key, Quadrant first, Func<Quadrant, Quadrant> turned)
    {
        var grooves = values.Get(key);
        for (var i = 0; i < grooves.Length; i++)
        {
            var (one, before) = (grooves[i], grooves.Take(i).ToArray());
            if (before.Any(g => g.Name == one.Name))
            {
                values.ReportItem(key, i, Name.Name, new GivenTwice(Repeated.Groove));
            }

            var farthest = ThrottleBodySection.Farthest(turned(one.Quadrant), one.Draws ? -1 : 1);
            if (farthest > one.Quadrant.OuterRadius + Tolerance.SameSize)
            {
                values.ReportItem(key, i, OuterRadius.Name, new GrooveOutsideRim(farthest));
            }

            foreach (var (z, width) in before.Select(g => (g.Z, g.Quadrant.GrooveWidth)).Prepend((0, first.GrooveWidth)))
            {
                if (Math.Abs(one.Z - z) <= (one.Quadrant.GrooveWidth + width) / 2)
                {
                    values.ReportItem(key, i, Z.Name, new Contradiction(Contradictory.GroovesOverlap));
                    break;
                }
            }
        }
    }
}
