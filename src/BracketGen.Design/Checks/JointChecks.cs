using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.SheetMetal.Fasteners;

namespace BracketGen.Design.Checks;

/// <summary>The checks of the screws that hold a bracket.</summary>
public static class JointChecks
{
    /// <summary>Yield strength over the stress in a screw (VDI 2230, step R8: more than one, every spread counted).</summary>
    public const double LeastScrewFactor = 1;

    /// <summary>Stripping load over the force in a screw (our judgement, no source; VDI 2230, step R11, asks for one).</summary>
    public const double LeastStrippingFactor = 1.25;

    /// <summary>Friction over what slips: under a load that comes and goes, and under one that comes seldom (VDI 2230, step R12).</summary>
    public const double LeastSlipFactor = 1.8, LeastSlipFactorStamped = 1.2;

    /// <summary>Clamp force over that which keeps the joint closed (our judgement, no source; VDI 2230 asks for one).</summary>
    public const double LeastOpeningFactor = 1.2;

    /// <summary>The checks where strength was not calculated.</summary>
    public static IEnumerable<Check> NotCalculated(Job job)
    {
        yield return new(CheckId.ScrewYield, double.NaN, LeastScrewFactor);
        yield return new(CheckId.BossThread, double.NaN, LeastStrippingFactor);
        yield return new(CheckId.ThreadDepth, double.NaN, job.Body.Mount.Holes.Max(h => BossScrew.LeastEngagement * h.Thread.Diameter));
        yield return new(CheckId.JointSlip, double.NaN, LeastSlipFactor);
        yield return new(CheckId.StampedSlip, double.NaN, LeastSlipFactorStamped);
        yield return new(CheckId.JointOpening, double.NaN, LeastOpeningFactor);
        yield return new(CheckId.WasherPressure, double.NaN, job.Body.Mount.Boss.Pressure);
    }

    /// <summary>The checks of the joints, each at its worst screw.</summary>
    /// <param name="joints">The joints.</param>
    /// <param name="metal">The metal of the sheet.</param>
    public static IEnumerable<Check> Of(ImmutableArray<BoltedJoint> joints, StrengthMetal metal)
    {
        Check Worst(Func<BoltedJoint, Check> of) => joints.Select(j => of(j) with { Subject = j.Hole }).MinBy(c => double.IsNaN(c.Value) ? double.NegativeInfinity : c.Margin)!;
        if (joints.IsEmpty)
        {
            yield break;
        }

        yield return Worst(j => new(CheckId.ScrewYield, Rounded(j.Joint.ScrewFactor(j.Stamped)), LeastScrewFactor));
        yield return Worst(j => new(CheckId.BossThread, Rounded(j.Joint.StrippingFactor(j.Stamped)), LeastStrippingFactor));
        yield return Worst(j => new(CheckId.ThreadDepth, j.ThreadDepth ?? double.NaN, j.Joint.Screw.ThreadNeeded));
        yield return Worst(j => new(CheckId.JointSlip, Rounded(j.Joint.SlipFactor(j.Opening.Plus(j.Shaken))), LeastSlipFactor));
        yield return Worst(j => new(CheckId.StampedSlip, Rounded(j.Joint.SlipFactor(j.Stamped)), LeastSlipFactorStamped));
        yield return Worst(j => new(CheckId.JointOpening, Rounded(j.Joint.OpeningFactor(j.Opening.Plus(j.Shaken))), LeastOpeningFactor));
        yield return Worst(j => new(CheckId.WasherPressure, Rounded(j.Joint.Pressure(j.Stamped)), Math.Min(metal.Pressure, j.Joint.Screw.Boss.Pressure)));
    }

    private static double Rounded(double value) => LoadCase.SixFigures(value);
}
