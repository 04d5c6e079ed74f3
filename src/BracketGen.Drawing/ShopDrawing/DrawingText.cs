using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf.Format;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Text;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;
using BracketGen.Units;
using BracketGen.Words;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>What a bracket's drawing says in words: title block, tables, notes, warnings.</summary>
internal sealed class DrawingText(BracketScene scene, DrawingOptions options, string? remark)
{
    private readonly ValueFormat _value = scene.Value;

    private Job Job => scene.Solution.Job;

    /// <summary>The title block for one of <paramref name="sheets"/> sheets.</summary>
    public SheetBlock Title(PageFormat format, string scale, int sheet, int sheets) => new TitleBlock
    {
        Owner = Job.Shop.Name,
        Title = Job.Document.Title,
        SupplementaryTitle = $"{Job.Vehicle.Name}, throttle body {Job.Body.Name}",
        Number = Job.Document.PartNumber,
        Revision = Job.Document.Revision,
        Date = Job.Document.Date,
        Creator = Job.Document.Creator ?? "",
        Approver = Job.Document.Approver ?? "",
        DocumentType = "Part drawing",
        Scale = scale,
        Units = scene.Units,
        Projection = Job.Document.Projection == Design.Inputs.Projection.FirstAngle ? Sheet.Projection.FirstAngle : Sheet.Projection.ThirdAngle,
        GeneralTolerances = $"ISO 2768-m; ISO 9013, class {ToleranceClass}",
        Material = $"{scene.Bracket.Stock.Material.Designation}, {_value.WithUnit(scene.Thickness)}",
        Finish = "as agreed",
        Mass = Mass,
        Sheet = sheet,
        Sheets = sheets,
    }.Draw(format);

    private int ToleranceClass => CuttingLimits.ToleranceClass(Job.Shop.Process);

    private string Mass => Job.Units.Write(Quantity.Mass, scene.Bracket.Mass);

    /// <summary>The hole table.</summary>
    public SheetBlock Holes() => SheetTable.Draw(
        "Holes, from the lower left corner", PartTables.HoleHeads, PartTables.Holes(scene.Bracket, Job.Vehicle.Cable.OuterEnd, _value), [1, 2], maximumWidth: 46);

    /// <summary>The bend table, its entries wrapped until it is no wider than a width if they can be; null for a flat plate.</summary>
    public SheetBlock? Bends(double width)
    {
        if (scene.Flat.Bends.IsEmpty)
        {
            return null;
        }

        var (header, rows) = PartTables.Bends(scene.Bracket, _value);
        var tables = ((double[])[44, 34, 26, 20]).Select(w => SheetTable.Draw("Bends", header, rows, [2, 4], maximumWidth: w)).ToArray();
        return tables.FirstOrDefault(t => t.Bounds.Width <= width) ?? tables[^1];
    }

    /// <summary>The notes, numbered.</summary>
    public SheetBlock Notes(double width)
    {
        var bends = scene.Flat.Bends;
        var process = Job.Shop.Process switch
        {
            CuttingProcess.Laser => "laser",
            CuttingProcess.Plasma => "plasma",
            _ => "water jet",
        };
        List<string> notes =
        [
            $"Lengths in {(scene.Units == UnitSystem.Inch ? "inches" : "mm")}. Untoleranced dimensions ISO 2768-m; {process} cut edges ISO 9013, tolerance class {ToleranceClass}.",
            $"Deburr. Break sharp edges {_value.Length(0.3)}.",
            $"Material {scene.Bracket.Stock.Material.Designation}; mass {Mass}, bare. Finish as agreed.",
            options.WithKerfCompensated
                ? $"The contour is the finished edge. Only flat-pattern-kerf.dxf is compensated, for a kerf of {KerfText.Fine(Job.Shop.Kerf, Job.Units).Replace(' ', '\u00A0')}: no compensation at the machine with it."
                : "The contour is the finished edge: kerf is not compensated.",
            "Outline: arcs about the holes as tabled, joined by their common tangents"
                + (bends.IsEmpty ? "." : "; square across the bends."),
            "Marks of the cut file (part number, bend ends): engraved on the side seen in the flat pattern, or left out.",
            $"The seat of the outer is the side marked S: the {(scene.Bracket.SeatOnTop ? "side seen" : "far side")} in the flat pattern.",
        ];
        if (!bends.IsEmpty)
        {
            notes.Insert(2, bends.Length == 1 || AreParallel(bends)
                ? "Grain direction across the bend."
                : $"Grain direction across bend {BracketScene.NameOf(0)}.");
            notes.Insert(3, $"Bend allowance: {string.Join("; ", bends.Select(b => b.Rule.Name).Distinct())}. Bend a test strip first. UP is towards the eye.");
        }

        if (remark is not null)
        {
            notes.Add(remark);
        }

        return Sheet.Notes.Numbered("Notes", notes, width);
    }

