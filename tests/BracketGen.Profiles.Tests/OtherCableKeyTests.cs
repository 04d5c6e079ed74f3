using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Errors;
using BracketGen.Words.Profiles;

namespace BracketGen.Profiles.Tests;

/// <summary>Cables that do not come from the pedal, in the vehicle's file and in the job's.</summary>
public sealed class OtherCableKeyTests
{
    private const string Kick = "\n[[other_cables]]\nname = \"gearbox\"\ndoes = \"kick-down\"\nfrom = \"lever at the gearbox\"\n";

    private static ProfileResult<Job> Read(string vehicle, string job) => Samples.ReadJob(Samples.Files
        .With(Samples.Vehicle, Samples.Texts[Samples.Vehicle] + vehicle)
        .With(Samples.Job, Samples.Texts[Samples.Job] + job));

    private static ProfileError OneError(string vehicle, string job) => Assert.Single(Read(vehicle, job).Errors);

    [Fact]
    public void NothingSaidIsNoOtherCable()
    {
        var job = Samples.ReadJob(Samples.Files).Value!;
        Assert.Empty(job.Vehicle.OtherCables);
        Assert.Empty(job.CableUses);
    }

    [Fact]
    public void ACableIsReadWithWhatBecomesOfIt()
    {
        var cruise = "\n[[other_cables]]\nname = \"cruise cable\"\ndoes = \"cruise control\"\nfrom = \"actuator\"\non_pedal = \"yes\"\nfitting = { kind = \"ball\", diameter = 8 }\n";
        var said = "\n[[other_cables]]\ncable = \"cruise cable\"\nbecomes = \"laid by\"\npedal_end = \"off\"\nactuator = \"live\"\nserved_by = \"the controller\"\n";
        var job = Read(Kick + cruise, said).Value!;
        Assert.Equal(
            [new("gearbox", CableDuty.KickDown, "lever at the gearbox"), new OtherCable("cruise cable", CableDuty.CruiseControl, "actuator") { IsOnPedal = true, Fitting = new(EndFittingKind.Ball, 8, 8) }],
            job.Vehicle.OtherCables.AsEnumerable());
        Assert.Equal(new CableUse("cruise cable", CableFate.LaidBy) { IsOffPedal = true, IsActuatorDead = false, ServedBy = "the controller" }, job.UseOf(job.Vehicle.OtherCables[1]));
        Assert.Equal(CableFate.NotSaid, job.UseOf(job.Vehicle.OtherCables[0]).Fate);
    }

    [Theory]
    [InlineData("taken out", "", CableFate.TakenOut)]
    [InlineData("hooked elsewhere", "to = \"lever on the throttle shaft's other end\"\n", CableFate.HookedElsewhere)]
    public void TheOtherFatesAreRead(string word, string more, CableFate fate) =>
        Assert.Equal(fate, Assert.Single(Read(Kick, $"\n[[other_cables]]\ncable = \"gearbox\"\nbecomes = \"{word}\"\n{more}").Value!.CableUses).Fate);

