using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Throttles;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;
using CsCheck;

namespace BracketGen.TestSupport;

/// <summary>Solutions of random jobs, good and bad: whatever was shaped must be drawn, folded and written, not only the best.</summary>
/// <remarks>A job for which nothing can be shaped gives null.</remarks>
public static class RandomSolutions
{
    /// <summary>Any of the brackets that the search shaped: most with one bend, some flat.</summary>
    public static readonly Gen<Solution?> Shaped = Gen.Select(RandomJobs.Job, Gen.Double[0, 1], Gen.Int[0, 3], (job, pick, checks) =>
    {
        // One sheet and one die: the search need not try the others to give a bracket to draw.
        var stock = job.Shop.Stock[(int)(pick * 997) % job.Shop.Stock.Length];
        job = job with { Shop = job.Shop with { Stock = [stock], Dies = [job.Shop.Dies.First(d => d.Suits(stock.Thickness))] } };
        var turned = job.OpeningCounterClockwise();
        var candidates = CandidateSearch.All(turned);
        if (candidates.Count == 0)
        {
            return null;
        }

        var candidate = candidates[(int)(pick * (candidates.Count - 1))];

        // The checks in space take their time where a bracket is in the way: a quarter of the cases have them.
        var inSpace = checks == 0 ? BracketChecks.InSpace(candidate.Bracket, turned, candidate.Placement, candidate.Travel) : [];
        return SolutionOf(job, candidate, candidate.Bracket, [.. candidate.QuickChecks, .. inSpace]);
    });

    /// <summary>One of the first brackets that the search comes upon, which saves the shaping of all the others: flat or bent once.</summary>
    public static readonly Gen<Solution?> FirstShaped = Gen.Select(RandomJobs.Job, Gen.Int[1, 30], (job, count) =>
        CandidateSearch.AtMidRange(job.OpeningCounterClockwise()).Take(count).LastOrDefault() is { } candidate
            ? SolutionOf(job, candidate, candidate.Bracket, candidate.QuickChecks)
            : null);

    /// <summary>One of the first brackets with two bends that the search comes upon.</summary>
    public static readonly Gen<Solution?> FirstShapedTwice = Gen.Select(RandomJobs.Job, Gen.Int[1, 30], (job, count) =>
        CandidateSearch.AtMidRange(job.OpeningCounterClockwise(), 2).Take(count).LastOrDefault() is { } candidate
            ? SolutionOf(job, candidate, candidate.Bracket, candidate.QuickChecks)
            : null);

    /// <summary>Flat plates from short to longer than a sheet of paper.</summary>
    public static readonly Gen<Solution?> Plates = Gen.Select(
        RandomJobs.Job, Gen.Double[25, 80], Gen.Int[0, 5], Gen.Double[-3.2, 3.2],
        (job, reach, lengthening, way) => Reshaped(job, (choice, mount) =>
        {
            var at = mount.ToWorld(Vector2.FromPolar(reach * (lengthening == 0 ? 6 : 1), new(way)), choice.Stock.Thickness);
            return BracketShape.Make(
                choice with { Placement = Placement(new(at), mount.Z), Die = null }, [], true, []);
        }));

    /// <summary>Brackets bent twice: up or down, square or not, parallel bends or skew.</summary>
    public static readonly Gen<Solution?> BentTwice = Gen.Select(
        RandomJobs.Job,
        Gen.Select(Gen.Double[30, 120], Gen.Double[30, 120], Gen.Bool, Gen.Bool),
        Gen.Select(Gen.Double[-0.5, 0.5], Gen.Bool, Gen.Double[25, 60], Gen.Double[25, 50]),
        (job, angles, place) => Reshaped(job, (choice, mount) => Bend(choice, job.Shop, mount, angles, place)));

