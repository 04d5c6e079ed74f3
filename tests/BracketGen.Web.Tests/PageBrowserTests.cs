using System.Text;
using System.Text.Json;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Profiles;
using BracketGen.TestSupport;
using BracketGen.Words.Profiles;

namespace BracketGen.Web.Tests;

/// <summary>The page in a browser: the main job from an empty start to its files, edits that turn the verdict, and axe-core's eyes on all of it.</summary>
public class PageBrowserTests
{
    [SkippableTheory]
    [InlineData("main job")]
    [InlineData("edits")]
    [InlineData("looks")]
    public async Task A_browser_finds_nothing_amiss(string part)
    {
        var chromium = OutsideTool.Require("chromium", "chromium-browser");
        var node = OutsideTool.Require("node", "nodejs");
        var tests = RepositoryRoot.PathOf("tests", "browser");
        OutsideTool.Require(Path.Combine(tests, "node_modules", "playwright-core", "package.json"));
        await using var empty = await Served.Start(withExamples: false);
        await using var examples = await Served.Start();
        var folder = Directory.CreateTempSubdirectory("bracketgen-downloads-").FullName;
        try
        {
            var answers = Path.Combine(folder, "answers.json");
            File.WriteAllText(answers, JsonSerializer.Serialize(new { body = Body, vehicle = Vehicle }));
            var said = await Task.Run(() => node.RunOrFail(
                [Path.Combine(tests, "page.mjs"), chromium.FilePath, empty.Server.Address, examples.Server.Address, folder, answers, part]));
            Assert.True(said.Length == 0, said);
            if (part != "main job")
            {
                return;
            }

            string Text(string name) => Encoding.Latin1.GetString(File.ReadAllBytes(Path.Combine(folder, name)));
            Assert.Contains("SECTION", Text("flat-pattern.dxf")[..400], StringComparison.Ordinal);
            Assert.EndsWith("EOF", Text("flat-pattern.dxf").TrimEnd(), StringComparison.Ordinal);
            Assert.StartsWith("%PDF-", Text("drawing.pdf"), StringComparison.Ordinal);
            Assert.StartsWith("%PDF-", Text("setup-sheet.pdf"), StringComparison.Ordinal);
            Assert.StartsWith("ISO-10303-21;", Text("solid.step"), StringComparison.Ordinal);
            Assert.StartsWith("glTF", Text("solid.glb"), StringComparison.Ordinal);

            // What was saved in the folder, and what was shared, is read by the command line's own reader; both are the same job.
            const string job = "jobs/plover-alder-58.toml";
            var saved = ProfileReader.ReadJob(Path.Combine(empty.Folder, job), new DiskFileSource());
            Assert.Empty(saved.Errors.Select(ProfileErrorText.Format));
            var shared = ProfileReader.ReadJob(Path.Combine(folder, "plover-alder-58.packed.toml"), new DiskFileSource());
            Assert.Equal(31.5, saved.Value!.Body.Quadrant.Groove.Support(BracketGen.Geometry.Angle.Zero), 9);
            Assert.Equal(saved.Value.Vehicle.Cable, shared.Value!.Vehicle.Cable);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // Answers by question, the numbers of the shipped example; several for several fields, null for the empty answer.
    private static readonly Dictionary<string, object?> Body = new()
    {
        ["What is the throttle body called?"] = "Alder 58",
        ["Which way does the valve open?"] = "counter-clockwise",
        ["Bore?"] = 58,
        ["Throttle shaft's diameter?"] = 8,
        ["Shape of the groove?"] = "round",
        ["Pitch radius?"] = new[] { "31.5", "0.2" },
        ["Rotation?"] = new[] { "84", "1" },
        ["Pocket angle?"] = new[] { "-20", "1" },
        ["Groove extent?"] = 150,
        ["Groove width?"] = 3,
        ["Width of the slot into the pocket?"] = 2.2,
        ["Outer radius?"] = 34.5,
        ["Thickness over the flanges?"] = 9,
        ["Hub radius?"] = 14,
        ["Closing torque on the closed stop?"] = new[] { "0.55", "0.05" },
        ["Closing torque on the wide-open stop?"] = new[] { "1.05", "0.1" },
        ["How many springs close the valve alone?"] = 2,
        ["Closed angle of the plate?"] = 7,
        ["Sensor's reading on the closed stop?"] = 0.52,
        ["Sensor's reading on the wide-open stop?"] = 4.46,
        ["Normal of the mount face?"] = new[] { 0, 0, 1 },
        ["How many threaded holes has it?"] = 2,
        ["Centre of hole 1?"] = new[] { -50, -22, -24 },
        ["Thread of hole 1?"] = "M6",
        ["Boss diameter of hole 1?"] = 15,
        ["Centre of hole 2?"] = new[] { -50, 12, -24 },
        ["Thread of hole 2?"] = "M6",
        ["Boss diameter of hole 2?"] = 15,
        ["How many things must the bracket stay clear of?"] = 1,
        ["What is thing 1?"] = "idle valve",
        ["Its shape?"] = "box",
        ["Its corner of least x, y and z?"] = new[] { 42, -60, -45 },
        ["Its corner of most x, y and z?"] = new[] { 85, -20, 15 },
    };

    private static readonly Dictionary<string, object?> Vehicle = new()
    {
        ["What is the vehicle called?"] = "Plover",
        ["Wire diameter?"] = 1.5,
        ["Outer diameter?"] = 5,
        ["Free inner length?"] = new[] { "138", "1" },
        ["Largest fleet angle?"] = 3,
        ["Tightest bend radius of the outer?"] = 60,
        ["Length of the outer, seat to bulkhead?"] = null,
        ["What is on the wire's end?"] = "barrel",
        ["Its diameter?"] = 6,
        ["Its length?"] = 8,
        ["How does the outer end at the bracket?"] = "threaded adjuster",
        ["Its thread?"] = "M8x1",
        ["Nuts across flats?"] = 13,
        ["Height of one nut?"] = 5,
        ["Whole range of the adjuster?"] = 14,
        ["Pull of the whole pedal stroke?"] = new[] { "51", "0.5" },
        ["Pad travel over pull?"] = 3.4,
        ["The pedal's own force at the pad, cable off?"] = new[] { "0.5", "0.2" },
        ["Sensor reading the controller takes for closed?"] = null,
    };
}
