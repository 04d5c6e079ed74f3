using BracketGen.Design.Checks;
using BracketGen.Units;

namespace BracketGen.Words.Checks;

/// <summary>A check as people read it: title, numbers in the job's units, consequence, source.</summary>
public static class CheckText
{
    /// <summary>A check's value.</summary>
    public static string Value(Check check, UnitSystem units) =>
        check.Id == CheckId.ClosingTime && double.IsPositiveInfinity(check.Value) ? "never" : units.Write(check.Unit, check.Value);

    /// <summary>A check's limit: "at least 3.0 mm".</summary>
    public static string Limit(Check check, UnitSystem units) =>
        (check.Bound == Bound.AtLeast ? "at least " : "at most ") + units.Write(check.Unit, check.Limit);

    /// <summary>A check's margin.</summary>
    public static string Margin(Check check, UnitSystem units) => units.Write(check.Unit, check.Margin);

    /// <summary>What a check's kind means, in one word.</summary>
    public static string Kind(CheckKind kind) => kind switch
    {
        CheckKind.Safety => "safety",
        CheckKind.Function => "function",
        CheckKind.Making => "making",
        _ => "advice",
    };

    /// <summary>What is known of a check, as files name it.</summary>
    public static string State(CheckState state) => state switch
    {
        CheckState.Passes => "passes",
        CheckState.Fails => "fails",
        _ => "not known",
    };

    /// <summary>One word or two on a check: what a table marks it with.</summary>
    public static string Mark(Check check) => check switch
    {
        { Passes: true } => "ok",
        { Kind: CheckKind.Advice } => "to do",
        { State: CheckState.NotKnown } => "NOT KNOWN",
        { Kind: CheckKind.Safety } => "UNSAFE",
        _ => "FAILS",
    };

    /// <summary>What is checked, in a few words.</summary>
    public static string Title(this Check check) => check is { IsAtSlotEnd: true, Id: not (CheckId.SlotEnds or CheckId.SlotFreePlay) } ? $"{TitleOf(check)}, bracket at an end of its slots" : TitleOf(check);

    private static string TitleOf(Check check)
    {
        var bend = check.Number is { } number ? $"bend {number}" : "the bend";
        return check.Id switch
        {
            CheckId.BoltHoleEdge when check.IsVariant => $"Middle line of slotted hole {check.Subject} to the edge",
            CheckId.BoltHoleEdge or CheckId.StopHoleEdge => $"Centre of hole {check.Subject} to the edge",
            CheckId.HoleBend => $"Edge of hole {check.Subject} to {bend}",
            CheckId.BendRadius => $"Inside radius of {bend}, grain {(check.IsVariant ? "along" : "across")} it",
            CheckId.ShortestFlange => $"Shorter flange at {bend}, outside",
            CheckId.BendAngle => $"Angle of {bend}",
            CheckId.DieShoulders when check.Number is not null => $"Carried by the die's shoulders, {bend}",
            CheckId.HoleOverDie => $"Edge of hole {check.Subject} to the middle of {bend}",
            CheckId.BendGauge when check.Number is not null => $"Place of the line of {bend}, ±",
            CheckId.KeepOut => $"Bracket to {check.Subject}",
            _ when check.Duty is not null => CableWords.Title(check),
            CheckId.BoltRoom => $"Room for the socket on bolt {check.Subject}, radius",
            _ when check.Pair is { } pair => $"{ThingText.Capital(pair.One, check.Subject)} to {ThingText.Of(pair.Other, check.Subject)}{(IsOverSweep(pair) ? " over the sweep" : "")}",
            _ => CheckWords.Of(check.Id).Title,
        };
    }

    private static bool IsOverSweep(Pair pair) => pair.One is Thing.Quadrant or Thing.Wire || pair.Other is Thing.Quadrant or Thing.Wire;

    /// <summary>What happens where the check fails, and what to do; where it is not known, what to measure or calculate.</summary>
    public static string Consequence(this Check check) => check is { PassesInMiddleOfSlots: true, Id: not (CheckId.SlotEnds or CheckId.SlotFreePlay) }
        ? $"{ConsequenceOf(check)} It passes in the middle of the slots: make the slots shorter, or the holes round." : ConsequenceOf(check);

