using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Forming;

/// <summary>The search for the best order of the bends of one part.</summary>
/// <remarks>What is in the way of a bend depends on which bends are made before it, not on their order: each such case is tried once.</remarks>
internal sealed class BendOrder
{
    private readonly SimulatedPart _part;
    private readonly Stock _stock;
    private readonly ImmutableArray<Tool> _tools;
    private readonly SlabMeeting _meeting;
    private readonly Dictionary<(int Made, int Bend, int Tool), Attempt> _attempts = [];

    public BendOrder(SimulatedPart part, Stock stock, ImmutableArray<PressBrakeDie> dies, ToolSet tools)
    {
        (_part, _stock) = (part, stock);
        _meeting = new(2 * part.Polygons.Max(p => p.Length) + 16);
        _tools =
        [
            .. tools.Press is { } press
                ? tools.Punches.OrderBy(p => !p.IsSymmetric).SelectMany(p => dies
                    .Where(d => part.Flat.Bends.Any(b => Gives(d.InsideRadiusIn(stock.Material.BendGroup), b)))
                    .Select(d => new Tool(press, d, p, null)))
                : Enumerable.Empty<Tool>(),
            .. tools.Clamps.Where(c => part.Flat.Bends.Any(b => Gives(c.Radius, b))).Select(c => new Tool(null, null, null, c)),
        ];
    }

    // A press brake with die and punch, or a clamp.
    private sealed record Tool(PressBrake? Press, PressBrakeDie? Die, Punch? Punch, BendingClamp? Clamp);

    // How one bend went with one tool: a step, or what was in the way.
    private sealed record Attempt(BendStep? Step, BendObstacle? Obstacle);

    public BendResult Find()
    {
        var count = _part.Flat.Bends.Length;
        if (count == 0)
        {
            return new(new(_part, []), []);
        }

        // One tool for all bends first; only if there is none, a change of tools.
        for (var tool = 0; tool < _tools.Length; tool++)
        {
            if (Best([], [tool]).Steps is { } steps)
            {
                return new(new(_part, [.. steps]), []);
            }
        }

        return count > 1 && _tools.Length > 1 && Best([], [.. Enumerable.Range(0, _tools.Length)]).Steps is { } mixed
            ? new(new(_part, [.. mixed]), [])
            : new(null, Obstacles());
    }

    // The cheapest way to make what is left; null if there is none.
    private (List<BendStep>? Steps, double Cost) Best(List<int> made, int[] tools)
    {
        var bends = _part.Flat.Bends;
        if (made.Count == bends.Length)
        {
            return ([], 0);
        }

        (List<BendStep>? Steps, double Cost) best = (null, double.PositiveInfinity);
        for (var bend = 0; bend < bends.Length; bend++)
        {
            if (made.Contains(bend))
            {
                continue;
            }

            foreach (var tool in tools)
            {
                if (Try(made, bend, tool).Step is not { } step || Cost(step) >= best.Cost)
                {
                    continue;
                }

                var rest = Best([.. made, bend], tools);
                if (rest.Steps is { } later)
                {
                    var cost = Cost(step) + rest.Cost + (later.Count > 0 ? Change(step, later[0]) : 0);
                    if (cost < best.Cost)
                    {
                        best = ([step, .. later], cost);
                    }

                    if (cost == 0)
                    {
                        return best;
                    }
                }
            }
        }

        return best;
    }

    // What makes an order worse, in the trade's order of dislike (common practice, no source): a scribed line, a change of tools, two points, legs
    // off the shoulder, tools made up to length, turning the sheet over.
    private static double Cost(BendStep step) =>
        (step.Gauge.Kind switch { GaugeKind.ScribedLine => 8, GaugeKind.TwoPoints => 2, _ => 0 }) + (step.Support is { } support && !support.Suffices() ? 2 : 0)
        + (step.ToolLength is null ? 0 : 1);

    private static double Change(BendStep step, BendStep next) =>
        (step.TopUp != next.TopUp ? 1 : 0) + (Equals(step.Die, next.Die) && Equals(step.Punch, next.Punch) && Equals(step.Clamp, next.Clamp) ? 0 : 4);

