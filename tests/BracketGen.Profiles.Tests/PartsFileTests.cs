using BracketGen.Design.Inputs;
using BracketGen.Design.Kit;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Words.Profiles;

namespace BracketGen.Profiles.Tests;

/// <summary>Lists of parts, openings of a throttle body and the kit of a job: what they say, and what is said of their mistakes.</summary>
public class PartsFileTests
{
    private const string List = "parts/saltmarsh.toml", Offer = "parts/estuary-breakers.toml", Body = "throttle-bodies/alder-58-bare.toml", Job = "jobs/plover-alder-58-bare.toml";

    public static TheoryData<string> Lists => [.. Examples.Of("parts")];

    [Theory]
    [MemberData(nameof(Lists))]
    public void Every_shipped_list_reads(string file)
    {
        var read = ProfileReader.ReadParts(file, Examples.Files);
        Assert.Equal("", string.Join('\n', read.Errors.Select(ProfileErrorText.Format)));
        Assert.NotEmpty(read.Value!.Parts);
    }

    [Fact]
    public void The_kit_has_the_numbers_of_its_files()
    {
        var kit = ProfileReader.ReadKit(Job, Examples.Files).Value!;
        Assert.True(kit.HasLists);
        Assert.Equal(WaterUse.Capped, kit.Water);
        var openings = kit.Job.Body.Openings;
        Assert.Equal((DriveShape.D, new(6.5, 0.03), 10.0), (openings.Sensor!.Drive, openings.Sensor.Size!.Value, openings.Sensor.Screws!.Depth!.Value));
        Assert.Equal<PatternPoint>([new(0, 0), new(38, 0)], openings.Idle!.Screws!.Holes);
        Assert.Equal(new Port(new(19, -12), 6), Assert.Single(openings.Idle.Water!.Value));
        Assert.Equal(("M8", 4, 0.1), (openings.Flange!.Thread!.Name, openings.Flange.Holes.Length, openings.Flange.PlusMinus));
        var sensor = kit.Parts.Single(p => p.Name == "sensor off the donor");
        Assert.Equal(("Alder 58 donor", 24.0, PartSource.Donor, false), (sensor.Bundle!.Name, sensor.Bundle.Price, sensor.Source, sensor.IsNew));
        var slot = ((SensorMeasures)sensor.Measures).Slots!.Value[0];
        Assert.Equal((4.6, 10.0), (slot.Width, slot.Slot.Half.Degrees), new Near());
        var bracket = kit.Parts.Single(p => p.Name == "Upright 34 from the shelf");
        Assert.Equal((11.5, "Upright 34"), (bracket.Price!.Value, ((BracketMeasures)bracket.Measures).Bracket.Name));
    }

    [Theory]
    [InlineData("bundle = \"Alder 58 donor\"\ndrive", "bundle = \"Alder 58 doner\"\ndrive", "parts[1].bundle", "Did you mean \"Alder 58 donor\"?")]
    [InlineData("bundle = \"Alder 58 donor\"\ndrive", "bundle = \"Alder 58 donor\"\nprice = 3\ndrive", "parts[1].price", "the bundle has one price")]
    [InlineData("name = \"sensor 2041\"", "name = \"sensor 2050\"", "parts[5].name", "Give each part a name of its own")]
    [InlineData("closed_volts = 0.6\n", "", "parts[4].open_volts", "Read the sensor on both stops")]
    [InlineData("open_volts = 4.3", "open_volts = 0.65", "parts[4].open_volts", "does not turn with the throttle shaft")]
    [InlineData("drive = \"tongue\"", "drive = \"tounge\"", "parts[4].drive", "Did you mean \"tongue\"?")]
    [InlineData("kind = \"pressure sensor\"", "kind = \"presure sensor\"", "parts[8].kind", "Did you mean \"pressure sensor\"?")]
    [InlineData("ring_section =", "ring_secton =", "parts[8].ring_secton", "Did you mean ring_section?")]
    [InlineData("groove_diameter = { value = 8.8", "groove_diameter = { value = 12.8", "parts[8].nose_diameter", "one contains the other")]
    [InlineData("holes = [[33, 33], [-33, 33]", "holes = [[33, 33], [33, 32]", "parts[10].holes[2]", "The two holes overlap")]
    [InlineData("seals = \"flange\"", "seals = \"valve\"", "parts[10].seals", "\"flange\" or \"idle valve\"")]
    [InlineData("thread = \"M6\"", "thread = \"M6x2\"", "parts[12].thread", "M6")]
    [InlineData("file = \"../brackets/shelf-upright-34.toml\"", "file = \"../brackets/upright.toml\"", "parts[13].file", "brackets/upright.toml")]
    [InlineData("source = \"kept\"", "source = \"mine\"", "parts[8].source", "\"kept\" or \"donor\" or \"bought\" or \"made\"")]
    [InlineData("profile = \"parts list\"", "profile = \"bracket\"", "profile", "a parts list is needed here")]
    public void Each_mistake_is_told_at_its_place(string old, string changed, string key, string says) =>
        Told(List, old, changed, key, says);

