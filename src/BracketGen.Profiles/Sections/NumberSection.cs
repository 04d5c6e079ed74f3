using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[numbers]</c> of a family: part numbers and revisions.</summary>
internal static class NumberSection
{
    private static readonly Key<string> Rule = new(
        "rule", new PatternForm(), "Rule for part numbers: letters, digits, - . _ and the words {vehicle}, {throttle_body}, {material}, {option} for the codes, {serial} for a running number.");

    private static readonly Key<int> FirstSerial = Key<int>.WithDefault("first_serial", new CountForm(0, 9_999_999), "The first running number.", 1);

    private static readonly Key<int> SerialDigits = Key<int>.WithDefault("serial_digits", new CountForm(1, 8), "Digits of the running number, with leading zeros.", 4);

    private static readonly Key<RevisionStyle> Revisions = Key<RevisionStyle>.WithDefault(
        "revisions", new WordForm<RevisionStyle>(("letters", RevisionStyle.Letters), ("numbers", RevisionStyle.Numbers)),
        "How revisions are counted: A, B, C … without the letters that are misread (I O Q S X Z), or 1, 2, 3 …",
        RevisionStyle.Letters);

    private static readonly Key<ImmutableArray<string>> InStock = Key<ImmutableArray<string>>.WithDefault(
        "in_stock", new ListForm<string>(new TextForm(100), 0, 10_000), "Part numbers that are sold or in stock: where several parts would do as well, these are preferred.", []);

    private static readonly Key<ImmutableArray<string>> Pinned = Key<ImmutableArray<string>>.WithDefault(
        "pinned", new ListForm<string>(new TextForm(100), 0, 10_000), "Part numbers that are always among the parts of the line, and are drawn anew only where they no longer pass.", []);

    public static readonly Key<NumberRule> Numbers = new(
        "numbers",
        new Section<NumberRule>(
            [Rule, FirstSerial, SerialDigits, Revisions, InStock, Pinned],
            v => new(v.Get(Rule), v.Get(FirstSerial), v.Get(SerialDigits), v.Get(Revisions)) { InStock = v.Get(InStock), Pinned = v.Get(Pinned) }),
        "How parts are numbered.");
}

/// <summary>A code in part numbers.</summary>
internal sealed partial class CodeForm : Form<string>
{
    private const string Pattern = "^[A-Za-z0-9]{1,12}$";

    public override AllowedValue Allowed => new AllowedPattern(TextPattern.Code);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out string result)
    {
        result = (value as TomlText)?.Text;
        if (result is not null && Code().IsMatch(result))
        {
            return true;
        }

        Report(value, key, reading, ValueMistake.NotThePattern);
        return false;
    }

    public override JsonObject Schema(SharedSchemas shared) => new() { ["type"] = "string", ["pattern"] = Pattern };

    [GeneratedRegex("\\A[A-Za-z0-9]{1,12}\\z", RegexOptions.CultureInvariant)]
    private static partial Regex Code();
}

/// <summary>The rule of a part number.</summary>
internal sealed partial class PatternForm : Form<string>
{
    private const string Part = "([A-Za-z0-9._-]|\\{(vehicle|throttle_body|material|option|serial)\\})";

    public override AllowedValue Allowed => new AllowedPattern(TextPattern.PartNumber);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out string result)
    {
        result = (value as TomlText)?.Text;
        if (result is { Length: <= 100 } && Rule().IsMatch(result))
        {
            return true;
        }

        Report(value, key, reading, ValueMistake.NotThePattern);
        return false;
    }

    public override JsonObject Schema(SharedSchemas shared) => new() { ["type"] = "string", ["pattern"] = $"^{Part}+$", ["maxLength"] = 100 };

    [GeneratedRegex("\\A" + Part + "+\\z", RegexOptions.CultureInvariant)]
    private static partial Regex Rule();
}
