namespace BracketGen.Drawing.Sheet;

/// <summary>Sizes of dimensions (mm on paper), ISO 129-1.</summary>
/// <param name="TextHeight">Height of the capitals.</param>
/// <param name="ArrowLength">Length of an arrowhead.</param>
/// <param name="ArrowAngle">Full angle of an arrowhead (degrees): ISO 129-1 closed and filled, 15 to 30 degrees.</param>
/// <param name="Gap">Between the feature and its extension line.</param>
/// <param name="Overrun">Of an extension line beyond the dimension line: about eight line widths.</param>
/// <param name="TextGap">Between a line and the text above it.</param>
/// <param name="FirstOffset">From the view to the first row of dimension lines.</param>
/// <param name="NextOffset">From one row to the next.</param>
public sealed record DimensionStyle(
    double TextHeight = 2.5,
    double ArrowLength = 3,
    double ArrowAngle = 20,
    double Gap = 1,
    double Overrun = 2,
    double TextGap = 1,
    double FirstOffset = 10,
    double NextOffset = 7)
{
    /// <summary>The usual sizes on A3 and A4.</summary>
    public static readonly DimensionStyle Standard = new();

    /// <summary>Half the width of an arrowhead at its back.</summary>
    public double ArrowHalfWidth => ArrowLength * Math.Tan(ArrowAngle / 2 * Math.PI / 180);
}
