using System.Collections.Immutable;
using BracketGen.Strength.Analysis;

namespace BracketGen.Strength.Shaking;

/// <summary>How far the stress swings to each side while the base shakes, as von Mises stress, each place at its own worst direction, phase and frequency.</summary>
/// <param name="Sine">Amplitude under the sine at every node on both surfaces (MPa), at its worst frequency.</param>
/// <param name="SineFrequency">Frequency of the base (Hz) at which the most stressed place has its amplitude; zero without a sine.</param>
/// <param name="Rms">Root mean square under the random acceleration at every node on both surfaces (MPa).</param>
public sealed record ShakingStress(ImmutableArray<NodeStress> Sine, double SineFrequency, ImmutableArray<NodeStress> Rms)
{
    /// <summary>How many times its root mean square a random stress counts with.</summary>
    /// <remarks>
    /// Three: a normal value exceeds it in 27 of 10,000, and shakers cut off there. NASA GSFC-STD-7000 (GEVS) designs for three sigma (from memory).
    /// </remarks>
    public const double Sigmas = 3;

    /// <summary>The alternating stress at every node on both surfaces (MPa): amplitude of the sine and three times the random one, which act at once.</summary>
    public ImmutableArray<NodeStress> Alternating { get; } =
        [.. Sine.Zip(Rms, (s, r) => new NodeStress(s.Top + Sigmas * r.Top, s.Bottom + Sigmas * r.Bottom))];

    /// <summary>The node where it is largest; the first of several.</summary>
    public int MostStressed
    {
        get
        {
            var most = 0;
            for (var n = 1; n < Alternating.Length; n++)
            {
                most = Alternating[n].Largest > Alternating[most].Largest ? n : most;
            }

            return most;
        }
    }

    /// <summary>The largest alternating stress (MPa).</summary>
    public double Largest => Alternating[MostStressed].Largest;
}
