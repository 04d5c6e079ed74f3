using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[chosen]</c> of a job: the bracket that somebody chose, to be made again.</summary>
internal static class ChosenSection
{
    private static readonly Key<string> Material = new("material", new TextForm(60), "Designation of the sheet's material.");

    private static readonly Key<double> Thickness = new("thickness", QuantityForm.Length(0.3, 25), "Thickness of the sheet.");

    private static readonly Key<double> Leaving = new(
        "leaving", QuantityForm.Angle(-360, 360), "Leaving angle at the closed stop, counted from the pocket the way the groove runs.");

    private static readonly Key<double> Shift = new("adjuster_shift", QuantityForm.Length(-200, 200), "How far the adjuster stands off mid range.");

    private static readonly Key<double> Radius = new("inside_radius", QuantityForm.Length(0, 100), "Inside radius of the bends; 0 for a flat plate.");

    private static readonly Key<bool> Seat = new(
        "seat", new WordForm<bool>(("top", true), ("bottom", false)), "Side of the sheet that the outer's seat is on; top faces away from the mount face.");

    private static readonly Key<ImmutableArray<ChosenBend>> Bends = Key<ImmutableArray<ChosenBend>>.WithDefault(
        "bends", new ListForm<ChosenBend>(ChosenBendSection.Form, 0, 8), "Its bends, from the mount flange on.", []);

    public static Section<ChosenBracket> Form { get; } = new(
        [Material, Thickness, Leaving, Shift, Radius, Seat, Bends],
        v => new(v.Get(Material), v.Get(Thickness), new Angle(v.Get(Leaving)), v.Get(Shift), v.Get(Radius), v.Get(Seat), v.Get(Bends)));
}

/// <summary>One <c>[[chosen.bends]]</c> of a job.</summary>
internal static class ChosenBendSection
{
    private static readonly Key<double> Turn = new("turn", QuantityForm.Angle(-180, 180), "Bend angle, positive towards the top of the sheet.");

    private static readonly Key<double> Length = new("length", QuantityForm.Length(0, 2000), "Length of the bend.");

    public static Section<ChosenBend> Form { get; } = new([Turn, Length], v => new(new Angle(v.Get(Turn)), v.Get(Length)));
}
