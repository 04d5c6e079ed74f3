using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.SheetMetal;
using BracketGen.Words;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.Setup;

/// <summary>The set-up sheet: what is needed to fit the bracket, in which order, what to set, and what to check before the first start.</summary>
/// <remarks>The same solution gives the same sheets.</remarks>
public static class SetupSheet
{
    /// <summary>Height of a block (mm) that any sheet takes.</summary>
    private const double MostHeight = 200;

    private const double Margin = 4, Gap = 4.5;

    /// <summary>The sheets, in the job's unit. Failed safety checks stand on the first of them in large type.</summary>
    /// <param name="solution">A solution with a bracket.</param>
    /// <param name="format">Sheet, upright.</param>
    /// <exception cref="ArgumentException">The solution has no bracket to fit.</exception>
    public static ImmutableArray<SheetPage> Compose(Solution solution, PageFormat format)
    {
        if (solution.Bracket is not { } bracket)
        {
            throw new ArgumentException("There is no bracket to fit: none could be shaped for this job.", nameof(solution));
        }

        var scene = new BracketScene(solution, bracket);
        var drawing = new DrawingText(scene, DrawingOptions.Standard, null);
        var words = new SetupWords(solution.Job.Units);
        var hardware = new SetupHardware(solution, bracket, words);
        var settings = new SetupSettings(solution, words);
        var flow = new PageFlow(format, Margin);
        var width = flow.Width;

        if (drawing.Dangers(width) is { } dangers)
        {
            flow.Add(dangers.Bounds.Height <= MostHeight ? dangers : drawing.Dangers(width, TextHeight.Small)!, Gap);
        }

        flow.Add(WarningBox.Draw("Safety", Cautions.All, width, TextHeight.Small), Gap);
        foreach (var failures in drawing.Failures(width, MostHeight))
        {
            flow.Add(failures, Gap);
        }

        Section("Parts", [hardware.Parts(), PictureAndTorque(scene, hardware, width)]);
        Section("Fitting", Numbered([.. new SetupSteps(solution, bracket, hardware, words).All()], width), 1);
        flow.Break();
        Section("Setting", [settings.Table(width)]);
        var checks = new SetupChecks(solution, settings);
        Heading("Checks before the first start");
        flow.Add(Notes.Paragraph(SetupChecks.Hot, width), 1.5, keepWithNext: true);
        foreach (var (text, i) in checks.All().Select((text, i) => (text, i)))
        {
            flow.Add(SetupChecks.Row(i + 1, text, width), 0);
        }

        flow.Add(SetupChecks.Readings(width), 2);
        flow.Add(Notes.Paragraph("Give these readings to the command «fitted»: it says what they mean and which turn of the adjuster mends them.", width), Gap);
        Section("Where the torques come from", [Stacked([.. hardware.TorqueNotes().Select(n => Notes.Paragraph(n, width))])]);
        return flow.Pages((sheet, sheets) => Head(solution, width, sheet, sheets));

        void Section(string title, IReadOnlyList<SheetBlock> blocks, double gap = Gap)
        {
            Heading(title);
            for (var i = 0; i < blocks.Count; i++)
            {
                flow.Add(blocks[i], i + 1 < blocks.Count ? gap : Gap);
            }
        }

        void Heading(string title) => flow.Add(Notes.Paragraph(title, width, TextHeight.Normal, FontWeight.Bold), 1.5, keepWithNext: true);
    }

    private static SheetBlock Head(Solution solution, double width, int sheet, int sheets)
    {
        var document = solution.Job.Document;
        var date = document.Date is { } d ? ", " + d.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "";
        var revision = document.Revision.Length > 0 ? $", revision {document.Revision}" : "";
        const double tall = 21;
        return new(
            [
                new TextItem("Set-up sheet", new(0, -TextHeight.Large - 1), TextHeight.Large, Weight: FontWeight.Bold),
                new TextItem($"sheet {sheet}/{sheets}", new(width, -TextHeight.Large - 1), TextHeight.Small, TextAlign.Right),
                Line($"{document.PartNumber}{revision}: {document.Title}", -11.5, FontWeight.Bold),
                Line($"{solution.Job.Vehicle.Name}, throttle body {solution.Job.Body.Name}. {solution.Job.Shop.Name}{date}", -16, FontWeight.Regular),
                new Stroke(new Vector2(0, -18), new(width, -18), LineKind.Rule),
            ],
            new(new(0, -tall), new(width, 0)));

        // The head must stay of one height whatever the names are.
        TextItem Line(string text, double y, FontWeight weight)
        {
            var height = TextHeight.Small;
            while (SheetFont.Of(weight).Width(text, height) > width)
            {
                height *= 0.95;
            }

            return new(text, new(0, y), height, Weight: weight);
        }
    }

    private static SheetBlock PictureAndTorque(BracketScene scene, SetupHardware hardware, double width)
    {
        var table = hardware.TorqueTable().UpperRightAt(new(width, 0));
        var room = width - table.Bounds.Width - 6;
        var picture = SetupPicture.Draw(scene, new(room, 36));
        picture = picture.UpperLeftAt(new(Math.Max(0, (room - picture.Bounds.Width) / 2), 0));
        var block = picture.And(table);
        return block with { Bounds = new(new(0, block.Bounds.Min.Y), new(width, 0)) };
    }

    private static SheetBlock Stacked(IReadOnlyList<SheetBlock> blocks) => blocks.Aggregate(
        (upper, lower) => upper.And(lower.UpperLeftAt(new(upper.Bounds.Min.X, upper.Bounds.Min.Y - 1))));

    private static SheetBlock[] Numbered(IReadOnlyList<string> texts, double width)
    {
        const double indent = 8;
        return
        [
            .. texts.Select((text, i) =>
            {
                var words = Notes.Paragraph(text, width - indent).Shift(new(indent, 0));
                var number = new TextItem($"{i + 1}.", new(0, -TextFlow.Ascent * TextHeight.Small), TextHeight.Small, Weight: FontWeight.Bold);
                return new SheetBlock([number, .. words.Items], new(new(0, words.Bounds.Min.Y), new(width, 0)));
            }),
        ];
    }
}
