using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Words.Checks;

namespace BracketGen.Design.Tests;

/// <summary>The fitting in its pocket, the wire in groove and outer: each case passed before these checks were made.</summary>
public class PocketTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");

    // A barrel of 6 by 8, a slot of 2.2; a bore of 7.2, 8.2 deep, along the shaft.
    [Fact]
    public void The_shipped_pocket_holds_its_fitting()
    {
        var checks = With(Plover.Body.Quadrant.PocketShape);
        Assert.Equal(1.2, checks[CheckId.PocketPlay].Value, 9);
        Assert.Equal(3.8, checks[CheckId.PocketHold].Value, 9);
        Assert.Equal(0.2, checks[CheckId.PocketDepth].Value, 9);
        Assert.All(checks.Values, c => Assert.True(c.Passes, c.Code));
    }

    [Fact]
    public void A_pocket_that_was_not_measured_is_not_known()
    {
        var checks = With(null);
        foreach (var id in (CheckId[])[CheckId.PocketShape, CheckId.PocketPlay, CheckId.PocketHold, CheckId.PocketTurn, CheckId.PocketDepth])
        {
            Assert.Equal(CheckState.NotKnown, checks[id].State);
            Assert.Contains("[quadrant.pocket]", checks[id].Consequence(), StringComparison.Ordinal);
        }

        Assert.Equal(VerdictKind.NotProven, Verdict.Of(checks.Values).Kind);
    }

    [Theory]
    [InlineData(CheckId.PocketShape, CheckKind.Function, PocketKind.Socket, 7.2, 8.2, true, 2.2)] // A barrel in a ball's socket.
    [InlineData(CheckId.PocketPlay, CheckKind.Function, PocketKind.Bore, 6.05, 8.2, true, 2.2)] // It goes in, but jams.
    [InlineData(CheckId.PocketHold, CheckKind.Safety, PocketKind.Bore, 7.2, 8.2, true, 5.2)] // It slips out through the slot.
    [InlineData(CheckId.PocketTurn, CheckKind.Safety, PocketKind.Bore, 7.2, 8.2, false, 2.2)] // Its axis lies across the shaft.
    [InlineData(CheckId.PocketDepth, CheckKind.Safety, PocketKind.Bore, 7.2, 7.5, true, 2.2)] // It sticks out.
    public void What_is_wrong_with_a_pocket_is_found(CheckId id, CheckKind kind, PocketKind pocket, double width, double depth, bool along, double slot)
    {
        var checks = With(new(pocket, width, width, depth, along), slot);
        Assert.True(checks[id].Fails);
        Assert.Equal(kind, checks[id].Kind);
    }

    // The narrowest slot that a cylinder slips through is as wide as its diameter or its length, whichever is less.
    [Theory]
    [InlineData(EndFittingKind.Barrel, 6, 8, 6)]
    [InlineData(EndFittingKind.Barrel, 6, 4, 4)]
    [InlineData(EndFittingKind.Ball, 5, 5, 5)]
    [InlineData(EndFittingKind.Nipple, 5, 7, 5)]
    public void The_narrowest_slot(EndFittingKind kind, double diameter, double length, double slot) =>
        Assert.Equal(slot, new EndFitting(kind, diameter, length).LeastWidth);

    [Theory]
    [InlineData(EndFittingKind.Ball, PocketKind.Bore, true, true)] // A ball turns in a bore, whichever way that lies.
    [InlineData(EndFittingKind.Ball, PocketKind.Bore, false, true)]
    [InlineData(EndFittingKind.Barrel, PocketKind.Bore, false, false)]
    [InlineData(EndFittingKind.Nipple, PocketKind.Recess, false, false)]
    public void What_turns(EndFittingKind fitting, PocketKind pocket, bool along, bool turns) =>
        Assert.Equal(turns, new FittingInPocket(new(fitting, 6, 7), new(pocket, 9, 9, 9, along)).LetsTurn);

    // Machinery's Handbook, minimum sheave diameters, from memory: 42 for 6x7 and 34 for 6x19. By hand: (2 x 31.5 - 1.5) / 1.5 = 41.
    [Theory]
    [InlineData(WireConstruction.SevenByNineteen, 34, true)]
    [InlineData(WireConstruction.SevenBySeven, 42, false)]
    [InlineData(WireConstruction.OneStrand, 75.6, false)]
    [InlineData(WireConstruction.Single, 378, false)]
    public void The_wire_over_its_groove(WireConstruction construction, double limit, bool passes)
    {
        var cable = Plover.Vehicle.Cable with { Construction = construction };
        var check = Of(Plover with { Vehicle = Plover.Vehicle with { Cable = cable } })[CheckId.WireBend];
        Assert.Equal(41, check.Value, 9);
        Assert.Equal(limit, check.Limit, 9);
        Assert.Equal(passes, check.Passes);
        Assert.Equal(CheckKind.Advice, check.Kind);
    }

    // The tightest place of an eccentric circle is as round as all of it.
    [Fact]
    public void The_smallest_radius_of_a_groove_that_is_not_round_counts()
    {
        var rowan = Examples.Read("dunlin-rowan-64");
        Assert.Equal((2 * 32.5 - 1.5) / 1.5, Of(rowan)[CheckId.WireBend].Value, 6);
    }

    [Fact]
    public void A_groove_or_an_outer_unlike_the_wire_is_advice()
    {
        var quadrant = Plover.Body.Quadrant with { GrooveWidth = 6, Thickness = 12 };
        var loose = Of(Plover with { Body = Plover.Body with { Quadrant = quadrant } })[CheckId.GrooveLoose];
        Assert.True(loose.Fails);
        Assert.Equal(CheckKind.Advice, loose.Kind);

        ILookup<CheckId, Check> Bore(double? bore) => Of(Plover with { Vehicle = Plover.Vehicle with { Cable = Plover.Vehicle.Cable with { OuterBore = bore } } }).Values.ToLookup(c => c.Id);
        Assert.True(Bore(1.6)[CheckId.OuterBoreTight].Single().Fails);
        Assert.True(Bore(3)[CheckId.OuterBoreLoose].Single().Fails);
        Assert.Equal(CheckState.NotKnown, Bore(null)[CheckId.OuterBoreLoose].Single().State);
        Assert.All(Bore(2.1)[CheckId.OuterBoreTight].Concat(Bore(2.1)[CheckId.OuterBoreLoose]), c => Assert.True(c.Passes));
    }

    private static Dictionary<CheckId, Check> With(FittingPocket? pocket, double slot = 2.2) =>
        Of(Plover with { Body = Plover.Body with { Quadrant = Plover.Body.Quadrant with { PocketShape = pocket, SlotWidth = slot } } });

    private static Dictionary<CheckId, Check> Of(Job job) => PocketChecks
        .Of(job.OpeningCounterClockwise().Body.Quadrant, job.Vehicle.Cable, Designer.CheckTravel(job with { Bulkhead = null }).Travel.Sweep)
        .ToDictionary(c => c.Id);
}
