using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Profiles;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.ShopDrawing;

/// <summary>The example jobs of the repository, solved once.</summary>
internal static class ExampleSolutions
{
    private static readonly Lazy<IReadOnlyList<(string Name, Solution Solution)>> Solved = new(() =>
    [
        .. Directory.GetFiles(RepositoryRoot.PathOf("profiles", "jobs"), "*.toml").Order(StringComparer.Ordinal).Select(path =>
        {
            var job = ProfileReader.ReadJob(path, new DiskFileSource());
            Assert.True(job.IsRead, string.Join("\n", job.Errors));
            return (Path.GetFileNameWithoutExtension(path), Designer.Solve(job.Value!, SearchEffort.Whole));
        }),
    ]);

    public static IReadOnlyList<(string Name, Solution Solution)> All => Solved.Value;

    public static Solution First => All.First(s => s.Solution.Bracket is not null).Solution;
}
