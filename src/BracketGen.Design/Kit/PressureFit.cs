using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;

namespace BracketGen.Design.Kit;

/// <summary>Whether a pressure sensor's nose with its O-ring seals in its bore.</summary>
/// <remarks>
/// A ring at rest in a round gap: limits from memory of the practice in ISO 3601-2. A book on O-rings gives 27 % squeeze for a section of 0.070 in to 18 % for
/// 0.275 in as usual for seals at rest, and a maker of rings a fill of 85 to 90 % at most.
/// </remarks>
public static class PressureFit
{
    /// <summary>Least and most squeeze, a part of the ring's section.</summary>
    public const double LeastSqueeze = 0.10, MostSqueeze = 0.35;

    /// <summary>Most of the groove that the ring may fill: heat swells it.</summary>
    public const double MostFill = 0.85;

    /// <summary>Most stretch of the ring over the bottom of its groove.</summary>
    public const double MostStretch = 0.05;

    /// <summary>Most play of the nose in its bore (mm; common practice, no source): the ring must not creep into the gap, and the sensor must not tilt.</summary>
    public const double MostNosePlay = 0.5;

    /// <summary>The findings.</summary>
    /// <param name="part">The sensor.</param>
    /// <param name="port">Its bore; null where none was measured.</param>
    public static ImmutableArray<FitFinding> Of(PressureMeasures part, PressurePort? port) =>
        [Nose(part.Nose, port?.Bore), .. Ring(part, port?.Bore), .. Holes(part, port?.Screws)];

    private static FitFinding Nose(Measured? nose, Measured? bore) => nose is not { } its || bore is not { } the
        ? FitFinding.NotMeasured(FitAspect.NosePlay, nose is null, bore is null)
        : FitFinding.Within(FitAspect.NosePlay, (the.Min - its.Max, the.Value - its.Value, the.Max - its.Min), 0, MostNosePlay);

    private static IEnumerable<FitFinding> Ring(PressureMeasures part, Measured? bore)
    {
        if (part is not { Nose: { } nose, GrooveDiameter: { } bottom, GrooveWidth: { } width, RingSection: { } section, RingInside: { } inside } || bore is not { } the)
        {
            yield return FitFinding.NotMeasured(FitAspect.RingSqueeze, part.Nose is null || part.GrooveDiameter is null || part.GrooveWidth is null || part.RingSection is null || part.RingInside is null, bore is null);
            yield break;
        }

        double Stretch(double groove, double ring) => groove / ring - 1;
        yield return FitFinding.Within(
            FitAspect.RingStretch, (Stretch(bottom.Min, inside.Max), Stretch(bottom.Value, inside.Value), Stretch(bottom.Max, inside.Min)), 0, MostStretch);

        // Rubber keeps its volume: a stretched ring is thinner. The nose may lie to one side by half its play: one side of the gap is wider by that, the other narrower.
        double Squeeze(double hole, double groove, double free, double aside) => 1 - ((hole - groove) / 2 + aside) / (free / Math.Sqrt(Math.Max(1, groove / inside.Value)));
        var (least, most) = (Math.Max(0, the.Min - nose.Max) / 2, Math.Max(0, the.Max - nose.Min) / 2);
        double Weak(double aside) => Squeeze(the.Max, bottom.Min, section.Min, aside);
        double Strong(double aside) => Squeeze(the.Min, bottom.Max, section.Max, aside);
        var state = Weak(most) >= LeastSqueeze && Strong(-most) <= MostSqueeze ? FitState.Fits
            : Strong(least) < LeastSqueeze || Weak(-least) > MostSqueeze ? FitState.DoesNotFit
            : FitState.NotKnown;
        yield return new(FitAspect.RingSqueeze, state) { Value = Squeeze(the.Value, bottom.Value, section.Value, 0), Min = LeastSqueeze, Max = MostSqueeze };

        double Fill(double hole, double groove, double wide, double free) => Math.PI / 4 * free * free / Math.Max(Tolerance.SameSize, (hole - groove) / 2 * wide);
        yield return FitFinding.Within(
            FitAspect.RingFill,
            (Fill(the.Max, bottom.Min, width.Max, section.Min), Fill(the.Value, bottom.Value, width.Value, section.Value), Fill(the.Min, bottom.Max, width.Min, section.Max)),
            0, MostFill);
    }

    // A port without holes holds its sensor otherwise.
    private static IEnumerable<FitFinding> Holes(PressureMeasures part, ScrewPattern? screws)
    {
        if (screws is { Holes.IsEmpty: true })
        {
            yield break;
        }

        if (part.Holes is not { Diameter: { } diameter } holes || screws?.Thread is not { } thread)
        {
            yield return FitFinding.NotMeasured(FitAspect.Holes, part.Holes?.Diameter is null, screws?.Thread is null);
            yield break;
        }

        // The nose sits in its bore. Half its play would let it aside, but the O-ring holds it in the middle: nothing of it is counted.
        Spot nose = new(default, SpotKind.Bore, 0);
        yield return PatternJudge.Of(
            [nose, .. holes.At.Select(h => new Spot(h, SpotKind.Screw, diameter))], [nose, .. screws.Holes.Select(h => new Spot(h, SpotKind.Screw, thread.Diameter))],
            PatternJudge.Off(holes.PlusMinus, screws.PlusMinus), (a, _) => a.Kind == SpotKind.Screw ? PatternJudge.PlayOf(a.Size, thread) : 0, mayTurnOver: false);
    }
}
