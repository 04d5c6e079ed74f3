using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Strength.Model;
using BracketGen.TestSupport;

namespace BracketGen.Cli.Tests.Architecture;

/// <summary>The rooms stand in one order, and every room holds only what belongs in it: see <see cref="House"/>.</summary>
public partial class ArchitectureTests
{
    private static readonly string[] Projects =
        [.. Directory.GetFiles(RepositoryRoot.PathOf("src"), "*.csproj", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];

    private static readonly Lazy<Use[]> Uses = new(() => [.. Assemblies().SelectMany(UsedTypes.In)]);

    [Fact]
    public void Every_project_uses_only_rooms_before_it()
    {
        Assert.NotEmpty(Projects);
        foreach (var path in Projects)
        {
            var used = XDocument.Load(path).Descendants("ProjectReference")
                .Select(r => Short(Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Split('/', '\\')[^1])));
            var first = Places(Short(Path.GetFileNameWithoutExtension(path))).Min();
            Assert.All(used, u => Assert.True(Places(u).Max() < first, $"{Path.GetFileName(path)} uses {u}, which does not come before it."));
        }
    }

    [Fact]
    public void Every_namespace_has_a_place_in_the_order()
    {
        var without = Uses.Value.SelectMany(u => new[] { u.From, u.To }).Distinct().Where(n => PlaceOf(n) < 0).Order(StringComparer.Ordinal);
        Assert.True(!without.Any(), $"New: add them to {nameof(House)}.{nameof(House.Rooms)}. {string.Join(", ", without)}");
    }

    [Fact]
    public void No_type_uses_a_later_room_or_its_neighbour()
    {
        var wrong = Uses.Value.Where(u => IsAgainstTheOrder(u.From, u.To) && !IsListed(u.From, u.To));
        Assert.True(!wrong.Any(), Lines(wrong));
    }

    [Fact]
    public void No_namespaces_of_one_room_use_each_other_in_a_circle()
    {
        var circle = Circle(Edges().Where(e => !IsListed(e.From, e.To)));
        Assert.True(circle.Count == 0, Lines(Uses.Value.Where(u => circle.Contains((u.From, u.To)))));
    }

    [Fact]
    public void What_is_listed_as_still_wrong_is_still_there()
    {
        var edges = Edges();
        var fair = edges.Where(e => !IsListed(e.From, e.To)).ToArray();
        var gone = House.StillWrong.Select(l => (From: Full(l.From), To: Full(l.To)))
            .Where(l => !edges.Contains(l) || !(IsAgainstTheOrder(l.From, l.To) || Circle(fair.Append(l)).Count > 0));
        Assert.True(!gone.Any(), $"Put right: remove from {nameof(House)}.{nameof(House.StillWrong)}. {string.Join("; ", gone)}");
    }

    [Fact]
    public void Every_namespace_is_the_folder()
    {
        var wrong = new[] { "src", "tests" }.SelectMany(Sources).Select(s => (s.File, Said: Namespace().Match(s.Text).Groups[1].Value, Folder: NamespaceOf(s.File)))
            .Where(s => s.Said.Length > 0 && s.Said != s.Folder).Select(s => $"{s.File}: {s.Said} instead of {s.Folder}");
        Assert.True(!wrong.Any(), string.Join("\n", wrong));
    }

    [Fact]
    public void Inner_rooms_hold_no_sentences()
    {
        var said = House.WithoutSentences.SelectMany(r => Sources($"src/BracketGen.{r}"))
            .SelectMany(s => Literals.Sentences(s.Text).Select(l => (s.File, l.Line, l.Text)));
        AssertAsListed(said, House.StillSaid.ToDictionary(l => l.Folder, l => l.Count), nameof(House.StillSaid), "Sentences belong in Words.");
    }

    // Tables of units and the coefficients of a published formula have names of their own.
    [Fact]
    public void Every_tolerance_has_a_name_and_a_reason()
    {
        string[] tables = ["UnitTable.cs", "NormalQuantile.cs"];
        var bare = Sources("src").Where(s => !tables.Contains(Path.GetFileName(s.File)))
            .SelectMany(s => s.Text.Split('\n').Select((text, i) => (s.File, Line: i + 1, Text: text)))
            .Where(l => Small().IsMatch(l.Text));
        AssertAsListed(bare, House.StillUnnamed.ToDictionary(l => l.Folder, l => l.Count), nameof(House.StillUnnamed), "Give the number a name and a reason.");
    }

