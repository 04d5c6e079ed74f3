using BracketGen.Geometry;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.Profiles.Sections;

/// <summary>One <c>[[clamps]]</c> of a shop: a folder, a hand brake or a bar for the vice.</summary>
internal static class ClampSection
{
    private static readonly Key<ClampKind> Kind = new(
        "kind", new WordForm<ClampKind>(("folder", ClampKind.Folder), ("hand brake", ClampKind.HandBrake), ("vice", ClampKind.Vice)), "What it is.");

    private static readonly Key<string> Name = new("name", new TextForm(40), "Name of it, for the bend table.");

    private static readonly Key<double> Radius = new("radius", QuantityForm.Length(0.1, 50), "Radius of the edge or bar that the sheet is bent over.");

    private static readonly Key<double> Depth = Optional("depth", 5, 1000, "How far the upper clamp or bar reaches back over the sheet.");

    private static readonly Key<double> Height = Optional("height", 2, 500, "Height of the upper clamp or bar at its front.");

    private static readonly Key<double> NoseAngle = new(
        "nose_angle", QuantityForm.Angle(15, 90), "Angle between the front of the upper clamp and the sheet. If left out: 50 degrees, for a vice 90, assumed.", isRequired: false);

    private static readonly Key<double> Below = Optional("below", 2, 1000, "How far table or jaws reach down below the sheet.");

    private static readonly Key<double> BeamWidth = Optional("beam_width", 0, 200, "Width of the beam that turns the flange up; 0 for none.");

    private static readonly Key<double> Along = Optional("length", 20, 6000, "Length along the bend.");

    private static readonly Key<double> MaxThickness = Optional("max_thickness", 0.3, 12, "Thickest sheet that it bends.");

    private static readonly Key<double> LeastClamped = Optional("min_clamped", 1, 200, "Minimum width of the flange that is clamped.");

    public static Section<BendingClamp> Form { get; } = new([Kind, Name, Radius, Depth, Height, NoseAngle, Below, BeamWidth, Along, MaxThickness, LeastClamped], Read);

    private static BendingClamp Read(SectionValues v)
    {
        var usual = new BendingClamp(v.Get(Kind), v.Get(Name), v.Get(Radius));
        return usual with
        {
            Depth = v.Get(Depth, usual.Depth),
            Height = v.Get(Height, usual.Height),
            NoseAngle = new(v.Get(NoseAngle, usual.NoseAngle.Radians)),
            Below = v.Get(Below, usual.Below),
            BeamWidth = v.Get(BeamWidth, usual.BeamWidth),
            Length = v.Get(Along, usual.Length),
            MaxThickness = v.Get(MaxThickness, usual.MaxThickness),
            LeastClamped = v.Get(LeastClamped, usual.LeastClamped),
            Evidence = new Key[] { Depth, Height, NoseAngle, Below, BeamWidth, Along, MaxThickness, LeastClamped }.All(v.Has) ? Evidence.Given : Evidence.Assumed,
        };
    }

    private static Key<double> Optional(string name, double min, double max, string help) =>
        new(name, QuantityForm.Length(min, max), help + " If left out: usual for its kind, assumed.", isRequired: false);
}
