using System.Text.Json;
using System.Text.RegularExpressions;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Cli.Tests;

/// <summary>The licence of every package in the native program is in the repository, and no lock file says where packages were fetched.</summary>
public partial class LicenceTests
{
    private static readonly string Notices = File.ReadAllText(RepositoryRoot.PathOf("licences", "README.md"));

    [Fact]
    public void Every_package_of_the_native_program_has_its_notice()
    {
        using var locked = JsonDocument.Parse(File.ReadAllText(RepositoryRoot.PathOf("src", "BracketGen.Cli", "packages.linux-x64.lock.json")));
        string[] packages =
        [
            .. locked.RootElement.GetProperty("dependencies").EnumerateObject()
                .SelectMany(framework => framework.Value.EnumerateObject())
                .Where(package => package.Value.GetProperty("type").GetString() != "Project")
                .Select(package => package.Name.Replace("runtime.linux-x64.", "", StringComparison.Ordinal))
                .Distinct(),
        ];
        Assert.True(packages.Length >= 10, string.Join(", ", packages));
        Assert.All(packages, package => Assert.Matches($@"[ ,|]{Regex.Escape(package)}[ ,|]", Notices));
    }

    [Fact]
    public void Every_text_named_is_there_and_every_text_there_is_named()
    {
        var there = Directory.GetFiles(RepositoryRoot.PathOf("licences"), "*.txt");
        Assert.Equal(Text().Matches(Notices).Select(m => m.Groups[1].Value).Distinct().Order(), there.Select(f => Path.GetFileName(f)).Order());
        Assert.All(there, text => Assert.True(new FileInfo(text).Length > 500, text));
    }

    [Fact]
    public void Lock_files_name_no_registry()
    {
        var locks = new[] { "src", "tests" }.SelectMany(folder => Directory.GetDirectories(RepositoryRoot.PathOf(folder)))
            .SelectMany(project => Directory.GetFiles(project, "packages*.lock.json")).ToList();
        Assert.True(locks.Count > 20, $"only {locks.Count} lock files");
        Assert.All(locks, file => Assert.DoesNotContain("://", File.ReadAllText(file), StringComparison.Ordinal));
    }

    [GeneratedRegex(@"\[([a-z-]+\.txt)\]")]
    private static partial Regex Text();
}
