using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Paths;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles.Sections;

/// <summary>The files of a packed job.</summary>
/// <param name="Job">Path of the job among them.</param>
/// <param name="Files">Path and text of each.</param>
internal sealed record PackedFiles(string Job, ImmutableArray<(string Path, string Text)> Files);

/// <summary>A packed job's file.</summary>
internal static class PackedJobSection
{
    /// <summary>Maximum number of files in one: the job and what it names are four.</summary>
    public const int MaxFiles = 16;

    private static readonly Key<string> Job = new("job", new PackedPathForm(), "Path of the job among the files.");

    private static readonly Key<string> Path = new("path", new PackedPathForm(), "Path of the file from the folder where it is unpacked.");

    private static readonly Key<string> Text = new("text", new WholeTextForm(), "The whole file.");

    private static readonly Section<(string Path, string Text)> File = new([Path, Text], v => (v.Get(Path), v.Get(Text)));

    private static readonly Key<ImmutableArray<(string Path, string Text)>> Files = new(
        "files", new ListForm<(string Path, string Text)>(File, 1, MaxFiles), "The job's file and those it names.");

    public static Section<PackedFiles> Form { get; } = new(
        [Job, Files], v => new(v.Get(Job), v.Get(Files)), [new([Job, Files], CheckPaths)]);

    private static void CheckPaths(SectionValues values)
    {
        var files = values.Get(Files);
        for (var i = 1; i < files.Length; i++)
        {
            if (files[..i].Any(f => f.Path == files[i].Path))
            {
                values.ReportItem(Files, i, "path", new GivenTwice(Repeated.PackedPath));
            }
        }

        if (files.All(f => f.Path != values.Get(Job)))
        {
            values.Report(Job, new Contradiction(Contradictory.JobNotPacked));
        }
    }
}

/// <summary>A path that leads into the folder where a packed job is unpacked, and out of nothing.</summary>
internal sealed class PackedPathForm : Form<string>
{
    public override AllowedValue Allowed => new AllowedPattern(TextPattern.PackedPath);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out string result)
    {
        result = (value as TomlText)?.Text;
        var isGood = result is { Length: > 0 and <= 500 } && !result.Contains('\\') && !result.Any(char.IsControl) && !ProfilePath.IsAbsolute(result)
            && result.Split('/').All(part => part is not ("" or "." or ".."));
        if (!isGood)
        {
            Report(value, key, reading, ValueMistake.NotThePattern);
        }

        return isGood;
    }

    public override JsonObject Schema(SharedSchemas shared) => new() { ["type"] = "string", ["minLength"] = 1, ["maxLength"] = 500 };
}

/// <summary>Text of any number of lines.</summary>
internal sealed class WholeTextForm : Form<string>
{
    public override AllowedValue Allowed => new AllowedPattern(TextPattern.WholeText);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out string result)
    {
        result = (value as TomlText)?.Text;
        if (result is null)
        {
            Report(value, key, reading, ValueMistake.NotText);
        }

        return result is not null;
    }

    public override JsonObject Schema(SharedSchemas shared) => new() { ["type"] = "string" };
}
