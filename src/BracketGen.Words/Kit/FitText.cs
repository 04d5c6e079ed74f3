using BracketGen.Design.Inputs;
using BracketGen.Design.Kit;
using BracketGen.Units;

namespace BracketGen.Words.Kit;

/// <summary>What was looked at on a part, in sentences.</summary>
public static class FitText
{
    /// <summary>A state in a table.</summary>
    public static string Of(FitState state) => state switch
    {
        FitState.Fits => "fits",
        FitState.NotKnown => "not known",
        _ => "does not fit",
    };

    /// <summary>Why a part does not fit, or what is not known of it; of a part that fits, what is worth a word.</summary>
    /// <param name="option">The part.</param>
    /// <param name="units">The job's units.</param>
    public static IEnumerable<string> Why(KitOption option, UnitSystem units)
    {
        var worst = option.Findings.Where(f => f.State == option.State).ToArray();
        return option.State == FitState.Fits ? worst.Select(f => Good(f, units)).OfType<string>()
            : option.Findings.IsEmpty ? ["Nothing was measured on it."]
            : worst.Select(f => f.State == FitState.DoesNotFit ? Bad(f, option, units) : Open(f, option, units));
    }

    /// <summary>A drive shape as files say it.</summary>
    public static string Drive(string shape) => shape == nameof(DriveShape.DoubleD) ? "double D" : shape == nameof(DriveShape.D) ? "D" : shape.ToLowerInvariant();

    private static string? Good(FitFinding finding, UnitSystem units) => finding switch
    {
        { Aspect: FitAspect.SensorHoles, Turn: { } turn } => $"It turns {units.Write(Quantity.Angle, turn.Radians)} each way on its screws.",
        { Aspect: FitAspect.WaterPorts, IsCapped: true, Compared: var (_, body) } => body == "0"
            ? "Its passages for water end on the closed face: take its hoses off and cap them."
            : "Plug the throttle body's passages for water before the valve goes on, and take the hoses off the valve.",
        { Aspect: FitAspect.RingSqueeze } => $"Squeeze of the O-ring {Range(finding, units)}.",
        { Aspect: FitAspect.StopHeight } => $"Set it {units.Write(Quantity.Length, finding.Value!.Value)} above the floor.",
        { Aspect: FitAspect.WholeJob } => "Every check passes with it.",
        _ => null,
    };

