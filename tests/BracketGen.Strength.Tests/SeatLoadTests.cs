using BracketGen.Geometry;
using BracketGen.Strength.Parts;
using Xunit;

namespace BracketGen.Strength.Tests;

public sealed class SeatLoadTests
{
    [Fact]
    public void ResultantIsTheForceThroughTheCentre()
    {
        var part = LBracket.Part.Prepare(4, 2);
        var loads = SeatLoad.Spread(part.Flat, LBracket.Seat, LBracket.Force);
        var force = loads.Aggregate(Vector3.Zero, (s, l) => s + l.Force);
        var centre = LBracket.Fold(new(LBracket.Seat.Centre));
        var moment = loads.Aggregate(Vector3.Zero, (s, l) => s + (part.Model.Mesh.Nodes[l.Node] - centre).Cross(l.Force));
        Assert.True(force.DistanceTo(LBracket.Force) < 1e-9);
        Assert.True(moment.Length < 1e-8);
        Assert.All(loads, l => Assert.True(l.Force.Dot(LBracket.Force) > 0));
        Assert.All(loads, l => Assert.True(part.Flat.Nodes[l.Node].DistanceTo(new(LBracket.Seat.Centre)) < LBracket.Seat.Radius + 1e-6));
    }

    [Fact]
    public void SeatOffTheSheetIsRefused()
    {
        var part = LBracket.Part.Prepare(5, 3);
        Assert.Throws<ArgumentException>(() => SeatLoad.Spread(part.Flat, new(new(500, 0), 9), LBracket.Force));
    }

    [Fact]
    public void WasherInsideItsHoleIsRefused()
    {
        var part = LBracket.Part with { Washers = [new(new(-14, 0), 2), new(new(14, 0), 6)] };
        Assert.Throws<ArgumentException>(() => part.Prepare(5, 3));
    }

    [Fact]
    public void WasherThatOverhangsTheEdgeHoldsWhatItCovers()
    {
        // A larger washer holds more: the part gets no softer, and 14 mm reaches over three edges and into the other washer.
        var large = LBracket.Part with { Washers = [new(new(-14, 0), 14.5), new(new(14, 0), 14.5)] };
        var (few, many) = (LBracket.Part.Prepare(4, 2).Under(LBracket.Force), large.Prepare(4, 2).Under(LBracket.Force));
        Assert.InRange(many.AlongForce, 0.5 * few.AlongForce, 0.95 * few.AlongForce);
    }

    [Fact]
    public void ReactionsAtTheWashersCarryTheForce()
    {
        var solution = LBracket.Part.Prepare(4, 2).Under(LBracket.Force).Solution;
        var sum = solution.Reactions.Aggregate(Vector3.Zero, (s, r) => s + r.Force);
        Assert.True(sum.DistanceTo(-LBracket.Force) < 1e-6);
    }
}