    private Attempt Try(List<int> made, int bend, int tool)
    {
        var key = (made.Aggregate(0, (mask, b) => mask | 1 << b), bend, tool);
        if (!_attempts.TryGetValue(key, out var attempt))
        {
            attempt = _attempts[key] = _tools[tool].Clamp is { } clamp ? OverClamp(made, bend, clamp) : OnPress(made, bend, _tools[tool]);
        }

        return attempt;
    }

    private Attempt OnPress(List<int> made, int number, Tool tool)
    {
        var (press, die, punch) = (tool.Press!, tool.Die!, tool.Punch!);
        var bend = _part.Flat.Bends[number];
        var thickness = _part.Flat.Thickness;
        var (overBend, most) = MostTurn(bend);
        var force = BendForce.PerLength(BendForce.TensileOf(_stock.Material), thickness, die.Opening);
        var stroke = new PressStroke(bend, thickness, die);
        var closed = punch.Height + die.ShoulderHeight;
        Obstruction? unfit =
            !Gives(die.InsideRadiusIn(_stock.Material.BendGroup), bend) ? Obstruction.NoDie
            : die.Angle.Radians > Math.PI - most ? Obstruction.DieAngle
            : punch.Angle.Radians > Math.PI - most || punch.TipRadius > bend.InsideRadius + Tolerance.SameSize ? Obstruction.NoPunch
            : force > MostForce(press, die, punch) || force * bend.Length > press.MaxForce ? Obstruction.Force
            : closed + stroke.At(Carrier.Beam, most).At.Y < press.OpenHeight - press.Stroke || closed + thickness > press.OpenHeight ? Obstruction.OpenHeight
            : null;
        if (unfit is { } what)
        {
            return new(null, Obstacle(made, number, what, tool));
        }

        // Tools from end to end first; only where a flange stands in their way, as long as the bend.
        var whole = OnPress(made, number, tool, overBend, most, force, stroke, null);
        return whole.Step is null && press.SectionStep is { } step && Math.Floor(bend.Length / step + Tolerance.OnLimit) * step is > 0 and var length
            ? OnPress(made, number, tool, overBend, most, force, stroke, length) : whole;
    }

    private Attempt OnPress(List<int> made, int number, Tool tool, Angle overBend, double most, double force, PressStroke stroke, double? length)
    {
        var (press, die, punch) = (tool.Press!, tool.Die!, tool.Punch!);
        var bend = _part.Flat.Bends[number];
        (double, double)? along = length is { } l ? ((bend.Length - l) / 2, (bend.Length + l) / 2) : null;
        var clearance = new StrokeClearance(stroke, most, _meeting);
        var isMade = Mask(made);
        ConvexBody[] still = [.. ToolBodies.Of(die, along), ToolBodies.Bed(press, die)];
        Attempt? best = null;
        foreach (var reversed in punch.IsSymmetric ? [false] : (bool[])[false, true])
        {
            var standing = reversed ? punch.Reversed() : punch;
            ConvexBody[] bodies = [.. ToolBodies.Of(standing, along), ToolBodies.Beam(press, standing), .. still];
            ConvexBody[] way = length is null ? [] : [.. ToolBodies.WayOf(standing, along)];
            var clear = false;
            foreach (var inFront in (bool[])[false, true])
            {
                // Turned round, the part meets tools that are the same front and back where it met them before.
                var slabs = new PartSlabs(_part.Flat, _part.Polygons, isMade, number, inFront);
                if (!inFront || !punch.IsSymmetric)
                {
                    var met = FirstMet(slabs, bodies, clearance) ?? MetOnTheWay(slabs, way, clearance);
                    clear = met is null;
                    if (met is var (body, flange, at))
                    {
                        var obstacle = Obstacle(made, number, body, tool) with { Flange = flange, At = new(at) };
                        best = best?.Step is not null || (best?.Obstacle?.At ?? new(-1)) >= obstacle.At ? best : new(null, obstacle);
                    }
                }

                if (!clear)
                {
                    continue;
                }

                var gauge = new GaugeSearch(
                    _part.Flat, _part.Outlines, slabs, bend, isMade, press, die, finger => IsClearOfFinger(slabs, finger, clearance, press)).Best();
                var step = new BendStep
                {
                    Bend = number,
                    TopUp = bend.IsUp,
                    NewFlangeInFront = inFront,
                    Die = die,
                    Punch = punch,
                    PunchReversed = reversed,
                    ToolLength = length,
                    Gauge = gauge,
                    OverBend = overBend,
                    ForcePerLength = force,
                    MaxForcePerLength = MostForce(press, die, punch),
                    Force = force * bend.Length,
                    HandHold = slabs.Slabs.Where(s => s.IsLeg && s.Carrier == Carrier.Front).Select(s => bend.Allowance / 2 - s.Corners.Min(c => c.X)).DefaultIfEmpty(0).Max() - die.BodyWidth / 2,
                    Support = ShoulderSupport.Of(_part.Flat, bend, die, [.. made.Select(b => _part.Flat.Bends[b])]),
                };
                if (best?.Step is not { } other || Cost(step) < Cost(other))
                {
                    best = new(step, null);
                }

                if (Cost(step) == 0)
                {
                    return best;
                }
            }
        }

        return best!;
    }

