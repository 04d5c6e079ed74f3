using System.Globalization;
using System.Text.Json;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;
using UglyToad.PdfPig;

namespace BracketGen.Cli.Tests;

/// <summary>The drawings as independent readers see them: sound files, and a template that is 1:1.</summary>
[Collection(ExampleOutputsCollection.Name)]
public class PdfFileTests(ExampleOutputs outputs)
{
    public static TheoryData<string> Jobs => [.. Workplace.Jobs];

    [SkippableTheory]
    [MemberData(nameof(Jobs))]
    public void The_files_are_sound(string job)
    {
        foreach (var file in new[] { Workplace.DrawingFile, Workplace.SetupFile })
        {
            OutsideTool.Require("qpdf").RunOrFail(["--check", outputs.PathOf(job, file)]);
        }
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void The_set_up_sheet_is_read_by_others_word_for_word_on_paper_of_the_job_s_unit(string job)
    {
        var pdf = outputs.PathOf(job, Workplace.SetupFile);
        var text = string.Join(' ', PdfText.Of(pdf).Select(w => w.Text)).Replace('\u00A0', ' ');
        using var json = JsonDocument.Parse(File.ReadAllBytes(outputs.PathOf(job, Workplace.ResultFile)));
        var inch = json.RootElement.GetProperty("job").GetProperty("units").GetString() == "in";

        // Through bracket and ring: 4 + 8 mm of sheet, two washers of 1.6 mm and a nut of 5.2 mm come to 20.4 mm; the next stock length that shows two threads of 1 mm is 25 mm.
        var (torque, screw) = job.EndsWith("-stud", StringComparison.Ordinal) ? ("75 lbf in", "ASME B18.2.2 - 1/4-28 UNF")
            : (inch ? "62 lbf in" : "7.0 N m", job.EndsWith("-ring", StringComparison.Ordinal) ? "ISO 4017 - M6 x 25 - 8.8" : "ISO 4017 - M6 x 16 - 8.8");
        Assert.Contains(torque, text, StringComparison.Ordinal);
        Assert.Contains(screw, text, StringComparison.Ordinal);
        Assert.Contains("A throttle that sticks open can kill.", text, StringComparison.Ordinal);
        Assert.Contains("Checks before the first start", text, StringComparison.Ordinal);

        // ISO 216 A4 is 210 x 297 mm, ASME A 8.5 x 11 in; a point is a 72nd of an inch.
        using var document = PdfDocument.Open(pdf);
        var (width, height) = inch ? (8.5 * 72, 11 * 72.0) : (210 / 25.4 * 72, 297 / 25.4 * 72);
        Assert.All(document.GetPages(), p =>
        {
            Assert.Equal(width, p.Width, 0.1);
            Assert.Equal(height, p.Height, 0.1);
        });
    }

    [SkippableTheory]
    [MemberData(nameof(Jobs))]
    public void The_bars_on_the_template_are_as_long_as_they_say(string job)
    {
        const double dots = 300;
        var pdf = outputs.PathOf(job, Workplace.DrawingFile);
        var page = TemplatePage(pdf).ToString(CultureInfo.InvariantCulture);
        using var place = new Workplace();
        OutsideTool.Require("pdftoppm").RunOrFail(
            ["-r", "300", "-gray", "-f", page, "-l", page, "-singlefile", pdf, place.PathOf("page")]);
        var picture = GreyPicture.Read(place.PathOf("page.pgm"));

        // 10.5 mm above the lower edge, just below the bars, a row crosses their end ticks and nothing else.
        var ticks = picture.LinesAcross(picture.Height - (int)(10.5 / 25.4 * dots));
        Assert.Equal(4, ticks.Count);
        Assert.Equal(100 / 25.4 * dots, ticks[1] - ticks[0], 1.0);
        Assert.Equal(3 * dots, ticks[3] - ticks[2], 1.0);
    }

    // A slotted hole is drawn piece by piece: the drawing is compared with the cut file in BracketGen.Drawing.Tests.
    public static TheoryData<string> WithRoundHoles => [.. Workplace.Jobs.Where(j => !j.EndsWith("-slotted", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(WithRoundHoles))]
    public void The_holes_on_the_template_are_as_far_apart_as_in_the_sheet(string job)
    {
        using var json = JsonDocument.Parse(File.ReadAllBytes(outputs.PathOf(job, Workplace.ResultFile)));
        var holes = json.RootElement.GetProperty("bracket").GetProperty("holes").EnumerateArray()
            .Where(h => h.GetProperty("purpose").GetString() == "bolt")
            .Select(h => (
                X: h.GetProperty("centre")[0].GetDouble(), Y: h.GetProperty("centre")[1].GetDouble(), D: h.GetProperty("diameter").GetDouble()))
            .Take(2)
            .ToArray();
        Assert.Equal(2, holes.Length);

        var pdf = outputs.PathOf(job, Workplace.DrawingFile);
        using var document = PdfDocument.Open(pdf);
        const double point = 25.4 / 72;
        var circles = document.GetPage(TemplatePage(pdf)).Paths
            .Select(p => p.GetBoundingRectangle())
            .Where(b => b is { } r && Math.Abs(r.Width * point - holes[0].D) < 0.02 && Math.Abs(r.Height * point - holes[0].D) < 0.02)
            .Select(b => (X: b!.Value.Centroid.X * point, Y: b.Value.Centroid.Y * point))
            .ToArray();
        Assert.Equal(2, circles.Length);
        Assert.Equal(
            Math.Sqrt(Math.Pow(holes[0].X - holes[1].X, 2) + Math.Pow(holes[0].Y - holes[1].Y, 2)),
            Math.Sqrt(Math.Pow(circles[0].X - circles[1].X, 2) + Math.Pow(circles[0].Y - circles[1].Y, 2)),
            0.01);
    }

    // That of the bracket: an adapter ring has one of its own.
    private static int TemplatePage(string pdf) => PdfText.Of(pdf)
        .GroupBy(w => w.Page)
        .Single(p => string.Join(' ', p.Select(w => w.Text)) is var text
            && text.Contains("template 1:1", StringComparison.Ordinal) && !text.Contains("adapter ring: template", StringComparison.Ordinal))
        .Key;
}
