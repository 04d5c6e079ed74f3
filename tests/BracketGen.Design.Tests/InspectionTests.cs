using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Geometry;

namespace BracketGen.Design.Tests;

/// <summary>A finished bracket, measured.</summary>
public class InspectionTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");
    private static readonly Solution Drawn = Designer.Solve(Plover);

    private static Dictionary<string, double> Readings(Job job, Bracket bracket) => Inspection.ItemsOf(job, bracket).ToDictionary(i => i.Name, i => i.Nominal);

    private static Inspection Measured(Solution drawn, Bracket made) => Inspection.Of(drawn, Readings(drawn.Job, made), 0.1, null);

    [Theory]
    [MemberData(nameof(Examples.Names), MemberType = typeof(Examples))]
    public void What_is_measured_as_drawn_is_as_drawn_and_stands_where_it_was_designed(string name)
    {
        var solution = Designer.Solve(Examples.Read(name));
        var inspection = Measured(solution, solution.Bracket!);
        Assert.True(inspection.IsAsDrawn);
        Assert.Equal(0, inspection.Position!.Value.Found, 1e-9);
        var (seat, normal) = solution.Bracket!.FoldedSeat;
        var (found, facing) = inspection.OnVehicle!.Bracket!.FoldedSeat;
        Assert.Equal(0, found.DistanceTo(seat), 1e-9);
        Assert.Equal(1, facing.Dot(normal), 1e-12);

        // The mechanism sees the same place: the adjuster stands where the search set it.
        Assert.Equal(solution.Placement!.AdjusterShift, inspection.OnVehicle.Placement!.AdjusterShift, 1e-6);
    }

    // What the shop may do otherwise is folded by itself; the readings are taken off that part, and the seat must be found where that part has it.
    [Fact]
    public void A_part_made_otherwise_is_found_where_its_seat_is()
    {
        var bracket = Drawn.Bracket!;
        var made = 0;
        foreach (var (name, step, plusMinus, part) in SeatTolerances.Deviations(bracket, Plover.Shop.Process, Plover.Vehicle.Cable.OuterEnd))
        {
            var inspection = Measured(Drawn, part);
            var (seat, normal) = part.FoldedSeat;
            var (found, facing) = inspection.OnVehicle!.Bracket!.FoldedSeat;
            Assert.True(found.DistanceTo(seat) < 1e-9, name);
            Assert.True(1 - facing.Dot(normal) < 1e-12, name);
            Assert.True(plusMinus > step && inspection.IsAsDrawn, name);
            made++;
        }

        Assert.True(made >= 5);
    }

    // By hand: a stop 2 mm to the left of its place lies within a diameter of 4 mm; 2 mm along the seat's normal, within a width of 4 mm.
    [Fact]
    public void Off_its_place_it_is_not_as_drawn_and_the_vehicle_is_told_where_it_is()
    {
        var (readings, items) = (Readings(Plover, Drawn.Bracket!), Inspection.ItemsOf(Plover, Drawn.Bracket!));
        var along = items.Single(i => i.Thing == InspectedThing.StopAlong);
        readings[along.Name] += 2;
        var inspection = Inspection.Of(Drawn, readings, 0.1, null);
        Assert.False(inspection.IsAsDrawn);
        var off = Math.Sqrt(Math.Pow(inspection.Position!.Value.Found, 2) + Math.Pow(inspection.Profile!.Value.Found, 2));
        Assert.Equal(4, off, 1e-9);
        Assert.Equal(2, inspection.OnVehicle!.Bracket!.FoldedSeat.Point.DistanceTo(Drawn.Bracket!.FoldedSeat.Point), 1e-9);
    }

    // The wire runs along the seat's normal: a seat 9 mm nearer leaves so much more slack, which the adjuster of 6 mm either way cannot take up.
    [Fact]
    public void A_seat_far_too_near_fails_on_the_vehicle_and_a_little_off_passes_though_it_is_not_as_drawn()
    {
        var items = Inspection.ItemsOf(Plover, Drawn.Bracket!);
        var flange = Drawn.Bracket!.Folded.Flanges[0];
        var normal = Drawn.Bracket.FoldedSeat.Normal;
        Solution At(double off, out bool isAsDrawn)
        {
            var bolts = Drawn.Bracket!.Holes;
            var x = flange.ToWorldDirection(Vector3.From(bolts[1].Centre - bolts[0].Centre)).Unit;
            var datums = Frame.FromZX(Vector3.Zero, flange.Z, x);
            var by = datums.ToLocalDirection(off * normal);
            var readings = items.ToDictionary(i => i.Name, i => i.Nominal + (i.Thing switch
            {
                InspectedThing.StopAlong => by.X,
                InspectedThing.StopAcross => by.Y,
                InspectedThing.StopHeight => by.Z,
                _ => 0,
            }));
            var inspection = Inspection.Of(Drawn, readings, 0.1, null);
            isAsDrawn = inspection.IsAsDrawn;
            return inspection.OnVehicle!;
        }

        var near = At(0.6, out var nearIsAsDrawn);
        Assert.False(nearIsAsDrawn);
        Assert.DoesNotContain(near.Checks, c => c.Fails && c.Kind != CheckKind.Advice);
        var far = At(-9, out _);
        Assert.Contains(far.Checks, c => c.Fails && c.Kind != CheckKind.Advice);
    }

    [Fact]
    public void Readings_of_nothing_and_half_a_place_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Inspection.Of(Drawn, new Dictionary<string, double> { ["D99"] = 1 }, 0.1, null));
        var x = Inspection.ItemsOf(Plover, Drawn.Bracket!).Single(i => i.Thing == InspectedThing.StopAlong);
        Assert.Throws<ArgumentException>(() => Inspection.Of(Drawn, new Dictionary<string, double> { [x.Name] = x.Nominal }, 0.1, null));
        Assert.False(Inspection.IsOf(x, x.Nominal + 11));
        Assert.True(Inspection.IsOf(x, x.Nominal - 9));
    }
}
