using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Throttles;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Words.Report;

/// <summary>An input with its value and ± as text.</summary>
public sealed record InputRow(string Name, string Value, string PlusMinus = "");

/// <summary>The inputs of a job, by profile.</summary>
/// <param name="solution">The solution.</param>
public sealed class JobInputs(Solution solution)
{
    /// <summary>Before the tables.</summary>
    public const string Intro = "As the profiles give them. An input that is wrong here makes everything above wrong.";

    private readonly UnitSystem _units = solution.Job.Units;

    /// <summary>Heads of the tables.</summary>
    public static IReadOnlyList<string> Heads { get; } = ["input", "value", "±"];

    /// <summary>A heading for each profile, and its inputs.</summary>
    public IEnumerable<(string Heading, IEnumerable<InputRow> Rows)> All()
    {
        var job = solution.Job;
        yield return ($"Throttle body: {job.Body.Name}", Body(job.Body));
        yield return ($"Vehicle: {job.Vehicle.Name}", Vehicle(job.Vehicle));
        yield return ($"Shop: {job.Shop.Name}", Shop(job.Shop));
        yield return ("What was asked of the bracket", Wanted(job));
    }

    private string Hole(MountHole hole) => Holds(hole) + (hole.Spacer is { } spacer ? $", spacer {Length(spacer.Length)}" : "");

    private string Holds(MountHole hole) => hole.Fixing switch
    {
        ThroughHole through => $"hole {Length(through.Diameter)} through {Length(through.Flange)} for a bolt {hole.Thread.Name}, boss {Length(hole.BossDiameter)}, room behind {(through.Room is { } room ? Length(room) : "not measured")}",
        MountStud stud => $"stud {hole.Thread.Name}, boss {Length(hole.BossDiameter)}, stands out {Length(stud.StandsOut)}, sits {(hole.ThreadDepth is { } sits ? Length(sits) : "not measured")} deep",
        _ => $"mount hole {hole.Thread.Name}, boss {Length(hole.BossDiameter)}, depth of thread {(hole.ThreadDepth is { } depth ? Length(depth) : "not measured")}",
    };

    private string Length(double value) => _units.Write(Quantity.Length, value);

    private string Degrees(Angle angle) => _units.Write(Quantity.Angle, angle.Radians);

    private string Volts(double value) => _units.Write(Quantity.Voltage, value);

    private InputRow Row(string name, Quantity quantity, Measured value) =>
        new(name, _units.Write(quantity, value.Value), value.PlusMinus > 0 ? _units.Write(quantity, value.PlusMinus) : "");

    private InputRow Drag(string name, Measured drag, double atWorst, Quantity quantity) =>
        new(name, DragText.Value(drag, atWorst, quantity, _units), drag.PlusMinus > 0 ? _units.Write(quantity, drag.PlusMinus) : "");

