using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
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
    public SheetBlock Title(PageFormat format, string scale, int sheet, int sheets) => Fields(scale, sheet, sheets).Draw(format);

    /// <summary>The same for the sheet of the adapter ring, which has a material of its own.</summary>
    public SheetBlock TitleOfRing(PageFormat format, string scale, int sheet, int sheets, RingShape ring) => (Fields(scale, sheet, sheets) with
    {
        SupplementaryTitle = Phrases.Capital(RingText.Name),
        Material = _value.Styled(DrawingText.Sheet(ring.Ring.Sheet, Job.Units)),
        Finish = _value.Styled(DrawingText.Finish(ring.Ring.Sheet.Material.Finish, Job.Units)),
        Mass = _value.Styled(Job.Units.Write(Quantity.Mass, ring.Blank.Area * ring.Ring.Thickness * ring.Ring.Sheet.Material.Density)),
    }).Draw(format);

    private TitleBlock Fields(string scale, int sheet, int sheets) => new()
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
        GeneralTolerances = DrawingText.Tolerances(ToleranceClass, Job.Units),
        Material = _value.Styled(DrawingText.Sheet(scene.Bracket, Job.Units)),
        Finish = _value.Styled(DrawingText.Finish(scene.Bracket.Stock.Material.Finish, Job.Units)),
        Mass = _value.Styled(Job.Units.Write(Quantity.Mass, scene.Bracket.Mass)),
        Sheet = sheet,
        Sheets = sheets,
    };

    private int ToleranceClass => CuttingLimits.ToleranceClass(Job.Shop.Process);

    /// <summary>The hole table.</summary>
    public SheetBlock Holes() => SheetTable.Draw(
        PartTableText.HolesTitle, PartTableText.HoleHeads, PartTables.Holes(scene.Bracket, Job, _value), [1, 2], maximumWidth: 46);

    /// <summary>The bend table, its entries wrapped until it is no wider than a width if they can be; null for a flat plate.</summary>
    public SheetBlock? Bends(double width)
    {
        if (scene.Flat.Bends.IsEmpty)
        {
            return null;
        }

        var rows = PartTables.Bends(scene.Bracket, _value);
        var tables = ((double[])[44, 34, 26, 20, 17.5]).Select(w => SheetTable.Draw(PartTableText.BendsTitle, PartTableText.BendHeads(scene.Bracket.Die is not null), rows, [2, 3, 5], maximumWidth: w)).ToArray();
        return tables.FirstOrDefault(t => t.Bounds.Width <= width) ?? tables[^1];
    }

    /// <summary>The table of the outline's points: in two halves where they fit beside each other into a width, in as many parts as it takes for none to be higher than a height.</summary>
    public SheetBlock[] Points(double width, double height = double.PositiveInfinity)
    {
        var rows = PartTables.Points(scene.Bracket, _value);
        SheetBlock Part(IEnumerable<IReadOnlyList<string>> some) => SheetTable.Draw(PartTableText.PointsTitle, PartTableText.PointHeads, [.. some], [1, 2, 4, 5], maximumWidth: 46);
        SheetBlock[] Parts(int count) => [.. rows.Chunk((rows.Count + count - 1) / count).Select(Part)];
        var parts = rows.Count > 8 ? Parts(2) : [];
        if (parts.Length != 2 || parts.Sum(p => p.Bounds.Width) + TableGap > width)
        {
            parts = Parts(1);
        }

        for (var count = parts.Length + 1; count <= rows.Count && parts.Max(p => p.Bounds.Height) > height; count++)
        {
            parts = Parts(count);
        }

        return parts;
    }

    /// <summary>Between tables beside each other (mm).</summary>
    public const double TableGap = 5;

    /// <summary>The geometrical tolerances of bolt holes, stop and seat.</summary>
    public SheetBlock Tolerances()
    {
        var (bracket, shop) = (scene.Bracket, Job.Shop);
        var end = Job.Vehicle.Cable.OuterEnd;
        var bolts = bracket.MountBolts;
        DatumReference a = new("A"), b = new("B", true), c = new("C", true);
        ImmutableArray<DatumReference> all = bolts.Length > 1 ? [a, b, c] : [a, b];
        List<(string Label, SheetBlock[] Frames)> rows = [];
        for (var i = 1; i < bolts.Length; i++)
        {
            var place = 2 * HoleMaking.Of(bracket, bolts[i], end, shop.Process).Position;
            rows.Add((bolts[i].Name, [ToleranceFrame.Draw(Characteristic.Position, "Ø" + _value.RoundedDown(place), i == 1 ? [a, b] : all)]));
        }

        foreach (var hole in bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt && h.Flange > 0))
        {
            rows.Add((hole.Name, [ToleranceFrame.Draw(Characteristic.Position, "Ø" + _value.RoundedDown(SecondFlangeTolerance.Position(bracket, hole, shop.Process, end)), all)]));
        }

        var stop = StopTolerance.Of(bracket, shop.Process, end);
        rows.Add((DrawingText.StopHole(bracket.Stop.Name), [ToleranceFrame.Draw(Characteristic.Position, "Ø" + _value.RoundedDown(stop.Position), all)]));
        if (!scene.Flat.Bends.IsEmpty)
        {
            rows.Add((
                DrawingText.SeatFace,
                [
                    ToleranceFrame.Draw(Characteristic.SurfaceProfile, _value.RoundedDown(stop.Profile), all),
                    ToleranceFrame.Draw(Characteristic.Angularity, $"{_value.RoundedDown(stop.Angularity)}/{_value.Diameter(stop.SeatDiameter)}", all),
                ]));
        }

        const double gap = 3, step = ToleranceFrame.Height + 1.5;
        var indent = rows.Max(r => SheetFont.Of(FontWeight.Regular).Width(r.Label, TextHeight.Small)) + gap;
        var block = Sheet.Notes.Paragraph(DrawingText.Geometrical(scene.Units), 120, weight: FontWeight.Bold);
        block = SheetBlock.Around(block.Items);
        var y = block.Bounds.Min.Y - 2;
        foreach (var (label, frames) in rows)
        {
            block = block.And(SheetBlock.Around([new TextItem(label, new(0, y - ToleranceFrame.Height / 2 - TextHeight.Small / 2), TextHeight.Small)]));
            var x = indent;
            foreach (var frame in frames)
            {
                block = block.And(frame.UpperLeftAt(new(x, y)));
                x += frame.Bounds.Width + gap;
            }

            y -= step;
        }

        return block;
    }

    /// <summary>The notes on the whole part, numbered.</summary>
    public SheetBlock PartNotes(double width, bool withFlat = false) => Sheet.Notes.Numbered(
        DrawingText.NotesHeading,
        [
            .. DrawingText.PartNotes(scene.Solution, scene.Bracket, ToleranceClass).Select(_value.Styled),
            .. withFlat ? FlatText : [],
            WarningText.Note(scene.Solution.Verdict),
            .. remark is null ? Array.Empty<string>() : [remark],
        ],
        width);

    /// <summary>The notes on cutting and bending, numbered.</summary>
    public SheetBlock FlatNotes(double width) => Sheet.Notes.Numbered(DrawingText.FlatNotesHeading, [.. FlatText], width);

    private IEnumerable<string> FlatText
    {
        get
        {
            var corner = scene.FlatDatum - scene.Flat.Blank.Outline.Bounds.Min;
            return DrawingText.FlatNotes(scene.Solution, scene.Bracket, options.WithKerfCompensated, $"({_value.Length(corner.X)}; {_value.Length(corner.Y)})").Select(_value.Styled);
        }
    }

    /// <summary>The safety note in its frame.</summary>
    public static SheetBlock Safety(double width) => WarningBlocks.Boxed(DrawingText.Safety, [string.Join(" ", Cautions.All)], width, Ink.Black);
}
