using BracketGen.Design.Study;
using BracketGen.Drawing.Report;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.Report;

/// <summary>The page in a browser: worked by keyboard and pointer, with and without script, and looked over by axe-core.</summary>
public class ReportBrowserTests
{
    [SkippableTheory]
    [InlineData("plover-alder-58")]
    [InlineData("no bracket")]
    public void A_browser_finds_nothing_amiss(string name)
    {
        var chromium = OutsideTool.Require("chromium", "chromium-browser");
        var node = OutsideTool.Require("node", "nodejs");
        var tests = RepositoryRoot.PathOf("tests", "browser");
        OutsideTool.Require(Path.Combine(tests, "node_modules", "playwright-core", "package.json"));
        var folder = Directory.CreateTempSubdirectory("bracketgen-report-").FullName;
        try
        {
            var page = Path.Combine(folder, "report.html");
            File.WriteAllBytes(page, JobReport.Write(ReportCases.All.Single(c => c.Name == name).Solution, []));
            var said = node.RunOrFail([Path.Combine(tests, "report.mjs"), chromium.FilePath, page]);
            Assert.True(said.Length == 0, said);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
