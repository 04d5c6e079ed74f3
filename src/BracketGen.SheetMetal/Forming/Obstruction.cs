using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Forming;

/// <summary>What keeps a bend from being made.</summary>
public enum Obstruction
{
    /// <summary>The part meets itself.</summary>
    Itself,

    /// <summary>The part meets the punch.</summary>
    Punch,

    /// <summary>The part meets the beam over the punch.</summary>
    Beam,

    /// <summary>The part meets the die.</summary>
    Die,

    /// <summary>The part meets the bed under the die.</summary>
    Bed,

    /// <summary>The part meets the folder, the hand brake or the vice.</summary>
    Clamp,

    /// <summary>No die of the shop gives the inside radius.</summary>
    NoDie,

    /// <summary>The V of the die is not acute enough: the sheet would meet its faces before the bend is made.</summary>
    DieAngle,

    /// <summary>The shop has no punch, or none that is acute enough, its tip no larger than the inside radius.</summary>
    NoPunch,

    /// <summary>The force per length is more than punch, die or press stands, or the force more than the press has.</summary>
    Force,

    /// <summary>Punch and die do not come together within the stroke of the press, or do not go between beam and bed.</summary>
    OpenHeight,

    /// <summary>The sheet is too thick or the bend too long for the folder, the hand brake or the vice, or too little is left to clamp.</summary>
    ClampSize,
}

/// <summary>One way to make one bend that does not work.</summary>
/// <param name="Made">Numbers of the bends made before it, in order.</param>
/// <param name="Bend">Number of the bend.</param>
/// <param name="What">What is in the way.</param>
public sealed record BendObstacle(System.Collections.Immutable.ImmutableArray<int> Made, int Bend, Obstruction What)
{
    /// <summary>The flange that is in the way; null where no flange is.</summary>
    public int? Flange { get; init; }

    /// <summary>Bend angle at which it is in the way; null where the angle does not matter.</summary>
    public Angle? At { get; init; }

    /// <summary>The punch that was tried; null where none was.</summary>
    public Punch? Punch { get; init; }

    /// <summary>The die that was tried; null where none was.</summary>
    public PressBrakeDie? Die { get; init; }

    /// <inheritdoc/>
    public bool Equals(BendObstacle? other) => other is not null && Bend == other.Bend && What == other.What && Flange == other.Flange
        && At == other.At && Equals(Punch, other.Punch) && Equals(Die, other.Die) && Made.SequenceEqual(other.Made);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Bend, What, Flange, At);
}
