using System.Text;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report.Scene;

namespace BracketGen.Drawing.Report;

/// <summary>The report of one job: a page of HTML that holds everything it shows.</summary>
public static class JobReport
{
    /// <summary>The bytes of report.html, the same for the same solution.</summary>
    /// <remarks>
    /// One file without any reference to another or to the network; its own content security policy forbids both, and any script but
    /// the page's own. Without script it shows the same texts, tables, charts and still pictures.
    /// </remarks>
    /// <param name="solution">The solution; it may lack bracket, mechanism, sensor and offers.</param>
    /// <param name="allowed">Failed safety checks that the user allowed by name.</param>
    public static byte[] Write(Solution solution, IReadOnlyList<string> allowed) =>
        Encoding.UTF8.GetBytes(ReportPage.Compose(new ReportScene(solution, allowed)));

    /// <summary>The report of a bracket that is there already; null where it does not go on, so that nothing of it was solved.</summary>
    /// <param name="tried">The bracket, tried on its job.</param>
    public static byte[]? Write(TriedBracket tried) => tried.Trial.Solution is { } solution
        ? Encoding.UTF8.GetBytes(ReportPage.Compose(new ReportScene(solution, []) { Tried = tried }))
        : null;
}
