using BracketGen.Geometry;

namespace BracketGen.Words.Interview;

/// <summary>Directions that have a word.</summary>
public static class DirectionWords
{
    // As one looks at the quadrant: x to the right, y up, z towards the viewer.
    private static readonly (string[] Words, Vector3 Way)[] OfQuadrant =
    [
        (["right", "to the right"], new(1, 0, 0)),
        (["left", "to the left"], new(-1, 0, 0)),
        (["towards you", "towards me"], new(0, 0, 1)),
        (["away from you", "away from me", "away"], new(0, 0, -1)),
    ];

    private static readonly string[] Up = ["up", "upwards"], Down = ["down", "downwards"],
        ToBulkhead = ["to the bulkhead", "to the firewall", "bulkhead", "firewall"], FromBulkhead = ["from the bulkhead", "from the firewall"];

    /// <summary>The direction of a word, throttle frame; null where it is none, or where what it depends on was not answered.</summary>
    /// <param name="word">What was typed.</param>
    /// <param name="up">Which way is up: y for the throttle body alone; null where nobody said.</param>
    /// <param name="bulkhead">Which way the bulkhead is; null where nobody said.</param>
    public static Vector3? Of(string word, Vector3? up, Vector3? bulkhead)
    {
        bool Is(string[] words) => words.Contains(word.Trim().ToLowerInvariant(), StringComparer.Ordinal);
        foreach (var (words, way) in OfQuadrant)
        {
            if (Is(words))
            {
                return way;
            }
        }

        return Is(Up) ? up : Is(Down) ? -1 * up : Is(ToBulkhead) ? bulkhead : Is(FromBulkhead) ? -1 * bulkhead : null;
    }

    /// <summary>Whether a word says up or down.</summary>
    public static bool NeedsUp(string word) => Up.Concat(Down).Contains(word.Trim().ToLowerInvariant(), StringComparer.Ordinal);

    /// <summary>Whether a word says to or from the bulkhead.</summary>
    public static bool NeedsBulkhead(string word) => ToBulkhead.Concat(FromBulkhead).Contains(word.Trim().ToLowerInvariant(), StringComparer.Ordinal);
}
