using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Kit;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.SheetMetal.Standards;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests;

/// <summary>Whether single parts fit the bare Alder 58: fits, does not fit, not known.</summary>
public class FitTests
{
    private static readonly KitJob Kit = ProfileReader.ReadKit(RepositoryRoot.PathOf("profiles", "jobs", "plover-alder-58-bare.toml"), new DiskFileSource()).Value!;

    private static ThrottleBody Body => Kit.Job.Body;

    private static T Part<T>(string name)
        where T : PartMeasures => (T)Kit.Parts.First(p => p.Name == name).Measures;

    private static FitState Worst(ImmutableArray<FitFinding> findings) => findings.Min(f => f.State);

    private static FitFinding One(ImmutableArray<FitFinding> findings, FitAspect aspect) => findings.Single(f => f.Aspect == aspect);

    private static ImmutableArray<FitFinding> Sensor(Func<SensorMeasures, SensorMeasures> changed, Controller? controller = null) =>
        SensorFit.Of(changed(Part<SensorMeasures>("sensor off the donor")), Body, controller ?? Kit.Job.Vehicle.Controller);

    [Fact]
    public void The_donors_sensor_fits_and_each_measurement_decides()
    {
        Assert.Equal(FitState.Fits, Worst(Sensor(s => s)));
        Assert.Equal(FitState.DoesNotFit, One(Sensor(s => s with { Drive = DriveShape.Square }), FitAspect.DriveShape).State);
        Assert.Equal(FitState.DoesNotFit, One(Sensor(s => s with { Size = 6.4 }), FitAspect.DrivePlay).State);
        Assert.Equal(FitState.NotKnown, One(Sensor(s => s with { Size = new(6.55, 0.1) }), FitAspect.DrivePlay).State);
        Assert.Equal(FitState.DoesNotFit, One(Sensor(s => s with { Size = 7 }), FitAspect.DrivePlay).State);
        Assert.Equal(MissingOn.Part, One(Sensor(s => s with { Drive = null }), FitAspect.DriveShape).Missing);
        Assert.Equal(FitState.NotKnown, One(Sensor(s => s with { Slots = null }), FitAspect.SensorHoles).State);
        Assert.Equal(FitState.NotKnown, One(Sensor(s => s with { PlusMinus = 0.5 }), FitAspect.SensorHoles).State);
        Assert.Equal(("1", "2"), One(Sensor(s => s with { Slots = [s.Slots!.Value[0]] }), FitAspect.SensorHoles).Compared);
    }

    // The slots are 20° from end to end and their screws have 0.25 mm of play; the ± of 0.05 mm on both sides takes √2 times 0.1 mm of it.
    [Fact]
    public void The_range_of_turn_is_that_of_slots_and_play()
    {
        var turn = One(Sensor(s => s), FitAspect.SensorHoles).Turn!.Value;
        var play = (4.6 - 4) / 2 - 0.05 - Math.Sqrt(2) * 0.1;
        Assert.Equal(10 + 2 * Math.Asin(play / 2 / 16) * 180 / Math.PI, turn.Degrees, 1e-9);
    }

    [Fact]
    public void Readings_are_judged_as_they_will_be_set()
    {
        // 3.9 V over 84°: 1 V is 21.5°, and the slots turn 10.4° each way.
        Assert.Equal(FitState.Fits, One(Sensor(s => s with { Volts = (0.9, 4.6) }), FitAspect.SensorChecks).State);
        var far = One(Sensor(s => s with { Volts = (1.5, 4.6) }), FitAspect.SensorChecks);
        Assert.Equal((FitState.DoesNotFit, true), (far.State, far.Codes.Contains("sensor-closed")));
        Assert.Equal(FitState.NotKnown, One(Sensor(s => s with { Volts = (0.9, 4.6), Slots = null }), FitAspect.SensorChecks).State);
        Assert.Equal(FitState.NotKnown, One(Sensor(s => s with { Volts = null }), FitAspect.SensorReading).State);

        // By its maker 60 mV a degree: 0.5 V and 84° make 5.5 V, which no sensor fed with 5 V follows; with 45 mV it may.
        Assert.Equal(FitState.DoesNotFit, One(Sensor(s => s with { Volts = null, VoltsPerAngle = 0.06 * 180 / Math.PI }), FitAspect.SensorSpan).State);
        Assert.Equal(FitState.NotKnown, Worst(Sensor(s => s with { Volts = null, VoltsPerAngle = 0.045 * 180 / Math.PI })));
        Assert.Equal(FitState.DoesNotFit, One(Sensor(s => s with { Volts = (0.9, 4.6), Slots = [.. s.Slots!.Value.Select(o => o with { Slot = o.Slot with { Half = Angle.Zero } })] }), FitAspect.SensorChecks).State);
    }

