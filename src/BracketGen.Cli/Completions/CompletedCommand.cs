using System.CommandLine;
using System.CommandLine.Completions;

namespace BracketGen.Cli.Completions;

/// <summary>What comes after a word: a choice of words, files, folders, or something only the user knows.</summary>
internal enum Wanted
{
    /// <summary>Nothing: the option stands alone.</summary>
    Nothing,

    /// <summary>One of some words.</summary>
    Word,

    /// <summary>A file.</summary>
    File,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>An option or argument as a shell completes it.</summary>
/// <param name="Name">Its name; of an option with the dashes.</param>
/// <param name="Description">What it is, one sentence.</param>
/// <param name="Wanted">What its value is.</param>
/// <param name="Words">The words, where it is one of them.</param>
internal sealed record CompletedValue(string Name, string Description, Wanted Wanted, IReadOnlyList<string> Words)
{
    public static CompletedValue Of(Option option) => Of(option, option.Name, option.ValueType);

    public static CompletedValue Of(Argument argument) => Of(argument, argument.Name, argument.ValueType);

    private static CompletedValue Of(Symbol symbol, string name, Type type)
    {
        string[] words = type == typeof(bool) ? [] : [.. symbol.GetCompletions(CompletionContext.Empty).Select(c => c.Label)];
        var wanted = type == typeof(bool) || type == typeof(void) ? Wanted.Nothing
            : words.Length > 0 ? Wanted.Word
            : type == typeof(FileInfo) || type == typeof(FileInfo[]) ? Wanted.File
            : type == typeof(DirectoryInfo) ? Wanted.Folder
            : Wanted.Other;
        return new(name, FirstSentence(symbol.Description ?? ""), wanted, words);
    }

    internal static string FirstSentence(string text)
    {
        var line = text.ReplaceLineEndings("\n").Split('\n')[0];
        var end = line.IndexOf(". ", StringComparison.Ordinal);
        return (end > 0 ? line[..end] : line).TrimEnd('.');
    }
}

/// <summary>A command as a shell completes it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it does, one sentence.</param>
/// <param name="Options">Its options, <c>--help</c> among them.</param>
/// <param name="Arguments">Its arguments, in order.</param>
internal sealed record CompletedCommand(string Name, string Description, IReadOnlyList<CompletedValue> Options, IReadOnlyList<CompletedValue> Arguments)
{
    private static readonly CompletedValue Help = new("--help", "Show help", Wanted.Nothing, []);

    /// <summary>The commands of a tree, in its order.</summary>
    public static IReadOnlyList<CompletedCommand> AllOf(RootCommand root) =>
    [
        .. root.Subcommands.Select(c => new CompletedCommand(
            c.Name, CompletedValue.FirstSentence(c.Description ?? ""), [.. c.Options.Select(CompletedValue.Of), Help], [.. c.Arguments.Select(CompletedValue.Of)])),
    ];
}
