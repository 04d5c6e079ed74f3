using BracketGen.Design.Study;
using BracketGen.Units;

namespace BracketGen.Words.Inspecting;

/// <summary>What the inspection sheet says, and what the readings of a finished bracket mean.</summary>
public static class InspectionText
{
    /// <summary>Heading of the sheet.</summary>
    public const string Title = "Inspection sheet";

    /// <summary>Heads of the table.</summary>
    public static IReadOnlyList<string> Heads { get; } = ["No.", "Dimension", "As drawn", "Minimum", "Maximum", "Measured"];

    /// <summary>How to measure.</summary>
    /// <param name="item">A dimension.</param>
    public static string What(InspectionItem item) => item.Thing switch
    {
        InspectedThing.Size => $"{item.Of}: {(item.IsSlot || item.IsSlotted ? "width of the slot" : item.IsSquare ? "side of the square, both ways" : "diameter")}",
        InspectedThing.SlotLength => $"{item.Of}: length of the slot over all",
        InspectedThing.Distance => $"{item.From} to {item.Of}, centre to centre",
        InspectedThing.IncludedAngle => $"bend {item.Of}: included angle",
        InspectedThing.HoleAlong when item.Towards is null => $"{item.Of} on the side that is bolted down, x: from {item.From}, along the x axis of the flat pattern",
        InspectedThing.HoleAlong => $"{item.Of} on the side that is bolted down, x: from {item.From}, along the line from {item.From} to {item.Towards}",
        InspectedThing.HoleAcross => $"{item.Of} there, y: from {item.From}, square to that",
        InspectedThing.HoleHeight => $"{item.Of} there, z: from the mount face",
        InspectedThing.StopAlong when item.Towards is null => $"{item.Of} at the seat, x: from {item.From}, along the x axis of the flat pattern",
        InspectedThing.StopAlong => $"{item.Of} at the seat, x: from {item.From}, along the line from {item.From} to {item.Towards}",
        InspectedThing.StopAcross => $"{item.Of} at the seat, y: from {item.From}, square to that",
        _ => $"{item.Of} at the seat, z: from the mount face",
    };

    /// <summary>Notes below the table.</summary>
    /// <param name="items">What is measured.</param>
    public static IReadOnlyList<string> Notes(IReadOnlyList<InspectionItem> items) =>
    [
        $"Put the mount face on a surface plate and pins in the holes. x is positive {(items.First(i => i.Thing == InspectedThing.StopAlong) is { From: { } from, Towards: { } to } ? $"from {from} to {to}" : "as in the flat pattern")}; y is positive to the left of that, seen from the side away from the mount face; z is positive away from it.",
        !items.Any(i => i.Thing == InspectedThing.StopHeight)
            ? "Measure x and y of the stop's hole at its centre."
            : "Measure x, y and z at the middle of the stop's hole on the side marked S. Where the seat is inclined, put a pin with a flat head in the hole and measure to the middle of the head.",
        .. items.Any(i => i.IsSlotted) ? ["A slotted hole counts by the middle of its slot: put a pin against each end and take the mean."] : Array.Empty<string>(),
        "Measure each dimension twice, and write down the mean. Give the readings to the command \"inspect\": it says whether the bracket is as drawn, and whether it is good on this vehicle all the same.",
        "Do not fit a bracket that is not as drawn before that was calculated. A throttle that sticks open can kill.",
    ];

    /// <summary>A value in the job's unit.</summary>
    public static string Value(InspectionItem item, double value, UnitSystem units) =>
        item.Thing == InspectedThing.IncludedAngle ? units.Write(Quantity.Angle, value) : units.WriteFine(Quantity.Length, value);

    /// <summary>A row of the table, with the reading or a blank.</summary>
    public static IReadOnlyList<string> Row(InspectionItem item, double? reading, UnitSystem units) =>
    [
        item.Name, What(item), Value(item, item.Nominal, units), Value(item, item.Nominal - item.PlusMinus, units), Value(item, item.Nominal + item.PlusMinus, units),
        reading is { } value ? Value(item, value, units) : "",
    ];

    /// <summary>What a reading says.</summary>
    public static string Mark(InspectionItem item, double? reading) => reading is not { } value ? "not measured" : item.Holds(value) ? "as drawn" : "OUT";

    /// <summary>The stop's place, where it was measured.</summary>
    public static IEnumerable<string> Places(Inspection inspection, UnitSystem units)
    {
        if (inspection.Position is var (position, allowed))
        {
            yield return $"Position of the stop's hole: within a diameter of {units.WriteFine(Quantity.Length, position)} about its true place; the drawing allows {units.WriteFine(Quantity.Length, allowed)}.";
        }

        if (inspection.Profile is var (profile, width))
        {
            yield return $"Place of the seat: within a width of {units.WriteFine(Quantity.Length, profile)} about its true place; the drawing allows {units.WriteFine(Quantity.Length, width)}.";
        }
    }

    /// <summary>Whether it is as drawn.</summary>
    public static string Drawn(Inspection inspection) =>
        !inspection.IsAsDrawn ? "The bracket is not as drawn."
        : inspection.IsWhole ? "The bracket is as drawn."
        : "What was measured is as drawn. What was not measured is taken as drawn.";

    /// <summary>Said where a verdict that passes rests on what nobody measured.</summary>
    public static string NotWhole(Inspection inspection) =>
        $"Not proven: {string.Join(", ", inspection.Items.Where(i => i.Reading is null).Select(i => i.Item.Name))} {(inspection.Items.Count(i => i.Reading is null) == 1 ? "was" : "were")} not measured. Measure all dimensions.";

    /// <summary>The question that the verdict answers.</summary>
    public const string Question = "this bracket as measured, on this vehicle";

    /// <summary>Said where the wire does not reach.</summary>
    public const string NoWire = "The wire does not reach the seat where it was measured. Do not fit this bracket.";

    /// <summary>A reading that is not understood.</summary>
    /// <param name="text">What was given.</param>
    /// <param name="why">Why; null for its form.</param>
    public static string BadReading(string text, string? why) => $"the reading '{text}' is not understood. {why ?? "Write the number of the dimension, = and the value: D1=6.62."}";

    /// <summary>A reading of a dimension that there is not.</summary>
    public static string NoSuch(string name, IEnumerable<InspectionItem> items) => $"{name} is no dimension of this bracket. It has {items.First().Name} to {items.Last().Name}.";

    /// <summary>A reading that is given twice.</summary>
    public static string Twice(string name) => $"{name} is given twice. Give the mean of what you measured.";

    /// <summary>A reading that cannot be of the dimension.</summary>
    public static string NotOf(InspectionItem item, double value, UnitSystem units) =>
        $"{item.Name} was given as {Value(item, value, units)}, and is {Value(item, item.Nominal, units)} as drawn: that is another dimension or another bracket. Measure again.";

    /// <summary>Some places of the stop are missing.</summary>
    public static string WholePlace(IEnumerable<InspectionItem> missing) => $"the stop's place needs all its readings: {string.Join(" and ", missing.Select(m => m.Name))} {(missing.Count() == 1 ? "is" : "are")} missing.";
}
