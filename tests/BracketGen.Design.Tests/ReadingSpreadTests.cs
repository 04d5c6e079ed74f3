using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.TestSupport;
using CsCheck;
using Check = BracketGen.Design.Checks.Check;

namespace BracketGen.Design.Tests;

/// <summary>The ± of what was measured on a bracket: no bracket within it fails what was said to pass.</summary>
public class ReadingSpreadTests
{
    public static TheoryData<string> Names => Examples.OnOneFace;

    private static readonly Lazy<Job> Plover = new(() => Examples.Read("plover-alder-58"));

    // Brackets whose every dimension lies somewhere within its ±, as if they were the true ones: each is solved whole and held against the answer for the readings. Probabilities are over all of them at once and are
    // left out. What the sample's own layer or class leaves open is not known in both.
    [Theory]
    [MemberData(nameof(Names))]
    public void No_bracket_within_the_readings_fails_what_passes(string name)
    {
        var job = Examples.Read(name);
        var drawn = Designer.Solve(job, SearchEffort.WithoutStrength).Bracket!;

        // The bracket on the ring has corners closer together than a wide ± lets them be: it is read more finely.
        Held(job, Roughly(BracketDescription.Of(drawn, "ours", "our own drawing"), job.Body.Mount.Ring is null ? 1 : 0.2), LongRun.Of(100), null);
    }

    [Theory]
    [InlineData("shelf-upright-34")]
    [InlineData("bought-tall-34")]
    public void No_bought_bracket_within_the_readings_fails_what_passes(string name)
    {
        var measured = ProfileReader.ReadBracket(RepositoryRoot.PathOf("profiles", "brackets", name + ".toml"), new DiskFileSource(), Plover.Value.Shop).Value!;
        var (job, bracket) = (Plover.Value, measured with { Holes = [.. measured.Holes.Select((h, i) => h with { At = new(34 * i, 0), Diameter = 6.6 })] });
        Held(job, bracket, LongRun.Of(100), null);
        Held(job, bracket, LongRun.Of(30), StrengthDetail.Usual);
    }

    // The wider the ±, the less is known; and nothing that fails as read is made better by it.
    [Fact]
    public void More_plus_or_minus_never_makes_it_better()
    {
        var job = Plover.Value;
        var measured = BracketDescription.Of(Designer.Solve(job, SearchEffort.WithoutStrength).Bracket!, "ours", "our own drawing");
        var before = 0;
        foreach (var part in new[] { 0, 0.25, 0.5, 1, 2, 4 })
        {
            var open = Solved(job, Roughly(measured, part), null)!.Solution!.Checks.Count(c => c.State == CheckState.NotKnown);
            Assert.True(open >= before, $"{open} not known at {part}, {before} before");
            before = open;
        }

        Assert.True(before > 12, $"{before}");
    }

    // By hand: holes 34 mm apart, each ±0.05 in x and y. Across their line the ends move by 0.05 to opposite sides: 0.1 over 34 rad.
    [Fact]
    public void Two_holes_turn_the_stop_about_their_middle()
    {
        var job = Plover.Value;
        var measured = ProfileReader.ReadBracket(RepositoryRoot.PathOf("profiles", "brackets", "shelf-upright-34.toml"), new DiskFileSource(), job.Shop).Value!;
        var bracket = MeasuredShape.Of(measured, measured.MetalIn(job.Shop)!).Bracket!;
        var off = ReadingSpread.OfSeat(bracket);

        // Stop at 52, 25.5: 35 and 25.5 from the middle of the holes.
        Assert.Equal(0.2 + 0.05 + 0.1 / 34 * 25.5, off.X, 1e-9);
        Assert.Equal(0.2 + Math.Max(0.05, 0.1 / 34 * 35), off.Y, 1e-9);
        Assert.Equal(0.2, off.Z, 1e-9);

        // Their distance may be off by 0.1: each hole by half of it.
        Assert.Equal(0.05, ReadingSpread.OfPattern(bracket), 1e-9);

        // Half a degree of the bend, 0.2 over the length of its line (root of two: both coordinates), and the turn on the bolts.
        Assert.Equal(Math.PI / 360 + Math.Sqrt(2) * 0.2 / 78.5 + 0.1 / 34, ReadingSpread.OfDirection(bracket).Radians, 1e-9);
    }

    private static void Held(Job job, MeasuredBracket measured, int samples, StrengthDetail? strength)
    {
        var trial = Solved(job, measured, strength)!;
        Assert.Equal(TrialState.Solved, trial.State);
        Check[] said = [.. trial.Solution!.Checks.Where(c => c.Passes && !c.Code.StartsWith("probability", StringComparison.Ordinal) && c.Id != CheckId.FreePlayMost)];
        Assert.True(said.Length > 40);
        var tried = 0;
        Gen.Int[0, int.MaxValue].Check(
            samples, seed =>
            {
                if (Solved(job, Drawable(job, measured, Within(measured, new(seed))), strength) is not { Solution: { } solution } sample || !sample.Way!.Matches.SequenceEqual(trial.Way!.Matches) || sample.Way.IsTurnedOver != trial.Way.IsTurnedOver)
                {
                    return;
                }

                tried++;
                foreach (var check in said)
                {
                    var found = solution.Checks.FirstOrDefault(c => c.Code == check.Code && c.Duty == check.Duty && c.Fails);
                    Assert.True(found is null, $"{check.Code}: {check.Value} as read, {check.Unfavourable} at worst, {found?.Value} in a sample");
                }
            });
        Assert.True(tried > samples / 4, $"{tried} of {samples}");
    }

