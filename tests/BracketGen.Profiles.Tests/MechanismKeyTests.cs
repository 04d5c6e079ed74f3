using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Words.Profiles;
using BracketGen.Words.Report;

namespace BracketGen.Profiles.Tests;

/// <summary>The keys of the whole mechanism: other grooves, pedal tables, friction, sensor, bulkhead.</summary>
public class MechanismKeyTests
{
    private const string PitchRadius = "pitch_radius = { value = 31.5, plus_minus = 0.2 } # to the middle of the wire, not to the bottom of the groove\n";

    [Fact]
    public void WhatIsLeftOutHasItsUsualValue()
    {
        var job = Samples.ReadJob(Samples.Files).Value!;
        var cable = job.Vehicle.Cable;
        Assert.Equal(new Measured(0.12, 0.04, Evidence.Assumed), cable.Friction);
        Assert.Equal(5, cable.WanderLimit.Degrees, 9);
        Assert.Equal(180, new Angle(cable.TotalBend.Value).Degrees, 9);
        Assert.Equal((200_000, 0.6, Cable.AssumedStiffness), (cable.WireModulus, cable.WireFill, cable.OuterAxialStiffness));
        Assert.Equal((50_000, 500_000, Evidence.Assumed), (cable.OuterAxialStiffness.Min, cable.OuterAxialStiffness.Max, cable.OuterAxialStiffness.Evidence));
        Assert.Equal((null, null), (cable.OuterMass, cable.EndMass));
        Assert.Null(cable.OuterLength);
        Assert.Equal(7, job.Body.ValveClosedAngle.Degrees, 9);
        Assert.Null(job.Body.Sensor);
        Assert.Null(job.Bulkhead);
        Assert.Equal(Controller.Usual, job.Vehicle.Controller);
        Assert.Equal(new Measured(0, 0, Evidence.Assumed), job.Vehicle.Pedal.PadLoad);
        Assert.Equal((new Measured(5, 0, Evidence.Assumed), new Measured(5, 0, Evidence.Assumed)), (cable.ClosingDrag, cable.OpeningDrag));
        Assert.Equal(new Measured(10, 0, Evidence.Assumed), job.Body.ShaftDrag);
        Assert.Empty(job.Body.Springs.Each);
        Assert.Null(job.Body.MeasuredInertia);
        Assert.False(job.Vehicle.IsHeavy);
        Assert.Equal((0.5e-3, 1.5), (job.Vehicle.Pedal.PadMass, job.Preferences.DirtAndCold));
    }

    [Fact]
    public void DragAndSpringsOneByOneAreRead()
    {
        var body = Samples.Texts[Samples.Body].Replace("bore = 58\n", "bore = 58\nshaft_drag = { value = 0.02, plus_minus = 0.01 }\ninertia = 210\n");
        var files = Samples.Edit(
            Samples.Files, Samples.Body, body, "count = 2",
            "[[return_springs.each]]\ntorque_closed = { value = 0.25, plus_minus = 0.02 }\ntorque_open = 0.5\n[[return_springs.each]]\ntorque_closed = 0.3\ntorque_open = 0.55\n");
        files = Samples.Edit(files, Samples.Vehicle, Samples.Texts[Samples.Vehicle], "[cable]", "gross_mass = 5000\n[cable]\nclosing_drag = { value = \"0.5 lbf\", plus_minus = \"0.1 lbf\" }\nopening_drag = 3");
        var job = Samples.ReadJob(files).Value!;
        Assert.Equal(ReturnSprings.Of([new(new(250, 20), new(500)), new(new(300), new(550))], (job.Body.Springs.TorqueClosed, job.Body.Springs.TorqueOpen)), job.Body.Springs);
        Assert.Equal((2, 550), (job.Body.Springs.Count, job.Body.Springs.TorqueClosed.Value));
        Assert.Equal(new Measured(20, 10), job.Body.ShaftDrag);
        Assert.Equal(0.21, job.Body.Inertia, 1e-12); // 210 kg mm² in t mm²
        Assert.True(job.Vehicle.IsHeavy);
        Assert.Equal(2.224, job.Vehicle.Cable.ClosingDrag.Value, 1e-3); // NIST SP 811, B.8
        Assert.Equal(new Measured(3), job.Vehicle.Cable.OpeningDrag);
    }

    [Theory]
    [InlineData("", "return_springs.count", "count")]
    [InlineData("count = 2\n[[return_springs.each]]\ntorque_closed = 0.5\ntorque_open = 1", "return_springs.each", "count")]
    [InlineData("[[return_springs.each]]\ntorque_closed = 0.1\ntorque_open = 1", "return_springs.torque_closed", "near what the springs alone add up to")]
    public void SpringsThatDoNotGoTogetherAreOneMistake(string written, string key, string allowed)
    {
        var error = Assert.Single(Samples.ReadWith(Samples.Body, "count = 2", written).Errors);
        Assert.Equal(key, error.Key);
        Assert.Contains(allowed, ProfileErrorText.Format(error), StringComparison.Ordinal);
    }

