using System.Collections.Immutable;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;

namespace BracketGen.Design;

/// <summary>Finds the best bracket of a job and no other: what <see cref="Ranking"/> puts first, without drawing all the rest.</summary>
/// <remarks>
/// Best first: whatever has the least bound on its cost is looked into next, from «any bracket of this sheet to this placement» by
/// way of drafts to brackets with an outline; the first bracket that comes up and passes is the cheapest of all. Ties fall as they do
/// in <see cref="CandidateSearch.All"/>, by the order of making.
/// </remarks>
internal static class BestSearch
{
    /// <summary>The best offer, and how many brackets were drawn on the way; null where none passes with the adjuster at mid range.</summary>
    /// <param name="job">The job.</param>
    /// <param name="body">Its body opening counter-clockwise.</param>
    /// <param name="clearanceError">How exactly clearances of the answer are told (mm): at most so much too small.</param>
    public static (Offer? Best, int Drawn) Find(Job job, ThrottleBody body, double clearanceError)
    {
        var search = new Search(job, body);
        while (search.Next() is { } candidate)
        {
            if (CandidateSearch.Promising(candidate)
                && BracketChecks.FitsInSpace(candidate.Bracket, body, job.Vehicle.Cable, job.Preferences))
            {
                ImmutableArray<Check> checks =
                [
                    .. candidate.QuickChecks,
                    .. BracketChecks.InSpace(candidate.Bracket, body, job.Vehicle.Cable, job.Preferences, clearanceError),
                ];
                if (checks.All(CandidateSearch.IsGoodEnough))
                {
                    return (new(candidate, checks), search.Drawn);
                }
            }
        }

        return (null, search.Drawn);
    }

    private enum Stage
    {
        Sheet,
        Draft,
        WeighedDraft,
        Candidate,
    }

    private sealed record Node(Stage Stage, int Bends, int Place, Stock? Stock, BracketShape.Draft? Draft, Candidate? Candidate);

    private sealed class Search
    {
        private readonly PriorityQueue<Node, (double Cost, bool IsCandidate, long Order)> _queue = new();
        private readonly Job _job;
        private readonly ThrottleBody _body;
        private readonly StopPlacement[][] _placements;
        private readonly CandidateSearch.Place?[][] _places;
        private readonly Stock[] _stocks;
        private long _order;

        public Search(Job job, ThrottleBody body)
        {
            (_job, _body) = (job, body);
            _placements = [.. Enumerable.Range(0, 3).Select(bends => CandidateSearch.PlacementsAtMidRange(job, body, bends).ToArray())];
            _places = [.. _placements.Select(p => new CandidateSearch.Place?[p.Length])];
            _stocks = [.. CandidateSearch.StockAllowed(job)];
            var frame = BracketShape.MountFrame(body.Mount);
            for (var bends = 0; bends < 3; bends++)
            {
                var bounds = _stocks.Select(s => bends == 0 ? 0 : CostBound.OfAny(
                    body.Mount, frame, StopSeat.For(job.Vehicle.Cable, job.Preferences.StopOpening, s.Thickness), s, bends)).ToArray();
                for (var place = 0; place < _placements[bends].Length; place++)
                {
                    for (var stock = 0; stock < _stocks.Length; stock++)
                    {
                        // Room in the order for all drafts of the sheet, so that ties fall by the order of making.
                        Enqueue(new(Stage.Sheet, bends, place, _stocks[stock], null, null), bounds[stock], _order);
                        _order += MostDrafts;
                    }
                }
            }
        }

        private const long MostDrafts = 1 << 20;

        public int Drawn { get; private set; }

        /// <summary>The next cheapest bracket; null at the end.</summary>
        public Candidate? Next()
        {
            while (_queue.TryDequeue(out var node, out var priority))
            {
                switch (node.Stage)
                {
                    case Stage.Sheet:
                        Spread(node, priority.Order);
                        break;
                    case Stage.Draft when PlaceOf(node) is { } place:
                        Enqueue(node with { Stage = Stage.WeighedDraft }, CostBound.Of(node.Draft!, place.Tension, AdjusterRange), priority.Order);
                        break;
                    case Stage.WeighedDraft:
                        Drawn++;
                        if (BracketShape.Finish(node.Draft!) is { } bracket)
                        {
                            var candidate = CandidateSearch.CandidateOf(_job, PlaceOf(node)!, bracket);
                            Enqueue(node with { Stage = Stage.Candidate, Candidate = candidate, Draft = null }, candidate.Cost, priority.Order);
                        }

                        break;
                    case Stage.Candidate:
                        return node.Candidate;
                }
            }

            return null;
        }

        private double AdjusterRange => _job.Vehicle.Cable.OuterEnd.AdjusterRange;

        // A draft whose bound is as large as a bracket's cost goes first: it may turn out the same and stand before it.
        private void Enqueue(Node node, double cost, long order) => _queue.Enqueue(node, (cost, node.Stage == Stage.Candidate, order));

        private void Spread(Node node, long order)
        {
            var drafts = CandidateSearch.Drafts(_job, _body, _placements[node.Bends][node.Place], node.Stock!, node.Bends);
            foreach (var draft in drafts)
            {
                order++;
                if (BlankOutline.KeepApart(draft.Bends, draft.Discs, BracketShape.StraightBesideBend(draft.Choice.Stock.Thickness)))
                {
                    Enqueue(node with { Stage = Stage.Draft, Stock = null, Draft = draft }, CostBound.WithoutGive(draft, AdjusterRange), order);
                }
            }
        }

        // Null where travel or the stop's place alone rule out whatever gets there.
        private CandidateSearch.Place? PlaceOf(Node node)
        {
            ref var place = ref _places[node.Bends][node.Place];
            place ??= CandidateSearch.PlaceWith(_job, _body, _placements[node.Bends][node.Place]);
            return place.Checks.All(CandidateSearch.IsGoodEnough) ? place : null;
        }
    }
}
