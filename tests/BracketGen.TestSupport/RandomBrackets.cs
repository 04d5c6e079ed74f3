using BracketGen.Design;
using BracketGen.Geometry;
using BracketGen.SheetMetal;
using CsCheck;

namespace BracketGen.TestSupport;

/// <summary>Brackets bent twice, made without asking whether they fit an engine: up or down, square or not, parallel bends or skew.</summary>
public static class RandomBrackets
{
    /// <summary>
    /// A solved job whose bracket is replaced by one of two bends; the job's own bracket where the bends cannot be shaped, and a
    /// solution without a bracket where the job has none.
    /// </summary>
    public static readonly Gen<Solution> TwoBends = Gen.Select(
        RandomJobs.Job,
        Gen.Select(Gen.Double[30, 120], Gen.Double[30, 120], Gen.Bool, Gen.Bool),
        Gen.Select(Gen.Double[-0.5, 0.5], Gen.Bool, Gen.Double[25, 60], Gen.Double[25, 50]),
        (job, angles, place) =>
        {
            var solution = Designer.Solve(job);
            return solution.Bracket is { } bracket && Bend(bracket, job, angles, place) is { } bent ? solution with { Bracket = bent } : solution;
        });

    private static Bracket? Bend(
        Bracket bracket, Job job, (double First, double Second, bool FirstUp, bool SecondUp) angles,
        (double Skew, bool IsSkew, double Reach, double Height) place)
    {
        var thickness = bracket.Stock.Thickness;
        var die = job.Shop.Dies.First(d => d.Suits(thickness));
        var rule = job.Shop.RuleFor(bracket.Stock, die.InsideRadius);
        var mount = BracketShape.MountFrame(job.Body.Mount);
        double first = Angle.FromDegrees(angles.First).Radians, second = Angle.FromDegrees(angles.Second).Radians;
        var middle = Bottom(mount, Vector2.FromPolar(1, new(place.Skew)), place.Reach, angles.FirstUp ? first : -first);
        if (Joint.Between(mount, middle, angles.FirstUp, thickness, die.InsideRadius, rule) is not { } one)
        {
            return null;
        }

        var across = place.IsSkew ? one.Across.Rotate(new(place.Skew)) : one.Across;
        var reach = one.Point.Dot(one.Across) + one.Allowance + place.Height;
        var end = Bottom(one.Next, across, reach, angles.SecondUp ? second : -second);
        if (Joint.Between(one.Next, end, angles.SecondUp, thickness, die.InsideRadius, rule) is not { } two)
        {
            return null;
        }

        // The stop a little way past the second bend; its seat decides where the outline goes.
        var local = (two.Point.Dot(two.Across) + two.Allowance + 22) * two.Across;
        var seat = two.Next.ToWorld(local, thickness);
        var placement = new Mechanism.StopPlacement(Angle.Zero, seat, two.Next.Z, 50, 0, 2);
        var choice = new BracketShape.Choice(job.Body.Mount, placement, job.Vehicle.Cable, job.Preferences, bracket.Stock, die);
        return BracketShape.Make(choice, [one, two], true, [0.5, 0.5]);
    }

    /// <summary>Bottom of a slab that crosses the flange's own at a reach, leaning by an angle.</summary>
    private static Plane Bottom(Frame flange, Vector2 across, double reach, double lean) => new(
        flange.ToWorld(reach * across),
        flange.ToWorldDirection(new(-Math.Sin(lean) * across.X, -Math.Sin(lean) * across.Y, Math.Cos(lean))));
}
