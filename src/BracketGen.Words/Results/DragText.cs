using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Words.Results;

/// <summary>The cable's drag: what was counted, and how much of it the springs can bear.</summary>
public static class DragText
{
    /// <summary>Heading of the acceptance value.</summary>
    public const string Acceptance = "Maximum closing drag";

    /// <summary>How drag is measured.</summary>
    public const string HowToMeasure = "Spring balance at the end fitting, pedal end unhooked, outer routed as on the vehicle: the largest pull over the whole stroke, breaking away and moving, after standing.";

    /// <summary>What a drag is known by: "measured", or the range that was assumed.</summary>
    /// <param name="drag">The drag.</param>
    /// <param name="atWorst">What it may be where it is assumed.</param>
    /// <param name="quantity">Force or torque.</param>
    /// <param name="units">The job's units.</param>
    public static string Value(Measured drag, double atWorst, Quantity quantity, UnitSystem units) => drag.Evidence == Evidence.Assumed
        ? $"{units.Write(quantity, drag.Value)} assumed, up to {units.Write(quantity, atWorst)}"
        : units.Write(quantity, drag.Value);

    /// <summary>The greatest closing drag with which every return check passes, rounded down: "5.9 N"; "none" where no cable is free enough.</summary>
    /// <param name="study">The study of the return.</param>
    /// <param name="units">The job's units.</param>
    public static string Greatest(ReturnStudy study, UnitSystem units) => study.GreatestDrag is { } drag ? RoundedDown(drag, units) : "none";

    /// <summary>What to do by that value.</summary>
    /// <param name="study">The study of the return.</param>
    /// <param name="units">The job's units.</param>
    public static string Rule(ReturnStudy study, UnitSystem units) => study.GreatestDrag is { } drag
        ? $"Measure the cable before you fit it. More than {RoundedDown(drag, units)}: replace the cable."
        : "The return checks fail even with a cable that has no drag: stronger return springs or a lighter pedal are needed.";

    /// <summary>How the drag was counted.</summary>
    /// <param name="job">The job.</param>
    public static string Counted(Job job) => job.Vehicle.Cable.ClosingDrag.Evidence == Evidence.Assumed
        ? "not measured: a usual value stands in"
        : $"counted {Phrases.Plain(job.Preferences.DirtAndCold)} times for dirt and cold";

    // On the safe side: what is printed is never more than what passes.
    private static string RoundedDown(double drag, UnitSystem units)
    {
        var tenths = Math.Floor(units.In(Quantity.Force, drag) * 10) / 10;
        return units.Write(Quantity.Force, tenths * units.UnitOf(Quantity.Force).Factor);
    }
}