    [Fact]
    public void An_idle_valve_fits_by_holes_passages_and_what_becomes_of_water()
    {
        var part = Part<IdleMeasures>("idle valve off the donor");
        var mount = Body.Openings.Idle!;
        FitState Of(IdleMeasures p, WaterUse? water = WaterUse.Capped, IdleMount? on = null) => Worst(IdleFit.Of(p, on ?? mount, water));
        Assert.Equal(FitState.Fits, Of(part));
        Assert.Equal(FitState.Fits, Of(part, WaterUse.Used));
        Assert.Equal(FitState.NotKnown, Of(part, null));
        Assert.Equal(FitState.Fits, Of(part, null, mount with { Water = [] }));
        Assert.Equal(FitState.NotKnown, Of(part, WaterUse.Used, mount with { Water = null }));
        Assert.Equal(FitState.DoesNotFit, Of(part with { Water = [] }, WaterUse.Used));
        Assert.Equal(FitState.NotKnown, Of(part with { Air = null }));
        Assert.Equal(FitState.DoesNotFit, Of(part with { Air = [part.Air!.Value[0]] }));
        Assert.Equal(FitState.DoesNotFit, Of(part with { Air = [.. part.Air.Value.Select(a => a with { Diameter = 12 })] }));
        Assert.Equal(FitState.DoesNotFit, Of(part with { Holes = part.Holes! with { At = [new(0, 0), new(39.5, 0)] } }));
        Assert.Equal(FitState.NotKnown, Of(part with { Holes = part.Holes with { PlusMinus = 0.3 } }));
        Assert.Equal(FitState.NotKnown, Of(part with { Holes = null }));

        // Half a turn lays the holes on each other, but the passages then lie on the other side of them.
        Assert.Equal(FitState.Fits, Of(part with { Holes = part.Holes with { At = [new(0, 0), new(-38, 0)] }, Air = [new(new(-10, -8), 9), new(new(-28, -8), 9)], Water = [] }));

        // With unlike passages a mirrored valve fits in no way, and the answer says that it was perhaps measured from its sealing face.
        var unlike = mount with { Air = [new(new(10, 8), 9), new(new(24, 8), 9)] };
        var mirrored = IdleFit.Of(part with { Air = [new(new(10, -8), 9), new(new(24, -8), 9)] }, unlike, WaterUse.Capped);
        Assert.Equal((FitState.DoesNotFit, true), (One(mirrored, FitAspect.Holes).State, One(mirrored, FitAspect.Holes).WouldTurnedOver));
    }

    [Fact]
    public void A_gasket_goes_on_either_side_up_and_stands_into_no_passage()
    {
        var part = Part<GasketMeasures>("idle gasket, cut from 0.8 mm paper");
        FitState Idle(GasketMeasures p, WaterUse? water = WaterUse.Capped) => Worst(GasketFit.OfIdle(p, Body.Openings.Idle, water));
        Assert.Equal(FitState.Fits, Idle(part));
        Assert.Equal(FitState.Fits, Idle(part with { Openings = [.. part.Openings!.Value.Select(o => o with { At = new(o.At.X, -o.At.Y) })] }));
        Assert.Equal(FitState.DoesNotFit, Idle(part with { Openings = [.. part.Openings.Value.Select(o => o with { Diameter = 8.5 })] }));
        Assert.Equal(FitState.DoesNotFit, Idle(part, WaterUse.Used));
        Assert.Equal(FitState.Fits, Idle(part with { Openings = part.Openings.Value.Add(new(new(19, -12), 7)) }, WaterUse.Used));
        Assert.Equal(FitState.Fits, Idle(part with { Openings = part.Openings.Value.Add(new(new(19, -12), 7)) }));
        Assert.Equal(FitState.NotKnown, Idle(part, null));
        Assert.Equal(FitState.NotKnown, Idle(part with { Openings = null }));
        var flange = Part<GasketMeasures>("gasket 58-66");
        FitState Flange(GasketMeasures p) => Worst(GasketFit.OfFlange(p, Body));
        Assert.Equal(FitState.Fits, Flange(flange));
        Assert.Equal(FitState.DoesNotFit, Flange(flange with { Openings = [new(default, 57)] }));
        Assert.Equal(FitState.DoesNotFit, Flange(flange with { Holes = flange.Holes! with { At = [.. flange.Holes.At.Select(h => new PatternPoint(1.05 * h.Vector))] } }));
    }

