using System.Collections.Immutable;
using BracketGen.Units;

namespace BracketGen.Profiles.Errors;

/// <summary>What is wrong at a place in a file.</summary>
public abstract record ProfileProblem;

/// <summary>A value is not of the form that its key asks for.</summary>
/// <param name="Mistake">In what way.</param>
/// <param name="Allowed">What is allowed.</param>
public sealed record ValueWrong(ValueMistake Mistake, AllowedValue Allowed) : ProfileProblem;

/// <summary>Ways in which a value misses its form.</summary>
public enum ValueMistake
{
    /// <summary>The key needs text; the file has something else.</summary>
    NotText,

    /// <summary>Text without a letter.</summary>
    EmptyText,

    /// <summary>Text too long, or with line breaks or tabs.</summary>
    LongText,

    /// <summary>Text that does not follow its pattern.</summary>
    NotThePattern,

    /// <summary>A thread of a size that no adjuster has.</summary>
    ThreadSize,

    /// <summary>A path that means something on one machine only.</summary>
    AbsolutePath,

    /// <summary>A path with backslashes.</summary>
    Backslash,

    /// <summary>No whole number, or one out of range.</summary>
    NotACount,

    /// <summary>No list.</summary>
    NotAList,

    /// <summary>One table under a header, where the header is to be repeated.</summary>
    HeaderNotRepeated,

    /// <summary>A list with too few items.</summary>
    FewItems,

    /// <summary>A list with too many items.</summary>
    ManyItems,

    /// <summary>Not three coordinates.</summary>
    NotThreeNumbers,

    /// <summary>Not two coordinates.</summary>
    NotTwoNumbers,

    /// <summary>Not two coordinates with or without a radius.</summary>
    NotACorner,

    /// <summary>A direction without length.</summary>
    ZeroDirection,

    /// <summary>No table.</summary>
    NotATable,

    /// <summary>No single number.</summary>
    NotANumber,

    /// <summary>Infinite, or not a number.</summary>
    NotFinite,

    /// <summary>A number without unit, in quotes.</summary>
    QuotedNumber,

    /// <summary>A comma for the decimal point.</summary>
    DecimalComma,

    /// <summary>Text that does not begin with a number.</summary>
    NoNumber,

    /// <summary>A number in quotes that needs a unit and has none.</summary>
    NoUnit,
}

/// <summary>A word that is none of those allowed.</summary>
/// <param name="Allowed">The words.</param>
/// <param name="Nearest">The word that was meant, as far as one can guess; null where one cannot.</param>
public sealed record WordUnknown(AllowedWords Allowed, string? Nearest) : ProfileProblem;

/// <summary>A number out of range.</summary>
/// <param name="Allowed">The range.</param>
/// <param name="Value">What it is, in the internal unit.</param>
/// <param name="Written">The unit it was written with; null for a bare number.</param>
public sealed record OutOfRange(AllowedQuantity Allowed, double Value, Unit? Written) : ProfileProblem;

/// <summary>A unit that is not in the table of units.</summary>
/// <param name="Allowed">What is allowed.</param>
/// <param name="Word">What stands for the unit.</param>
/// <param name="Nearest">The unit that was meant, as far as one can guess; null where one cannot.</param>
public sealed record UnitUnknown(AllowedQuantity Allowed, string Word, string? Nearest) : ProfileProblem;

/// <summary>A unit of another quantity.</summary>
/// <param name="Allowed">What is allowed.</param>
/// <param name="Unit">The unit.</param>
public sealed record UnitWrong(AllowedQuantity Allowed, Unit Unit) : ProfileProblem;

/// <summary>The value has a unit, its ± has none.</summary>
/// <param name="Bare">The ± as written.</param>
/// <param name="Unit">Unit of the value, as written.</param>
public sealed record PlusMinusWithoutUnit(string Bare, string Unit) : ProfileProblem;

/// <summary>A key that must be there is not.</summary>
/// <param name="Name">The key without its tables.</param>
/// <param name="Allowed">What is allowed.</param>
/// <param name="Description">What it is, as the schema says it.</param>
/// <param name="IsHeader">Whether it is a table that is written under a header.</param>
public sealed record KeyMissing(string Name, AllowedValue Allowed, string Description, bool IsHeader) : ProfileProblem;

