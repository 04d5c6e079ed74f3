using BracketGen.Drawing.Dxf.Model;

namespace BracketGen.Drawing.Dxf.Format;

/// <summary>Entities as R12 has them: a polyline is a sequence of vertex entities.</summary>
internal sealed class EntityWriterR12(GroupCodeWriter groups, Scale scale)
{
    public void Write(DxfEntity entity)
    {
        switch (entity)
        {
            case DxfLine line:
                Begin("LINE", line);
                groups.Point3(10, scale.Of(line.Start));
                groups.Point3(11, scale.Of(line.End));
                break;
            case DxfCircle circle:
                Begin("CIRCLE", circle);
                groups.Point3(10, scale.Of(circle.Centre));
                groups.Real(40, scale.Of(circle.Radius));
                break;
            case DxfArc arc:
                Begin("ARC", arc);
                groups.Point3(10, scale.Of(arc.Centre));
                groups.Real(40, scale.Of(arc.Radius));
                ArcAngles.Write(groups, arc);
                break;
            case DxfPolyline polyline:
                Write(polyline);
                break;
            case DxfText text:
                Begin("TEXT", text);
                groups.Point3(10, scale.Of(text.At));
                groups.Real(40, scale.Of(text.Height));
                groups.Text(1, text.Value);
                break;
            default:
                throw new NotSupportedException($"No DXF entity for {entity.GetType().Name}.");
        }
    }

    private void Write(DxfPolyline polyline)
    {
        Begin("POLYLINE", polyline);
        groups.Integer(66, 1);
        groups.Point3(10, default);
        groups.Integer(70, polyline.Closed ? 1 : 0);
        foreach (var vertex in polyline.Vertices)
        {
            Begin("VERTEX", polyline);
            groups.Point3(10, scale.Of(vertex.Point));
            if (vertex.Bulge != 0)
            {
                groups.Real(42, vertex.Bulge);
            }
        }

        Begin("SEQEND", polyline);
    }

    private void Begin(string kind, DxfEntity entity)
    {
        groups.Text(0, kind);
        groups.Text(8, entity.Layer.Name);
    }
}
