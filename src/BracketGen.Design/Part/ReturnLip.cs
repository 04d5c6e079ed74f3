using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Part;

/// <summary>A narrow flange bent up along one side of the stop flange, or of a flange before it: it stiffens that flange as an angle section.</summary>
/// <remarks>
/// The lip begins past the bend that carries the stop flange, so no relief is cut where the two would meet; the stop flange is
/// widened to carry it. Common practice, no source.
/// </remarks>
public static class ReturnLip
{
    private static readonly Angle Square = Angle.Right;

    /// <summary>Keeps the lip's line clear of what already touches it (mm), so that the edge between stays an edge, long enough to be rounded at both ends.</summary>
    private const double Clear = 1.5;

    /// <summary>Radius of the lip's free corners (mm).</summary>
    private const double Corner = BendMetal.Corner;

    /// <summary>The bracket with a lip on either side and bent either way, as far as it can be drawn; none on a flat plate, or where it has one.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="job">The job it is for.</param>
    public static IEnumerable<Bracket> On(Bracket bracket, Job job)
    {
        if (bracket.StopBend is null || bracket.Lip is not null || bracket.ReturnFlange is not null)
        {
            yield break;
        }

        foreach (var side in new[] { 1, -1 })
        {
            foreach (var up in new[] { true, false })
            {
                if (On(bracket, job, side, up) is { } stiffened)
                {
                    yield return stiffened;
                }
            }
        }
    }

    /// <summary>A bracket that is not drawn yet, with a lip on its stop flange; null on a flat plate, and where the stop flange is too short for one.</summary>
    /// <param name="plain">The bracket without.</param>
    /// <param name="rule">The bend rule of its die.</param>
    /// <param name="side">1 for the side that the stop's bend runs towards, -1 for the other.</param>
    /// <param name="up">Whether the lip is bent up.</param>
    internal static BracketDraft? On(BracketDraft plain, BendRule rule, int side, bool up)
    {
        var (sheet, flange) = (plain.Choice.Sheet, plain.Joints.Count);
        return flange == 0 || plain.LipHeight is not null
            ? null
            : With(plain, Beside(
                plain.Bends[flange - 1], flange, plain.Bends.Length + 1, plain.Stop, sheet.StopMetalRadius, sheet.Seat.RoomDiameter, plain.Choice, rule, side, up));
    }

    /// <summary>
    /// The same with a return flange along the side of a flange before the stop flange: along the neck of the mount flange, from its nearest bolt to the bend, or along the
    /// middle flange between two parallel bends. Null where that is too short for one, or has one.
    /// </summary>
    /// <param name="plain">The bracket without.</param>
    /// <param name="flange">The flange: 0 for the mount flange.</param>
    /// <param name="rule">The bend rule of its die.</param>
    /// <param name="side">1 for the side that the flange's own next bend runs towards, -1 for the other.</param>
    /// <param name="up">Whether it is bent up.</param>
    internal static BracketDraft? Along(BracketDraft plain, int flange, BendRule rule, int side, bool up)
    {
        if (flange >= plain.Joints.Count || plain.LipHeight is not null || plain.Bends[0].Relief > 0)
        {
            return null;
        }

        var (sheet, next, previous) = (plain.Choice.Sheet, plain.Bends[flange], flange > 0 ? plain.Bends[flange - 1] : null);
        if (previous is not null && Math.Abs(previous.Across.Dot(next.Across) - 1) > DesignTolerance.Cosine)
        {
            return null;
        }

        var outwards = side * next.Along;
        var from = Math.Max(next.Start.Vector.Dot(outwards), next.End.Vector.Dot(outwards));
        double near, neck;
        if (previous is not null)
        {
            from = Math.Max(from, Math.Max(previous.Start.Vector.Dot(outwards), previous.End.Vector.Dot(outwards)));
            near = next.Depth(previous.Start) + previous.Allowance + sheet.Straight + Clear;
            neck = near;
        }
        else
        {
            // Beside the nearest bolt, and clear of the sockets of all.
            (near, neck) = (double.NegativeInfinity, double.NegativeInfinity);
            foreach (var bolt in sheet.Bolts)
            {
                var depth = next.Depth(bolt.Centre);
                var more = Math.Abs(bolt.HalfTravel.Dot(next.Across));
                (near, neck) = (Math.Max(near, depth + more), Math.Max(neck, depth + more + bolt.MetalRadius));
                from = Math.Max(from, bolt.Centre.Vector.Dot(outwards) + Math.Abs(bolt.HalfTravel.Dot(outwards)) + Math.Max(bolt.MetalRadius, bolt.Thread!.SocketFor(bolt.Fixing.AcrossFlats(bolt.Thread)) / 2 - sheet.Straight));
            }
        }

        var far = -sheet.Straight - Clear;
        return far - neck < LeastLength(plain.Choice)
            ? null
            : With(plain, Strip(
                next, flange, plain.Bends.Length + 1, outwards, from + sheet.Straight + Clear, near, far, plain.Choice, rule, up));
    }

    private static BracketDraft? With(BracketDraft plain, (Bend Lip, double Height, IReadOnlyList<Disc> Metal)? added)
    {
        if (added is not var (lip, height, metal))
        {
            return null;
        }

        IReadOnlyList<Disc>[] discs = [.. plain.Discs, metal];
        Bend[] bends = [.. plain.Bends, lip];
        BendMetal.AddShoulders(discs, bends, bends.Length - 1, plain.Choice);
        return new()
        {
            Choice = plain.Choice,
            Joints = plain.Joints,
            Discs = discs,
            Bends = bends,
            Stop = plain.Stop,
            SeatOnTop = plain.SeatOnTop,
            LipHeight = height + plain.Choice.InsideRadius,
        };
    }

