using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Drawing.Solid.Mesh;

/// <summary>A piece of the blank's outline that lies wholly in one flange or in one bend.</summary>
/// <param name="Segment">The piece, in flat coordinates (mm).</param>
/// <param name="Flange">The flange; in a bend, the one it hangs on.</param>
/// <param name="Bend">The bend; null in a flange.</param>
internal sealed record OutlinePiece(Segment Segment, int Flange, Bend? Bend)
{
    private const double Near = 1e-5;

    /// <summary>
    /// The outline cut where it enters and leaves bends. Which piece lies where follows from walking round it, not from where
    /// the pieces lie: the flat of one flange may reach past the line of another one's bend.
    /// </summary>
    public static List<OutlinePiece> Of(FlatPattern flat)
    {
        var gates = flat.Bends.SelectMany(b => (Gate[])
        [
            new(b.Start.Vector, b, false), new(b.End.Vector, b, false),
            new((b.Start + b.Allowance * b.Across).Vector, b, true), new((b.End + b.Allowance * b.Across).Vector, b, true),
        ]).ToArray();
        var pieces = flat.Blank.Outline.Segments.SelectMany(s => Cut(s, gates)).ToList();
        Gate? GateAt(Vector2 p) => gates.FirstOrDefault(g => g.At.DistanceTo(p) < Near);

        // A piece through both gates of a bend's end lies in that bend: the walk starts there.
        var first = pieces.FindIndex(p => GateAt(p.Start) is { } a && GateAt(p.End) is { } b && a.Bend == b.Bend && a.Far != b.Far);
        var result = new List<OutlinePiece>();
        if (first < 0)
        {
            result.AddRange(pieces.Select(p => new OutlinePiece(p, 0, null)));
            return result;
        }

        (int Flange, Bend? Bend) place = default;
        for (var i = 0; i < pieces.Count; i++)
        {
            var piece = pieces[(first + i) % pieces.Count];
            if (GateAt(piece.Start) is { } gate)
            {
                place = i > 0 && place.Bend == gate.Bend
                    ? (gate.Far ? gate.Bend.To : gate.Bend.From, null)
                    : (gate.Bend.From, gate.Bend);
            }

            result.Add(new(piece, place.Flange, place.Bend));
        }

        return result;
    }

    private sealed record Gate(Vector2 At, Bend Bend, bool Far);

    private static IEnumerable<Segment> Cut(Segment segment, Gate[] gates)
    {
        var cuts = gates.Where(g => segment.DistanceTo(g.At) < Near)
            .Select(g => FractionOf(segment, g.At))
            .Where(f => f * segment.Length > Near && (1 - f) * segment.Length > Near)
            .Order();
        var from = 0.0;
        foreach (var cut in cuts)
        {
            if ((cut - from) * segment.Length > Near)
            {
                yield return segment.Part(from, cut);
                from = cut;
            }
        }

        yield return from == 0 ? segment : segment.Part(from, 1);
    }

    private static double FractionOf(Segment segment, Vector2 point) => segment is ArcSegment arc
        ? arc.FractionAt((point - arc.Centre).Polar)
        : (point - segment.Start).Dot(segment.StartTangent) / segment.Length;
}
