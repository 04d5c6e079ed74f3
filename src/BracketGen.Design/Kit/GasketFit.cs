using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using static System.FormattableString;

namespace BracketGen.Design.Kit;

/// <summary>Whether a gasket goes over its screws and leaves its passages open.</summary>
public static class GasketFit
{
    /// <summary>The findings on a gasket under the throttle body.</summary>
    /// <param name="part">The gasket, measured from the middle of the bore.</param>
    /// <param name="body">The throttle body.</param>
    public static ImmutableArray<FitFinding> OfFlange(GasketMeasures part, ThrottleBody body) =>
        [Of(part, body.Openings.Flange, [new(default, SpotKind.Bore, body.Bore)], ScrewPattern.UsualPlusMinus, SpotKind.Bore)];

    /// <summary>The findings on a gasket under the idle valve.</summary>
    /// <param name="part">The gasket.</param>
    /// <param name="mount">The valve's face; null where none was measured.</param>
    /// <param name="water">What becomes of passages for water; null where the job does not say.</param>
    public static ImmutableArray<FitFinding> OfIdle(GasketMeasures part, IdleMount? mount, WaterUse? water)
    {
        if (mount?.Air is not { } air || mount.Water is not { } below)
        {
            return [FitFinding.NotMeasured(FitAspect.AirPorts, part: false, body: true)];
        }

        if (below.Length > 0 && water is null)
        {
            return [new(FitAspect.WaterPorts, FitState.NotKnown) { Missing = MissingOn.Job }];
        }

        // Capped passages may be open in the gasket or not; as many openings as passages must be there, air first.
        Spot[] open = [.. air.Concat(water == WaterUse.Used ? below : []).Select(p => new Spot(p.At, SpotKind.Air, p.Diameter))];
        Spot[] all = [.. air.Concat(below).Select(p => new Spot(p.At, SpotKind.Air, p.Diameter))];
        return [Of(part, mount.Screws, part.Openings?.Length == all.Length ? all : open, mount.PlusMinus, SpotKind.Air)];
    }

    private static FitFinding Of(GasketMeasures part, ScrewPattern? screws, Spot[] passages, double plusMinus, SpotKind kind)
    {
        if (part.Holes is not { Diameter: { } diameter } holes || part.Openings is not { } openings || screws?.Thread is not { } thread)
        {
            return FitFinding.NotMeasured(FitAspect.Holes, part.Holes?.Diameter is null || part.Openings is null, screws?.Thread is null);
        }

        if (openings.Length != passages.Length)
        {
            return new(FitAspect.AirPorts, FitState.DoesNotFit) { Compared = (Invariant($"{openings.Length}"), Invariant($"{passages.Length}")) };
        }

        // A gasket is cut, not tapped: it goes over its screws with all of its play. It must not stand into a passage.
        return PatternJudge.Of(
            [.. holes.At.Select(h => new Spot(h, SpotKind.Screw, diameter)), .. openings.Select(o => new Spot(o.At, kind, o.Diameter))],
            [.. screws.Holes.Select(h => new Spot(h, SpotKind.Screw, thread.Diameter)), .. passages],
            PatternJudge.Off(holes.PlusMinus, Math.Max(screws.PlusMinus, plusMinus)), (a, b) => (a.Size - b.Size) / 2, mayTurnOver: true);
    }
}
