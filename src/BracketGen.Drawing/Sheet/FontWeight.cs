namespace BracketGen.Drawing.Sheet;

/// <summary>The two weights of the sheet font.</summary>
public enum FontWeight
{
    /// <summary>Plain text, dimensions, tables.</summary>
    Regular,

    /// <summary>Titles, the drawing number, warnings.</summary>
    Bold,
}
