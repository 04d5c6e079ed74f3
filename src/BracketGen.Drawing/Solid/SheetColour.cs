using BracketGen.SheetMetal.Shops;

namespace BracketGen.Drawing.Solid;

/// <summary>A colour to show a sheet in.</summary>
/// <param name="Red">Red as a screen takes it (sRGB), 0 to 1.</param>
/// <param name="Green">Green, likewise.</param>
/// <param name="Blue">Blue, likewise.</param>
public readonly record struct SheetColour(double Red, double Green, double Blue)
{
    /// <summary>Colour by what kind of metal it must be, seen by its density: light metal, steel or a copper alloy.</summary>
    /// <remarks>Density in kg/dm³: aluminium 2.7, steel 7.7 to 8.0, brass 8.4, copper 8.9 (any table of densities).</remarks>
    public static SheetColour Of(Material material) => (1e9 * material.Density) switch
    {
        < 5 => new(0.82, 0.84, 0.86),
        < 8.2 => new(0.56, 0.59, 0.63),
        _ => new(0.80, 0.62, 0.33),
    };

    /// <summary>The three shares in proportion to the light itself, as renderers reckon (IEC 61966-2-1).</summary>
    internal (double Red, double Green, double Blue) Linear => (ToLinear(Red), ToLinear(Green), ToLinear(Blue));

    private static double ToLinear(double share) => share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
}
