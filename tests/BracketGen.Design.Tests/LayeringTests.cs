using System.Xml.Linq;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests;

/// <summary>Dependencies point one way: what a project may know is written here once, and nothing else passes.</summary>
public class LayeringTests
{
    private static readonly Dictionary<string, string[]> MayUse = new()
    {
        ["Geometry"] = [],
        ["Mechanism"] = ["Geometry"],
        ["SheetMetal"] = ["Geometry"],
        ["Strength"] = ["Geometry"],
        ["Design"] = ["Geometry", "Mechanism", "SheetMetal", "Strength"],
        ["Profiles"] = ["Geometry", "Mechanism", "SheetMetal", "Design"],
        ["Drawing"] = ["Geometry", "Mechanism", "SheetMetal", "Strength", "Design"],
        ["Line"] = ["Geometry", "Mechanism", "SheetMetal", "Strength", "Design", "Profiles", "Drawing"],
        ["Web"] = ["Geometry", "Mechanism", "SheetMetal", "Strength", "Design", "Profiles", "Drawing"],
        ["Cli"] = ["Geometry", "Mechanism", "SheetMetal", "Strength", "Design", "Profiles", "Drawing", "Line", "Web"],
    };

    [Fact]
    public void Every_project_uses_only_what_lies_below_it()
    {
        var projects = Directory.GetFiles(RepositoryRoot.PathOf("src"), "*.csproj", SearchOption.AllDirectories);
        Assert.True(projects.Length >= 7);
        foreach (var path in projects)
        {
            var name = Short(path);
            Assert.True(MayUse.ContainsKey(name), $"{name} is new: say in this test what it may use.");
            var used = XDocument.Load(path).Descendants("ProjectReference").Select(r => Short(r.Attribute("Include")!.Value));
            Assert.Empty(used.Except(MayUse[name]));
        }
    }

    // The map itself has no circle: each project stands after all that it may use.
    [Fact]
    public void The_order_has_no_circle()
    {
        var done = new HashSet<string>();
        foreach (var (name, below) in MayUse)
        {
            Assert.Subset(done, below.ToHashSet());
            done.Add(name);
        }
    }

    // Files, terminal and clock belong to the edges.
    [Theory]
    [InlineData("Geometry")]
    [InlineData("Mechanism")]
    [InlineData("SheetMetal")]
    [InlineData("Design")]
    [InlineData("Drawing")]
    public void Inner_projects_do_no_input_or_output(string project)
    {
        string[] forbidden = ["System.IO.File", "File.Read", "File.Write", "Console.", "DateTime.Now", "DateTime.UtcNow", "new Random("];
        foreach (var file in Directory.GetFiles(RepositoryRoot.PathOf("src", $"BracketGen.{project}"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)))
        {
            var text = File.ReadAllText(file);
            Assert.DoesNotContain(forbidden, word => text.Contains(word, StringComparison.Ordinal));
        }
    }

    private static string Short(string path) =>
        Path.GetFileNameWithoutExtension(path.Replace('\\', '/').Split('/')[^1])["BracketGen.".Length..];
}
