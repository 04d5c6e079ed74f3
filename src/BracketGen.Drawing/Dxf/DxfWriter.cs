using BracketGen.Drawing.Dxf.Format;
using BracketGen.Drawing.Dxf.Model;

namespace BracketGen.Drawing.Dxf;

/// <summary>Writes DXF files of one release of the format.</summary>
/// <param name="Version">The release.</param>
public sealed record DxfWriter(DxfVersion Version = DxfVersion.R2000)
{
    /// <summary>The bytes of the whole file: ASCII, the same for the same drawing.</summary>
    public byte[] Write(DxfDrawing drawing) => Version switch
    {
        DxfVersion.R2000 => DocumentR2000.Write(drawing),
        DxfVersion.R12 => DocumentR12.Write(drawing),
        _ => throw new ArgumentOutOfRangeException(nameof(drawing), Version, "No such release of DXF."),
    };
}
