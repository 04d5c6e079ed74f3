using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;

namespace BracketGen.Drawing.Report;

/// <summary>Which part, which revision, which program.</summary>
internal static class PageFooter
{
    /// <summary>Version of the program.</summary>
    public static string ProgramVersion { get; } = typeof(PageFooter).Assembly.GetName().Version?.ToString(3) ?? "";

    public static void Write(HtmlWriter html, ReportScene scene)
    {
        using var footer = html.Open("footer");
        if (Identity(scene.Job.Document) is { Length: > 0 } identity)
        {
            html.Line("p", identity);
        }

        html.Line("p", $"{(scene.Job.Document.Date is null ? "Date of issue not given. " : "")}Written by BracketGen {ProgramVersion}. The drawing and the cut file hold for making the part; this page explains it.");
    }

    /// <summary>Part number, revision, date and people, as far as the job gives them.</summary>
    public static string Identity(DocumentData document) => string.Join(" · ", new[]
    {
        Named("Part ", document.PartNumber),
        Named("revision ", document.Revision),
        Named("issued ", document.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        Named("drawn by ", document.Creator),
        Named("approved by ", document.Approver),
    }.OfType<string>());

    private static string? Named(string name, string? value) => string.IsNullOrWhiteSpace(value) ? null : name + value.Trim();
}