    private Attempt OverClamp(List<int> made, int number, BendingClamp clamp)
    {
        var bend = _part.Flat.Bends[number];
        var tool = new Tool(null, null, null, clamp);
        var (overBend, most) = MostTurn(bend);
        if (!Gives(clamp.Radius, bend) || _part.Flat.Thickness > clamp.MaxThickness || bend.Length > clamp.Length)
        {
            return new(null, Obstacle(made, number, Obstruction.ClampSize, tool));
        }

        if (most > Math.PI - clamp.NoseAngle.Radians)
        {
            return new(null, Obstacle(made, number, Obstruction.Clamp, tool) with { At = Angle.Straight - clamp.NoseAngle });
        }

        var clearance = new StrokeClearance(new ClampStroke(bend, _part.Flat.Thickness), most, _meeting);
        ConvexBody[] bodies = [.. ToolBodies.Of(clamp, _part.Flat.Thickness)];
        Attempt? best = null;
        foreach (var inFront in (bool[])[false, true])
        {
            var slabs = new PartSlabs(_part.Flat, _part.Polygons, Mask(made), number, inFront);
            var clamped = slabs.Slabs.Where(s => s.IsLeg && s.Carrier == Carrier.Front).Select(s => -s.Corners.Min(c => c.X)).DefaultIfEmpty(0).Max();
            if (clamped < clamp.LeastClamped)
            {
                best ??= new(null, Obstacle(made, number, Obstruction.ClampSize, tool));
                continue;
            }

            if (FirstMet(slabs, bodies, clearance) is { } met)
            {
                best ??= new(null, Obstacle(made, number, met.What, tool) with { Flange = met.Flange, At = new(met.At) });
                continue;
            }

            return new(
                new()
                {
                    Bend = number,
                    TopUp = bend.IsUp,
                    NewFlangeInFront = inFront,
                    Clamp = clamp,
                    Gauge = new(GaugeKind.ScribedLine, [], bend.Length),
                    OverBend = overBend,
                    ForcePerLength = 0,
                    MaxForcePerLength = 0,
                    Force = 0,
                    HandHold = clamped,
                    Support = null,
                },
                null);
        }

        return best!;
    }

    // Force per length that the weakest of them stands.
    private static double MostForce(PressBrake press, PressBrakeDie die, Punch punch) => Math.Min(Math.Min(die.MaxForce, punch.MaxForce), press.MaxForcePerLength);

    private (Angle OverBend, double Most) MostTurn(Bend bend)
    {
        var overBend = Springback.Allowance(bend.Turn, bend.InsideRadius, _stock.Material, _part.Flat.Thickness);
        return (overBend, (bend.Turn.Magnitude + overBend + BendSimulation.Reserve).Radians);
    }

