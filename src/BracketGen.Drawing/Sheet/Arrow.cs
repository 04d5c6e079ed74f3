using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>Filled arrowheads.</summary>
public static class Arrow
{
    /// <summary>An arrowhead whose tip is at <paramref name="tip"/> (mm on paper) and which points along <paramref name="direction"/> (any length).</summary>
    public static Fill Head(Vector2 tip, Vector2 direction, DimensionStyle style)
    {
        var along = direction.Unit;
        var back = tip - style.ArrowLength * along;
        return new([tip, back + style.ArrowHalfWidth * along.Left, back - style.ArrowHalfWidth * along.Left], Ink.Black);
    }
}
