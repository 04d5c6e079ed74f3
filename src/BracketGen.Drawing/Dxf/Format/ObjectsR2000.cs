using BracketGen.Drawing.Dxf.Model;

namespace BracketGen.Drawing.Dxf.Format;

/// <summary>The OBJECTS section: the root dictionary, which must come first, and what it names.</summary>
internal sealed class ObjectsR2000(GroupCodeWriter groups, DocumentHandles handles, Scale scale, DxfDrawing drawing)
{
    public void Write()
    {
        groups.Text(0, "SECTION");
        groups.Text(2, "OBJECTS");
        Dictionary("DICTIONARY", handles.Root, Handle.None, [
            ("ACAD_GROUP", handles.Groups), ("ACAD_LAYOUT", handles.Layouts), ("ACAD_PLOTSTYLENAME", handles.PlotStyles)]);
        Dictionary("DICTIONARY", handles.Groups, handles.Root, []);
        Dictionary("DICTIONARY", handles.Layouts, handles.Root, [("Layout1", handles.PaperLayout), ("Model", handles.ModelLayout)]);
        Dictionary("ACDBDICTIONARYWDFLT", handles.PlotStyles, handles.Root, [("Normal", handles.NormalPlotStyle)]);
        groups.Text(100, "AcDbDictionaryWithDefault");
        groups.Handle(340, handles.NormalPlotStyle);
        groups.Text(0, "ACDBPLACEHOLDER");
        groups.Handle(5, handles.NormalPlotStyle);
        groups.Handle(330, handles.PlotStyles);
        Layout(handles.ModelLayout, "Model", 0, handles.ModelSpace);
        Layout(handles.PaperLayout, "Layout1", 1, handles.PaperSpace);
        groups.Text(0, "ENDSEC");
    }

    private void Dictionary(string kind, Handle handle, Handle owner, IEnumerable<(string Name, Handle Handle)> entries)
    {
        groups.Text(0, kind);
        groups.Handle(5, handle);
        groups.Handle(330, owner);
        groups.Text(100, "AcDbDictionary");
        groups.Integer(281, 1);
        foreach (var (name, entry) in entries)
        {
            groups.Text(3, name);
            groups.Handle(350, entry);
        }
    }

    private void Layout(Handle handle, string name, int order, Handle block)
    {
        const int isModelSpace = 1024;
        groups.Text(0, "LAYOUT");
        groups.Handle(5, handle);
        groups.Handle(330, handles.Layouts);
        groups.Text(100, "AcDbPlotSettings");
        groups.Text(1, "");
        groups.Text(2, "none_device");
        groups.Text(4, "");
        groups.Text(6, "");
        foreach (var code in new[] { 40, 41, 42, 43, 44, 45, 46, 47, 48, 49, 140, 141 })
        {
            groups.Real(code, 0);
        }

        groups.Real(142, 1);
        groups.Real(143, 1);
        groups.Integer(70, order == 0 ? isModelSpace : 0);
        groups.Integer(72, scale.Metric);
        groups.Integer(73, 0);
        groups.Integer(74, 5);
        groups.Text(7, "");
        groups.Integer(75, 16);
        groups.Real(147, 1);
        groups.Real(148, 0);
        groups.Real(149, 0);

        var bounds = drawing.Bounds;
        groups.Text(100, "AcDbLayout");
        groups.Text(1, name);
        groups.Integer(70, 1);
        groups.Integer(71, order);
        groups.Point(10, scale.Of(bounds.Min));
        groups.Point(11, scale.Of(bounds.Max));
        groups.Point3(12, default);
        groups.Point3(14, scale.Of(bounds.Min));
        groups.Point3(15, scale.Of(bounds.Max));
        groups.Real(146, 0);
        groups.Point3(13, default);
        groups.Point3(16, new(1, 0));
        groups.Point3(17, new(0, 1));
        groups.Integer(76, 0);
        groups.Handle(330, block);
    }
}
