using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;

namespace BracketGen.Design.Study;

/// <summary>What the ± of the readings of a finished bracket does to its checks.</summary>
/// <remarks>
/// The stop is put into every corner of the box that its own readings and those of the bolt holes give, its direction turned to every side, and the whole job but its strength is solved there; of the metal every distance is taken to
/// be less by as far as any of the metal may be elsewhere (<see cref="ReadingSpread"/>). Strength is taken down by what narrower metal and a longer lever may take of it. A check that
/// passes as measured and would not then is not known. Probabilities sample the readings themselves (<see cref="SeatTolerances"/>).
/// </remarks>
internal static class ReadingChecks
{
    // Directions on the rim of a hexagon round the cone.
    private const int Sides = 6;

    /// <summary>The checks with the stop at every end of its readings, strength left out; null for an end where the wire does not reach it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">The bracket as a part, with its readings.</param>
    /// <param name="mount">Where its mount flange lies, throttle frame as measured.</param>
    /// <param name="give">Give of the stop for 1 N along the wire (mm/N); null for the beam estimate.</param>
    public static IReadOnlyList<IReadOnlyList<Check>?> AtEnds(Job job, Bracket bracket, Frame mount, double? give) =>
        bracket is not { Measured: { } measured, Readings: not null } ? []
            : [.. Positions(bracket with { Folded = new(bracket.Flat, mount) }).SelectMany(at => Ends(at, measured).Select(end => GivenBracket.ChecksOn(job, at with { Measured = end }, at.Folded.Flanges[0], give)))];

    // In the middle of slotted holes and at their ends.
    private static IEnumerable<Bracket> Positions(Bracket placed) => [placed, .. SlotPositions.Ends(placed)];

    /// <summary>The checks, each with the worst value that the readings allow.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">The bracket as a part, with its readings.</param>
    /// <param name="mount">Where its mount flange lies, throttle frame as measured.</param>
    /// <param name="solution">The job solved with it as read.</param>
    /// <param name="found">What <see cref="AtEnds"/> gave.</param>
    public static ImmutableArray<Check> Of(Job job, Bracket bracket, Frame mount, Solution solution, IReadOnlyList<IReadOnlyList<Check>?> found)
    {
        if (bracket is not { Measured: not null, Readings: not null })
        {
            return solution.Checks;
        }

        var placed = bracket with { Folded = new(bracket.Flat, mount) };
        var judged = solution.Checks.Select(check => Judged(check, found, Less(job, placed, check))).ToList();

        // What is asked at an end of the readings and not in the middle of them.
        judged.AddRange(found.OfType<IReadOnlyList<Check>>().SelectMany(f => f)
            .Where(c => !c.Passes && !IsSampled(c) && judged.All(j => !IsSame(j, c)))
            .DistinctBy(c => (c.Code, c.Duty))
            .Select(c => c with { Value = double.NaN, Doubt = Doubt.Reading }));
        return [.. judged];
    }

    private static IEnumerable<MeasuredStop> Ends(Bracket placed, MeasuredStop measured)
    {
        var (off, turn) = (ReadingSpread.OfSeat(placed), ReadingSpread.OfDirection(placed));
        List<MeasuredStop> places = [];
        foreach (var (x, y, z) in from x in new[] { -off.X, off.X } from y in new[] { -off.Y, off.Y } from z in new[] { -off.Z, off.Z } select (x, y, z))
        {
            places.Add(measured with { Seat = measured.Seat + new Vector2(x, y), Height = measured.Height + z });
        }

        if (off.IsExact)
        {
            places = [measured];
        }

        var normal = measured.Normal;
        var side = normal.Cross(Math.Abs(normal.Z) < 0.9 ? new Vector3(0, 0, 1) : new(1, 0, 0)).Unit;
        var outside = new Angle(turn.Radians / Math.Cos(Math.PI / Sides));
        return places.Concat(turn.Radians == 0 ? [] : places.SelectMany(p => Enumerable.Range(0, Sides)
            .Select(i => p with { Normal = normal.Rotate(side.Rotate(normal, new(i * 2 * Math.PI / Sides)), outside), NormalPlusMinus = Angle.Zero })));
    }

