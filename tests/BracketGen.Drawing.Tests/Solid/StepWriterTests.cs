using System.Text;
using System.Text.RegularExpressions;
using BracketGen.Design.Part;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Drawing.Solid.Step;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Solid;

public partial class StepWriterTests
{
    private static readonly SolidInfo Info = new()
    {
        PartNumber = "PLV-A58-01",
        Revision = "B",
        Title = "Gaszugbügel O'Hare \\ ½",
        Sheet = "EN AW-5754 H22, 3 mm",
        Material = "EN AW-5754 H22",
        Density = 2.66e-9,
        Mass = 65.125e-6,
        Volume = 24_600.5,
        Colour = new(0.8, 0.8, 0.8),
        Date = new(2026, 3, 14),
        Creator = "R. Teal",
        Organisation = "Saltmarsh Fabrication",
    };

    private static string Write(SolidInfo info, StepSchema schema = StepSchema.Ap214) =>
        Encoding.ASCII.GetString(StepWriter.Write(FoldedBrep.Of(ExampleSolutions.First.Bracket!.Folded), info, schema));

    [Fact]
    public void HeadSaysWhatAndWhen()
    {
        var text = Write(Info);
        Assert.StartsWith("ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((", text);
        Assert.Contains("'2;1');\nFILE_NAME('PLV-A58-01 B','2026-03-14T00:00:00',('R. Teal'),('Saltmarsh Fabrication'),'BracketGen','BracketGen','');\n", text);
        Assert.Contains("FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));\nENDSEC;\nDATA;\n", text);
        Assert.EndsWith("ENDSEC;\nEND-ISO-10303-21;\n", text);
        Assert.Contains("'2000-01-01T00:00:00'", Write(Info with { Date = null }));
    }

    // Object identifier of AP242's first edition: STEP Tools, notes on AP242 edition 3. Application, name and year: files of NIST's STEP File Analyzer and Viewer.
    [Fact]
    public void TheSchemasDifferInHeadAndContextAlone()
    {
        var (automotive, managed) = (Write(Info).Split('\n'), Write(Info, StepSchema.Ap242).Split('\n'));
        Assert.Equal(
            [
                "FILE_SCHEMA(('AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF { 1 0 10303 442 1 1 4 }'));",
                "#1=APPLICATION_CONTEXT('managed model based 3d engineering');",
                "#2=APPLICATION_PROTOCOL_DEFINITION('international standard','ap242_managed_model_based_3d_engineering',2014,#1);",
            ],
            managed.Except(automotive));
        Assert.Equal(automotive.Length, managed.Length);
        Assert.Equal(3, automotive.Zip(managed).Count(pair => pair.First != pair.Second));
    }

    // Names and values as CAx-IF's recommended practices and the PDM Schema Usage Guide have them; the units from ISO 10303-41.
    [Theory]
    [InlineData(StepSchema.Ap214)]
    [InlineData(StepSchema.Ap242)]
    public void MaterialMassAndVolumeAreProperties(StepSchema schema)
    {
        var properties = StepProperty.AllOf(Write(Info, schema));
        Assert.Equal(
            [
                new("mass property", "mass of the blank, which bending keeps", "PRODUCT_DEFINITION('design'", "MEASURE_REPRESENTATION_ITEM('mass measure',MASS_MEASURE(0.065125)", "kg"),
                new("material property", "material name", "PRODUCT_DEFINITION('design'", "DESCRIPTIVE_REPRESENTATION_ITEM('EN AW-5754 H22','EN AW-5754 H22')", ""),
                new("material property", "density", "PRODUCT_DEFINITION('design'", "MEASURE_REPRESENTATION_ITEM('density measure',POSITIVE_RATIO_MEASURE(2.66)", "g^1 cm^-3"),
                new("geometric validation property", "volume of the solid", "PRODUCT_DEFINITION_SHAPE(''", "MEASURE_REPRESENTATION_ITEM('volume measure',VOLUME_MEASURE(24600.5)", "mm^3"),
            ],
            properties);
    }

    [Fact]
    public void ProductHasNumberTitleSheetAndRevision()
    {
        var product = ProductLine.Match(Write(Info));
        Assert.Equal("PLV-A58-01", StepTextTests.Decode(product.Groups[1].Value));
        Assert.Equal(Info.Title, StepTextTests.Decode(product.Groups[2].Value));
        Assert.Equal(Info.Sheet, StepTextTests.Decode(product.Groups[3].Value));
        Assert.Matches(@"PRODUCT_DEFINITION_FORMATION\('B',", Write(Info));
    }

    [Fact]
    public void FailedChecksStandInHeadAndProduct()
    {
        var warning = "SAFETY CHECK FAILED: " + new string('x', 400);
        var text = Write(Info with { Warnings = [warning] });
        var head = text[..text.IndexOf("DATA;", StringComparison.Ordinal)];
        var strings = Quoted.Matches(head).Select(m => StepTextTests.Decode(m.Value)).ToList();
        Assert.Contains(warning, string.Concat(strings));
        Assert.All(strings, s => Assert.True(s.Length <= 256)); // ISO 10303-21, clause 8.2: STRING(256).
        Assert.EndsWith(warning, StepTextTests.Decode(ProductLine.Match(text).Groups[3].Value));
    }

    [Fact]
    public void EveryInstanceIsDefinedOnceAndUsed() => RandomSolutions.Each(60, solution =>
    {
        var text = Encoding.ASCII.GetString(StepWriter.Write(FoldedBrep.Of(solution.Bracket!.Folded), SolidInfo.Of(solution)));
        var data = text[text.IndexOf("DATA;\n", StringComparison.Ordinal)..].Split('\n').Where(l => l.StartsWith('#')).ToList();
        var defined = data.Select(l => l[..l.IndexOf('=')]).ToList();
        var used = data.SelectMany(l => Reference.Matches(Quoted.Replace(l[l.IndexOf('=')..], "")).Select(m => m.Value)).ToHashSet();
        Assert.Equal(defined.Count, defined.Distinct().Count());
        Assert.Subset(defined.ToHashSet(), used);

        // Nobody refers to what says something about the part as a whole.
        string[] roots = ["APPLICATION_PROTOCOL_DEFINITION", "PRODUCT_RELATED_PRODUCT_CATEGORY", "SHAPE_DEFINITION_REPRESENTATION", "MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION", .. Enumerable.Repeat("PROPERTY_DEFINITION_REPRESENTATION", 4)];
        var loose = data.Where(l => !used.Contains(l[..l.IndexOf('=')])).Select(l => l[(l.IndexOf('=') + 1)..l.IndexOf('(')]);
        Assert.Equal(roots.Order(), loose.Order());
    });

    [Fact]
    public void TheSameInputGivesTheSameBytes() => Assert.Equal(Write(Info), Write(Info with { }));

    [GeneratedRegex(@"=PRODUCT\(('(?:[^']|'')*'),('(?:[^']|'')*'),('(?:[^']|'')*'),")]
    private static partial Regex ProductLine { get; }

    [GeneratedRegex("'(?:[^']|'')*'")]
    private static partial Regex Quoted { get; }

    [GeneratedRegex(@"#\d+")]
    private static partial Regex Reference { get; }
}
