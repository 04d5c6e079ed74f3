namespace BracketGen.Drawing.Dxf.Model;

/// <summary>The unit of every length in a DXF file.</summary>
public enum DxfUnits
{
    /// <summary>Millimetres.</summary>
    Millimetres,

    /// <summary>International inches.</summary>
    Inches,
}
