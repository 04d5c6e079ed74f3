using BracketGen.Geometry;
using BracketGen.SheetMetal;

namespace BracketGen.Design;

/// <summary>The ways in which one sheet, bent once or twice, gets from the mount face to the stop.</summary>
internal static class Layouts
{
    private static readonly bool[] Both = [true, false];

    /// <summary>A chain of bends, and the side of the sheet on which the seat comes to lie.</summary>
    public readonly record struct Chain(IReadOnlyList<Joint> Joints, bool SeatOnTop);

    /// <summary>Whether the stop's face lies in the mount flange's own plane, so that a flat plate will do.</summary>
    public static bool IsLevel(Frame mount, Plane stopBottom) =>
        stopBottom.Normal.Dot(mount.Z) > 1 - 1e-12 && Math.Abs(mount.ToLocal(stopBottom.Point).Z) < Tolerance.Point;

    /// <summary>One bend: it turns up or down, and the seat is on the sheet's top or bottom.</summary>
    public static IEnumerable<Chain> OneBend(BracketShape.Choice choice, Frame mount, BendRule rule)
    {
        foreach (var seatOnTop in Both)
        {
            var bottom = BracketShape.StopBottom(choice.Placement, choice.Stock.Thickness, seatOnTop);
            foreach (var up in Both)
            {
                if (Joint.Between(mount, bottom, up, choice.Stock.Thickness, choice.Die!.InsideRadius, rule) is { } joint)
                {
                    yield return new([joint], seatOnTop);
                }
            }
        }
    }

    /// <summary>Two bends with a middle flange, as near to the bolts or to the stop as its bends allow.</summary>
    public static IEnumerable<Chain> TwoBends(BracketShape.Choice choice, Frame mount, BendRule rule)
    {
        var seat = choice.Placement.Seat;
        var centre = 1.0 / choice.Mount.Holes.Length * choice.Mount.Holes.Aggregate(Vector3.Zero, (sum, h) => sum + h.At);
        foreach (var facing in MiddlePlanes.Of(mount.Z, choice.Placement.Direction, seat - centre))
        {
            foreach (var top in new[] { facing, -facing })
            {
                foreach (var firstUp in Both)
                {
                    foreach (var chain in Through(choice, mount, rule, top, firstUp))
                    {
                        yield return chain;
                    }
                }
            }
        }
    }

    private static IEnumerable<Chain> Through(BracketShape.Choice choice, Frame mount, BendRule rule, Vector3 top, bool firstUp)
    {
        var (thickness, radius) = (choice.Stock.Thickness, choice.Die!.InsideRadius);
        var straight = BracketShape.StraightBesideBend(thickness);
        Joint? First(double shift) => Joint.Between(mount, new(mount.Origin + shift * top, top), firstUp, thickness, radius, rule);
        if (First(0) is not { } atOrigin || First(1) is not { } shifted)
        {
            yield break;
        }

        // Where the first bend comes to lie moves evenly with the middle plane: just clear of the bolts is where it costs least.
        double Near(Joint joint) => joint.Point.Dot(joint.Across);
        var pace = Near(shifted) - Near(atOrigin);
        if (Math.Abs(pace) < 1e-9)
        {
            yield break;
        }

        // The first joint just clear of the bolts is the same whichever way the second turns: it is made when first asked for.
        Joint? clearOfBolts = null;
        var clear = choice.Mount.Holes.Max(h => mount.ToLocal(h.At).XY.Dot(atOrigin.Across) + BracketShape.BoltMetalRadius(h)) + straight;
        var byBolts = (clear - Near(atOrigin)) / pace;
        foreach (var seatOnTop in Both)
        {
            var bottom = BracketShape.StopBottom(choice.Placement, thickness, seatOnTop);
            foreach (var secondUp in Both)
            {
                // And the stop's distance past the second bend likewise.
                double? Past(Joint one) => Joint.Between(one.Next, bottom, secondUp, thickness, radius, rule) is { } two
                    ? (two.Next.ToLocal(choice.Placement.Seat).XY - two.Point).Dot(two.Across) - two.Allowance
                    : null;
                if (Past(atOrigin) is not { } past || Past(shifted) is not { } pastShifted)
                {
                    continue;
                }

                var needed = StopSeat.For(choice.Cable, choice.Preferences.StopOpening, thickness).MetalRadius(thickness) + straight;
                if (past + byBolts * (pastShifted - past) >= needed - 1e-9)
                {
                    yield return Chained(clearOfBolts ??= First(byBolts)!, seatOnTop, bottom, secondUp);
                }

                if (Math.Abs(pastShifted - past) > 1e-9)
                {
                    var byStop = (needed - past) / (pastShifted - past);
                    if (Near(atOrigin) + byStop * pace > clear + 1e-6)
                    {
                        yield return Chained(First(byStop)!, seatOnTop, bottom, secondUp);
                    }
                }
            }
        }

        Chain Chained(Joint one, bool seatOnTop, Plane bottom, bool secondUp) =>
            new([one, Joint.Between(one.Next, bottom, secondUp, thickness, radius, rule)!], seatOnTop);
    }

    /// <summary>
    /// Whether bolts and stop lie clear of the bends' lines, which no width of the bends changes: without it
    /// <see cref="BlankOutline.KeepApart"/> turns down every bracket over the chain. Quick.
    /// </summary>
    /// <param name="choice">What was chosen before.</param>
    /// <param name="bolts">What must have metal around the bolts, flat coordinates (mm).</param>
    /// <param name="chain">The bends.</param>
    public static bool IsClear(BracketShape.Choice choice, IReadOnlyList<Disc> bolts, Chain chain)
    {
        const double slack = 1e-9;
        var thickness = choice.Stock.Thickness;
        var straight = BracketShape.StraightBesideBend(thickness);
        var first = chain.Joints[0];
        foreach (var bolt in bolts)
        {
            if ((bolt.Centre - first.Point).Dot(first.Across) + bolt.Radius > -straight + slack)
            {
                return false;
            }
        }

        var stop = chain.Joints[^1].Next.ToLocal(choice.Placement.Seat).XY;
        var metal = StopSeat.For(choice.Cable, choice.Preferences.StopOpening, thickness).MetalRadius(thickness);
        foreach (var joint in chain.Joints)
        {
            if ((stop - joint.Point).Dot(joint.Across) - metal < joint.Allowance + straight - slack)
            {
                return false;
            }
        }

        return true;
    }
}
