namespace BracketGen.SheetMetal.Standards;

/// <summary>Limit deviations of thermally cut dimensions: ISO 9013:2017, tolerance classes 1 and 2.</summary>
public static class CutTolerance
{
    private static readonly double[] UpTo = [3, 10, 35, 125, 315, 1000];
    private static readonly double[] ClassOneThin = [0.10, 0.15, 0.20, 0.25, 0.25, 0.35];
    private static readonly double[] ClassOneThick = [0.20, 0.20, 0.25, 0.25, 0.30, 0.40];
    private static readonly double[] ClassTwoThin = [0.6, 0.6, 0.6, 0.7, 0.7, 0.8];

    // From memory of the table's second range of thickness; where memory left a doubt, the larger value.
    private static readonly double[] ClassTwoThick = [0.8, 0.8, 0.9, 1.0, 1.1, 1.2];

    /// <summary>Limit deviation (mm, either way) of a cut dimension (mm) in sheet of 1 to 6.3 mm; null if no value is known here.</summary>
    /// <remarks>
    /// Class 2 starts at nominal 3 mm; below that the value of the 3 to 10 mm range is used.
    /// </remarks>
    public static double? Linear(int toleranceClass, double dimension, double thickness)
    {
        var column = Array.FindIndex(UpTo, limit => dimension <= limit);
        if (column < 0 || thickness > ThickestTabled)
        {
            return null;
        }

        return (toleranceClass, thickness <= 3.15) switch
        {
            (1, true) => ClassOneThin[column],
            (1, false) => ClassOneThick[column],
            (2, true) => ClassTwoThin[column],
            (2, false) => ClassTwoThick[column],
            _ => null,
        };
    }

    /// <summary>
    /// What a cut of any thickness may deviate by (mm, either way): the table's value; beyond the table the larger of ISO 2768-1 m and the table's
    /// last value times the thickness over 6.3 mm, so that no dimension is ever held closer in thicker sheet than in thinner.
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

    private const double ThickestTabled = 6.3;
}