    private static string Bad(FitFinding finding, KitOption option, UnitSystem units)
    {
        string Length(double value) => FitText.Length(value, units);
        var compared = finding.Compared;
        return finding.Aspect switch
        {
            FitAspect.DriveShape => $"It is made for a shaft's end of the shape {Drive(compared!.Value.Part)}; this one is {Drive(compared.Value.Body)}.",
            FitAspect.DrivePlay when finding.Value < 0 => $"The shaft's end does not go in: it is {Length(-finding.Value!.Value)} too large.",
            FitAspect.DrivePlay => $"The shaft's end has {Length(finding.Value!.Value)} of play in it, allowed are {Length(finding.Max!.Value)}: a dead band.",
            FitAspect.SensorHoles or FitAspect.Holes when compared is var (part, body) => $"It has {part} holes or passages where the throttle body has {body}.",
            FitAspect.SensorHoles => $"Its slots miss the holes by {Length(finding.Value!.Value)} beyond the play of the screws.",
            FitAspect.SensorSpan => $"Wide open it would read {units.Write(Quantity.Voltage, finding.Value!.Value)}, at most {units.Write(Quantity.Voltage, finding.Max!.Value)} follow the shaft.",
            FitAspect.SensorChecks => $"Set as well as it can be, it fails {string.Join(", ", finding.Codes)}.",
            FitAspect.Holes => $"Turned as well as it can be, its worst hole or passage misses by {Length(finding.Value!.Value)} beyond the play."
                + (finding.WouldTurnedOver ? " Turned over it would fit: if you measured it from its sealing face, change the sign of every x." : ""),
            FitAspect.AirPorts => $"It has {Openings(compared!.Value.Part)} where {compared.Value.Body} are needed.",
            FitAspect.AirSize => $"A passage for air differs by {Length(finding.Value!.Value)} in diameter, allowed are {Length(finding.Max!.Value)}.",
            FitAspect.WaterPorts => $"It has {Openings(compared!.Value.Part)} for water where the throttle body has {compared.Value.Body}. Cap them, or take another valve.",
            FitAspect.NosePlay when finding.Value < 0 => $"Its nose is {Length(-finding.Value!.Value)} too thick for the bore.",
            FitAspect.NosePlay => $"Its nose has {Length(finding.Value!.Value)} of play in the bore, allowed are {Length(finding.Max!.Value)}.",
            FitAspect.RingSqueeze => $"Squeeze of the O-ring {Range(finding, units)}{(finding.Value < finding.Min ? ": it leaks" : ": it tears, or does not go in")}. Another ring may correct it.",
            FitAspect.RingFill => $"The O-ring fills {Share(finding.Value!.Value, units)} of its groove, allowed are {Share(finding.Max!.Value, units)}: heat swells it.",
            FitAspect.RingStretch => $"The O-ring is stretched {Share(finding.Value!.Value, units)} over its groove, allowed are {Share(finding.Min!.Value, units)} to {Share(finding.Max!.Value, units)}.",
            FitAspect.ScrewEngagement => $"Too short: {Length(finding.Value!.Value)} of thread hold, {Length(finding.Min!.Value)} are needed.",
            FitAspect.ScrewBottom => $"Too long: it goes {Length(finding.Value!.Value)} deep, the thread is {Length(finding.Max!.Value)} deep.",
            FitAspect.ScrewLength => $"It is {Length(finding.Value!.Value)} long; this bracket takes {Length((finding.Min!.Value + finding.Max!.Value) / 2)}.",
            FitAspect.Pieces => $"There are only {Phrases.Plain(finding.Value!.Value)} of them, {Phrases.Plain(finding.Min!.Value)} are needed.",
            FitAspect.StopHeight => $"It cannot stand {Length(finding.Min!.Value)} to {Length(finding.Max!.Value)} above the floor, which the pedal needs; the nearest is {Length(finding.Value!.Value)}.",
            FitAspect.OnBody => "They belong to the sensor on the throttle body.",
            FitAspect.WholeJob when finding.Codes.IsEmpty => "It does not go onto the mount face, or the wire does not reach it.",
            FitAspect.WholeJob => $"With it the whole job fails {string.Join(", ", finding.Codes)}."
                + (option.Part?.Measures is BracketMeasures ? " The command check says what would correct it." : option.Own == OwnPart.MadeBracket ? " The command make says what would open a way." : ""),
            _ => "It does not fit.",
        };
    }

    private static string Open(FitFinding finding, KitOption option, UnitSystem units)
    {
        string Rough(string what) => $"Measure {what} better: with its ± {Limit(finding, units)}.";
        return finding switch
        {
            { Aspect: FitAspect.WholeJob } => $"Nothing fails with it, but not known is {string.Join(", ", finding.Codes)}: see the command {(option.Part?.Measures is BracketMeasures ? "check" : "make")}.",
            { Aspect: FitAspect.SpringsAlone } => "Measure each spring of the throttle body alone, the others unhooked: [[return_springs.each]].",
            { Aspect: FitAspect.WaterPorts, Missing: MissingOn.Job } => "Say in [kit] of the job what becomes of the passages for water: water = \"used\" or \"capped\".",
            { Aspect: FitAspect.SensorChecks } => $"Whether it can be set is not known ({string.Join(", ", finding.Codes)}): measure its slots and the holes for its screws.",
            { Aspect: FitAspect.SensorReading } => "Read it on this throttle body on both stops, cable off, screws in the middle of their slots: closed_volts, open_volts.",
            { Missing: MissingOn.Held } when finding.Aspect == FitAspect.ScrewLength => "Which length the bracket takes is not known before there is one.",
            { Missing: MissingOn.Held } => "Measure flange_thickness of the part that they hold.",
            { IsTooRough: true } => Rough(Measure(finding.Aspect)),
            _ => $"Measure {Measure(finding.Aspect)}: {Keys(finding)}.",
        };
    }

