using System.Collections.Concurrent;
using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;

namespace BracketGen.Design.Search;

/// <summary>Judges the candidates of one job: flat pattern, space, bending, strength and mechanism, in that order, and no further than needed.</summary>
/// <remarks>Thread-safe. What it finds depends on the candidate and on <see cref="TakeNote"/> alone, never on what was judged before.</remarks>
internal sealed class CandidateJudge
{
    private readonly Job _job;
    private readonly FrequencyRule _rule;
    private readonly StrengthDetail? _detail;
    private readonly StrengthJudge? _strength;

    private readonly ConcurrentDictionary<StopMechanism, Lazy<ImmutableArray<Check>>> _alone = new(ReferenceEqualityComparer.Instance);
    private Check? _ruledOutEverywhere;

    // Once the mechanism has failed with a bracket, each place is looked at alone before the brackets there.
    private bool _looksAhead;

    /// <summary>A judge.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="detail">How finely brackets are meshed; null where strength is not looked at.</param>
    /// <param name="mechanismDecides">Whether a bracket with which the mechanism does not work is turned down.</param>
    /// <param name="rule">How the first natural frequency is judged.</param>
    public CandidateJudge(Job job, StrengthDetail? detail, bool mechanismDecides = true, FrequencyRule rule = FrequencyRule.Separation)
    {
        (_job, _detail, MechanismDecides, _rule) = (job, detail, mechanismDecides, rule);
        _strength = detail is null ? null : new(job, detail, rule);
    }

    /// <summary>Whether a bracket with which the mechanism does not work is turned down.</summary>
    public bool MechanismDecides { get; }

    /// <summary>The same judge but for the first natural frequency: what shaking does to a bracket decides instead.</summary>
    public CandidateJudge ByResponse() => new(_job, _detail, MechanismDecides, FrequencyRule.Response);

    /// <summary>Whether the mechanism works nowhere, so that no bracket can pass.</summary>
    public bool IsHopeless => MechanismDecides && _ruledOutEverywhere is not null;

    /// <summary>What it finds of a candidate.</summary>
    public Finding Judge(Candidate candidate)
    {
        if (candidate.QuickChecks.FirstOrDefault(c => !CandidateSearch.IsGoodEnough(c)) is { } flat)
        {
            return new(candidate, SearchStage.Flat, flat);
        }

        var stop = candidate.StopOf(_job);
        if (MechanismDecides && (_ruledOutEverywhere ?? (_looksAhead ? FailsAlone(stop) : null)) is { } known)
        {
            return new(candidate, SearchStage.Mechanism, known);
        }

        if (BracketChecks.Obstacle(candidate.Around(_job)) is { } obstacle)
        {
            return new(candidate, SearchStage.Space, obstacle);
        }

        if (BendingOf(candidate).FirstOrDefault(c => !CandidateSearch.IsGoodEnough(c)) is { } unbent)
        {
            return new(candidate, SearchStage.Bending, unbent);
        }

        if (SlotChecks.Obstacle(_job, candidate.Bracket, CandidateSearch.IsGoodEnough) is { } atEnd)
        {
            return new(candidate, SearchStage.Space, atEnd);
        }

        var finding = _strength?.Judge(stop, candidate.Bracket);
        if (finding is { IsStrong: false })
        {
            return new(candidate, SearchStage.Strength, finding.Failed) { Strength = finding.Report, Means = finding.Means };
        }

        return Complete(candidate, finding?.Report) with { Means = finding?.Means };
    }

    /// <summary>A candidate judged in every respect, whatever fails.</summary>
    public Finding InFull(Candidate candidate) => Complete(
        candidate, _detail is null ? null : StrengthStudy.Of(_job, candidate.Travel, candidate.Placement, candidate.Bracket, _detail, _rule));

    /// <summary>Takes note that the mechanism does not work with a bracket: from then on each place is looked at alone first. Not while candidates are judged.</summary>
    /// <param name="finding">The bracket.</param>
    public void TakeNote(Finding finding)
    {
        _looksAhead = true;
        _ruledOutEverywhere ??= MechanismChecks.FailsAtEveryStop(_job, Alone(finding.Candidate.StopOf(_job)), CandidateSearch.IsGoodEnough);
    }

    private IEnumerable<Check> BendingOf(Candidate candidate) =>
        candidate.Bend(_job) is { } result
            ? BendChecks.OfTools(candidate.Bracket, result, _job.Shop)
                .Concat(SecondFaceChecks.OfBend(candidate.Bracket, _job.Body.Mount, _job.Shop.Process, _job.Vehicle.Cable.OuterEnd))
            : [];

    // What fails at a place with no bracket whatever: give and tolerances of one only make it worse.
    private Check? FailsAlone(StopMechanism stop) => Alone(stop).FirstOrDefault(c => !CandidateSearch.IsGoodEnough(c));

    private ImmutableArray<Check> Alone(StopMechanism stop) => _alone.GetOrAdd(stop, s => new(() => MechanismReport.Of(s, null).Checks)).Value;

    private Finding Complete(Candidate candidate, StrengthReport? strength)
    {
        ImmutableArray<Check> bending = [.. BendingOf(candidate)];
        ImmutableArray<Check> checks = [.. candidate.QuickChecks.Where(q => !bending.Any(b => (b.Id, b.Number) == (q.Id, q.Number))), .. bending, .. BracketChecks.InSpace(candidate.Around(_job), SpaceDemand.Error)];
        var mechanism = MechanismReport.Of(candidate.StopOf(_job), candidate.Bracket, MechanismReport.UsualSamples, strength?.GivePerTension);
        var failed = MechanismDecides ? mechanism.Checks.FirstOrDefault(c => !CandidateSearch.IsGoodEnough(c)) : null;

        // The ends of slotted holes come last, when all else has passed or nothing more is asked.
        ImmutableArray<ImmutableArray<Check>?> ends = [];
        if (failed is null || !MechanismDecides)
        {
            ends = SlotChecks.AtEnds(_job, candidate.Bracket, _detail, _rule);
            failed ??= SlotChecks.Worst([], ends).FirstOrDefault(c => !CandidateSearch.IsGoodEnough(c) && (MechanismDecides || c.Definition.Scope != CheckScope.WholeMechanism));
        }

        return new(candidate, failed is null ? SearchStage.Passes : SearchStage.Mechanism, failed)
        {
            Offer = new(candidate, checks) { GiveFound = strength?.Opening.Give },
            Strength = strength,
            Mechanism = mechanism,
            AtEnds = ends,
        };
    }
}
