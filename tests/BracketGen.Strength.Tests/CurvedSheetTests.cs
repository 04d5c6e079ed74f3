using BracketGen.Strength.Parts;

namespace BracketGen.Strength.Tests;

/// <summary>The factor for the inside of a bend.</summary>
public sealed class CurvedSheetTests
{
    // W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain, table of curved beams, solid rectangular section, k_i by R/c with c half the depth (from memory of the table).
    [Theory]
    [InlineData(1.4, 2.103)]
    [InlineData(1.6, 1.798)]
    [InlineData(2, 1.523)]
    [InlineData(3, 1.288)]
    [InlineData(4, 1.200)]
    [InlineData(6, 1.124)]
    [InlineData(10, 1.071)]
    public void Factor_is_that_of_the_handbook(double centre, double factor) =>
        Assert.Equal(factor, CurvedSheet.InsideFactor((centre - 1) / 2), 0.015 * factor);

    /// <summary>A curved bar in pure bending, exactly (H. Golovin 1881; Timoshenko and Goodier, Theory of Elasticity, section 29).</summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(1.5)]
    [InlineData(3)]
    public void Factor_is_near_the_exact_one(double radius)
    {
        double a = radius, b = radius + 1, log = Math.Log(b / a);
        var n = (b * b - a * a) * (b * b - a * a) - 4 * a * a * b * b * log * log;
        var stress = 4 / n * (b * b * log + b * b * log - (b * b - a * a));
        Assert.Equal(stress / 6, CurvedSheet.InsideFactor(radius), 0.01 * stress / 6);
    }

    [Fact]
    public void It_falls_to_one_as_the_sheet_becomes_flat()
    {
        var last = CurvedSheet.InsideFactor(0);
        Assert.True(double.IsFinite(last));
        foreach (var radius in new[] { 0.1, 0.3, 1, 3, 10, 100, 900, 1e4, double.PositiveInfinity })
        {
            var factor = CurvedSheet.InsideFactor(radius);
            Assert.InRange(factor, 1, last);
            last = factor;
        }

        Assert.Equal(1, last);
    }
}
