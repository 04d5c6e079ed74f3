using System.Globalization;
using System.Text;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Solid.Step;

/// <summary>Writes a solid as a STEP file: ISO 10303-21 text of the schema of AP214 or AP242.</summary>
/// <remarks>
/// One part with one closed solid (advanced boundary representation), millimetres, in the throttle frame, with material and mass. Both schemas have all
/// of that, and ask for no approvals and organisations to make a file whole. The same input gives the same bytes.
/// </remarks>
public static class StepWriter
{
    /// <summary>Longest string that a header may hold (ISO 10303-21, clause 8.2).</summary>
    private const int HeaderLength = 256;

    /// <summary>The bytes of the file.</summary>
    /// <param name="solid">The solid (mm).</param>
    /// <param name="info">What is said beside its shape.</param>
    /// <param name="schema">The schema that the file follows.</param>
    public static byte[] Write(BrepSolid solid, SolidInfo info, StepSchema schema = StepSchema.Ap214)
    {
        var data = new StepData();
        var protocol = StepProtocol.Of(schema);
        var context = data.Add($"APPLICATION_CONTEXT('{protocol.Application}')");
        data.Add(string.Create(CultureInfo.InvariantCulture, $"APPLICATION_PROTOCOL_DEFINITION('international standard','{protocol.Name}',{protocol.Year},{context})"));
        var definition = Product(data, context, info);
        var shape = data.Add($"PRODUCT_DEFINITION_SHAPE('','',{definition})");
        var space = Space(data);
        var origin = StepShape.Placement(data, Vector3.Zero, new(0, 0, 1), new(1, 0, 0));
        var body = StepShape.Add(data, solid, info.PartNumber);
        var representation = data.Add($"ADVANCED_BREP_SHAPE_REPRESENTATION('',({origin},{body}),{space})");
        data.Add($"SHAPE_DEFINITION_REPRESENTATION({shape},{representation})");
        Paint(data, body, space, info.Colour);
        StepProperties.Add(data, definition, shape, space, info);
        return Encoding.ASCII.GetBytes($"ISO-10303-21;\n{Header(info, protocol)}DATA;\n{data}ENDSEC;\nEND-ISO-10303-21;\n");
    }

    private static string Header(SolidInfo info, StepProtocol protocol)
    {
        var stamp = (info.Date ?? new(2000, 1, 1)).ToString("yyyy-MM-dd'T00:00:00'", CultureInfo.InvariantCulture);
        var description = new[] { "Solid model of a sheet-metal bracket. The cut file is the flat pattern." }.Concat(info.Warnings)
            .SelectMany(Pieces)
            .Select(StepText.String);
        string Brief(string text) => StepText.String(Pieces(text).First());
        return $"HEADER;\nFILE_DESCRIPTION({StepText.List(description)},'2;1');\n"
            + $"FILE_NAME({Brief(Joined(" ", info.PartNumber, info.Revision))},'{stamp}',({Brief(info.Creator)}),({Brief(info.Organisation)}),"
            + $"'BracketGen','BracketGen',{Brief(info.Approver)});\n"
            + $"FILE_SCHEMA(('{protocol.Identifier}'));\nENDSEC;\n";
    }

    private static IEnumerable<string> Pieces(string text)
    {
        for (var from = 0; from == 0 || from < text.Length; from += HeaderLength)
        {
            yield return text[from..Math.Min(text.Length, from + HeaderLength)];
        }
    }

    private static string Joined(string separator, params IEnumerable<string> texts) => string.Join(separator, texts.Where(t => t.Length > 0));

    /// <summary>The product and its revision; the name of its product_definition.</summary>
    private static string Product(StepData data, string context, SolidInfo info)
    {
        var description = Joined("; ", info.Warnings.Prepend(info.Sheet));
        var mechanical = data.Add($"PRODUCT_CONTEXT('',{context},'mechanical')");
        var product = data.Add(
            $"PRODUCT({StepText.String(info.PartNumber)},{StepText.String(info.Title)},{StepText.String(description)},({mechanical}))");
        data.Add($"PRODUCT_RELATED_PRODUCT_CATEGORY('part',$,({product}))");
        var revision = data.Add($"PRODUCT_DEFINITION_FORMATION({StepText.String(info.Revision)},'',{product})");
        var design = data.Add($"PRODUCT_DEFINITION_CONTEXT('part definition',{context},'design')");
        return data.Add($"PRODUCT_DEFINITION('design','',{revision},{design})");
    }

    /// <summary>Space in millimetres and radians, in which points nearer than the project's tolerance are one.</summary>
    private static string Space(StepData data)
    {
        var length = StepUnits.Millimetre(data);
        var angle = data.Add("(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))");
        var solidAngle = data.Add("(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())");
        var uncertainty = data.Add(
            $"UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE({StepText.Real(Tolerance.Point)}),{length},'distance_accuracy_value','confusion accuracy')");
        return data.Add(
            $"(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT(({uncertainty}))"
            + $"GLOBAL_UNIT_ASSIGNED_CONTEXT(({length},{angle},{solidAngle}))REPRESENTATION_CONTEXT('',''))");
    }

    private static void Paint(StepData data, string body, string space, SheetColour colour)
    {
        var rgb = data.Add($"COLOUR_RGB('',{StepText.Real(colour.Red)},{StepText.Real(colour.Green)},{StepText.Real(colour.Blue)})");
        var fill = data.Add($"FILL_AREA_STYLE('',({data.Add($"FILL_AREA_STYLE_COLOUR('',{rgb})")}))");
        var side = data.Add($"SURFACE_SIDE_STYLE('',({data.Add($"SURFACE_STYLE_FILL_AREA({fill})")}))");
        var style = data.Add($"PRESENTATION_STYLE_ASSIGNMENT(({data.Add($"SURFACE_STYLE_USAGE(.BOTH.,{side})")}))");
        var item = data.Add($"STYLED_ITEM('',({style}),{body})");
        data.Add($"MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION('',({item}),{space})");
    }
}
