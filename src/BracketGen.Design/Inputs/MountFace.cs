using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Inputs;

/// <summary>A hole or stud that the bracket is bolted to.</summary>
/// <param name="At">Centre on the face of its boss (mm).</param>
/// <param name="Thread">Thread.</param>
/// <param name="BossDiameter">Diameter (mm) of the boss around it; the bracket covers it.</param>
public sealed record MountHole(ThrottlePoint At, FastenerThread Thread, double BossDiameter)
{
    /// <summary>How far each coordinate of the centre may be off.</summary>
    public PointPlusMinus PlusMinus { get; init; }

    /// <summary>How it holds the bracket.</summary>
    public Fixing Fixing { get; init; } = new TappedHole();

    /// <summary>How much lower than the mount face the hole lies (mm): the length of the spacer under the bracket; zero where it lies on the face.</summary>
    public double SpacerLength { get; init; }

    /// <summary>The spacer; null where there is none.</summary>
    public Spacer? Spacer => SpacerLength > 0 ? new(SpacerLength, Thread) : null;

    /// <summary>How far the bolt may lie off the middle of the bracket's hole, on the middle of its own (mm).</summary>
    public double Play => (Clearance - Thread.Diameter) / 2 + Fixing.Play(Thread);

    /// <summary>Depth of full thread in the boss, or of the stud in it (mm); null where nobody measured it.</summary>
    public double? ThreadDepth { get; init; }

    /// <summary>Clearance hole in the bracket (mm): ISO 273 medium series; past the bend of the second mount flange, which is less exact, the coarse series.</summary>
    public double Clearance => IsOnSecond ? Thread.ClearanceCoarse : Thread.ClearanceMedium;

    /// <summary>Whether it lies on the second face.</summary>
    public bool IsOnSecond { get; init; }
}

/// <summary>The flat face that the bracket lies on, with its holes.</summary>
/// <remarks>The holes lie on the face within what their ± explains (<see cref="MountFit"/>).</remarks>
/// <param name="Plane">The face; its normal points out of the casting.</param>
/// <param name="Holes">At least one hole or stud; those of the second face last.</param>
public sealed record MountFace(Plane Plane, ImmutableArray<MountHole> Holes) : IMirrored<MountFace>
{
    /// <summary>The metal of the bosses; where it is not stated the weakest usual one.</summary>
    public BossMetal Boss { get; init; } = BossMetal.Usual;

    /// <summary>Property class of the screws; null where the file names none: then each screw has the usual one of its thread, and each stud the weakest.</summary>
    public ScrewClass? ScrewClass { get; init; }

    /// <summary>How the screws are fitted; what the set-up sheet asks for.</summary>
    public ScrewFriction ScrewFriction { get; init; } = ScrewFriction.Usual;

    /// <summary>Flatness of all bosses together, spacers in place (mm): how far apart two planes are between which their faces lie; null where nobody measured it.</summary>
    public double? Flatness { get; init; }

    /// <summary>Friction coefficient of the bracket on the bosses, as tried with the finish that it will have; null where nobody tried.</summary>
    public double? FaceFriction { get; init; }

    /// <summary>Flatness where nobody measured it (mm): what is usual for a face milled in one pass, and what it may be (common practice, no source).</summary>
    public const double UsualFlatness = 0.02, FlatnessAtWorst = 0.1;

    /// <summary>A second face that takes bolts of the bracket too; null where there is none.</summary>
    public SecondFace? Second { get; init; }

    /// <summary>The adapter ring whose top is the mount face; null where the bracket lies on the casting itself.</summary>
    public AdapterRing? Ring { get; init; }

    /// <summary>The holes on the mount face itself: all but those of the second face.</summary>
    public ImmutableArray<MountHole> OwnHoles => Second is null ? Holes : [.. Holes.Where(h => !h.IsOnSecond)];

    /// <summary>The face that a hole lies on.</summary>
    public Plane PlaneOf(MountHole hole) => hole.IsOnSecond && Second is { } second ? second.Plane : Plane;

    /// <summary>Where a hole's axis meets the bracket's underside (mm).</summary>
    public ThrottlePoint FootOf(MountHole hole) => new(PlaneOf(hole).FootOf(hole.At.Vector));

    /// <summary>Whether the second face stands up from the mount face, as in the inside corner of an angle; otherwise it falls away behind an edge.</summary>
    public bool IsInsideCorner => Second is not null && Holes.Where(h => h.IsOnSecond).Sum(h => Plane.HeightOf(h.At.Vector)) > 0;

    /// <summary>The hole nearest to a point of the bracket's sheet (mm), as seen along the face's normal.</summary>
    public MountHole Nearest(ThrottlePoint point) => Second is null
        ? Holes.MinBy(h => Plane.FootOf(h.At.Vector).DistanceTo(Plane.FootOf(point.Vector)))!
        : Holes.MinBy(h => FootOf(h).DistanceTo(point))!;

    /// <summary>The screw for a hole, through sheet of <paramref name="thickness"/> (mm).</summary>
    public MountScrew ScrewFor(MountHole hole, double thickness) => MountScrew.For(hole.Thread, thickness + hole.SpacerLength, hole.ThreadDepth, hole.Fixing) with
    {
        Class = ClassOf(hole),
        Friction = ScrewFriction,
        Boss = Boss,
        Spacer = hole.Spacer,
    };

    /// <summary>The property class of a screw: what the set-up sheet orders. A stud is there already: where its class is not given, the weakest is taken.</summary>
    public ScrewClass ClassOf(MountHole hole) => ScrewClass
        ?? (hole.Fixing is MountStud ? SheetMetal.Fasteners.ScrewClass.WeakestFor(hole.Thread) : SheetMetal.Fasteners.ScrewClass.UsualFor(hole.Thread));

    /// <summary>How far the hole farthest off the face was measured from it (mm): the residual of the fit.</summary>
    public double Residual => Holes.Max(h => Math.Abs(PlaneOf(h).HeightOf(h.At.Vector) + h.SpacerLength));

    /// <summary>Name of a hole by its index: H1, H2. Letters are for datums.</summary>
    public static string HoleName(int index) => string.Create(CultureInfo.InvariantCulture, $"H{index + 1}");

    /// <inheritdoc/>
    public MountFace Mirrored() => this with
    {
        Plane = Plane.Mirrored(),
        Holes = [.. Holes.Select(h => h with { At = h.At.Mirrored() })],
        Second = Second?.Mirrored(),
        Ring = Ring?.Mirrored(),
    };

    /// <inheritdoc/>
    public bool Equals(MountFace? other) => other is not null && Plane == other.Plane && Holes.SequenceEqual(other.Holes)
        && Boss == other.Boss && ScrewClass == other.ScrewClass && ScrewFriction == other.ScrewFriction && Flatness == other.Flatness && FaceFriction == other.FaceFriction && Second == other.Second && Ring == other.Ring;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Plane, Holes.Length);
}
