using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;

namespace BracketGen.Drawing.Report;

/// <summary>A section of the report.</summary>
/// <param name="Id">Anchor: a short name that stays the same from version to version.</param>
/// <param name="Heading">Heading, also in the list of contents.</param>
/// <param name="Write">Writes what stands under the heading.</param>
/// <param name="Has">Whether this report has it; null for always.</param>
internal sealed record ReportSection(string Id, string Heading, Action<HtmlWriter, ReportScene> Write, Func<ReportScene, bool>? Has = null);
