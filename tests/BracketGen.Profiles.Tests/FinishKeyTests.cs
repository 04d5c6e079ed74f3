using BracketGen.Profiles.Errors;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles.Tests;

/// <summary>The finish of a shop's materials and of a job.</summary>
public class FinishKeyTests
{
    private static ProfileResult<Design.Inputs.Job> InShop(string designation, string finish) =>
        Samples.ReadWith(Samples.Shop, $"designation = \"{designation}\"\n", $"designation = \"{designation}\"\nfinish = {finish}\n");

    private static Finish Of(Design.Inputs.Job job, string designation) => job.Shop.Stock.First(s => s.Material.Designation == designation).Material.Finish;

    [Fact]
    public void A_material_has_its_finish_and_another_is_not_stated()
    {
        var job = InShop("DC01", "{ kind = \"zinc plated\", thickness = \"8 um\" }");
        Assert.NotEmpty(job.Errors); // Micrometres are no unit here.
        job = InShop("DC01", "{ kind = \"zinc plated\", thickness = 0.008 }");
        Assert.Equal(new Finish(FinishKind.Zinc, 0.008), Of(job.Value!, "DC01"));
        Assert.Equal(Finish.NotStated, Of(job.Value!, "S235JR"));
    }

    [Fact]
    public void A_job_s_finish_goes_before_that_of_the_material()
    {
        var files = Samples.Edit(
            Samples.Edit(Samples.Files, Samples.Shop, Samples.Texts[Samples.Shop], "designation = \"DC01\"\n", "designation = \"DC01\"\nfinish = { kind = \"bare\" }\n"),
            Samples.Job, Samples.Texts[Samples.Job], "units = \"mm\"\n", "units = \"mm\"\nfinish = { kind = \"powder coated\", thickness = \"0.004 in\" }\n");
        var job = Samples.ReadJob(files).Value!;
        Assert.Equal(FinishKind.PowderCoat, Of(job, "DC01").Kind);
        Assert.Equal(0.1016, Of(job, "DC01").Thickness, 1e-12);
    }

    [Theory]
    [InlineData("DC01", "{ kind = \"anodised\", thickness = 0.02 }", Contradictory.AnodisedSteel)]
    [InlineData("DC01", "{ kind = \"zinc plated\" }", Contradictory.FinishWithoutThickness)]
    [InlineData("DC01", "{ kind = \"bare\", thickness = 0.02 }", Contradictory.ThicknessOfBare)]
    public void What_cannot_be_is_an_error(string designation, string finish, Contradictory mistake) =>
        Assert.Equal(new Contradiction(mistake), Assert.Single(InShop(designation, finish).Errors).Problem);
}
