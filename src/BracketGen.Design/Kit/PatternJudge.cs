using BracketGen.Geometry;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Kit;

/// <summary>What a spot of a pattern is for.</summary>
internal enum SpotKind
{
    Screw,
    Air,
    Water,

    /// <summary>What both patterns are measured from, and so without a ± of its own.</summary>
    Bore,
}

/// <summary>A hole or passage of a pattern.</summary>
/// <param name="At">Its middle (mm).</param>
/// <param name="Kind">What it is for.</param>
/// <param name="Size">Its diameter; of a screw, that of the thread (mm).</param>
internal readonly record struct Spot(PatternPoint At, SpotKind Kind, double Size);

/// <summary>A part's pattern of holes laid on that of the throttle body.</summary>
internal static class PatternJudge
{
    /// <summary>What a screw keeps of its play where the holes are off (mm): it must still go in by hand (our judgement, no source).</summary>
    public const double LeftOfPlay = 0.05;

    /// <summary>How far a passage may be off its counterpart beside the difference of their radii (mm; common practice, no source).</summary>
    public const double PortOff = 1;

    /// <summary>How far a screw may be off the middle of its hole (mm).</summary>
    public static double PlayOf(double hole, FastenerThread thread) => (hole - thread.Diameter) / 2 - LeftOfPlay;

    /// <summary>Each point is off by a ± of two coordinates, on both sides (mm).</summary>
    public static double Off(double part, double body) => Math.Sqrt(2) * (part + body);

    /// <summary>
    /// The finding on two patterns with as many spots of each kind: it fits where it does however the readings are off, and does not fit where it does not however they are.
    /// </summary>
    /// <param name="laid">The part's.</param>
    /// <param name="onto">The throttle body's.</param>
    /// <param name="off">How far a spot may be off by the readings of both (mm).</param>
    /// <param name="play">How far two spots of a kind may be apart (mm).</param>
    /// <param name="mayTurnOver">Whether the part may lie either side up.</param>
    public static FitFinding Of(IReadOnlyList<Spot> laid, IReadOnlyList<Spot> onto, double off, Func<Spot, Spot, double> play, bool mayTurnOver)
    {
        PatternFit? With(double more, bool over) => PatternMatch.Best(
            [.. laid.Select(s => s.At.Vector)], [.. onto.Select(s => s.At.Vector)],
            (i, j) => laid[i].Kind != onto[j].Kind ? double.NegativeInfinity : play(laid[i], onto[j]) + (laid[i].Kind == SpotKind.Bore ? 0 : more), over);

        if (With(0, mayTurnOver) is not { } nominal)
        {
            return new(FitAspect.Holes, FitState.DoesNotFit) { Compared = (Words(laid.Count), Words(onto.Count)) };
        }

        // Within the resolution of the search nobody can tell.
        var state = With(-off, mayTurnOver)!.Fits ? FitState.Fits : With(off, mayTurnOver)!.FitsNowhere ? FitState.DoesNotFit : FitState.NotKnown;
        return new(FitAspect.Holes, state)
        {
            Value = Math.Max(0, nominal.Over),
            WouldTurnedOver = state == FitState.DoesNotFit && !mayTurnOver && With(0, true)!.Fits,
        };
    }

    private static string Words(int count) => count.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
