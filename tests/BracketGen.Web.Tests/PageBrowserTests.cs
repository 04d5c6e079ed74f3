using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Interview;
using BracketGen.TestSupport;
using BracketGen.Web.Phone;
using BracketGen.Words.Interview;
using BracketGen.Words.Profiles;

namespace BracketGen.Web.Tests;

/// <summary>The page in a browser: the main job from an empty start to its files, edits that turn the verdict, and axe-core's eyes on all of it.</summary>
public class PageBrowserTests
{
    [SkippableTheory]
    [InlineData("main job")]
    [InlineData("edits")]
    [InlineData("errors")]
    [InlineData("bracket")]
    [InlineData("looks")]
    [InlineData("drafts")]
    [InlineData("layout")]
    [InlineData("picture")]
    [InlineData("photo")]
    [InlineData("more")]
    [InlineData("line")]
    [InlineData("paper")]
    public async Task A_browser_finds_nothing_amiss(string part)
    {
        var (node, tests, chromium) = Browser();
        await using var empty = await Served.Start(withExamples: false);
        await using var examples = await Served.Start();
        if (part == "line")
        {
            Directory.CreateDirectory(Path.Combine(examples.Folder, "families"));
            File.WriteAllText(Path.Combine(examples.Folder, "families", "slough.toml"), Family);
        }

        if (part == "errors")
        {
            var job = File.ReadAllText(Path.Combine(examples.Folder, "jobs", "plover-alder-58.toml"));
            File.WriteAllText(Path.Combine(examples.Folder, "jobs", "broken.toml"), "profile = \"job\"\nthrottle_body = \n");
            File.WriteAllText(
                Path.Combine(examples.Folder, "jobs", "lost.toml"),
                job.Replace("vehicles/plover.toml", "vehicles/lost.toml", StringComparison.Ordinal).Replace("Throttle cable bracket, Plover, Alder 58", "The lost job", StringComparison.Ordinal));
        }

        var folder = Directory.CreateTempSubdirectory("bracketgen-downloads-").FullName;
        try
        {
            var answers = Path.Combine(folder, "answers.json");
            File.WriteAllText(answers, JsonSerializer.Serialize(new { body = Body, vehicle = Vehicle }));
            var said = await Task.Run(() => node.RunOrFail(
                [Path.Combine(tests, "page.mjs"), chromium.FilePath, empty.Server.Address, examples.Server.Address, folder, answers, part]));
            Assert.True(said.Length == 0, said);
            if (part == "photo")
            {
                AssertMeasuredInThePhotograph(Path.Combine(examples.Folder, "throttle-bodies", "alder-58.toml"));
            }

            if (part == "line")
            {
                Assert.True(File.Exists(Path.Combine(examples.Folder, "output", "slough", "catalogue.html")));
            }

            if (part == "more")
            {
                var shop = File.ReadAllText(Path.Combine(examples.Folder, "shops", "saltmarsh-fabrication.toml"));
                Assert.Contains("k = 0.411", shop, StringComparison.Ordinal);
                Assert.True(File.Exists(Path.Combine(empty.Folder, "parts", "saltmarsh.toml")));
            }

            if (part == "bracket")
            {
                // What was entered and saved is read by the command line's own reader, its drawing to the letter.
                var read = ProfileReader.ReadBracket(Path.Combine(examples.Folder, "brackets", "found-in-a-drawer.toml"), new DiskFileSource());
                Assert.Empty(read.Errors.Select(ProfileErrorText.Format));
                Assert.Equal("Found in a drawer", read.Value!.Name);
                Assert.Equal(
                    File.ReadAllBytes(Path.Combine(examples.Folder, "brackets", "catalogue-upright-34.dxf")), File.ReadAllBytes(Path.Combine(examples.Folder, "brackets", "From-a-drawer.dxf")));
                Assert.Contains("What corrects it", File.ReadAllText(Path.Combine(folder, "shelf-upright-34-report.html")), StringComparison.Ordinal);
            }

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

    // The truth of tests/browser/photograph.mjs: every ± that was written holds it, and says no more than it must.
    private static void AssertMeasuredInThePhotograph(string profile)
    {
        var values = ProfileValues.Of(File.ReadAllText(profile));
        void Holds(JsonNode value, JsonNode plusMinus, double truth, double most)
        {
            var (read, off) = (value.GetValue<double>(), plusMinus.GetValue<double>());
            Assert.InRange(truth, read - off, read + off);
            Assert.InRange(off, 0.01, most);
        }

        var quadrant = values["quadrant"]!;
        Holds(quadrant["pitch_radius"]!["value"]!, quadrant["pitch_radius"]!["plus_minus"]!, 31.5, 2);
        Holds(quadrant["pocket_angle"]!["value"]!, quadrant["pocket_angle"]!["plus_minus"]!, -20, 3);
        double[][] holes = [[-50, -22, -24], [-50, 12, -24]];
        for (var i = 0; i < holes.Length; i++)
        {
            var hole = values["mount"]!["holes"]![i]!;
            for (var axis = 0; axis < 3; axis++)
            {
                Holds(hole["at"]![axis]!, hole["plus_minus"]![axis]!, holes[i][axis], 2);
            }
        }
    }

    // A phone's browser, over TLS: the one that pairs, one that guesses, one that comes too late.
    [SkippableFact]
    public async Task A_phone_pairs_measures_and_saves()
    {
        var (node, tests, chromium) = Browser();
        await using var phone = await ServedPhone.Start();
        var said = await Task.Run(() => node.RunOrFail(
            [Path.Combine(tests, "phone.mjs"), chromium.FilePath, phone.Server.PairingAddress("jobs/plover-alder-58.toml")]));
        Assert.True(said.Trim().Length == 0, said);
        Assert.Equal([PairingState.Paired], phone.Told);
        var saved = ProfileValues.Of(File.ReadAllText(Path.Combine(phone.Page.Folder, "throttle-bodies", "rowan-64-measured.toml")));
        Assert.Equal("Rowan 64 measured", saved["name"]!.GetValue<string>());
        Assert.Contains("63.5", saved.ToJsonString(), StringComparison.Ordinal);
    }

    // 10,000 were run once by hand (docs/page.md).
    [SkippableFact]
    public async Task Fields_show_what_the_files_hold_whatever_is_typed()
    {
        var (node, tests, chromium) = Browser();
        await using var examples = await Served.Start();
        var said = await Task.Run(() => node.RunOrFail(
            [Path.Combine(tests, "sequences.mjs"), chromium.FilePath, examples.Server.Address, LongRun.Of(300).ToString(System.Globalization.CultureInfo.InvariantCulture), "1"]));
        Assert.True(said.Length == 0, said);
    }

    private static (OutsideTool Node, string Tests, OutsideTool Chromium) Browser()
    {
        var tests = RepositoryRoot.PathOf("tests", "browser");
        var (chromium, node) = (OutsideTool.Require("chromium", "chromium-browser"), OutsideTool.Require("node", "nodejs"));
        OutsideTool.Require(Path.Combine(tests, "node_modules", "playwright-core", "package.json"));
        return (node, tests, chromium);
    }

    private const string Family = """
        profile = "family"
        name = "Slough line"
        shop = "../shops/saltmarsh-fabrication.toml"
        vehicles = [{ code = "PLV", file = "../vehicles/plover.toml" }, { code = "PLE", file = "../vehicles/plover-estate.toml" }]
        throttle_bodies = [{ code = "A58", file = "../throttle-bodies/alder-58.toml" }, { code = "H70", file = "../throttle-bodies/hornbeam-70.toml" }]
        materials = [{ code = "S", name = "steel", designations = ["S235JR", "DC01"] }, { code = "L", name = "aluminium", designations = ["EN AW-5754 H22"] }]
        exclusions = [{ vehicle = "PLE", throttle_body = "H70", reason = "nobody asked for it" }]

        [numbers]
        rule = "SF-{vehicle}{throttle_body}{material}"

        """;

    // Answers by question, the numbers of the shipped example; several for several fields, null for the empty answer.
    private static readonly Dictionary<string, object?> Body = new()
    {
        [Asked(QuestionId.ThrottleBodyName)] = "Alder 58",
        [Asked(QuestionId.Opens)] = "counter-clockwise",
        [Asked(QuestionId.Bore)] = 58,
        [Asked(QuestionId.ShaftDiameter)] = 8,
        [Asked(QuestionId.GrooveKind)] = "round",
        [Asked(QuestionId.PitchRadius)] = new[] { "31.5", "0.2" },
        [Asked(QuestionId.Rotation)] = new[] { "84", "1" },
        [Asked(QuestionId.PocketAngle)] = new[] { "-20", "1" },
        [Asked(QuestionId.GrooveExtent)] = 150,
        [Asked(QuestionId.GrooveWidth)] = 3,
        [Asked(QuestionId.SlotWidth)] = 2.2,
        [Asked(QuestionId.OuterRadius)] = 34.5,
        [Asked(QuestionId.Thickness)] = 9,
        [Asked(QuestionId.HubRadius)] = 14,
        [Asked(QuestionId.PocketKind)] = "barrel",
        [Asked(QuestionId.PocketDiameter)] = 7.2,
        [Asked(QuestionId.PocketDepth)] = 8.2,
        [Asked(QuestionId.PocketAxis)] = "along the shaft",
        [Asked(QuestionId.TorqueClosed)] = new[] { "0.55", "0.05" },
        [Asked(QuestionId.TorqueOpen)] = new[] { "1.05", "0.1" },
        [Asked(QuestionId.SpringCount)] = 2,
        [Asked(QuestionId.SpringAloneClosed, 1)] = new[] { "0.27", "0.03" },
        [Asked(QuestionId.SpringAloneOpen, 1)] = new[] { "0.52", "0.05" },
        [Asked(QuestionId.SpringAloneClosed, 2)] = new[] { "0.28", "0.03" },
        [Asked(QuestionId.SpringAloneOpen, 2)] = new[] { "0.53", "0.05" },
        [Asked(QuestionId.ShaftDrag)] = new[] { "0.01", "0.005" },
        [Asked(QuestionId.ClosedAngle)] = 7,
        [Asked(QuestionId.ClosedVolts)] = 0.52,
        [Asked(QuestionId.OpenVolts)] = 4.46,
        [Asked(QuestionId.SensorSlot)] = 10,
        [Asked(QuestionId.BoreZ)] = -63,
        [Asked(QuestionId.BoreDirection)] = 0,
        [Asked(QuestionId.CastingDiameter)] = 72,
        [Asked(QuestionId.CastingAhead)] = 60,
        [Asked(QuestionId.CastingBehind)] = 60,
        [Asked(QuestionId.MountNormal)] = new[] { 0, 0, 1 },
        [Asked(QuestionId.HoleCount)] = 2,
        [Asked(QuestionId.HoleCentre, 1)] = new[] { -50, -22, -24 },
        [Asked(QuestionId.HoleKind, 1)] = "tapped",
        [Asked(QuestionId.HoleThread, 1)] = "M6",
        [Asked(QuestionId.BossDiameter, 1)] = 15,
        [Asked(QuestionId.ThreadDepth, 1)] = 16,
        [Asked(QuestionId.SpacerLength, 2)] = null,
        [Asked(QuestionId.HoleKind, 2)] = "tapped",
        [Asked(QuestionId.HoleCentre, 2)] = new[] { -50, 12, -24 },
        [Asked(QuestionId.HoleThread, 2)] = "M6",
        [Asked(QuestionId.BossDiameter, 2)] = 15,
        [Asked(QuestionId.ThreadDepth, 2)] = 16,
        [Asked(QuestionId.Flatness)] = 0.02,
        [Asked(QuestionId.BossMaterial)] = "cast aluminium",
        [Asked(QuestionId.Cylinders)] = 4,
        [Asked(QuestionId.MaxSpeed)] = 6500,
        [Asked(QuestionId.IdleSpeed)] = null,
        [Asked(QuestionId.KeepOutCount)] = 1,
        [Asked(QuestionId.KeepOutName, 1)] = "idle valve",
        [Asked(QuestionId.KeepOutShape)] = "box",
        [Asked(QuestionId.KeepOutMin)] = new[] { 42, -60, -45 },
        [Asked(QuestionId.KeepOutMax)] = new[] { 85, -20, 15 },
    };

    private static readonly Dictionary<string, object?> Vehicle = new()
    {
        [Asked(QuestionId.VehicleName)] = "Plover",
        [Asked(QuestionId.WireDiameter)] = 1.5,
        [Asked(QuestionId.OuterDiameter)] = 5,
        [Asked(QuestionId.FreeInnerLength)] = new[] { "138", "1" },
        [Asked(QuestionId.FleetLimit)] = 3,
        [Asked(QuestionId.MinBendRadius)] = 60,
        [Asked(QuestionId.OuterLength)] = null,
        [Asked(QuestionId.OuterBore)] = 2.1,
        [Asked(QuestionId.WireConstruction)] = "7x19",
        [Asked(QuestionId.FittingKind)] = "barrel",
        [Asked(QuestionId.FittingDiameter)] = 6,
        [Asked(QuestionId.FittingLength)] = 8,
        [Asked(QuestionId.OuterEndKind)] = "threaded adjuster",
        [Asked(QuestionId.AdjusterThread)] = "M8x1",
        [Asked(QuestionId.NutAcrossFlats)] = 13,
        [Asked(QuestionId.NutHeight)] = 5,
        [Asked(QuestionId.AdjusterRange)] = 14,
        [Asked(QuestionId.AvailablePull)] = new[] { "51", "0.5" },
        [Asked(QuestionId.LeverKind)] = "one ratio",
        [Asked(QuestionId.LeverRatio)] = 3.4,
        [Asked(QuestionId.PadLoad)] = new[] { "0.5", "0.2" },
        [Asked(QuestionId.ClosingDrag)] = new[] { "1.2", "0.3" },
        [Asked(QuestionId.OpeningDrag)] = new[] { "1.4", "0.3" },
        [Asked(QuestionId.OuterAxialStiffness)] = new[] { "45000", "4000" },
        [Asked(QuestionId.ZeroVolts)] = null,
        [Asked(QuestionId.OtherCableCount)] = 0,
    };

    private static string Asked(QuestionId id, int item = 0) => QuestionText.Ask(new(id, "", "", AnswerForm.Text) { Item = item });
}
