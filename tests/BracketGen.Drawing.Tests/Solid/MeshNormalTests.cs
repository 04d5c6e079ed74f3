using BracketGen.Design.Part;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Solid;

public class MeshNormalTests
{
    [Fact]
    public void NormalsAreThoseOfTheExactSolid() => RandomSolutions.Each(60, solution =>
    {
        var mesh = FoldedMesh.Of(solution.Bracket!.Folded);
        var faces = FoldedBrep.Of(solution.Bracket.Folded).Faces;
        Assert.Equal(mesh.Triangles.Length, mesh.Normals.Length);
        foreach (var (triangle, normals) in mesh.Triangles.Zip(mesh.Normals))
        {
            var corners = new[] { (triangle.A, normals.A), (triangle.B, normals.B), (triangle.C, normals.C) };
            Assert.Contains(faces, face => corners.All(c =>
                face.Surface.DistanceTo(mesh.Vertices[c.Item1]) < 1e-6
                && (face.FacesOut ? 1 : -1) * face.Surface.NormalAt(mesh.Vertices[c.Item1]).Dot(c.Item2) > 1 - 1e-9));
        }
    });
}
