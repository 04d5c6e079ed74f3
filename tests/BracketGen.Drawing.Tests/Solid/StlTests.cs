using System.Buffers.Binary;
using System.Text;
using BracketGen.Design.Part;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Solid;

/// <summary>The STL file, read back: 80 bytes of words, the number of triangles, 50 bytes a triangle.</summary>
public class StlTests
{
    [Fact]
    public void TheSolidReadsBack() => RandomSolutions.Each(int.MaxValue, solution =>
    {
        var folded = solution.Bracket!.Folded;
        var (soup, normals) = Read(StlWriter.Write(FoldedMesh.Of(folded), SolidInfo.Of(solution)));
        Assert.True(soup.IsClosed);

        // The facets cut corners of at most 0.02 mm off the round surfaces.
        Assert.InRange(soup.Volume / PlatesAndRings.Of(folded.Flat).Volume, 1 - 5e-3, 1 + 5e-3);
        Assert.InRange(soup.Area / PlatesAndRings.Of(folded.Flat).Area, 1 - 5e-3, 1 + 5e-3);
        for (var i = 0; i < normals.Count; i++)
        {
            var (a, b, c) = soup.Triangles[i];
            var cross = (b - a).Cross(c - a);

            // Single precision moves a corner by some 1e-5 mm: what is not much higher than that has no direction left.
            var height = cross.Length / Math.Max((b - a).Length, Math.Max((c - b).Length, (a - c).Length));
            Assert.True(height < 2e-3 || cross.Unit.Dot(normals[i]) > 0.999);
        }
    });

    [Fact]
    public void ItsHeadSaysThatItIsNoBracket()
    {
        var solution = RandomSolutions.Samples[0];
        var mesh = FoldedMesh.Of(solution.Bracket!.Folded);
        var info = SolidInfo.Of(solution) with { Warnings = [] };
        string Head(SolidInfo i) => Encoding.ASCII.GetString(StlWriter.Write(mesh, i), 0, 80);
        Assert.Equal("mm; model to check the fit, NOT A THROTTLE BRACKET", Head(info).TrimEnd());
        Assert.EndsWith("; SAFETY CHECK FAILED", Head(info with { Warnings = ["SAFETY CHECK FAILED: Return springs"] }).TrimEnd());
    }

    private static (TriangleSoup Soup, List<Vector3> Normals) Read(byte[] file)
    {
        Assert.NotEqual("solid", Encoding.ASCII.GetString(file, 0, 5));
        var count = (int)BinaryPrimitives.ReadUInt32LittleEndian(file.AsSpan(80));
        Assert.Equal(84 + 50 * count, file.Length);
        Vector3 At(int at)
        {
            float Number(int i) => BinaryPrimitives.ReadSingleLittleEndian(file.AsSpan(at + 4 * i));
            return new(Number(0), Number(1), Number(2));
        }

        var starts = Enumerable.Range(0, count).Select(i => 84 + 50 * i).ToList();
        Assert.All(starts, s => Assert.Equal(0, BinaryPrimitives.ReadUInt16LittleEndian(file.AsSpan(s + 48))));
        return (new([.. starts.Select(s => (At(s + 12), At(s + 24), At(s + 36)))]), [.. starts.Select(At)]);
    }
}