    private IEnumerable<InputRow> Body(ThrottleBody body)
    {
        var quadrant = body.Quadrant;
        yield return new("opens, seen from outside along the shaft", body.Opens == OpeningSense.Clockwise ? "clockwise" : "counter-clockwise");
        yield return new("bore", Length(body.Bore));
        yield return new("throttle shaft", Length(body.ShaftDiameter));
        yield return new("closed angle of the valve plate", Degrees(body.ValveClosedAngle));
        foreach (var row in GrooveRows(quadrant.Groove))
        {
            yield return row;
        }

        foreach (var other in body.OtherGrooves)
        {
            var role = other.Role switch { GrooveRole.Opening => "for a cable that opens", GrooveRole.Closing => "for a cable that closes", _ => "for a cable that is pulled" };
            yield return new($"groove \"{other.Name}\", {role}", $"z {Length(other.Z)}, free arc {(other.FreeArc is { } arc ? Degrees(arc) : "not measured")}");
            foreach (var row in GrooveRows(other.Quadrant.Groove).Append(Row("pocket angle, valve closed", Quantity.Angle, other.Quadrant.Pocket.Radians)))
            {
                yield return row with { Name = $"groove \"{other.Name}\": {row.Name}" };
            }
        }

        if (!body.OtherGrooves.IsEmpty)
        {
            yield return new("free arc of the first groove", body.FreeArc is { } free ? Degrees(free) : "not measured");
        }

        yield return Row("rotation, closed to wide open", Quantity.Angle, quadrant.Rotation.Radians);
        yield return Row("pocket angle, valve closed", Quantity.Angle, quadrant.Pocket.Radians);
        yield return new("groove extent, from the pocket on", Degrees(quadrant.GrooveExtent));
        yield return new("groove width", Length(quadrant.GrooveWidth));
        yield return new("width of the pocket slot", Length(quadrant.SlotWidth));
        yield return new("pocket", quadrant.PocketShape switch
        {
            null => "not measured",
            { Kind: PocketKind.Recess } p => $"recess for a nipple, {Length(p.Width)} wide, {Length(p.Length)} long, {Length(p.Depth)} deep",
            { Kind: PocketKind.Socket } p => $"socket for a ball, diameter {Length(p.Width)}, {Length(p.Depth)} deep",
            var p => $"bore for a barrel, diameter {Length(p.Width)}, {Length(p.Depth)} deep, axis {(p.AlongShaft ? "along" : "across")} the shaft",
        });
        yield return new("outside radius over the rims", Length(quadrant.OuterRadius));
        yield return new("thickness over the rims", Length(quadrant.Thickness));
        yield return new("hub radius", Length(quadrant.HubRadius));
        yield return new("return springs", Phrases.Plain(body.Springs.Count));
        yield return Row("closing torque, closed", Quantity.Torque, body.Springs.TorqueClosed);
        yield return Row("closing torque, wide open", Quantity.Torque, body.Springs.TorqueOpen);
        for (var i = 0; i < body.Springs.Each.Length; i++)
        {
            yield return Row($"spring {i + 1} alone, closed", Quantity.Torque, body.Springs.Each[i].TorqueClosed);
            yield return Row($"spring {i + 1} alone, wide open", Quantity.Torque, body.Springs.Each[i].TorqueOpen);
        }

        if (body.Springs is { Each.Length: < 2, Count: > 1 })
        {
            yield return new("each return spring alone", "not measured: all count as equally strong");
        }

        yield return Drag("drag at the throttle shaft", body.ShaftDrag, ThrottleBody.ShaftDragAtWorst, Quantity.Torque);
        yield return new("moment of inertia at the shaft", $"{_units.Write(Quantity.Inertia, body.Inertia)}{(body.MeasuredInertia is null ? ", estimated" : "")}");
        if (body.Sensor is { } sensor)
        {
            yield return new("sensor, closed and wide open", $"{Volts(sensor.ClosedVolts)} and {Volts(sensor.OpenVolts)}");
            yield return new("the sensor's slot, each way", sensor.Slot is { } slot ? Degrees(slot) : "not measured");
            yield return new("the sensor's usable range", $"{Volts(sensor.MinVolts)} to {Volts(sensor.MaxVolts)}");
        }

        if (body.Engine is { } engine)
        {
            yield return new("engine", $"{engine.Cylinders} cylinders, {engine.Strokes} strokes, up to {ShakingText.Speed(engine.MaxSpeed)}");
            yield return new("idle speed", ShakingText.Idle(engine));
        }

        yield return new("shaking of the mount", ShakingText.Profile(body.Shaking));
        yield return new("damping of the bracket's vibrations", ShakingText.Damping(body.Shaking));

        yield return new("normal of the mount face", Direction(body.Mount.Plane.Normal));
        foreach (var hole in body.Mount.Holes)
        {
            yield return new((hole.IsOnSecond ? "second face: " : "") + Hole(hole), Point(hole.At), hole.PlusMinus.IsExact ? "" : Off(hole.PlusMinus));
        }

        if (body.Mount.Ring is { } ring)
        {
            yield return new(ShopDrawing.RingText.Name, ShopDrawing.RingText.Input(ring, _units));
            yield return new("a point of the axis of its bore", Point(ring.BoreCentre));
            for (var i = 0; i < ring.Bolts.Length; i++)
            {
                var bolt = ring.Bolts[i];
                yield return new($"flange bolt {AdapterRing.BoltName(i)}, {ShopDrawing.RingText.Input(bolt, _units)}", Point(bolt.At), bolt.PlusMinus.IsExact ? "" : Off(bolt.PlusMinus));
            }
        }

        if (body.Mount.Second is { } second)
        {
            yield return new("normal of the second face", Direction(second.Plane.Normal));
            yield return new(
                body.Mount.IsInsideCorner ? "fillet between the two faces" : "edge between the two faces", second.CornerRadius is { } radius ? $"radius {Length(radius)}" : "not measured");
        }

        yield return new("metal of the bosses", body.Mount.Boss.Name);
        yield return new("friction of the bracket on the bosses", body.Mount.FaceFriction is { } friction ? Phrases.Plain(friction) : "not tried");
        yield return new("screws of the mount", $"{Phrases.List([.. body.Mount.Holes.Select(h => ScrewText.Class(body.Mount.ClassOf(h))).Distinct()])}, {body.Mount.ScrewFriction.Name}");
        yield return new("flatness of the bosses", body.Mount.Flatness is { } flatness ? _units.WriteFine(Quantity.Length, flatness) : $"not measured: {_units.WriteFine(Quantity.Length, MountFace.UsualFlatness)}, {_units.WriteFine(Quantity.Length, MountFace.FlatnessAtWorst)} at worst");
        if (body.Mount.Holes.Length > 1)
        {
            yield return new("mount holes off the face that fits them best, maximum", _units.WriteFine(Quantity.Length, body.Mount.Residual));
        }

        yield return new("casting", body.Shape == BodyShape.KeepOuts ? "described by the keep-outs" : body.Casting is { } casting ? $"{Space(casting)}, and the bosses" : "not measured");
        foreach (var keepOut in body.KeepOuts)
        {
            yield return new($"keep-out: {keepOut.Name}", Space(keepOut));
        }

        foreach (var room in body.SpringRooms)
        {
            yield return new($"space of a return spring: {room.Name}", Space(room));
        }
    }

