using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Drawing.Report;
using BracketGen.Drawing.Setup;
using BracketGen.Drawing.Sheet;
using BracketGen.Profiles;
using BracketGen.TestSupport;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Tests.Setup;

/// <summary>The vehicle's other cables on the set-up sheet and in the report.</summary>
public class OtherCableSheetTests
{
    private static readonly Solution Answer = Designer.Solve(Job("dunlin-tourer-alder-58"), SearchEffort.WithoutStrength);

    private static Job Job(string name) => ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", name + ".toml"), new DiskFileSource()).Value!;

    private static string Words(Solution solution)
    {
        var pages = SetupSheet.Compose(solution, PageFormat.A4);
        Assert.All(pages, page => Assert.Empty(SheetAudit.Check(page).Select(f => f.Message)));
        return string.Join(' ', pages.SelectMany(p => p.Items).OfType<TextItem>().Select(t => t.Text)).Replace('\u00A0', ' ');
    }

    [Fact]
    public void The_set_up_sheet_says_which_cable_is_left_out_and_how_to_lay_it_by()
    {
        var text = Words(Answer);
        var cable = Answer.Job.Vehicle.OtherCables[0];
        Assert.All(
            [OtherCableText.Which(cable), OtherCableText.Account(Answer.Job, cable), .. OtherCableText.Steps(Answer.Job, cable), OtherCableText.Check(Answer.Job)!],
            said => Assert.Contains(said, text, StringComparison.Ordinal));
    }

    [Fact]
    public void It_says_how_to_fit_a_cable_that_works_in_a_groove_of_its_own()
    {
        var twin = Designer.Solve(Job("dunlin-tourer-alder-58-twin"), SearchEffort.WithoutStrength);
        var text = Words(twin);
        var cable = twin.Job.Vehicle.OtherCables[0];
        Assert.All(
            [OtherCableText.Account(twin.Job, cable), .. OtherCableText.Steps(twin.Job, cable), OtherCableText.CheckTogether(twin.Job)!],
            said => Assert.Contains(said, text, StringComparison.Ordinal));
        Assert.DoesNotContain("lay it by", text, StringComparison.OrdinalIgnoreCase);
        var open = Designer.Solve(twin.Job with { CableUses = [twin.Job.CableUses[0] with { HeldBy = null }] }, SearchEffort.WithoutStrength);
        Assert.Contains("SAFETY CHECK FAILED: Stop for the outer of the cable", Words(open), StringComparison.Ordinal);
        Assert.DoesNotContain(JobFiles.Of(open, [], new(DxfVersion.R2000, null, null)).Written, f => f.Name.EndsWith(".dxf", StringComparison.Ordinal));
    }

    [Fact]
    public void A_gearbox_without_its_cable_stands_in_large_type()
    {
        var job = Answer.Job with { Vehicle = Answer.Job.Vehicle with { OtherCables = [new("gearbox", CableDuty.KickDown, "gearbox")] }, CableUses = [] };
        var solution = Designer.Solve(job, SearchEffort.WithoutStrength);
        Assert.Contains("SAFETY CHECK FAILED: Kick-down cable \"gearbox\"", Words(solution), StringComparison.Ordinal);
        var files = JobFiles.Of(solution, [], new(DxfVersion.R2000, null, null));
        Assert.DoesNotContain(files.Written, f => f.Name.EndsWith(".dxf", StringComparison.Ordinal));
    }

    [Fact]
    public void The_report_has_a_section_for_them_only_where_there_are_some()
    {
        var with = ReportParts.Of(Answer, []).Parts.ToDictionary(p => p.Id, p => p.Html);
        Assert.Contains("vacuum actuator on the left inner wing", with["cables"], StringComparison.Ordinal);
        var without = Answer with { Job = Answer.Job with { Vehicle = Answer.Job.Vehicle with { OtherCables = [] } } };
        Assert.DoesNotContain("cables", ReportParts.Of(without, []).Parts.Select(p => p.Id));
    }
}
