using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BracketGen.Drawing.Orders;
using BracketGen.Drawing.Sheet;
using BracketGen.Line.Costing;
using BracketGen.Line.Lists;
using BracketGen.Line.Orders;
using BracketGen.Line.Solving;
using BracketGen.Profiles;
using BracketGen.Profiles.Family;
using BracketGen.Words.Line;

namespace BracketGen.Line.Tests;

/// <summary>An order of a made line: found in it, checked anew, and only what is proven is made.</summary>
public class OrderTests
{
    private static readonly Lazy<LineReport> Made = new(() => Reports.Of(Estuary.Solved.Rig, Estuary.Solved.Run));

    private static KeptLine Kept => KeptLine.Of(Made.Value);

    private static LoadedFamily Family => Estuary.Solved.Run.Family;

    [Theory]
    [InlineData("part_number,quantity\nX,3\n", "Part X 3  -")]
    [InlineData("\uFEFFquantity;variant;customer_reference;units\r\n 7 ; PLV-A58-S ;\"a;b \"\"c\"\"\";in\r\n\r\n", "Variant PLV-A58-S 7 a;b \"c\" Inch")]
    [InlineData("catalogue_number,variant,quantity\nN-1,,1\n,K,2", "CatalogueNumber N-1 1  -|Variant K 2  -")]
    public void An_order_in_CSV_is_read(string text, string expected)
    {
        var (order, problems) = OrderCsv.Parse(Encoding.UTF8.GetBytes(text));
        Assert.Empty(problems);
        Assert.Equal(expected, string.Join('|', order!.Items.Select(i => $"{i.By} {i.Name} {i.Quantity} {i.Reference} {i.Units?.ToString() ?? "-"}")));
    }

