namespace BracketGen.Geometry;

/// <summary>How far a part that is centred on an axis can be turned on its screws, each in an arc slot.</summary>
/// <param name="Over">How much more play the screws would need to go in (mm); zero or less where they go in.</param>
/// <param name="Middle">Turn of the part in the middle of its range.</param>
/// <param name="Half">How far it can be turned from there, each way; zero where the screws do not go in.</param>
public sealed record SlotTurn(double Over, Angle Middle, Angle Half)
{
    // Halvings: from the size of the part to a millionth of a millimetre.
    private const int Halvings = 50;

    /// <summary>Whether the screws go in.</summary>
    public bool Fits => Over <= 0;

    /// <summary>
    /// The part as it goes on with the widest range of turn, in closed form: a screw at radius r has room at a slot's end of radius ρ as long as its angle to that
    /// end is at most acos((r² + ρ² - play²) / 2rρ), the law of cosines. Null where slots and screws differ in number.
    /// </summary>
    /// <param name="slots">The part's slots, about the axis.</param>
    /// <param name="screws">The screws, about the same axis.</param>
    /// <param name="plays">For each slot how far its screw may be off its middle line (mm).</param>
    /// <exception cref="ArgumentException">More points than <see cref="PatternMatch.MostPoints"/>.</exception>
    public static SlotTurn? Of(IReadOnlyList<ArcSlot> slots, IReadOnlyList<PatternPoint> screws, IReadOnlyList<double> plays)
    {
        if (slots.Count != screws.Count || slots.Count == 0)
        {
            return null;
        }

        if (slots.Count > PatternMatch.MostPoints)
        {
            throw new ArgumentException($"A pattern has at most {PatternMatch.MostPoints} points.", nameof(slots));
        }

        if (Widest(slots, screws, plays, 0) is var (middle, half))
        {
            return new(0, middle, half);
        }

        // With play as large as the part everything goes in.
        double none = 0, enough = slots.Concat(screws.Select(s => new ArcSlot(s, Angle.Zero))).Max(s => s.Middle.Vector.Length) * 2 - plays.Min() + 1;
        for (var i = 0; i < Halvings; i++)
        {
            var more = (none + enough) / 2;
            (none, enough) = Widest(slots, screws, plays, more) is null ? (more, enough) : (none, more);
        }

        return new(enough, Widest(slots, screws, plays, enough)?.Middle ?? Angle.Zero, Angle.Zero);
    }

    private static (Angle Middle, Angle Half)? Widest(IReadOnlyList<ArcSlot> slots, IReadOnlyList<PatternPoint> screws, IReadOnlyList<double> plays, double more)
    {
        (double From, double To)? widest = null;
        var taken = new bool[screws.Count];
        Place(0, null);
        return widest is var (from, to) ? (new((from + to) / 2), new((to - from) / 2)) : null;

        void Place(int next, (double From, double To)? range)
        {
            if (next == slots.Count)
            {
                widest = widest is { } best && best.To - best.From >= range!.Value.To - range.Value.From ? widest : range;
                return;
            }

            for (var j = 0; j < screws.Count; j++)
            {
                if (!taken[j] && Room(slots[next], screws[j], plays[next] + more, range) is { } narrower)
                {
                    taken[j] = true;
                    Place(next + 1, narrower);
                    taken[j] = false;
                }
            }
        }
    }

    // Turns of the part in which this screw has room in this slot, of those that were left.
    private static (double From, double To)? Room(ArcSlot slot, PatternPoint screw, double play, (double From, double To)? left)
    {
        double radius = slot.Middle.Vector.Length, at = screw.Vector.Length;
        if (play < 0 || Math.Abs(radius - at) > play)
        {
            return null;
        }

        var cosine = radius * at > 0 ? (radius * radius + at * at - play * play) / (2 * radius * at) : -1;
        var half = Math.Min(Math.PI, slot.Half.Radians + Math.Acos(Math.Clamp(cosine, -1, 1)));
        var middle = screw.Vector.Polar.Radians - slot.Middle.Vector.Polar.Radians;
        if (left is not var (from, to))
        {
            return (middle - half, middle + half);
        }

        middle = (from + to) / 2 + Math.IEEERemainder(middle - (from + to) / 2, 2 * Math.PI);
        (from, to) = (Math.Max(from, middle - half), Math.Min(to, middle + half));
        return from <= to ? (from, to) : null;
    }
}
