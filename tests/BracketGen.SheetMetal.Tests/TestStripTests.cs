using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using CsCheck;

namespace BracketGen.SheetMetal.Tests;

/// <summary>K out of measured strips.</summary>
public class TestStripTests
{
    /// <summary>
    /// Machinery's Handbook, "Bending sheet metal", turned round: L = 0.64 T + 1.57 R = 4.42 mm for T = R = 2 at 90°. A strip of 100 mm then has legs of
    /// (100 - 4.42)/2 + 4 = 51.79 mm each, and K = 4.42/(2 · π/2) - 1 = 0.407.
    /// </summary>
    [Fact]
    public void The_handbooks_own_bend_gives_its_k()
    {
        var strip = new TestStrip(100, 51.79, 51.79, Angle.Right, 2, 2);
        Assert.Equal(4.42, strip.Allowance, 1e-9);
        Assert.Equal(0.407, strip.K, 5e-4);
        Assert.True(strip.IsPlausible);
        Assert.False((strip with { LegA = 53.5 }).IsPlausible);
        Assert.False((strip with { LegA = 50.5 }).IsPlausible);
    }

    /// <summary>The K of DIN 6935 is half its correction factor k = 0.65 + 0.5 log10(r/s): 0.325 at r = s.</summary>
    [Fact]
    public void Din_6935_has_twice_the_k()
    {
        var bend = Angle.FromDegrees(60);
        var arc = new Din6935Rule().Allowance(bend, 3, 3);

        // DIN's compensation from 90° to 165° of opening angle: L = a + b + v, v = arc - 2 (r + s) tan(A/2).
        var blank = 40 + 30 + arc - 2 * 6 * Math.Tan(bend.Radians / 2);
        Assert.Equal(Din6935Rule.CorrectionFactor(3, 3) / 2, new TestStrip(blank, 40, 30, bend, 3, 3).K, 1e-12);
    }

    [Fact]
    public void K_comes_back_from_the_strip_it_makes() => BracketGen.TestSupport.Repeatable.Check(
        Gen.Select(Gen.Double[5, 150], Gen.Double[0.5, 6], Gen.Double[0.5, 5], Gen.Double[0, 0.5]), 500, c =>
        {
            var (degrees, radius, thickness, k) = c;
            var turn = Angle.FromDegrees(degrees);
            var setback = (radius + thickness) * Math.Tan(turn.Radians / 2);
            var strip = new TestStrip(30 + 40 + new TestBendRule(k, "").Allowance(turn, radius, thickness), 30 + setback, 40 + setback, turn, radius, thickness);
            Assert.Equal(k, strip.K, 1e-9);
            Assert.Equal(k - strip.KPerLeg(0.1), (strip with { LegA = strip.LegA + 0.1 }).K, 1e-9);
        });

    /// <summary>At 90° and t = 2, 0.1 mm on one leg moves K by 0.032; on both, independently, by 0.045.</summary>
    [Fact]
    public void Reading_moves_k()
    {
        var strip = new TestStrip(100, 51.79, 51.79, Angle.Right, 2, 2);
        Assert.Equal(0.0318, strip.KPerLeg(0.1), 1e-4);
        Assert.Equal(0.0450, strip.KPlusMinus(0.1), 1e-4);
    }

    [Fact]
    public void Three_strips_say_more_than_one()
    {
        var strip = new TestStrip(100, 51.79, 51.79, Angle.Right, 2, 2);
        var result = TestStripResult.Of([strip, strip with { LegA = 51.84 }, strip with { LegA = 51.74, InsideRadius = 2.3 }]);
        Assert.Equal(new[] { strip.K, strip.K - strip.KPerLeg(0.05), (strip with { LegA = 51.74, InsideRadius = 2.3 }).K }.Average(), result.K, 1e-12);
        Assert.Equal(2.1, result.InsideRadius, 1e-12);
        Assert.Equal(0.045 / Math.Sqrt(3), result.PlusMinus, 1e-4);
        Assert.False(result.IsSpreadTooLarge);
        Assert.True(TestStripResult.Of([strip, strip with { LegA = 52.3 }]).IsSpreadTooLarge);
        Assert.Throws<ArgumentException>(() => TestStripResult.Of([]));
    }
}