    private string Space(KeepOut space) => space switch
    {
        KeepOutBox box => $"box from {Point(box.Min)} to {Point(box.Max)}",
        KeepOutTiltedBox box => $"tilted box from {Point(new(box.Corner.Origin))}, {Length(box.Size.X)} x {Length(box.Size.Y)} x {Length(box.Size.Z)}",
        KeepOutCylinder c => $"cylinder of radius {Length(c.Radius)} from {Point(c.From)} to {Point(c.To)}",
        _ => "",
    };

    private IEnumerable<InputRow> GrooveRows(Groove groove)
    {
        switch (groove)
        {
            case CircularGroove circle:
                yield return Row("pitch radius", Quantity.Length, circle.PitchRadius);
                break;
            case EccentricGroove eccentric:
                yield return Row("pitch radius, eccentric circle", Quantity.Length, eccentric.Radius);
                yield return new("centre off the shaft", $"{Length(eccentric.Offset)} at {Degrees(eccentric.Direction)}");
                break;
            case TabulatedGroove table:
                yield return new(
                    "pitch radius, measured point by point", string.Join(", ", table.Points.Select(p => $"{Degrees(p.Polar)}: {Length(p.Radius)}")),
                    table.PlusMinus > 0 ? Length(table.PlusMinus) : "");
                break;
            default:
                yield return new("pitch radius", "along a calculated curve", groove.PlusMinus > 0 ? Length(groove.PlusMinus) : "");
                break;
        }
    }

    private string Flats(NuttedEnd end) => end.ThreadFlats is { } flats ? $", {Length(flats)} across flats of the thread" : "";

