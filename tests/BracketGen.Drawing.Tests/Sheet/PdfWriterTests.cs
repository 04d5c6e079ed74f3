using System.Globalization;
using System.Text;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Report;
using UglyToad.PdfPig;

namespace BracketGen.Drawing.Tests.Sheet;

public class PdfWriterTests
{
    private static readonly PdfInfo Info = new("Throttle cable bracket <B> & more", "Saltmarsh Fabrication", new DateOnly(2026, 3, 14));

    private static byte[] Demo(DateOnly? date = null) =>
        PdfWriter.Write([DemoSheet.Compose(PageFormat.A3), DemoSheet.Compose(PageFormat.AnsiB, UnitSystem.Inch)], Info with { Date = date ?? Info.Date });

    [Fact]
    public void The_same_sheets_give_the_same_bytes_at_another_time()
    {
        var first = Demo();
        Thread.Sleep(1100); // PDF dates have seconds
        Assert.Equal(first, Demo());
    }

    [Fact]
    public void The_same_sheets_give_the_same_bytes_where_numbers_have_a_comma()
    {
        var before = CultureInfo.CurrentCulture;
        var plain = Demo();
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(plain, Demo());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Other_content_and_another_date_give_another_identity()
    {
        static string Id(byte[] pdf)
        {
            var text = Encoding.Latin1.GetString(pdf);
            return text.Substring(text.IndexOf("/ID[<", StringComparison.Ordinal) + 5, 32);
        }

        var other = PdfWriter.Write([new SheetPage(PageFormat.A4)], Info);
        Assert.NotEqual(Id(Demo()), Id(Demo(new DateOnly(2026, 3, 15))));
        Assert.NotEqual(Id(Demo()), Id(other));
        Assert.NotEqual(new string('0', 32), Id(other));
    }

    [Fact]
    public void The_file_carries_no_date_but_the_one_of_issue()
    {
        var text = Encoding.Latin1.GetString(Demo(new DateOnly(2001, 2, 3)));
        var today = DateTime.UtcNow;
        Assert.Contains("/CreationDate(D:20010203000000", text, StringComparison.Ordinal);
        Assert.Contains("/ModDate(D:20010203000000", text, StringComparison.Ordinal);
        Assert.Contains("<xmp:CreateDate>2001-02-03T00:00:00", text, StringComparison.Ordinal);
        Assert.DoesNotContain(today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), text, StringComparison.Ordinal);
        Assert.DoesNotContain(today.ToString("yyyyMMdd", CultureInfo.InvariantCulture), text, StringComparison.Ordinal);
    }

    // ISO 32000-1, table 150: a viewer proposes no scaling when the sheet is printed.
    [Fact]
    public void It_asks_to_be_printed_at_full_size() =>
        Assert.Contains("/PrintScaling/None", System.Text.Encoding.Latin1.GetString(Demo()).Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);

    [SkippableFact]
    public void Qpdf_finds_nothing_wrong()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder["demo.pdf"], Demo());

        // It ends with 3 where it has but a warning.
        OutsideTool.Require("qpdf").RunOrFail(["--check", folder["demo.pdf"]]);
    }

    [SkippableFact]
    public void Only_the_sheet_font_is_used_and_it_is_embedded()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder["demo.pdf"], Demo());
        var output = OutsideTool.Require("pdffonts").RunOrFail([folder["demo.pdf"]]);
        var fonts = output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToArray();
        Assert.Equal(2, fonts.Length);
        // emb, sub and uni: embedded, a subset, searchable.
        Assert.All(fonts, f => Assert.Matches(@"^[A-Z]{6}\+BracketGen.*yes yes yes", f));
    }

    [Fact]
    public void Another_reader_finds_every_text_where_it_was_placed()
    {
        var page = DemoSheet.Compose(PageFormat.A3);
        using var document = PdfDocument.Open(PdfWriter.Write([page], Info));
        var letters = document.GetPage(1).Letters;
        const double millimetre = 25.4 / 72;

        foreach (var text in page.All.OfType<TextItem>())
        {
            // PdfPig's baselines, in points: the first letter starts where the text does and the last ends where it does.
            var first = letters.SingleOrDefault(l => Near(l.StartBaseLine.X, l.StartBaseLine.Y, text.Start) && text.Text.StartsWith(l.Value, StringComparison.Ordinal));
            Assert.True(first is not null, $"“{text.Text}” is not where it was placed.");
            var end = text.Start + text.Width * Vector2.FromPolar(1, text.Direction);
            Assert.Contains(letters, l => Near(l.EndBaseLine.X, l.EndBaseLine.Y, end) && text.Text.EndsWith(l.Value, StringComparison.Ordinal));
        }

        var read = string.Concat(letters.Select(l => l.Value));
        Assert.Contains("SF-DUN-A58-01", read, StringComparison.Ordinal);
        Assert.Contains("3 x Ø6.6", read, StringComparison.Ordinal);

        static bool Near(double x, double y, Vector2 place) => new Vector2(x * millimetre, y * millimetre).DistanceTo(place) < 0.02;
    }

    [Fact]
    public void Capitals_have_the_nominal_height()
    {
        // PdfPig takes glyph boxes from the embedded outlines: an independent measure of the letter E.
        foreach (var height in new[] { 2.5, 3.5, 5, 7 })
        {
            var page = new SheetPage(PageFormat.A4).With(new TextItem("E", new(100, 100), height));
            using var document = PdfDocument.Open(PdfWriter.Write([page], Info));
            var letter = document.GetPage(1).Letters.Single(l => l.Value == "E" && l.StartBaseLine.X > 280 && l.StartBaseLine.X < 290);
            var measured = letter.BoundingBox.Height * 25.4 / 72;
            Assert.Equal(height, measured, 0.02);
        }
    }

    [Theory]
    [InlineData("A3", 420, 297)]
    [InlineData("A4", 210, 297)]
    [InlineData("B", 431.8, 279.4)]
    public void The_sheet_has_its_size(string name, double width, double height)
    {
        var format = new[] { PageFormat.A3, PageFormat.A4, PageFormat.AnsiB }.Single(f => f.Name == name);
        using var document = PdfDocument.Open(PdfWriter.Write([new SheetPage(format)], Info));
        Assert.Equal(width, document.GetPage(1).Width * 25.4 / 72, 0.01);
        Assert.Equal(height, document.GetPage(1).Height * 25.4 / 72, 0.01);
    }

    [Fact]
    public void A_file_without_pages_is_refused() => Assert.Throws<ArgumentException>(() => PdfWriter.Write([], Info));
}
