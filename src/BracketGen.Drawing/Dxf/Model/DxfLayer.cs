namespace BracketGen.Drawing.Dxf.Model;

/// <summary>A layer: what is done with all that lies on it.</summary>
/// <remarks>Colour and line weight belong to the layer; entities carry none of their own.</remarks>
public sealed record DxfLayer
{
    private static readonly int[] Lineweights =
        [0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211];

    /// <summary>The layer <paramref name="name"/>.</summary>
    /// <param name="name">Up to 31 letters A to Z, digits, '_', '-' or '$': what the oldest reader of the format accepts.</param>
    /// <param name="colour">Colour number of the format, 1 to 255.</param>
    /// <param name="lineweight">Line weight on paper in hundredths of a millimetre, one of those the format knows.</param>
    /// <exception cref="ArgumentException">One of the three is not such.</exception>
    public DxfLayer(string name, int colour, int lineweight)
    {
        if (name.Length is 0 or > 31 || name.Any(c => !char.IsAsciiLetterUpper(c) && !char.IsAsciiDigit(c) && c is not ('_' or '-' or '$')))
        {
            throw new ArgumentException($"A layer's name has 1 to 31 letters A to Z, digits, '_', '-' or '$', unlike \"{name}\".", nameof(name));
        }

        if (colour is < 1 or > 255)
        {
            throw new ArgumentException($"A layer's colour is 1 to 255, not {colour}.", nameof(colour));
        }

        if (!Lineweights.Contains(lineweight))
        {
            throw new ArgumentException($"DXF knows no line weight of {lineweight}/100 mm.", nameof(lineweight));
        }

        Name = name;
        Colour = colour;
        Lineweight = lineweight;
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Colour number, 1 to 255.</summary>
    public int Colour { get; }

    /// <summary>Line weight in hundredths of a millimetre.</summary>
    public int Lineweight { get; }
}
