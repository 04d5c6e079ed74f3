using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Part;

/// <summary>The ways in which one sheet, bent once or twice, gets from the mount face to the stop.</summary>
internal static class Layouts
{
    private static readonly bool[] Both = [true, false];

    // So that what just clears the die passes its check however the last digits fall (mm).
    private const double LineRounding = 1e-6;

    /// <summary>A chain of bends, and the side of the sheet on which the seat comes to lie.</summary>
    public readonly record struct Chain(IReadOnlyList<Joint> Joints, bool SeatOnTop);

    /// <summary>Whether the stop's face lies in the mount flange's own plane, so that a flat plate will do.</summary>
    public static bool IsLevel(Frame mount, Plane stopBottom) =>
        stopBottom.Normal.Dot(mount.Z) > 1 - DesignTolerance.Cosine && Math.Abs(mount.ToLocal(stopBottom.Point).Z) < Tolerance.Point;

    /// <summary>One bend: it turns up or down, and the seat is on the sheet's top or bottom.</summary>
    public static IEnumerable<Chain> OneBend(BracketShape.Choice choice, Frame mount, BendRule rule)
    {
        foreach (var seatOnTop in Both)
        {
            var bottom = BracketShape.StopBottom(choice.Placement, choice.Stock.Thickness, seatOnTop);
            foreach (var up in Both)
            {
                if (Joint.Between(mount, bottom, up, choice.Stock.Thickness, choice.InsideRadius, rule) is { } joint)
                {
                    yield return new([joint], seatOnTop);
                }
            }
        }
    }

    /// <summary>Two bends with a middle flange, as near to the bolts or to the stop as its bends allow.</summary>
    /// <param name="choice">What was chosen before.</param>
    /// <param name="mount">The mount flange's frame.</param>
    /// <param name="rule">The bend rule.</param>
    /// <param name="bound">Leaves out chains that cost too much; null leaves out none.</param>
    public static IEnumerable<Chain> TwoBends(BracketShape.Choice choice, Frame mount, BendRule rule, TwoBendBound? bound = null)
    {
        var seat = choice.Placement.Seat;
        var holes = choice.Sheet.Mount.OwnHoles;
        var centre = 1.0 / holes.Length * holes.Aggregate(Vector3.Zero, (sum, h) => sum + h.At.Vector);
        var stand = mount.ToLocal(seat.Vector);
        var chains = new List<Chain>();
        foreach (var facing in MiddlePlanes.Of(mount.Z, choice.Placement.Direction, seat.Vector - centre))
        {
            var angles = bound?.Angles(mount.Z, facing, choice.Placement.Direction) ?? 0;
            if (bound?.Allows(angles, choice.Sheet.Straight, stand.Z, NeededPast(choice.Sheet)) == false)
            {
                continue;
            }

            foreach (var top in (ReadOnlySpan<Vector3>)[facing, -facing])
            {
                foreach (var firstUp in Both)
                {
                    Through(choice, mount, rule, top, firstUp, stand, angles, bound, chains);
                }
            }
        }

        return chains;
    }

    // From the last bend to the stop's centre, at least, whatever the die.
    private static double NeededPast(SheetOnMount sheet) => sheet.StopMetalRadius + sheet.Straight;

    // From the beginning of a bend to a hole's edge (mm), at least: where the sheet lies on the die.
    private static double NeededToHole(BracketShape.Choice choice, Angle turn, double allowance) => choice.Die is { } die
        ? HoleOverDie.LimitOf(turn, choice.InsideRadius, allowance, die, choice.Stock.Thickness) - allowance / 2 : 0;

