using BracketGen.Drawing.Dxf.Model;

namespace BracketGen.Drawing.Dxf.Format;

/// <summary>The sections of an R12 file (AC1009).</summary>
internal static class DocumentR12
{
    public static byte[] Write(DxfDrawing drawing)
    {
        var groups = new GroupCodeWriter();
        var scale = new Scale(drawing.Units);
        Comments.Write(groups, drawing, scale);

        groups.Text(0, "SECTION");
        groups.Text(2, "HEADER");
        groups.Text(9, "$ACADVER");
        groups.Text(1, "AC1009");
        HeaderVariables.Extents(groups, drawing, scale);
        groups.Text(0, "ENDSEC");

        groups.Text(0, "SECTION");
        groups.Text(2, "TABLES");
        Begin(groups, "LTYPE", 1);
        Entry(groups, "LTYPE", "CONTINUOUS");
        groups.Text(3, "Solid line");
        groups.Integer(72, 65);
        groups.Integer(73, 0);
        groups.Real(40, 0);
        groups.Text(0, "ENDTAB");
        Begin(groups, "LAYER", drawing.Layers.Length + 1);
        foreach (var (name, colour) in drawing.Layers.Select(l => (l.Name, l.Colour)).Prepend(("0", 7)))
        {
            Entry(groups, "LAYER", name);
            groups.Integer(62, colour);
            groups.Text(6, "CONTINUOUS");
        }

        groups.Text(0, "ENDTAB");
        Begin(groups, "STYLE", 1);
        Entry(groups, "STYLE", "STANDARD");
        TextStyle.Write(groups);
        groups.Text(0, "ENDTAB");
        groups.Text(0, "ENDSEC");

        groups.Text(0, "SECTION");
        groups.Text(2, "BLOCKS");
        groups.Text(0, "ENDSEC");

        groups.Text(0, "SECTION");
        groups.Text(2, "ENTITIES");
        var entities = new EntityWriterR12(groups, scale);
        foreach (var entity in drawing.Entities)
        {
            entities.Write(entity);
        }

        groups.Text(0, "ENDSEC");
        groups.Text(0, "EOF");
        return groups.ToBytes();
    }

    private static void Begin(GroupCodeWriter groups, string table, int count)
    {
        groups.Text(0, "TABLE");
        groups.Text(2, table);
        groups.Integer(70, count);
    }

    private static void Entry(GroupCodeWriter groups, string table, string name)
    {
        groups.Text(0, table);
        groups.Text(2, name);
        groups.Integer(70, 0);
    }
}
