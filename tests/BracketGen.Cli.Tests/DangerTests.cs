using System.Text;
using System.Text.Json;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Inputs;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Words.Report;

namespace BracketGen.Cli.Tests;

/// <summary>A failed safety check is never exported quietly.</summary>
public class DangerTests
{
    private const string Job = "plover-alder-58", Danger = "return-springs";

    [Fact]
    public void The_cut_file_is_withheld_and_an_older_one_is_removed()
    {
        using var place = new Workplace();
        Assert.Equal(ExitCode.NotProven, place.Make(Job).ExitCode);
        Assert.True(File.Exists(place.Made(Job, Workplace.CutFile)));
        Assert.True(File.Exists(place.Made(Job, Workplace.StepFile)));

        place.TakeASpring();
        var result = place.Make(Job);
        Assert.Equal(ExitCode.CheckFailed, result.ExitCode);
        Assert.Equal(Workplace.Files.Except([Workplace.CutFile, Workplace.StepFile]).Select(f => $"{Job}/{f}"), place.OutputFiles());
        var said = ScreenText.OneLine(result.Output);
        ScreenText.HasVerdict(result.Output, "UNSAFE");
        ScreenText.HasRow(result.Output, "UNSAFE", Danger);
        Assert.Contains($"{Danger}: When the only spring breaks, nothing closes the valve.", said, StringComparison.Ordinal);
        Assert.Contains("The cut file and the STEP file were NOT written", said, StringComparison.Ordinal);
        Assert.Contains($"--accept-danger {Danger}", said, StringComparison.Ordinal);
        Assert.DoesNotContain(Workplace.CutFile, result.Output, StringComparison.Ordinal);
        Assert.DoesNotContain(Workplace.StepFile, result.Output, StringComparison.Ordinal);
        WarnsInLargeType(place);

        // The model for looking says it too, and the one for printing in the 80 bytes that its format has for words.
        Assert.Contains("SAFETY CHECK FAILED: Return springs", File.ReadAllText(place.Made(Job, Workplace.GlbFile)), StringComparison.Ordinal);
        Assert.Contains("SAFETY CHECK FAILED", Encoding.ASCII.GetString(File.ReadAllBytes(place.Made(Job, Workplace.StlFile)), 0, 80), StringComparison.Ordinal);
        Assert.Contains("The cut file is withheld", File.ReadAllText(place.Made(Job, Workplace.ReportFile)), StringComparison.Ordinal);
    }

    [Fact]
    public void Accepted_by_name_it_is_written_and_says_so_in_the_file_and_on_the_drawing()
    {
        using var place = new Workplace();
        place.TakeASpring();
        var result = place.Make(Job, "--accept-danger", Danger);
        Assert.Equal(ExitCode.CheckFailed, result.ExitCode);
        Assert.DoesNotContain("NOT written", result.Output, StringComparison.Ordinal);

        // The head of a DXF file: comments (group 999) before the first section.
        var dxf = File.ReadAllText(place.Made(Job, Workplace.CutFile));
        var head = dxf[..dxf.IndexOf("SECTION", StringComparison.Ordinal)];
        Assert.Contains("999\nSAFETY CHECK FAILED: Return springs", head, StringComparison.Ordinal);

        // In the STEP file, in its head and in the description of the product.
        var step = File.ReadAllText(place.Made(Job, Workplace.StepFile));
        Assert.Equal(2, step.Split("SAFETY CHECK FAILED: Return springs").Length - 1);
        WarnsInLargeType(place);
        Assert.Contains("It was accepted by name", File.ReadAllText(place.Made(Job, Workplace.ReportFile)), StringComparison.Ordinal);
        using var json = JsonDocument.Parse(File.ReadAllBytes(place.Made(Job, Workplace.ResultFile)));
        Assert.Equal([Danger], json.RootElement.GetProperty("allowedByName").EnumerateArray().Select(e => e.GetString()));
        Assert.Equal("unsafe", json.RootElement.GetProperty("verdict").GetString());
    }

    [Fact]
    public void Accepting_another_danger_is_bad_input_and_the_failed_checks_are_named()
    {
        using var place = new Workplace();
        place.TakeASpring();
        var result = place.Make(Job, "--accept-danger", Danger, "free-play");
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains("free-play", result.Errors, StringComparison.Ordinal);
        Assert.Contains($"those are: {Danger}", result.Errors, StringComparison.Ordinal);
        Assert.Empty(place.OutputFiles());
    }

    [Fact]
    public void Two_dangers_must_both_be_named()
    {
        using var place = new Workplace();
        place.TakeASpring();
        place.Edit("throttle-bodies/alder-58.toml", "groove_width = 3", "groove_width = 1");
        var dangers = Dangers(place);
        Assert.Contains(Danger, dangers);
        Assert.True(dangers.Length > 1, "the narrow groove is no danger any more: take another");
        place.Make(Job, "--accept-danger", Danger);
        Assert.False(File.Exists(place.Made(Job, Workplace.CutFile)));
        place.Make(Job, ["--accept-danger", .. dangers]);
        Assert.Equal(
            dangers.Length,
            File.ReadAllLines(place.Made(Job, Workplace.CutFile)).Count(l => l.StartsWith("SAFETY CHECK FAILED", StringComparison.Ordinal)));
    }

    private static string[] Dangers(Workplace place)
    {
        place.Make(Job);
        using var json = JsonDocument.Parse(File.ReadAllBytes(place.Made(Job, Workplace.ResultFile)));
        return
        [
            .. json.RootElement.GetProperty("checks").EnumerateArray()
                .Where(c => c.GetProperty("kind").GetString() == "safety" && c.GetProperty("state").GetString() == "fails")
                .Select(c => c.GetProperty("id").GetString()!),
        ];
    }


    private static void WarnsInLargeType(Workplace place)
    {
        // Large: ISO 3098 heights go by the root of two; a notice of 5 mm is two steps above the 2.5 mm of ordinary text.
        var words = PdfText.Of(place.Made(Job, Workplace.DrawingFile));
        IsLarge(words);
        IsLarge(PdfText.Of(place.Made(Job, Workplace.SetupFile)));
        foreach (var page in words.GroupBy(w => w.Page))
        {
            Assert.Contains("SAFETY CHECK FAILED", string.Join(' ', page.Select(w => w.Text)), StringComparison.Ordinal);
        }
    }

    private static void IsLarge(IReadOnlyList<(int Page, string Text, double Size)> words)
    {
        var ordinary = words.GroupBy(w => Math.Round(w.Size, 2)).MaxBy(g => g.Count())!.Key;
        var first = words.Where(w => w.Page == 1 && w.Size > 1.35 * ordinary).Select(w => w.Text).ToArray();
        Assert.Contains("SAFETY CHECK FAILED", string.Join(' ', first), StringComparison.Ordinal);
    }
}