    [Fact]
    public void Public_points_say_their_frame()
    {
        Assembly[] rooms = [typeof(FlatPattern).Assembly, typeof(ShellMesh).Assembly, typeof(Bracket).Assembly];
        var found = rooms.SelectMany(BareVectors.In).ToHashSet();
        var listed = House.WithoutFrame.SelectMany(l => l.Members).ToHashSet();
        var added = found.Except(listed).Order(StringComparer.Ordinal);
        Assert.True(
            !added.Any(),
            $"A point is a {nameof(FlatPoint)}, {nameof(FacePoint)} or {nameof(ThrottlePoint)}; a direction is listed in {nameof(House)}.{nameof(House.WithoutFrame)}.\n"
            + string.Join("\n", added));
        var gone = listed.Except(found).Order(StringComparer.Ordinal);
        Assert.True(!gone.Any(), $"Remove from {nameof(House)}.{nameof(House.WithoutFrame)}:\n{string.Join("\n", gone)}");
    }

    // Files, terminal and clock belong to the edges.
    [Theory]
    [InlineData("Units")]
    [InlineData("Geometry")]
    [InlineData("Mechanism")]
    [InlineData("SheetMetal")]
    [InlineData("Strength")]
    [InlineData("Design")]
    [InlineData("Words")]
    [InlineData("Drawing")]
    public void Inner_rooms_do_no_input_or_output(string room)
    {
        string[] forbidden = ["System.IO.File", "File.Read", "File.Write", "Console.", "DateTime.Now", "DateTime.UtcNow", "new Random("];
        foreach (var (_, text) in Sources($"src/BracketGen.{room}"))
        {
            Assert.DoesNotContain(forbidden, word => text.Contains(word, StringComparison.Ordinal));
        }
    }

    // The reader itself: it finds a type that is only a local variable, a type argument, a base class.
    [Theory]
    [InlineData("BracketGen.Strength.Analysis", "BracketGen.Strength.Solving")]
    [InlineData("BracketGen.Design.Study", "BracketGen.Mechanism.Motion")]
    [InlineData("BracketGen.Cli.Commands", "BracketGen.Cli.Terminal")]
    public void The_reader_sees_known_uses(string from, string to) => Assert.Contains((from, to), Edges());

    [Fact]
    public void A_circle_is_found()
    {
        Assert.Empty(Circle([("a", "b"), ("b", "c"), ("a", "c")]));
        Assert.Equal([("b", "c"), ("c", "b")], Circle([("a", "b"), ("b", "c"), ("c", "b"), ("c", "d")]).Order());
    }

    /// <summary>What the reader of bare vectors has to find.</summary>
    public abstract record Bare(Vector2 Point, (FlatPoint Safe, Vector3? Way) Pair, FlatPoint Flat)
    {
        /// <summary>A field of vectors.</summary>
        public static readonly Vector2[] Corners = [];

        /// <summary>A function of one.</summary>
        public abstract FlatPoint Ask(Func<Vector3, double> distance, ThrottlePoint from);

        internal Vector2 Hidden => Point;
    }

