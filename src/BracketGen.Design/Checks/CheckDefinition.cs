using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Units;

namespace BracketGen.Design.Checks;

/// <summary>What a failed check means.</summary>
public enum CheckKind
{
    /// <summary>Somebody can be hurt: the cut file is refused unless the user allows it by name.</summary>
    Safety,

    /// <summary>It will not work as wanted.</summary>
    Function,

    /// <summary>It cannot be made, or not well.</summary>
    Making,

    /// <summary>It works, with something more to be done.</summary>
    Advice,
}

/// <summary>On which side of its limit a value is good.</summary>
public enum Bound
{
    /// <summary>The value must not be below the limit.</summary>
    AtLeast,

    /// <summary>The value must not be above the limit.</summary>
    AtMost,
}

/// <summary>Where a limit comes from.</summary>
public enum LimitSource
{
    /// <summary>Common practice, no source.</summary>
    CommonPractice,

    /// <summary>Our judgement, no source.</summary>
    Judgement,

    /// <summary>The job's preferences; their defaults are common practice without a source.</summary>
    Preference,

    /// <summary>A profile.</summary>
    Profile,

    /// <summary>Geometry.</summary>
    Geometry,

    /// <summary>How far the pocket angle may be off.</summary>
    PocketPlusMinus,

    /// <summary>ISO 273, medium: the play of bolts in their clearance holes.</summary>
    BoltPlay,

    /// <summary>49 CFR 571.124 S5: at least two sources of energy, each of which closes the throttle.</summary>
    TwoSprings,

    /// <summary>49 CFR 571.124 S5.3: time in which the throttle is closed.</summary>
    ClosingTime,

    /// <summary>EN 1993-1-8, table 3.3: 1.2 times the hole's diameter.</summary>
    EdgeDistance,

    /// <summary>Geometry of the V-die.</summary>
    VDie,

    /// <summary>Machinery's Handbook, wire rope, minimum sheave diameters (from memory).</summary>
    SheaveRatio,

    /// <summary>VDI 2230 Blatt 1: highly stressed bolted joints (from memory).</summary>
    ScrewGuideline,

    /// <summary>The material's own data; <see cref="Check.GivenSource"/> names it.</summary>
    Material,
}

/// <summary>What a check depends on, so that a search knows what can change it.</summary>
public enum CheckScope
{
    /// <summary>Cable, pedal and throttle body alone: no bracket can correct or spoil it.</summary>
    BeyondTheBracket,

    /// <summary>The place of the stop.</summary>
    StopPlace,

    /// <summary>Shape and place of the bracket.</summary>
    ShapeAndPlace,

    /// <summary>Strength of the bracket.</summary>
    OwnStrength,

    /// <summary>The whole mechanism with the bracket in place.</summary>
    WholeMechanism,

    /// <summary>A bracket that was not made for the job.</summary>
    ExistingBracket,
}

/// <summary>What a check is, whatever it finds.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="Code">Its name in files and on the command line; stays the same from version to version.</param>
/// <param name="Kind">What a failure means.</param>
/// <param name="Unit">What its numbers measure, in internal units.</param>
/// <param name="Bound">Which side of the limit is good.</param>
/// <param name="Source">Where the limit comes from.</param>
/// <param name="Scope">What can change it.</param>
/// <param name="Inputs">The inputs it rests on.</param>
public sealed record CheckDefinition(
    CheckId Id, string Code, CheckKind Kind, Quantity Unit, Bound Bound, LimitSource Source, CheckScope Scope, ImmutableArray<InputId> Inputs);