    private static bool AreParallel(ImmutableArray<Bend> bends) => bends.All(b => Math.Abs(b.Along.Cross(bends[0].Along)) < 1e-6);

    /// <summary>The safety note in its frame.</summary>
    public static SheetBlock Safety(double width) => Boxed("Safety", [string.Join(" ", Cautions.All)], width, Ink.Black);

    /// <summary>The failed safety checks in large type; null where there is none.</summary>
    public SheetBlock? Dangers(double width, double height = TextHeight.Normal)
    {
        var dangers = scene.Solution.Dangers.ToList();
        if (dangers.Count == 0)
        {
            return null;
        }

        // One or two stand in large type with all they say; of more, the headline counts them.
        const double gap = 3;
        if (dangers.Count > 2)
        {
            return WarningBox.Draw($"{dangers.Count} SAFETY CHECKS FAILED", [.. dangers.Select(d => $"{Finding(d)}. {d.Consequence}")], width, height);
        }

        return dangers
            .Select(d => WarningBox.Draw($"SAFETY CHECK FAILED: {Finding(d)}", [d.Consequence()], width, height))
            .Aggregate((upper, lower) => upper.And(lower.UpperLeftAt(new(upper.Bounds.Min.X, upper.Bounds.Min.Y - gap))));
    }

    /// <summary>The other failed checks; null where there is none.</summary>
    public SheetBlock? Failures(double width)
    {
        var failed = Failed.ToList();
        return failed.Count == 0 ? null : Failures(failed, width);
    }

    /// <summary>The same in as many boxes as it takes for none to be higher than a height.</summary>
    public IEnumerable<SheetBlock> Failures(double width, double height)
    {
        var waiting = new Queue<Check>(Failed);
        while (waiting.Count > 0)
        {
            List<Check> taken = [waiting.Dequeue()];
            while (waiting.TryPeek(out var next) && Failures([.. taken, next], width).Bounds.Height <= height)
            {
                taken.Add(waiting.Dequeue());
            }

            yield return Failures(taken, width);
        }
    }

    private IEnumerable<Check> Failed => scene.Solution.Checks.Where(c => !c.Passes && !c.IsDanger);

    private SheetBlock Failures(IReadOnlyList<Check> failed, double width) =>
        Boxed("Checks not passed", [.. failed.Select(c => $"{Finding(c)}. {c.Consequence()}")], width, Ink.Warning);

    private string Finding(Check check) =>
        $"{check.Title()}: {CheckText.Value(check, Job.Units)} (limit: {CheckText.Limit(check, Job.Units)})";

    private static SheetBlock Boxed(string heading, IReadOnlyList<string> paragraphs, double width, Ink ink)
    {
        const double padding = 2, height = TextHeight.Small;
        var inner = width - 2 * padding;
        var y = -padding;
        List<SheetItem> items = [];
        var blocks = paragraphs.Select(p => Sheet.Notes.Paragraph(p, inner, height, ink: ink))
            .Prepend(Sheet.Notes.Paragraph(heading, inner, height, FontWeight.Bold, ink));
        foreach (var block in blocks)
        {
            items.AddRange(block.UpperLeftAt(new(padding, y)).Items);
            y -= block.Bounds.Height + 0.4;
        }

        var box = new Bounds(new(0, y - padding + 1.2), new(width, 0));
        items.Add(Polyline.Rectangle(box, ink == Ink.Warning ? LineKind.Warning : LineKind.Box));
        return new([.. items], box.Grow(0.5));
    }
}
