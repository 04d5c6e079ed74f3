using BracketGen.Mechanism.Cables;

namespace BracketGen.Design.Checks;

/// <summary>What the outer's end weighs: it hangs on the stop and swings with it.</summary>
public static class EndMass
{
    private const double Steel = 7.85e-9;

    /// <summary>Length taken for the body of a ferrule (mm; common practice, no source).</summary>
    private const double FerruleLength = 20;

    /// <summary>Mass of the end (t), taken as solid steel: heavier than it is, so that the frequency comes out low.</summary>
    /// <param name="end">The end.</param>
    /// <param name="thickness">Thickness of the sheet it is held in (mm).</param>
    public static double Of(OuterEnd end, double thickness) => Steel * end switch
    {
        // A threaded bar through both nuts and the whole range, and two hexagons less their bore.
        ThreadedAdjuster a => Round(a.Thread) * (thickness + 2 * a.NutHeight + a.Range)
            + 2 * a.NutHeight * (Math.Sqrt(3) / 2 * a.AcrossFlats * a.AcrossFlats - Round(a.Thread)),
        _ => Round(end.SeatDiameter) * FerruleLength,
    };

    private static double Round(double diameter) => Math.PI / 4 * diameter * diameter;
}