    [Theory]
    [InlineData("", "line 1: read \"\"; the first line names the columns")]
    [InlineData("part_number,number\nX,3\n", "line 1: read \"part_number,number\"")]
    [InlineData("part_number,quantity,colour\nX,3,red\n", "line 1: read the column \"colour\"")]
    [InlineData("variant,variant,quantity\nX,X,3\n", "which is there twice")]
    [InlineData("variant,quantity\n", "line 1: nothing is ordered")]
    [InlineData("variant,quantity\nX,0\n", "line 2: read \"0\"; quantity is a whole number from 1 to 10000")]
    [InlineData("variant,quantity\nX,4\nY,1e3\n", "line 3: read \"1e3\"")]
    [InlineData("variant,quantity\nX\n", "line 2: read 1 cell; the first line has 2")]
    [InlineData("variant,part_number,quantity\nX,Y,1\n", "line 2: read 2 names of a product; write one of")]
    [InlineData("variant,quantity\n,1\n", "line 2: read 0 names")]
    [InlineData("variant,quantity,units\nX,1,cm\n", "line 2: read \"cm\"; units are mm or in")]
    [InlineData("variant,quantity\n\"X,1\n", "line 2: a quotation mark has no second one")]
    [InlineData("variant,quantity\n\"X\nZ\",1\nY,0\n", "line 2: read \"X Z\"; at most 120 letters without control characters")]
    public void A_mistake_in_CSV_says_line_what_was_read_and_what_is_allowed(string text, string expected)
    {
        var (order, problems) = OrderCsv.Parse(Encoding.UTF8.GetBytes(text));
        Assert.Null(order);
        Assert.Contains(problems, p => p.Text.Contains(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void Text_that_is_none_and_more_than_an_order_may_have_are_refused()
    {
        Assert.IsType<OrderProblem.NotText>(Assert.Single(OrderCsv.Parse([0xFF, 0xFE, 0x41]).Problems));
        var many = "variant,quantity\n" + string.Concat(Enumerable.Repeat("X,1\n", LineOrder.MaxItems + 1));
        Assert.IsType<OrderProblem.ManyLines>(Assert.Single(OrderCsv.Parse(Encoding.UTF8.GetBytes(many)).Problems));
    }

    [Fact]
    public void TOML_says_the_same_as_CSV()
    {
        const string toml =
            """
            profile = "order"
            family = "../families/estuary.toml"

            [[items]]
            variant = "PLV-A58-S"
            quantity = 3
            customer_reference = "Heron"
            units = "in"

            [[items]]
            catalogue_number = "N-1"
            quantity = 4
            """;
        var read = ProfileReader.ReadOrder("orders/o.toml", MemoryFileSource.Empty.With("orders/o.toml", toml));
        Assert.True(read.IsRead);
        Assert.Equal("../families/estuary.toml", read.Value.FamilyFile);
        var csv = OrderCsv.Parse("variant,catalogue_number,quantity,customer_reference,units\nPLV-A58-S,,3,Heron,in\n,N-1,4,,\n"u8).Order!;
        Assert.Equal(csv.Items.Select(i => i with { Line = 0 }), read.Value.Items.Select(i => i with { Line = 0 }));
        Assert.Equal([5, 11], read.Value.Items.Select(i => i.Line));

        // Two names, none, and a quantity too large: each with its line.
        var wrong = toml.Replace("quantity = 3", "part_number = \"X\"\nquantity = 3", StringComparison.Ordinal).Replace("catalogue_number = \"N-1\"\n", "", StringComparison.Ordinal)
            .Replace("quantity = 4", "quantity = 10001", StringComparison.Ordinal);
        var errors = ProfileReader.ReadOrder("orders/o.toml", MemoryFileSource.Empty.With("orders/o.toml", wrong)).Errors;
        Assert.Equal(3, errors.Length);
        Assert.All(errors, e => Assert.True(e.Line > 3));
    }

    [Fact]
    public void A_made_line_comes_back_from_the_disk_and_a_changed_number_is_found()
    {
        var bytes = Kept.ToBytes();
        Assert.Equal(bytes, KeptLine.Read(bytes)!.ToBytes());
        var text = Encoding.UTF8.GetString(bytes);
        var at = text.IndexOf("\"thickness\":3", StringComparison.Ordinal);
        Assert.True(at > 0);
        Assert.Null(KeptLine.Read(Encoding.UTF8.GetBytes(text.Remove(at, 13).Insert(at, "\"thickness\":4"))));
        Assert.Null(KeptLine.Read("{}"u8));
        Assert.Null(KeptLine.Read(Encoding.UTF8.GetBytes(text[..^3])));
    }

    [Fact]
    public void What_is_ordered_is_found_by_part_variant_and_catalogue_number()
    {
        var shared = Made.Value.Selection.Services.First(s => s.IsShared);
        var (key, number, part) = (shared.Served.Combination.Key, shared.Served.Made.PartNumber, shared.By.Made.PartNumber);
        var plan = Plan($"variant,catalogue_number,part_number,quantity\n{key},,,1\n,{number},,2\n,,{part},3\n").Plan!;
        Assert.All(plan.Items, i => Assert.Equal(part, i.Part.PartNumber));
        Assert.Equal([key], plan.Items[0].Variants.AsEnumerable());
        Assert.Equal([key], plan.Items[1].Variants.AsEnumerable());
        Assert.Equal(Made.Value.Selection.Services.Where(s => s.By == shared.By).Select(s => s.Served.Combination.Key), plan.Items[2].Variants.AsEnumerable());
    }

    [Fact]
    public void What_cannot_be_found_is_said_with_what_can_be_done()
    {
        var shared = Made.Value.Selection.Services.First(s => s.IsShared);
        string[] texts = [.. Plan($"variant,part_number,quantity\nPLV-A85-S,,1\n,{shared.Served.Made.PartNumber},1\n,HERON,1\n").Problems.Select(p => p.Text)];
        Assert.Equal(3, texts.Length);
        Assert.Contains("line 2: read the variant \"PLV-A85-S\", which the line does not have; do you mean \"PLV-A58-S\"?", texts[0]);
        Assert.Contains($"is not made: {shared.By.Made.PartNumber} serves its variant", texts[1]);
        Assert.Contains("line 4: read the part number \"HERON\", which the line does not have; parts.csv of the line has all of them", texts[2]);
        Assert.Contains("exceeds 10000 pieces", Assert.Single(Plan("variant,quantity\nPLV-A58-S,9999\nPLE-A58-S,2\n").Problems).Text);

        // Changed since the line was made: the part may no longer fit.
        var changed = Estuary.Read(Estuary.Edit(Estuary.WithSmall, "vehicles/plover.toml", "lever_ratio = 3.4", "lever_ratio = 3.5"));
        var order = OrderCsv.Parse("variant,quantity\nPLV-A58-S,1\nWHI-A58-S,1\n"u8).Order!;
        Assert.Contains("make the line again", Assert.Single(OrderPlan.Of(order, Kept, changed, "1").Problems).Text);
        Assert.Equal(2, OrderPlan.Of(order, Kept, Family, "2").Problems.Length);
    }

    [Fact]
    public void What_is_not_proven_is_listed_and_not_made()
    {
        var order = SolvedOrder.Of("heron", Family, Plan("variant,quantity,units\nPLV-A58-S,3,in\nPLV-A58-S,1,\n").Plan!, null, 1);
        Assert.Empty(order.Sold);
        var files = OrderFiles.Of(order, Qr, 1);
        Assert.Equal(["order.csv", Path.Combine("fitting", "PLV-A58-S-in.pdf"), Path.Combine("fitting", "PLV-A58-S-mm.pdf")], files.Select(f => f.Name));
        var csv = Encoding.UTF8.GetString(files[0].Bytes);
        Assert.Contains(",no,not proven,", csv);
        Assert.Contains("Strength was not calculated.", csv);
        Assert.DoesNotContain(",yes,", csv);
    }

    // Every total again from the order itself, whatever way the files came to it.
    [Fact]
    public void Totals_of_all_files_agree_with_the_order()
    {
        var order = Passing("variant,quantity,customer_reference\nPLV-A58-S,12,Heron\nWHI-R64-S,5,Heron\nPLE-A58-S,7,=1+1\nPLV-A58-S,2,\n");
        var wanted = order.Items.GroupBy(i => i.Part.PartNumber).ToDictionary(g => g.Key, g => g.Sum(i => i.Item.Quantity));
        Assert.Equal(26, wanted.Values.Sum());

        var laid = OrderFiles.Nests(order, 1).SelectMany(n => n.Nest.Sheets).SelectMany(s => s.Laid).GroupBy(l => l.Piece.Name).ToDictionary(g => g.Key, g => g.Count());
        Assert.Equal(wanted.OrderBy(w => w.Key), laid.OrderBy(l => l.Key));

        // Screws: as many as the brackets have holes for them.
        var picked = OrderLists.PickList(order).Rows;
        int Count(string item) => (int)picked.Where(r => r[1].Text == item).Sum(r => r[0].Number!.Value);
        Assert.Equal(26, Count("bracket"));
        Assert.Equal(order.Items.Sum(i => i.Item.Quantity * i.Variants[0].Served.Bracket.MountBolts.Length), Count("hexagon bolt"));
        var packed = OrderLists.PackingLists(order).Rows;
        Assert.Equal(26, packed.Where(r => r[7].Text == "bracket").Sum(r => r[6].Number));
        Assert.Equal(Count("hexagon bolt"), packed.Where(r => r[7].Text == "hexagon bolt").Sum(r => r[6].Number));
        Assert.Equal(["Heron", "=1+1", ""], packed.Select(r => r[0].Text).Distinct());

        // Costs by position add up to those of the price list.
        var prices = OrderLists.Prices(order).Rows;
        foreach (var part in OrderLists.Costs(order).Rows.GroupBy(r => r[0].Text))
        {
            var price = prices.Single(r => r[0].Text == part.Key);
            Assert.Equal(wanted[part.Key], price[1].Number);
            Assert.Equal(price[3].Number!.Value, part.Sum(r => r[5].Number!.Value), 0.05);
            Assert.Equal(price[2].Number!.Value * wanted[part.Key], price[3].Number!.Value, 0.01);
        }

        // 12 pieces cost what the catalogue says for 10 or more, 5 what it says for one.
        Assert.Equal([1, 10, 50, 100], Family.Family.Rates.Quantities.AsEnumerable());
        foreach (var row in OrderLists.Order(order).Rows)
        {
            var quantity = (int)row[3].Number!.Value;
            var cost = PartCost.Of(order.Parts.Single(p => p.Part.Served.Made.PartNumber == row[5].Text).Part.Served.Bracket, Family.Family.Cutting, Family.Family.Rates);
            Assert.Equal(cost.PriceFor(quantity >= 10 ? 10 : 1), row[11].Number);
            Assert.Equal(row[11].Number!.Value * quantity, row[12].Number!.Value, 0.005);
        }

        // A reference that a spreadsheet would compute.
        Assert.Contains("'=1+1,", Encoding.UTF8.GetString(CsvText.Write(OrderLists.PackingLists(order))));
    }

    [Fact]
    public void The_same_order_gives_the_same_files()
    {
        const string text = "variant,quantity,customer_reference,units\nPLV-A58-S,3,Heron,in\nWHI-R64-S,2,Curlew,\n";
        var (first, second) = (OrderFiles.Of(Passing(text), Qr, 1), OrderFiles.Of(Passing(text), Qr, 2));
        Assert.Equal(first.Select(f => f.Name), second.Select(f => f.Name));
        Assert.All(first.Zip(second), p => Assert.True(p.First.Bytes.AsSpan().SequenceEqual(p.Second.Bytes), p.First.Name));
        Assert.Equal(OrderFiles.Names, first.Select(f => f.Name).Where(n => Path.GetDirectoryName(n) == "").Order().Intersect(OrderFiles.Names).Order().OrderBy(n => OrderFiles.Names.ToList().IndexOf(n)));
    }

    // The dark rectangles of a label are its modules: none missing, none twice, none on a light one.
    [Fact]
    public void A_label_draws_every_dark_module_once()
    {
        var modules = Qr("SF-PLVA58-S A");
        var seen = new int[modules.Length, modules.Length];
        foreach (var (column, row, width, height) in LabelSheet.Dark(modules))
        {
            for (var r = row; r < row + height; r++)
            {
                for (var c = column; c < column + width; c++)
                {
                    seen[r, c]++;
                }
            }
        }

        for (var r = 0; r < modules.Length; r++)
        {
            for (var c = 0; c < modules.Length; c++)
            {
                Assert.Equal(modules[r][c] ? 1 : 0, seen[r, c]);
            }
        }

        var pages = LabelSheet.Compose([(new("SF-PLVA58-S", ["revision A"], modules), LabelSheet.PerPage + 1)], PageFormat.A4);
        Assert.Equal(2, pages.Length);
        Assert.Equal(LabelSheet.PerPage, pages[0].Items.OfType<TextItem>().Count(t => t.Text == "SF-PLVA58-S"));
        Assert.All(pages.SelectMany(p => p.Items), i => Assert.InRange(i.Bounds.Max.X, 0, PageFormat.A4.Width));
    }

    [Fact]
    public void A_web_shop_gets_what_is_proven_for_sale_and_the_rest_listed()
    {
        var report = Made.Value;
        var first = report.Selection.Services[0];
        var proven = report with
        {
            Selection = report.Selection with { Services = [first with { Fit = first.Fit with { ToProve = [] } }, .. report.Selection.Services.Skip(1)] },
        };
        var table = ShopImport.Products(proven);
        int Column(string name) => table.Columns.IndexOf(name);
        Assert.Equal(report.Selection.Parts.Select(p => p.Made.PartNumber), table.Rows.Select(r => r[Column("product_number")].Text));
        var sold = Assert.Single(table.Rows, r => r[Column("for_sale")].Text == "yes");
        Assert.Equal(first.By.Made.PartNumber, sold[0].Text);
        Assert.Equal(first.Served.Combination.Title, sold[Column("fits")].Text);
        Assert.DoesNotContain(first.Served.Combination.Title, sold[Column("not_proven_for")].Text.Split("; "));
        Assert.All(table.Rows.Where(r => r != sold), r => Assert.Equal(("", "not proven for any vehicle"), (r[Column("fits")].Text, r[Column("why_not")].Text)));
        Assert.Equal(table.Rows.Select(r => r[Column("picture")].Text), ShopImport.PicturesOf(proven, 2).Select(p => "pictures/" + p.Name));
        Assert.All(ShopImport.PicturesOf(proven, 1), p => Assert.Equal("svg", System.Xml.Linq.XElement.Parse(Encoding.UTF8.GetString(p.Bytes)).Name.LocalName));
        Assert.Equal(first.By.Bracket.Mass * 1e6, double.Parse(sold[Column("weight_g")].Text, CultureInfo.InvariantCulture), 0.05);
    }

    private static (OrderPlan? Plan, ImmutableArray<OrderProblem> Problems) Plan(string csv)
    {
        var (order, problems) = OrderCsv.Parse(Encoding.UTF8.GetBytes(csv));
        Assert.Empty(problems);
        return OrderPlan.Of(order!, Kept, Family, "1");
    }

    // Solved without strength, and what is not known left out: as if all of it were proven.
    private static SolvedOrder Passing(string csv)
    {
        var order = SolvedOrder.Of("heron", Family, Plan(csv).Plan!, null, 2);
        var passing = order with
        {
            Items = [.. order.Items.Select(i => i with { Variants = [.. i.Variants.Select(v => v with { Solution = v.Solution! with { Checks = [.. v.Solution.Checks.Where(c => c.Passes)] } })] })],
        };
        Assert.Equal(passing.Items.Length, passing.Sold.Length);
        return passing;
    }

    // No QR code, but as uneven as one.
    private static ImmutableArray<ImmutableArray<bool>> Qr(string text) =>
        [.. Enumerable.Range(0, 21).Select(r => Enumerable.Range(0, 21).Select(c => (r * 31 + c * 17 + text[(r * 21 + c) % text.Length]) % 7 < 3).ToImmutableArray())];
}
