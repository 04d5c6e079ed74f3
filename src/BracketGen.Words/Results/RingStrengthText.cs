using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Units;

namespace BracketGen.Words.Results;

/// <summary>What is said of an adapter ring's strength.</summary>
internal static class RingStrengthText
{
    /// <summary>What is said of it beside the strength.</summary>
    public static string Of(RingReport ring, UnitSystem units) =>
        $"The bracket is bolted to an adapter ring that bends with it: give, stresses and joints count both. The ring itself takes {units.Write(Quantity.Stress, ring.StampedStress)} with the pedal stamped on, factor {ring.YieldFactor.ToString("0.##", CultureInfo.InvariantCulture)} against yield and {ring.EnduranceFactor.ToString("0.##", CultureInfo.InvariantCulture)} against cracking. "
            + "Frequencies are the lowest that bracket and ring may have together. What shaking does to both is not known.";
}
