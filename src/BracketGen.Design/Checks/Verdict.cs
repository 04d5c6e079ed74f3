using System.Collections.Immutable;

namespace BracketGen.Design.Checks;

/// <summary>The four answers, the most severe first.</summary>
public enum VerdictKind
{
    /// <summary>A safety check fails: somebody can be hurt.</summary>
    Unsafe,

    /// <summary>Another check than mere advice fails.</summary>
    Fails,

    /// <summary>Nothing fails, but something that matters was not calculated, or rests on an assumption that could turn it.</summary>
    NotProven,

    /// <summary>Every check that matters passes, whatever is assumed.</summary>
    Passes,
}

/// <summary>What a list of checks comes to; the one place where this is decided.</summary>
/// <param name="Kind">The answer.</param>
/// <param name="Deciding">The checks that decide it: those that fail at that severity, or those that are not known; empty if all passes.</param>
public sealed record Verdict(VerdictKind Kind, ImmutableArray<Check> Deciding)
{
    /// <summary>The verdict on <paramref name="checks"/>: those of the question that was asked.</summary>
    public static Verdict Of(IEnumerable<Check> checks)
    {
        ImmutableArray<Check> matter = [.. checks.Where(c => c.Kind != CheckKind.Advice)];
        ImmutableArray<Check> Where(Func<Check, bool> test) => [.. matter.Where(test)];
        return Where(c => c.IsDanger) is { IsEmpty: false } dangers ? new(VerdictKind.Unsafe, dangers)
            : Where(c => c.Fails) is { IsEmpty: false } failed ? new(VerdictKind.Fails, failed)
            : Where(c => !c.Passes) is { IsEmpty: false } open ? new(VerdictKind.NotProven, open)
            : new(VerdictKind.Passes, []);
    }
}
