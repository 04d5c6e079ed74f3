using BracketGen.Design.Inputs;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles.Tests;

/// <summary>Profiles kept with the tests, whose numbers do not change, and copies of them with one thing changed.</summary>
internal static class Samples
{
    public const string Job = "jobs/plover-alder-58.toml";
    public const string Body = "throttle-bodies/alder-58.toml";
    public const string Vehicle = "vehicles/plover.toml";
    public const string Shop = "shops/saltmarsh-fabrication.toml";

    public static readonly string Root = Path.Combine(AppContext.BaseDirectory, "Samples");

    /// <summary>Every file by its path from the samples' folder.</summary>
    public static IReadOnlyDictionary<string, string> Texts { get; } = Examples.In(Root);

    public static MemoryFileSource Files { get; } = Texts.Aggregate(MemoryFileSource.Empty, (f, t) => f.With(t.Key, t.Value));

    /// <summary>The main job with one stretch of one file replaced; the stretch must be there once.</summary>
    public static ProfileResult<Job> ReadWith(string file, string old, string changed) => ReadJob(Edit(Files, file, Texts[file], old, changed));

    public static MemoryFileSource Edit(MemoryFileSource files, string file, string text, string old, string changed)
    {
        Assert.Equal(2, text.Split(old).Length);
        return files.With(file, text.Replace(old, changed));
    }

    public static ProfileResult<Job> ReadJob(IFileSource files) => ProfileReader.ReadJob(Job, files);

    /// <summary>Line (from 1) on which a stretch of a file begins.</summary>
    public static int LineOf(string file, string stretch)
    {
        var at = Texts[file].IndexOf(stretch, StringComparison.Ordinal);
        Assert.True(at >= 0, stretch);
        return Texts[file][..at].Count(c => c == '\n') + 1;
    }
}
