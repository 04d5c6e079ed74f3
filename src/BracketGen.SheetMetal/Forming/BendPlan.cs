using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Forming;

/// <summary>One bend of a plan: how the sheet lies, what it is bent with and what it is placed by.</summary>
public sealed record BendStep
{
    /// <summary>Number of the bend.</summary>
    public required int Bend { get; init; }

    /// <summary>Whether the top of the sheet faces up.</summary>
    public required bool TopUp { get; init; }

    /// <summary>Whether the flange that the bend makes lies in front; else it lies at the back gauge, or is the one turned up by a clamp.</summary>
    public required bool NewFlangeInFront { get; init; }

    /// <summary>The die; null where it is bent over a clamp.</summary>
    public PressBrakeDie? Die { get; init; }

    /// <summary>The punch; null where it is bent over a clamp.</summary>
    public Punch? Punch { get; init; }

    /// <summary>Whether the punch stands turned round: its <see cref="Punch.Profile"/> mirrored front to back.</summary>
    public bool PunchReversed { get; init; }

    /// <summary>Length (mm) to which punch and die must be made up from sections, in the middle of the bend; null where tools of any greater length do.</summary>
    public double? ToolLength { get; init; }

    /// <summary>The folder, hand brake or bar; null on the press brake.</summary>
    public BendingClamp? Clamp { get; init; }

    /// <summary>What it is placed by.</summary>
    public required BackGauge Gauge { get; init; }

    /// <summary>Springback allowance: how much further it is bent than its bend angle.</summary>
    public required Angle OverBend { get; init; }

    /// <summary>Force per length (N/mm, the same as kN/m); 0 for a clamp.</summary>
    public required double ForcePerLength { get; init; }

    /// <summary>Force per length (N/mm) that the weakest of punch, die and press stands; 0 for a clamp.</summary>
    public required double MaxForcePerLength { get; init; }

    /// <summary>Force (N); 0 for a clamp.</summary>
    public required double Force { get; init; }

    /// <summary>How far the sheet reaches out in front of the die, where it is held by hand (mm); negative where it does not reach its edge.</summary>
    public required double HandHold { get; init; }

    /// <summary>How the legs lie on the shoulders of the die; null for a clamp.</summary>
    public required ShoulderSupport? Support { get; init; }

    /// <summary>A sheet that reaches out in front of the die less than this (mm) is not held by hand in safety (common practice, no source).</summary>
    public const double SafeHandHold = 100;

    /// <summary>Where on the flat pattern a finger meets the sheet; not for <see cref="GaugeKind.Flange"/>, whose finger meets a flange that stands.</summary>
    /// <param name="bend">The bend of this step.</param>
    /// <param name="finger">One of its fingers.</param>
    public FlatPoint OnFlat(Bend bend, GaugeFinger finger) => bend.Start
        + (bend.Allowance / 2 + (NewFlangeInFront ? -finger.Distance : finger.Distance)) * bend.Across
        + (TopUp == NewFlangeInFront ? bend.Length - finger.Along : finger.Along) * bend.Along;

    internal BendStep Mirrored(double length) => this with
    {
        Gauge = Gauge with { Fingers = [.. Gauge.Fingers.Reverse().Select(f => f with { Along = length - f.Along })] },
        Support = Support is null ? null : Support with { Carried = [.. Support.Carried.Reverse().Select(c => (length - c.To, length - c.From))] },
    };
}

/// <summary>An order in which a part can be bent without meeting the tools or itself.</summary>
public sealed record BendPlan
{
    internal BendPlan(SimulatedPart part, ImmutableArray<BendStep> steps) => (Part, Steps) = (part, steps);

    /// <summary>The bends in the order in which they are made.</summary>
    public ImmutableArray<BendStep> Steps { get; }

    internal SimulatedPart Part { get; }

    /// <summary>The plan of the part seen from the other end of the flat pattern's x axis: what was left is right.</summary>
    public BendPlan Mirrored()
    {
        var flat = Part.Flat.Mirrored();
        return new(new(flat, Part.Press), [.. Steps.Select(s => s.Mirrored(flat.Bends[s.Bend].Length))]);
    }

    /// <summary>How often the sheet is turned over between two bends.</summary>
    public int TurnsOver => Steps.Zip(Steps.Skip(1)).Count(p => p.First.TopUp != p.Second.TopUp);

    /// <summary>How often a tool is changed between two bends.</summary>
    public int ToolChanges => Steps.Zip(Steps.Skip(1)).Count(p => !Equals(p.First.Die, p.Second.Die) || !Equals(p.First.Punch, p.Second.Punch) || !Equals(p.First.Clamp, p.Second.Clamp));

    /// <summary>Sheet and tools in the section square to the bend, at a part of the stroke.</summary>
    /// <param name="step">Which step, from 0.</param>
    /// <param name="share">Part of the bend angle made, springback allowance included: 0 before, 1 at the end.</param>
    public ImmutableArray<SectionShape> Picture(int step, double share = 1)
    {
        var made = new bool[Part.Flat.Bends.Length];
        foreach (var before in Steps.Take(step))
        {
            made[before.Bend] = true;
        }

        return SectionPicture.Of(Part, made, Steps[step], share);
    }

    /// <inheritdoc/>
    public bool Equals(BendPlan? other) => other is not null && Part.Flat.Equals(other.Part.Flat) && Steps.SequenceEqual(other.Steps);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Part.Flat, Steps.Length);
}

/// <summary>Whether a part can be bent: a plan, or what is in the way.</summary>
/// <param name="Plan">The best order found; null if there is none.</param>
/// <param name="Obstacles">Where there is no plan: for each bend that could not be made in some order, the way that went furthest.</param>
public sealed record BendResult(BendPlan? Plan, ImmutableArray<BendObstacle> Obstacles)
{
    /// <inheritdoc/>
    public bool Equals(BendResult? other) => other is not null && Equals(Plan, other.Plan) && Obstacles.SequenceEqual(other.Obstacles);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Plan, Obstacles.Length);
}
