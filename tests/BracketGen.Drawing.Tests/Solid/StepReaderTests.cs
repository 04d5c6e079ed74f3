using System.Text;
using BracketGen.Design;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Drawing.Tests.Bracket;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.Solid;

/// <summary>Open CASCADE reads our STEP files. What is the wrong way round it does not mend (tests/readers/step.mjs), so it is seen.</summary>
public class StepReaderTests
{
    private static byte[] FileOf(Solution solution) => StepWriter.Write(FoldedBrep.Of(solution.Bracket!.Folded), SolidInfo.Of(solution));

    [SkippableFact]
    public void AnIndependentKernelFindsOneValidSolidOfTheRightSize()
    {
        var solutions = ExampleSolutions.All.Where(e => e.Solution.Bracket is not null)
            .Concat(RandomSolutions.Samples.Where((_, i) => i % 4 == 0).Select((s, i) => ($"random-{i}", s)))
            .ToDictionary(e => e.Item1, e => e.Item2);
        var read = StepReading.Of(solutions.Select(s => (s.Key, FileOf(s.Value))));
        foreach (var (name, solution) in solutions)
        {
            var (found, flat) = (read[name], solution.Bracket!.Flat);
            var (solid, expected) = (FoldedBrep.Of(solution.Bracket.Folded), PlatesAndRings.Of(flat));
            Assert.True(found.IsSound, $"{name}: {found}");
            Assert.Equal((solid.Corners.Length, solid.Edges.Length, solid.Faces.Length), (found.Corners, found.Edges, found.Faces));
            Assert.InRange(found.Volume / expected.Volume, 1 - 1e-6, 1 + 1e-6);
            Assert.InRange(found.Area / expected.Area, 1 - 1e-6, 1 + 1e-6);

            // Where it lies: the centre of mass of the folded mesh, whose facets are within 0.02 mm of the surfaces.
            var mesh = FoldedMesh.Of(solution.Bracket.Folded);
            var centre = new TriangleSoup([.. mesh.Triangles.Select(t => (mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C]))]).Centre;
            Assert.InRange(centre.DistanceTo(new(found.Centre[0], found.Centre[1], found.Centre[2])), 0, 0.02);
            Assert.Equal(solution.Job.Document.Title, found.Name);
            var (red, green, blue) = SolidInfo.Of(solution).Colour.Linear;
            Assert.Equal([red, green, blue], found.Colour.Select(c => Math.Round(c, 4)), (a, b) => Math.Abs(a - b) < 2e-3);
        }
    }

    [SkippableFact]
    public void WhatIsWrongInAFileIsFound()
    {
        var text = Encoding.ASCII.GetString(FileOf(ExampleSolutions.First));
        string After(string mark, string old, string replacement)
        {
            var at = text.IndexOf(old, text.IndexOf(mark, StringComparison.Ordinal), StringComparison.Ordinal);
            return text[..at] + replacement + text[(at + old.Length)..];
        }

        var broken = new Dictionary<string, string>
        {
            ["face-turned-over"] = After("=ADVANCED_FACE(", ".T.", ".F."),
            ["all-faces-turned-over"] = string.Join('\n', text.Split('\n').Select(l => !l.Contains("ADVANCED_FACE", StringComparison.Ordinal)
                ? l
                : l.Contains(".T.", StringComparison.Ordinal) ? l.Replace(".T.", ".F.", StringComparison.Ordinal) : l.Replace(".F.", ".T.", StringComparison.Ordinal))),
            ["edge-turned-round"] = After("=ORIENTED_EDGE(", ".T.", ".F."),
            ["face-missing"] = RemoveFirstFace(text),
            ["value-missing"] = After("=PRODUCT_DEFINITION_SHAPE(", "('','',", "('',"),
            ["unknown-word"] = After("SI_UNIT(", ".MILLI.", ".MILLY."),
        };
        var read = StepReading.Of(broken.Select(b => (b.Key, Encoding.ASCII.GetBytes(b.Value))).Prepend(("whole", Encoding.ASCII.GetBytes(text))));
        Assert.True(read["whole"].IsSound);
        Assert.All(broken.Keys, name => Assert.False(read[name].IsSound, name));
    }

    private static string RemoveFirstFace(string text)
    {
        var at = text.IndexOf("=CLOSED_SHELL('',(", StringComparison.Ordinal) + "=CLOSED_SHELL('',(".Length;
        return text[..at] + text[(text.IndexOf(',', at) + 1)..];
    }
}
