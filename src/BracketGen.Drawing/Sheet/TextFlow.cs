using System.Collections.Immutable;

namespace BracketGen.Drawing.Sheet;

/// <summary>Text broken into lines.</summary>
public static class TextFlow
{
    /// <summary>Distance of baselines as a multiple of the cap height: clears descenders from the ascenders below (ISO 3098-1 asks 1.4 at least for accented capitals).</summary>
    public const double LineSpacing = 1.7;

    /// <summary>Highest ink above the baseline as a multiple of the cap height: l and brackets stand 1.08 high.</summary>
    internal const double Ascent = 1.1;

    /// <summary>Lowest ink below the baseline as a multiple of the cap height: g and j hang 0.345 down.</summary>
    internal const double Descent = 0.36;

    /// <summary>
    /// The lines of <paramref name="text"/>, none wider than <paramref name="width"/> (mm) at a cap <paramref name="height"/> (mm).
    /// Breaks at blanks, not at no-break blanks (U+00A0); a word wider than the line is broken inside. A line break in the text
    /// stays one.
    /// </summary>
    public static ImmutableArray<string> Wrap(string text, double width, double height, FontWeight weight = FontWeight.Regular)
    {
        var font = SheetFont.Of(weight);
        bool Fits(string line) => font.Width(line, height) <= width;

        var lines = ImmutableArray.CreateBuilder<string>();
        foreach (var paragraph in text.Split('\n'))
        {
            var line = "";
            foreach (var word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                var longer = line.Length == 0 ? word : line + " " + word;
                if (Fits(longer))
                {
                    line = longer;
                    continue;
                }

                if (line.Length > 0)
                {
                    lines.Add(line);
                }

                line = word;
                while (!Fits(line) && line.Length > 1)
                {
                    var take = Enumerable.Range(1, line.Length - 1).LastOrDefault(n => Fits(line[..n]), 1);
                    lines.Add(line[..take]);
                    line = line[take..];
                }
            }

            lines.Add(line);
        }

        return lines.ToImmutable();
    }

    /// <summary>The same in as few lines, but of about equal length: for headlines, where a last line of one word looks lost.</summary>
    public static ImmutableArray<string> WrapEvenly(string text, double width, double height, FontWeight weight = FontWeight.Regular)
    {
        var count = Wrap(text, width, height, weight).Length;
        double narrow = 0, wide = width;
        for (var i = 0; i < 30; i++)
        {
            var middle = (narrow + wide) / 2;
            var isEnough = middle > 0 && Wrap(text, middle, height, weight).Length <= count;
            (narrow, wide) = isEnough ? (narrow, middle) : (middle, wide);
        }

        return Wrap(text, wide, height, weight);
    }
}
