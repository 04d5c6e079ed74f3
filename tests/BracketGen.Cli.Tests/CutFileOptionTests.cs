using BracketGen.Cli.Terminal;
using BracketGen.Design.Inputs;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Words.Report;

namespace BracketGen.Cli.Tests;

/// <summary>Release and compensation of the cut file as the user asks for them.</summary>
public class CutFileOptionTests
{
    private const string Job = "plover-alder-58";

    [Fact]
    public void The_release_is_as_asked_and_no_other_than_the_two()
    {
        using var place = new Workplace();
        Assert.Equal(ExitCode.NotProven, place.Make(Job, "--dxf", "r12").ExitCode);
        Assert.Contains("\nAC1009\n", CutFile(place, Workplace.CutFile), StringComparison.Ordinal);
        Assert.Equal(ExitCode.NotProven, place.Make(Job, "--dxf", "r2000").ExitCode);
        Assert.Contains("\nAC1015\n", CutFile(place, Workplace.CutFile), StringComparison.Ordinal);
        var result = place.Make(Job, "--dxf", "r13");
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains("r2000", result.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void The_compensated_file_stands_beside_the_net_one_and_goes_when_no_longer_asked_for()
    {
        using var place = new Workplace();
        var result = place.Make(Job, "--kerf-compensated", "--dxf", "r12");
        Assert.Equal(ExitCode.NotProven, result.ExitCode);
        Assert.Contains($"  wrote {place.Made(Job, Workplace.KerfFile)}\n", result.Output, StringComparison.Ordinal);
        Assert.Contains("half the kerf of 0.200 mm off the finished edge", ScreenText.OneLine(result.Output), StringComparison.Ordinal);
        var file = CutFile(place, Workplace.KerfFile);
        Assert.Contains("\nAC1009\n", file, StringComparison.Ordinal);
        Assert.Contains("COMPENSATED for a kerf of 0.200 mm", file, StringComparison.Ordinal);
        Assert.Contains("The contours are the finished edge: kerf is not compensated.", CutFile(place, Workplace.CutFile), StringComparison.Ordinal);
        var drawing = string.Join(' ', PdfText.Of(place.Made(Job, Workplace.DrawingFile)).Select(w => w.Text));
        Assert.Contains("Only flat-pattern-kerf.dxf is compensated", drawing, StringComparison.Ordinal);
        Assert.Contains("for a kerf of 0.200 mm: switch", drawing, StringComparison.Ordinal); // Wrapped here, where another block may stand between.
        Assert.Contains("compensation off at the machine when you cut from it", drawing, StringComparison.Ordinal);

        Assert.Equal(ExitCode.NotProven, place.Make(Job).ExitCode);
        Assert.False(File.Exists(place.Made(Job, Workplace.KerfFile)));
    }

    [Fact]
    public void A_beam_that_does_not_fit_and_a_kerf_of_nothing_are_refused_and_nothing_is_written()
    {
        using var place = new Workplace();
        place.Edit("shops/saltmarsh-fabrication.toml", "kerf = 0.2", "kerf = 7");
        var wide = place.Make(Job, "--kerf-compensated");
        Assert.Equal(ExitCode.BadInput, wide.ExitCode);
        Assert.Contains("a beam as wide as the kerf of the shop, 7.000 mm, does not fit the contour at (", wide.Errors, StringComparison.Ordinal);
        Assert.Empty(place.OutputFiles());

        place.Edit("shops/saltmarsh-fabrication.toml", "kerf = 7", "kerf = 0");
        var none = place.Make(Job, "--kerf-compensated");
        Assert.Equal(ExitCode.BadInput, none.ExitCode);
        Assert.Contains("the kerf of the shop is 0, so there is nothing to compensate.", none.Errors, StringComparison.Ordinal);
        Assert.Empty(place.OutputFiles());
    }

    [Fact]
    public void Part_text_and_quantity_are_in_both_files_as_asked_and_else_in_none()
    {
        using var place = new Workplace();
        place.Make(Job, "--skip-strength", "--kerf-compensated", "--cut-file-text", "--quantity", "12");
        Assert.All(new[] { Workplace.CutFile, Workplace.KerfFile }, name =>
        {
            var file = CutFile(place, name);
            Assert.Contains("\nPART: PLV-A58-01\n", file, StringComparison.Ordinal);
            Assert.Contains("\nQUANTITY: 12\n", file, StringComparison.Ordinal);
        });
        place.Make(Job, "--skip-strength", "--cut-file-text");
        Assert.Contains("\nQUANTITY: 1\n", CutFile(place, Workplace.CutFile), StringComparison.Ordinal);
        place.Make(Job, "--skip-strength");
        Assert.DoesNotContain("PART_TEXT", CutFile(place, Workplace.CutFile), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--quantity is how many parts to cut: 1 or more.", "--cut-file-text", "--quantity", "0")]
    [InlineData("--quantity is for the text below the part: give --cut-file-text too.", "--quantity", "4")]
    [InlineData("ap242", "--step", "ap203")]
    public void What_cannot_be_is_refused(string says, params string[] options)
    {
        using var place = new Workplace();
        var result = place.Make(Job, options);
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains(says, result.Errors, StringComparison.Ordinal);
        Assert.Empty(place.OutputFiles());
    }

    [Fact]
    public void The_schema_of_the_step_file_is_as_asked()
    {
        using var place = new Workplace();
        place.Make(Job, "--skip-strength", "--step", "ap242");
        Assert.Contains("AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF", CutFile(place, Workplace.StepFile), StringComparison.Ordinal);
        place.Make(Job, "--skip-strength");
        Assert.Contains("AUTOMOTIVE_DESIGN", CutFile(place, Workplace.StepFile), StringComparison.Ordinal);
    }

    [Fact]
    public void Tight_corners_are_named()
    {
        using var place = new Workplace();
        place.Edit("shops/saltmarsh-fabrication.toml", "kerf = 0.2", "kerf = 6");
        place.Edit("jobs/dunlin-rowan-64.toml", "[preferences]", "[preferences]\ncorner_radius = 2");

        // One of the brackets that are offered has an inside corner drawn tighter than the beam.
        var results = new[] { "1", "2", "3", "4" }.Select(number => place.Make("dunlin-rowan-64", "--kerf-compensated", "--skip-strength", "--choice", number));
        Assert.Contains(results, result => ScreenText.OneLine(result.Output).Contains("the beam leaves a radius of 3.000 mm in inside corners that are drawn tighter, at (", StringComparison.Ordinal));
    }

    [Fact]
    public void A_failed_safety_check_withholds_both()
    {
        using var place = new Workplace();
        place.TakeASpring();
        place.Make(Job, "--kerf-compensated");
        Assert.False(File.Exists(place.Made(Job, Workplace.CutFile)));
        Assert.False(File.Exists(place.Made(Job, Workplace.KerfFile)));
        place.Make(Job, "--kerf-compensated", "--accept-danger", "return-springs");
        Assert.Contains("SAFETY CHECK FAILED", CutFile(place, Workplace.KerfFile), StringComparison.Ordinal);
    }

    private static string CutFile(Workplace place, string name) => File.ReadAllText(place.Made(Job, name));
}
