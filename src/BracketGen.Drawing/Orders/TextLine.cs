using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Orders;

/// <summary>One line of text that keeps within a width.</summary>
internal static class TextLine
{
    // Smaller than this (mm) nobody reads it; the rest is cut off.
    private const double Least = 1.4;

    /// <summary>The text, smaller if need be, cut off with three dots where even that is too long.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Where its baseline begins (mm).</param>
    /// <param name="height">Wanted height of capitals (mm).</param>
    /// <param name="width">Room (mm).</param>
    /// <param name="weight">Weight of the font.</param>
    public static TextItem Fitting(string text, Vector2 at, double height, double width, FontWeight weight = FontWeight.Regular)
    {
        var font = SheetFont.Of(weight);
        while (height > Least && font.Width(text, height) > width)
        {
            height *= 0.95;
        }

        if (font.Width(text, height) > width)
        {
            var keep = text.Length;
            while (keep > 0 && font.Width(text[..keep] + "...", height) > width)
            {
                keep--;
            }

            text = text[..keep] + "...";
        }

        return new(text, at, height, Weight: weight);
    }
}
