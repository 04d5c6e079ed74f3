using System.Collections.Immutable;
using System.Text;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Paths;
using BracketGen.Profiles.Sections;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles;

/// <summary>A job with every file it names, in one file to hand on: <c>profile = "packed job"</c>.</summary>
/// <remarks>Every file keeps its text to the letter, comments and line ends included.</remarks>
/// <param name="Job">Path of the job among the files.</param>
/// <param name="Files">Path and text of each file; paths have forward slashes and lead out of nothing.</param>
public sealed record PackedJob(string Job, ImmutableArray<(string Path, string Text)> Files)
{
    /// <summary>Maximum number of files in one: the job and what it names are four.</summary>
    public const int MaxFiles = PackedJobSection.MaxFiles;

    /// <summary>The file's text.</summary>
    public string Write()
    {
        var text = new StringBuilder($"profile = \"{ProfileKind.PackedJob.Word}\"\n\n");
        text.Append("# A job with every file it names. bracketgen reads it wherever it reads a job; the page unpacks it.\n");
        text.Append("job = ").Append(TomlLiteral.Quoted(Job)).Append('\n');
        foreach (var (path, content) in Files)
        {
            text.Append("\n[[files]]\npath = ").Append(TomlLiteral.Quoted(path)).Append("\ntext = ").Append(Block(content)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Reads a packed job; keys with old names come out with their present ones.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="files">Where it comes from.</param>
    public static ProfileResult<PackedJob> Read(string path, IFileSource files)
    {
        var reading = new Reading();
        var packed = ProfileReader.Open(path, ProfileKind.PackedJob, files, reading, named: null) is { } table
            && PackedJobSection.Form.TryRead(table, "", reading, ProfileReader.ProfileKey, out var read)
            ? new PackedJob(read.Job, [.. read.Files.Select(f => (f.Path, RenamedKeys.TextNow(f.Text)))])
            : null;
        return new(packed, reading.Errors);
    }

    /// <summary>Whether the file at <paramref name="path"/> is a packed job rather than a plain one.</summary>
    internal static bool IsAt(string path, IFileSource files)
    {
        var file = files.Read(ProfilePath.Tidy(path), TomlFile.MaxBytes);
        return file.State == FileState.Read && file.Bytes.Span.IndexOf(Encoding.UTF8.GetBytes(ProfileKind.PackedJob.Word)) >= 0
            && TomlFile.Read(path, file.Bytes, new()) is { } table
            && table.Find(ProfileReader.ProfileKey)?.Value is TomlText { Text: var kind } && kind == ProfileKind.PackedJob.Word;
    }

    /// <summary>The files in memory, under the packed file's own path so that errors name both: packed.toml/jobs/a.toml:3:5.</summary>
    internal (string Job, IFileSource Files) Under(string path)
    {
        var folder = ProfilePath.Tidy(path);
        return ($"{folder}/{Job}", Files.Aggregate(MemoryFileSource.Empty, (all, file) => all.With($"{folder}/{file.Path}", file.Text)));
    }

    // As it stands where TOML's plain block can hold it: then one can read the file.
    private static string Block(string text) => !text.Contains("'''", StringComparison.Ordinal) && !text.EndsWith('\'') && text.All(c => c is '\n' or '\t' || !char.IsControl(c) && c != '\uFEFF')
        ? $"'''\n{text}'''"
        : TomlLiteral.Quoted(text);
}