    private static string ConsequenceOf(Check check) => check.Duty is not null && CableWords.IsLeftOut(check.Id) ? CableWords.Consequence(check) : check.State == CheckState.NotKnown ? NotKnown(check) : check.Id switch
    {
        CheckId.KeepOut => $"The bracket meets {check.Subject}.",
        CheckId.BracketShape when check.IsVariant =>
            "The wire is too short: with the valve closed nothing of it is left beyond the groove. Fit a cable with more free inner length.",
        _ when check.Measure is { } again => $"{CheckWords.Of(check.Id).Consequence} {MeasureText.Of(again)}",
        _ => CheckWords.Of(check.Id).Consequence,
    };

    /// <summary>Where the limit comes from.</summary>
    public static string Source(this Check check) => check.GivenSource ?? (check is { Id: CheckId.BoltHoleEdge, IsVariant: true } ? "EN 1993-1-8, table 3.3, slotted holes (1.5 d; from memory)" : null) ?? SourceOf(check.Definition.Source);

    /// <summary>A source in words.</summary>
    public static string SourceOf(LimitSource source) => source switch
    {
        LimitSource.CommonPractice => "common practice, no source",
        LimitSource.Judgement => "our judgement, no source",
        LimitSource.Preference => "job preferences (default: common practice, no source)",
        LimitSource.Profile => "profile",
        LimitSource.Geometry => "geometry",
        LimitSource.PocketPlusMinus => "± of the pocket angle",
        LimitSource.BoltPlay => "ISO 273, medium: play of the bolts",
        LimitSource.TwoSprings => "49 CFR 571.124 S5",
        LimitSource.ClosingTime => "49 CFR 571.124 S5.3 (from memory)",
        LimitSource.EdgeDistance => "EN 1993-1-8, table 3.3 (1.2 d); in thin sheet also EN 1993-1-3, table 8.4 (1.5 d; from memory)",
        LimitSource.SheaveRatio => "Machinery's Handbook, wire rope, minimum sheave diameters (from memory)",
        LimitSource.ScrewGuideline => "VDI 2230 Blatt 1 (from memory)",
        LimitSource.VDie => "geometry of the V-die, (V/2) / cos(A/2)",
        _ => "the material's data sheet",
    };

    // What to measure where an input is missing; null where nothing is.
    private static string? Measure(CheckId id) => CableWords.Measure(id) ?? id switch
    {
        CheckId.PocketShape or CheckId.PocketPlay or CheckId.PocketHold or CheckId.PocketTurn or CheckId.PocketDepth =>
            "How the pocket holds the end fitting is not known. Measure its kind, its diameter or width, its depth and the direction of its axis: [quadrant.pocket] of the throttle body.",
        CheckId.BodyDescribed =>
            "The throttle body's casting is not described. Measure where the bore lies: [bore_axis] of the throttle body. Or describe the whole casting with keep-outs and write body_shape = \"keep-outs\".",
        CheckId.BendOrder =>
            "Which punches and dies the shop has is not known. Add them to the shop's file: [[punches]], and the angle and body_width of each of the [[dies]].",
        CheckId.ThreadDepth => "How deep the thread in the boss is, is not known. Turn a screw into it by hand and measure how far it goes: thread_depth of [[mount.holes]].",
        CheckId.RingBoltDepth => "How deep the thread under a longer flange bolt is, is not known. Turn a longer screw into it by hand and measure how far it goes: thread_depth of [[mount.adapter_ring.bolts]].",
        CheckId.StudDepth => "How deep the stud goes into the boss is not known. Take it out with two nuts locked against each other and measure its thread below the face: thread_depth of [[mount.holes]].",
        CheckId.NutRoom => "How much room there is behind the flange is not known. Measure it over the whole nut and washer: room_behind of [[mount.holes]].",
        CheckId.Finish => "The finish of the bracket is not stated. Write finish in the job, or with the material in the shop's file.",
        CheckId.WireBend => "How the wire is stranded is not known. Count strands and wires at a cut end: wire_construction of the cable.",
        CheckId.OuterBoreTight or CheckId.OuterBoreLoose => "The outer's inside diameter is not known. Measure it at a cut end: outer_bore of the cable.",
        _ => null,
    };

