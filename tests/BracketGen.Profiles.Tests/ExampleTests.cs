using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words.Profiles;
using BracketGen.Words.Report;

namespace BracketGen.Profiles.Tests;

public class ExampleTests
{
    public static TheoryData<string> Jobs => [.. Examples.Of("jobs")];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void EveryJobReadsWithoutError(string file)
    {
        var result = ProfileReader.ReadJob(file, Examples.Files);
        Assert.Equal("", string.Join('\n', result.Errors.Select(ProfileErrorText.Format)));
        Assert.True(result.IsRead);
    }

    [Fact]
    public void TheSetIsAsLargeAsPromised()
    {
        Assert.True(Examples.Of("vehicles").Count() >= 3);
        Assert.True(Examples.Of("throttle-bodies").Count() >= 3);
        Assert.True(Examples.Of("jobs").Count() >= 4);
        var jobs = Examples.Of("jobs").Select(j => ProfileReader.ReadJob(j, Examples.Files).Value!).ToArray();
        Assert.Contains(jobs, j => j.Body.Opens == OpeningSense.CounterClockwise);
        Assert.Contains(jobs, j => j.Body.Opens == OpeningSense.Clockwise);
        Assert.Contains(jobs, j => j.Units == UnitSystem.Inch);
        Assert.Contains(jobs, j => !ReachesWideOpen(j));
        Assert.Contains(jobs, ReachesWideOpen);
    }

    // On a groove of constant radius the pull to the wide-open stop is R Θ (arc length), whatever the stop's place; on an
    // eccentric circle it is at most (ρ + e) Θ.
    private static bool ReachesWideOpen(Job job) =>
        job.Vehicle.Pedal.AvailablePull.Value - job.Preferences.FreePlay.Value
            >= LargestArm(job.Body.Quadrant.Groove) * job.Body.Quadrant.Rotation.Value.Radians;

    private static double LargestArm(Groove groove) => groove switch
    {
        CircularGroove circle => circle.PitchRadius.Value,
        EccentricGroove eccentric => eccentric.Radius.Value + eccentric.Offset,
        _ => throw new InvalidOperationException("No example has such a groove."),
    };

    [Fact]
    public void TheMainJobHasTheNumbersOfItsFiles()
    {
        var job = Samples.ReadJob(Samples.Files).Value!;
        Assert.Equal("Alder 58", job.Body.Name);
        Assert.Equal(58, job.Body.Bore);
        Assert.Equal(new Measured(31.5, 0.2), ((CircularGroove)job.Body.Quadrant.Groove).PitchRadius);
        Assert.Equal(84 * Math.PI / 180, job.Body.Quadrant.Rotation.Value.Radians, 12);
        Assert.Equal(1 * Math.PI / 180, job.Body.Quadrant.Rotation.PlusMinus.Radians, 12);
        Assert.Equal(-20 * Math.PI / 180, job.Body.Quadrant.Pocket.Value.Radians, 12);
        Assert.Equal(550, job.Body.Springs.TorqueClosed.Value, 9);
        Assert.Equal(1050, job.Body.Springs.TorqueOpen.Value, 9);
        Assert.Equal(2, job.Body.Springs.Count);
        Assert.Equal(new Vector3(0, 0, 1), job.Body.Mount.Plane.Normal);
        Assert.Equal(new ThrottlePoint(-50, -22, -12), job.Body.Mount.Holes[0].At);
        Assert.Equal("M6", job.Body.Mount.Holes[1].Thread.Name);
        Assert.Equal(new KeepOutBox("idle valve", new(42, -60, -45), new(85, -20, 15)), job.Body.KeepOuts[1]);
        Assert.Equal(new KeepOutCylinder("body round the bore", new(-60, 0, -55), new(60, 0, -55), 36), job.Body.KeepOuts[0]);
        Assert.Equal(new ThreadedAdjuster(8, 1, 14, 13, 5), job.Vehicle.Cable.OuterEnd);
        Assert.Equal(new EndFitting(EndFittingKind.Barrel, 6, 8), job.Vehicle.Cable.Fitting);
        Assert.Equal(new Measured(138, 1), job.Vehicle.Cable.FreeInnerLength);
        Assert.Equal(3 * Math.PI / 180, job.Vehicle.Cable.FleetLimit.Radians, 12);
        Assert.Equal(new Pedal(new(51, 0.5), 3.4), job.Vehicle.Pedal);
        Assert.Equal(new Measured(0.12, 0.04, Evidence.Assumed), job.Vehicle.Cable.Friction);
        var steel = job.Shop.Stock[0].Material;
        Assert.Equal(7.85e-9, steel.Density, 15);
        Assert.Equal(210_000, steel.Modulus, 6);
        Assert.Equal(235, steel.Yield);
        Assert.Equal([3, 4, 5], job.Shop.Stock.Where(s => s.Material == steel).Select(s => s.Thickness));
        Assert.Equal(CuttingProcess.Laser, job.Shop.Process);
        Assert.Equal(new PressBrakeDie(12, 1.9), job.Shop.Dies[0]);
        Assert.Equal(new TestBend("S235JR", 3, 3.8, 0.42), job.Shop.TestBends[0]);
        Assert.Equal("S235JR, DC01", string.Join(", ", job.Preferences.Materials));
        Assert.Equal(new DateOnly(2026, 3, 2), job.Document.Date);
        Assert.Null(job.Document.Approver);
        Assert.Equal(Projection.FirstAngle, job.Document.Projection);
    }

