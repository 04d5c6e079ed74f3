using BracketGen.Geometry;
using BracketGen.Strength.Parts;

namespace BracketGen.Strength.Tests;

/// <summary>Rayleigh's quotient over what forces on the seat do, and the modes that begin there.</summary>
public sealed class FrequencyBoundTests
{
    [Theory]
    [InlineData(5)]
    [InlineData(3)]
    public void Quotient_lies_above_the_first_frequency_and_close_to_it(double size)
    {
        var prepared = LBracket.Part.Prepare(size, size / 2);
        var first = prepared.LowestModes(1)[0].Frequency;
        var (rough, close) = (prepared.FirstFrequencyAtMost(), prepared.FirstFrequencyCloselyAtMost());
        Assert.InRange(rough, first * (1 - 1e-10), 1.05 * first);
        Assert.InRange(close, first * (1 - 1e-10), 1.005 * first);

        // CalculiX as a solid of quadratic wedges: 610 Hz (docs/strength.md).
        Assert.InRange(close, 605, 620);
    }

    [Fact]
    public void Static_shape_of_a_cantilever_with_a_mass_is_that_of_Rayleigh()
    {
        // Rayleigh took the static curve under a tip load for a uniform cantilever with a tip mass M: ω² = 3 E I/((M + 33/140 m) L³) (Lord Rayleigh, The Theory of Sound, section 183; from memory).
        // Wide enough to be a plate that bends to a cylinder at a Poisson's ratio of zero.
        const double length = 100, width = 20, thickness = 2, mass = 5e-5, density = 7.85e-9, modulus = 210000;
        var flat = Contour.Polygon([new(-15, 0), new(length + 10, 0), new(length + 10, width), new(-15, width)]);
        var part = new FoldedPart
        {
            Flat = new(flat, []), MiddleSurface = p => new(p.X, p.Y, 0), Thickness = thickness, Material = new(modulus, 0, density),
            Washers = [new(new(-10, width / 2), 10)], Seat = new(new(length, width / 2), 6), SeatBody = new(mass, 0, 0, 0),
        };
        var first = part.Prepare(3, 2).FirstFrequencyAtMost();

        // Held by a round washer whose rim ends at 0, the strip is a little longer; 10 mm of sheet hang over behind the seat.
        double inertia = width * thickness * thickness * thickness / 12, sheet = density * width * thickness * length;
        double Rayleigh(double l) => Math.Sqrt(3 * modulus * inertia / ((mass + 33.0 / 140 * sheet) * l * l * l)) / (2 * Math.PI);
        Assert.InRange(first, 0.93 * Rayleigh(length), Rayleigh(length));
    }

    [Fact]
    public void Modes_do_not_depend_on_where_the_search_for_them_begins()
    {
        var prepared = LBracket.Part.Prepare(4, 2);
        var (near, structureless) = (prepared.LowestModes(4), prepared.System.LowestModes(4));
        for (var i = 0; i < 4; i++)
        {
            Assert.Equal(structureless[i].Frequency, near[i].Frequency, 1e-9 * near[i].Frequency);
            for (var n = 0; n < near[i].Shape.Length; n++)
            {
                Assert.True((near[i].Shape[n] - structureless[i].Shape[n]).Length < 1e-4);
            }
        }
    }

    [Fact]
    public void A_combined_response_is_that_of_the_force_itself()
    {
        var prepared = LBracket.Part.Prepare(5, 3);
        var direct = prepared.System.Solve(SeatLoad.Spread(prepared.Flat, prepared.Part.Seat, LBracket.Force));
        var combined = prepared.Under(LBracket.Force).Solution;
        Assert.Equal(direct.LargestStress, combined.LargestStress, 1e-9 * direct.LargestStress);
        Assert.Equal(direct.Reactions.Length, combined.Reactions.Length);
        var (one, other) = (direct.Reactions.Aggregate(Vector3.Zero, (s, r) => s + r.Force), combined.Reactions.Aggregate(Vector3.Zero, (s, r) => s + r.Force));
        Assert.True((one - other).Length < 1e-9 * LBracket.Force.Length && (one + LBracket.Force).Length < 1e-7 * LBracket.Force.Length);
    }
}