    [Fact]
    public void A_bare_vector_is_found()
    {
        const string Owner = "Cli.Tests.Architecture.ArchitectureTests.Bare";
        Assert.Equal(
            [$"{Owner}.Ask(distance)", $"{Owner}.Corners", $"{Owner}.Pair.Way", $"{Owner}.Point"],
            BareVectors.In(typeof(Bare)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_sentence_is_found()
    {
        const string Source = """
            // "A comment of many words is not a literal."
            var unit = "lbf in the bore";
            var name = $"{a + b} mm of wire at the closed stop";
            throw new ArgumentException("The stop lies inside the groove, move it.");
            """;
        Assert.Equal([(3, "\"{a + b} mm of wire at the closed stop\"")], Literals.Sentences(Source));
    }

    /// <summary>As many in each folder as are listed, so that nothing is added and the list shrinks.</summary>
    private static void AssertAsListed(
        IEnumerable<(string File, int Line, string Text)> found, Dictionary<string, int> listed, string list, string advice)
    {
        var folders = found.ToLookup(l => Short(NamespaceOf(l.File)), l => $"{l.File}({l.Line}): {l.Text.Trim()}");
        var wrong = folders.Select(s => s.Key).Union(listed.Keys).Order(StringComparer.Ordinal)
            .Select(f => (Folder: f, Now: folders[f].Count(), Listed: listed.GetValueOrDefault(f)))
            .Where(f => f.Now != f.Listed)
            .Select(f => f.Now > f.Listed
                ? $"{f.Folder}: {f.Now} found, {f.Listed} listed. {advice}\n{string.Join("\n", folders[f.Folder])}"
                : $"{f.Folder}: {f.Now} found, {f.Listed} listed. Write {f.Now} in {nameof(House)}.{list}, or remove the line.");
        Assert.True(!wrong.Any(), string.Join("\n", wrong));
    }

    // A room that is still empty is in no program.
    private static IEnumerable<string> Assemblies() => Projects
        .Where(p => Sources(Path.GetRelativePath(RepositoryRoot.Folder, Path.GetDirectoryName(p)!)).Any())
        .Select(p => XDocument.Load(p).Descendants("AssemblyName").FirstOrDefault()?.Value ?? Path.GetFileNameWithoutExtension(p))
        .Select(n => Path.Combine(AppContext.BaseDirectory, n + ".dll"));

    private static HashSet<(string From, string To)> Edges() => [.. Uses.Value.Select(u => (u.From, u.To))];

    private static bool IsListed(string from, string to) => House.StillWrong.Any(l => Full(l.From) == from && Full(l.To) == to);

    private static bool IsAgainstTheOrder(string from, string to)
    {
        var (own, others) = (RoomOf(from), RoomOf(to));
        return own is not null && others is not null && own != others && PlaceOf(to) >= PlaceOf(from);
    }

    private static string? RoomOf(string name) => House.Rooms.SelectMany(r => r)
        .Where(r => Short(name) == r || Short(name).StartsWith(r + ".", StringComparison.Ordinal)).MaxBy(r => r.Length);

    private static int PlaceOf(string name) => RoomOf(name) is { } room ? Array.FindIndex(House.Rooms, r => r.Contains(room)) : -1;

    /// <summary>Places of all rooms of a project.</summary>
    private static int[] Places(string project)
    {
        var places = Enumerable.Range(0, House.Rooms.Length)
            .Where(i => House.Rooms[i].Any(r => r == project || r.StartsWith(project + ".", StringComparison.Ordinal))).ToArray();
        Assert.True(places.Length > 0, $"{project} is new: add it to {nameof(House)}.{nameof(House.Rooms)}.");
        return places;
    }

    /// <summary>The edges that lie on a circle: their end leads back to their start.</summary>
    private static HashSet<(string From, string To)> Circle(IEnumerable<(string From, string To)> edges)
    {
        var all = edges.ToHashSet();
        var next = all.ToLookup(e => e.From, e => e.To);
        HashSet<string> ReachedFrom(string start)
        {
            var (reached, waiting) = (new HashSet<string>(), new Stack<string>([start]));
            while (waiting.TryPop(out var at))
            {
                foreach (var n in next[at].Where(reached.Add))
                {
                    waiting.Push(n);
                }
            }

            return reached;
        }

        var from = next.ToDictionary(n => n.Key, n => ReachedFrom(n.Key));
        return [.. all.Where(e => from.TryGetValue(e.To, out var back) && back.Contains(e.From))];
    }

    private static IEnumerable<(string File, string Text)> Sources(string folder) => Directory
        .EnumerateFiles(RepositoryRoot.PathOf(folder), "*.cs", SearchOption.AllDirectories)
        .Select(f => Path.GetRelativePath(RepositoryRoot.Folder, f).Replace('\\', '/'))
        .Where(f => !f.Split('/').Any(p => p is "obj" or "bin"))
        .Order(StringComparer.Ordinal)
        .Select(f => (f, File.ReadAllText(RepositoryRoot.PathOf(f))));

    // The folder of the project is a whole name, those below it one word each.
    private static string NamespaceOf(string file) => string.Join('.', file.Split('/')[1..^1]);

    private static string Full(string name) => $"BracketGen.{name}";

    private static string Short(string name) => name["BracketGen.".Length..];

    private static string Lines(IEnumerable<Use> uses) => string.Join("\n", uses
        .GroupBy(u => (u.From, u.To)).OrderBy(g => g.Key)
        .Select(g => $"{g.Key.From} uses {g.Key.To}: {string.Join(", ", g.Select(u => $"{u.Type} -> {u.Used}").Order(StringComparer.Ordinal).Take(6))}"));

    // In a formula, not where a constant gets its name.
    [GeneratedRegex(@"^(?!\s*//)(?!.*\b(const|static readonly)\b)[^""]*?\b\d+(\.\d+)?[eE]-\d")]
    private static partial Regex Small();

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Namespace();
}