    // What the part meets first, among the bodies in their order; null if nothing.
    private static (Obstruction What, int Flange, double At)? FirstMet(PartSlabs part, ConvexBody[] bodies, StrokeClearance clearance)
    {
        foreach (var slab in part.Slabs)
        {
            foreach (var body in bodies)
            {
                // The leg that is bent lies on die, table and beam from the first to the last.
                var rests = body.Kind is Obstruction.Die || (slab.Lie != Lie.Standing && body.Kind is Obstruction.Punch or Obstruction.Clamp);
                if (slab.IsLeg && body.Kind is Obstruction.Die or Obstruction.Bed)
                {
                    continue;
                }

                if (clearance.Met(slab, body, rests ? -BendSimulation.Contact : BendSimulation.Clearance) is { } at)
                {
                    return (body.Kind, slab.Flange, at);
                }
            }
        }

        var front = part.Slabs.Where(s => s.Carrier == Carrier.Front).ToArray();
        foreach (var slab in part.Slabs.Where(s => s.Carrier == Carrier.Back))
        {
            foreach (var other in front)
            {
                if ((slab.IsLeg && other.IsLeg) || other.Bodies(true).All(b => clearance.Met(slab, b, BendSimulation.SelfClearance) is null))
                {
                    continue;
                }

                foreach (var body in other.Bodies(false))
                {
                    if (clearance.Met(slab, body, BendSimulation.SelfClearance) is { } at)
                    {
                        return (Obstruction.Itself, slab.IsLeg ? other.Flange : slab.Flange, at);
                    }
                }
            }
        }

        return null;
    }

    // Between flanges at both ends the part does not slide in and out along the bend: the punch must come down to it and rise from it.
    private static (Obstruction What, int Flange, double At)? MetOnTheWay(PartSlabs part, ConvexBody[] way, StrokeClearance clearance)
    {
        foreach (var slab in part.Slabs)
        {
            foreach (var body in way)
            {
                if (clearance.MetAtEnds(slab, body, slab.Lie != Lie.Standing ? -BendSimulation.Contact : BendSimulation.Clearance) is { } at)
                {
                    return (body.Kind, slab.Flange, at);
                }
            }
        }

        return null;
    }

    private static bool IsClearOfFinger(PartSlabs part, ConvexBody finger, StrokeClearance clearance, PressBrake press) =>
        part.Slabs.All(s => (s.Lie != Lie.Standing && s.Carrier == Carrier.Back)
            || (press.GaugeRetracts ? clearance.MetAtStart(s, finger, -BendSimulation.Contact) : clearance.Met(s, finger, -BendSimulation.Contact)) is null);

    private ImmutableArray<BendObstacle> Obstacles()
    {
        if (_tools.IsEmpty)
        {
            return [.. Enumerable.Range(0, _part.Flat.Bends.Length).Select(b => new BendObstacle([], b, Obstruction.NoDie))];
        }

        // For each bend that failed after some others: with the tools that took it furthest.
        return
        [
            .. _attempts.Where(a => a.Value.Obstacle is not null)
                .GroupBy(a => (a.Key.Made, a.Key.Bend))
                .Where(g => !_attempts.Any(a => (a.Key.Made, a.Key.Bend) == g.Key && a.Value.Step is not null))
                .OrderBy(g => g.Key.Made).ThenBy(g => g.Key.Bend)
                .Select(g => g.Select(a => a.Value.Obstacle!).MaxBy(o => (o.At?.Radians ?? -1, o.What))!),
        ];
    }

    private bool[] Mask(List<int> made)
    {
        var mask = new bool[_part.Flat.Bends.Length];
        made.ForEach(b => mask[b] = true);
        return mask;
    }

    private static bool Gives(double radius, Bend bend) => Math.Abs(radius - bend.InsideRadius) < Tolerance.SameSize;

    private static BendObstacle Obstacle(List<int> made, int bend, Obstruction what, Tool tool) =>
        new([.. made], bend, what) { Die = tool.Die, Punch = tool.Punch };
}
