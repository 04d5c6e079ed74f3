using BracketGen.Design.Inputs;
using BracketGen.Design.Part;

namespace BracketGen.Design.Search;

/// <summary>All the brackets that could be made for a job that opens counter-clockwise: each sketched and drawn only when it is needed, and then once.</summary>
/// <remarks>
/// A bracket's mass is known when its outline is drawn, which takes longer than all that leads up to it; but it has a bound, and its
/// give is exact without (<see cref="CostBound"/>). So brackets are drawn in the order of their bounds, and those that can be neither
/// the cheapest nor on the front are never drawn. Branch and bound; what comes out is what drawing everything would give. The adjuster is
/// moved off mid range only where no candidate with it there is <see cref="CandidateSearch.Promising"/>. One thread at a time.
/// </remarks>
internal sealed class CandidatePool
{
    // Room in the order of making for all sketches of one sheet at one place, so that ties fall as if all had been made one after another.
    private const long MostSketches = 1 << 20;

    private readonly Job _job;
    private readonly BracketTools[] _tools;
    private readonly List<Sheet> _midRange;
    private List<Sheet>? _rangeEnds;
    private int _drawn;

    public CandidatePool(Job job)
    {
        _job = job;
        _tools = [.. CandidateSearch.ToolsFor(job)];
        _midRange = SheetsAt(CandidateSearch.PlacesAtMidRange);
    }

    /// <summary>How many brackets have been drawn so far.</summary>
    public int Drawn => _drawn;

    /// <summary>How many shapes there are that can be looked at; sketches them all.</summary>
    public int Count
    {
        get
        {
            SketchAll();
            return Sheets.Sum(s => s.Sketches.Count);
        }
    }

    private IEnumerable<Sheet> Sheets => _midRange.Concat(_rangeEnds ?? []);

    /// <summary>
    /// The cheapest candidate that <paramref name="verify"/> makes an offer of; null where there is none.
    /// </summary>
    /// <remarks>
    /// What one bend can do is looked at first: it limits what is worth looking at among the many shapes of two. Of two that cost the same the
    /// one of fewer bends is taken, and then the one that comes first in the order of making.
    /// </remarks>
    public Offer? Cheapest(Func<Candidate, Offer?> verify)
    {
        var promising = false;
        Offer? Of(List<Sheet> sheets)
        {
            Offer? best = null;
            foreach (var group in sheets.GroupBy(s => s.Bends > 1))
            {
                var limit = best?.Candidate.Cost ?? double.PositiveInfinity;
                foreach (var candidate in ByCost([.. group], limit))
                {
                    if (candidate.Cost >= limit)
                    {
                        break;
                    }

                    promising = promising || CandidateSearch.Promising(candidate);
                    if (verify(candidate) is { } offer)
                    {
                        best = offer;
                        break;
                    }
                }
            }

            return best;
        }

        return Of(_midRange) ?? Of(RangeEndsUnless(promising));
    }

    /// <summary>
    /// The candidates, the cheapest first; not those at a place that travel or the stop's surroundings rule out whatever gets there. Those
    /// with the adjuster at an end of its range come after all others.
    /// </summary>
    public IEnumerable<Candidate> ByCost()
    {
        var promising = false;
        foreach (var candidate in ByCost(_midRange, double.PositiveInfinity))
        {
            promising = promising || CandidateSearch.Promising(candidate);
            yield return candidate;
        }

        foreach (var candidate in ByCost(RangeEndsUnless(promising), double.PositiveInfinity))
        {
            yield return candidate;
        }
    }

    /// <summary>
    /// By number of bends, each promising candidate that is stiffer by a tenth than all lighter ones of as few bends: that step, or the list
    /// fills with twins.
    /// </summary>
    public IEnumerable<Candidate> Front()
    {
        SketchAll();
        return Enumerable.Range(0, 4).SelectMany(Front);
    }

    /// <summary>Every candidate that can be drawn, by cost.</summary>
    public IReadOnlyList<Candidate> All()
    {
        List<Candidate> Of(List<Sheet> sheets)
        {
            Parallel.ForEach(sheets, sheet => sheet.Sketches.ForEach(s => Draw(s)));
            return [.. sheets.SelectMany(s => s.Sketches).Select(s => s.Candidate).OfType<Candidate>()];
        }

        var all = Of(_midRange);
        all.AddRange(Of(RangeEndsUnless(all.Any(CandidateSearch.Promising))));
        return [.. all.OrderBy(c => c.Cost)];
    }

    // Sheets know nothing of each other, and their order is settled before: several threads make what one would.
    private void SketchAll() => Parallel.ForEach(Sheets, sheet => sheet.Sketches.ForEach(s => s.Weigh()));

    // Sheets with the adjuster at the ends of its range; none if a candidate at mid range is promising.
    private List<Sheet> RangeEndsUnless(bool promising) => promising ? [] : _rangeEnds ??= SheetsAt(CandidateSearch.PlacesAtRangeEnds);

    private List<Sheet> SheetsAt(Func<Job, int, IEnumerable<Place>> places)
    {
        var sheets = new List<Sheet>();
        for (var bends = 0; bends < 3; bends++)
        {
            var bounds = Array.ConvertAll(_tools, t => bends == 0 ? 0 : CostBound.OfAny(t.Sheet, bends));
            foreach (var place in places(_job, bends))
            {
                sheets.AddRange(_tools.Zip(bounds, (tools, bound) => new Sheet(tools, place, bends, bound)));
            }
        }

        return sheets;
    }

