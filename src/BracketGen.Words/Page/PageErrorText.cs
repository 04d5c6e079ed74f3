using System.Globalization;
using System.Text.RegularExpressions;
using BracketGen.Profiles.Errors;
using BracketGen.Words.Profiles;

namespace BracketGen.Words.Page;

/// <summary>Mistakes beside the fields of the page: what is to be entered, named as the fields are, without the writing of the files.</summary>
public static partial class PageErrorText
{
    /// <summary>Whether nothing is wrong but that something is still to be given.</summary>
    public static bool IsOpen(ProfileError error) => error.IsUnfinished
        || error is { Problem: ValueWrong { Mistake: ValueMistake.EmptyText } } or { Problem: ValueWrong { Allowed: AllowedPattern { Pattern: TextPattern.ProfilePath } }, Read: "\"\"" }
        || error is { Problem: ValueWrong { Mistake: ValueMistake.NotTwoNumbers or ValueMistake.NotACorner or ValueMistake.NotThreeNumbers }, Read: "[]" };

    /// <summary>What is allowed.</summary>
    public static string Allowed(ProfileError error) => error.Problem switch
    {
        AlternativeMissing missing => Or(error.Key, missing.Keys),
        AlternativeTwice both => $"one of {Or(error.Key, both.Keys)}",
        ValueWrong { Mistake: ValueMistake.FewItems or ValueMistake.ManyItems, Allowed: AllowedList list } => string.Create(CultureInfo.InvariantCulture, $"{list.From} to {list.To} of them"),
        ValueWrong { Mistake: ValueMistake.NotTwoNumbers or ValueMistake.NotACorner } => "two coordinates",
        ValueWrong { Mistake: ValueMistake.NotThreeNumbers } => "x, y and z",
        FileUnread { Mistake: FileMistake.Missing } or ValueWrong { Allowed: AllowedPattern { Pattern: TextPattern.ProfilePath } } => "a file that is in the folder",
        DxfWrong { Mistake: DxfMistake.NoUnit } => "a drawing that says its unit, or its unit given here",
        _ => Plain(ProfileErrorText.Allowed(error)),
    };

    /// <summary>What to do about it: whole sentences.</summary>
    public static string Advice(ProfileError error) => error.Problem switch
    {
        KeyMissing missing => $"Not given yet. {missing.Description}",
        AlternativeMissing => "Give one of them.",
        AlternativeTwice => "Clear all but one of them.",
        ValueWrong { Mistake: ValueMistake.NotTwoNumbers or ValueMistake.NotACorner or ValueMistake.NotThreeNumbers } => "Give each number.",
        ValueWrong { Mistake: ValueMistake.EmptyText } or ValueWrong { Allowed: AllowedPattern { Pattern: TextPattern.ProfilePath } } when IsOpen(error) => "Not given yet.",
        FileUnread { Mistake: FileMistake.Missing } => "Choose another one, or put it back into the folder.",
        DxfWrong { Mistake: DxfMistake.NoUnit } => "Measure a distance in the drawing and choose the unit that fits.",
        DxfWrong { Mistake: DxfMistake.OtherUnit } => "Clear the unit, or correct it.",
        DxfWrong { Mistake: DxfMistake.BendCount } => $"Add or remove bends until they are as many, in the order of the drawing; or name the {Quoted("bend_layer")}.",
        _ => Plain(ProfileErrorText.Advice(error)),
    };

    // Names in brackets, and words with an underscore, are those of the files.
    private static string Plain(string text) => Named().Replace(Coordinates().Replace(text, "${names}").Replace("text in quotes", "text", StringComparison.Ordinal), m => Quoted(m.Groups["name"].Value));

    private static string Or(string key, IEnumerable<string> names) => string.Join(" or ", names.Select(n => Label(Index().Replace(key.Length > 0 ? $"{key}.{n}" : n, ""), n)));

    private static string Quoted(string name) => $"\"{Label(name, name)}\"";

    private static string Label(string path, string name) =>
        BracketWords.Labels.TryGetValue(path, out var label) ? label
        : BracketWords.Labels.FirstOrDefault(l => l.Key.EndsWith("." + name, StringComparison.Ordinal)).Value
        ?? char.ToUpperInvariant(name[0]) + name[1..].Replace('_', ' ');

    [GeneratedRegex(@"\[\[?(?<name>[a-z][a-z_.]{2,})\]?\]|\b(?<name>[a-z]+(?:_[a-z]+)+)\b")]
    private static partial Regex Named();

    [GeneratedRegex(@"\[(?<names>[xu], [yv][^\]]*)\]")]
    private static partial Regex Coordinates();

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Index();
}
