using BracketGen.Geometry;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Tooling;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[press]</c> of a shop.</summary>
internal static class PressSection
{
    private static readonly PressBrake Usual = new();

    private static readonly Key<double> OpenHeight = new("open_height", QuantityForm.Length(50, 2000), "Height between beam and bed with the beam up.");

    private static readonly Key<double> Stroke = new("stroke", QuantityForm.Length(10, 1000), "Stroke of the beam.");

    private static readonly Key<double> BeamWidth = Length("beam_width", 5, 500, "Thickness of the beam that carries the punch, front to back.", Usual.BeamWidth);

    private static readonly Key<double> BedWidth = Length("bed_width", 5, 500, "Thickness of the bed under the die, front to back.", Usual.BedWidth);

    private static readonly Key<double> GaugeMin = Length("gauge_min", 0, 500, "Minimum distance of the back gauge from the middle of the bend.", Usual.GaugeMin);

    private static readonly Key<double> GaugeMax = Length("gauge_max", 1, 3000, "Maximum distance of the back gauge from the middle of the bend.", Usual.GaugeMax);

    private static readonly Key<double> FingerWidth = Length("finger_width", 2, 200, "Width of a finger of the back gauge along the bend.", Usual.FingerWidth);

    private static readonly Key<double> FingerHeight = Length("finger_height", 1, 200, "Height of a finger over the top of the die.", Usual.FingerHeight);

    private static readonly Key<double> FingerDepth = Length(
        "finger_depth", 0, 200, "How far a finger reaches below the top of the die; 0 if it can stand over the die.", Usual.FingerDepth);

    private static readonly Key<bool> Retracts = Key<bool>.WithDefault(
        "gauge_in_bend", new WordForm<bool>(("moves back", true), ("stays", false)), "Whether the back gauge moves back before the beam bends.", Usual.GaugeRetracts);

    private static readonly Key<double> Sections = new(
        "tool_sections", QuantityForm.Length(1, 500), "Steps in which punches and dies are made up from sections. If left out: they come in one piece.", isRequired: false);

    private static readonly Key<double> MaxForce = Key<double>.WithDefault("max_force", QuantityForm.Force(1000, 1e8), "Force of the press.", Usual.MaxForce);

    private static readonly Key<double> MaxForcePerLength = Key<double>.WithDefault(
        "max_force_on_length", DieSection.ForceOnLength, "Force per length that bed and beam stand.", Usual.MaxForcePerLength);

    public static Section<PressBrake> Form { get; } = new(
        [OpenHeight, Stroke, BeamWidth, BedWidth, GaugeMin, GaugeMax, FingerWidth, FingerHeight, FingerDepth, Retracts, Sections, MaxForce, MaxForcePerLength],
        v => new()
        {
            OpenHeight = v.Get(OpenHeight),
            Stroke = v.Get(Stroke),
            BeamWidth = v.Get(BeamWidth),
            BedWidth = v.Get(BedWidth),
            GaugeMin = v.Get(GaugeMin),
            GaugeMax = v.Get(GaugeMax),
            FingerWidth = v.Get(FingerWidth),
            FingerHeight = v.Get(FingerHeight),
            FingerDepth = v.Get(FingerDepth),
            GaugeRetracts = v.Get(Retracts),
            SectionStep = v.OrNull(Sections),
            MaxForce = v.Get(MaxForce),
            MaxForcePerLength = v.Get(MaxForcePerLength),
            Evidence = Evidence.Given,
        },
        [
            new([OpenHeight, Stroke], v => Compare.InOrder(v, Stroke, OpenHeight, Quantity.Length)),
            new([GaugeMin, GaugeMax], v => Compare.InOrder(v, GaugeMin, GaugeMax, Quantity.Length)),
        ]);

    private static Key<double> Length(string name, double min, double max, string help, double usual) =>
        Key<double>.WithDefault(name, QuantityForm.Length(min, max), help, usual);
}