    private double AdjusterRange => _job.Vehicle.Cable.OuterEnd.AdjusterRange;

    private enum Stage
    {
        Sheet,
        Sketch,
        Weighed,
        Drawn,
    }

    private readonly record struct Node(Stage Stage, Sheet? Sheet, Sketch? Sketch);

    // The next node is the one that may hold the cheapest bracket. Of two with the same figure, a bracket comes after what may yet turn out the
    // same and stand before it. Those that cost as much as the limit or more need not come.
    private IEnumerable<Candidate> ByCost(List<Sheet> sheets, double limit)
    {
        var queue = new PriorityQueue<Node, (double Cost, bool IsDrawn, long Order)>();
        for (var i = 0; i < sheets.Count; i++)
        {
            if (sheets[i].LeastCost < limit)
            {
                queue.Enqueue(new(Stage.Sheet, sheets[i], null), (sheets[i].LeastCost, false, i * MostSketches));
            }
        }

        while (queue.TryDequeue(out var node, out var priority))
        {
            switch (node.Stage)
            {
                case Stage.Sheet:
                    var order = priority.Order;
                    foreach (var sketch in node.Sheet!.SketchesBelow(limit))
                    {
                        order++;
                        var bound = CostBound.WithoutGive(sketch.Draft, AdjusterRange);
                        if (bound < limit)
                        {
                            queue.Enqueue(new(Stage.Sketch, null, sketch), (bound, false, order));
                        }
                    }

                    break;
                case Stage.Sketch when node.Sketch!.Place.IsGoodEnough:
                    queue.Enqueue(node with { Stage = Stage.Weighed }, (CostBound.Of(node.Sketch.Draft, node.Sketch.Give, AdjusterRange), false, priority.Order));
                    break;
                case Stage.Weighed:
                    if (Draw(node.Sketch!) is { } candidate)
                    {
                        queue.Enqueue(node with { Stage = Stage.Drawn }, (candidate.Cost, true, priority.Order));
                    }

                    break;
                case Stage.Drawn:
                    yield return node.Sketch!.Candidate!;
                    break;
            }
        }
    }

    private IEnumerable<Candidate> Front(int bends)
    {
        var queue = new PriorityQueue<Sketch, (double Mass, bool IsDrawn, double Give, double Cost)>();
        foreach (var sketch in Sheets.SelectMany(s => s.Sketches).Where(s => s.Draft.Bends.Length == bends))
        {
            queue.Enqueue(sketch, (CostBound.LeastMass(sketch.Draft), false, sketch.Give, 0));
        }

        var stiffest = double.PositiveInfinity;
        while (queue.TryDequeue(out var sketch, out var priority))
        {
            if (sketch.Give >= 0.9 * stiffest || !sketch.Place.IsGoodEnough)
            {
                continue;
            }

            if (!priority.IsDrawn)
            {
                if (Draw(sketch) is { } drawn)
                {
                    queue.Enqueue(sketch, (drawn.Bracket.Mass, true, drawn.Give, drawn.Cost));
                }
            }
            else if (CandidateSearch.Promising(sketch.Candidate!))
            {
                stiffest = sketch.Give;
                yield return sketch.Candidate!;
            }
        }
    }

    private Candidate? Draw(Sketch sketch)
    {
        if (!sketch.IsDrawn)
        {
            Interlocked.Increment(ref _drawn);
            sketch.IsDrawn = true;
            sketch.Candidate = BracketShape.Finish(sketch.Draft) is { } bracket ? CandidateSearch.CandidateOf(_job, sketch.Place, bracket, sketch.Give) : null;
        }

        return sketch.Candidate;
    }

    // One sheet bent so many times to one place.
    private sealed class Sheet(BracketTools tools, Place place, int bends, double leastCost)
    {
        private List<Sketch>? _sketches;

        public int Bends => bends;

        public double LeastCost => leastCost;

        public List<Sketch> Sketches =>
            _sketches ??= [.. tools.Drafts(place.Placement, bends).Where(d => d.KeepsApart).Select(d => new Sketch(d, place))];

        /// <summary>Those that may cost less than a limit, not kept: give and bends alone rule out most before the area is asked for.</summary>
        public IEnumerable<Sketch> SketchesBelow(double limit) => _sketches is not null || double.IsPositiveInfinity(limit)
            ? Sketches
            : tools.Drafts(place.Placement, bends, bends == 2 ? new(tools.Sheet, place.Tension, limit) : null).Select(d => new Sketch(d, place))
                .Where(s => leastCost + BracketCost.OfGive(s.Give, tools.Sheet.Rates) < limit && s.Draft.KeepsApart);
    }

    private sealed class Sketch(BracketDraft draft, Place place)
    {
        private double _give = double.NaN;

        public BracketDraft Draft => draft;

        public Place Place => place;

        public double Give => double.IsNaN(_give) ? _give = draft.Give(Place.Tension) : _give;

        /// <summary>Finds what its bounds need.</summary>
        public void Weigh() => _ = Give + draft.LeastArea;

        public bool IsDrawn { get; set; }

        public Candidate? Candidate { get; set; }
    }
}
