using BracketGen.Design.Checks;

namespace BracketGen.Line.Solving;

/// <summary>What a whole line comes to: the most severe answer of its variants.</summary>
public static class LineVerdict
{
    /// <summary>The verdict; a variant that could not be solved counts as one that fails.</summary>
    public static VerdictKind Of(IReadOnlyCollection<Made> made)
    {
        bool Any(Outcome outcome) => made.Any(m => m.Outcome == outcome);
        return Any(Outcome.Unsafe) ? VerdictKind.Unsafe
            : Any(Outcome.Fails) || Any(Outcome.Broken) ? VerdictKind.Fails
            : Any(Outcome.NotProven) ? VerdictKind.NotProven
            : VerdictKind.Passes;
    }
}
