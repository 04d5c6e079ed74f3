using System.Globalization;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Errors;
using BracketGen.Units;

namespace BracketGen.Words.Profiles;

/// <summary>Mistakes in profiles as people read them, in the units of the job or family.</summary>
public static class ProfileErrorText
{
    private const int MaxKey = 120;

    /// <summary>Two lines: where, which key, what was read and what is allowed; then what to do.</summary>
    /// <example>
    /// <code>
    /// bodies/alder-58.toml:12:16: quadrant.pitch_radius: read "12 lbf"; allowed: a length from 5 to 200 mm
    ///     lbf is a unit of force. Give a length in mm, cm, m, in or ft.
    /// </code>
    /// </example>
    public static string Format(ProfileError error)
    {
        var place = error.Line > 0 ? string.Create(CultureInfo.InvariantCulture, $":{error.Line}:{error.Column}") : "";
        var key = error.Key.Length > 0 ? $" {(error.Key.Length > MaxKey ? error.Key[..MaxKey] + "…" : error.Key)}:" : "";
        return $"{error.File}{place}:{key} read {Read(error)}; allowed: {Allowed(error)}\n    {Advice(error)}";
    }

    /// <summary>What was read.</summary>
    public static string Read(ProfileError error) => error.Problem switch
    {
        KeyUnknown unknown => $"the key {unknown.Name}",
        KeyRenamed renamed => $"the key {renamed.Old}",
        KeyReplaced replaced => $"the key {replaced.Old}",
        KeyOfOtherCable cable => $"the key {cable.Name}",
        SecondCable { Count: < 2 } => "a list [[cable]]",
        SecondCable cables => string.Create(CultureInfo.InvariantCulture, $"{cables.Count} tables [[cable]]"),
        AlternativeTwice both => string.Join(" and ", both.Keys),
        KeyTwice => $"{error.Key} again",
        MoreMistakes more => more.Count == 1 ? "one more mistake" : string.Create(CultureInfo.InvariantCulture, $"{more.Count} more mistakes"),
        ValueWrong { Mistake: ValueMistake.FewItems or ValueMistake.ManyItems } => $"{error.Read} items",
        FileUnread { Mistake: var mistake, Path: var path } => FileRead(mistake) is var read && path is null ? read : $"{error.Read}: {read} at {path}",
        NotToml { Mistake: SyntaxMistake.NotUtf8 } => error.Read.Length > 0 ? $"byte {error.Read}" : "a byte that is not UTF-8",
        NotToml when error.Read.Length == 0 => "the end of the file",
        DxfWrong { Mistake: DxfMistake.Binary } => "a file that is not text",
        DxfWrong { Mistake: DxfMistake.NoContour } => "no closed contour",
        DxfWrong or OffcutWrong when error.Read.Length == 0 => "the drawing",
        _ when error.IsMissing => "nothing",
        _ => error.Read,
    };

    /// <summary>What is allowed.</summary>
    public static string Allowed(ProfileError error)
    {
        var units = UnitsOf(error);
        return error.Problem switch
        {
            ValueWrong { Mistake: ValueMistake.ZeroDirection } => "a direction [x, y, z] that is not zero",
            ValueWrong wrong => AllowedText.Of(wrong.Allowed, units),
            WordUnknown word => AllowedText.Of(word.Allowed, units),
            ThreadUnknown thread => AllowedText.Choice(thread.Near.Select(t => t.Name)),
            ClassNotForThread wrong => AllowedText.Choice(wrong.Classes),
            OutOfRange range => AllowedText.Of(range.Allowed, units),
            UnitUnknown unit => AllowedText.Of(unit.Allowed, units),
            UnitWrong unit => AllowedText.Of(unit.Allowed, units),
            KeyMissing missing => AllowedText.Of(missing.Allowed, units),
            KeyUnknown unknown => string.Join(", ", unknown.Known),
            KeyRenamed renamed => renamed.Now,
            KeyReplaced replaced => replaced.Now,
            KeyOfOtherCable cable => $"[[{cable.Now}]]",
            AlternativeMissing missing => string.Join(" or ", missing.Keys),
            AlternativeTwice both => $"{string.Join(" or ", both.Keys)}, not both",
            KeyTwice => "each key once",
            HeaderOfOneBracket => $"[{error.Read}]",
            FileUnread { Mistake: FileMistake.Missing } => "the path of a file that exists",
            FileUnread { Mistake: FileMistake.TooLong } => "a file of at most 1 MiB",
            FileUnread { Mistake: FileMistake.NoFile } => "a file on a disk",
            MoreMistakes => "none",
            FileUnread => "a file that can be read",
            KindMissing kind => FirstLine(kind.Wanted),
            KindWrong kind => FirstLine(kind.Wanted),
            NotToml { Mistake: SyntaxMistake.NotUtf8 } => "text in UTF-8",
            NotToml { Mistake: SyntaxMistake.LongLine } line => $"lines of at most {line.Detail} characters",
            NotToml => "TOML: [table] headers and key = value lines",
            var conflict => ConflictText.Allowed(conflict, units),
        };
    }