/// <summary>A key that is not known here.</summary>
/// <param name="Name">The key without its tables.</param>
/// <param name="Known">The keys that are.</param>
/// <param name="Nearest">The key that was meant, as far as one can guess; null where one cannot.</param>
public sealed record KeyUnknown(string Name, ImmutableArray<string> Known, string? Nearest) : ProfileProblem;

/// <summary>A key by a name it no longer has.</summary>
/// <param name="Old">The old name.</param>
/// <param name="Now">The present name.</param>
/// <param name="IsGivenToo">Whether the key is there by its present name as well.</param>
public sealed record KeyRenamed(string Old, string Now, bool IsGivenToo) : ProfileProblem;

/// <summary>A key whose place another key has taken, with another meaning.</summary>
/// <param name="Old">The old key.</param>
/// <param name="Now">The present key.</param>
public sealed record KeyReplaced(string Old, string Now) : ProfileProblem;

/// <summary>A key for a further cable by a name that it does not have here.</summary>
/// <param name="Name">The key.</param>
/// <param name="Now">The key that takes further cables.</param>
public sealed record KeyOfOtherCable(string Name, string Now) : ProfileProblem;

/// <summary>Neither of two keys that say the same thing is there.</summary>
/// <param name="Keys">The keys.</param>
public sealed record AlternativeMissing(ImmutableArray<string> Keys) : ProfileProblem;

/// <summary>Both of two keys that say the same thing are there.</summary>
/// <param name="Keys">The keys.</param>
public sealed record AlternativeTwice(ImmutableArray<string> Keys) : ProfileProblem;

/// <summary>A key or header that was given before.</summary>
/// <param name="FirstLine">Line where it was given first.</param>
public sealed record KeyTwice(int FirstLine) : ProfileProblem;

/// <summary>A plain header of a name that has repeated headers already.</summary>
/// <param name="FirstLine">Line of the first of them.</param>
public sealed record HeaderOfOneBracket(int FirstLine) : ProfileProblem;

/// <summary>A file that cannot be read.</summary>
/// <param name="Mistake">Why.</param>
/// <param name="Path">Its path, where another file names it; null for the file that was asked for.</param>
public sealed record FileUnread(FileMistake Mistake, string? Path) : ProfileProblem;

/// <summary>Why a file cannot be read.</summary>
public enum FileMistake
{
    /// <summary>There is no such file.</summary>
    Missing,

    /// <summary>The file is too long for a profile.</summary>
    TooLong,

    /// <summary>The file may not or cannot be read.</summary>
    Closed,

    /// <summary>It is a pipe or a device.</summary>
    NoFile,
}

/// <summary>Mistakes that are not listed one by one.</summary>
/// <param name="Count">How many.</param>
public sealed record MoreMistakes(int Count) : ProfileProblem;

/// <summary>The file does not say what it is.</summary>
/// <param name="Wanted">The kind of profile that is wanted.</param>
public sealed record KindMissing(string Wanted) : ProfileProblem;

/// <summary>The file is a profile of another kind.</summary>
/// <param name="Wanted">The kind of profile that is wanted.</param>
/// <param name="Found">The kind that it is; null where its first key says none that is known.</param>
public sealed record KindWrong(string Wanted, string? Found) : ProfileProblem;

/// <summary>The text is not TOML.</summary>
/// <param name="Mistake">In what way.</param>
/// <param name="Detail">The value, the parser's message, or the maximum length, as <paramref name="Mistake"/> says; empty otherwise.</param>
public sealed record NotToml(SyntaxMistake Mistake, string Detail) : ProfileProblem;

/// <summary>Ways in which a text misses TOML.</summary>
public enum SyntaxMistake
{
    /// <summary>A byte that is not UTF-8.</summary>
    NotUtf8,

    /// <summary>A line too long to be read; the detail is the maximum in characters.</summary>
    LongLine,

    /// <summary>An escape for half of a pair of code units.</summary>
    HalfLetter,

    /// <summary>A value with a unit, not in quotes; the detail is the value.</summary>
    UnquotedUnit,

    /// <summary>A comma for the decimal point.</summary>
    DecimalComma,

    /// <summary>A word that is not in quotes; the detail is the word.</summary>
    UnquotedWord,

    /// <summary>A header that is not closed or badly formed.</summary>
    Header,

    /// <summary>A line that the parser cannot read; the detail is its message.</summary>
    Line,

    /// <summary>Something that the parser does not accept; the detail is its message.</summary>
    Other,
}