    [Fact]
    public void AnEccentricGrooveIsRead()
    {
        var groove = BodyWithGroove("[quadrant.groove]\nshape = \"eccentric circle\"\nradius = { value = 30, plus_minus = 0.3 }\noffset = \"0.1 in\"\ndirection = 40\n").Value!.Quadrant.Groove;
        Assert.Equal(new EccentricGroove(new(30, 0.3), 2.54, Angle.FromDegrees(40)), groove);
    }

    [Fact]
    public void ATableOfPointsIsRead()
    {
        var result = BodyWithGroove("[quadrant.groove]\nshape = \"table\"\nplus_minus = 0.2\npoints = [{ angle = -30, radius = 30 }, { angle = 20, radius = 31 }, { angle = 70, radius = 32 }, { angle = 140, radius = 33 }]\n");
        Assert.Equal("", string.Join('\n', result.Errors.Select(ProfileErrorText.Format)));
        var groove = Assert.IsType<TabulatedGroove>(result.Value!.Quadrant.Groove);
        Assert.Equal(0.2, groove.PlusMinus);
        Assert.Equal(32, groove.PointWithNormal(groove.NormalAt(Angle.FromDegrees(70))).Length, 1e-9);
    }

    [Theory]
    [InlineData("shape = \"eccentric circle\"\nradius = 30\noffset = 30\ndirection = 0", "quadrant.groove.offset", "less than radius, 30 mm")]
    [InlineData("shape = \"eccentric circle\"\nradius = 30\noffset = 10\ndirection = 40", "quadrant", "outer_radius")]
    [InlineData("shape = \"oval\"", "quadrant.groove.shape", "eccentric circle")]
    [InlineData("shape = \"table\"\npoints = [{ angle = 0, radius = 30 }, { angle = 30, radius = 20 }, { angle = 60, radius = 30 }, { angle = 90, radius = 20 }]", "quadrant.groove.points", "convex")]
    [InlineData("shape = \"table\"\npoints = [{ angle = 0, radius = 30 }, { angle = 60, radius = 30 }, { angle = 40, radius = 30 }, { angle = 90, radius = 30 }]", "quadrant.groove.points", "rising")]
    public void AGrooveThatCannotBeIsOneMistake(string written, string key, string allowed)
    {
        var error = Assert.Single(BodyWithGroove("[quadrant.groove]\n" + written + "\n").Errors);
        Assert.Equal(key, error.Key);
        Assert.Contains(allowed, ProfileErrorText.Allowed(error), StringComparison.Ordinal);
    }

    [Fact]
    public void AGrooveIsGivenOnceAndNotTwice()
    {
        var none = Assert.Single(Samples.ReadWith(Samples.Body, PitchRadius, "").Errors);
        Assert.Equal("quadrant.pitch_radius", none.Key);
        Assert.Contains("pitch_radius or groove", ProfileErrorText.Allowed(none), StringComparison.Ordinal);
        var both = Assert.Single(Samples.ReadWith(
            Samples.Body, "[return_springs]", "[quadrant.groove]\nshape = \"eccentric circle\"\nradius = 30\noffset = 2\ndirection = 40\n\n[return_springs]").Errors);
        Assert.Equal("quadrant.groove", both.Key);
        Assert.Contains("not both", ProfileErrorText.Allowed(both), StringComparison.Ordinal);
    }

    [Fact]
    public void APedalTableIsRead()
    {
        var pedal = VehicleWithPedal("table = [{ pad = 0, pull = 0 }, { pad = 80, pull = 20 }, { pad = 170, pull = 51 }]\npad_load = { value = \"-1 lbf\", plus_minus = \"0.2 lbf\" }").Value!.Pedal;
        Assert.Equal(170, pedal.FullStroke);
        Assert.Equal(20, pedal.Lever.PullAt(80), 1e-9);
        Assert.Equal(-4.4482216152605, pedal.PadLoad.Value, 1e-9); // NIST SP 811, B.8
    }

