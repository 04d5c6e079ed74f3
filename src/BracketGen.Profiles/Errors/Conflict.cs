using System.Collections.Immutable;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Profiles.Errors;

/// <summary>A value that does not go with another one.</summary>
/// <param name="Relation">How it must be to the other.</param>
/// <param name="Other">The other key, or what it is compared with.</param>
/// <param name="Quantity">What both measure.</param>
/// <param name="Limit">The other value, in the internal unit.</param>
/// <param name="Reason">Why.</param>
public sealed record Compared(Relation Relation, string Other, Quantity Quantity, double Limit, CompareReason Reason) : ProfileProblem;

/// <summary>How one value must be to another.</summary>
public enum Relation
{
    /// <summary>Greater.</summary>
    MoreThan,

    /// <summary>Greater or equal.</summary>
    AtLeast,

    /// <summary>Less.</summary>
    LessThan,
}

/// <summary>Why two values must be in a relation.</summary>
public enum CompareReason
{
    /// <summary>The one part holds the other.</summary>
    Contains,

    /// <summary>The end fitting holds the wire.</summary>
    FittingHoldsWire,

    /// <summary>The wire runs through the outer end.</summary>
    WireThroughOuterEnd,

    /// <summary>What is measured is positive by nature.</summary>
    Positive,

    /// <summary>The throttle shaft lies inside the groove's circle.</summary>
    ShaftInsideGroove,

    /// <summary>A V die cannot bend to a radius as wide as itself.</summary>
    DieRadius,

    /// <summary>Sheet cracks sooner with the bend line along the grain.</summary>
    Grain,

    /// <summary>The flanks of a punch run apart until they reach the width of its body: it is higher than that.</summary>
    PunchWedge,

    /// <summary>Sheet yields before it breaks.</summary>
    Tensile,
}

/// <summary>Corners that make no section of a punch.</summary>
/// <param name="Height">Height of the punch (mm).</param>
public sealed record PunchBodyWrong(double Height) : ProfileProblem;

/// <summary>Return springs measured one by one that do not add up to their torque together.</summary>
/// <param name="Sum">What they add up to (N·mm).</param>
/// <param name="From">Minimum of the torque together that would go with that (N·mm).</param>
/// <param name="To">Maximum (N·mm).</param>
public sealed record SpringsDoNotAddUp(double Sum, double From, double To) : ProfileProblem;

/// <summary>A minimum above its maximum.</summary>
/// <param name="Min">Key of the smaller.</param>
/// <param name="MinValue">Its value, in the internal unit.</param>
/// <param name="Max">Key of the greater.</param>
/// <param name="MaxValue">Its value, in the internal unit.</param>
/// <param name="Quantity">What both measure.</param>
/// <param name="IsAtMin">Whether the error stands at the smaller.</param>
/// <param name="IsOneDefault">Whether one of the two is not in the file and so has its default.</param>
/// <param name="MayBeEqual">Whether they may be equal.</param>
public sealed record WrongOrder(string Min, double MinValue, string Max, double MaxValue, Quantity Quantity, bool IsAtMin, bool IsOneDefault,
    bool MayBeEqual) : ProfileProblem;

/// <summary>Something that may be given once is given again.</summary>
/// <param name="What">What.</param>
public sealed record GivenTwice(Repeated What) : ProfileProblem;

/// <summary>Several cables where the one from the pedal is asked for.</summary>
/// <param name="Count">How many.</param>
public sealed record SecondCable(int Count) : ProfileProblem;

/// <summary>What may be given once.</summary>
public enum Repeated
{
    /// <summary>A thickness of a material.</summary>
    Thickness,

    /// <summary>The designation of a material.</summary>
    Designation,

    /// <summary>A code in part numbers.</summary>
    Code,

    /// <summary>A path in a packed job.</summary>
    PackedPath,

    /// <summary>The name of another cable.</summary>
    Cable,

    /// <summary>The name of a groove, or a cable in it.</summary>
    Groove,

    /// <summary>The name of a part on a list.</summary>
    Part,

    /// <summary>The name of a bundle of parts.</summary>
    Bundle,

    /// <summary>A list of parts that a job names.</summary>
    PartsFile,
}

/// <summary>A name that no other entry has.</summary>
/// <param name="Known">The names there are.</param>
/// <param name="Nearest">The name that was meant, as far as one can guess; null where one cannot.</param>
/// <param name="What">What it names.</param>
/// <param name="Shop">The shop that is looked into; null where it is the file itself.</param>
public sealed record NameUnknown(ImmutableArray<string> Known, string? Nearest, NamedThing What, string? Shop = null) : ProfileProblem;

/// <summary>What is named.</summary>
public enum NamedThing
{
    /// <summary>A material in stock.</summary>
    Material,

    /// <summary>A code of the family.</summary>
    Code,

    /// <summary>The sheet of a bracket that is there already: a material in stock, or a class.</summary>
    BracketMaterial,

    /// <summary>Another cable of the vehicle.</summary>
    Cable,

    /// <summary>Another groove of the throttle body.</summary>
    Groove,

