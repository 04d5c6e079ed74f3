using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.SheetMetal.Fasteners;

namespace BracketGen.Design.Kit;

/// <summary>Whether screws are long enough for what they hold, and not too long for their holes. Their thread is that of the holes.</summary>
public static class ScrewFit
{
    /// <summary>Thickness of a gasket that the screws go through as well (mm; common practice, no source).</summary>
    public const double Gasket = 1;

    /// <summary>The findings.</summary>
    /// <param name="part">The screws.</param>
    /// <param name="holes">The tapped holes.</param>
    /// <param name="held">Thickness of what they hold (mm); null where it is not known.</param>
    /// <param name="hasGasket">Whether there may be a gasket between.</param>
    public static ImmutableArray<FitFinding> Of(ScrewMeasures part, ScrewPattern holes, double? held, bool hasGasket)
    {
        if (held is not { } thickness)
        {
            return [new(FitAspect.ScrewEngagement, FitState.NotKnown) { Missing = MissingOn.Held }];
        }

        // With the gasket as thick as it may be it holds least; without one the screw goes deepest.
        double least = part.Length - thickness - (hasGasket ? Gasket : 0), most = part.Length - thickness;
        var holds = FitFinding.Within(FitAspect.ScrewEngagement, (least, least, least), MountScrew.LeastEngagement * part.Thread.Diameter, double.PositiveInfinity);
        return
        [
            holds with { Max = null },
            holes.Depth is { } depth
                ? FitFinding.Within(FitAspect.ScrewBottom, (most, most, most), double.NegativeInfinity, depth) with { Min = null }
                : FitFinding.NotMeasured(FitAspect.ScrewBottom, part: false, body: true),
        ];
    }
}
