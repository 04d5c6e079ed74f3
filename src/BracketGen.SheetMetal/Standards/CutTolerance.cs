namespace BracketGen.SheetMetal.Standards;

/// <summary>Limit deviations of thermally cut dimensions: ISO 9013:2017, tolerance classes 1 and 2.</summary>
public static class CutTolerance
{
    private static readonly double[] UpTo = [3, 10, 35, 125, 315, 1000];

    // Rows by thickness up to; below 3 mm of size, thick rows have no value: that of 3 to 10 mm is used.
    private static readonly (double Thickness, double[] ClassOne, double[] ClassTwo)[] Rows =
    [
        (3.15, [0.10, 0.15, 0.20, 0.25, 0.25, 0.35], [0.6, 0.6, 0.7, 0.7, 0.8, 0.9]),
        (6.3, [0.20, 0.20, 0.25, 0.25, 0.30, 0.40], [0.7, 0.8, 0.9, 0.9, 1.1, 1.2]),
        (10, [0.25, 0.25, 0.30, 0.30, 0.35, 0.45], [1.0, 1.0, 1.1, 1.3, 1.4, 1.5]),
        (15, [0.30, 0.30, 0.35, 0.40, 0.45, 0.55], [1.8, 1.8, 1.8, 1.8, 1.9, 2.3]),
    ];

    /// <summary>Limit deviation (mm, either way) of a cut dimension (mm) in sheet of up to 15 mm; null if no value is known here.</summary>
    /// <remarks>Sheet up to 1 mm has a row of its own in the standard, a little closer; that of 1 to 3.15 mm is used.</remarks>
    public static double? Linear(int toleranceClass, double dimension, double thickness)
    {
        var column = Array.FindIndex(UpTo, limit => dimension <= limit);
        var row = Array.FindIndex(Rows, r => thickness <= r.Thickness);
        return column < 0 || row < 0 ? null : toleranceClass switch
        {
            1 => Rows[row].ClassOne[column],
            2 => Rows[row].ClassTwo[column],
            _ => null,
        };
    }

    /// <summary>
    /// What a cut of any thickness may deviate by (mm, either way): the table's value; beyond the table the larger of ISO 2768-1 m and the table's
    /// last value times the thickness over 15 mm, so that no dimension is ever held closer in thicker sheet than in thinner.
    /// </summary>
    /// <param name="toleranceClass">Class 1 or 2.</param>
    /// <param name="dimension">Dimension (mm); from 0.5 to 2000 mm, beyond that the nearest of these.</param>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    public static double Deviation(int toleranceClass, double dimension, double thickness)
    {
        var size = Math.Clamp(dimension, 0.5, 2000);
        return Linear(toleranceClass, size, thickness) ?? Math.Max(
            GeneralTolerance.Linear(size),
            Math.Max(1, thickness / ThickestTabled) * Linear(toleranceClass, Math.Min(size, UpTo[^1]), Math.Min(thickness, ThickestTabled))!.Value);
    }

    private static double ThickestTabled => Rows[^1].Thickness;
}
