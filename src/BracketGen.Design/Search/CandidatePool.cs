using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;

namespace BracketGen.Design.Search;

/// <summary>All the brackets that could be made for a job that opens counter-clockwise: each sketched and drawn only when it is needed, and then once.</summary>
/// <remarks>
/// A bracket's mass is known when its outline is drawn, which takes longer than all that leads up to it; but it has a bound, and its
/// give is exact without (<see cref="CostBound"/>). So brackets are drawn in the order of their bounds (branch and bound); what comes out is what drawing
/// everything would give. Pools are nested: a limit relaxed, a sheet or a die more adds brackets, and changes or removes none. One thread at a time.
/// </remarks>
internal sealed class CandidatePool
{
    // Room in the order of making for all sketches of one sheet at one place, so that ties fall as if all had been made one after another.
    private const long MostSketches = 1 << 20;

    /// <summary>Largest number of bends, a return lip or return flange not counted.</summary>
    private const int MostBends = 2;

    private readonly Job _job;
    private readonly List<Sheet> _sheets = [];
    private int _drawn;

    public CandidatePool(Job job)
    {
        _job = job;
        BracketTools[] all = [.. CandidateSearch.ToolsFor(job)];
        for (var bends = 0; bends <= MostBends; bends++)
        {
            Place[] places = [.. CandidateSearch.Places(job, bends)];
            foreach (var stiffened in bends == 0 ? (bool[])[false] : [false, true])
            {
                var bounds = Array.ConvertAll(all, t => bends == 0 ? 0 : CostBound.OfAny(t.Sheet, bends, stiffened));
                foreach (var place in places.Where(p => !stiffened || p.Placement.AdjusterShift == 0))
                {
                    var ofPlace = BracketCost.OfPlace(place.Placement, AdjusterRange, job.Shop.Rates)
                        + (bends == 1 ? CostBound.OfSingleAngle(job.Body.Mount.Plane.Normal, place.Placement.Direction, job.Shop.Rates) : 0);
                    for (var i = 0; i < all.Length; i++)
                    {
                        _sheets.Add(new(all[i], place, bends, stiffened, bounds[i] + ofPlace));
                    }
                }
            }
        }
    }

    /// <summary>How many brackets have been drawn so far.</summary>
    public int Drawn => _drawn;

    /// <summary>How many shapes there are that can be looked at; sketches them all.</summary>
    public int Count
    {
        get
        {
            SketchAll();
            return _sheets.Sum(s => s.Sketches.Count);
        }
    }

    /// <summary>
    /// The candidates, the cheapest first; not those at a place that travel or the stop's surroundings rule out whatever gets there. Of two that cost the
    /// same the one of fewer bends comes first, and then the one that comes first in the order of making.
    /// </summary>
    /// <param name="bends">The fewest and the most bends to be looked at.</param>
    /// <param name="limit">Those that cost as much or more need not come.</param>
    // The next node is the one that may hold the cheapest bracket. Of two with the same figure, a bracket comes after what may yet turn out the
    // same and come before it.
    public IEnumerable<Candidate> ByCost((int Fewest, int Most) bends, double limit = double.PositiveInfinity)
    {
        var queue = new PriorityQueue<Node, (double Cost, bool IsDrawn, long Order)>();
        for (var i = 0; i < _sheets.Count; i++)
        {
            if (_sheets[i].LeastCost < limit && _sheets[i].Bends >= bends.Fewest && _sheets[i].Bends <= bends.Most)
            {
                queue.Enqueue(new(Stage.Sheet, _sheets[i], null), (_sheets[i].LeastCost, false, i * MostSketches));
            }
        }

        while (queue.TryDequeue(out var node, out var priority))
        {
            switch (node.Stage)
            {
                case Stage.Sheet when node.Sheet!.Place.IsGoodEnough:
                    var order = priority.Order;
                    foreach (var sketch in node.Sheet.SketchesBelow(limit))
                    {
                        order++;
                        var bound = CostBound.WithoutGive(sketch.Draft, AdjusterRange);
                        if (bound < limit)
                        {
                            queue.Enqueue(new(Stage.Sketch, null, sketch), (bound, false, order));
                        }
                    }

                    break;
                case Stage.Sketch:
                    queue.Enqueue(node with { Stage = Stage.Weighed }, (CostBound.Of(node.Sketch!.Draft, node.Sketch.Give, AdjusterRange), false, priority.Order));
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

    /// <summary>All of them, the cheapest first.</summary>
    public IEnumerable<Candidate> ByCost() => ByCost((0, MostBends));

    /// <summary>The checks that rule out whole places, each with the number of shapes that would get there; sketches them all.</summary>
    public IEnumerable<(Check Failed, int Shapes)> RuledOut()
    {
        SketchAll();
        return _sheets.Where(s => !s.Place.IsGoodEnough && s.Sketches.Count > 0)
            .Select(s => (s.Place.Checks.First(c => !CandidateSearch.IsGoodEnough(c)), s.Sketches.Count));
    }

    /// <summary>Every candidate that can be drawn, by cost.</summary>
    public IReadOnlyList<Candidate> All()
    {
        Parallel.ForEach(_sheets, sheet => sheet.Sketches.ForEach(s => Draw(s)));
        return [.. _sheets.SelectMany(s => s.Sketches).Select(s => s.Candidate).OfType<Candidate>().OrderBy(c => c.Cost)];
    }

    // Sheets know nothing of each other, and their order is settled before: several threads make what one would.
    private void SketchAll() => Parallel.ForEach(_sheets, sheet => sheet.Sketches.ForEach(s => s.Weigh()));

    private double AdjusterRange => _job.Vehicle.Cable.OuterEnd.AdjusterRange;

    private enum Stage
    {
        Sheet,
        Sketch,
        Weighed,
        Drawn,
    }

    private readonly record struct Node(Stage Stage, Sheet? Sheet, Sketch? Sketch);

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

    // One sheet bent so many times to one place, a return flange not counted.
    private sealed class Sheet(BracketTools tools, Place place, int bends, bool stiffened, double leastCost)
    {
        private List<Sketch>? _sketches;

        public int Bends => bends;

        public Place Place => place;

        public double LeastCost => leastCost;

        public List<Sketch> Sketches =>
            _sketches ??= [.. tools.Drafts(place.Placement, bends, stiffened).Where(d => d.KeepsApart).Select(d => new Sketch(d, place))];

        /// <summary>Those that may cost less than a limit, not kept where there is one: give and bends alone rule out most before the area is asked for.</summary>
        public IEnumerable<Sketch> SketchesBelow(double limit) => _sketches is not null || double.IsPositiveInfinity(limit)
            ? Sketches
            : tools.Drafts(place.Placement, bends, stiffened, bends == 2 ? new(tools.Sheet, place.Tension, limit) : null).Select(d => new Sketch(d, place))
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
