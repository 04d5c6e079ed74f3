using BracketGen.Cli.Terminal;
using BracketGen.TestSupport;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace BracketGen.Cli.Tests;

/// <summary>An order of a made line as a user runs it.</summary>
public sealed class OrderCommandTests : IDisposable
{
    // One variant that is proven, and one that is not.
    private const string Brook =
        """
        profile = "family"
        name = "Brook line"
        shop = "../shops/saltmarsh-fabrication.toml"

        [[vehicles]]
        code = "DUN"
        file = "../vehicles/dunlin.toml"

        [[vehicles]]
        code = "PLV"
        file = "../vehicles/plover.toml"

        [[throttle_bodies]]
        code = "R64"
        file = "../throttle-bodies/rowan-64.toml"

        [[materials]]
        code = "S"
        name = "steel"
        designations = ["S235JR"]

        [life]
        temperature = 80

        [numbers]
        rule = "SF-{vehicle}{throttle_body}{material}"

        [preferences]
        free_play = { value = 2, plus_minus = 0.5 }

        """;

    private readonly Workplace _place = new();

    public OrderCommandTests() => File.WriteAllText(Family, Brook.ReplaceLineEndings("\n"));

    private string Family => _place.PathOf("profiles", "families", "brook.toml");

    private string Made(params string[] parts) => _place.PathOf(["output", "orders", "heron", .. parts]);

    [Fact]
    public void An_order_is_made_beside_the_line_and_only_what_is_proven()
    {
        BracketGenProgram.Run(["line", Family, "--into", _place.Output]);
        var line = Contents("brook");
        var first = Order("variant,quantity,customer_reference\nDUN-R64-S,3,Heron\nPLV-R64-S,2,Curlew\n");
        Assert.True(first.ExitCode == ExitCode.NotProven, first.Output + first.Errors);
        Assert.Contains("1 of 2 lines of the order can be sold: 3 pieces of 1 part.", first.Output);
        Assert.Contains("line 3, PLV-R64-S: not sold, PLV-R64-S not proven", first.Output);
        Assert.Equal(line, Contents("brook"));
        Assert.Equal(3, PdfText.Of(Made("labels.pdf")).Count(w => w.Text == "SF-DUNR64S"));
        Assert.Equal(3, File.ReadAllLines(Made("order.csv")).Length);
        Assert.Single(Directory.GetFiles(Made("sheets"), "*.dxf"));
        Assert.Equal(["DUN-R64-S-mm.pdf", "PLV-R64-S-mm.pdf"], Directory.GetFiles(Made("fitting")).Select(f => Path.GetFileName(f)).Order());
        Assert.Contains(PdfText.Of(Made("fitting", "PLV-R64-S-mm.pdf")), w => w.Text == "PROVEN");
        Assert.Contains(PdfText.Of(Made("fitting", "DUN-R64-S-mm.pdf")), w => w.Text == "drag");

        // The same order again: the same bytes. Another one of the name: nothing of the first is left.
        var before = Contents("orders");
        Order("variant,quantity,customer_reference\nDUN-R64-S,3,Heron\nPLV-R64-S,2,Curlew\n");
        Assert.Equal(before, Contents("orders"));
        Assert.Equal(ExitCode.NotProven, Order("variant,quantity\nPLV-R64-S,2\n").ExitCode);
        Assert.False(File.Exists(Made("labels.pdf")));
        Assert.Empty(Directory.GetFiles(Made("sheets")));
        Assert.Equal(["PLV-R64-S-mm.pdf"], Directory.GetFiles(Made("fitting")).Select(f => Path.GetFileName(f)));
    }

    [Fact]
    public void What_cannot_be_used_is_said_and_nothing_is_written()
    {
        var missing = Order("variant,quantity\nDUN-R64-S,3\n");
        Assert.Equal(ExitCode.BadInput, missing.ExitCode);
        Assert.Contains("line.json: make the line first", missing.Errors);

        BracketGenProgram.Run(["line", Family, "--into", _place.Output, "--skip-strength"]);
        var wrong = Order("variant,quantity\nDUN-R46-S,3\nDUN-R64-S,none\n");
        Assert.Equal(ExitCode.BadInput, wrong.ExitCode);
        Assert.Contains("heron.csv: line 3: read \"none\"; quantity is a whole number from 1 to 10000", wrong.Errors);
        Assert.Contains("do you mean \"DUN-R64-S\"?", Order("variant,quantity\nDUN-R46-S,3\n").Errors);
        Assert.Contains("nowhere.csv cannot be read: there is no such file.", BracketGenProgram.Run(["order", _place.PathOf("nowhere.csv"), "--family", Family]).Errors);
        Assert.Contains("does not name its product line", BracketGenProgram.Run(["order", _place.PathOf("heron.csv")]).Errors);

        File.WriteAllText(_place.PathOf("output", "brook", "line.json"), "{}");
        Assert.Contains("is damaged or of another version", Order("variant,quantity\nDUN-R64-S,3\n").Errors);
        Assert.False(Directory.Exists(Made()));
    }

    // Read back by an independent reader, from the modules as a label draws them.
    [Theory]
    [InlineData("SF-DUNR64-S A")]
    [InlineData("sf_whi.h70-l-long-number-of-a-part 12")]
    public void The_code_of_a_label_reads_part_number_and_revision(string text)
    {
        const int size = 6, quiet = 4;
        var modules = QrPicture.ModulesOf(text);
        var side = (modules.Length + 2 * quiet) * size;
        var grey = new byte[side * side];
        for (var y = 0; y < side; y++)
        {
            for (var x = 0; x < side; x++)
            {
                var (row, column) = (y / size - quiet, x / size - quiet);
                var isDark = row >= 0 && row < modules.Length && column >= 0 && column < modules.Length && modules[row][column];
                grey[y * side + x] = isDark ? byte.MinValue : byte.MaxValue;
            }
        }

        var source = new RGBLuminanceSource(grey, side, side, RGBLuminanceSource.BitmapFormat.Gray8);
        Assert.Equal(text, new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)))?.Text);
    }

    public void Dispose() => _place.Dispose();

    private ToolResult Order(string csv)
    {
        File.WriteAllText(_place.PathOf("heron.csv"), csv);
        return BracketGenProgram.Run(["order", _place.PathOf("heron.csv"), "--family", Family, "--into", _place.Output]);
    }

    private SortedDictionary<string, string> Contents(string folder) => new(
        Directory.GetFiles(_place.PathOf("output", folder), "*", SearchOption.AllDirectories)
            .ToDictionary(f => Path.GetRelativePath(_place.Output, f), f => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(f)))),
        StringComparer.Ordinal);
}
