using System.Collections.Immutable;
using System.Text;
using QRCoder;

namespace BracketGen.Cli.Terminal;

/// <summary>A QR code drawn with half blocks, two rows of modules to a line, its quiet zone of four modules with it.</summary>
/// <remarks>
/// Light modules are drawn, dark ones left out: right on a dark terminal. With colour, both are set, whatever colours the terminal has; without, a light
/// terminal shows the picture inverted, which most cameras read too. Source of the quiet zone: ISO/IEC 18004, from memory.
/// </remarks>
internal static class QrPicture
{
    // White on black of the 256 colours, which no terminal's theme replaces, unlike the first sixteen.
    private const string Start = "\u001b[38;5;231;48;5;16m", End = "\u001b[0m";

    /// <summary>The lines of the picture.</summary>
    /// <param name="text">What the code says.</param>
    /// <param name="hasColour">Whether colours are set.</param>
    public static IReadOnlyList<string> Of(string text, bool hasColour)
    {
        using var code = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.L);
        var dark = code.ModuleMatrix;
        var lines = new List<string>();
        for (var row = 0; row < dark.Count; row += 2)
        {
            var line = new StringBuilder();
            for (var column = 0; column < dark.Count; column++)
            {
                var (over, under) = (!dark[row][column], row + 1 < dark.Count && !dark[row + 1][column]);
                line.Append((over, under) switch { (true, true) => '█', (true, false) => '▀', (false, true) => '▄', _ => ' ' });
            }

            lines.Add(hasColour ? Start + line + End : line.ToString());
        }

        return lines;
    }

    /// <summary>The dark modules of a code for a printed label, row by row, without the quiet zone. Level M: a label in a workshop gets dirty.</summary>
    /// <param name="text">What the code says.</param>
    public static ImmutableArray<ImmutableArray<bool>> ModulesOf(string text)
    {
        using var code = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var dark = code.ModuleMatrix;
        const int quiet = 4;
        return [.. Enumerable.Range(quiet, dark.Count - 2 * quiet).Select(row => Enumerable.Range(quiet, dark.Count - 2 * quiet).Select(column => dark[row][column]).ToImmutableArray())];
    }

    /// <summary>Width of the picture (columns).</summary>
    public static int WidthOf(string text)
    {
        using var code = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.L);
        return code.ModuleMatrix.Count;
    }
}
