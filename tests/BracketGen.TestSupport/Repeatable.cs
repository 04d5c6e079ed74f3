using BracketGen.Design.Checks;
using CsCheck;

namespace BracketGen.TestSupport;

/// <summary>Random cases that are the same on every run and machine.</summary>
/// <remarks>
/// CsCheck's own sampling starts from a new seed each time. Here the seed is fixed, and a failure names the seed of its
/// case; <c>gen.Sample(check, seed: "...")</c> then shrinks it.
/// </remarks>
public static class Repeatable
{
    /// <summary>The first <paramref name="count"/> values of <paramref name="gen"/> from the stream <paramref name="stream"/>.</summary>
    public static IReadOnlyList<T> Draw<T>(this Gen<T> gen, int count, uint stream = 1) =>
        [.. Cases(gen, count, stream).Select(c => c.Value)];

    /// <summary>Runs <paramref name="check"/> on <paramref name="count"/> values; the first failure names its seed.</summary>
    public static void Check<T>(this Gen<T> gen, int count, Action<T> check, uint stream = 1)
    {
        foreach (var (value, seed) in Cases(gen, count, stream))
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

    /// <summary>Runs <paramref name="check"/> on the one case of <paramref name="gen"/> that has the seed <paramref name="seed"/>.</summary>
    public static void CheckOne<T>(this Gen<T> gen, string seed, Action<T> check) => check(gen.Generate(PCG.Parse(seed), null, out _));

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
