using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Text.Json;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Glb;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Drawing.Tests.Sheet;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Solid;

/// <summary>The GLB file, read back by what ISO/IEC 12113 (glTF 2.0) says of it, and by the Khronos validator.</summary>
public class GlbTests
{
    private static byte[] FileOf(Solution solution) => GlbWriter.Write(FoldedMesh.Of(solution.Bracket!.Folded), SolidInfo.Of(solution));

    [Fact]
    public void TheSolidReadsBack() => RandomSolutions.Each(120, solution =>
    {
        var read = Read(FileOf(solution));
        var mesh = FoldedMesh.Of(solution.Bracket!.Folded);
        Assert.True(read.Soup.IsClosed);
        Assert.Equal(1, read.Soup.Volume * 1e9 / mesh.Volume, 4); // m³ to mm³, single precision

        // Metres; the axes are the throttle frame's.
        Assert.InRange((1000 * read.Soup.Centre).DistanceTo(TriangleSoup.Of(mesh).Centre), 0, 1e-2);
        var (min, max) = (mesh.Vertices.Min(v => v.Y), mesh.Vertices.Max(v => v.Y));
        Assert.Equal(min / 1000, read.Min[1], 1e-7);
        Assert.Equal(max / 1000, read.Max[1], 1e-7);
    });

    [Fact]
    public void NormalsAreUnitsAndPointOut() => RandomSolutions.Each(60, solution =>
    {
        var read = Read(FileOf(solution));
        Assert.All(read.Normals, n => Assert.Equal(1, n.Length, 1e-6));
        for (var i = 0; i < read.Soup.Triangles.Count; i++)
        {
            var (a, b, c) = read.Soup.Triangles[i];
            var cross = (b - a).Cross(c - a);
            if (cross.Length < 1e-9)
            {
                continue; // A sliver: single precision leaves it no direction.
            }

            // A facet of a round surface leans by at most half a step from the exact surface.
            Assert.All(read.Indices.Skip(3 * i).Take(3), k => Assert.True(cross.Unit.Dot(read.Normals[k]) > Math.Cos(0.8)));
        }
    });

    [Fact]
    public void ItSaysWhichPartItIs()
    {
        using var json = JsonDocument.Parse(Chunks(FileOf(ExampleSolutions.First)).Json);
        var extras = json.RootElement.GetProperty("asset").GetProperty("extras");
        Assert.Equal(ExampleSolutions.First.Job.Document.PartNumber, extras.GetProperty("partNumber").GetString());
        Assert.Equal(ExampleSolutions.First.Job.Document.Title, extras.GetProperty("title").GetString());
        Assert.Equal(0, extras.GetProperty("warnings").GetArrayLength());
    }

    [SkippableFact]
    public void TheKhronosValidatorHasNothingToSay()
    {
        var node = OutsideTool.RequireNode("gltf-validator");
        using var folder = new TemporaryFolder();
        var solutions = ExampleSolutions.All.Select(e => e.Solution).Where(s => s.Bracket is not null).Concat(RandomSolutions.Samples).ToList();
        for (var i = 0; i < solutions.Count; i++)
        {
            File.WriteAllBytes(folder[$"{i}.glb"], FileOf(solutions[i]));
        }

        // The validator must find what is wrong: the last byte of a normal's first number turned from 3F (about 1) to 7F (not a number).
        var broken = FileOf(solutions[0]);
        broken[^1] = 0x7F;
        File.WriteAllBytes(folder["broken.glb"], broken);
        var script = RepositoryRoot.PathOf("tests", "readers", "glb.mjs");
        var found = JsonSerializer.Deserialize<Dictionary<string, Report>>(node.RunOrFail([script, folder[""]]), new JsonSerializerOptions(JsonSerializerDefaults.Web))!;
        Assert.NotEmpty(found["broken"].Messages);
        Assert.True(found.Remove("broken"));
        Assert.Equal(solutions.Count, found.Count);
        for (var i = 0; i < solutions.Count; i++)
        {
            var report = found[$"{i}"];
            Assert.Empty(report.Messages);
            Assert.True(report.IsBinary);
            Assert.Equal(FoldedMesh.Of(solutions[i].Bracket!.Folded).Triangles.Length, report.Triangles);
        }
    }

    private sealed record Report(string[] Messages, bool IsBinary, int Triangles, int Points);

    private sealed record Reading(TriangleSoup Soup, Vector3[] Normals, uint[] Indices, double[] Min, double[] Max);

    private static (byte[] Json, byte[] Data) Chunks(byte[] file)
    {
        uint Word(int at) => BinaryPrimitives.ReadUInt32LittleEndian(file.AsSpan(at));
        Assert.Equal("glTF"u8.ToArray(), file[..4]);
        Assert.Equal((2u, (uint)file.Length), (Word(4), Word(8)));
        var jsonLength = (int)Word(12);
        Assert.Equal("JSON"u8.ToArray(), file[16..20]);
        Assert.Equal(0, jsonLength % 4);
        var dataLength = (int)Word(20 + jsonLength);
        Assert.Equal("BIN\0"u8.ToArray(), file[(24 + jsonLength)..(28 + jsonLength)]);
        Assert.Equal(file.Length, 28 + jsonLength + dataLength);
        return (file[20..(20 + jsonLength)], file[(28 + jsonLength)..]);
    }

    private static Reading Read(byte[] file)
    {
        var (text, data) = Chunks(file);
        using var json = JsonDocument.Parse(text);
        var root = json.RootElement;
        Assert.Equal(data.Length, root.GetProperty("buffers")[0].GetProperty("byteLength").GetInt32());
        ReadOnlySpan<byte> Bytes(JsonElement accessor)
        {
            var view = root.GetProperty("bufferViews")[accessor.GetProperty("bufferView").GetInt32()];
            return data.AsSpan(view.GetProperty("byteOffset").GetInt32(), view.GetProperty("byteLength").GetInt32());
        }

        Vector3[] Vectors(JsonElement accessor)
        {
            Assert.Equal((5126, "VEC3"), (accessor.GetProperty("componentType").GetInt32(), accessor.GetProperty("type").GetString()));
            var vectors = MemoryMarshal.Cast<byte, float>(Bytes(accessor)).ToArray().Chunk(3).Select(v => new Vector3(v[0], v[1], v[2])).ToArray();
            Assert.Equal(accessor.GetProperty("count").GetInt32(), vectors.Length);
            return vectors;
        }

        var primitive = root.GetProperty("meshes")[0].GetProperty("primitives")[0];
        JsonElement Accessor(JsonElement number) => root.GetProperty("accessors")[number.GetInt32()];
        var position = Accessor(primitive.GetProperty("attributes").GetProperty("POSITION"));
        var positions = Vectors(position);
        var indices = MemoryMarshal.Cast<byte, uint>(Bytes(Accessor(primitive.GetProperty("indices")))).ToArray();
        double[] Limits(string name) => [.. position.GetProperty(name).EnumerateArray().Select(e => e.GetDouble())];
        return new(
            new([.. indices.Chunk(3).Select(t => (positions[t[0]], positions[t[1]], positions[t[2]]))]),
            Vectors(Accessor(primitive.GetProperty("attributes").GetProperty("NORMAL"))), indices, Limits("min"), Limits("max"));
    }
}
