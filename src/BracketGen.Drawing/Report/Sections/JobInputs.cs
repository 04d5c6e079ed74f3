using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>An input with its value and ± as text.</summary>
internal sealed record InputRow(string Name, string Value, string PlusMinus = "");

/// <summary>The inputs of a job, by profile.</summary>
internal static class JobInputs
{
    public static IEnumerable<(string Heading, IEnumerable<InputRow> Rows)> Of(ReportScene scene)
    {
        var job = scene.Job;
        yield return ($"Throttle body: {job.Body.Name}", Body(scene, job.Body));
        yield return ($"Vehicle: {job.Vehicle.Name}", Vehicle(scene, job.Vehicle));
        yield return ($"Shop: {job.Shop.Name}", Shop(scene, job.Shop));
        yield return ("What was asked of the bracket", Wanted(scene, job));
    }

    private static InputRow Length(ReportScene scene, string name, Measured value) =>
        new(name, scene.Length(value.Value), value.PlusMinus > 0 ? scene.Length(value.PlusMinus) : "");

    private static InputRow Angle(ReportScene scene, string name, Measured value) =>
        new(name, scene.Angle(new(value.Value)), value.PlusMinus > 0 ? scene.Angle(new(value.PlusMinus)) : "");

    private static InputRow Torque(ReportScene scene, string name, Measured value) =>
        new(name, scene.Torque(value.Value), value.PlusMinus > 0 ? scene.Torque(value.PlusMinus) : "");

    private static IEnumerable<InputRow> Body(ReportScene scene, ThrottleBody body)
    {
        var quadrant = body.Quadrant;
        yield return new("opens, seen from outside along the shaft", body.Opens == OpeningSense.Clockwise ? "clockwise" : "counter-clockwise");
        yield return new("bore", scene.Length(body.Bore));
        yield return new("throttle shaft", scene.Length(body.ShaftDiameter));
        yield return new("valve's plate at the closed stop", scene.Angle(body.ValveClosedAngle));
        foreach (var row in GrooveRows(scene, quadrant.Groove))
        {
            yield return row;
        }

        yield return Angle(scene, "rotation, closed to wide open", quadrant.Rotation);
        yield return Angle(scene, "pocket's direction at the closed stop", quadrant.Pocket);
        yield return new("groove's extent from the pocket", scene.Angle(new(quadrant.GrooveExtent)));
        yield return new("groove's width", scene.Length(quadrant.GrooveWidth));
        yield return new("pocket slot's width", scene.Length(quadrant.SlotWidth));
        yield return new("radius over the flanges", scene.Length(quadrant.OuterRadius));
        yield return new("thickness over the flanges", scene.Length(quadrant.Thickness));
        yield return new("hub's radius", scene.Length(quadrant.HubRadius));
        yield return new("return springs", ReportScene.Number(body.Springs.Count));
        yield return Torque(scene, "closing torque, closed", body.Springs.TorqueClosed);
        yield return Torque(scene, "closing torque, wide open", body.Springs.TorqueOpen);
        if (body.Sensor is { } sensor)
        {
            yield return new("sensor, closed and wide open", $"{scene.Volts(sensor.ClosedVolts)} and {scene.Volts(sensor.OpenVolts)}");
        }

        if (body.Engine is { } engine)
        {
            yield return new("engine", $"{engine.Cylinders} cylinders, {engine.Strokes} strokes, up to {ReportScene.Number(engine.MaxSpeed, "0")} 1/min");
        }

        yield return new("mount face looks towards", Direction(body.Mount.Plane.Normal));
        foreach (var hole in body.Mount.Holes)
        {
            yield return new($"mount hole {hole.Thread.Name}, boss {scene.Length(hole.BossDiameter)}", Point(scene, hole.At));
        }

        foreach (var keepOut in body.KeepOuts)
        {
            yield return new($"keep-out: {keepOut.Name}", keepOut switch
            {
                KeepOutBox box => $"box from {Point(scene, box.Min)} to {Point(scene, box.Max)}",
                KeepOutCylinder c => $"cylinder of radius {scene.Length(c.Radius)} from {Point(scene, c.From)} to {Point(scene, c.To)}",
                _ => "",
            });
        }
    }

    private static IEnumerable<InputRow> GrooveRows(ReportScene scene, Groove groove)
    {
        switch (groove)
        {
            case CircularGroove circle:
                yield return Length(scene, "pitch radius", circle.PitchRadius);
                break;
            case EccentricGroove eccentric:
                yield return Length(scene, "pitch radius, eccentric circle", eccentric.Radius);
                yield return new("centre off the shaft", $"{scene.Length(eccentric.Offset)} towards {scene.Angle(eccentric.Direction)}");
                break;
            case TabulatedGroove table:
                yield return new(
                    "pitch radius, measured point by point", string.Join(", ", table.Points.Select(p => $"{scene.Angle(p.Polar)}: {scene.Length(p.Radius)}")),
                    table.PlusMinus > 0 ? scene.Length(table.PlusMinus) : "");
                break;
            default:
                yield return new("pitch radius", "along a curve of its own", groove.PlusMinus > 0 ? scene.Length(groove.PlusMinus) : "");
                break;
        }
    }

