using System.Text;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Drawing.Solid.Step;
using BracketGen.Drawing.Tests.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Patterns;
using BracketGen.TestSupport;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.Tests.Solid;

/// <summary>Open CASCADE reads our STEP files. It does not correct what is the wrong way round (tests/readers/step.mjs), so it is seen.</summary>
public class StepReaderTests
{
    private static readonly IReadOnlyDictionary<string, Solution> Solutions = ExampleSolutions.All.Where(e => e.Solution.Bracket is not null)
        .Concat(RandomSolutions.Samples.Where((s, i) => i % 4 == 0 && !FlangesMeet(s.Bracket!.Folded)).Select((s, i) => ($"random-{i}", s)))
        .ToDictionary(e => e.Item1, e => e.Item2);

    private static readonly IReadOnlyDictionary<string, (Solution Solution, StepSchema Schema)> Files = Solutions
        .SelectMany(s => Enum.GetValues<StepSchema>().Select(schema => (Name: $"{s.Key}-{schema}", s.Value, schema)))
        .ToDictionary(f => f.Name, f => (f.Value, f.schema));

    // A random bracket may close on itself (the checks turn it down): its faces cross, and no kernel takes it for a solid. Points 1 mm apart of one flange in another one.
    private static bool FlangesMeet(FoldedSheet folded)
    {
        const double step = 1;
        var flat = folded.Flat;
        Region[] regions = [.. Enumerable.Range(0, flat.FlangeCount).Select(flat.FlangeRegion)];
        bool Meets(int one, int other)
        {
            var bounds = regions[one].Outline.Bounds;
            for (var x = bounds.Min.X; x <= bounds.Max.X; x += step)
            {
                for (var y = bounds.Min.Y; y <= bounds.Max.Y; y += step)
                {
                    foreach (var height in new[] { 0, flat.Thickness })
                    {
                        var local = folded.Flanges[other].ToLocal(folded.Flanges[one].ToWorld(new Vector2(x, y), height));
                        if (local.Z >= 0 && local.Z <= flat.Thickness && regions[other].Outline.Contains(local.XY) && regions[one].Outline.Contains(new(x, y)))
                        {
                            return true;
                        }
                    }
                }
            }

            return false;
        }

        return flat.Bends.Any(b => flat.Bends.Any(c => b.To == c.From && Meets(c.To, b.From)));
    }

    private static readonly IReadOnlyDictionary<string, string> Broken = BrokenFiles(Encoding.ASCII.GetString(FileOf(ExampleSolutions.First, StepSchema.Ap214)));

    // Once for all tests: the reader takes its time to start.
    private static readonly Lazy<IReadOnlyDictionary<string, StepReading>> Read = new(() => StepReading.Of(
        [.. Files.Select(f => (f.Key, FileOf(f.Value.Solution, f.Value.Schema))), .. Broken.Select(b => (b.Key, Encoding.ASCII.GetBytes(b.Value)))]));

    [SkippableFact]
    public void AnIndependentKernelFindsOneValidSolidOfTheRightSize()
    {
        foreach (var (name, (solution, _)) in Files)
        {
            var (found, folded) = (Read.Value[name], solution.Bracket!.Folded);
            var (solid, expected) = (FoldedBrep.Of(folded), PlatesAndRings.Of(folded.Flat));
            Assert.True(found.IsSound, $"{name}: {found}");
            Assert.Equal((solid.Corners.Length, solid.Edges.Length, solid.Faces.Length), (found.Corners, found.Edges, found.Faces));
            Assert.InRange(found.Volume / expected.Volume, 1 - 1e-6, 1 + 1e-6);
            Assert.InRange(found.Area / expected.Area, 1 - 1e-6, 1 + 1e-6);

            // Where it lies: the centre of mass of the folded mesh, whose facets are within 0.02 mm of the surfaces.
            var centre = TriangleSoup.Of(FoldedMesh.Of(folded)).Centre;
            Assert.InRange(centre.DistanceTo(new(found.Centre[0], found.Centre[1], found.Centre[2])), 0, 0.02);
        }
    }

    [SkippableFact]
    public void TheReaderFindsTitleAndColour()
    {
        foreach (var (name, (solution, _)) in Files)
        {
            var found = Read.Value[name];
            Assert.Equal(solution.Job.Document.Title, found.Name);
            var (red, green, blue) = SolidInfo.Of(solution).Colour.Linear;
            Assert.Equal([red, green, blue], found.Colour, (a, b) => Math.Abs(a - b) < 2e-3);
        }
    }

    [SkippableFact]
    public void TheReaderFindsMaterialAndDensityAndTheVolumeThatItMeasures()
    {
        foreach (var (name, (solution, _)) in Files)
        {
            var (found, material) = (Read.Value[name], solution.Bracket!.Stock.Material);
            Assert.Equal(material.Designation, found.Material);
            Assert.InRange(found.Density / (1e9 * material.Density), 1 - 1e-9, 1 + 1e-9);
            Assert.InRange(found.StatedVolume / found.Volume, 1 - 1e-6, 1 + 1e-6);
        }
    }

    [SkippableFact]
    public void WhatIsWrongInAFileIsFound() => Assert.All(Broken.Keys, name => Assert.False(Read.Value[name].IsSound, name));

    private static byte[] FileOf(Solution solution, StepSchema schema) => StepWriter.Write(FoldedBrep.Of(solution.Bracket!.Folded), SolidInfo.Of(solution), schema);

    private static Dictionary<string, string> BrokenFiles(string text)
    {
        // The first place after a mark where a text stands, with another one in its place.
        string Replace(string mark, string old, string replacement)
        {
            var at = text.IndexOf(old, text.IndexOf(mark, StringComparison.Ordinal) + mark.Length, StringComparison.Ordinal);
            return text[..at] + replacement + text[(at + old.Length)..];
        }

        var shell = text.IndexOf("=CLOSED_SHELL('',(", StringComparison.Ordinal) + "=CLOSED_SHELL('',(".Length;
        return new()
        {
            ["face-turned-over"] = Replace("=ADVANCED_FACE(", ".T.", ".F."),
            ["all-faces-turned-over"] = string.Join('\n', text.Split('\n').Select(l => l.Contains("ADVANCED_FACE", StringComparison.Ordinal) ? Turn(l) : l)),
            ["face-missing"] = text[..shell] + text[(text.IndexOf(',', shell) + 1)..],
            ["edge-turned-round"] = Replace("=ORIENTED_EDGE(", ".T.", ".F."),
            ["circle-too-large"] = Replace("=CIRCLE(", ");", "1);"),
            ["value-missing"] = Replace("=PRODUCT_DEFINITION_SHAPE(", "'','',", "'',"),
            ["unknown-word"] = Replace("SI_UNIT(", "MILLI", "MILLY"),
        };
    }

    private static string Turn(string line) => line.Contains(".T.", StringComparison.Ordinal)
        ? line.Replace(".T.", ".F.", StringComparison.Ordinal)
        : line.Replace(".F.", ".T.", StringComparison.Ordinal);
}
