using System.Collections.Immutable;
using System.Globalization;

namespace BracketGen.Drawing.Sheet;

/// <summary>A preferred scale, ISO 5455.</summary>
/// <param name="Paper">The first number: mm on paper ...</param>
/// <param name="Real">... for so many mm of the part.</param>
public readonly record struct DrawingScale(int Paper, int Real)
{
    /// <summary>Full size.</summary>
    public static readonly DrawingScale Full = new(1, 1);

    /// <summary>The preferred scales, largest first (ISO 5455, table 1, as far as a bracket may need).</summary>
    public static readonly ImmutableArray<DrawingScale> Preferred =
    [
        new(10, 1), new(5, 1), new(2, 1), Full, new(1, 2), new(1, 5), new(1, 10), new(1, 20), new(1, 50),
    ];

    /// <summary>mm on paper for each mm of the part.</summary>
    public double Factor => (double)Paper / Real;

    /// <summary>
    /// The largest preferred scale, not above <paramref name="largest"/>, at which a view of <paramref name="width"/> by
    /// <paramref name="height"/> (mm, real) fits into a room of the given size (mm on paper).
    /// </summary>
    /// <exception cref="ArgumentException">It does not fit even at the smallest one.</exception>
    public static DrawingScale Choose(double width, double height, double roomWidth, double roomHeight, DrawingScale? largest = null)
    {
        var limit = (largest ?? Full).Factor;
        foreach (var scale in Preferred)
        {
            if (scale.Factor <= limit && width * scale.Factor <= roomWidth && height * scale.Factor <= roomHeight)
            {
                return scale;
            }
        }

        throw new ArgumentException($"A view of {width:0} x {height:0} mm does not fit into {roomWidth:0} x {roomHeight:0} mm at any preferred scale.");
    }

    /// <summary>"1:2".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Paper}:{Real}");
}