    private static string NotKnown(Check check) => double.IsNaN(check.Value)
        ? check.IsOnRing ? "What shaking does to bracket and adapter ring together is not calculated. Look for cracks in both at every service."
            : check.Definition.Scope == CheckScope.OwnStrength && check.Id is not (CheckId.ThreadDepth or CheckId.StudDepth or CheckId.NutRoom)
            ? "Strength was not calculated. Calculate it before you make the bracket."
            : Measure(check.Id)
            ?? $"{CheckWords.Of(check.Id).Title}: not calculated. Correct what keeps the travel from being solved."
        : check.Doubt == Doubt.NoBracket
            ? "The give and the tolerances of the bracket count here, and no bracket is designed yet. Design it with make."
        : check.Doubt == Doubt.Reading
            ? "It passes as measured, but not everywhere within the ± of what was measured on the bracket. Measure the bracket more closely and write the ±: holes, corner lines, angles, stop."
        : check.Doubt == Doubt.Sampling
            ? $"It passes in the samples, but they do not prove it with 95 % confidence. {(check.Measure is { } again ? MeasureText.Of(again) : "")}".TrimEnd()
        : check.Id switch
        {
            CheckId.CableReturn or CheckId.CablesReturn or CheckId.CablesReturnOneFailed => CableWords.MeasureDrag,
            CheckId.ReturnMargin or CheckId.ReturnOneFailed =>
                "It passes with the usual values, but not at the bad end of what was assumed. Measure the closing drag of the cable, the drag at the throttle shaft, the friction of the cable, the pedal's own force at the pad, the movement of the engine and each return spring alone, as far as they are assumed.",
            CheckId.FreePlayMoving or CheckId.OuterReach =>
                "It passes at rest, but not at the worst corner of what was assumed. Measure how far the throttle body moves as the engine rocks (engine_movement of the job), the inside diameter of the outer and its length, as far as they are assumed.",
            CheckId.StampedYield or CheckId.StopGive or CheckId.Resonance or CheckId.RingYield when double.IsNaN(check.Unfavourable ?? 0) =>
                "It passes at the highest temperature for which the strength of this sheet is known, but the bracket gets hotter. Take another sheet, or shield the bracket.",
            CheckId.SlotSlip or CheckId.SlotSlipStamped =>
                "It passes with a friction of 0.10, but nobody has tried the friction of the bracket on the bosses, and nothing else holds it along its slots. Try it with a piece of the sheet, finished as the bracket: face_friction in [mount] of the throttle body.",
            CheckId.Endurance or CheckId.RingEndurance when double.IsNaN(check.Unfavourable ?? 0) =>
                "It passes at the highest temperature for which the strength of this sheet is known, but the bracket may get hotter. Measure its temperature with a hot engine ([life] of the job), or take another sheet.",
            CheckId.StampedYield or CheckId.StopGive or CheckId.Resonance or CheckId.RingYield =>
                "It passes with a cold bracket, but not at 100 °C. Measure the temperature of the bracket with a hot engine: temperature in [life] of the job.",
            CheckId.Endurance or CheckId.RingEndurance =>
                "It passes with a cold bracket on a flat mount face, but not at the bad end of what was assumed. Measure the flatness of the bosses ([mount] of the throttle body) and the temperature of the bracket with a hot engine ([life] of the job), as far as they are assumed.",
            CheckId.DeadBand or CheckId.ControllerZero or CheckId.SensorClosed or CheckId.SensorLow or CheckId.SensorHigh =>
                "It passes once the sensor is turned, but nobody has measured how far its slot lets it turn. Measure the sensor's slot.",
            _ => "It passes only as long as the assumed inputs hold. Measure them.",
        };
}