    private static string Limit(FitFinding finding, UnitSystem units) => finding.Aspect switch
    {
        FitAspect.RingSqueeze => $"the squeeze of the O-ring, {Range(finding, units)}, may be over a limit",
        FitAspect.RingStretch => $"the stretch of the O-ring, {Range(finding, units)}, may be over a limit",
        FitAspect.RingFill => $"the O-ring fills {Share(finding.Value!.Value, units)} of its groove, allowed are {Share(finding.Max!.Value, units)}, and may fill more",
        FitAspect.Holes or FitAspect.SensorHoles => "a hole or passage may miss by more than its play",
        _ => $"it is {Length(finding.Value!.Value, units)}, allowed are {Length(finding.Min!.Value, units)} to {Length(finding.Max!.Value, units)}, and may be over a limit",
    };

    // What is measured for an aspect, as people say it.
    private static string Measure(FitAspect aspect) => aspect switch
    {
        FitAspect.DriveShape => "the shape of the shaft's end",
        FitAspect.DrivePlay => "the shaft's end and what takes it",
        FitAspect.SensorHoles => "the holes round the shaft and the slots of the sensor",
        FitAspect.Holes => "holes, hole diameter and thread",
        FitAspect.AirPorts or FitAspect.AirSize => "the passages for air",
        FitAspect.WaterPorts => "the passages for water; if there are none, say so with water = []",
        FitAspect.NosePlay => "nose and bore",
        FitAspect.RingSqueeze or FitAspect.RingFill or FitAspect.RingStretch => "the O-ring, its groove and the bore",
        FitAspect.ScrewBottom => "how deep the thread is",
        _ => "it",
    };

    private static string Keys(FitFinding finding)
    {
        var (part, body) = finding.Aspect switch
        {
            FitAspect.DriveShape => ("drive", "drive of [sensor_mount]"),
            FitAspect.DrivePlay => ("drive_size", "drive_size of [sensor_mount]"),
            FitAspect.SensorHoles => ("slots", "holes and thread of [sensor_mount]"),
            FitAspect.Holes => ("holes, hole_diameter, openings", "holes and thread of its opening"),
            FitAspect.AirPorts => ("air", "air of [idle_mount]"),
            FitAspect.WaterPorts => ("water", "water of [idle_mount]"),
            FitAspect.NosePlay => ("nose_diameter", "bore of [pressure_port]"),
            FitAspect.RingSqueeze => ("nose_diameter, groove_diameter, groove_width, ring_section, ring_inside", "bore of [pressure_port]"),
            FitAspect.ScrewBottom => ("", "thread_depth of the holes"),
            _ => ("", ""),
        };
        List<string> all = [.. finding.Missing.HasFlag(MissingOn.Part) ? [$"{part} of the part"] : Array.Empty<string>(), .. finding.Missing.HasFlag(MissingOn.Body) ? [$"{body} in the throttle body's file"] : Array.Empty<string>()];
        return Phrases.List(all);
    }

    // Play is small, parts are not.
    private static string Length(double value, UnitSystem units) => Math.Abs(value) < 1 ? units.WriteFine(Quantity.Length, value) : units.Write(Quantity.Length, value);

    private static string Openings(string count) => count == "1" ? "1 opening" : $"{count} openings";

    private static string Share(double value, UnitSystem units) => units.Write(Quantity.Fraction, value);

    private static string Range(FitFinding finding, UnitSystem units) => $"{Share(finding.Value!.Value, units)}, allowed {Share(finding.Min!.Value, units)} to {Share(finding.Max!.Value, units)}";
}