    [Theory]
    [InlineData("table = [{ pad = 0, pull = 0 }, { pad = 80, pull = 20 }, { pad = 170, pull = 50 }]", "pedal.table[3].pull")]
    [InlineData("table = [{ pad = 0, pull = 0 }, { pad = 80, pull = 20 }, { pad = 70, pull = 51 }]", "pedal.table")]
    [InlineData("table = [{ pad = 5, pull = 5 }, { pad = 80, pull = 51 }]", "pedal.table")]
    [InlineData("lever_ratio = 3\ntable = [{ pad = 0, pull = 0 }, { pad = 80, pull = 51 }]", "pedal.table")]
    [InlineData("", "pedal.lever_ratio")]
    public void APedalThatCannotBeIsOneMistake(string written, string key) =>
        Assert.Equal(key, Assert.Single(VehicleWithPedal(written).Errors).Key);

    [Fact]
    public void SensorControllerAndBulkheadAreRead()
    {
        var files = Samples.Edit(Samples.Files, Samples.Body, Samples.Texts[Samples.Body], "[return_springs]", "[valve]\nclosed_angle = 9\n[sensor]\nclosed_volts = \"520 mV\"\nopen_volts = 4.5\nslot = \"8 deg\"\nmax_volts = 4.9\n\n[return_springs]");
        files = Samples.Edit(files, Samples.Vehicle, Samples.Texts[Samples.Vehicle], "[pedal]", "[controller]\nzero_volts = 0.5\n\n[pedal]");
        files = Samples.Edit(files, Samples.Job, Samples.Texts[Samples.Job], "[document]", "[bulkhead]\npoint = [-400, \"4 in\", 10]\ndirection = [3, 0, 4]\n\n[document]");
        var job = Samples.ReadJob(files).Value!;
        Assert.Equal(9, job.Body.ValveClosedAngle.Degrees, 9);
        Assert.Equal(new PositionSensor(0.52, 4.5, job.Body.Quadrant.Rotation.Value) { Slot = Angle.FromDegrees(8), MaxVolts = 4.9 }, job.Body.Sensor);
        Assert.Equal(0.5, job.Vehicle.Controller.ZeroVolts);
        Assert.Equal(new Bulkhead(new(-400, 101.6, 10), new(0.6, 0, 0.8)), job.Bulkhead);
    }

    [Fact]
    public void TheEnginesMovementIsReadOrAssumed()
    {
        Assert.Equal(EngineMovement.Usual, Samples.ReadJob(Samples.Files).Value!.Movement);
        var job = Samples.ReadWith(Samples.Job, "[document]", "[engine_movement]\nx = 6\ny = \"0.2 in\"\nz = 0\nroll = 2\ncrankshaft_direction = [0, 0, -3]\n\n[document]").Value!;
        Assert.Equal(new() { X = 6, Y = 5.08, Z = 0, Roll = Angle.FromDegrees(2), Direction = new(0, 0, -1) }, job.Movement);
        Assert.Equal("engine_movement.roll", Assert.Single(Samples.ReadWith(Samples.Job, "[document]", "[engine_movement]\nx = 6\ny = 5\nz = 0\n\n[document]").Errors).Key);
    }

    [Theory]
    [InlineData("1.4")]
    [InlineData("6")]
    public void AnOutersBoreIsBetweenWireAndOuter(string bore) => Assert.Equal(
        "cable.outer_bore", Assert.Single(Samples.ReadWith(Samples.Vehicle, "[cable]", $"[cable]\nouter_bore = {bore}").Errors).Key);

    [Theory]
    [InlineData("[sensor]\nclosed_volts = 0.52\nopen_volts = 0.5\n", "sensor.open_volts")]
    [InlineData("[sensor]\nclosed_volts = \"0.5 N\"\nopen_volts = 4.5\n", "sensor.closed_volts")]
    [InlineData("[sensor]\nclosed_volts = 0.5\nopen_volts = 4.5\nslot = -1\n", "sensor.slot")]
    [InlineData("[sensor]\nclosed_volts = 0.5\nopen_volts = 4.5\nmin_volts = 4.8\n", "sensor.min_volts")]
    public void ASensorThatDoesNotTurnIsAMistake(string written, string key) => Assert.Equal(
        key, Assert.Single(Samples.ReadWith(Samples.Body, "[return_springs]", written + "[return_springs]").Errors).Key);

    private static ProfileResult<ThrottleBody> BodyWithGroove(string written) => ProfileReader.ReadThrottleBody(
        "b.toml", MemoryFileSource.Empty.With("b.toml", Samples.Texts[Samples.Body].Replace(PitchRadius, "").Replace("[return_springs]", written + "\n[return_springs]")));

    private static ProfileResult<Vehicle> VehicleWithPedal(string written)
    {
        var text = Samples.Texts[Samples.Vehicle];
        var ratio = text.Split('\n').Single(l => l.StartsWith("lever_ratio", StringComparison.Ordinal));
        return ProfileReader.ReadVehicle("v.toml", MemoryFileSource.Empty.With("v.toml", text.Replace(ratio, written)));
    }
}
