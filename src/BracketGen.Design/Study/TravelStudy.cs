using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Study;

/// <summary>The travel and the whole mechanism alone, without the bracket's own checks.</summary>
/// <param name="Travel">The travel.</param>
/// <param name="Mechanism">The mechanism.</param>
/// <param name="Checks">The checks of both.</param>
/// <param name="StopIsDesigned">Whether the stop is that of the bracket designed, and not just where the cable would want it.</param>
public sealed record TravelStudy(
    Travel Travel, MechanismReport Mechanism, ImmutableArray<Check> Checks, bool StopIsDesigned) : IMirrored<TravelStudy>
{
    /// <summary>What the checks of the travel come to; the bracket is not asked about.</summary>
    public Verdict Verdict => Verdict.Of(Checks);

    /// <inheritdoc/>
    public TravelStudy Mirrored() => this with { Travel = Travel.Mirrored(), Mechanism = Mechanism.Mirrored() };

    /// <summary>The study of a job.</summary>
    /// <remarks>
    /// On a round groove the pull does not depend on the stop's place, and any will do; the give and the tolerances of the bracket are not known
    /// then, and the checks that rest on them say so. On another groove the pull depends on the place, and so does the outer's way to the
    /// bulkhead: then the bracket is designed first, and the numbers are those of the whole answer.
    /// </remarks>
    /// <param name="job">The job.</param>
    /// <param name="samples">Samples of the uncertainty.</param>
    /// <param name="effort">How far the bracket is searched for; null for the one that <c>make</c> makes.</param>
    public static TravelStudy Of(Job job, int samples = MechanismReport.UsualSamples, SearchEffort? effort = null) =>
        job.Body.Turned(OfTurned(job.OpeningCounterClockwise(), samples, effort ?? SearchEffort.BestOnly));

    private static TravelStudy OfTurned(Job job, int samples, SearchEffort effort)
    {
        if ((job.Body.Quadrant.Groove is not CircularGroove || job.Bulkhead is not null)
            && Designer.SolveTurned(job, effort) is { Placement: { } placement, Bracket: { } bracket } solution)
        {
            // The report of the answer itself, so that both say the same.
            var whole = samples == MechanismReport.UsualSamples ? solution.Mechanism! : MechanismReport.Of(job, solution.Travel, placement, bracket, samples, solution.Strength?.GivePerTension);
            return new(
                solution.Travel, whole,
                [
                    .. TravelChecks.Of(job, solution.Travel),
                    .. MechanismChecks.OfPlacement(job, solution.Travel, placement), .. whole.Checks,
                ],
                StopIsDesigned: true);
        }

        var (travel, checks) = Designer.CheckTravelTurned(job);
        var report = MechanismReport.Of(job, travel, placement: null, bracket: null, samples);
        return new(travel, report, [.. checks, MechanismChecks.SideLoad(job.Vehicle.Cable, travel), .. report.Checks], StopIsDesigned: false);
    }
}
