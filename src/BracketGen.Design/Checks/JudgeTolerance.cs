namespace BracketGen.Design.Checks;

/// <summary>By how much a result must miss its limit before a cheaper stage may reject a bracket, with the reason for each size.</summary>
internal static class JudgeTolerance
{
    /// <summary>Part of a tension or a frequency: results are rounded to six figures, which is half of 1e-5 at the most.</summary>
    public const double RoundOff = 1e-5;

    /// <summary>
    /// Part of a stress by which the mesh may lie under a true bound: its stresses are means over the triangles round a node, and settle from below (<see cref="SettledStrength"/>).
    /// </summary>
    public const double MeshStress = 0.06;

    /// <summary>
    /// Part of a stress by which the first mesh may lie above the last: among 840 candidates of the shipped jobs 17 % of it at the most, where two bends lie close together; most lie under it, by 16 % at the most.
    /// </summary>
    public const double FirstStress = 0.25;

    /// <summary>Part of a give, a frequency or a screw's load that the last mesh may make better than the first: none was found that it did by a two-hundredth.</summary>
    public const double FirstStiffness = 0.01;

    /// <summary>Part of a give by which the mesh may lie under a true bound: it settles within a hundredth, and the strips are integrated to another.</summary>
    public const double MeshGive = 0.02;

    /// <summary>Part of a frequency by which the mesh may lie above a true bound, for the same reasons.</summary>
    public const double MeshFrequency = 0.02;

    /// <summary>Part of a give by which it may lie above: none was found that did.</summary>
    public const double CoarseGive = 0.02;

    /// <summary>Part of a first frequency by which it may lie below: none was found that did.</summary>
    public const double CoarseFrequency = 0.02;

    /// <summary>How many times these errors a result of the coarse mesh must miss its limit before it rejects.</summary>
    public const double CoarseErrors = 2;

    /// <summary>
    /// Part by which a quantile of samples may lie under that of the distribution: of 4,096 samples 41 exceed it, give or take 6 if they were independent, and the sequence is more even than that. To move
    /// the quantile of a sum of five equal readings by so much, 57 would have to exceed it; of fewer readings, more.
    /// </summary>
    public const double Samples = 0.05;

    /// <summary>How many times its ± a deviation of the bracket is taken to be at the most: a normal one, ± being two standard deviations, exceeds six of them once in 1e9.</summary>
    public const double FarthestDeviation = 3;
}
