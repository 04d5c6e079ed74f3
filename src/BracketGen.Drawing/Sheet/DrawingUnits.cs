namespace BracketGen.Drawing.Sheet;

/// <summary>The unit that a drawing's lengths are written in.</summary>
public enum DrawingUnits
{
    /// <summary>Millimetres.</summary>
    Millimetre,

    /// <summary>Inches.</summary>
    Inch,
}