    // Where two corners stand close together a random outline may cross itself, which no sheet does: then it is the one that was read.
    private static MeasuredBracket Drawable(Job job, MeasuredBracket measured, MeasuredBracket sample) => MeasuredShape.Of(sample, sample.MetalIn(job.Shop)!).Bracket is not null ? sample : sample with
    {
        MountFlange = measured.MountFlange,
        Bends = [.. sample.Bends.Zip(measured.Bends, (of, read) => of with { Outline = read.Outline })],
    };

    private static BracketTrial? Solved(Job job, MeasuredBracket measured, StrengthDetail? strength) =>
        MeasuredShape.Of(measured, measured.MetalIn(job.Shop)!).Bracket is { } bracket ? BracketTrial.Of(job, bracket, measured.Thickness.PlusMinus, strength) : null;

    // As somebody would measure it. Roundings that touch would not fit any more where an edge is read shorter: they are made less.
    private static MeasuredBracket Roughly(MeasuredBracket measured, double part = 1) => measured with
    {
        OutlinePlusMinus = 0.1 * part,
        MountFlange = Rounded(measured.MountFlange),
        Thickness = measured.Thickness with { PlusMinus = 0.02 * part },
        Holes = [.. measured.Holes.Select(h => h with { PlusMinus = 0.05 * part })],
        Bends = [.. measured.Bends.Select(b => b with { LinePlusMinus = 0.1 * part, IncludedPlusMinus = Angle.FromDegrees(0.5 * part), RadiusPlusMinus = 0.1 * part, OutlinePlusMinus = 0.1 * part, Outline = Rounded(b.Outline) })],
        Stop = measured.Stop with { PlusMinus = 0.1 * part, DirectionPlusMinus = Angle.FromDegrees(0.5 * part), Size = measured.Stop.Size with { PlusMinus = 0.02 * part } },
    };

    private static ImmutableArray<FlangeCorner> Rounded(ImmutableArray<FlangeCorner> corners) => [.. corners.Select(c => c with { Radius = 0.6 * c.Radius })];

    // A bracket that may be the true one; half of the dimensions at an end of their ±.
    private static MeasuredBracket Within(MeasuredBracket measured, Random random)
    {
        double Part() => random.Next(2) == 0 ? 2 * random.Next(2) - 1 : 2 * random.NextDouble() - 1;
        FlatPoint At(FlatPoint at, double off) => new(at.X + off * Part(), at.Y + off * Part());
        var stop = measured.Stop;
        Vector3? direction = null;
        if (stop.Direction is { } way)
        {
            var side = way.Unit.Cross(Math.Abs(way.Unit.Z) < 0.9 ? new Vector3(0, 0, 1) : new(1, 0, 0)).Unit.Rotate(way.Unit, new(2 * Math.PI * random.NextDouble()));
            direction = way.Rotate(side, Part() * stop.DirectionPlusMinus);
        }

        ImmutableArray<FlangeCorner> Corners(ImmutableArray<FlangeCorner> corners, double off) => [.. corners.Select(c => c with { At = At(c.At, off) })];
        return measured with
        {
            OutlinePlusMinus = 0,
            Thickness = new(measured.Thickness.Value + Part() * measured.Thickness.PlusMinus),
            MountFlange = Corners(measured.MountFlange, measured.OutlinePlusMinus),
            Holes = [.. measured.Holes.Select(h => new MeasuredHole(At(h.At, h.PlusMinus), h.Diameter + Part() * h.DiameterPlusMinus))],
            Bends =
            [
                .. measured.Bends.Select(b => b with
                {
                    Start = At(b.Start, b.LinePlusMinus),
                    End = At(b.End, b.LinePlusMinus),
                    Included = b.Included + Part() * b.IncludedPlusMinus,
                    InsideRadius = b.InsideRadius + Part() * b.RadiusPlusMinus,
                    Outline = Corners(b.Outline, b.OutlinePlusMinus),
                    LinePlusMinus = 0,
                    IncludedPlusMinus = Angle.Zero,
                    RadiusPlusMinus = 0,
                    OutlinePlusMinus = 0,
                }),
            ],
            Stop = stop with
            {
                At = (At(stop.At.On, stop.PlusMinus), stop.At.Height + stop.PlusMinus * Part()),
                PlusMinus = 0,
                Size = new(stop.Size.Value + Part() * stop.Size.PlusMinus),
                Direction = direction,
                DirectionPlusMinus = Angle.Zero,
            },
        };
    }
}
