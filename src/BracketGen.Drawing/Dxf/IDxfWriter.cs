namespace BracketGen.Drawing.Dxf;

/// <summary>Makes a DXF file of a drawing. The only door to the format: what stands behind it can be changed.</summary>
public interface IDxfWriter
{
    /// <summary>The bytes of the whole file: ASCII, the same for the same drawing.</summary>
    byte[] Write(DxfDrawing drawing);
}