    // The worst case is calculated where nobody measured: a default must not pass for a measurement, nor a measurement for a default.
    [Fact]
    public void WhatIsLeftOutIsAssumedAndWhatIsWrittenIsMeasured()
    {
        var vehicle = Samples.ReadJob(Samples.Files).Value!.Vehicle;
        Assert.Equal((Evidence.Assumed, Evidence.Assumed), (vehicle.Cable.Friction.Evidence, vehicle.Pedal.PadLoad.Evidence));
        var text = Samples.Texts[Samples.Vehicle]
            .Replace("[cable]\n", "[cable]\nfriction = 0.12\n", StringComparison.Ordinal).Replace("[pedal]\n", "[pedal]\npad_load = 0\n", StringComparison.Ordinal);
        var written = Samples.ReadJob(Samples.Files.With(Samples.Vehicle, text)).Value!.Vehicle;
        Assert.Equal((new Measured(0.12), new Measured(0)), (written.Cable.Friction, written.Pedal.PadLoad));
    }

    [Fact]
    public void InchesAndPoundsAreReadIntoInternalUnits()
    {
        var job = ProfileReader.ReadJob("jobs/whimbrel-hornbeam-70.toml", Samples.Files).Value!;
        Assert.Equal(UnitSystem.Inch, job.Units);
        Assert.Equal(1.42 * 25.4, ((CircularGroove)job.Body.Quadrant.Groove).PitchRadius.Value, 9);
        Assert.Equal(9.525, job.Body.ShaftDiameter, 9);
        Assert.Equal(25.4 / 16, job.Vehicle.Cable.WireDiameter, 9);
        Assert.Equal(6.2 * 112.9848, job.Body.Springs.TorqueClosed.Value, 2); // NIST SP 811, B.8: 1 lbf in = 0.1129848 N m
        Assert.Equal(-1.2 * 25.4, job.Body.Mount.Holes[0].At.Z, 9);
        Assert.Equal(new Measured(0.08 * 25.4, 0.02 * 25.4), job.Preferences.FreePlay);
    }

    [Fact]
    public void WhatAJobLeavesOutIsAsUsual()
    {
        var job = ProfileReader.ReadJob("jobs/dunlin-hornbeam-70.toml", Samples.Files).Value!;
        Assert.Equal(new Preferences(), job.Preferences);
        Assert.Null(job.Document.Date);
        var body = ProfileReader.ReadThrottleBody("b.toml", MemoryFileSource.Empty.With("b.toml", Samples.Texts[Samples.Body].Replace("hub_radius = 14\n", ""))).Value!;
        Assert.Equal(body.Quadrant.OuterRadius, body.Quadrant.HubRadius);
    }

    [Fact]
    public void TheDiskGivesWhatTheMemoryGives()
    {
        var root = Samples.Root;
        var job = ProfileReader.ReadJob(Path.Combine(root, "jobs", "plover-alder-58.toml"), new DiskFileSource());
        Assert.True(job.IsRead);
        Assert.Equal(Samples.ReadJob(Samples.Files).Value!.Vehicle, job.Value.Vehicle);
        var missing = ProfileReader.ReadVehicle(Path.Combine(root, "vehicles", "heron.toml"), new DiskFileSource());
        Assert.Equal(new FileUnread(FileMistake.Missing, null), Assert.Single(missing.Errors).Problem);
        Assert.False(ProfileReader.ReadVehicle(root, new DiskFileSource()).IsRead);
    }
}
