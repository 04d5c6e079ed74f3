using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;

namespace BracketGen.Mechanism.Tests;

/// <summary>The wire's lay in the outer's bore.</summary>
public class WireLayTests
{
    // The shortest string through a tube: tangents from its ends to a circle of radius R - c, and the arc between them (elementary geometry).
    private static double ShortestString(double radius, double clearance, double straight, double bend)
    {
        double inner = radius - clearance, fromCentre = Math.Sqrt(radius * radius + straight * straight);
        var wrapped = bend + 2 * Math.Atan2(straight, radius) - 2 * Math.Acos(inner / fromCentre);
        return 2 * Math.Sqrt(fromCentre * fromCentre - inner * inner) + inner * wrapped;
    }

    [Theory]
    [InlineData(60, 0.3, 1, 1.2)]
    [InlineData(100, 0.5, 0.5, 2.5)]
    [InlineData(200, 0.25, 1.5, 1.4)]
    public void The_shortest_string_in_a_tube_changes_by_clearance_times_bend(double radius, double clearance, double before, double after)
    {
        double Less(double bend) => 2 * 150 + radius * bend - ShortestString(radius, clearance, 150, bend);
        Assert.Equal(Math.Abs(Less(after) - Less(before)), WireLay.Taut(clearance, new(after - before)), 1e-9);
    }

    [Fact]
    public void A_slack_wire_may_lie_on_either_side()
    {
        Assert.Equal(0.3, WireLay.Clearance(2.1, 1.5), 1e-12);
        Assert.Equal(0.6, WireLay.Slack(0.3, new Angle(-1)), 1e-12);
    }
}
