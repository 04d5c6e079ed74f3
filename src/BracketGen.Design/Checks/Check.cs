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

/// <summary>One thing that was checked: what, with which result, against which limit, from which source.</summary>
/// <remarks>Every screen and every file prints this same list.</remarks>
/// <param name="Id">Short name that stays the same from version to version; overrides are given by it.</param>
/// <param name="Title">What is checked, in a few words.</param>
/// <param name="Kind">What a failure means.</param>
/// <param name="Unit">What the numbers are, in internal units.</param>
/// <param name="Value">What was found.</param>
/// <param name="Bound">Which side is good.</param>
/// <param name="Limit">What it is held to.</param>
/// <param name="Source">Where the limit comes from.</param>
/// <param name="Consequence">In plain words, what happens where it fails and what to do.</param>
public sealed record Check(
    string Id, string Title, CheckKind Kind, Quantity Unit, double Value, Bound Bound, double Limit, string Source,
    string Consequence)
{
    /// <summary>How far the value is on the good side (internal unit); negative where the check fails.</summary>
    public double Margin => Bound == Bound.AtLeast ? Value - Limit : Limit - Value;

    /// <summary>Whether it passes; a value that is not a number never does.</summary>
    public bool Passes => Margin >= -Slack;

    /// <summary>Whether it is a failed safety check.</summary>
    public bool IsDanger => Kind == CheckKind.Safety && !Passes;

    // Round-off must not fail a value that was placed exactly on its limit.
    private double Slack => 1e-9 * Math.Max(1, Math.Abs(Limit));
}
