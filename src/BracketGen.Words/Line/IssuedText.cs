namespace BracketGen.Words.Line;

/// <summary>The sentences about parts that were given out: why they stay, go or must come back.</summary>
public static class IssuedText
{
    /// <summary>An earlier version gave the part out and did not register its shape.</summary>
    public const string ShapeUnknown = "It cannot be checked: an earlier version of the program registered it without its shape.";

    /// <summary>The shop changed.</summary>
    public const string SheetGone = "It cannot be checked: the shop no longer has its sheet or its die.";

    /// <summary>The slots of its mount holes are not those wanted.</summary>
    public const string OtherSlots = "Its mount holes are not the slotted holes that are wanted.";

    /// <summary>The wire does not come to its seat.</summary>
    public const string OutOfReach = "The wire does not reach its seat.";

    /// <summary>Its holes are not those of the mount face.</summary>
    public const string OtherHoles = "Its bolt holes do not meet those of the mount face.";

    /// <summary>Another was asked for.</summary>
    public const string Asked = "It was drawn anew as asked.";

    /// <summary>The choice of parts was asked for.</summary>
    public const string AskedAnew = "The parts were chosen anew as asked.";

    /// <summary>Own parts were asked for.</summary>
    public const string AskedOwn = "Every variant has its own part as asked.";

    /// <summary>The variant has no bracket any more.</summary>
    public const string NoBracket = "No bracket serves the variant any more.";

    /// <summary>The variant is gone.</summary>
    public const string VariantGone = "The family has no such variant any more.";

    /// <summary>The variant had no part for a time.</summary>
    public const string ServedAgain = "The variant has a bracket again.";

    /// <summary>The same number, another revision.</summary>
    public const string NewRevision = "The part has a new revision.";

    /// <summary>A pinned part took its place.</summary>
    public static string IsPinned(string partNumber) => $"{partNumber} is pinned.";

    /// <summary>The part is not among those of the line any more.</summary>
    public static string NotMade(string partNumber) => $"The line does not make {partNumber} any more: its own variant has no bracket, or is not sold.";

    /// <summary>A number to recall.</summary>
    public static string Recall(string partNumber, string revision, string variant, string names) => $"RECALL {partNumber} revision {revision} from {variant} ({names}). It no longer passes:";

    /// <summary>A recall that is withdrawn.</summary>
    public static string Withdrawn(string partNumber, string revision, string variant) => $"{partNumber} revision {revision} passes on {variant} again: its recall is withdrawn.";

    /// <summary>Recalls of earlier runs.</summary>
    public static string OpenRecalls(int count) => $"{Counted.Of(count, "recall")} of earlier runs {Counted.Verb(count, "is", "are")} still open; recall.csv has all of them.";

    /// <summary>A variant is served by another part, or another revision, than before.</summary>
    public static string Replaces(string variant, string? before, string? revisionBefore, string? now, string? revision) =>
        now is null ? $"{variant}: no part replaces {before} revision {revisionBefore}"
        : before is null ? $"{variant}: {now} revision {revision}"
        : $"{variant}: {now} revision {revision} replaces {before} revision {revisionBefore}";

    /// <summary>A part that stays where the program would draw another.</summary>
    public static string Stays(string partNumber, string revision) => $"{partNumber} revision {revision} still passes and stays. Drawn anew it would be another part (--redraw {partNumber}):";
}
