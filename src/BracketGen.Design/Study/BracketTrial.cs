using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;

namespace BracketGen.Design.Study;

/// <summary>How far a trial of a bracket came.</summary>
public enum TrialState
{
    /// <summary>The whole job was solved with it.</summary>
    Solved,

    /// <summary>Its holes do not go onto the bolts, whichever way it is laid.</summary>
    NoPattern,

    /// <summary>It can be bolted on, but no wire reaches its stop the right way.</summary>
    NoWire,
}

/// <summary>A bracket that is there already, tried on a job in every way it can be bolted on.</summary>
/// <param name="Job">The job.</param>
/// <param name="State">How far it came.</param>
/// <param name="Way">The best way; null where there is none.</param>
/// <param name="Solution">The whole job with it; where the thickness has a ±, at the end of it that is worst. Null where there is none.</param>
/// <param name="Ways">How many ways there are to bolt it on.</param>
public sealed record BracketTrial(Job Job, TrialState State, BracketWay? Way, Solution? Solution, int Ways)
{
    // So many of the ways are solved with strength at most, the best without it first.
    private const int MostWhole = 3;

    // A plate full of holes goes on in hundreds of ways: so many are solved, those first whose stop faces the wire best.
    private const int MostSolved = 24;

    /// <summary>What it comes to; fails where it cannot be bolted on, or no wire reaches it.</summary>
    public VerdictKind Kind => Solution?.Verdict.Kind ?? VerdictKind.Fails;

    /// <summary>Whether nothing fails.</summary>
    public bool NothingFails => Solution is { NothingFails: true };

    /// <summary>The check that has least to spare of those that pass or fail by a measure; null where there is none.</summary>
    public Check? Tightest => Solution?.Checks
        .Where(c => c.Kind is not (CheckKind.Advice or CheckKind.Making) && double.IsFinite(c.Spare) && c.Spare > Tolerance.LimitSlack)
        .MinBy(c => c.Spare);

    /// <summary>Where the adjuster stands (mm from mid range, positive where it makes up for a cable that is too long); null where there is no solution.</summary>
    public double? Adjuster => Solution?.Placement?.AdjusterShift;

    /// <summary>A trial.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">The bracket, its mount flange in its own coordinates.</param>
    /// <param name="thicknessPlusMinus">How exactly its thickness was read (mm, either way).</param>
    /// <param name="strength">How finely it is meshed; null where its strength is not looked at.</param>
    public static BracketTrial Of(Job job, Bracket bracket, double thicknessPlusMinus, StrengthDetail? strength)
    {
        var (without, ranked, ways) = Ranked(job, bracket);
        if (without is not null)
        {
            return without;
        }

        List<(BracketWay Way, Solution Solution)> whole = [];
        foreach (var (way, quick) in ranked.Take(MostWhole))
        {
            var solution = AtWorst(job, way, quick, thicknessPlusMinus, strength);
            whole.Add((way, solution));
            if (strength is null || solution.NothingFails || !quick.NothingFails)
            {
                break; // The next one cannot be better but where this one is not strong enough.
            }
        }

        var best = whole.OrderByDescending(w => w.Solution.Verdict.Kind).First();
        return new(job, TrialState.Solved, best.Way, best.Solution, ways);
    }

    /// <summary>A trial as measured: neither strength nor the ± of the bracket is looked at, so that it does not pass. Quick.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">The bracket, its mount flange in its own coordinates.</param>
    public static BracketTrial AsMeasured(Job job, Bracket bracket)
    {
        var (without, ranked, ways) = Ranked(job, bracket);
        return without ?? new(job, TrialState.Solved, ranked[0].Way, ranked[0].Solution, ways);
    }

    // The ways that can be solved, the best first; or what there is to say where none can.
    private static (BracketTrial? Without, List<(BracketWay Way, Solution Solution)> Ranked, int Ways) Ranked(Job job, Bracket bracket)
    {
        BracketWay[] ways = [.. BracketWay.Of(job, bracket)];
        if (ways.Length == 0)
        {
            return (new(job, TrialState.NoPattern, null, null, 0), [], 0);
        }

        // Where some way may pass, the others need not be solved.
        BracketWay[] reached = [.. ways.Where(w => Reaches(job, w))], open = [.. reached.Where(w => GivenBracket.MayPass(job, w.Bracket, w.Mount))];
        List<(BracketWay Way, Solution Solution)> solved = [];
        foreach (var way in (open.Length > 0 ? open : reached).OrderBy(w => GivenBracket.Reach(job.Body, w.Bracket, w.Mount)!.Value.Askew.Radians).Take(MostSolved))
        {
            if (GivenBracket.On(job, way.Bracket, way.Mount) is { } solution)
            {
                solved.Add((way, solution));
            }
        }

        if (solved.Count == 0)
        {
            return (new(job, TrialState.NoWire, ways[0], null, ways.Length), [], ways.Length);
        }

        return (null, [.. solved.OrderByDescending(s => s.Solution.Verdict.Kind).ThenBy(s => Failing(s.Solution)).ThenBy(s => Math.Abs(s.Solution.Placement!.AdjusterShift))], ways.Length);
    }

    /// <summary>Whether nothing fails, in some way to bolt it on, of what needs neither strength nor the whole mechanism. Quick.</summary>
    internal static bool MayPass(Job job, Bracket bracket) =>
        BracketWay.Of(job, bracket).Any(w => Reaches(job, w) && GivenBracket.MayPass(job, w.Bracket, w.Mount));

    private static bool Reaches(Job job, BracketWay way) =>
        GivenBracket.Reach(job.Body, way.Bracket, way.Mount) is var (_, askew) && askew.Radians < Angle.Right.Radians;

    private static int Failing(Solution solution) => solution.Checks.Count(c => c.Fails && c.Kind != CheckKind.Advice);

    // As it was read, as thin and as thick as it may be; thin sheet is weak, thick sheet takes room.
    private static Solution AtWorst(Job job, BracketWay way, Solution quick, double plusMinus, StrengthDetail? strength)
    {
        var thickness = way.Bracket.Stock.Thickness;
        var read = strength is null ? quick : GivenBracket.On(job, way.Bracket, way.Mount, strength)!;
        var found = ReadingChecks.AtEnds(job, way.Bracket, way.Mount, read.Strength?.GivePerTension);
        List<Solution> ends = [Judged(way.Bracket, read)];
        if (plusMinus > 0)
        {
            foreach (var by in new[] { -plusMinus, plusMinus })
            {
                var at = WithThickness(way.Bracket, thickness + by);
                if (GivenBracket.On(job, at, way.Mount, strength) is { } end)
                {
                    ends.Add(Judged(at, end));
                }
            }
        }

        // Of every check the worst counts.
        var worst = ends.OrderBy(e => e.Verdict.Kind).First();
        return worst with { Checks = [.. worst.Checks.Select(c => ends.Select(e => e.Checks.FirstOrDefault(o => o.Code == c.Code && o.Duty == c.Duty)).OfType<Check>().Prepend(c).MinBy(Rank)!)] };

        static int Rank(Check check) => check.State switch { CheckState.Fails => 0, CheckState.NotKnown => 1, _ => 2 };

        Solution Judged(Bracket bracket, Solution solution) => solution with { Checks = ReadingChecks.Of(job, bracket, way.Mount, solution, found) };
    }

    private static Bracket WithThickness(Bracket bracket, double thickness) => bracket with
    {
        Stock = bracket.Stock with { Thickness = thickness },
        Folded = new(bracket.Flat with { Thickness = thickness }, bracket.Folded.Flanges[0]),
    };
}
