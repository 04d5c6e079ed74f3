using System.Globalization;
using System.Text;

namespace BracketGen.TestSupport;

/// <summary>A grey picture in netpbm's binary PGM: three numbers after the magic, then a byte a pixel, rows from the top.</summary>
/// <param name="Width">Pixels a row.</param>
/// <param name="Height">Rows.</param>
/// <param name="Pixels">0 black to 255 white.</param>
public sealed record GreyPicture(int Width, int Height, byte[] Pixels)
{
    /// <summary>Reads a file.</summary>
    public static GreyPicture Read(string path)
    {
        var bytes = File.ReadAllBytes(path);
        var numbers = new List<int>();
        var at = 2;
        while (numbers.Count < 3)
        {
            while (char.IsWhiteSpace((char)bytes[at]))
            {
                at++;
            }

            var start = at;
            while (!char.IsWhiteSpace((char)bytes[at]))
            {
                at++;
            }

            numbers.Add(int.Parse(Encoding.ASCII.GetString(bytes, start, at - start), CultureInfo.InvariantCulture));
        }

        return new(numbers[0], numbers[1], bytes[(at + 1)..]);
    }

    /// <summary>Whether a pixel is nearer to black than to white.</summary>
    public bool IsDark(int x, int y) => Pixels[y * Width + x] < 128;

    /// <summary>Where a row crosses dark lines: the middle of each by weight of ink, in pixels from the left edge of the first.</summary>
    public IReadOnlyList<double> LinesAcross(int y)
    {
        var lines = new List<double>();
        double ink = 0, moment = 0;
        for (var x = 0; x <= Width; x++)
        {
            var here = x < Width ? 255 - Pixels[y * Width + x] : 0;
            if (here > 0)
            {
                ink += here;
                moment += here * (x + 0.5);
            }
            else if (ink > 0)
            {
                lines.Add(moment / ink);
                (ink, moment) = (0, 0);
            }
        }

        return lines;
    }
}
