using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Words.Checks;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>What failed, in frames: drawing and set-up sheet carry the same.</summary>
/// <param name="solution">The solution.</param>
/// <param name="value">How the sheet writes its lengths.</param>
internal sealed class WarningBlocks(Solution solution, ValueFormat value)
{
    /// <summary>The failed safety checks, or what is to be proven, in large type; null if the verdict is neither.</summary>
    public SheetBlock? Headline(double width, double height = TextHeight.Normal)
    {
        var dangers = solution.Dangers.ToList();
        if (dangers.Count == 0)
        {
            return IsNotProven ? WarningBox.Draw(VerdictText.Banner(solution.Verdict.Kind), VerdictText.ToProve(solution.Verdict), width, height) : null;
        }

        // One or two stand in large type with all they say; of more, the headline counts them.
        const double gap = 3;
        if (dangers.Count > 2)
        {
            return WarningBox.Draw(WarningText.Headline(dangers.Count), [.. dangers.Select(Line)], width, height);
        }

        return dangers
            .Select(d => WarningBox.Draw(value.Styled(WarningText.Headline(d, solution.Job.Units)), [value.Styled(d.Consequence())], width, height))
            .Aggregate((upper, lower) => upper.And(lower.UpperLeftAt(new(upper.Bounds.Min.X, upper.Bounds.Min.Y - gap))));
    }

    /// <summary>The headline alone, for sheets after the first; null if there is none.</summary>
    public SheetBlock? SeeSheetOne(double width)
    {
        var dangers = solution.Dangers.Count();
        return dangers > 0 ? WarningBox.Draw(WarningText.Headline(dangers), [DrawingText.SeeSheetOne], width)
            : IsNotProven ? WarningBox.Draw(VerdictText.Banner(solution.Verdict.Kind), [DrawingText.SeeSheetOne], width)
            : null;
    }

    /// <summary>The other failed checks, and what is not known if the headline does not say it; null if there is none.</summary>
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

    /// <summary>A heading and paragraphs in a frame.</summary>
    public static SheetBlock Boxed(string heading, IReadOnlyList<string> paragraphs, double width, Ink ink)
    {
        const double padding = 2, height = TextHeight.Small;
        var inner = width - 2 * padding;
        var y = -padding;
        List<SheetItem> items = [];
        var blocks = paragraphs.Select(p => Notes.Paragraph(p, inner, height, ink: ink))
            .Prepend(Notes.Paragraph(heading, inner, height, FontWeight.Bold, ink));
        foreach (var block in blocks)
        {
            items.AddRange(block.UpperLeftAt(new(padding, y)).Items);
            y -= block.Bounds.Height + 0.4;
        }

        var box = new Bounds(new(0, y - padding + 1.2), new(width, 0));
        items.Add(Polyline.Rectangle(box, ink == Ink.Warning ? LineKind.Warning : LineKind.Box));
        return new([.. items], box.Grow(0.5));
    }

    private bool IsNotProven => solution.Verdict.Kind == VerdictKind.NotProven;

    // What is mere advice comes last.
    private IEnumerable<Check> Failed => solution.Checks.Where(c => c.Fails ? !c.IsDanger : !c.Passes && !IsNotProven).OrderBy(c => c.Kind == CheckKind.Advice ? 2 : c.Fails ? 0 : 1);

    private SheetBlock Failures(IReadOnlyList<Check> failed, double width)
    {
        var isAdvice = failed.All(c => c.Kind == CheckKind.Advice);
        return Boxed(isAdvice ? WarningText.Advice : WarningText.OtherChecks(failed.Any(c => !c.Fails)), [.. failed.Select(Line)], width, isAdvice ? Ink.Black : Ink.Warning);
    }

    private string Line(Check check) => value.Styled(WarningText.Line(check, solution.Job.Units));
}
