using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Design.Inputs;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles.Sections;

/// <summary>A packed job's file.</summary>
internal static class PackedJobSection
{
    private static readonly Key<string> Job = new("job", new PackedPathForm(), "Path of the job among the files.");

    private static readonly Key<string> Path = new("path", new PackedPathForm(), "Path of the file, from where it is unpacked.");

    private static readonly Key<string> Text = new("text", new WholeTextForm(), "The whole file.");

    private static readonly Section<(string Path, string Text)> File = new("a packed file", [Path, Text], v => (v.Get(Path), v.Get(Text)));

    private static readonly Key<ImmutableArray<(string Path, string Text)>> Files = new(
        "files", new ListForm<(string Path, string Text)>(File, 1, PackedJob.MostFiles), "The job's file and those it names.");

    public static Section<PackedJob> Form { get; } = new(
        "a packed job", [Job, Files], v => new(v.Get(Job), v.Get(Files)), [new([Job, Files], CheckPaths)]);

    private static void CheckPaths(SectionValues values)
    {
        var files = values.Get(Files);
        for (var i = 1; i < files.Length; i++)
        {
            if (files[..i].Any(f => f.Path == files[i].Path))
            {
                values.ReportItem(Files, i, "path", "each path once", "Pack the job again.");
            }
        }

        if (files.All(f => f.Path != values.Get(Job)))
        {
            values.Report(Job, "the path of one of the files", "Pack the job again.");
        }
    }
}

/// <summary>A path that leads into the folder where a packed job is unpacked, and out of nothing.</summary>
internal sealed class PackedPathForm : Form<string>
{
    public override string Allowed => "a path with forward slashes and without «..»: \"vehicles/name.toml\"";

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out string result)
    {
        result = (value as TomlText)?.Text;
        var isGood = result is { Length: > 0 and <= 500 } && !result.Contains('\\') && !result.Any(char.IsControl) && !ProfilePath.IsAbsolute(result)
            && result.Split('/').All(part => part is not ("" or "." or ".."));
        if (!isGood)
        {
            reading.Report(value, key, Allowed, "Pack the job again, or correct the path.");
        }

        return isGood;
    }

    public override JsonObject Schema() => new() { ["type"] = "string", ["minLength"] = 1, ["maxLength"] = 500 };
}

/// <summary>Text of any number of lines.</summary>
internal sealed class WholeTextForm : Form<string>
{
    public override string Allowed => "a whole file as text";

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out string result)
    {
        result = (value as TomlText)?.Text;
        if (result is null)
        {
            reading.Report(value, key, Allowed, "Put the text in quotes.");
        }

        return result is not null;
    }

    public override JsonObject Schema() => new() { ["type"] = "string" };
}