    private static void Through(
        BracketShape.Choice choice, Frame mount, BendRule rule, Vector3 top, bool firstUp, Vector3 stand, double angles, TwoBendBound? bound, List<Chain> chains)
    {
        var (thickness, radius) = (choice.Stock.Thickness, choice.InsideRadius);
        if (Joint.Between(mount, new(mount.Origin, top), firstUp, thickness, radius, rule) is not { } atOrigin)
        {
            return;
        }

        // Where the first bend comes to lie moves evenly with the middle plane: just clear of the bolts is where it costs least.
        var (sin, cos) = Math.SinCos(atOrigin.Turn.Radians);
        double near = atOrigin.Point.Vector.Dot(atOrigin.Across), pace = -1 / sin;
        var metal = choice.Sheet.BoltMetal.Max(b => b.Centre.Dot(atOrigin.Across) + b.Radius);
        var toHole = NeededToHole(choice, atOrigin.Turn, atOrigin.Allowance) + LineRounding;
        var clear = Math.Max(metal + choice.Sheet.Straight, choice.Sheet.Bolts.Max(b => b.Centre.Vector.Dot(atOrigin.Across) + b.Reach) + toHole);
        var byBolts = (clear - near) / pace;
        var seat = atOrigin.Next.ToLocal(choice.Placement.Seat.Vector);

        // How all that stands still moves in the middle flange's coordinates as the plane moves by a millimetre.
        var drift = pace * Vector3.From((1 - cos) * atOrigin.Across, sin);

        // Along the first bend nothing is known of the seat's distance from its middle.
        var ahead = stand.XY.Dot(atOrigin.Across);
        bool MayDo(double free, double past) =>
            bound?.Allows(angles, free, double.Hypot(ahead - (metal + free), stand.Z), past) != false;

        // The first joint just clear of the bolts is the same whichever way the second turns: it is made when first asked for.
        Joint? clearOfBolts = null;
        foreach (var seatOnTop in Both)
        {
            var bottom = BracketShape.StopBottom(choice.Placement, thickness, seatOnTop);
            foreach (var secondUp in Both)
            {
                if (Joint.Section.Between(atOrigin.Next, bottom, secondUp, thickness, radius) is not { } second)
                {
                    continue;
                }

                var turn = new Angle(Math.Atan2(second.Sin, second.Cos));
                var needed = Math.Max(
                    NeededPast(choice.Sheet),
                    choice.Sheet.Seat.Reach + NeededToHole(choice, turn, rule.Allowance(turn, radius, thickness)) + LineRounding);

                // The stop's distance past the second bend moves evenly with the middle plane too.
                var past = second.Past(seat);
                var growth = second.Past(seat + drift, drift) - past;
                if (past + byBolts * growth >= needed - Tolerance.OnLimit && MayDo(clear - metal, past + byBolts * growth))
                {
                    Add(choice, rule, clearOfBolts ??= atOrigin.MovedOut(mount, byBolts), seatOnTop, bottom, secondUp, chains);
                }

                if (Math.Abs(growth) > DesignTolerance.StandsStill)
                {
                    var byStop = (needed - past) / growth;
                    var free = near + byStop * pace - metal;
                    if (free > clear - metal + DesignTolerance.SamePlace && MayDo(free, needed))
                    {
                        Add(choice, rule, atOrigin.MovedOut(mount, byStop), seatOnTop, bottom, secondUp, chains);
                    }
                }
            }
        }
    }

    private static void Add(
        BracketShape.Choice choice, BendRule rule, Joint one, bool seatOnTop, Plane bottom, bool secondUp, List<Chain> chains)
    {
        if (Joint.Between(one.Next, bottom, secondUp, choice.Stock.Thickness, choice.InsideRadius, rule) is { } two)
        {
            chains.Add(new([one, two], seatOnTop));
        }
    }

    /// <summary>
    /// Whether bolts and stop lie clear of the bends' lines, which no width of the bends changes: without it
    /// <see cref="BlankOutline.KeepApart"/> turns down every bracket over the chain. Quick.
    /// </summary>
    /// <param name="choice">What was chosen before.</param>
    /// <param name="chain">The bends.</param>
    public static bool IsClear(BracketShape.Choice choice, Chain chain) => BoltsAreClear(choice, chain) && StopIsClear(choice, chain);

    /// <summary>Whether a chain of one bend has bolts beyond its line, and its stop clear of it: the flange may stand in a notch between them.</summary>
    /// <param name="choice">What was chosen before.</param>
    /// <param name="chain">The bend.</param>
    public static bool IsAmongBolts(BracketShape.Choice choice, Chain chain) =>
        chain.Joints.Count == 1 && !BoltsAreClear(choice, chain) && StopIsClear(choice, chain);

    private static bool BoltsAreClear(BracketShape.Choice choice, Chain chain)
    {
        var first = chain.Joints[0];
        foreach (var bolt in choice.Sheet.BoltMetal)
        {
            if ((bolt.Centre - first.Point.Vector).Dot(first.Across) + bolt.Radius > -choice.Sheet.Straight + Tolerance.OnLimit)
            {
                return false;
            }
        }

        return true;
    }

    private static bool StopIsClear(BracketShape.Choice choice, Chain chain)
    {
        var stop = chain.Joints[^1].Next.ToFlat(choice.Placement.Seat);
        foreach (var joint in chain.Joints)
        {
            if ((stop - joint.Point).Dot(joint.Across) - choice.Sheet.StopMetalRadius < joint.Allowance + choice.Sheet.Straight - Tolerance.OnLimit)
            {
                return false;
            }
        }

        return true;
    }
}