    private IEnumerable<InputRow> Vehicle(Vehicle vehicle)
    {
        var cable = vehicle.Cable;
        yield return new("end fitting", $"{cable.Fitting.Kind.ToString().ToLowerInvariant()}, diameter {Length(cable.Fitting.Diameter)}, length {Length(cable.Fitting.Length)}");
        yield return new("wire diameter", Length(cable.WireDiameter));
        yield return new("wire, strands x wires", cable.Construction switch
        {
            WireConstruction.SevenByNineteen => "7x19",
            WireConstruction.SevenBySeven => "7x7",
            WireConstruction.OneStrand => "1x19",
            WireConstruction.Single => "single wire",
            _ => "not looked at",
        });
        yield return new("outer diameter", Length(cable.OuterDiameter));
        yield return new("inside diameter of the outer", cable.OuterBore is { } bore ? Length(bore) : "not measured");
        yield return new("outer end", cable.OuterEnd switch
        {
            ThreadedAdjuster a => $"adjuster {PartTableText.Thread(a)}, nuts {Length(a.AcrossFlats)} across flats{Flats(a)}",
            BulkheadFerrule b => $"ferrule {PartTableText.Thread(b)} with two nuts {Length(b.AcrossFlats)} across flats, thread {Length(b.ThreadLength)} long{Flats(b)}",
            ClippedFerrule f => $"ferrule with clip, nose {Length(f.NoseDiameter)}, shoulder {Length(f.ShoulderDiameter)}, grip {Length(f.Grip)}",
            PushInEnd { Corner: not null } p => $"push-in end for a square hole of {Length(p.HoleDiameter)} in sheet of {Length(p.LeastSheet)} to {Length(p.MostSheet)}",
            PushInEnd p => $"push-in end for a hole of {Length(p.HoleDiameter)} in sheet of {Length(p.LeastSheet)} to {Length(p.MostSheet)}",
            SlottedClip c => $"clip neck {Length(c.NeckDiameter)}, collars {Length(c.CollarDiameter)}",
            var end => $"ferrule, nose {Length(end.BodyDiameter)}, shoulder {Length(end.SeatDiameter)}",
        });
        yield return new("adjuster range", cable.OuterEnd.AdjusterRange > 0 ? Length(cable.OuterEnd.AdjusterRange) : "none");
        yield return Row("free inner length, seat to fitting", Quantity.Length, cable.FreeInnerLength);
        yield return new("length of the outer", cable.OuterLength is { } length ? Length(length.Value) : "not measured", cable.OuterLength is { PlusMinus: > 0 } known ? Length(known.PlusMinus) : "");
        var stiffness = cable.OuterAxialStiffness;
        yield return new(
            "axial stiffness of the outer",
            stiffness.Evidence == Evidence.Assumed ? $"{_units.Write(Quantity.Force, stiffness.Min)} to {_units.Write(Quantity.Force, stiffness.Max)} assumed" : _units.Write(Quantity.Force, stiffness.Value),
            stiffness is { PlusMinus: > 0, Evidence: not Evidence.Assumed } ? _units.Write(Quantity.Force, stiffness.PlusMinus) : "");
        yield return Weighed("mass of a metre of the outer", cable.OuterMass is { } perLength ? new Measured(1000 * perLength.Value, 1000 * perLength.PlusMinus) : null);
        yield return Weighed("mass of the outer's end", cable.EndMass);
        yield return new("minimum bend radius of the outer", Length(cable.MinBendRadius));
        yield return new("maximum fleet angle", Degrees(cable.FleetLimit));
        yield return new("friction coefficient of the wire in the outer", Phrases.Plain(cable.Friction.Value), cable.Friction.PlusMinus > 0 ? Phrases.Plain(cable.Friction.PlusMinus) : "");
        yield return Drag("closing drag of the cable", cable.ClosingDrag, Cable.DragAtWorst, Quantity.Force);
        yield return Drag("opening drag of the cable", cable.OpeningDrag, Cable.DragAtWorst, Quantity.Force);
        yield return Row("available pull", Quantity.Length, vehicle.Pedal.AvailablePull);
        yield return new("full pad travel", Length(vehicle.Pedal.FullStroke));
        yield return new(
            "force at the pad with which the released pedal opens the valve", _units.Write(Quantity.Force, vehicle.Pedal.PadLoad.Value), vehicle.Pedal.PadLoad.PlusMinus > 0 ? _units.Write(Quantity.Force, vehicle.Pedal.PadLoad.PlusMinus) : "");
        yield return new("mass of the pedal at the pad", _units.Write(Quantity.Mass, vehicle.Pedal.PadMass));
        yield return new("foot force, pedal stamped on", _units.Write(Quantity.Force, vehicle.Pedal.ProofForce));
        foreach (var other in vehicle.OtherCables)
        {
            yield return new(
                $"other cable: {other.Name}",
                $"{CableWords.Duty(other.Duty)}, from {other.From}, {(other.Fitting is { } end ? $"end fitting {end.Kind.ToString().ToLowerInvariant()}, diameter {Length(end.Diameter)}, length {Length(end.Length)}" : "end fitting not measured")}, "
                    + $"{(other.Stroke is { } stroke ? $"stroke {Length(stroke.Value)}, " : "")}{(other.Cable is { } whole ? $"free inner length {Length(whole.FreeInnerLength.Value)}, closing drag {DragText.Value(whole.ClosingDrag, Cable.DragAtWorst, Quantity.Force, _units)}, " : "")}"
                    + other.IsOnPedal switch { true => "hooked to the pedal", false => "not on the pedal", _ => "whether on the pedal not known" });
        }

        yield return new("zero of the controller", vehicle.Controller.ZeroVolts is { } zero ? Volts(zero) : "learned");
    }

