using System.Collections.Immutable;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf;

/// <summary>A line of text as strokes.</summary>
public static class StrokeText
{
    /// <summary>The strokes of <paramref name="text"/>, one open polyline each.</summary>
    /// <param name="text">One line.</param>
    /// <param name="at">Lower left corner of the first letter (mm).</param>
    /// <param name="height">Height of a capital (mm), positive.</param>
    /// <param name="along">Direction of the line of text.</param>
    /// <param name="layer">The layer it is drawn on.</param>
    /// <exception cref="ArgumentException">A character has no letter in <see cref="StrokeFont"/>, or the height is not positive.</exception>
    public static ImmutableArray<DxfEntity> Of(string text, Vector2 at, double height, Angle along, DxfLayer layer)
    {
        if (!(height > 0))
        {
            throw new ArgumentException($"Letters need a positive height, not {height}.", nameof(height));
        }

        var unit = height / StrokeFont.Height;
        return [.. text.SelectMany((c, i) => StrokeFont.Of(c).Select(stroke => new DxfPolyline(
            layer,
            [.. stroke.Select(p => new DxfVertex(at + (unit * (p + new Vector2(i * StrokeFont.Advance, 0))).Rotate(along)))],
            closed: false)))];
    }

    /// <summary>Length of the line of text (mm), from the first letter's left to the last one's right.</summary>
    public static double Width(string text, double height) =>
        text.Length == 0 ? 0 : height / StrokeFont.Height * (text.Length * StrokeFont.Advance - 2);
}
