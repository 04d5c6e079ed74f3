using BracketGen.Design.Inputs;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.SheetMetal.Cutting;
using BracketGen.Units;
using BracketGen.Words;
using BracketGen.Words.Checks;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>What is written on a bracket's drawing: title block, tables, notes.</summary>
internal sealed class DrawingBlocks(BracketScene scene, DrawingOptions options, string? remark)
{
    private readonly ValueFormat _value = scene.Value;

    private Job Job => scene.Solution.Job;

    /// <summary>The title block for one of <paramref name="sheets"/> sheets.</summary>
    public SheetBlock Title(PageFormat format, string scale, int sheet, int sheets) => new TitleBlock
    {
        Owner = Job.Shop.Name,
        Title = Job.Document.Title,
        SupplementaryTitle = DrawingText.Subject(Job),
        Number = Job.Document.PartNumber,
        Revision = Job.Document.Revision,
        Date = Job.Document.Date,
        Creator = Job.Document.Creator ?? "",
        Approver = Job.Document.Approver ?? "",
        DocumentType = DrawingText.DocumentType,
        Scale = scale,
        Units = scene.Units,
        Projection = Job.Document.Projection == Design.Inputs.Projection.FirstAngle ? Sheet.Projection.FirstAngle : Sheet.Projection.ThirdAngle,
        GeneralTolerances = DrawingText.Tolerances(ToleranceClass),
        Material = _value.Styled(DrawingText.Sheet(scene.Bracket, Job.Units)),
        Finish = DrawingText.Finish,
        Mass = Job.Units.Write(Quantity.Mass, scene.Bracket.Mass),
        Sheet = sheet,
        Sheets = sheets,
    }.Draw(format);

    private int ToleranceClass => CuttingLimits.ToleranceClass(Job.Shop.Process);

    /// <summary>The hole table.</summary>
    public SheetBlock Holes() => SheetTable.Draw(
        PartTableText.HolesTitle, PartTableText.HoleHeads, PartTables.Holes(scene.Bracket, Job.Vehicle.Cable.OuterEnd, _value), [1, 2], maximumWidth: 46);

    /// <summary>The bend table, its entries wrapped until it is no wider than a width if they can be; null for a flat plate.</summary>
    public SheetBlock? Bends(double width)
    {
        if (scene.Flat.Bends.IsEmpty)
        {
            return null;
        }

        var (header, rows) = PartTables.Bends(scene.Bracket, _value);
        var tables = ((double[])[44, 34, 26, 20]).Select(w => SheetTable.Draw(PartTableText.BendsTitle, header, rows, [2, 4], maximumWidth: w)).ToArray();
        return tables.FirstOrDefault(t => t.Bounds.Width <= width) ?? tables[^1];
    }

    /// <summary>The notes, numbered.</summary>
    public SheetBlock Notes(double width) => Sheet.Notes.Numbered(
        DrawingText.NotesHeading,
        [
            .. DrawingText.Notes(scene.Solution, scene.Bracket, options.WithKerfCompensated, ToleranceClass).Select(_value.Styled),
            WarningText.Note(scene.Solution.Verdict),
            .. remark is null ? Array.Empty<string>() : [remark],
        ],
        width);

    /// <summary>The safety note in its frame.</summary>
    public static SheetBlock Safety(double width) => WarningBlocks.Boxed(DrawingText.Safety, [string.Join(" ", Cautions.All)], width, Ink.Black);
}
