namespace BracketGen.Strength.Life;

/// <summary>The alternating stress that sheet withstands for a number of cycles, fully reversed.</summary>
/// <remarks>
/// Steel: the endurance limit, whatever the number. All else has none: the lower of two lines, falling for ever.
/// One is that of plain sheet in EN 1999-1-3 (category 90-7, table J.1, from memory: a range of 90 MPa at 2 million cycles, slope 7 to 5 million, 9
/// beyond; it is stated for the worst mean stress, here half of it is taken as the reversed amplitude, which is cautious). The other starts at the
/// material's own endurance, taken to be stated for 5 million cycles: level before, slope 9 beyond.
/// </remarks>
/// <param name="Endurance">The material's endurance: fully reversed amplitude (MPa).</param>
/// <param name="IsEndless">Whether it has an endurance limit.</param>
public sealed record SnLine(double Endurance, bool IsEndless)
{
    private const double Category = 90, AtCycles = 2e6, Knee = 5e6, Slope = 7, SlopeBeyond = 9;

    // Below this many cycles the standard's lines do not hold; nothing is permitted beyond what holds here.
    private const double Fewest = 1e5;

    /// <summary>Amplitude (MPa) of the plain sheet of EN 1999-1-3 at a number of cycles.</summary>
    internal static double PlainAluminium(double cycles) => cycles <= Knee
        ? Category / 2 * Math.Pow(AtCycles / Math.Max(Fewest, cycles), 1 / Slope)
        : PlainAluminium(Knee) * Math.Pow(Knee / cycles, 1 / SlopeBeyond);

    /// <summary>Amplitude (MPa) withstood for <paramref name="cycles"/>.</summary>
    public double Amplitude(double cycles) => IsEndless
        ? Endurance
        : Math.Min(Endurance * Math.Pow(Knee / Math.Max(Knee, cycles), 1 / SlopeBeyond), PlainAluminium(cycles));

    /// <summary>Cycles for which <paramref name="amplitude"/> (MPa) is withstood: none above what is permitted at all, infinitely many below an endurance limit.</summary>
    public double Cycles(double amplitude)
    {
        if (amplitude <= 0)
        {
            return double.PositiveInfinity;
        }

        if (amplitude > Amplitude(Fewest))
        {
            return 0;
        }

        if (IsEndless)
        {
            return double.PositiveInfinity;
        }

        var atKnee = PlainAluminium(Knee);
        var plain = amplitude >= atKnee ? AtCycles * Math.Pow(Category / 2 / amplitude, Slope) : Knee * Math.Pow(atKnee / amplitude, SlopeBeyond);
        return Math.Min(plain, Knee * Math.Pow(Endurance / amplitude, SlopeBeyond));
    }
}
