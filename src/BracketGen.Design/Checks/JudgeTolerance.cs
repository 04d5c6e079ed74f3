namespace BracketGen.Design.Checks;

/// <summary>By how much a result must miss its limit before a cheaper stage may reject a bracket, with the reason for each size.</summary>
internal static class JudgeTolerance
{
    /// <summary>Part of a tension or a frequency: results are rounded to six figures, which is half of 1e-5 at the most.</summary>
    public const double RoundOff = 1e-5;
}