    /// <summary>A flange that stands in a notch between two bolts, or beside one, with or without more bolts before it.</summary>
    public static readonly Gen<Solution?> Notched = Gen.Select(
        RandomJobs.Job, Gen.Select(Gen.Double[100, 150], Gen.Int[0, 2], Gen.Bool), Gen.Select(Gen.Double[-28, -8], Gen.Double[30, 120], Gen.Bool, Gen.Double[14, 40]),
        (job, bolts, bend) => Reshaped(WithBolts(job, bolts.Item1, bolts.Item2), (choice, mount) =>
        {
            var (line, angle, up, reach) = bend;
            var lean = Angle.FromDegrees(angle).Radians;
            var across = new Vector2(0, 1);
            var rule = job.Shop.RuleFor(choice.Stock, choice.Die!.InsideRadius);
            if (Joint.Between(mount, Bottom(mount, across, line, up ? lean : -lean), up, choice.Stock.Thickness, choice.Die.InsideRadius, rule) is not { } joint)
            {
                return null;
            }

            var depth = joint.Allowance + choice.Sheet.Straight + choice.Sheet.StopMetalRadius + reach / 2;
            var seat = joint.Next.ToThrottle(new(joint.Point.Vector + new Vector2(bolts.Item1 / 2, depth)), choice.Stock.Thickness);
            return BracketShape.MakeNotched(choice with { Placement = Placement(seat, joint.Next.Z) }, joint, true, bolts.Item3);
        }));

    /// <summary>All of them, in turn at random.</summary>
    public static readonly Gen<Solution?> Any = Gen.OneOf(Shaped, Plates, BentTwice, BentTwice, Notched);

    /// <summary>Some hundred solutions with a bracket, in a short run some ten; always the same, made once.</summary>
    public static IReadOnlyList<Solution> Samples => Sampled.Value;

