using System.Collections.Immutable;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Tooling;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>One <c>[[punches]]</c> of a shop.</summary>
internal static class PunchSection
{
    private static readonly Key<string> Name = new("name", new TextForm(40), "Name of the punch, for the bend table.");

    private static readonly Key<double> Height = new("height", QuantityForm.Length(20, 500), "Height from the tip to the beam.");

    private static readonly Key<double> TipAngle = new("angle", QuantityForm.Angle(10, 170), "Included angle of the tip.");

    private static readonly Key<double> GooseneckAngle = new("angle", QuantityForm.Angle(60, 170), "Included angle of the tip.");

    private static readonly Key<double> TipRadius = new("tip_radius", QuantityForm.Length(0.1, 5), "Radius of the tip.");

    private static readonly Key<double> BodyWidth = new("body_width", QuantityForm.Length(4, 200), "Thickness of the body, front to back.");

    private static readonly Key<ImmutableArray<ImmutableArray<double>>> Body = new(
        "body",
        new ListForm<ImmutableArray<double>>(new ListForm<double>(QuantityForm.Length(-500, 500), 2, 2), 2, 60),
        "Corners of the section above the tip, each [across, up] from the bottom of the tip, across towards the back gauge: counter-clockwise seen with the gauge on "
        + "the right, from the end of the flank at the gauge to the end of the flank in front.");

    private static readonly Key<double> MaxForce = Key<double>.WithDefault(
        "max_force", DieSection.ForceOnLength, "Force per length of bend that the punch stands.", Usual.MaxForce);

    private static Punch Usual => ToolSet.Assumed.Punches[0];

    private static readonly Section<Punch> Straight = new(
        [Name, Height, TipAngle, TipRadius, BodyWidth, MaxForce],
        v => Punch.Straight(v.Get(Name), v.Get(Height), new(v.Get(TipAngle)), v.Get(TipRadius), v.Get(BodyWidth)) with { MaxForce = v.Get(MaxForce) },
        [
            new([TipRadius, BodyWidth], v => Compare.MoreThan(v, BodyWidth, 2 * v.Get(TipRadius), TipRadius)),
            new([Height, TipAngle, TipRadius, BodyWidth], v =>
            {
                var wedge = Punch.WedgeHeight(new(v.Get(TipAngle)), v.Get(TipRadius), v.Get(BodyWidth));
                if (v.Get(Height) <= wedge)
                {
                    v.Report(Height, new Compared(Relation.MoreThan, BodyWidth.Name, Quantity.Length, wedge, CompareReason.PunchWedge));
                }
            }),
        ]);

    private static readonly Section<Punch> Gooseneck = new(
        [Name, Height, GooseneckAngle, TipRadius, MaxForce],
        v => Punch.Gooseneck(v.Get(Name), v.Get(Height), new(v.Get(GooseneckAngle)), v.Get(TipRadius)) with { MaxForce = v.Get(MaxForce) },
        [new([Height, TipRadius], v => Compare.MoreThan(v, Height, LeastHeights * v.Get(TipRadius), TipRadius))]);

    private static readonly Section<Punch> OwnSection = new(
        [Name, Height, TipAngle, TipRadius, Body, MaxForce],
        v => Punch.WithBody(v.Get(Name), v.Get(Height), new(v.Get(TipAngle)), v.Get(TipRadius), Corners(v)) with { MaxForce = v.Get(MaxForce) },
        [
            new([Height, TipAngle, TipRadius, Body], v =>
            {
                if (!Punch.IsBody(v.Get(Height), new(v.Get(TipAngle)), v.Get(TipRadius), Corners(v)))
                {
                    v.Report(Body, new PunchBodyWrong(v.Get(Height)));
                }
            }),
        ]);

    public static Variants<Punch> Form { get; } = new(
        "kind",
        "Section of the punch.",
        ("straight", Straight),
        ("gooseneck", Gooseneck),
        ("own section", OwnSection));

    // The nose of a gooseneck is 0.12 of its height thick: more than its rounded tip.
    private const double LeastHeights = 20;

    private static SectionPoint[] Corners(SectionValues v) => [.. v.Get(Body).Select(p => new SectionPoint(p[0], p[1]))];
}
