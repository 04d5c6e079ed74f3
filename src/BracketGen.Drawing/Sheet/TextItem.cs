using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>Which point of a text's baseline its position names.</summary>
public enum TextAlign
{
    /// <summary>The start.</summary>
    Left,

    /// <summary>The middle.</summary>
    Centre,

    /// <summary>The end.</summary>
    Right,
}

/// <summary>Nominal text heights, that is heights of the capitals (mm), ISO 3098-1.</summary>
public static class TextHeight
{
    /// <summary>Labels of fields.</summary>
    public const double Label = 1.8;

    /// <summary>Notes and tables.</summary>
    public const double Small = 2.5;

    /// <summary>Dimensions.</summary>
    public const double Normal = 3.5;

    /// <summary>Titles.</summary>
    public const double Large = 5;

    /// <summary>Warnings.</summary>
    public const double Huge = 7;
}

/// <summary>One line of text.</summary>
/// <param name="Text">The characters; no line breaks.</param>
/// <param name="Position">Point on the baseline that <paramref name="Align"/> names (mm on paper).</param>
/// <param name="Height">Height of the capitals (mm).</param>
/// <param name="Align">Start, middle or end at the position.</param>
/// <param name="Direction">Direction of the baseline, counter-clockwise from x.</param>
/// <param name="Weight">Weight of the font.</param>
/// <param name="Ink">Colour.</param>
public sealed record TextItem(
    string Text,
    Vector2 Position,
    double Height,
    TextAlign Align = TextAlign.Left,
    Angle Direction = default,
    FontWeight Weight = FontWeight.Regular,
    Ink Ink = Ink.Black) : SheetItem
{
    /// <summary>Length along the baseline (mm).</summary>
    public double Width => SheetFont.Of(Weight).Width(Text, Height);

    /// <summary>Start of the baseline (mm on paper).</summary>
    public Vector2 Start => Position - Align switch
    {
        TextAlign.Left => 0,
        TextAlign.Centre => 0.5,
        _ => 1.0,
    } * Width * Vector2.FromPolar(1, Direction);

    /// <summary>The rectangle that the text's ink lies in, turned with it: four corners (mm on paper), counter-clockwise from the start's foot.</summary>
    public ImmutableArray<Vector2> Corners
    {
        get
        {
            var along = Vector2.FromPolar(1, Direction);
            var (bottom, top) = SheetFont.Of(Weight).Ink(Text, Height);
            Vector2 foot = Start + bottom * along.Left, head = Start + top * along.Left;
            return [foot, foot + Width * along, head + Width * along, head];
        }
    }

    /// <inheritdoc/>
    public override Bounds Bounds => Bounds.Around(Corners);

    /// <inheritdoc/>
    public override SheetItem Shift(Vector2 by) => this with { Position = Position + by };
}
