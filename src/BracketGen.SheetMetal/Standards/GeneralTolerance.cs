using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Standards;

/// <summary>General tolerances for dimensions without their own: ISO 2768-1, class m.</summary>
public static class GeneralTolerance
{
    /// <summary>Permissible deviation (mm, either way) of a linear dimension (mm).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The dimension is below 0.5 mm or above 2000 mm: the table does not cover it.</exception>
    public static double Linear(double dimension) => dimension switch
    {
        < 0.5 or > 2000 or double.NaN => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "ISO 2768-1 covers 0.5 to 2000 mm."),
        <= 6 => 0.1,
        <= 30 => 0.2,
        <= 120 => 0.3,
        <= 400 => 0.5,
        <= 1000 => 0.8,
        _ => 1.2,
    };

    /// <summary>Permissible deviation of an angle, by the length (mm) of its shorter side.</summary>
    public static Angle Angular(double shorterSide) => Angle.FromDegrees(shorterSide switch
    {
        <= 10 => 1,
        <= 50 => 30 / 60.0,
        <= 120 => 20 / 60.0,
        <= 400 => 10 / 60.0,
        _ => 5 / 60.0,
    });
}
