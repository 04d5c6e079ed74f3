using BracketGen.Design.Inputs;
using BracketGen.Profiles;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests;

/// <summary>The jobs that ship with the program.</summary>
internal static class Examples
{
    public static IReadOnlyList<string> All { get; } = [.. Directory
        .GetFiles(RepositoryRoot.PathOf("profiles", "jobs"), "*.toml").Select(f => Path.GetFileNameWithoutExtension(f)).Order()];

    public static TheoryData<string> Names => [.. All];

    /// <summary>Those whose bracket lies on one face, as a bracket's file describes it.</summary>
    public static TheoryData<string> OnOneFace => [.. All.Where(n => Read(n).Body.Mount.Second is null)];

    public static Job Read(string name)
    {
        var result = ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", name + ".toml"), new DiskFileSource());
        Assert.True(result.IsRead, string.Join('\n', result.Errors));
        return result.Value!;
    }
}
