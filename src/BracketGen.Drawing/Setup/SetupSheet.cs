using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Drawing.Fitted;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Drawing.Views;
using BracketGen.Words;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;
using BracketGen.Words.SetupSheet;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Setup;

/// <summary>The set-up sheet: what is needed to fit the bracket, in which order, what to set, and what to check before the first start.</summary>
/// <remarks>The same solution gives the same sheets.</remarks>
public static class SetupSheet
{
    /// <summary>Height of a block (mm) that any sheet takes.</summary>
    private const double MostHeight = 200;

    private const double Margin = 4, Gap = 4.5;

    /// <summary>The sheets, in the job's unit. Failed safety checks, or what is to be proven, stand on the first of them in large type.</summary>
    /// <param name="solution">A solution with a bracket.</param>
    /// <param name="format">Sheet, upright.</param>
    /// <exception cref="ArgumentException">The solution has no bracket to fit.</exception>
    public static ImmutableArray<SheetPage> Compose(Solution solution, PageFormat format)
    {
        if (solution.Bracket is not { } bracket)
        {
            throw new ArgumentException(SetupText.NoBracket, nameof(solution));
        }

        var scene = new BracketScene(solution, bracket);
        var warnings = new WarningBlocks(solution, ValueFormat.Tabled(solution.Job.Units));
        var hardware = new SetupHardware(solution, bracket);
        var settings = new SetupSettings(solution);
        var flow = new PageFlow(format, Margin);
        var width = flow.Width;

        if (warnings.Headline(width) is { } dangers)
        {
            flow.Add(dangers.Bounds.Height <= MostHeight ? dangers : warnings.Headline(width, TextHeight.Small)!, Gap);
        }

        flow.Add(WarningBox.Draw(SetupText.Safety, Cautions.All, width, TextHeight.Small), Gap);
        flow.Add(Notes.Paragraph(WarningText.Note(solution.Verdict), width, weight: FontWeight.Bold), Gap);
        Section(FittedText.Heading, [Fitted(scene, width)]);
        foreach (var failures in warnings.Failures(width, MostHeight))
        {
            flow.Add(failures, Gap);
        }

        Section(SetupText.Parts, [Parts(hardware), Torques(hardware)]);
        Section(SetupText.Fitting, Numbered([.. new SetupSteps(solution, bracket, hardware).All()], width), 1);
        foreach (var cable in solution.Job.Vehicle.OtherCables)
        {
            Heading(OtherCableText.Which(cable));
            SheetBlock[] account = [Notes.Paragraph(OtherCableText.Account(solution.Job, cable), width), .. Numbered([.. OtherCableText.Steps(solution.Job, cable)], width)];
            foreach (var (block, i) in account.Select((block, i) => (block, i)))
            {
                flow.Add(block, i + 1 < account.Length ? 1 : Gap);
            }
        }

        flow.Break();
        Section(SetupText.Setting, [Settings(settings, width)]);
        var checks = new SetupChecks(solution, settings);
        Heading(SetupText.Checks);
        flow.Add(Notes.Paragraph(SetupChecks.Hot, width), 1.5, keepWithNext: true);
        foreach (var (text, i) in checks.All().Select((text, i) => (text, i)))
        {
            flow.Add(SetupBoxes.Row(i + 1, text, width), 0);
        }

        flow.Add(SetupBoxes.Readings(width), 2);
        flow.Add(Notes.Paragraph(SetupText.GiveReadings, width), Gap);
        Section(SetupText.TorqueSources, [Stacked([.. hardware.TorqueNotes().Select(n => Notes.Paragraph(n, width))])]);
        if (solution.Mechanism?.Return is { } study)
        {
            Heading(FailureText.Heading);
            flow.Add(Notes.Paragraph(FailureText.Intro, width), 1.5, keepWithNext: true);
            flow.Add(Failures(study, solution, width), Gap);
        }

        return flow.Pages((sheet, sheets) => SheetHead.Draw(solution, SetupText.Title, width, sheet, sheets));

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

    private static SheetBlock Parts(SetupHardware hardware) => SheetTable.Draw("", SetupHardware.PartHeads, hardware.Parts(), [0, 1], maximumWidth: 50);

    private static SheetBlock Settings(SetupSettings settings, double width)
    {
        const double what = 34, value = 40, padding = 2 * 0.7 * TextHeight.Small;
        var how = width - what - value - 3 * padding;
        return SheetTable.Draw(
            "", SetupSettings.Heads,
            [.. settings.Rows().Select(r => (IReadOnlyList<string>)[Wrapped(r.What, what), Wrapped(r.Value, value), Wrapped(r.How, how)])], maximumWidth: how);
    }

    // Texts are wrapped by hand, so that the last column takes what the others leave of the sheet.
    private static SheetBlock Failures(ReturnStudy study, Solution solution, double width)
    {
        const double what = 32, answer = 17, room = 50;
        SheetBlock With(double keeps) => SheetTable.Draw(
            "", [.. FailureText.Heads.SkipLast(1), Wrapped(FailureText.Heads[^1], 0.9 * keeps)],
            [
                .. FailureText.Rows(study, solution.Job.Vehicle.Cable.OuterEnd, solution.Job.Units)
                    .Select(r => (IReadOnlyList<string>)[Wrapped(r[0], what), r[1], Wrapped(r[2], answer), r[3], r[4], Wrapped(r[5], keeps)]),
            ],
            [3, 4]);
        return With(room + width - With(room).Bounds.Width - 1);
    }

    private static string Wrapped(string text, double room) => string.Join('\n', TextFlow.Wrap(text, room, TextHeight.Small));

    private static SheetBlock Torques(SetupHardware hardware) => SheetTable.Draw("", SetupHardware.TorqueHeads, hardware.Torques(), [1, 2, 3], maximumWidth: 32);

    /// <summary>The bracket in its place, what is seen there to its left.</summary>
    private static SheetBlock Fitted(BracketScene scene, double width)
    {
        const double words = 42, tall = 78;
        var fitted = FittedPicture.Of(scene.Solution);
        var seen = Notes.Paragraph(fitted.Seen, words);
        var room = width - words - Gap;
        var picture = fitted.DrawIn(new(room, tall));
        var block = seen.And(picture.UpperRightAt(new(width - (room - picture.Bounds.Width) / 2, 0)));
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
