using System.Collections.Immutable;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>The shop drawing of a bracket: formed views, flat pattern, tables, notes, a picture of it as fitted, and a template to cut out.</summary>
public static class BracketDrawing
{
    /// <summary>Nobody glues more sheets together than this.</summary>
    private const int MostTemplateSheets = 12;

    /// <summary>
    /// The sheets of the drawing on the paper that option or job ask for, or else on A3, ANSI B where the job is in inches; then the order of bends, where one was found, what
    /// the strength calculation found, where there is one, and the 1:1 template on A4 or ANSI A. On small paper the views and the words
    /// spread over more sheets: nothing is written smaller. The same solution gives the same sheets.
    /// </summary>
    /// <remarks>
    /// Views: ISO 5456-2 in the job's projection, ISO 5456-3 for the isometric one. Dimensions: ISO 129-1. Scales: ISO 5455. Title
    /// block: ISO 7200. A template of more than twelve sheets is left out, and a note says so. Failed safety checks stand on it in large type.
    /// </remarks>
    /// <exception cref="ArgumentException">The solution has no bracket to draw.</exception>
    public static ImmutableArray<SheetPage> Compose(Solution solution, DrawingOptions options)
    {
        if (solution.Bracket is not { } bracket)
        {
            throw new ArgumentException(DrawingText.NoBracket, nameof(solution));
        }

        var scene = new BracketScene(solution, bracket);
        var format = options.FormatFor(solution.Job);
        var template = options.WithTemplate ? new Template(scene, format) : null;
        string? remark = null;
        if (template?.SheetCount > MostTemplateSheets)
        {
            remark = DrawingText.TemplateLeftOut(template.SheetCount);
            template = null;
        }

        var main = new MainSheets(scene, options, remark);
        var bends = bracket.Plan is { Steps.IsEmpty: false } plan ? new BendSheet(scene, plan).Compose(format, main.TitleRoom(format)) : [];
        var drafts = new FittedSheet(scene).Add(format, main.TitleRoom(format), main.Compose(format), bends);

        if (solution.Strength is { } strength)
        {
            drafts = drafts.AddRange(new StrengthSheet(scene, strength).Compose(format, main.TitleRoom(format)));
        }

        var ring = RingShape.Of(solution.Job.Body.Mount);
        if (ring is not null)
        {
            drafts = drafts.Add(new RingSheet(scene, ring).Compose(format, main.TitleRoom(format)));
        }

        var ofRing = template is null || ring is null ? null : new Template(scene, format, ring);
        var sheets = drafts.Length + (template?.SheetCount ?? 0) + (ofRing?.SheetCount ?? 0);
        return
        [
            .. drafts.Select((d, i) => main.Finish(format, d, i + 1, sheets)),
            .. template?.Draw(drafts.Length + 1, sheets) ?? [],
            .. ofRing?.Draw(drafts.Length + template!.SheetCount + 1, sheets) ?? [],
        ];
    }
}
