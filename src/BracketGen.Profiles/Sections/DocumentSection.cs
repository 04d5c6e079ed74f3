using BracketGen.Design.Inputs;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[document]</c> of a job: the title block.</summary>
internal static class DocumentSection
{
    private static readonly Key<string> PartNumber = new("part_number", new TextForm(40), "Identification number of the part.");

    private static readonly Key<string> Revision = new("revision", new TextForm(10), "Revision index.");

    private static readonly Key<string> Title = new("title", new TextForm(80), "Title of the drawing.");

    private static readonly Key<DateOnly> Date = new("date", new DateForm(), "Date of issue. If left out, the field is blank.", isRequired: false);

    private static readonly Key<string> Creator = new("creator", new TextForm(40), "Who drew it. If left out, the field is blank.", isRequired: false);

    private static readonly Key<string> Approver = new("approver", new TextForm(40), "Who approved it. If left out, the field is blank.", isRequired: false);

    private static readonly Key<Projection> Layout = Key<Projection>.WithDefault(
        "projection",
        new WordForm<Projection>(("first angle", Projection.FirstAngle), ("third angle", Projection.ThirdAngle)),
        "How the views are laid out (ISO 5456-2).",
        Projection.FirstAngle);

    private static readonly Key<Paper> Sheet = new(
        "paper",
        new WordForm<Paper>(("A3", Paper.A3), ("A4", Paper.A4), ("B", Paper.B), ("A", Paper.A)),
        "Drawing sheet. If left out: A3, or B (17 x 11 inches) for a job in inches.",
        isRequired: false);

    public static Section<DocumentData> Form { get; } = new(
        [PartNumber, Revision, Title, Date, Creator, Approver, Layout, Sheet],
        v => new(v.Get(PartNumber), v.Get(Revision), v.Get(Title), v.OrNull(Date), v.Get(Creator), v.Get(Approver), v.Get(Layout)) { Paper = v.OrNull(Sheet) });
}
