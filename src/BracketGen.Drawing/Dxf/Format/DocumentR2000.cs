using BracketGen.Drawing.Dxf.Model;

namespace BracketGen.Drawing.Dxf.Format;

/// <summary>The sections of an R2000 file (AC1015).</summary>
internal static class DocumentR2000
{
    public static byte[] Write(DxfDrawing drawing)
    {
        var scale = new Scale(drawing.Units);
        var source = new HandleSource();
        var handles = new DocumentHandles(source);

        // The header names the first free handle, so the body is written first.
        var body = new GroupCodeWriter();
        new TablesR2000(body, scale, source, handles).Write(drawing);
        Blocks(body, source, handles);
        Entities(body, scale, source, handles, drawing);
        new ObjectsR2000(body, handles, scale, drawing).Write();
        body.Text(0, "EOF");

        var file = new GroupCodeWriter();
        Comments.Write(file, drawing, scale);
        Header(file, scale, source.Seed, drawing);
        file.Text(0, "SECTION");
        file.Text(2, "CLASSES");
        file.Text(0, "ENDSEC");
        file.Append(body);
        return file.ToBytes();
    }

    private static void Header(GroupCodeWriter groups, Scale scale, Handle seed, DxfDrawing drawing)
    {
        groups.Text(0, "SECTION");
        groups.Text(2, "HEADER");
        groups.Text(9, "$ACADVER");
        groups.Text(1, "AC1015");
        groups.Text(9, "$DWGCODEPAGE");
        groups.Text(3, "ANSI_1252");
        HeaderVariables.Extents(groups, drawing, scale);
        groups.Text(9, "$CLAYER");
        groups.Text(8, "0");
        HeaderVariables.Integer(groups, "$LUNITS", 2);
        HeaderVariables.Integer(groups, "$LUPREC", 4);
        HeaderVariables.Integer(groups, "$AUNITS", 0);
        HeaderVariables.Integer(groups, "$MEASUREMENT", scale.Metric);
        HeaderVariables.Integer(groups, "$INSUNITS", scale.Code);
        groups.Text(9, "$HANDSEED");
        groups.Handle(5, seed);
        groups.Text(0, "ENDSEC");
    }

    private static void Blocks(GroupCodeWriter groups, HandleSource source, DocumentHandles handles)
    {
        groups.Text(0, "SECTION");
        groups.Text(2, "BLOCKS");
        Block("*Model_Space", handles.ModelSpace, paper: false);
        Block("*Paper_Space", handles.PaperSpace, paper: true);
        groups.Text(0, "ENDSEC");

        void Block(string name, Handle record, bool paper)
        {
            Begin("BLOCK", "AcDbBlockBegin", record, paper);
            groups.Text(2, name);
            groups.Integer(70, 0);
            groups.Point3(10, default);
            groups.Text(3, name);
            groups.Text(1, "");
            Begin("ENDBLK", "AcDbBlockEnd", record, paper);
        }

        void Begin(string kind, string subclass, Handle record, bool paper)
        {
            groups.Text(0, kind);
            groups.Handle(5, source.Next());
            groups.Handle(330, record);
            groups.Text(100, "AcDbEntity");
            if (paper)
            {
                groups.Integer(67, 1);
            }

            groups.Text(8, "0");
            groups.Text(100, subclass);
        }
    }

    private static void Entities(
        GroupCodeWriter groups, Scale scale, HandleSource source, DocumentHandles handles, DxfDrawing drawing)
    {
        groups.Text(0, "SECTION");
        groups.Text(2, "ENTITIES");
        var entities = new EntityWriterR2000(groups, scale, source, handles.ModelSpace);
        foreach (var entity in drawing.Entities)
        {
            entities.Write(entity);
        }

        groups.Text(0, "ENDSEC");
    }
}