    [Fact]
    public void ASecondCableTableGetsAnAnswerThatSaysSo()
    {
        var text = Samples.Texts[Samples.Vehicle].Replace("[cable]", "[[cable]]", StringComparison.Ordinal);
        var one = Assert.Single(Samples.ReadJob(Samples.Files.With(Samples.Vehicle, text)).Errors);
        Assert.Equal(new SecondCable(1), one.Problem);
        var two = Assert.Single(Samples.ReadJob(Samples.Files.With(Samples.Vehicle, text + "\n[[cable]]\nwire_diameter = 1.5\n")).Errors);
        Assert.Equal(new SecondCable(2), two.Problem);
        Assert.Contains("2 tables [[cable]]", ProfileErrorText.Format(two), StringComparison.Ordinal);
        Assert.Contains("Write every other cable under [[other_cables]]", ProfileErrorText.Format(two), StringComparison.Ordinal);
        var twice = Samples.ReadJob(Samples.Files.With(Samples.Vehicle, Samples.Texts[Samples.Vehicle] + "\n[cable]\nwire_diameter = 1.5\n")).Errors;
        Assert.Contains(twice, e => e.Problem is KeyTwice && ProfileErrorText.Advice(e).Contains("[[other_cables]]", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("cables")]
    [InlineData("kick_down_cable")]
    [InlineData("cruise_control")]
    public void AKeyThatAsksForAnotherCableIsToldWhereItGoes(string key)
    {
        var vehicle = OneError($"\n[{key}]\nname = \"x\"\n", "");
        Assert.Equal(new KeyOfOtherCable(key, "other_cables"), vehicle.Problem);
        Assert.Contains("[[other_cables]]", ProfileErrorText.Format(vehicle), StringComparison.Ordinal);
        Assert.IsType<KeyOfOtherCable>(OneError("", $"\n[[{key}]]\nname = \"x\"\n").Problem);
    }

    [Theory]
    [InlineData("\n[[other_cables]]\nname = \"a\"\ndoes = \"choke\"\nfrom = \"dash\"\n", "", "other_cables[1].does")]
    [InlineData("\n[[other_cables]]\nname = \"a\"\ndoes = \"other\"\n", "", "other_cables[1].from")]
    [InlineData(Kick + Kick, "", "other_cables[2].name")]
    [InlineData("", "\n[[other_cables]]\ncable = \"gearbox\"\nbecomes = \"taken out\"\n", "other_cables[1].cable")]
    [InlineData(Kick, "\n[[other_cables]]\ncable = \"gear box\"\nbecomes = \"taken out\"\n", "other_cables[1].cable")]
    [InlineData(Kick, "\n[[other_cables]]\ncable = \"gearbox\"\nbecomes = \"thrown away\"\n", "other_cables[1].becomes")]
    [InlineData(Kick, "\n[[other_cables]]\ncable = \"gearbox\"\nbecomes = \"hooked elsewhere\"\n", "other_cables[1].to")]
    [InlineData(Kick, "\n[[other_cables]]\ncable = \"gearbox\"\nbecomes = \"taken out\"\nactuator = \"dead\"\n", "other_cables[1].actuator")]
    public void EachMistakeIsAPlainError(string vehicle, string job, string key)
    {
        var error = OneError(vehicle, job);
        Assert.Equal(key, error.Key);
        Assert.DoesNotContain("NameUnknown", ProfileErrorText.Format(error), StringComparison.Ordinal);
    }

    [Fact]
    public void ACableIsSpokenOfOnce()
    {
        const string said = "\n[[other_cables]]\ncable = \"gearbox\"\nbecomes = \"taken out\"\n";
        var error = OneError(Kick, said + said);
        Assert.Equal((new GivenTwice(Repeated.Cable), "other_cables[2].cable"), (error.Problem, error.Key));
        Assert.Contains("each cable once", ProfileErrorText.Format(error), StringComparison.Ordinal);
        var nearest = Assert.IsType<NameUnknown>(OneError(Kick, "\n[[other_cables]]\ncable = \"gearbax\"\nbecomes = \"taken out\"\n").Problem);
        Assert.Equal("gearbox", nearest.Nearest);
    }

    private const string Groove = "\n[[other_grooves]]\nname = \"second\"\ndoes = \"opens\"\nz = 10\nfree_arc = 90\npitch_radius = 28\npocket_angle = -20\ngroove_extent = 150\ngroove_width = 3\nslot_width = 2\nouter_radius = 31\nthickness = 8\n";

    private const string Whole = """

        [[other_cables]]
        name = "cruise cable"
        does = "cruise control"
        from = "actuator"
        stroke = 45
        [other_cables.cable]
        wire_diameter = 1.5
        outer_diameter = 5
        free_inner_length = 150
        fleet_limit = 3
        min_bend_radius = 60
        fitting = { kind = "barrel", diameter = 7, length = 7 }
        outer_end = { kind = "threaded adjuster", thread = "M8x1", range = 14, across_flats = 13, nut_height = 5 }

        """;

    private const string Works = "\n[[other_cables]]\ncable = \"cruise cable\"\nbecomes = \"in a groove\"\ngroove = \"second\"\n";

    private static ProfileResult<Job> ReadWith(string body, string vehicle, string job) => Samples.ReadJob(Samples.Files
        .With(Samples.Body, Samples.Texts[Samples.Body] + body)
        .With(Samples.Vehicle, Samples.Texts[Samples.Vehicle] + vehicle)
        .With(Samples.Job, Samples.Texts[Samples.Job] + job));

    [Fact]
    public void AGrooveAndTheCableInItAreRead()
    {
        var read = ReadWith(Groove, Whole, Works + "stop_at = [-90, -3, 10]\nheld_by = \"a bracket of its own\"\n");
        Assert.Equal("", string.Join('\n', read.Errors.Select(ProfileErrorText.Format)));
        var job = read.Value!;
        var groove = job.Body.OtherGrooves[0];
        Assert.Equal(("second", GrooveRole.Opening, 10.0), (groove.Name, groove.Role, groove.Z));
        Assert.Equal(job.Body.Quadrant.Rotation, groove.Quadrant.Rotation);
        Assert.Equal(90, groove.FreeArc!.Value.Degrees, 9);
        Assert.Null(job.Body.FreeArc);
        var cable = job.Vehicle.OtherCables[0];
        Assert.Equal((150.0, 45.0, EndFittingKind.Barrel), (cable.Cable!.FreeInnerLength.Value, cable.Stroke!.Value.Value, cable.Fitting!.Kind));
        Assert.Equal(
            new CableUse("cruise cable", CableFate.InGroove) { Groove = "second", Seat = new(-90, -3, 10), HeldBy = "a bracket of its own" }, job.CableUses[0]);
    }

    // body, vehicle, job, key of the error, part of the answer
    public static TheoryData<string, string, string, string, string> GrooveMistakes => new()
    {
        { Groove + Groove.Replace("z = 10", "z = 20", StringComparison.Ordinal), "", "", "other_grooves[2].name", "Give each groove a name of its own" },
        { Groove.Replace("z = 10", "z = 2", StringComparison.Ordinal), "", "", "other_grooves[1].z", "Measure z again" },
        { Groove.Replace("\"opens\"", "\"pushes\"", StringComparison.Ordinal), "", "", "other_grooves[1].does", "\"opens\"" },
        { Groove.Replace("outer_radius = 31", "outer_radius = 21", StringComparison.Ordinal), "", "", "other_grooves[1].outer_radius", "pitch_radius" },
        { Groove.Replace("pitch_radius = 28", "groove = { shape = \"eccentric circle\", radius = 28, offset = 5, direction = 45 }", StringComparison.Ordinal), "", "", "other_grooves[1].outer_radius", "the groove's farthest point" },
        { "", Whole, Works, "other_cables[1].groove", "lay it by" },
        { Groove, Whole, Works.Replace("\"second\"", "\"secund\"", StringComparison.Ordinal), "other_cables[1].groove", "Did you mean \"second\"?" },
        { Groove, Whole.Replace("stroke = 45\n", "", StringComparison.Ordinal), Works, "other_cables[1].groove", "Measure the cable as the one from the pedal" },
        { Groove.Replace("\"opens\"", "\"pulled\"", StringComparison.Ordinal), Whole, Works, "other_cables[1].groove", "Correct the groove's name here" },
        { Groove, Whole.Replace("stroke = 45\n", "stroke = 45\nfitting = { kind = \"ball\", diameter = 8 }\n", StringComparison.Ordinal), "", "other_cables[1].fitting", "Delete fitting or cable.fitting" },
    };

    [Theory]
    [MemberData(nameof(GrooveMistakes))]
    public void EachMistakeWithAGrooveIsAPlainError(string body, string vehicle, string job, string key, string part)
    {
        var error = Assert.Single(ReadWith(body, vehicle, job).Errors);
        Assert.Equal(key, error.Key);
        Assert.Contains(part, ProfileErrorText.Format(error), StringComparison.Ordinal);
    }

    [Fact]
    public void OneCableWorksInAGroove()
    {
        var both = Whole + Whole.Replace("cruise cable", "second cable", StringComparison.Ordinal);
        var error = Assert.Single(ReadWith(Groove, both, Works + Works.Replace("cruise cable", "second cable", StringComparison.Ordinal)).Errors);
        Assert.Equal((new GivenTwice(Repeated.Groove), "other_cables[2].groove"), (error.Problem, error.Key));
    }
}
