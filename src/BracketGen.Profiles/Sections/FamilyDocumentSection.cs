using BracketGen.Design.Inputs;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[document]</c> of a family: the title block of every drawing; number and revision come from the register.</summary>
internal static class FamilyDocumentSection
{
    private static readonly Key<string> Title = Key<string>.WithDefault(
        "title", new TextForm(80), "Title of the drawings; {vehicle} and {throttle_body} become the names.", "Throttle cable bracket, {vehicle}, {throttle_body}");

    private static readonly Key<DateOnly> Date = new("date", new DateForm(), "Date of issue. If left out, the field is blank.", isRequired: false);

    private static readonly Key<string> Creator = new("creator", new TextForm(40), "Who drew it. If left out, the field is blank.", isRequired: false);

    private static readonly Key<string> Approver = new("approver", new TextForm(40), "Who approved it. If left out, the field is blank.", isRequired: false);

    private static readonly Key<Projection> Layout = Key<Projection>.WithDefault(
        "projection", new WordForm<Projection>(("first angle", Projection.FirstAngle), ("third angle", Projection.ThirdAngle)),
        "How the views are laid out (ISO 5456-2).", Projection.FirstAngle);

    public static readonly Key<FamilyDocument> Document = Key<FamilyDocument>.WithDefault(
        "document",
        new Section<FamilyDocument>(
            [Title, Date, Creator, Approver, Layout],
            v => new(v.Get(Title), v.OrNull(Date), v.Has(Creator) ? v.Get(Creator) : null, v.Has(Approver) ? v.Get(Approver) : null, v.Get(Layout))),
        "What the title blocks say.",
        new("Throttle cable bracket, {vehicle}, {throttle_body}", null, null, null, Projection.FirstAngle));
}
