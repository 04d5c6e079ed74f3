using System.IO.Compression;
using System.Text;
using BracketGen.Drawing.Measuring;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Line.Catalogue;
using BracketGen.Line.Combinations;
using BracketGen.Line.Lists;
using BracketGen.Line.Nesting;
using BracketGen.Line.Numbering;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Words.Report;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;

namespace BracketGen.Line.Tests;

/// <summary>Lists, workbook and catalogue.</summary>
public class ListTests
{
    // Read back and judged by an independent library for the format (the Open XML SDK).
    [Fact]
    public void The_workbook_holds_what_the_lists_say()
    {
        var report = Reports.Of(Estuary.Solved.Rig, Estuary.Solved.Run);
        ListTable[] lists = [LineLists.Parts(report), LineLists.Fits(report), LineLists.Shared(report), LineLists.Costs(report), LineLists.Sheets(report)];
        var bytes = Lists.Workbook.Write(lists);
        Assert.Equal(bytes, Lists.Workbook.Write(lists));
        using var book = SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
        Assert.Empty(new OpenXmlValidator().Validate(book));
        var sheets = book.WorkbookPart!.Workbook.Sheets!.Elements<Sheet>().ToArray();
        Assert.Equal(lists.Select(l => l.Name), sheets.Select(s => s.Name!.Value));
        foreach (var (list, sheet) in lists.Zip(sheets))
        {
            Assert.NotEmpty(list.Rows);
            var rows = ((WorksheetPart)book.WorkbookPart.GetPartById(sheet.Id!)).Worksheet.Descendants<Row>().ToArray();
            Assert.Equal(list.Rows.Length + 1, rows.Length);
            Assert.Equal(list.Columns, rows[0].Elements<DocumentFormat.OpenXml.Spreadsheet.Cell>().Select(Text));
            foreach (var (expected, row) in list.Rows.Zip(rows.Skip(1)))
            {
                var cells = row.Elements<DocumentFormat.OpenXml.Spreadsheet.Cell>().ToArray();
                Assert.Equal(expected.Select(c => c.Text), cells.Select(Text));
                Assert.All(expected.Zip(cells), c => Assert.Equal(c.First.Number is null, c.Second.DataType?.Value == CellValues.InlineString || c.Second.DataType?.Value == CellValues.SharedString || c.First.Text.Length == 0));
            }
        }

        using var zip = new ZipArchive(new MemoryStream(bytes));
        Assert.All(zip.Entries, e => Assert.Equal(1980, e.LastWriteTime.Year));
    }

    [Fact]
    public void Separated_values_are_quoted_and_never_a_formula()
    {
        var table = new ListTable("t", ["a", "b"], [["x, \"y\"", ListCell.Of(-1.5, 2)], ["=1+1", "-x"], ["two\nlines", "+3"], ["-2+3+cmd|' /C calc'!A0", " =1"], ["\"@x", "a;b"], ["\t=1", "- none"]]);
        Assert.Equal(
            "\uFEFFa,b\n\"x, \"\"y\"\"\",-1.5\n'=1+1,'-x\n\"two\nlines\",'+3\n'-2+3+cmd|' /C calc'!A0,' =1\n\"'\"\"@x\",\"a;b\"\n\"'\t=1\",'- none\n", Encoding.UTF8.GetString(CsvText.Write(table)));
    }