    private InputRow Weighed(string name, Measured? mass) => mass is { } known
        ? new(name, _units.Write(Quantity.Mass, known.Value), known.PlusMinus > 0 ? _units.Write(Quantity.Mass, known.PlusMinus) : "")
        : new(name, "not weighed");

    private IEnumerable<InputRow> Shop(Shop shop)
    {
        yield return new("cuts by", DrawingText.Process(shop.Process));
        yield return new("kerf", _units.WriteFine(Quantity.Length, shop.Kerf));
        yield return new("sheets in stock", string.Join("; ", shop.Stock.GroupBy(s => s.Material.Designation)
            .Select(g => $"{g.Key}: {string.Join(", ", g.Select(s => Length(s.Thickness)))}")));
        if (!shop.Dies.IsEmpty)
        {
            yield return new("V dies, opening and inside radius", string.Join("; ", shop.Dies.Select(d => $"{Length(d.Opening)}, {Length(d.InsideRadius)}")));
        }

        if (!shop.Tools.Clamps.IsEmpty)
        {
            yield return new("bends over, radius", string.Join("; ", shop.Tools.Clamps.Select(c => $"{BendStepText.Kind(c.Kind)}, {c.Name}, {Length(c.Radius)}")));
        }

        if (solution.Bracket is { } bracket)
        {
            yield return new($"source of the values of {bracket.Stock.Material.Designation}", bracket.Stock.Material.Source);
        }

        yield return new("test bends", Phrases.Plain(shop.TestBends.Length));
        yield return new("bend rule without a test bend", shop.BendRule == PublishedBendRule.Din6935 ? "DIN 6935" : "Machinery's Handbook");
    }

