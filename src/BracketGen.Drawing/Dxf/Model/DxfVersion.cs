namespace BracketGen.Drawing.Dxf.Model;

/// <summary>The release of the format that a DXF file follows.</summary>
public enum DxfVersion
{
    /// <summary>AC1015. Declares its units and holds a contour as one light polyline: the one to send unless a shop asks for the other.</summary>
    R2000,

    /// <summary>AC1009, for old machines. It has no variable for the units: they stand in a comment at the top.</summary>
    R12,
}