    [Theory]
    [InlineData("min_height = 8", "min_height = 30", "parts[3].min_height", "Correct one of the two")]
    [InlineData("outer_bore = 2.1", "outer_bore = 1.1", "parts[1].cable.outer_bore", "")]
    [InlineData("torque_open = { value = 0.25, plus_minus = 0.03 }", "", "parts[2].torque_open", "")]
    public void Mistakes_of_other_parts_are_told_too(string old, string changed, string key, string says) => Told(Offer, old, changed, key, says);

    [Theory]
    [InlineData(Body, "holes = [[0, 16], [0, -16]]", "holes = [[0, 16], [0, 15]]", "sensor_mount.holes[2]", "The two holes overlap")]
    [InlineData(Body, "drive_size = {", "drive_sise = {", "sensor_mount.drive_sise", "Did you mean drive_size?")]
    [InlineData(Body, "[pressure_port]", "[presure_port]", "presure_port", "Did you mean pressure_port?")]
    [InlineData(Job, "water = \"capped\"", "water = \"cold\"", "kit.water", "\"used\" or \"capped\"")]
    [InlineData(Job, "water = \"capped\"", "without = [\"bracket\"]", "kit.without[1]", "\"bracket bolts\"")]
    [InlineData(Job, "parts = [\"../parts/saltmarsh.toml\"]", "parts = [\"../parts/saltmarsh.toml\", \"../parts/saltmarsh.toml\"]", "kit.parts[2]", "each list of parts once")]
    [InlineData(Job, "parts = [\"../parts/saltmarsh.toml\"]", "parts = [\"../parts/nowhere.toml\"]", "kit.parts[1]", "parts/nowhere.toml")]
    [InlineData(Job, "parts = [\"../parts/saltmarsh.toml\"]", "parts = []", "kit.parts", "")]
    public void Mistakes_of_job_and_throttle_body_are_told_at_their_place(string file, string old, string changed, string key, string says)
    {
        var error = Assert.Single(ProfileReader.ReadKit(Job, Samples.Edit(Examples.Files, file, Examples.Texts[file], old, changed)).Errors, e => e.Key == key);
        Assert.Contains(says, ProfileErrorText.Format(error), StringComparison.Ordinal);
    }

    // The sheet of a bracket on a list is one of the job's shop.
    [Fact]
    public void A_brackets_material_is_held_against_the_shop()
    {
        const string file = "brackets/shelf-upright-34.toml";
        var error = Assert.Single(ProfileReader.ReadKit(Job, Samples.Edit(Examples.Files, file, Examples.Texts[file], "material = \"S235JR\"", "material = \"C45\"")).Errors);
        Assert.Equal((file, NamedThing.BracketMaterial), (error.File, ((NameUnknown)error.Problem).What));
    }

    [Fact]
    public void A_packed_job_brings_its_lists_along()
    {
        string[] files = [Job, Body, "vehicles/plover.toml", Samples.Shop, List, "brackets/shelf-upright-34.toml", "brackets/market-upright-40.toml"];
        var packed = new PackedJob(Job, [.. files.Select(f => (f, Examples.Texts[f]))]).Write();
        var read = ProfileReader.ReadKit("packed.toml", MemoryFileSource.Empty.With("packed.toml", packed));
        Assert.Equal("", string.Join('\n', read.Errors.Select(ProfileErrorText.Format)));
        Assert.Equal(ProfileReader.ReadKit(Job, Examples.Files).Value!.Parts.Length, read.Value!.Parts.Length);
    }

    private static void Told(string file, string old, string changed, string key, string says)
    {
        var error = Assert.Single(ProfileReader.ReadParts(file, Samples.Edit(Examples.Files, file, Examples.Texts[file], old, changed)).Errors);
        Assert.Equal(key, error.Key);
        Assert.Contains(says, ProfileErrorText.Format(error), StringComparison.Ordinal);
    }

    private sealed class Near : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) x, (double, double) y) => Math.Abs(x.Item1 - y.Item1) < 1e-9 && Math.Abs(x.Item2 - y.Item2) < 1e-9;

        public int GetHashCode((double, double) obj) => 0;
    }
}
