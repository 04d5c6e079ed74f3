using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Format;

/// <summary>The nine tables of an R2000 file, all of which must be there, empty or not.</summary>
internal sealed class TablesR2000(GroupCodeWriter groups, Scale scale, HandleSource handles, DocumentHandles fixedHandles)
{
    public void Write(DxfDrawing drawing)
    {
        groups.Text(0, "SECTION");
        groups.Text(2, "TABLES");
        Viewport(drawing.Bounds);
        Linetypes();
        Layers(drawing);
        Table("STYLE", handles.Next(), 1, table =>
        {
            Entry("STYLE", table, fixedHandles.StandardTextStyle, "AcDbTextStyleTableRecord", "STANDARD");
            TextStyle.Write(groups);
        });
        Table("VIEW", handles.Next(), 0, _ => { });
        Table("UCS", handles.Next(), 0, _ => { });
        Table("APPID", handles.Next(), 1, table => Entry("APPID", table, handles.Next(), "AcDbRegAppTableRecord", "ACAD"));
        DimensionStyles();
        BlockRecords();
        groups.Text(0, "ENDSEC");
    }

    /// <summary>The window in which the file opens: the whole part with a margin.</summary>
    private void Viewport(Bounds bounds) => Table("VPORT", handles.Next(), 1, table =>
    {
        var shown = bounds.Grow(0.1 * Math.Max(bounds.Width, bounds.Height));
        Entry("VPORT", table, handles.Next(), "AcDbViewportTableRecord", "*ACTIVE");
        groups.Point(10, new(0, 0));
        groups.Point(11, new(1, 1));
        groups.Point(12, scale.Of(shown.Centre));
        groups.Point(13, default);
        groups.Point(14, new(10, 10));
        groups.Point(15, new(10, 10));
        groups.Point3(16, default, 1);
        groups.Point3(17, default);
        groups.Real(40, scale.Of(Math.Max(shown.Height, shown.Width / 1.5)));
        groups.Real(41, 1.5);
        groups.Real(42, 50);
        groups.Real(43, 0);
        groups.Real(44, 0);
        groups.Real(50, 0);
        groups.Real(51, 0);
        groups.Integer(71, 0);
        groups.Integer(72, 1000);
        groups.Integer(73, 1);
        groups.Integer(74, 3);
        groups.Integer(75, 0);
        groups.Integer(76, 0);
        groups.Integer(77, 0);
        groups.Integer(78, 0);
    });

    private void Linetypes() => Table("LTYPE", handles.Next(), 3, table =>
    {
        foreach (var (name, description) in new[] { ("ByBlock", ""), ("ByLayer", ""), ("Continuous", "Solid line") })
        {
            Entry("LTYPE", table, handles.Next(), "AcDbLinetypeTableRecord", name);
            groups.Text(3, description);
            groups.Integer(72, 65);
            groups.Integer(73, 0);
            groups.Real(40, 0);
        }
    });

    private void Layers(DxfDrawing drawing) => Table("LAYER", handles.Next(), drawing.Layers.Length + 1, table =>
    {
        const int standardWeight = -3;
        foreach (var (name, colour, weight) in drawing.Layers.Select(l => (l.Name, l.Colour, l.Lineweight)).Prepend(("0", 7, standardWeight)))
        {
            Entry("LAYER", table, handles.Next(), "AcDbLayerTableRecord", name);
            groups.Integer(62, colour);
            groups.Text(6, "Continuous");
            groups.Integer(370, weight);
            groups.Handle(390, fixedHandles.NormalPlotStyle);
        }
    });

    private void DimensionStyles()
    {
        var table = handles.Next();
        Begin("DIMSTYLE", table, 1);
        groups.Text(100, "AcDbDimStyleTable");
        groups.Integer(71, 1);

        // Alone among the entries it has its handle in group 105, because 5 is one of its own values.
        groups.Text(0, "DIMSTYLE");
        groups.Handle(105, handles.Next());
        groups.Handle(330, table);
        groups.Text(100, "AcDbSymbolTableRecord");
        groups.Text(100, "AcDbDimStyleTableRecord");
        groups.Text(2, "STANDARD");
        groups.Integer(70, 0);
        groups.Handle(340, fixedHandles.StandardTextStyle);
        groups.Text(0, "ENDTAB");
    }

    private void BlockRecords() => Table("BLOCK_RECORD", fixedHandles.BlockRecords, 2, table =>
    {
        Record("*Model_Space", fixedHandles.ModelSpace, fixedHandles.ModelLayout);
        Record("*Paper_Space", fixedHandles.PaperSpace, fixedHandles.PaperLayout);

        void Record(string name, Handle handle, Handle layout)
        {
            Entry("BLOCK_RECORD", table, handle, "AcDbBlockTableRecord", name, flags: false);
            groups.Handle(340, layout);
        }
    });

    private void Table(string name, Handle handle, int count, Action<Handle> entries)
    {
        Begin(name, handle, count);
        entries(handle);
        groups.Text(0, "ENDTAB");
    }

    private void Begin(string name, Handle handle, int count)
    {
        groups.Text(0, "TABLE");
        groups.Text(2, name);
        groups.Handle(5, handle);
        groups.Handle(330, Handle.None);
        groups.Text(100, "AcDbSymbolTable");
        groups.Integer(70, count);
    }

    private void Entry(string kind, Handle table, Handle handle, string subclass, string name, bool flags = true)
    {
        groups.Text(0, kind);
        groups.Handle(5, handle);
        groups.Handle(330, table);
        groups.Text(100, "AcDbSymbolTableRecord");
        groups.Text(100, subclass);
        groups.Text(2, name);
        if (flags)
        {
            groups.Integer(70, 0);
        }
    }
}