    /// <summary>What to do about it: whole sentences.</summary>
    public static string Advice(ProfileError error) => error.Problem switch
    {
        ValueWrong wrong => ValueText.Advice(wrong, error.Key),
        ThreadUnknown { IsSizeKnown: true } thread => $"This size has other pitches: {Phrases.List([.. thread.Near.Select(ScrewText.InFull)])}. Lay a thread gauge into the thread.",
        ThreadUnknown => "Write diameter and pitch as on the thread gauge: \"M6\", \"M8x1\", \"1/4-20\" or \"#10-32\".",
        ClassNotForThread wrong => $"{wrong.Thread} has no such class. Write one of these, or leave the line out: then \"{wrong.Usual}\" is ordered.",
        WordUnknown when BeyondText.For(error.Read) is { } beyond => beyond,
        KeyUnknown asked when BeyondText.For(asked.Name) is { } beyond => beyond,
        WordUnknown { Nearest: null } => "Write one of these, in quotes.",
        WordUnknown word => $"Did you mean \"{word.Nearest}\"?",
        OutOfRange range => ValueText.Advice(range, error.Read, UnitsOf(error)),
        UnitUnknown unit => ValueText.Advice(unit),
        UnitWrong unit => $"{unit.Unit.Name} is a unit of {Bare(UnitTable.With(unit.Unit.Kind))}. {ValueText.UnitsWanted(unit.Allowed)}",
        KeyMissing { IsHeader: true } missing => $"Add a table under a header [{error.Key}]: {missing.Description}",
        KeyMissing missing => $"Add the line {missing.Name} = … : {missing.Description}",
        KeyUnknown { Nearest: null } => "There is no such key here. Delete it, or move it under the right header.",
        KeyUnknown unknown => $"Did you mean {unknown.Nearest}?",
        KeyRenamed { IsGivenToo: true } renamed => $"{renamed.Old} is now {renamed.Now}, which is given too. Delete one of the two.",
        KeyRenamed renamed => $"{renamed.Old} is now {renamed.Now}. Write the new name; the value stays the same.",
        KeyReplaced replaced => $"{replaced.Old} was the stiffness of the whole outer, one number for load and lost motion. Write {replaced.Now} = {{ value = …, plus_minus = … }}: "
            + $"the old value times the length of the outer, {(UnitsOf(error) == UnitSystem.Inch ? "600 lbf/in times 39 in is \"23400 lbf\"" : "100 N/mm times 450 mm is 45000 N")}. "
            + $"Measure it as docs/measuring.md says, or delete the line: then it is assumed from {UnitsOf(error).Write(Quantity.Force, Cable.SoftestOuter)} to {UnitsOf(error).Write(Quantity.Force, Cable.StiffestOuter)}.",
        KeyOfOtherCable cable => $"[cable] is the cable from the pedal. Write every other cable under [[{cable.Now}]]: in the vehicle's file name, does and from; in the job cable and becomes.",
        AlternativeMissing => "Add one of the two.",
        AlternativeTwice both => $"Delete {string.Join(" or ", both.Keys)}: both say the same thing.",
        KeyTwice { FirstLine: var line } when error.Key == "cable" => string.Create(CultureInfo.InvariantCulture, $"It was given on line {line}. [cable] is the cable from the pedal. Write every other cable under [[other_cables]]."),
        KeyTwice twice => string.Create(CultureInfo.InvariantCulture, $"It was given on line {twice.FirstLine}. Delete one of the two."),
        HeaderOfOneBracket header => string.Create(CultureInfo.InvariantCulture, $"Write the header with two brackets, as on line {header.FirstLine}."),
        FileUnread { Mistake: FileMistake.Missing } => "Check the path and its spelling, including capital letters.",
        FileUnread { Mistake: FileMistake.TooLong } => "This is not a profile. Check the path.",
        FileUnread { Mistake: FileMistake.NoFile } => "Write what comes out of it into a file first.",
        FileUnread => "Check the path and the file's permissions.",
        MoreMistakes => "Correct the mistakes above first.",
        KindWrong { Found: { } found } kind => $"This file describes a {found}; a {kind.Wanted} is needed here. Check the path.",
        KindWrong kind => $"Begin the file with the line {FirstLine(kind.Wanted)}.",
        KindMissing kind => $"Begin the file with the line {FirstLine(kind.Wanted)}.",
        NotToml toml => Advice(toml),
        var conflict => ConflictText.Advice(conflict, error.Key, UnitsOf(error)),
    };

    /// <summary>What is wrong with a reading typed on a command line.</summary>
    public static string OfReading(ProfileError error) => $"Allowed: {Allowed(error)}. {Advice(error)}";

    private static UnitSystem UnitsOf(ProfileError error) => error.Units ?? UnitSystem.Metric;

    private static string Advice(NotToml toml) => toml.Mistake switch
    {
        SyntaxMistake.NotUtf8 => "In your editor, save the file as UTF-8.",
        SyntaxMistake.LongLine => "This is not a profile. Check the path, or write long lists on several lines.",
        SyntaxMistake.HalfLetter => "An escape such as \\uD800 stands for no letter. Write the letter itself.",
        SyntaxMistake.UnquotedUnit => $"Put a value with its unit in quotes: \"{toml.Detail}\".",
        SyntaxMistake.DecimalComma => "Write a decimal point, not a comma.",
        SyntaxMistake.UnquotedWord => $"Put words in quotes: \"{toml.Detail}\".",
        SyntaxMistake.Header => "Write a header as [name], or as [[name]] where there may be several.",
        SyntaxMistake.Line => toml.Detail + " Check that brackets, braces and quotes are closed on this line and the one before.",
        _ => toml.Detail,
    };

    private static string FileRead(FileMistake mistake) => mistake switch
    {
        FileMistake.Missing => "no such file",
        FileMistake.TooLong => "a longer file",
        FileMistake.NoFile => "a pipe or a device",
        _ => "a file that cannot be read",
    };

    private static string FirstLine(string kind) => $"profile = \"{kind}\"";

    // "a length" without its article.
    private static string Bare(string noun) => noun[(noun.IndexOf(' ') + 1)..];
}
