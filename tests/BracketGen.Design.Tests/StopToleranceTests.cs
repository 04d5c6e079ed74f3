using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Cutting;

namespace BracketGen.Design.Tests;

/// <summary>What the drawing allows of the stop is what the probabilities count.</summary>
public class StopToleranceTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");
    private static readonly Bracket Bracket = Designer.Solve(Plover).Bracket!;

    private static StopTolerance Of(Bracket bracket) => StopTolerance.Of(bracket, CuttingProcess.Laser, Plover.Vehicle.Cable.OuterEnd);

    // By hand, one square bend: the seat turns with the bend by its ±1° and nothing else turns it. Along the seat's normal it moves by the bend line's leg, ISO 2768-m,
    // and by 1° times its distance from the bend's axis; both by the root of the sum of squares, and twice for the width of the zone.
    [Fact]
    public void One_bend_by_hand()
    {
        var tolerance = Of(Bracket);
        var bend = Assert.Single(Bracket.Flat.Bends);
        Assert.Equal(1, tolerance.Tilt.Degrees, 1e-4);
        Assert.Equal(tolerance.SeatDiameter * Math.Sin(Math.PI / 180), tolerance.Angularity, 1e-4);

        var (seat, normal) = Bracket.FoldedSeat;
        var (point, axis) = Bracket.Folded.AxisOf(bend);
        var turned = Math.PI / 180 * axis.Cross(seat - point);
        var across = Bracket.Folded.Flanges[0].ToWorldDirection(Vector3.From(bend.Across));
        var leg = SeatTolerances.OfLeg(bend.Depth(Bracket.Stop.Centre));

        // The bend line goes on by the leg's deviation and the stop stays on the sheet: the seat moves with the flange less what the flange gets shorter.
        var along = Bracket.Folded.Flanges[1].ToWorldDirection(Vector3.From(bend.Across));
        var moved = leg * (across - along);

        // A strip of the bend that takes more sheet begins by half of it sooner and leaves the flange past it shorter by the other half.
        var taken = bend.Rule.KPlusMinus * bend.Turn.Magnitude.Radians * Bracket.Flat.Thickness / 2 * (across + along);
        Assert.Equal(
            2 * Math.Sqrt(Math.Pow(turned.Dot(normal), 2) + Math.Pow(moved.Dot(normal), 2) + Math.Pow(taken.Dot(normal), 2)), tolerance.Profile, 2e-3);
        var cut = HoleMaking.Of(Bracket, Bracket.Stop, Plover.Vehicle.Cable.OuterEnd, CuttingProcess.Laser).Position;
        Assert.True(tolerance.Position >= 2 * cut - 1e-6);
    }

    // Cauchy and Schwarz: with the deviations as parts of their limits, a part whose squares add up to one at most lies in the zones, whatever way it is off. Parts are folded anew.
    [Fact]
    public void Parts_within_the_sum_of_squares_lie_in_the_zones_and_the_limits_are_reached()
    {
        var tolerance = Of(Bracket);
        var (seat, normal) = Bracket.FoldedSeat;
        var deviations = SeatTolerances.Deviations(Bracket, CuttingProcess.Laser, Plover.Vehicle.Cable.OuterEnd).Select(d => (d.PlusMinus / d.Step, At: d.Made.FoldedSeat.Point - seat)).ToArray();
        var random = new Random(5);
        double farthest = 0, deepest = 0;
        for (var i = 0; i < 20_000; i++)
        {
            double[] parts = [.. deviations.Select(_ => random.NextDouble() * 2 - 1)];
            var size = Math.Sqrt(parts.Sum(p => p * p));
            var off = deviations.Zip(parts).Aggregate(Vector3.Zero, (sum, d) => sum + d.Second / size * d.First.Item1 * d.First.At);
            var depth = off.Dot(normal);
            deepest = Math.Max(deepest, Math.Abs(depth));
            farthest = Math.Max(farthest, (off - depth * normal).Length);
        }

        Assert.InRange(2 * farthest, 0.97 * tolerance.Position, tolerance.Position * (1 + 1e-9));
        Assert.InRange(2 * deepest, 0.97 * tolerance.Profile, tolerance.Profile * (1 + 1e-9));
    }

    // A flat plate: only the cut moves its stop, by ±0.15 mm along x and along y (ISO 9013 class 1, 3 to 10 mm, sheet to 3.15 mm), and nothing tilts it.
    [Fact]
    public void A_plate_has_the_cut_alone()
    {
        var flat = Bracket.Flat with { Bends = [] };
        var plate = Bracket with
        {
            Folded = new(flat, Bracket.Folded.Flanges[0]),
            Holes = [.. Bracket.Holes.Select(h => h with { Flange = 0 })],
        };
        var tolerance = Of(plate);
        Assert.Equal(0.3, tolerance.Position, 1e-6);
        Assert.Equal(0, tolerance.Profile, 1e-6);
        Assert.Equal(0, tolerance.Tilt.Radians, 1e-9);
    }
}