    [Fact]
    public void Every_combination_stands_in_the_list_with_a_part_or_a_reason()
    {
        using var rig = new LineRig();
        var files = Estuary.WithSmall.With(Estuary.Path, Estuary.Small + "[[exclusions]]\nvehicle = \"WHI\"\nthrottle_body = \"R64\"\nreason = \"no room beside the fuel rail\"\n");
        files = Estuary.Edit(files, "vehicles/plover.toml", "available_pull = { value = 51,", "available_pull = { value = 40,");
        var report = Reports.Of(rig, rig.Make(files));
        var fits = LineLists.Fits(report);
        int part = fits.Columns.IndexOf("part_number"), reason = fits.Columns.IndexOf("reason");
        Assert.Equal(6, fits.Rows.Length);
        Assert.All(fits.Rows, r => Assert.NotEqual(r[part].Text.Length > 0, r[reason].Text.Length > 0));
        Assert.Equal("not sold: no room beside the fuel rail", fits.Rows.Single(r => r[0].Text == "WHI-R64-S")[reason].Text);
        Assert.StartsWith("Over-travel with the valve wide open", fits.Rows.Single(r => r[0].Text == "PLV-A58-S")[reason].Text);
        Assert.Equal(["PLE-A58-S", "PLE-R64-S", "WHI-A58-S"], report.Selection.Services.Select(s => s.Served.Combination.Key).Order());

        var page = Encoding.UTF8.GetString(CataloguePage.Write(report, 2));
        Assert.Contains("no room beside the fuel rail", page);
        Assert.Contains("can kill", page);

        // Strength was left out: the catalogue says so in large type, and for whom.
        Assert.Contains("class=\"banner\">NOT PROVEN</p>", page);
        Assert.Contains("Strength was not calculated. Calculate it before you make the bracket. (", page);
        int verdict = fits.Columns.IndexOf("verdict"), toProve = fits.Columns.IndexOf("to_prove");
        Assert.All(fits.Rows.Where(r => r[part].Text.Length > 0), r => Assert.Equal("not proven", r[verdict].Text));
        Assert.All(fits.Rows, r => Assert.Equal(r[verdict].Text == "not proven", r[toProve].Text.Length > 0));
        Assert.All(report.Selection.Parts, p => Assert.Contains($"<section id=\"{p.Made.PartNumber}\">", page));
        Assert.All(report.Selection.Services, s => Assert.Contains($"href=\"#{s.By.Made.PartNumber}\"", page));
        Assert.DoesNotContain("http", page.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal));
        Assert.Equal(page, Encoding.UTF8.GetString(CataloguePage.Write(report, 1)));
    }

    [Fact]
    public void An_inch_line_shows_no_metric_unit()
    {
        using var rig = new LineRig();
        var files = Estuary.WithSmall.With(Estuary.Path, Estuary.Small.Replace("shop = ", "units = \"in\"\nshop = ", StringComparison.Ordinal));
        var report = Reports.Of(rig, rig.Make(files));
        string[] texts =
        [
            Encoding.UTF8.GetString(CataloguePage.Write(report, 1)), Encoding.UTF8.GetString(SheetsPage.Write(report)),
            Encoding.UTF8.GetString(RevisionList.Write(report.Register)),
            .. SheetFiles.Of(report.Family.Family, report.Selection.Parts, report.Nests).Select(f => f.Name + "\n" + Encoding.UTF8.GetString(f.Bytes)),
        ];
        Assert.True(texts.Length > 3);
        Assert.All(texts, t =>
        {
            Assert.Matches(@"\d ?in\b", t);
            Assert.DoesNotMatch(@"\d ?(mm|N|MPa|g)\b", t);
        });
        Assert.Matches(@"\d lb\.", texts[0]);
    }

    // The page is well formed wherever names hold signs that mean something in it: read by the XML reader, its head left out.
    [Fact]
    public void Names_cannot_break_the_page()
    {
        using var rig = new LineRig();
        var files = Estuary.Edit(Estuary.WithSmall, "vehicles/plover.toml", "name = \"Plover\"", "name = \"Plover <b> & 'co' \\\"x\\\"\"");
        var page = Encoding.UTF8.GetString(CataloguePage.Write(Reports.Of(rig, rig.Make(files)), 1));
        var body = System.Xml.Linq.XElement.Parse(page[page.IndexOf("<body>", StringComparison.Ordinal)..page.IndexOf("</html>", StringComparison.Ordinal)]);
        Assert.Contains(body.Descendants(), e => e.Value == "Plover <b> & 'co' \"x\"");
    }

    private static string Text(DocumentFormat.OpenXml.Spreadsheet.Cell cell) => cell.DataType?.Value == CellValues.InlineString ? cell.InlineString!.InnerText : cell.CellValue?.Text ?? "";
}