    private static Bracket? On(Bracket bracket, Job job, int side, bool up)
    {
        var (flat, stop) = (bracket.Flat, bracket.Stop);
        var sheet = new SheetOnMount(job.Body.Mount, job.Vehicle.Cable, job.Preferences, bracket.Stock, job.Shop.Rates);
        var choice = new BracketShape.Choice(sheet, new(Angle.Zero, bracket.FoldedSeat.Point, bracket.FoldedSeat.Normal, 0, 0, 0), bracket.Die) { InsideRadius = flat.Bends[0].InsideRadius, Press = job.Shop.Tools.Press ?? new() };
        var rule = job.Shop.RuleFor(bracket.Stock, choice.InsideRadius);
        if (Beside(bracket.StopBend!, stop.Flange, flat.FlangeCount, stop.Centre, stop.MetalRadius, bracket.Seat.RoomDiameter, choice, rule, side, up) is not var (lip, _, metal))
        {
            return null;
        }

        IReadOnlyList<Disc>[] discs =
        [
            .. Enumerable.Range(0, flat.FlangeCount).Select(f => bracket.Holes.Where(h => h.Flange == f).SelectMany(h => h.MetalDiscs()).ToList()),
            metal,
        ];
        discs[stop.Flange] = [.. discs[stop.Flange], .. BracketShape.MouthMetal(sheet, stop.Centre, bracket.StopBend!.Across)];
        Bend[] bends = [.. flat.Bends, lip];
        BendMetal.Add(discs, [.. flat.Bends], stop.Flange, choice);
        BendMetal.AddShoulders(discs, bends, bends.Length - 1, choice);
        return (bracket.SecondBend is not { } second || SecondFlange.IsApart(bends, discs, second.To)) && BlankOutline.Draw(bends, discs, sheet.Straight, job.Preferences.CornerRadius) is { } outline && BracketShape.WithSlot(outline, stop) is { } finished
            ? bracket with
            {
                Folded = new(new FlatPattern { Blank = new(finished, flat.Blank.Holes), Thickness = flat.Thickness, Bends = [.. bends] }, bracket.Folded.Flanges[0]),
                Plan = null,
            }
            : null;
    }

    // The lip's bend, its flat height past the bend, and what must have metal on it; null where the stop flange is too short.
    private static (Bend Lip, double Height, IReadOnlyList<Disc> Metal)? Beside(
        Bend root, int flange, int to, FlatPoint stop, double stopMetal, double roomDiameter, BracketShape.Choice choice, BendRule rule, int side, bool up)
    {
        var straight = choice.Sheet.Straight;
        var outwards = side * root.Along;

        // Where the lip's bend begins: clear of the stop's metal, of the spanner, and of the ends of the flange's own bend.
        var from = Math.Max(
            Math.Max(root.Start.Vector.Dot(outwards), root.End.Vector.Dot(outwards)),
            stop.Vector.Dot(outwards) + Math.Max(stopMetal, roomDiameter / 2 - straight)) + straight + Clear;
        double near = root.Allowance + straight + Clear, far = root.Depth(stop) + stopMetal;
        return far - near < LeastLength(choice) ? null : Strip(root, flange, to, outwards, from, near, far, choice, rule, up);
    }

    // The free edge is as long as a finger of the back gauge, and its ends are rounded.
    private static double LeastLength(BracketShape.Choice choice) => 2 * Corner + Math.Max(2 * Corner, choice.Press.FingerWidth + Tolerance.Point);

    // Outwards from a line so far out along a bend, from one depth past that bend to another.
    private static (Bend Lip, double Height, IReadOnlyList<Disc> Metal)? Strip(
        Bend root, int flange, int to, Vector2 outwards, double from, double near, double far, BracketShape.Choice choice, BendRule rule, bool up)
    {
        var (straight, thickness, radius) = (choice.Sheet.Straight, choice.Stock.Thickness, choice.InsideRadius);
        var turn = up ? Square : -Square;
        var allowance = rule.Allowance(turn, radius, thickness);
        if (!(allowance > 0))
        {
            return null;
        }

        FlatPoint At(double distance, double depth) =>
            root.Start + (distance - root.Start.Vector.Dot(outwards)) * outwards + depth * root.Across;

        // The strip lies to the left of its line: from start to end turns with the side.
        var (start, end) = outwards.Dot(root.Along) > 0 ? (At(from, far), At(from, near)) : (At(from, near), At(from, far));
        var lip = new Bend
        {
            From = flange, To = to, Start = start, End = end, Turn = turn, InsideRadius = radius, Allowance = allowance, Rule = rule,
        };

        // As high as die and back gauge need it to bend it, and no higher: setback (r + t) tan 45° and the flat part.
        var height = choice.Die is { } die
            ? Math.Max(
                straight + 2 * Corner,
                Math.Max(ShoulderSupport.LegNeeded(die, turn) - (radius + thickness) + Corner, Math.Max(die.BodyWidth / 2, choice.Press.GaugeMin) - allowance / 2 + Tolerance.Point))
            : straight + 2 * Corner;
        return (lip, height,
        [
            new(At(from + allowance + height - Corner, near + Corner).Vector, Corner),
            new(At(from + allowance + height - Corner, far - Corner).Vector, Corner),
        ]);
    }
}
