using BracketGen.Strength.Life;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Strength.Tests;

/// <summary>How long sheet lasts under stresses that swing, and what heat leaves of it.</summary>
public sealed class LifeTests
{
    private static readonly SnLine Aluminium = new(66, false), Steel = new(144, true);

    [Fact]
    public void Plain_aluminium_is_that_of_the_standard()
    {
        // EN 1999-1-3, category 90-7 (from memory): range 90 MPa at 2 million; at 5 million 90 (2/5)^(1/7) = 78.96; at a hundred million 78.96 (5/100)^(1/9) = 56.6.
        Assert.Equal(45, SnLine.PlainAluminium(2e6), 1e-9);
        Assert.Equal(78.96 / 2, SnLine.PlainAluminium(5e6), 0.01);
        Assert.Equal(56.6 / 2, SnLine.PlainAluminium(1e8), 0.02);

        // Second value: MIL-HDBK-5 gives 5052-H32 sheet, bare, some 115 MPa reversed at 5e8 (from memory): ours lies far below.
        Assert.InRange(new SnLine(1000, false).Amplitude(5e8), 20, 115);
    }

    [Fact]
    public void Aluminium_never_stops_falling_and_steel_has_a_limit()
    {
        Assert.Equal(144, Steel.Amplitude(1e12));
        Assert.Equal(double.PositiveInfinity, Steel.Cycles(143.9));
        Assert.Equal(0, Steel.Cycles(144.1));
        Assert.True(Aluminium.Amplitude(1e10) < Aluminium.Amplitude(1e9));

        // No more than the material's own endurance at any number, and falling beyond five million.
        Assert.Equal(30, new SnLine(30, false).Amplitude(1e5));
        Assert.Equal(30 * Math.Pow(0.05, 1.0 / 9), new SnLine(30, false).Amplitude(1e8), 1e-9);
        Assert.Equal(0, new SnLine(30, false).Cycles(30.1));
    }

    [Fact]
    public void Cycles_and_amplitude_are_one_line() => Repeatable.Check(
        Gen.Select(Gen.Double[5.1, 10], Gen.Double[20, 200]),
        200,
        of =>
        {
            var (power, endurance) = of;
            var line = new SnLine(endurance, false);
            var cycles = Math.Pow(10, power);
            var amplitude = line.Amplitude(cycles);

            // Level up to five million where the material's own endurance decides.
            Assert.True(line.Cycles(amplitude * (1 - 1e-9)) >= cycles * (1 - 1e-6));
            Assert.True(line.Cycles(amplitude * (1 + 1e-9)) <= Math.Max(5e6, cycles) * (1 + 1e-6));
        });

    [Fact]
    public void One_load_is_soderberg_s_line()
    {
        // Shigley: amplitude 40 of 80, mean 60 of 300: 1/n = 0.5 + 0.2. A constant 90 of 300 leaves seven tenths of it. An edge of a half doubles the amplitude's part.
        var line = new SnLine(80, true);
        Assert.Equal(1 / 0.7, FatigueFactor.Of(new FatigueLoad(40, 60, 1e6), line, 300), 1e-12);
        Assert.Equal(0.7 / 0.7, FatigueFactor.Of(new FatigueLoad(40, 60, 1e6), line, 300, 90), 1e-12);
        Assert.Equal(1 / 1.2, FatigueFactor.Of(new FatigueLoad(40, 60, 1e6), line, 300, 0, 0.5), 1e-12);
        Assert.Equal(0, FatigueFactor.Of(new FatigueLoad(40, 60, 1e6), line, 300, 310));
        Assert.Equal(double.PositiveInfinity, FatigueFactor.Of(new FatigueLoad(0, 0, 1e6), line, 300, 310));
    }

    [Fact]
    public void Damages_add_up()
    {
        // Miner: two loads that each use up half of the life together use it up, so the factor is one; and two equal blocks are one of twice the cycles.
        const double yield = 130;
        double a = Aluminium.Amplitude(2e6), b = Aluminium.Amplitude(4e8);
        Assert.Equal(1, FatigueFactor.Of([new(a, 0, 1e6), new(b, 0, 2e8)], Aluminium, yield), 1e-9);
        Assert.Equal(
            FatigueFactor.Of(new FatigueLoad(20, 20, 4e6), Aluminium, yield), FatigueFactor.Of([new(20, 20, 2e6), new(20, 20, 2e6)], Aluminium, yield), 1e-9);

        // On steel each load stays under the limit or does not.
        Assert.Equal(144.0 / 60, FatigueFactor.Of([new(60, 0, 1e6), new(30, 0, 1e9)], Steel, 235), 1e-12);
    }

    [Fact]
    public void More_of_anything_never_lasts_longer() => Repeatable.Check(
        Gen.Select(Gen.Double[1, 60], Gen.Double[0, 60], Gen.Double[0, 20], Gen.Double[5, 9], Gen.Double[0, 60]),
        200,
        of =>
        {
            var (pedal, mean, shaking, power, constant) = of;
            var cycles = Math.Pow(10, power);
            double Of(double more) => FatigueFactor.Of([new(more * pedal, mean, 3e6), new(shaking, 0, cycles)], Aluminium, 130, constant, 0.78);
            var alone = FatigueFactor.Of(new FatigueLoad(pedal, mean, 3e6), Aluminium, 130);
            Assert.True(Of(1) <= alone * (1 + 1e-9));
            Assert.True(Of(1.1) <= Of(1) * (1 + 1e-9));
        });

    [Theory]
    [InlineData(MetalFamily.CarbonSteel, 20, 1, 1)]
    [InlineData(MetalFamily.CarbonSteel, 100, 1, 1)]
    [InlineData(MetalFamily.CarbonSteel, 200, 0.807, 0.9)] // EN 1993-1-2, table 3.1, as quoted in open fire design code
    [InlineData(MetalFamily.CarbonSteel, 300, 0.613, 0.8)]
    [InlineData(MetalFamily.CarbonSteel, 250, 0.71, 0.85)]
    [InlineData(MetalFamily.StainlessSteel, 100, 0.82, 0.96)] // annex C, from memory
    [InlineData(MetalFamily.Aluminium, 100, 0.9, 0.97)] // EN 1999-1-2, from memory
    [InlineData(MetalFamily.Aluminium, -20, 1, 1)]
    [InlineData(MetalFamily.Other, 90, 1, 1)]
    public void Heat_leaves_what_the_standards_say(MetalFamily family, double temperature, double yield, double modulus)
    {
        var hot = HotStrength.At(family, temperature);
        Assert.Equal(yield, hot.Yield, 1e-9);
        Assert.Equal(modulus, hot.Modulus, 1e-9);
    }

    [Fact]
    public void Beyond_the_tables_the_last_value_stays_and_says_where_it_ends()
    {
        foreach (var family in Enum.GetValues<MetalFamily>())
        {
            Assert.Equal(HotStrength.At(family, HotStrength.Hottest(family)), HotStrength.At(family, 450));
        }

        Assert.Equal(100, HotStrength.Hottest(MetalFamily.Aluminium));
        Assert.Equal(20, HotStrength.Hottest(MetalFamily.Other));
    }
}
