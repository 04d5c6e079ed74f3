using BracketGen.Drawing.Dxf.Model;

namespace BracketGen.Drawing.Dxf.Format;

/// <summary>Entities as R2000 has them, with handles, owners and subclass markers.</summary>
internal sealed class EntityWriterR2000(GroupCodeWriter groups, Scale scale, HandleSource handles, Handle owner)
{
    public void Write(DxfEntity entity)
    {
        switch (entity)
        {
            case DxfLine line:
                Begin("LINE", line, "AcDbLine");
                groups.Point3(10, scale.Of(line.Start));
                groups.Point3(11, scale.Of(line.End));
                break;
            case DxfCircle circle:
                Begin("CIRCLE", circle, "AcDbCircle");
                groups.Point3(10, scale.Of(circle.Centre));
                groups.Real(40, scale.Of(circle.Radius));
                break;
            case DxfArc arc:
                Begin("ARC", arc, "AcDbCircle");
                groups.Point3(10, scale.Of(arc.Centre));
                groups.Real(40, scale.Of(arc.Radius));
                groups.Text(100, "AcDbArc");
                ArcAngles.Write(groups, arc);
                break;
            case DxfPolyline polyline:
                Write(polyline);
                break;
            case DxfText text:
                Begin("TEXT", text, "AcDbText");
                groups.Point3(10, scale.Of(text.At));
                groups.Real(40, scale.Of(text.Height));
                groups.Text(1, text.Value);

                // The second marker begins the vertical alignment, which is left at the base line (DXF Reference, TEXT).
                groups.Text(100, "AcDbText");
                break;
            default:
                throw new NotSupportedException($"No DXF entity for {entity.GetType().Name}.");
        }
    }

    private void Write(DxfPolyline polyline)
    {
        Begin("LWPOLYLINE", polyline, "AcDbPolyline");
        groups.Integer(90, polyline.Vertices.Length);
        groups.Integer(70, polyline.Closed ? 1 : 0);
        groups.Real(43, 0);
        foreach (var vertex in polyline.Vertices)
        {
            groups.Point(10, scale.Of(vertex.Point));
            if (vertex.Bulge != 0)
            {
                groups.Real(42, vertex.Bulge);
            }
        }
    }

    private void Begin(string kind, DxfEntity entity, string subclass)
    {
        groups.Text(0, kind);
        groups.Handle(5, handles.Next());
        groups.Handle(330, owner);
        groups.Text(100, "AcDbEntity");
        groups.Text(8, entity.Layer.Name);
        groups.Text(100, subclass);
    }
}
