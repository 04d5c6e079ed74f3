using CsCheck;

namespace BracketGen.Strength.Tests;

/// <summary>Generated cases that are the same in every run: CsCheck's own sampling goes on from a random seed after the first.</summary>
internal static class Repeat
{
    public static void Each<T>(Gen<T> cases, int count, Action<T> check)
    {
        for (var i = 0; i < count; i++)
        {
            var one = cases.Generate(new PCG((uint)i + 1, 0x5EED), null, out _);
            try
            {
                check(one);
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"Case {i}: {e.Message}", e);
            }
        }
    }
}