    private static IEnumerable<InputRow> Vehicle(ReportScene scene, Vehicle vehicle)
    {
        var cable = vehicle.Cable;
        yield return new("end fitting", $"{cable.Fitting.Kind.ToString().ToLowerInvariant()}, diameter {scene.Length(cable.Fitting.Diameter)}, length {scene.Length(cable.Fitting.Length)}");
        yield return new("wire", scene.Length(cable.WireDiameter));
        yield return new("outer", scene.Length(cable.OuterDiameter));
        yield return new("outer's end", cable.OuterEnd switch
        {
            ThreadedAdjuster a => $"adjuster M{ReportScene.Number(a.Thread)} x {ReportScene.Number(a.Pitch)}, nuts {scene.Length(a.AcrossFlats)} across flats",
            SlottedClip c => $"ring groove of {scene.Length(c.NeckDiameter)}, collars {scene.Length(c.CollarDiameter)}",
            var end => $"ferrule of {scene.Length(end.BodyDiameter)}, shoulder {scene.Length(end.SeatDiameter)}",
        });
        yield return new("adjustment", cable.OuterEnd.AdjusterRange > 0 ? scene.Length(cable.OuterEnd.AdjusterRange) : "none");
        yield return Length(scene, "free inner length, seat to fitting", cable.FreeInnerLength);
        yield return new("length of the outer", cable.OuterLength is { } length ? scene.Length(length) : "not measured");
        yield return new("outer's least bend radius", scene.Length(cable.MinBendRadius));
        yield return new("fleet angle it stands", scene.Angle(new(cable.FleetLimit)));
        yield return new("friction coefficient of the wire in the outer", ReportScene.Number(cable.Friction.Value), cable.Friction.PlusMinus > 0 ? ReportScene.Number(cable.Friction.PlusMinus) : "");
        yield return Length(scene, "pull of the full pedal stroke", vehicle.Pedal.AvailablePull);
        yield return new("pad's full travel", scene.Length(vehicle.Pedal.FullStroke));
        yield return new(
            "load at the pad that opens the valve", scene.Force(vehicle.Pedal.PadLoad.Value), vehicle.Pedal.PadLoad.PlusMinus > 0 ? scene.Force(vehicle.Pedal.PadLoad.PlusMinus) : "");
        yield return new("foot force of the proof load", scene.Force(vehicle.Pedal.ProofForce));
        yield return new("controller's zero", vehicle.Controller.ZeroVolts is { } zero ? scene.Volts(zero) : "learns its own");
    }

    private static IEnumerable<InputRow> Shop(ReportScene scene, Shop shop)
    {
        yield return new("cuts by", shop.Process switch { CuttingProcess.Laser => "laser", CuttingProcess.Plasma => "plasma", _ => "water jet" });
        yield return new("width of the cut", scene.Length(shop.Kerf));
        yield return new("sheets in stock", string.Join("; ", shop.Stock.GroupBy(s => s.Material.Designation)
            .Select(g => $"{g.Key}: {string.Join(", ", g.Select(s => scene.Length(s.Thickness)))}")));
        yield return new("dies, opening and inside radius", string.Join("; ", shop.Dies.Select(d => $"{scene.Length(d.Opening)}, {scene.Length(d.InsideRadius)}")));
        if (scene.Solution.Bracket is { } bracket)
        {
            yield return new($"where the numbers of {bracket.Stock.Material.Designation} come from", bracket.Stock.Material.Source);
        }

        yield return new("its own test bends", ReportScene.Number(shop.TestBends.Length));
        yield return new("bend rule where there is none", shop.BendRule == PublishedBendRule.Din6935 ? "DIN 6935" : "Machinery's Handbook");
    }

    private static IEnumerable<InputRow> Wanted(ReportScene scene, Job job)
    {
        var wanted = job.Preferences;
        yield return Length(scene, "free play at the closed stop", wanted.FreePlay);
        yield return new("least free play", scene.Length(wanted.MinFreePlay));
        yield return new("pull to be left at the floor", scene.Length(wanted.MinOverTravel));
        yield return new("most over-travel without a pedal stop", scene.Length(wanted.MaxOverTravel));
        yield return new("wrap to be left, wide open", scene.Angle(wanted.MinWrap));
        yield return new("fitting to the stop", scene.Length(wanted.FittingClearance));
        yield return new("bracket to what moves", scene.Length(wanted.SweepClearance));
        yield return new("bracket to keep-outs", scene.Length(wanted.KeepOutClearance));
        yield return new("half range of the adjuster kept", scene.Part(wanted.AdjusterReserve));
        yield return new("opening for the outer's end", wanted.StopOpening switch { StopOpening.Hole => "round hole", StopOpening.OpenSlot => "open slot", _ => "hole, or slot where the fitting needs one" });
        yield return new("sheet", $"{scene.Length(wanted.MinThickness)} to {scene.Length(wanted.MaxThickness)}{(wanted.Materials.IsEmpty ? ", any in stock" : $", {string.Join(", ", wanted.Materials)}")}");
        yield return new("least yield strength over stress, pedal stamped on", ReportScene.Number(wanted.MinYieldFactor));
        yield return new("least safety against cracking", ReportScene.Number(wanted.MinEnduranceFactor));
        yield return new("most that the stop may give", scene.Length(wanted.MaxGive));
        yield return new("corner radius", scene.Length(wanted.CornerRadius));
        if (job.Bulkhead is { } bulkhead)
        {
            yield return new("outer comes out of the bulkhead at", $"{Point(scene, bulkhead.Point)}, towards {Direction(bulkhead.Direction)}");
        }
    }

    private static string Point(ReportScene scene, Vector3 p) => $"({scene.Value.Length(p.X)}, {scene.Value.Length(p.Y)}, {scene.Value.Length(p.Z)}) {scene.Value.UnitName}";

    private static string Direction(Vector3 d) => $"({ReportScene.Number(d.X, "0.###")}, {ReportScene.Number(d.Y, "0.###")}, {ReportScene.Number(d.Z, "0.###")})";
}
