using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;

namespace BracketGen.Design.Study;

/// <summary>From a job to a verified bracket where there are many jobs: the best bracket alone, the same that <see cref="Designer"/> finds.</summary>
/// <remarks>
/// It differs in what it does not do: no other brackets are offered, no reasons given; clearances are found to <see cref="ClearanceError"/>
/// instead of 0.05 mm (never too large, and whether a limit is kept is decided as exactly); the uncertainty is found from
/// <see cref="Samples"/> samples instead of <see cref="MechanismReport.UsualSamples"/>.
/// </remarks>
public static class QuickDesigner
{
    /// <summary>How much too small a clearance may come out (mm).</summary>
    public const double ClearanceError = 0.5;

    /// <summary>Samples of the uncertainty: if none fails, 99.9 % is just proven.</summary>
    public const int Samples = 4_096;

    /// <summary>
    /// Solves <paramref name="job"/>. One that has no passing bracket, or whose best is not strong enough, is given to
    /// <see cref="Designer.Solve"/> as it is.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="strength">How finely the bracket is meshed to see whether it bends, shakes or cracks; null where that is not looked at.</param>
    public static Solution Solve(Job job, StrengthDetail? strength = null) =>
        Designer.AsMeasured(job, SolveTurned(job.OpeningCounterClockwise(), strength));

    private static Solution SolveTurned(Job job, StrengthDetail? strength)
    {
        var pool = new CandidatePool(job);
        var best = pool.Cheapest(c => Ranking.Verify(c, job, ClearanceError));
        var proof = best is not null && strength is not null ? StrongOffers.Prove(job, best, strength) : null;
        if (best is null || proof is { IsStrong: false })
        {
            return Designer.SolveTurned(job, 1, strength);
        }

        return Designer.Answer(job, best, proof, Samples) with
        {
            CandidateCount = pool.Drawn,
            Offers = [proof?.Offer ?? best],
        };
    }
}
