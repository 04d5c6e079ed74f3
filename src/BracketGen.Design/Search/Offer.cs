using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Geometry;

namespace BracketGen.Design.Search;

/// <summary>A bracket that passes every check that a bracket can pass, with what it is weighed by.</summary>
/// <param name="Candidate">The bracket, its place and its travel.</param>
/// <param name="Checks">All its checks.</param>
public sealed record Offer(Candidate Candidate, ImmutableArray<Check> Checks) : IMirrored<Offer>
{
    /// <inheritdoc/>
    public Offer Mirrored() => this with { Candidate = Candidate.Mirrored() };

    /// <summary>Mass (t).</summary>
    public double Mass => Candidate.Bracket.Mass;

    /// <summary>Rough give of the stop along the wire under its largest tension (mm).</summary>
    public double Give => Candidate.Give;

    /// <summary>Give of the stop along the wire, largest tension of an opening, as finite elements found it (mm); null where they were not asked.</summary>
    public double? GiveFound { get; init; }

    /// <summary>The best that is known of the give (mm): what was found, or else the estimate.</summary>
    public double BestGive => GiveFound ?? Give;

    /// <summary>Number of bends.</summary>
    public int Bends => Candidate.Bracket.Flat.Bends.Length;

    /// <summary>The tightest of the checks that depend on the bracket's shape and place.</summary>
    public Check Tightest => Checks.Where(IsOfPlace).MinBy(c => c.Spare)!;

    /// <summary>Its margin over its limit (or over a millimetre or five degrees, where the limit is less).</summary>
    public double LeastSpare => Tightest.Spare;

    /// <summary>Whether another offer is as good in everything and better in something.</summary>
    public bool IsDominatedBy(Offer other) =>
        other.Mass <= Mass && other.Give <= Give && other.Bends <= Bends && other.LeastSpare >= LeastSpare
        && (other.Mass < Mass || other.Give < Give || other.Bends < Bends || other.LeastSpare > LeastSpare);

    /// <summary>Whether a check depends on the bracket's shape and place, and says by how much it passes.</summary>
    internal static bool IsOfPlace(Check check) => check.Id is CheckId.MovingParts or CheckId.WrapWideOpen or CheckId.GrooveLength
        or CheckId.FittingClearance or CheckId.StopRoom or CheckId.BoltRoom or CheckId.KeepOut
        or CheckId.BodyClearance or CheckId.WireClearance or CheckId.OuterClearance or CheckId.OuterEndClearance or CheckId.OuterMoving;
}
