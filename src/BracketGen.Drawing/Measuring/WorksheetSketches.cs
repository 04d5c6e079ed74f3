using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Units;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Measuring;

/// <summary>A sketch of the worksheet with what one needs to know beside it.</summary>
/// <param name="Svg">The sketch, an SVG document.</param>
/// <param name="Tool">With what to measure.</param>
/// <param name="Mistake">What goes wrong most often.</param>
/// <param name="Blanks">Letter on the sketch (may be empty) and last part of the key of each number it asks for.</param>
public sealed record WorksheetSketch(string Svg, string Tool, string Mistake, ImmutableArray<(string Letter, string Key)> Blanks);

/// <summary>The worksheet's sketches one by one, for pages that ask for the same numbers.</summary>
public static class WorksheetSketches
{
    /// <summary>Those of the throttle body, in the order in which one goes round it.</summary>
    public static ImmutableArray<WorksheetSketch> OfThrottleBody { get; } = [.. WorksheetSections.OfThrottleBody(UnitSystem.Metric).Select(Of)];

    /// <summary>Those of the vehicle.</summary>
    public static ImmutableArray<WorksheetSketch> OfVehicle { get; } = [.. WorksheetSections.OfVehicle(UnitSystem.Metric).Select(Of)];

    private static WorksheetSketch Of(WorksheetSection section) =>
        new(SvgWriter.Write(Sketches.Of(section.Sketch)), section.Tools, section.Mistake, [.. section.Blanks.Select(b => (b.Letter, b.Key))]);
}
