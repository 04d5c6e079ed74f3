namespace BracketGen.SheetMetal.Standards;

/// <summary>Limit deviations of thermally cut dimensions: ISO 9013:2017, tolerance classes 1 and 2.</summary>
public static class CutTolerance
{
    private static readonly double[] UpTo = [3, 10, 35, 125, 315, 1000];
    private static readonly double[] ClassOneThin = [0.10, 0.15, 0.20, 0.25, 0.25, 0.35];
    private static readonly double[] ClassOneThick = [0.20, 0.20, 0.25, 0.25, 0.30, 0.40];
    private static readonly double[] ClassTwoThin = [0.6, 0.6, 0.6, 0.7, 0.7, 0.8];

    /// <summary>Limit deviation (mm, either way) of a cut dimension (mm) in sheet of 1 to 6.3 mm; null if no value is known here.</summary>
    /// <remarks>
    /// Class 2 is given for sheet up to 3.15 mm only, from nominal 3 mm on (below that the value of the 3 to 10 mm range is used).
    /// </remarks>
    public static double? Linear(int toleranceClass, double dimension, double thickness)
    {
        var column = Array.FindIndex(UpTo, limit => dimension <= limit);
        if (column < 0 || thickness > 6.3)
        {
            return null;
        }

        return (toleranceClass, thickness <= 3.15) switch
        {
            (1, true) => ClassOneThin[column],
            (1, false) => ClassOneThick[column],
            (2, true) => ClassTwoThin[column],
            _ => null,
        };
    }
}
