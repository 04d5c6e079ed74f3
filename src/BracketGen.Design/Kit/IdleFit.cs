using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using static System.FormattableString;

namespace BracketGen.Design.Kit;

/// <summary>Whether an idle valve fits its face on the throttle body.</summary>
public static class IdleFit
{
    /// <summary>Most that a passage for air may differ in diameter from its counterpart (mm; common practice, no source): a narrower one idles lower, a wider one meets the gasket.</summary>
    public const double MostAirDifference = 2;

    /// <summary>The findings.</summary>
    /// <param name="part">The valve.</param>
    /// <param name="mount">Its face; null where none was measured.</param>
    /// <param name="water">What becomes of passages for water; null where the job does not say.</param>
    public static ImmutableArray<FitFinding> Of(IdleMeasures part, IdleMount? mount, WaterUse? water)
    {
        var wet = Water(part, mount, water);
        if (part.Air is not { } air || mount?.Air is not { } below)
        {
            return [FitFinding.NotMeasured(FitAspect.AirPorts, part.Air is null, mount?.Air is null), Pattern(part, mount, withAir: false, withWater: false), wet];
        }

        if (air.Length != below.Length)
        {
            return [new(FitAspect.AirPorts, FitState.DoesNotFit) { Compared = (Invariant($"{air.Length}"), Invariant($"{below.Length}")) }, wet];
        }

        var isWet = water == WaterUse.Used && part.Water is { Length: > 0 } && part.Water?.Length == mount.Water?.Length;
        return [AirSize(air, below), Pattern(part, mount, withAir: true, isWet), wet];
    }

    // By size: the widest meets the widest. Which lies on which, the pattern says; the largest difference is no less than that of the ordered ones.
    private static FitFinding AirSize(ImmutableArray<Port> part, ImmutableArray<Port> body)
    {
        var differs = part.Length == 0 ? 0 : part.OrderBy(p => p.Diameter).Zip(body.OrderBy(p => p.Diameter), (a, b) => Math.Abs(a.Diameter - b.Diameter)).Max();
        return FitFinding.Within(FitAspect.AirSize, (differs, differs, differs), 0, MostAirDifference);
    }

    private static FitFinding Pattern(IdleMeasures part, IdleMount? mount, bool withAir, bool withWater)
    {
        if (part.Holes is not { Diameter: { } diameter } holes || mount?.Screws is not { Thread: { } thread } screws)
        {
            return FitFinding.NotMeasured(FitAspect.Holes, part.Holes?.Diameter is null, mount?.Screws?.Thread is null);
        }

        IEnumerable<Spot> Ports(ImmutableArray<Port>? air, ImmutableArray<Port>? water) =>
        [
            .. withAir ? air!.Value.Select(p => new Spot(p.At, SpotKind.Air, p.Diameter)) : [],
            .. withWater ? water!.Value.Select(p => new Spot(p.At, SpotKind.Water, p.Diameter)) : [],
        ];
        Spot[] laid = [.. holes.At.Select(h => new Spot(h, SpotKind.Screw, diameter)), .. Ports(part.Air, part.Water)];
        Spot[] onto = [.. screws.Holes.Select(h => new Spot(h, SpotKind.Screw, thread.Diameter)), .. Ports(mount.Air, mount.Water)];
        return PatternJudge.Of(
            laid, onto, PatternJudge.Off(holes.PlusMinus, Math.Max(screws.PlusMinus, mount.PlusMinus)),
            (a, b) => a.Kind == SpotKind.Screw ? PatternJudge.PlayOf(a.Size, thread) : Math.Abs(a.Size - b.Size) / 2 + PatternJudge.PortOff, mayTurnOver: false);
    }

    private static FitFinding Water(IdleMeasures part, IdleMount? mount, WaterUse? water)
    {
        const FitAspect aspect = FitAspect.WaterPorts;
        if (mount?.Water is not { } below)
        {
            return FitFinding.NotMeasured(aspect, part: false, body: true);
        }

        (string, string)? counts = (Invariant($"{part.Water?.Length ?? 0}"), Invariant($"{below.Length}"));
        return below.Length == 0 ? new(aspect, FitState.Fits) { Compared = counts, IsCapped = part.Water is { Length: > 0 } }
            : water switch
            {
                null => new(aspect, FitState.NotKnown) { Missing = MissingOn.Job, Compared = counts },
                WaterUse.Capped => new(aspect, FitState.Fits) { Compared = counts, IsCapped = true },
                _ when part.Water is null => FitFinding.NotMeasured(aspect, part: true, body: false),
                _ => new(aspect, part.Water?.Length == below.Length ? FitState.Fits : FitState.DoesNotFit) { Compared = counts },
            };
    }
}
