using System.Text.Json;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;
using BracketGen.Units;

namespace BracketGen.Drawing.Tests.Dxf;

/// <summary>Cut files of examples and random jobs, both releases, net and compensated, as three readers from outside understand them.</summary>
public class OtherReadersTests
{
    /// <summary>One entity as read; lengths in the file's unit.</summary>
    private sealed record Shape(string Kind, string Layer, bool Closed, double Length, double Area)
    {
        public string? Text { get; init; }

        public double Height { get; init; }

        public double[]? Start { get; init; }
    }

    private sealed record ReadFile(string Version, string[] Layers, Shape[] Entities);

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    private static readonly Lazy<IReadOnlyDictionary<string, (DxfDrawing Drawing, DxfVersion Version)>> Files = new(() =>
        ExampleSolutions.All
            .Where(e => e.Solution.Bracket is not null)
            .SelectMany(e => Drawings(e.Solution).SelectMany((d, i) => Enum.GetValues<DxfVersion>().Select(v => (Name: $"{e.Name}-{i}-{v}", d, v))))
            .Concat(RandomSolutions.Samples.Take(40).SelectMany((s, n) =>
                Drawings(s).Select((d, i) => (Name: $"random-{n}-{i}", d, (DxfVersion)((n + i) % 2)))))
            .ToDictionary(f => f.Name, f => (f.d, f.Item3)));

    [SkippableFact]
    public void Ezdxf()
    {
        var read = ReadBack.Of(Files.Value.Select(f => (f.Key, new DxfWriter(f.Value.Version).Write(f.Value.Drawing))));
        Assert.All(read, r => Assert.True(r.Value.Problems.Length == 0, $"{r.Key}: {string.Join("; ", r.Value.Problems)}"));
        Agree(read.ToDictionary(
            r => r.Key,
            r => new ReadFile(
                r.Value.Version, [.. r.Value.Layers.Keys],
                [.. r.Value.Entities.Select(e => new Shape(e.Kind.Replace("LW", "", StringComparison.Ordinal), e.Layer, e.Closed, e.Length, e.Area) { Text = e.Text, Height = e.Height, Start = e.Start })])));
    }

    [SkippableFact]
    public void DxfParser()
    {
        var node = OutsideTool.RequireNode("dxf-parser");
        InFolder(folder => Agree(Parse(node.RunOrFail([RepositoryRoot.PathOf("tests", "readers", "dxf.mjs"), folder]))));
    }

    [SkippableFact]
    public void Dxflib()
    {
        var reader = CompiledTool.Require(RepositoryRoot.PathOf("tests", "readers", "dxf.cpp"), "dxflib", "dxflib/dl_dxf.h");
        InFolder(folder => Agree(Parse(reader.RunOrFail(Directory.GetFiles(folder, "*.dxf")))));
    }

    private static IEnumerable<DxfDrawing> Drawings(Solution solution)
    {
        var bracket = solution.Bracket!;
        yield return FlatPatternDxf.Compose(bracket, solution.Job, []);
        yield return FlatPatternDxf.ComposeCompensated(bracket, solution.Job, FlatPatternDxf.PathRound(bracket, solution.Job, 0.3), ["A warning"], 12);
        yield return FlatPatternDxf.Compose(bracket, solution.Job, [], 1);
    }

    private static Dictionary<string, ReadFile> Parse(string json) => JsonSerializer.Deserialize<Dictionary<string, ReadFile>>(json, Options)!;

    private static void InFolder(Action<string> check)
    {
        var folder = Directory.CreateTempSubdirectory("bracketgen-dxf-").FullName;
        try
        {
            foreach (var (name, (drawing, version)) in Files.Value)
            {
                File.WriteAllBytes(Path.Combine(folder, name + ".dxf"), new DxfWriter(version).Write(drawing));
            }

            check(folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Agree(Dictionary<string, ReadFile> read)
    {
        Assert.Equal(Files.Value.Keys.Order(), read.Keys.Order());
        foreach (var (name, (drawing, version)) in Files.Value)
        {
            var seen = read[name];
            Assert.Equal(version == DxfVersion.R12 ? "AC1009" : "AC1015", seen.Version);
            Assert.Superset(drawing.Layers.Select(l => l.Name).ToHashSet(), seen.Layers.ToHashSet());
            Assert.Equal(drawing.Entities.Length, seen.Entities.Length);
            var unit = drawing.Units == DxfUnits.Inches ? 25.4 : 1;
            foreach (var (expected, shape) in drawing.Entities.Zip(seen.Entities))
            {
                Assert.Equal(KindOf(expected), shape.Kind);
                Assert.Equal(expected.Layer.Name, shape.Layer);
                Assert.Equal(expected is DxfCircle or DxfPolyline { Closed: true }, shape.Closed);
                if (expected is DxfText text)
                {
                    Assert.Equal(text.Value, shape.Text);
                    Near(text.Height, shape.Height * unit, unit, name);
                    Near(text.At.X, shape.Start![0] * unit, unit, name);
                    Near(-text.At.Y, -shape.Start[1] * unit, unit, name);
                }

                var length = expected.Segments.Sum(s => s.Length);
                Near(length, shape.Length * unit, unit * (expected.Segments.Count() + 1), name);
                if (shape.Closed)
                {
                    var area = new Geometry.Contour(expected.Segments).SignedArea;
                    Near(Math.Abs(area), Math.Abs(shape.Area) * unit * unit, unit * length, name);
                }
            }
        }
    }

    private static string KindOf(DxfEntity entity) => entity switch
    {
        DxfCircle => "CIRCLE",
        DxfLine => "LINE",
        DxfArc => "ARC",
        DxfText => "TEXT",
        _ => "POLYLINE",
    };

    // Coordinates are rounded to 1e-9 of the file's unit: an area may be off by that along its outline, a length by that at every piece.
    private static void Near(double expected, double actual, double rounded, string where) =>
        Assert.True(Math.Abs(expected - actual) <= 1e-9 * (Math.Max(1, expected) + 2 * rounded), $"{where}: {actual:R} is not {expected:R}");
}