    /// <summary>Runs <paramref name="check"/> on the first <paramref name="count"/> samples; the first failure names its place among them.</summary>
    public static void Each(int count, Action<Solution> check)
    {
        for (var i = 0; i < Math.Min(count, Samples.Count); i++)
        {
            try
            {
                check(Samples[i]);
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"Sample {i}: {e.Message}", e);
            }
        }
    }

    private static readonly Lazy<IReadOnlyList<Solution>> Sampled = new(() => [.. Any.Draw(LongRun.Of(660)).OfType<Solution>().Where(s => s.Bracket is not null)]);

    private static StopPlacement Placement(ThrottlePoint seat, Vector3 direction) => new(Angle.Zero, seat, direction, 50, 0, 2);

    /// <summary>The job's body and travel with a bracket that was not made for it: never wrong to draw.</summary>
    private static Solution? Reshaped(Job job, Func<BracketShape.Choice, Frame, Bracket?> shape)
    {
        var stock = job.Shop.Stock[(int)(Math.Abs(job.Vehicle.Cable.FreeInnerLength.Value) % job.Shop.Stock.Length)];
        var die = job.Shop.Dies.First(d => d.Suits(stock.Thickness));
        var mount = MountFrame.Of(job.Body.Mount);
        var choice = new BracketShape.Choice(new(job.Body.Mount, job.Vehicle.Cable, job.Preferences, stock, job.Shop.Rates), Placement(mount.ToThrottle(default), mount.Frame.Z), die);
        if (shape(choice, mount.Frame) is not { } bracket || HolesMeet(bracket))
        {
            return null;
        }

        var travel = Designer.CheckTravel(job);
        return new()
        {
            Job = job,
            Travel = travel.Travel,
            Quadrant = job.Body.Turned(QuadrantPicture.Of(job.Body.OpeningCounterClockwise().Quadrant, job.Vehicle.Cable.Fitting, travel.Travel)),
            Placement = null,
            Bracket = bracket,
            Checks = travel.Checks,
        };
    }

    /// <summary>The job with two bolts so far apart, a third before them, or one alone.</summary>
    private static Job WithBolts(Job job, double apart, int pattern)
    {
        var (mount, hole) = (MountFrame.Of(job.Body.Mount), job.Body.Mount.Holes[0]);
        FacePoint[] at = pattern switch
        {
            0 => [new(0, 0), new(apart, 0)],
            1 => [new(0, 0), new(apart, 0), new(apart / 2, -65)],
            _ => [new(0, 0)],
        };
        return job with { Body = job.Body with { Mount = job.Body.Mount with { Holes = [.. at.Select(p => hole with { At = mount.ToThrottle(p) })] } } };
    }

    /// <summary>Whether a hole runs into another one or over the edge: no region, whatever the checks would say.</summary>
    private static bool HolesMeet(Bracket bracket) => bracket.Holes.Any(h =>
        bracket.Holes.Any(o => o != h && h.Flange == o.Flange && Reach(h, o.Centre) < (h.Diameter + o.Diameter) / 2 + 0.5)
        || !h.IsSlot && bracket.Flat.Blank.Outline.DistanceTo(h.Centre.Vector) < h.Diameter / 2 + 0.2);

    /// <summary>Distance from a hole's centre, or the middle line of a slot, to a point.</summary>
    private static double Reach(BracketHole hole, FlatPoint point) => hole.Towards is { } way
        ? point.DistanceTo(hole.Centre + Math.Max(0, way.Dot(point - hole.Centre)) * way)
        : point.DistanceTo(hole.Centre);

    private static Solution SolutionOf(Job job, Candidate candidate, Bracket bracket, IEnumerable<Design.Checks.Check> checks)
    {
        var turned = job.OpeningCounterClockwise();
        return job.Body.Turned(new Solution
        {
            Job = turned,
            Travel = candidate.Travel,
            Quadrant = QuadrantPicture.Of(turned.Body.Quadrant, job.Vehicle.Cable.Fitting, candidate.Travel),
            Placement = candidate.Placement,
            Bracket = bracket,
            Checks = [.. checks],
        });
    }

    private static Bracket? Bend(
        BracketShape.Choice choice, Shop shop, Frame mount, (double First, double Second, bool FirstUp, bool SecondUp) angles,
        (double Skew, bool IsSkew, double Reach, double Height) place)
    {
        var thickness = choice.Stock.Thickness;
        var radius = choice.Die!.InsideRadius;
        var rule = shop.RuleFor(choice.Stock, radius);
        double first = Angle.FromDegrees(angles.First).Radians, second = Angle.FromDegrees(angles.Second).Radians;
        var middle = Bottom(mount, Vector2.FromPolar(1, new(place.Skew)), place.Reach, angles.FirstUp ? first : -first);
        if (Joint.Between(mount, middle, angles.FirstUp, thickness, radius, rule) is not { } one)
        {
            return null;
        }

        var across = place.IsSkew ? one.Across.Rotate(new(place.Skew)) : one.Across;
        var reach = one.Point.Vector.Dot(one.Across) + one.Allowance + place.Height;
        var end = Bottom(one.Next, across, reach, angles.SecondUp ? second : -second);
        if (Joint.Between(one.Next, end, angles.SecondUp, thickness, radius, rule) is not { } two)
        {
            return null;
        }

        // The stop a little way past the second bend.
        var seat = two.Next.ToThrottle(new((two.Point.Vector.Dot(two.Across) + two.Allowance + 22) * two.Across), thickness);
        return BracketShape.Make(choice with { Placement = Placement(seat, two.Next.Z) }, [one, two], true, [0.5, 0.5]);
    }

    /// <summary>Bottom of a slab that crosses the flange's own at a reach, leaning by an angle.</summary>
    private static Plane Bottom(Frame flange, Vector2 across, double reach, double lean) => new(
        flange.ToWorld(reach * across),
        flange.ToWorldDirection(new(-Math.Sin(lean) * across.X, -Math.Sin(lean) * across.Y, Math.Cos(lean))));
}
