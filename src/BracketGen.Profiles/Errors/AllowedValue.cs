using System.Collections.Immutable;
using BracketGen.Units;

namespace BracketGen.Profiles.Errors;

/// <summary>What may stand at a key.</summary>
public abstract record AllowedValue;

/// <summary>A number, bare or with a unit in quotes.</summary>
/// <param name="Unit">Unit of a bare number.</param>
/// <param name="From">Minimum, in that unit.</param>
/// <param name="To">Maximum, in that unit.</param>
public sealed record AllowedQuantity(Unit Unit, double From, double To) : AllowedValue;

/// <summary>A whole number.</summary>
/// <param name="From">Minimum.</param>
/// <param name="To">Maximum.</param>
public sealed record AllowedCount(int From, int To) : AllowedValue;

/// <summary>Text on one line.</summary>
/// <param name="Max">Maximum length in characters.</param>
public sealed record AllowedLine(int Max) : AllowedValue;

/// <summary>One of a few words.</summary>
/// <param name="Words">The words.</param>
public sealed record AllowedWords(ImmutableArray<string> Words) : AllowedValue;

/// <summary>A list.</summary>
/// <param name="From">Minimum number of items.</param>
/// <param name="To">Maximum number of items.</param>
/// <param name="Item">What each item may be.</param>
public sealed record AllowedList(int From, int To, AllowedValue Item) : AllowedValue;

/// <summary>Three coordinates.</summary>
/// <param name="IsDirection">Whether they give a direction, not a point.</param>
/// <param name="Coordinate">What each may be.</param>
public sealed record AllowedVector(bool IsDirection, AllowedQuantity Coordinate) : AllowedValue;

/// <summary>A point on a flange.</summary>
/// <param name="MayRound">Whether it is a corner that may have a rounding.</param>
/// <param name="Coordinate">What each coordinate may be.</param>
public sealed record AllowedFlangePoint(bool MayRound, AllowedQuantity Coordinate) : AllowedValue;

/// <summary>A table.</summary>
/// <param name="Keys">The keys it may hold.</param>
public sealed record AllowedTable(ImmutableArray<string> Keys) : AllowedValue;

/// <summary>A table of which one key says what kind it is.</summary>
/// <param name="Tag">That key.</param>
/// <param name="Words">The kinds.</param>
public sealed record AllowedKinds(string Tag, ImmutableArray<string> Words) : AllowedValue;

/// <summary>Text of a certain pattern.</summary>
/// <param name="Pattern">The pattern.</param>
public sealed record AllowedPattern(TextPattern Pattern) : AllowedValue;

/// <summary>Patterns that text may have to follow.</summary>
public enum TextPattern
{
    /// <summary>A day: 2026-03-31.</summary>
    Date,

    /// <summary>A code of 1 to 12 letters and digits.</summary>
    Code,

    /// <summary>A rule for part numbers.</summary>
    PartNumber,

    /// <summary>A screw thread: M8x1, 5/16-24.</summary>
    Thread,

    /// <summary>The path of another profile.</summary>
    ProfilePath,

    /// <summary>The path of a file in a packed job.</summary>
    PackedPath,

    /// <summary>A whole file.</summary>
    WholeText,
}
