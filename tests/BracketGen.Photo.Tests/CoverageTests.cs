using BracketGen.Geometry;
using BracketGen.TestSupport;
using Xunit.Abstractions;

namespace BracketGen.Photo.Tests;

/// <summary>Photographs with a known truth: each ± holds it in 95 of 100, and is no wider than it must be.</summary>
public sealed class CoverageTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(1, 5, true, 8)]
    [InlineData(2, 25, false, 8)]
    [InlineData(3, 40, true, 8)]
    [InlineData(4, 25, true, 4)]
    public void A_plus_minus_holds_the_truth_in_95_of_100(int series, double tilt, bool givesDistance, int marks)
    {
        var cases = LongRun.IsOn ? 1000 : 250;
        var names = new[] { "hole 1 x", "hole 1 y", "hole 2 x", "hole 2 y", "outer radius", "pitch radius", "pocket angle", "camera height" };
        var (held, told, sum, off) = (new int[names.Length], 0, new double[names.Length], new double[names.Length]);
        var problems = new Dictionary<PhotoProblem, int>();
        for (var i = 0; i < cases; i++)
        {
            var scene = new Scene(100000 * series + i, tilt, 400 + 300.0 * i / cases, 1.5, givesDistance, marks);
            var answer = PhotoReading.Of(scene.Picture, scene.Body);
            if (answer.Findings is not { } found)
            {
                problems[answer.Problem!.Value] = problems.GetValueOrDefault(answer.Problem.Value) + 1;
                continue;
            }

            told++;
            (double Value, double PlusMinus, double Truth)[] all =
            [
                .. found.Holes.SelectMany((h, n) => new[] { (h!.Value.At.X, h.Value.PlusMinus.X, Scene.HolePlaces[n].X), (h.Value.At.Y, h.Value.PlusMinus.Y, Scene.HolePlaces[n].Y) }),
                (found.OuterRadius!.Value.Value, found.OuterRadius.Value.PlusMinus, Scene.OuterRadius),
                (found.PitchRadius!.Value.Value, found.PitchRadius.Value.PlusMinus, Scene.OuterRadius - Scene.ToWire),
                (found.PocketAngle!.Value.Value.Degrees, found.PocketAngle.Value.PlusMinus.Degrees, Scene.Pocket.Degrees),
                (found.CameraHeight.Value, found.CameraHeight.PlusMinus, scene.Eye.Z),
            ];
            for (var k = 0; k < all.Length; k++)
            {
                held[k] += Math.Abs(all[k].Value - all[k].Truth) <= all[k].PlusMinus ? 1 : 0;
                sum[k] += all[k].PlusMinus;
                off[k] += Math.Pow(all[k].Value - all[k].Truth, 2);
            }
        }

        output.WriteLine($"told {told}: " + string.Join(", ", problems.Select(p => $"{p.Key} {p.Value}")));
        for (var k = 0; k < names.Length; k++)
        {
            output.WriteLine($"{names[k]}: held {100.0 * held[k] / told:F1} %, mean ± {sum[k] / told:F3}, root of the mean square of what it was off {Math.Sqrt(off[k] / told):F3}");
        }

        Assert.All(Enumerable.Range(0, names.Length), k => Assert.True(held[k] >= 0.95 * told, names[k]));
    }

    [Theory]
    [InlineData(5)]
    [InlineData(25)]
    [InlineData(40)]
    public void The_grid_is_where_the_camera_sees_the_edges_plane(double tilt)
    {
        for (var i = 0; i < 20; i++)
        {
            var scene = new Scene(700000 + i, tilt, 400 + 15 * i, 1.5, true);
            var found = PhotoReading.Of(scene.Picture, scene.Body).Findings!;
            var (half, count) = (found.Grid!.Half, found.Grid.Count);
            var wide = scene.OnFlange(new(0, 0)).DistanceTo(scene.OnFlange(new(1, 0)));
            var offs = from row in Enumerable.Range(0, count)
                       from column in Enumerable.Range(0, count)
                       let at = new Vector2(half * (2.0 * column / (count - 1) - 1), half * (2.0 * row / (count - 1) - 1))
                       where at.Length < 60
                       select scene.OnFlange(at).DistanceTo(found.Grid.Seen[row * count + column]) / wide;

            // A millimetre is a line's width beside a part of 70 mm; the readings' own ± is as wide.
            Assert.InRange(offs.Max(), 0, 1.5);
        }
    }
}
