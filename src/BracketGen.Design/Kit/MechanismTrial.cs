using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Throttles;
using BracketGen.SheetMetal.Fasteners;

namespace BracketGen.Design.Kit;

/// <summary>The whole job with one cable, one set of springs and one bracket.</summary>
/// <param name="Kind">The verdict, without the position sensor's checks.</param>
/// <param name="Codes">Names of the checks that decide it; empty where all pass.</param>
/// <param name="Solution">The job solved; null where the bracket does not go on.</param>
public sealed record MechanismTrial(VerdictKind Kind, ImmutableArray<string> Codes, Solution? Solution)
{
    /// <summary>What the verdict is on a part of it.</summary>
    public FitState State => Kind switch
    {
        VerdictKind.Passes => FitState.Fits,
        VerdictKind.NotProven => FitState.NotKnown,
        _ => FitState.DoesNotFit,
    };

    /// <summary>What our own bracket costs to make by the shop's rates (its currency); null where it is another bracket, where the shop has no rates, and where none was found.</summary>
    public double? MakingPrice { get; init; }

    /// <summary>The screws of the bracket; empty where there is none.</summary>
    public ImmutableArray<MountScrew> Screws => Solution?.Bracket is not { } bracket ? [] :
    [
        .. bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).Select(h => Solution.Job.Body.Mount.ScrewFor(
            Solution.Job.Body.Mount.Nearest(bracket.Folded.Fold(h.BoltAt, 0)) with { Thread = h.Thread! }, bracket.Stock.Thickness)),
    ];

    /// <summary>A job with another cable or with one more spring; null where the springs of the throttle body were measured only together.</summary>
    /// <param name="job">The job.</param>
    /// <param name="cable">The cable; null for the vehicle's own.</param>
    /// <param name="spring">The spring; null for none besides the throttle body's own.</param>
    public static Job? With(Job job, CableMeasures? cable, SpringMeasures? spring)
    {
        // The sensor has checks of its own, with whichever sensor is taken.
        var body = job.Body with { Sensor = null };
        if (spring is not null)
        {
            if (job.Body.Springs is { Each.IsEmpty: true, Count: > 1 })
            {
                return null;
            }

            var own = job.Body.Springs;
            body = body with { Springs = ReturnSprings.Of([.. own.Each.IsEmpty ? [new ReturnSpring(own.TorqueClosed, own.TorqueOpen)] : own.Each, spring.Spring]) };
        }

        return job with { Body = body, Vehicle = cable is null ? job.Vehicle : job.Vehicle with { Cable = cable.Cable } };
    }

    /// <summary>The job with the bracket that is designed for it.</summary>
    public static MechanismTrial OfOurs(Job job, StrengthDetail? strength)
    {
        var solution = Designer.Solve(job, new SearchEffort(strength) { WithOthers = true });
        return new(solution.Verdict.Kind, Deciding(solution), solution)
        {
            // What is held against a bracket beside its bill is no price: its give is left out.
            MakingPrice = solution is { Bracket: { } bracket, Placement: { } placement } && job.Shop.Rates.Currency is not null
                ? BracketCost.Of(bracket, placement, 0, job.Vehicle.Cable.OuterEnd.AdjusterRange, job.Shop.Rates).Bill
                : null,
        };
    }

    /// <summary>The job with a bracket that is there already.</summary>
    public static MechanismTrial Of(Job job, MeasuredBracket measured, StrengthDetail? strength)
    {
        // The reader made sure that its metal is known and that it has a shape.
        var bracket = MeasuredShape.Of(measured, measured.MetalIn(job.Shop)!).Bracket!;
        var trial = BracketTrial.Of(job, bracket, measured.Thickness.PlusMinus, strength);
        return new(trial.Kind, trial.Solution is { } solution ? Deciding(solution) : [], trial.Solution);
    }

    private static ImmutableArray<string> Deciding(Solution solution) => [.. solution.Verdict.Deciding.Select(c => c.Code)];
}
