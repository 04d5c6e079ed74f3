using BracketGen.Design.Checks;
using CsCheck;

namespace BracketGen.TestSupport;

/// <summary>Random cases that are the same on every run and machine.</summary>
/// <remarks>
/// CsCheck's own sampling starts from a new seed each time. Here the seed is fixed, and a failure names the seed of its
/// case; <c>gen.Sample(check, seed: "...")</c> then shrinks it. <see cref="LongRun"/> says how many of a series are run.
/// </remarks>
public static class Repeatable
{
    /// <summary>The first <paramref name="count"/> values of <paramref name="gen"/> from the stream <paramref name="stream"/>.</summary>
    public static IReadOnlyList<T> Draw<T>(this Gen<T> gen, int count, uint stream = 1) =>
        [.. Cases(gen, count, stream).Select(c => c.Value)];

    /// <summary>Runs <paramref name="check"/> on a series of <paramref name="count"/> values, or in a short run on the first tenth; the first failure names its seed.</summary>
    public static void Check<T>(this Gen<T> gen, int count, Action<T> check, uint stream = 1)
    {
        foreach (var (value, seed) in Cases(gen, LongRun.Of(count), stream))
        {
            try
            {
                check(value);
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"CsCheck seed \"{seed}\": {e.Message}", e);
            }
        }
    }

    private static IEnumerable<(T Value, string Seed)> Cases<T>(Gen<T> gen, int count, uint stream)
    {
        var random = new PCG(stream, 20_260_101);
        for (var i = 0; i < count; i++)
        {
            var seed = random.ToString();
            yield return (gen.Generate(random, null, out _), seed);
        }
    }
}
