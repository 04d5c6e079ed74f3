using System.Text.RegularExpressions;
using BracketGen.TestSupport;

namespace BracketGen.Web.Tests;

/// <summary>Every line of the threats in docs/phone.md names tests, and they are there.</summary>
public partial class ThreatTests
{
    [Fact]
    public void Every_threat_has_its_test()
    {
        var lines = File.ReadAllLines(RepositoryRoot.PathOf("docs", "phone.md"));
        var threats = lines.SkipWhile(l => !l.StartsWith("| threat |", StringComparison.Ordinal)).Skip(2).TakeWhile(l => l.StartsWith('|')).ToList();
        Assert.True(threats.Count >= 15, $"only {threats.Count} threats");
        var sources = new[] { "BracketGen.Web.Tests", "BracketGen.Cli.Tests" }.SelectMany(p => Directory.GetFiles(RepositoryRoot.PathOf("tests", p), "*.cs"));
        var tests = sources.SelectMany(file => Method().Matches(File.ReadAllText(file))).Select(m => m.Groups[1].Value).ToHashSet();
        foreach (var threat in threats)
        {
            var named = Named().Matches(threat.Split('|')[3]).Select(m => m.Groups[1].Value).ToList();
            Assert.NotEmpty(named);
            Assert.All(named, name => Assert.Contains(name, tests));
        }
    }

    [GeneratedRegex(@"\[(?:Skippable)?(?:Fact|Theory)\][^{]*?public (?:async Task|void) (\w+)\(")]
    private static partial Regex Method();

    [GeneratedRegex(@"`(\w+)`")]
    private static partial Regex Named();
}
