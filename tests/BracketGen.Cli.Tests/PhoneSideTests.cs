using System.Net;
using BracketGen.Cli.Commands;
using BracketGen.Cli.Terminal;
using BracketGen.Web.Phone;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace BracketGen.Cli.Tests;

/// <summary>The phone's side of <c>page</c>: its options, its errors, and the picture on the terminal, read by another program's decoder (ZXing.Net).</summary>
public class PhoneSideTests
{
    private const string Address = "https://192.168.1.20:40123/#pair=0123456789-_ABCDEFGHIJ";

    private static readonly NetworkAddress Wired = new(IPAddress.Parse("10.0.0.5"), "eth0"), Wireless = new(IPAddress.Parse("192.168.1.20"), "wlan0");

    [Theory]
    [InlineData(Address)]
    [InlineData(Address + "&job=jobs%2Fplover-alder-58.toml")]
    [InlineData("https://[fd12:3456:789a::2]:65535/#pair=0123456789-_ABCDEFGHIJ&job=jobs%2F%C3%A4%20very%20long%20folder%2Fplover-alder-58.toml")]
    public void The_picture_says_the_address(string text)
    {
        Assert.Equal(text, Read(QrPicture.Of(text, hasColour: false), isInverted: false));
        // A light terminal without colours shows dark for light: the decoder, too, must be told.
        Assert.Equal(text, Read(QrPicture.Of(text, hasColour: false), isInverted: true));
    }

    [Fact]
    public void With_colours_every_line_sets_both_and_ends_them()
    {
        var (plain, coloured) = (QrPicture.Of(Address, hasColour: false), QrPicture.Of(Address, hasColour: true));
        Assert.Equal(plain.Select(line => $"\u001b[38;5;231;48;5;16m{line}\u001b[0m"), coloured);
        Assert.DoesNotContain('\u001b', string.Concat(plain));
        Assert.All(plain, line => Assert.Equal(QrPicture.WidthOf(Address), line.Length));
    }

    [Fact]
    public void A_picture_stands_in_every_window()
    {
        Assert.InRange(QrPicture.WidthOf(Address), 21 + 8, Screen.MinWidth);
        Assert.InRange(QrPicture.WidthOf(Address + "&job=" + Uri.EscapeDataString($"jobs/{new string('a', 100)}.toml")), 21 + 8, Screen.MinWidth);
    }

    // The quiet zone is four modules on each side, two lines above and below (ISO/IEC 18004, from memory).
    [Fact]
    public void The_picture_has_its_quiet_zone()
    {
        var lines = QrPicture.Of(Address, hasColour: false);
        Assert.All(lines.Take(2), line => Assert.Equal(new string('█', line.Length), line));
        Assert.All(lines.SkipLast(1), line => Assert.True(line.StartsWith("████", StringComparison.Ordinal) && line.EndsWith("████", StringComparison.Ordinal)));
    }

    [Fact]
    public void Without_a_TLS_library_it_is_said_what_to_do()
    {
        var (side, problem) = PhoneSide.Of([Wired], null, 0, hasTls: false);
        Assert.Null(side);
        Assert.Contains("OpenSSL", problem, StringComparison.Ordinal);
        Assert.Contains("leave --phone out", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void The_address_is_chosen_or_asked_about()
    {
        Assert.Equal((new PhoneSide(Wired.Address, 8443), null), PhoneSide.Of([Wired], null, 8443, hasTls: true));
        Assert.Equal((new PhoneSide(Wireless.Address, 0), null), PhoneSide.Of([Wired, Wireless], "192.168.1.20", 0, hasTls: true));
        void Refused(string wanted, IReadOnlyList<NetworkAddress> there, string? given)
        {
            var (side, problem) = PhoneSide.Of(there, given, 0, hasTls: true);
            Assert.Null(side);
            Assert.Contains(wanted, problem, StringComparison.Ordinal);
        }

        Refused("has none", [], null);
        Refused("10.0.0.5 (eth0), 192.168.1.20 (wlan0). Name the one", [Wired, Wireless], null);
        Refused("has no such address", [Wired, Wireless], "0.0.0.0");
        Refused("has no such address", [Wired], "8.8.8.8");
        Refused("has no such address", [Wired], "127.0.0.1");
        Refused("Give an address such as", [Wired], "workshop");
    }

    [Theory]
    [InlineData("--address", "192.168.1.20")]
    [InlineData("--phone-port", "8443")]
    public void What_is_the_phones_goes_with_the_phone(params string[] options)
    {
        var result = BracketGenProgram.Run(["page", .. options]);
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains($"{options[0]} goes with --phone", result.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--phone-port", "65536")]
    [InlineData("--port", "-1")]
    public void A_port_that_is_none_is_bad_input(params string[] options)
    {
        var result = BracketGenProgram.Run(["page", "--phone", .. options]);
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains($"{options[0]} must be a whole number", result.Errors, StringComparison.Ordinal);
    }

    // Draws the half blocks as a screen does, eight pixels to a module.
    private static string? Read(IReadOnlyList<string> lines, bool isInverted)
    {
        const int size = 8;
        var (width, height) = (lines[0].Length * size, lines.Count * 2 * size);
        var grey = new byte[width * height];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var module = y / size;
                var isLit = lines[module / 2][x / size] switch { '█' => true, '▀' => module % 2 == 0, '▄' => module % 2 == 1, _ => false };
                grey[y * width + x] = isLit != isInverted ? byte.MaxValue : byte.MinValue;
            }
        }

        LuminanceSource source = new RGBLuminanceSource(grey, width, height, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(isInverted ? source.invert() : source)))?.Text;
    }
}
