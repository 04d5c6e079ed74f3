using System.Globalization;
using BracketGen.Design.Inputs;

namespace BracketGen.Drawing.Text;

/// <summary>A mass as people read it: grams, or pounds where lengths are in inches.</summary>
public static class MassText
{
    /// <summary>«39.4 g», «0.174 lb».</summary>
    /// <remarks>NIST SP 811, appendix B.8: 1 lb = 0.453 592 37 kg.</remarks>
    /// <param name="mass">The mass (t).</param>
    /// <param name="units">Unit of length that goes with it.</param>
    public static string Of(double mass, LengthUnit units)
    {
        const double gram = 1e-6, pound = 453.59237 * gram;
        return units == LengthUnit.Inch
            ? (mass / pound).ToString("0.000", CultureInfo.InvariantCulture) + " lb"
            : (mass / gram).ToString("0.#", CultureInfo.InvariantCulture) + " g";
    }
}