    private static Check Judged(Check check, IReadOnlyList<IReadOnlyList<Check>?> found, Func<double, double> less)
    {
        if (IsSampled(check) || !check.Passes)
        {
            return check;
        }

        var sign = check.Bound == Bound.AtLeast ? 1 : -1;
        var worst = sign * (check.Unfavourable ?? check.Value);
        if (check.Definition.Scope != CheckScope.OwnStrength)
        {
            foreach (var end in found)
            {
                worst = Math.Min(worst, sign * (end is null ? double.NaN : end.Where(c => IsSame(c, check)).Select(c => c.Unfavourable ?? c.Value).DefaultIfEmpty(check.Value).MinBy(v => sign * v)));
            }
        }

        var unfavourable = less(sign * worst);
        var judged = check with { Unfavourable = unfavourable };
        return unfavourable == check.Value ? check : judged.Passes ? judged : judged with { Doubt = Doubt.Reading };
    }

    private static bool IsSame(Check one, Check other) => one.Code == other.Code && one.Duty == other.Duty;

    // What is found by sampling counts the readings itself.
    private static bool IsSampled(Check check) => check.Id is CheckId.ProbabilityCloses or CheckId.ProbabilityWideOpen or CheckId.ProbabilityAdjuster or CheckId.ProbabilityInGroove or CheckId.FreePlayMost;

    // What the ± of the bracket's shape takes besides.
    private static Func<double, double> Less(Job job, Bracket placed, Check check)
    {
        // Of some flanges it is seen from the bracket.
        double Metal(Func<int, bool>? flanges = null) => ReadingSpread.OfMetal(placed, flanges ?? (_ => true), flanges is null);
        double Bolts() => placed.Holes.Where(h => h.Purpose == HolePurpose.Bolt).Max(h => ReadingSpread.OfHole(placed, h) + 1.5 * h.PlusMinus);
        double Stop() => ReadingSpread.OfHole(placed, placed.Stop) + 1.5 * placed.Stop.PlusMinus;
        double Radius() => placed.Readings!.Bends.Select((b, i) => check.Number is { } number && number != i + 1 ? 0 : b.Radius).DefaultIfEmpty(0).Max();
        switch (check.Id)
        {
            case CheckId.BoltHoleEdge or CheckId.MountBosses:
                return v => v - Bolts();
            case CheckId.StopHoleEdge or CheckId.SlotEdge or CheckId.StopMetal:
                return v => v - Stop();
            case CheckId.FittingThroughStop:
                return v => v - placed.Stop.PlusMinus;
            case CheckId.BendRadius:
                return v => v - Radius();
            case CheckId.MountPattern:
                return v => v + ReadingSpread.OfPattern(placed) + placed.Holes.Max(h => h.Purpose == HolePurpose.Bolt ? h.PlusMinus / 2 : 0);
            case CheckId.MountThreads:
                return v => Threads(job, placed) ? v : double.NaN;
            case CheckId.LipApart or CheckId.FlangesApart:
                return v => v - 2 * Metal();
            case CheckId.KeepOut or CheckId.BodyClearance or CheckId.OuterClearance or CheckId.OuterEndClearance or CheckId.OuterMoving or CheckId.MovingParts or CheckId.BoltRoom:
                return v => v - Metal();
            case CheckId.StopRoom:
                // Where the bracket lies elsewhere its stop does so with it.
                return v => v - Metal(f => f != placed.Stop.Flange);
            case CheckId.ThreadDepth or CheckId.StudLength or CheckId.StudDepth or CheckId.NutRoom:
                return v => v;
            default:
                var left = 1 - Taken(placed, check.Id);
                return check.Definition.Scope != CheckScope.OwnStrength ? v => v
                    : left <= 0 ? _ => double.NaN
                    : check.Bound == Bound.AtLeast ? v => left * v : v => v / left;
        }
    }

    // What may be missing of strength, as a part: forces in the joint grow with the lever, stress with the inverse of the width too, give with the third power of the lever, a frequency by the root of what give does.
    private static double Taken(Bracket placed, CheckId id)
    {
        var (width, lever) = ReadingSpread.OfStrength(placed);
        return id switch
        {
            CheckId.StopGive => width + 3 * lever,
            CheckId.Resonance or CheckId.FrequencyByResponse => (width + 3 * lever) / 2,
            CheckId.StampedYield or CheckId.Endurance or CheckId.ShakingEndurance or CheckId.ShakingTest => width + lever,
            _ => lever,
        };
    }

    // Whether the holes are of the size for the threads at both ends of their ±.
    private static bool Threads(Job job, Bracket placed) => placed.Holes.Where(h => h.Purpose == HolePurpose.Bolt).Zip(job.Body.Mount.Holes)
        .All(p => new[] { -1, 1 }.All(end => BracketWay.ThreadIn(p.First.Diameter + end * p.First.PlusMinus, p.Second.Thread) == p.Second.Thread));
}
