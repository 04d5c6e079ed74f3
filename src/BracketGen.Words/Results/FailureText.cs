using BracketGen.Design.Checks;
using BracketGen.Mechanism.Cables;
using BracketGen.Units;

namespace BracketGen.Words.Results;

/// <summary>Single failures in words: what breaks, what the valve does then, and what keeps it from happening.</summary>
public static class FailureText
{
    /// <summary>Heading of the table.</summary>
    public const string Heading = "If one thing breaks or comes loose";

    /// <summary>Caption of the table, where a heading goes before it.</summary>
    public const string Caption = "Single failures";

    /// <summary>Before the table.</summary>
    public const string Intro =
        "49 CFR 571.124 S5.1 and S5.2 (from memory) ask that the throttle closes when one return spring fails, and when one part is severed or disconnected at one point. "
        + "Weakest springs, most friction and drag, foot off. Where the wire is gone or slack, the springs work against the shaft alone.";

    /// <summary>Heads of the table.</summary>
    public static IReadOnlyList<string> Heads { get; } = ["what fails", "asked by", "the valve", "torque left", "closed after", "what keeps it from happening"];

    /// <summary>The rows.</summary>
    /// <param name="study">The study of the return.</param>
    /// <param name="end">The outer's end.</param>
    /// <param name="units">The job's units.</param>
    public static IEnumerable<IReadOnlyList<string>> Rows(ReturnStudy study, OuterEnd end, UnitSystem units) => study.Failures.Select(f => (IReadOnlyList<string>)
    [
        What(f, end), Rule(f.Rule), Answer(f.Answer),
        f.TorqueLeft is { } torque ? units.Write(Quantity.Torque, torque) : "",
        f.ClosingTime is { } time ? units.Write(Quantity.Time, time) : "",
        Keeps(f, end),
    ]);

    /// <summary>Name of a failure in files: "wire-at-quadrant", "return-spring-1".</summary>
    public static string Code(SingleFailure failure)
    {
        var name = string.Concat(failure.Id.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString()));
        return failure.Number is { } number ? $"{name}-{number}" : name;
    }

    /// <summary>What fails.</summary>
    public static string What(SingleFailure failure, OuterEnd end) => failure.Id switch
    {
        FailureId.WireAtQuadrant => "wire breaks at the quadrant",
        FailureId.WireAtPedal => "wire breaks at the pedal",
        FailureId.FittingOutOfPocket => "end fitting leaves its pocket",
        FailureId.OuterOffStop => "outer leaves the stop",
        FailureId.OuterEndLoose => end is NuttedEnd ? "locknut loosens" : end is SlottedClip or ClippedFerrule ? "clip loosens" : "ferrule loosens",
        FailureId.ReturnSpring => failure.Number is { } number ? $"return spring {number} breaks" : "a return spring breaks",
        FailureId.PedalSpring => "spring at the pedal breaks",
        FailureId.BracketBolt => "one bolt of the bracket is lost",
        FailureId.StrandInOuter => "frayed strand of the wire catches in the outer",
        _ => "heat softens the outer: ten times the drag (our assumption)",
    };

    /// <summary>Who asks.</summary>
    public static string Rule(FailureRule rule) => rule switch
    {
        FailureRule.EnergySource => "S5.1",
        FailureRule.SingleSeverance => "S5.2",
        _ => "ours",
    };

    /// <summary>What the valve does.</summary>
    public static string Answer(FailureAnswer answer) => answer switch
    {
        FailureAnswer.Closes => "closes",
        FailureAnswer.Hangs => "HANGS OPEN",
        FailureAnswer.NotKnown => "not known",
        FailureAnswer.NotLookedAt => "not looked at",
        _ => "not fitted",
    };

    /// <summary>What keeps it from happening, or what to look at.</summary>
    public static string Keeps(SingleFailure failure, OuterEnd end) => failure.Id switch
    {
        FailureId.WireAtQuadrant => "Fleet angle and groove within their limits; look for broken strands at every service. The loose end must not reach the quadrant's sweep.",
        FailureId.WireAtPedal => "Look for broken strands at every service.",
        FailureId.FittingOutOfPocket => "Slot narrower than the fitting, free play within its range: a slack wire lets it out.",
        FailureId.OuterOffStop => end is SlottedClip ? "Collars on both sides of the sheet, slot square to the wire." : end is PushInEnd ? "Hole as large as the end is made for, all barbs open behind the sheet." : "Hole rather than slot, adjuster or shoulder on the sheet.",
        FailureId.OuterEndLoose => end switch
        {
            NuttedEnd => "Both locknuts tight against the sheet and marked with paint.",
            ClippedFerrule => "Clip seated in its groove all round; shoulder on the sheet.",
            PushInEnd => "Pull at the outer: the barbs hold. Replace an end that was taken out once.",
            _ => "Neck and collars fit the sheet; no play.",
        },
        FailureId.ReturnSpring => "The others must close the valve alone: tried with each spring unhooked in turn.",
        FailureId.PedalSpring => "A pedal's spring closes no valve: a wire cannot push. Without it the pedal's weight pulls the wire: a heavy pedal is assumed.",
        FailureId.BracketBolt => "Bolts at their torque and marked with paint. The bracket then turns about the bolts that are left: not calculated.",
        FailureId.StrandInOuter => "Replace a cable with a broken strand. A strand that jams holds any valve: not calculated.",
        _ => "Keep the outer clear of the exhaust, or shield it.",
    };
}
