using System.IO.Compression;
using BracketGen.Cli.Terminal;
using BracketGen.TestSupport;

namespace BracketGen.Cli.Tests;

/// <summary>The command that makes a bare throttle body complete.</summary>
public class KitCommandTests
{
    private const string Bare = "plover-alder-58-bare";

    private static readonly string[] Names = ["kit.csv", "kit.xlsx", "kit.pdf"];

    [Fact]
    public void The_shipped_kit_is_written_and_told()
    {
        using var place = new Workplace();
        var run = BracketGenProgram.Run("kit", place.Job(Bare), "--into", place.Output);
        Assert.Equal((ExitCode.Pass, ""), (run.ExitCode, run.Errors));
        var text = ScreenText.OneLine(run.Output);
        Assert.Contains("COMPLETE. Everything that is needed is there or on the list", text, StringComparison.Ordinal);
        Assert.Contains("The set costs 62.24 EUR.", text, StringComparison.Ordinal);
        Assert.Contains("If what is not known proves to fit, the set costs 58.74 EUR, with sensor 2050", text, StringComparison.Ordinal);
        Assert.Contains("Make or buy: our own costs 29.69 EUR to make, one alone. No bracket on the list fits as it is.", text, StringComparison.Ordinal);
        Assert.Contains("DOES NOT FIT. With it the whole job fails fleet-angle.", text, StringComparison.Ordinal);
        Assert.Contains("idle valve 77, for idle valve: Measure the passages for air: air of the part.", text, StringComparison.Ordinal);
        Assert.Contains("Plug the throttle body's passages for water", text, StringComparison.Ordinal);
        Assert.Contains("A worn track jumps near the closed stop first.", text, StringComparison.Ordinal);

        var csv = File.ReadAllText(place.Made(Bare, "kit.csv"));
        Assert.StartsWith("need,count,part,source,from,bundle,price,currency,fits,taken,why,look_at_before_buying_used\n", csv.TrimStart('\uFEFF'), StringComparison.Ordinal);
        Assert.Contains("position sensor,1,sensor 2041,bought,market stall,,9,EUR,does not fit,no,", csv, StringComparison.Ordinal);
        Assert.Contains("bundle,1,Alder 58 donor,donor,\"breaker's yard, row 3\",Alder 58 donor,24,EUR,,yes,", csv, StringComparison.Ordinal);
        var pdf = string.Join(' ', PdfText.Of(place.Made(Bare, "kit.pdf")).Select(w => w.Text)).Replace('\u00A0', ' ');
        Assert.Contains("The cheapest set that fits", pdf, StringComparison.Ordinal);
        Assert.Contains("A throttle that sticks open can kill.", pdf, StringComparison.Ordinal);
        Assert.Contains("The set costs 62.24 EUR.", pdf, StringComparison.Ordinal);
        using var book = new ZipArchive(new MemoryStream(File.ReadAllBytes(place.Made(Bare, "kit.xlsx"))));
        Assert.Contains(book.Entries, e => e.FullName == "xl/workbook.xml");

        // The same input, the same bytes.
        var before = Names.Select(n => File.ReadAllBytes(place.Made(Bare, n))).ToArray();
        Assert.Equal(ExitCode.Pass, BracketGenProgram.Run("kit", place.Job(Bare), "--into", place.Output).ExitCode);
        Assert.Equal(before, Names.Select(n => File.ReadAllBytes(place.Made(Bare, n))));
    }

    [SkippableFact]
    public void The_sheet_is_sound()
    {
        using var place = new Workplace();
        Assert.Equal(ExitCode.NotProven, BracketGenProgram.Run("kit", place.Job("plover-alder-58"), "--into", place.Output, "--skip-strength").ExitCode);
        OutsideTool.Require("qpdf").RunOrFail(["--check", place.Made("plover-alder-58", "kit.pdf")]);
    }

    [Fact]
    public void Without_lists_it_says_what_is_needed_and_how_to_go_on()
    {
        using var place = new Workplace();
        var run = BracketGenProgram.Run("kit", place.Job("plover-alder-58"), "--into", place.Output, "--skip-strength");
        Assert.Equal(ExitCode.NotProven, run.ExitCode);
        var text = ScreenText.OneLine(run.Output);
        Assert.Contains("The job names no list of parts at hand.", text, StringComparison.Ordinal);
        Assert.Contains("the sensor on the throttle body", text, StringComparison.Ordinal);
        Assert.Contains("NOT PROVEN. Whether what is there or on the list fits is not known for: cable, return springs, bracket and bracket bolts. Whether it takes one is not known for: idle valve, pressure sensor and flange gasket.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_makes_no_sense_is_refused_and_what_nothing_fits_fails()
    {
        using var place = new Workplace();
        var list = place.PathOf("profiles", "parts", "saltmarsh.toml");
        var text = File.ReadAllText(list);
        File.WriteAllText(list, text.Replace("seals = \"flange\"", "seals = \"bonnet\"", StringComparison.Ordinal));
        var wrong = BracketGenProgram.Run("kit", place.Job(Bare), "--into", place.Output);
        Assert.Equal(ExitCode.BadInput, wrong.ExitCode);
        Assert.Contains("seals", wrong.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(place.Output));

        // A gasket for a bore of 50 mm, and a part whose name a spreadsheet would compute.
        File.WriteAllText(list, text.Replace("diameter = 59.5", "diameter = 50", StringComparison.Ordinal).Replace("name = \"gasket 58-66\"", "name = \"=1+1\"", StringComparison.Ordinal));
        var failed = BracketGenProgram.Run("kit", place.Job(Bare), "--into", place.Output, "--skip-strength");
        Assert.Equal(ExitCode.CheckFailed, failed.ExitCode);
        Assert.Contains("NOT COMPLETE. Nothing that is there or on the list fits for: flange gasket. Whether what is there or on the list fits is not known for: cable, return springs, bracket and bracket bolts.", ScreenText.OneLine(failed.Output), StringComparison.Ordinal);
        Assert.Contains(",'=1+1,", File.ReadAllText(place.Made(Bare, "kit.csv")), StringComparison.Ordinal);
    }
}
