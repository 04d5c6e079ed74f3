using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
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

    /// <summary>
    /// Friction over what slips along slotted holes, under a load that comes and goes and under the pedal stamped on (our judgement, no source): more than in round holes, because a joint that slips there does not stop at
    /// the screw's shank, and the stop goes with it.
    /// </summary>
    public const double LeastSlotSlipFactor = 2, LeastSlotSlipFactorStamped = 1.5;

    /// <summary>Clamp force over that which keeps the joint closed (our judgement, no source; VDI 2230 asks for one).</summary>
    public const double LeastOpeningFactor = 1.2;

    /// <summary>The checks where strength was not calculated.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">The bracket; null where there is none yet.</param>
    public static IEnumerable<Check> NotCalculated(Job job, Bracket? bracket)
    {
        yield return new(CheckId.ScrewYield, double.NaN, LeastScrewFactor);
        var holes = job.Body.Mount.Holes;
        if (holes.Any(h => h.Fixing is not ThroughHole) || job.Body.Mount.Ring is not null)
        {
            yield return new(CheckId.BossThread, double.NaN, LeastStrippingFactor);
        }

        if (holes.Where(h => h.Fixing is TappedHole).ToArray() is { Length: > 0 } tapped)
        {
            yield return new(CheckId.ThreadDepth, double.NaN, tapped.Max(h => MountScrew.LeastEngagement * h.Thread.Diameter));
        }

        if (holes.Where(h => h.Fixing is MountStud).ToArray() is { Length: > 0 } studs)
        {
            yield return new(CheckId.StudLength, double.NaN, studs.Max(h => h.Thread.NutHeight));
            yield return new(CheckId.StudDepth, double.NaN, studs.Max(h => MountScrew.LeastEngagement * h.Thread.Diameter));
        }

        if (holes.Where(h => h.Fixing is ThroughHole).ToArray() is { Length: > 0 } through)
        {
            yield return new(CheckId.NutRoom, double.NaN, through.Max(h => h.Thread.NutHeight));
        }

        if (holes.Any(h => h.Spacer is not null))
        {
            yield return new(CheckId.SpacerPressure, double.NaN, Spacer.Yield);
        }

        if (holes.Any(h => h.Fixing is not TappedHole))
        {
            yield return new(CheckId.NutThread, double.NaN, LeastStrippingFactor);
        }

        yield return new(CheckId.JointSlip, double.NaN, LeastSlipFactor);
        yield return new(CheckId.StampedSlip, double.NaN, LeastSlipFactorStamped);
        if (bracket is null ? job.Preferences.MountSlots is not null : bracket.Holes.Any(h => h.IsSlotted))
        {
            yield return new(CheckId.SlotSlip, double.NaN, LeastSlotSlipFactor);
            yield return new(CheckId.SlotSlipStamped, double.NaN, LeastSlotSlipFactorStamped);
        }

        yield return new(CheckId.JointOpening, double.NaN, LeastOpeningFactor);
        yield return new(CheckId.WasherPressure, double.NaN, job.Body.Mount.Boss.Pressure);
    }

    /// <summary>The checks of the joints, each at its worst screw.</summary>
    /// <param name="joints">The joints.</param>
    /// <param name="metal">The metal of the sheet.</param>
    public static IEnumerable<Check> Of(ImmutableArray<BoltedJoint> joints, StrengthMetal metal)
    {
        IEnumerable<Check> WorstOf(IEnumerable<BoltedJoint> some, Func<BoltedJoint, Check> of) =>
            some.Select(j => of(j) with { Subject = j.Hole }).OrderBy(c => double.IsNaN(c.Value) ? double.NegativeInfinity : c.Margin).Take(1);
        Check Worst(Func<BoltedJoint, Check> of) => WorstOf(joints, of).Single();
        if (joints.IsEmpty)
        {
            yield break;
        }

        yield return Worst(j => new(CheckId.ScrewYield, Rounded(j.Joint.ScrewFactor(j.Held)), LeastScrewFactor));
        BoltedJoint[] tapped = [.. joints.Where(j => j.Screw.Fixing is TappedHole && !j.IsFlangeBolt)], studs = [.. joints.Where(j => j.Screw.Fixing is MountStud)];
        foreach (var check in (IEnumerable<Check>)
        [
            .. WorstOf(joints.Where(j => j.Screw.HoldsInBoss), j => new(CheckId.BossThread, Rounded(j.Joint.StrippingFactor(j.Held)), LeastStrippingFactor)),
            .. WorstOf(tapped, j => new(CheckId.ThreadDepth, j.ThreadDepth ?? double.NaN, j.Screw.ThreadNeeded)),
            .. WorstOf(studs, j => new(CheckId.StudLength, j.Screw.Length, j.Screw.StudNeeded(j.Joint.SheetThickness))),
            .. WorstOf(studs, j => new(CheckId.StudDepth, j.ThreadDepth ?? double.NaN, MountScrew.LeastEngagement * j.Screw.Thread.Diameter)),
            .. WorstOf(joints.Where(j => j.Screw.Fixing is ThroughHole), j => new(CheckId.NutRoom, ((ThroughHole)j.Screw.Fixing).Room ?? double.NaN, j.Screw.RoomNeeded(j.Joint.SheetThickness))),
            .. WorstOf(joints.Where(j => j.Screw.Spacer is not null), j => new(CheckId.SpacerPressure, Rounded(j.Joint.SpacerStress(j.Held)), Spacer.Yield)),
            .. WorstOf(joints.Where(j => j.Screw.HasNut), j => new(CheckId.NutThread, Rounded(j.Joint.NutFactor(j.Held)), LeastStrippingFactor)),
        ])
        {
            yield return check;
        }

        yield return Worst(j => new(CheckId.JointSlip, Rounded(j.Joint.SlipFactor(j.Opening.Plus(j.Shaken).Plus(j.Drawn))), LeastSlipFactor));
        yield return Worst(j => new(CheckId.StampedSlip, Rounded(j.Joint.SlipFactor(j.Held)), LeastSlipFactorStamped));
        BoltedJoint[] slotted = [.. joints.Where(j => j.Joint.Slot is not null)];
        foreach (var check in WorstOf(slotted, j => OfSlot(CheckId.SlotSlip, j, j.Joint.SlotSlipFactor(j.Opening.Plus(j.Shaken)), LeastSlotSlipFactor))
            .Concat(WorstOf(slotted, j => OfSlot(CheckId.SlotSlipStamped, j, j.Joint.SlotSlipFactorAlong(j.Stamped), LeastSlotSlipFactorStamped))))
        {
            yield return check;
        }

        yield return Worst(j => new(CheckId.JointOpening, Rounded(j.Joint.OpeningFactor(j.Opening.Plus(j.Shaken).Plus(j.Drawn))), LeastOpeningFactor));
        yield return Worst(j => OfWasher(j, metal.Pressure));
    }

    // Round a slot so little bears that washer on sheet and sheet on boss are held apart, each against its own metal.
    private static Check OfWasher(BoltedJoint joint, double sheet)
    {
        var (boss, onSheet, onBoss) = (joint.Screw.Boss.Pressure, joint.Joint.Pressure(joint.Held), joint.Joint.BossPressure(joint.Held));
        return joint.Joint.Slot is null ? new(CheckId.WasherPressure, Rounded(onSheet), Math.Min(sheet, boss))
            : onSheet / sheet >= onBoss / boss ? new(CheckId.WasherPressure, Rounded(onSheet), sheet)
            : new(CheckId.WasherPressure, Rounded(onBoss), boss);
    }

    // Nothing else holds along a slot: a friction that nobody tried proves nothing.
    private static Check OfSlot(CheckId id, BoltedJoint joint, double factor, double limit) =>
        new(id, Rounded(factor), limit) { Unfavourable = joint.Joint.FaceFriction is null ? double.NaN : null };

    private static double Rounded(double value) => LoadCase.SixFigures(value);
}
