using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Units;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Measuring;

/// <summary>A sketch of the worksheet with what one needs to know beside it.</summary>
/// <param name="Title">What it is about, with its number on the sheet.</param>
/// <param name="Svg">The sketch, an SVG document.</param>
/// <param name="Tool">With what to measure.</param>
/// <param name="Mistake">What goes wrong most often.</param>
/// <param name="Blanks">The numbers it asks for, with their letters on the sketch.</param>
public sealed record WorksheetSketch(string Title, string Svg, string Tool, string Mistake, ImmutableArray<Blank> Blanks);

/// <summary>The worksheet's sketches one by one, for pages that ask for the same numbers.</summary>
public static class WorksheetSketches
{
    /// <summary>Those of the throttle body, in the order in which one goes round it.</summary>
    public static ImmutableArray<WorksheetSketch> OfThrottleBody { get; } = [.. WorksheetSections.OfThrottleBody(UnitSystem.Metric).Select(Of)];

    /// <summary>Those of the vehicle.</summary>
    public static ImmutableArray<WorksheetSketch> OfVehicle { get; } = [.. WorksheetSections.OfVehicle(UnitSystem.Metric).Select(Of)];

    private static WorksheetSketch Of(WorksheetSection section) =>
        new(section.Title, SvgWriter.Write(Sketches.Of(section)), section.Tools, section.Mistake, section.Blanks);
}