    // Nose 11.85, bore 12, groove 8.8: a gap of 1.6 mm for a ring of 2 mm that is stretched from 8.5 to 8.8 mm, and so 1.966 mm thick: 18.6 %.
    [Fact]
    public void The_ring_is_squeezed_as_the_gap_says()
    {
        var part = Part<PressureMeasures>("pressure sensor of the old manifold");
        ImmutableArray<FitFinding> Of(PressureMeasures p) => PressureFit.Of(p, Body.Openings.Pressure);
        Assert.Equal(FitState.Fits, Worst(Of(part)));
        Assert.Equal(1 - 1.6 / (2 / Math.Sqrt(8.8 / 8.5)), One(Of(part), FitAspect.RingSqueeze).Value!.Value, 1e-12);
        Assert.Equal(Math.PI / (1.6 * 2.7), One(Of(part), FitAspect.RingFill).Value!.Value, 1e-12);
        Assert.Equal(0.3 / 8.5, One(Of(part), FitAspect.RingStretch).Value!.Value, 1e-12);
        Assert.Equal(FitState.DoesNotFit, One(Of(part with { RingSection = 1.7 }), FitAspect.RingSqueeze).State);
        Assert.Equal(FitState.DoesNotFit, One(Of(part with { RingSection = 2.6 }), FitAspect.RingSqueeze).State);
        Assert.Equal(FitState.NotKnown, One(Of(part with { RingSection = new(1.85, 0.1) }), FitAspect.RingSqueeze).State);
        Assert.Equal(FitState.DoesNotFit, One(Of(part with { GrooveWidth = 2 }), FitAspect.RingFill).State);
        Assert.Equal(FitState.DoesNotFit, One(Of(part with { RingInside = 8.0 }), FitAspect.RingStretch).State);
        Assert.Equal(FitState.DoesNotFit, One(Of(part with { Nose = 12.1 }), FitAspect.NosePlay).State);
        Assert.Equal(FitState.NotKnown, One(Of(part with { RingInside = null }), FitAspect.RingSqueeze).State);
        Assert.Equal(FitState.DoesNotFit, One(Of(part with { Holes = part.Holes! with { At = [new(18, 0)] } }), FitAspect.Holes).State);
        Assert.Equal(FitState.Fits, One(Of(part with { Holes = part.Holes with { At = [new(0, -16)] } }), FitAspect.Holes).State);
        Assert.DoesNotContain(PressureFit.Of(part, Body.Openings.Pressure! with { Screws = new([], null) }), f => f.Aspect == FitAspect.Holes);
    }

    [Fact]
    public void Screws_hold_by_one_and_a_half_diameters_and_do_not_meet_the_bottom()
    {
        var holes = Body.Openings.Idle!.Screws!;
        ScrewMeasures Long(double length) => new(FastenerThread.Find("M5")!, length);
        FitState Of(double length, double? held, double? depth = 14, bool hasGasket = true) => Worst(ScrewFit.Of(Long(length), holes with { Depth = depth }, held, hasGasket));
        Assert.Equal(FitState.Fits, Of(16, 6));
        Assert.Equal(FitState.DoesNotFit, Of(14, 6));
        Assert.Equal(FitState.Fits, Of(14, 6, hasGasket: false));
        Assert.Equal(FitState.DoesNotFit, Of(22, 6));
        Assert.Equal(FitState.NotKnown, Of(16, null));
        Assert.Equal(FitState.NotKnown, Of(16, 6, depth: null));
    }

    // Over-travel 10 mm at a lever of 3.4: stopped with 0.5 to 4 mm left, the pad stands 9.5 to 6 mm of pull above the floor.
    [Fact]
    public void A_pedal_stop_stands_where_the_over_travel_is_as_wanted()
    {
        var wanted = PedalStopFit.Wanted(Kit.Job, 10)!.Value;
        Assert.Equal((6 * 3.4, 9.5 * 3.4), (wanted.Min, wanted.Max), new NearPair());
        Assert.Null(PedalStopFit.Wanted(Kit.Job, 3.9));
        Assert.Equal(FitState.Fits, Worst(PedalStopFit.Of(new(8, 25), wanted)));
        Assert.Equal(FitState.DoesNotFit, Worst(PedalStopFit.Of(new(8, 12), wanted)));
    }

    private sealed class NearPair : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) x, (double, double) y) => Math.Abs(x.Item1 - y.Item1) < 1e-9 && Math.Abs(x.Item2 - y.Item2) < 1e-9;

        public int GetHashCode((double, double) obj) => 0;
    }
}