    private IEnumerable<InputRow> Wanted(Job job)
    {
        var wanted = job.Preferences;
        yield return Row("free play at the closed stop", Quantity.Length, wanted.FreePlay);
        yield return new("minimum free play", Length(wanted.MinFreePlay));
        yield return new("minimum over-travel", Length(wanted.MinOverTravel));
        yield return new("maximum over-travel without a pedal stop", Length(wanted.MaxOverTravel));
        yield return new("minimum wrap, wide open", Degrees(wanted.MinWrap));
        yield return new("minimum clearance, end fitting to stop", Length(wanted.FittingClearance));
        yield return new("minimum clearance of moving parts", Length(wanted.SweepClearance));
        yield return new("minimum clearance of the outer", Length(wanted.OuterClearance));
        yield return new("minimum clearance, bracket to keep-outs", Length(wanted.KeepOutClearance));
        yield return new("factor on measured drag for dirt and cold", Phrases.Plain(wanted.DirtAndCold));
        yield return new("part of the adjuster's half range kept unused", _units.Write(Quantity.Fraction, wanted.AdjusterReserve));
        yield return new("opening for the outer end", wanted.StopOpening switch { StopOpening.Hole => "round hole", StopOpening.OpenSlot => "open slot", _ => "hole, or slot if the fitting needs one" });
        yield return new("mount holes", wanted.MountSlots is { } slots ? $"slotted, the bracket can be shifted {Length(slots.Travel)} along {Direction(slots.Way)}" : "round");
        yield return new("sheet", $"{_units.WriteRange(Quantity.Length, wanted.MinThickness, wanted.MaxThickness)}{(wanted.Materials.IsEmpty ? ", any in stock" : $", {string.Join(", ", wanted.Materials)}")}");
        yield return new("minimum yield strength over stress, pedal stamped on", Phrases.Plain(wanted.MinYieldFactor));
        yield return new("minimum safety against cracking", Phrases.Plain(wanted.MinEnduranceFactor));
        yield return new("minimum first natural frequency over the firing frequency", Phrases.Plain(wanted.MinFrequencyRatio));
        yield return new("maximum give of the stop", Length(wanted.MaxGive));
        yield return new("corner radius", Length(wanted.CornerRadius));
        yield return new("life: pedal openings", Phrases.Count((int)Math.Round(job.Life.Openings)));
        yield return new("life: hours of the engine", Phrases.Count((int)Math.Round(job.Life.EngineHours)));
        yield return new("temperature of the bracket, engine hot", job.Life.Temperature is { } hot ? $"{Phrases.Plain(hot)} °C" : $"not measured: {Phrases.Plain(ServiceLife.RoomTemperature)} °C, {Phrases.Plain(ServiceLife.TemperatureAtWorst)} °C at worst");
        if (job.Bulkhead is { } bulkhead)
        {
            yield return new("point and direction at the bulkhead", $"{Point(bulkhead.Point)}, {Direction(bulkhead.Direction)}");
            foreach (var clip in bulkhead.Clips)
            {
                yield return new(
                    "clip on the outer's way",
                    $"{Point(clip.Point)}, {(clip.Direction is { } way ? Direction(way) : "lets the outer turn")}, {(clip.Along is { } along ? $"grips it {Length(along)} from the stop" : "lets it slide")}");
            }
        }

        foreach (var other in job.Vehicle.OtherCables)
        {
            var use = job.UseOf(other);
            yield return new($"cable \"{other.Name}\" becomes", $"{OtherCableText.Becomes(use)}{(use.ServedBy is { } by ? $"; served by {by}" : "")}");
        }

        yield return new("which way is up", job.Up is { } up ? Direction(up) : "not given");
        yield return new("movement of the throttle body as the engine rocks", MovementText.Of(job.Movement, _units));
        yield return new("crankshaft, direction", job.Movement.Direction is { } crankshaft ? Direction(crankshaft) : "not given: x, y and z are each tried");
        yield return new("crankshaft, a point on its axis", job.Movement.Crankshaft is { } point ? Point(point) : "not given: the body turns about its own origin");
    }

    private string Point(ThrottlePoint p) =>
        $"({_units.Number(Quantity.Length, p.X)}, {_units.Number(Quantity.Length, p.Y)}, {_units.Number(Quantity.Length, p.Z)}) {_units.Symbol(Quantity.Length)}";

    private string Off(PointPlusMinus p) =>
        $"({_units.Number(Quantity.Length, p.X)}, {_units.Number(Quantity.Length, p.Y)}, {_units.Number(Quantity.Length, p.Z)}) {_units.Symbol(Quantity.Length)}";

    private static string Direction(Vector3 d) => $"({Part(d.X)}, {Part(d.Y)}, {Part(d.Z)})";

    private static string Part(double value) => UnitSystems.Decimals(value, "0.###");
}
