using BracketGen.Design;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;
using CsCheck;

namespace BracketGen.TestSupport;

/// <summary>Solutions of random jobs, good and bad: whatever was shaped must be drawn, folded and written, not only the best.</summary>
/// <remarks>A job for which nothing can be shaped gives null.</remarks>
public static class RandomSolutions
{
    /// <summary>Any of the brackets that the search shaped: most with one bend, some flat.</summary>
    public static readonly Gen<Solution?> Shaped = Gen.Select(RandomJobs.Job, Gen.Double[0, 1], Gen.Int[0, 3], (job, pick, checks) =>
    {
        var body = job.Body.OpeningCounterClockwise();
        var candidates = CandidateSearch.All(job, body);
        if (candidates.Count == 0)
        {
            return null;
        }

        var candidate = candidates[(int)(pick * (candidates.Count - 1))];

        // The checks in space take their time where a bracket is in the way: a quarter of the cases have them.
        var inSpace = checks == 0 ? BracketChecks.InSpace(candidate.Bracket, body, job.Vehicle.Cable, job.Preferences) : [];
        return SolutionOf(job, candidate, candidate.Bracket, [.. candidate.QuickChecks, .. inSpace]);
    });

    /// <summary>Flat plates from short to longer than a sheet of paper.</summary>
    public static readonly Gen<Solution?> Plates = Gen.Select(
        RandomJobs.Job, Gen.Double[25, 80], Gen.Int[0, 5], Gen.Double[-3.2, 3.2],
        (job, reach, lengthening, way) => Reshaped(job, (choice, mount) =>
        {
            var at = mount.ToWorld(Vector2.FromPolar(reach * (lengthening == 0 ? 6 : 1), new(way)), choice.Stock.Thickness);
            return BracketShape.Make(
                choice with { Placement = Placement(at, mount.Z), Die = null }, [], true, []);
        }));

    /// <summary>Brackets bent twice: up or down, square or not, parallel bends or skew.</summary>
    public static readonly Gen<Solution?> BentTwice = Gen.Select(
        RandomJobs.Job,
        Gen.Select(Gen.Double[30, 120], Gen.Double[30, 120], Gen.Bool, Gen.Bool),
        Gen.Select(Gen.Double[-0.5, 0.5], Gen.Bool, Gen.Double[25, 60], Gen.Double[25, 50]),
        (job, angles, place) => Reshaped(job, (choice, mount) => Bend(choice, job.Shop, mount, angles, place)));

    /// <summary>All of them, in turn at random.</summary>
    public static readonly Gen<Solution?> Any = Gen.OneOf(Shaped, Shaped, Plates, BentTwice);

    private static StopPlacement Placement(Vector3 seat, Vector3 direction) => new(Angle.Zero, seat, direction, 50, 0, 2);

    /// <summary>The job's body and travel with a bracket that was not made for it: never wrong to draw.</summary>
    private static Solution? Reshaped(Job job, Func<BracketShape.Choice, Frame, Bracket?> shape)
    {
        var stock = job.Shop.Stock[(int)(Math.Abs(job.Vehicle.Cable.FreeInnerLength.Value) % job.Shop.Stock.Length)];
        var die = job.Shop.Dies.First(d => d.Suits(stock.Thickness));
        var mount = BracketShape.MountFrame(job.Body.Mount);
        var choice = new BracketShape.Choice(job.Body.Mount, Placement(mount.Origin, mount.Z), job.Vehicle.Cable, job.Preferences, stock, die);
        if (shape(choice, mount) is not { } bracket)
        {
            return null;
        }

        var travel = Designer.CheckTravel(job);
        return new()
        {
            Job = job,
            Travel = travel.Travel,
            Placement = null,
            Bracket = bracket,
            Checks = travel.Checks,
            Remedy = travel.Remedy,
            CandidateCount = 1,
        };
    }

    private static Solution SolutionOf(Job job, Candidate candidate, Bracket bracket, IEnumerable<Design.Check> checks)
    {
        var mirrored = job.Body.Opens == OpeningSense.Clockwise;
        return new()
        {
            Job = job,
            Travel = candidate.Travel,
            Placement = mirrored ? candidate.Placement.Mirrored() : candidate.Placement,
            Bracket = mirrored ? bracket.Mirrored() : bracket,
            Checks = [.. checks],
            Remedy = TravelRemedy.For(candidate.Travel, job.Preferences.OverTravelReserve),
            CandidateCount = 1,
        };
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
        var reach = one.Point.Dot(one.Across) + one.Allowance + place.Height;
        var end = Bottom(one.Next, across, reach, angles.SecondUp ? second : -second);
        if (Joint.Between(one.Next, end, angles.SecondUp, thickness, radius, rule) is not { } two)
        {
            return null;
        }

        // The stop a little way past the second bend.
        var seat = two.Next.ToWorld((two.Point.Dot(two.Across) + two.Allowance + 22) * two.Across, thickness);
        return BracketShape.Make(choice with { Placement = Placement(seat, two.Next.Z) }, [one, two], true, [0.5, 0.5]);
    }

    /// <summary>Bottom of a slab that crosses the flange's own at a reach, leaning by an angle.</summary>
    private static Plane Bottom(Frame flange, Vector2 across, double reach, double lean) => new(
        flange.ToWorld(reach * across),
        flange.ToWorldDirection(new(-Math.Sin(lean) * across.X, -Math.Sin(lean) * across.Y, Math.Cos(lean))));
}