    /// <summary>A bundle of parts.</summary>
    Bundle,
}

/// <summary>A length that is none of those that the shop has.</summary>
/// <param name="Known">Those it has (mm).</param>
/// <param name="What">What they are.</param>
public sealed record LengthUnknown(ImmutableArray<double> Known, ShopLength What) : ProfileProblem;

/// <summary>Lengths that a shop lists.</summary>
public enum ShopLength
{
    /// <summary>Thicknesses in stock of a material.</summary>
    Thickness,

    /// <summary>Inside radii of the dies.</summary>
    InsideRadius,
}

/// <summary>A mount hole off the mount face.</summary>
/// <param name="Height">Height over the face (mm); negative below it.</param>
/// <param name="Tolerance">Height allowed (mm).</param>
/// <param name="Nearest">Nearest point of the face (mm).</param>
/// <param name="IsFitted">Whether the face was fitted to holes with ±; otherwise it goes through the first hole.</param>
/// <param name="FreeNormal">Normal of the plane nearest to the holes whatever normal is given; null where they decide none.</param>
public sealed record HoleOffFace(
    double Height, double Tolerance, ThrottlePoint Nearest, bool IsFitted = false, Vector3? FreeNormal = null) : ProfileProblem;

/// <summary>Two mount holes that run into each other.</summary>
/// <param name="Other">Number of the other, from 1.</param>
/// <param name="Min">Minimum distance (mm).</param>
/// <param name="Distance">Their distance (mm).</param>
public sealed record HolesOverlap(int Other, double Min, double Distance) : ProfileProblem;

/// <summary>A groove that reaches beyond the quadrant's outer radius.</summary>
/// <param name="Farthest">Distance of its farthest point from the throttle shaft's axis (mm).</param>
public sealed record GrooveOutsideRim(double Farthest) : ProfileProblem;

/// <summary>Points of a groove that make no convex curve.</summary>
/// <param name="Detail">What the groove's geometry objects to.</param>
public sealed record GrooveNotConvex(string Detail) : ProfileProblem;

/// <summary>Rows of a pedal's table that make no lever.</summary>
/// <param name="Detail">What the pedal's geometry objects to.</param>
public sealed record PedalTableWrong(string Detail) : ProfileProblem;

/// <summary>The last row of a pedal's table is not the floor.</summary>
/// <param name="Pull">Available pull (mm).</param>
public sealed record PedalTableShort(double Pull) : ProfileProblem;

/// <summary>A rule for part numbers by which several parts would have one number.</summary>
/// <param name="Missing">The words that the rule needs.</param>
public sealed record NumbersAlike(ImmutableArray<string> Missing) : ProfileProblem;

/// <summary>Measurements that give no bracket.</summary>
/// <param name="Mistake">Why.</param>
public sealed record BracketShapeWrong(ShapeMistake Mistake) : ProfileProblem;

/// <summary>Entries that contradict each other, with nothing more to say about it.</summary>
/// <param name="What">What does.</param>
public sealed record Contradiction(Contradictory What) : ProfileProblem;

/// <summary>Entries that contradict each other.</summary>
public enum Contradictory
{
    /// <summary>A box's maximum corner is not beyond its minimum corner.</summary>
    BoxCorners,

    /// <summary>A corner next to a tilted box's corner is that corner.</summary>
    TiltedBoxEdge,

    /// <summary>The edges of a tilted box are not square to each other.</summary>
    TiltedBoxSquare,

    /// <summary>Both ends of a cylinder are one point.</summary>
    CylinderEnds,

    /// <summary>Batches do not rise.</summary>
    Quantities,

    /// <summary>The sensor reads the same at both stops.</summary>
    SensorVolts,

    /// <summary>A published test and a profile of one's own.</summary>
    ShakingTwice,

    /// <summary>Frequencies of a curve that do not rise.</summary>
    Frequencies,

    /// <summary>Idle speed not below the maximum speed.</summary>
    IdleSpeed,

    /// <summary>A material has a price, but the shop has no rates.</summary>
    PriceWithoutRates,

    /// <summary>A bare part has a layer.</summary>
    ThicknessOfBare,

    /// <summary>A finish has no thickness.</summary>
    FinishWithoutThickness,

    /// <summary>Steel is to be anodised.</summary>
    AnodisedSteel,

    /// <summary>A shop has a press brake or a punch, but no die.</summary>
    PressWithoutDies,

    /// <summary>One side of an offcut without the other.</summary>
    OffcutSides,

    /// <summary>Two grooves lie in one another.</summary>
    GroovesOverlap,

    /// <summary>A cable is to work in a groove and was not measured.</summary>
    CableNotMeasured,

    /// <summary>A cable is to work in a groove for other work.</summary>
    GrooveOfOtherWork,

    /// <summary>A packed job does not hold its job.</summary>
    JobNotPacked,

    /// <summary>Both ends of a bend are one point.</summary>
    BendLineEnds,

    /// <summary>A part has a price, and the bundle that it comes with has one.</summary>
    PriceInBundle,

    /// <summary>One reading of a position sensor without the other.</summary>
    OneReading,
}
