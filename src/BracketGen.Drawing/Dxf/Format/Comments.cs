using BracketGen.Drawing.Dxf.Model;

namespace BracketGen.Drawing.Dxf.Format;

/// <summary>Lines for whoever opens the file in an editor; readers skip them (group 999).</summary>
internal static class Comments
{
    public static void Write(GroupCodeWriter groups, DxfDrawing drawing, Scale scale)
    {
        groups.Text(999, $"All lengths in {scale.Words}");
        foreach (var line in drawing.Comment.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            groups.Text(999, line);
        }
    }
}
