namespace BracketGen.Design.Checks;

/// <summary>By what a bracket's strength was judged, the cheapest first.</summary>
public enum StrengthMeans
{
    /// <summary>A proven bound, without a mesh.</summary>
    Bound,

    /// <summary>Stress, give and first frequency on a coarse mesh, missed by a multiple of its error.</summary>
    Coarse,

    /// <summary>Stress and give by finite elements.</summary>
    Stress,

    /// <summary>The first frequency by finite elements.</summary>
    Frequency,

    /// <summary>The whole report.</summary>
    Full,
}

/// <summary>What came out of judging a bracket's strength.</summary>
/// <param name="Report">The report; null where less was enough to reject the bracket.</param>
/// <param name="Failed">
/// The check that failed; null where the bracket is strong. Where <paramref name="Report"/> is null its value may be a bound on the good side: the true value is no better. It always is one
/// where <paramref name="Means"/> is <see cref="StrengthMeans.Bound"/>, <see cref="StrengthMeans.Coarse"/> or <see cref="StrengthMeans.Frequency"/>.
/// </param>
/// <param name="Means">By what it was judged.</param>
public sealed record StrengthFinding(StrengthReport? Report, Check? Failed, StrengthMeans Means)
{
    /// <summary>Whether it passes all strength checks.</summary>
    public bool IsStrong => Failed is null;
}
