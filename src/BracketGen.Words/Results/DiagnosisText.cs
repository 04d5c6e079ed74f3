using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Results;

/// <summary>What blocks every bracket and what was tried against it, in words; screen, page and report say the same.</summary>
public static class DiagnosisText
{
    /// <summary>Heading of the remedies.</summary>
    public const string AnyOne = "Any one of these was tried and leads to a bracket with which nothing fails:";

    /// <summary>Said where none was found.</summary>
    /// <param name="diagnosis">The diagnosis.</param>
    public static string NoneFound(Diagnosis diagnosis) =>
        "No change was found that leads to a bracket with which nothing fails. Tried, each alone and two together: free inner length, adjuster range, "
        + "pitch radius of the quadrant, free play, the wire's hole on the pedal's arm, a pedal stop, keep-outs. Tried alone: the stiffness of an outer that nobody measured, sheets, and limits of the job that are stricter than the usual."
        + (diagnosis.IsCutShort ? " The search for changes ended at its limit: others may exist." : "");

    /// <summary>One cause.</summary>
    public static string Obstacle(Obstacle obstacle, UnitSystem units) => obstacle.Of == 0
        ? $"{obstacle.Nearest.Code}: {obstacle.Nearest.Consequence()}"
        : $"{obstacle.Nearest.Code} stops {obstacle.Stopped} of {obstacle.Of} shapes; the nearest has {CheckText.Value(obstacle.Nearest, units)}, {CheckText.Limit(obstacle.Nearest, units)}";

    /// <summary>How far a search without a bracket went; null where it found one.</summary>
    public static string? Searched(Solution solution)
    {
        if (solution.Search is not { Best: null } search)
        {
            return null;
        }

        return search.IsCertain
            ? $"None of {search.AllShapes ?? search.Shapes} shapes passes."
            : $"{search.Shapes} of {search.AllShapes ?? search.Shapes} shapes were judged. Whether none passes is not proven: raise --judge.";
    }

    /// <summary>One remedy: old value, new value, and what decides then.</summary>
    public static string Way(WayOpened way, UnitSystem units)
    {
        var changes = string.Join(", and ", way.Changes.Select(c => Change(c, units)));
        return way.Decides is { } check
            ? $"{changes}. Then the tightest check is {check.Code}: {CheckText.Value(check, units)}, {CheckText.Limit(check, units)}."
            : $"{changes}.";
    }

    private static string Change(InputChange change, UnitSystem units)
    {
        string Length(double value) => units.Write(Quantity.Length, value);
        string Instead(Quantity quantity) => $"{Name(change.Input)} of {units.Write(quantity, change.To)} instead of {units.Write(quantity, change.From)}";
        string InStock() => $"the job's {Name(change.Input)} rules out {change.What} of {units.WriteSize(change.To)}: allow {units.WriteSize(change.To)} instead of {units.WriteSize(change.From)}";
        return change.Input switch
        {
            ChangedInput.KeepOut => $"{change.What} smaller by {Length(change.To)} on every side",
            ChangedInput.Stock => $"buy {change.What} of {units.WriteSize(change.To)}",
            ChangedInput.MinThickness or ChangedInput.MaxThickness => InStock(),
            ChangedInput.Materials => $"the job's materials rule out {change.What} of {units.WriteSize(change.To)}: allow {change.What}",
            ChangedInput.QuadrantRadius => $"{Instead(Quantity.Length)}, the outer radius larger or smaller by as much",
            ChangedInput.OuterStiffness => $"measure the axial stiffness of the outer: {units.Write(Quantity.Force, change.To)} at most with its ±, instead of the {units.Write(Quantity.Force, change.From)} assumed",
            ChangedInput.PedalHole => $"the wire's hole on the pedal's arm at {UnitSystem.Metric.Write(Quantity.Fraction, change.To)} of its distance from the pivot today: pull and 1/lever_ratio change by as much",
            ChangedInput.SlotTravel when change.To <= 0 => $"round mount holes instead of slotted ones that let the bracket be shifted by {units.Write(Quantity.Length, change.From)}",
            ChangedInput.MinWrap => Instead(Quantity.Angle),
            ChangedInput.AdjusterReserve => Instead(Quantity.Fraction),
            ChangedInput.MinYieldFactor or ChangedInput.MinEnduranceFactor or ChangedInput.MinFrequencyRatio => Instead(Quantity.Number),
            _ => Instead(Quantity.Length),
        };
    }

    /// <summary>The input that is changed, in words.</summary>
    public static string Name(ChangedInput input) => input switch
    {
        ChangedInput.FreeInnerLength => "free inner length",
        ChangedInput.AdjusterRange => "adjuster range",
        ChangedInput.QuadrantRadius => "pitch radius of the quadrant",
        ChangedInput.FreePlay => "free play",
        ChangedInput.KeepOut => "keep-out",
        ChangedInput.PedalHole => "hole on the pedal's arm",
        ChangedInput.PedalStop => "pull to a pedal stop",
        ChangedInput.OuterStiffness => "axial stiffness of the outer",
        ChangedInput.Stock => "sheet to be bought",
        ChangedInput.MinThickness => "minimum thickness",
        ChangedInput.MaxThickness => "maximum thickness",
        ChangedInput.Materials => "materials",
        ChangedInput.MaxGive => "maximum give",
        ChangedInput.MinYieldFactor => "minimum yield factor",
        ChangedInput.MinEnduranceFactor => "minimum endurance factor",
        ChangedInput.MinFrequencyRatio => "minimum frequency ratio",
        ChangedInput.SweepClearance => "sweep clearance",
        ChangedInput.KeepOutClearance => "keep-out clearance",
        ChangedInput.OuterClearance => "outer clearance",
        ChangedInput.FittingClearance => "fitting clearance",
        ChangedInput.MinWrap => "minimum wrap angle",
        ChangedInput.MinFreePlay => "minimum free play",
        ChangedInput.MinOverTravel => "minimum over-travel",
        ChangedInput.SlotTravel => "travel of the slotted mount holes",
        _ => "adjuster reserve",
    };

    /// <summary>Name of an input in result.json: its words joined by hyphens.</summary>
    public static string Code(ChangedInput input) => Name(input).Replace(' ', '-').Replace("'", "", StringComparison.Ordinal);
}
