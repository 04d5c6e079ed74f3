namespace BracketGen.TestSupport;

/// <summary>How long a series of random cases is: whole in CI, a tenth of it, the first of the same stream, in a plain <c>dotnet test</c>.</summary>
/// <remarks>The environment variable BRACKETGEN_LONG set to 1 asks for the whole series; <c>.ci/run</c> sets it.</remarks>
public static class LongRun
{
    /// <summary>Whether series are run whole.</summary>
    public static bool IsOn { get; } = Environment.GetEnvironmentVariable("BRACKETGEN_LONG") == "1";

    /// <summary>Of a series of <paramref name="count"/> cases, how many to run: all, or a tenth and no fewer than three.</summary>
    public static int Of(int count) => IsOn ? count : Math.Max(Math.Min(count, 3), count / 10);
}
