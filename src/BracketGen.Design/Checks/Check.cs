using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Design.Checks;

/// <summary>What is known of a check.</summary>
public enum CheckState
{
    /// <summary>It passes, whatever is assumed.</summary>
    Passes,

    /// <summary>It fails with the values as they are.</summary>
    Fails,

    /// <summary>It was not calculated, or it passes only as long as something assumed holds.</summary>
    NotKnown,
}

/// <summary>One thing that was checked: which, with which result, against which limit.</summary>
/// <remarks>Every screen and every file shows this same list. What a check is stands in <see cref="CheckCatalogue"/>, its words in the Words room.</remarks>
/// <param name="Id">Which check.</param>
/// <param name="Value">What was found, internal unit; not a number where it was not calculated.</param>
/// <param name="Limit">What it is compared with.</param>
public sealed record Check(CheckId Id, double Value, double Limit)
{
    /// <summary>Number of the bend, keep-out or hole it speaks of, from 1; null where there is only one.</summary>
    public int? Number { get; init; }

    /// <summary>Name of the thing it speaks of, in the user's words: a hole, a keep-out; null where there is none.</summary>
    public string? Subject { get; init; }

    /// <summary>The two things whose distance it looks at, the nearest of several; null for all other checks.</summary>
    public Pair? Pair { get; init; }

    /// <summary>What the cable does that it speaks of; null for all other checks.</summary>
    public CableDuty? Duty { get; init; }

    /// <summary>The second of two cases that the check's words tell apart, for example a bend along the grain.</summary>
    public bool IsVariant { get; init; }

    /// <summary>Where the limit comes from, where the material's own data name it; null for the source in the catalogue.</summary>
    public string? GivenSource { get; init; }

    /// <summary>Whether it was found with the bracket at an end of its slotted mount holes, where it is worse than in the middle.</summary>
    public bool IsAtSlotEnd { get; init; }

    /// <summary>Whether it passes with the bracket in the middle of its slotted mount holes, and not at an end of them.</summary>
    public bool PassesInMiddleOfSlots { get; init; }

    /// <summary>
    /// The value with everything assumed or not known at its unfavourable end, not a number where that end is not known; null where nothing it rests on
    /// is assumed.
    /// </summary>
    public double? Unfavourable { get; init; }

    /// <summary>Whether it is not known because the bracket lies on an adapter ring that shakes with it.</summary>
    public bool IsOnRing { get; init; }

    /// <summary>Why it is not known where only <see cref="Unfavourable"/> says so.</summary>
    public Doubt Doubt { get; init; }

    /// <summary>Which measurement to take again for it; null where that does not apply.</summary>
    public MeasureAgain? Measure { get; init; }

    /// <summary>What the check is.</summary>
    public CheckDefinition Definition => CheckCatalogue.Of(Id);

    /// <summary>Its name in files and on the command line, with its number.</summary>
    public string Code => Number is { } n ? $"{Definition.Code}-{n}" : Definition.Code;

    /// <summary>What a failure means.</summary>
    public CheckKind Kind => Definition.Kind;

    /// <summary>What its numbers measure.</summary>
    public Quantity Unit => Definition.Unit;

    /// <summary>Which side of the limit is good.</summary>
    public Bound Bound => Definition.Bound;

    /// <summary>How far the value is on the good side (internal unit); negative where the check fails.</summary>
    public double Margin => MarginOf(Value);

    /// <summary>The margin as a part of the limit, or of a millimetre, five degrees, a tenth or one, where the limit is less: what checks are compared by.</summary>
    public double Spare => Margin / Math.Max(Math.Abs(Limit), Unit switch
    {
        Quantity.Angle => SmallAngle.Radians,
        Quantity.Fraction => 0.1,
        _ => 1,
    });

    /// <summary>What is known of it.</summary>
    public CheckState State => double.IsNaN(Value) ? CheckState.NotKnown
        : !Holds(Value) ? CheckState.Fails
        : Unfavourable is { } worst && !Holds(worst) ? CheckState.NotKnown
        : CheckState.Passes;

    /// <summary>Whether it passes, whatever is assumed.</summary>
    public bool Passes => State == CheckState.Passes;

    /// <summary>Whether it fails.</summary>
    public bool Fails => State == CheckState.Fails;

    /// <summary>Whether it is a failed safety check.</summary>
    public bool IsDanger => Kind == CheckKind.Safety && Fails;

    private static readonly Angle SmallAngle = Angle.FromDegrees(5);

    private double MarginOf(double value) => Bound == Bound.AtLeast ? value - Limit : Limit - value;

    // Round-off must not fail a value that was placed exactly on its limit.
    private bool Holds(double value) => MarginOf(value) >= -Tolerance.LimitSlack * Math.Max(1, Math.Abs(Limit));
}
