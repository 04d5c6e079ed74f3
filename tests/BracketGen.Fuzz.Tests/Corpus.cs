using BracketGen.Design.Inputs;
using BracketGen.Line.Numbering;
using BracketGen.Profiles;
using BracketGen.Profiles.Interview;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;

namespace BracketGen.Fuzz.Tests;

/// <summary>Where mutations start from: every profile that ships with the program or lies with the tests, and the corpus beside this file.</summary>
public static class Corpus
{
    private static readonly string Root = RepositoryRoot.PathOf("tests", "BracketGen.Fuzz.Tests", "Corpus");

    /// <summary>The whole seeds, unhurt.</summary>
    public static IReadOnlyList<FuzzCase> Seeds { get; } =
    [
        .. Profiles(RepositoryRoot.PathOf("profiles")),
        .. In(RepositoryRoot.PathOf("profiles")).Where(f => f.EndsWith(".dxf", StringComparison.Ordinal)).Select(f => new FuzzCase(Path.GetFileName(f), InputKind.Drawing, "brackets/" + Path.GetFileName(f), File.ReadAllBytes(f))),
        .. Profiles(Path.Combine(Root, "seeds")),
        .. In(Path.Combine(Root, "seeds")).Where(f => !f.EndsWith(".toml", StringComparison.Ordinal)).Select(Other),
    ];

    /// <summary>What once broke the program, cut down to what it took.</summary>
    public static IReadOnlyList<FuzzCase> Found { get; } =
    [
        .. Profiles(Path.Combine(Root, "found")),
        .. In(Path.Combine(Root, "found")).Where(f => !f.EndsWith(".toml", StringComparison.Ordinal)).Select(Other),
    ];

    /// <summary>The tree of profiles into which a mutated one is put.</summary>
    public static MemoryFileSource Tree { get; } = Seeds.Where(s => s.Kind <= InputKind.Drawing)
        .Aggregate(MemoryFileSource.Empty, (files, seed) => files.With(seed.Path, seed.Bytes));

    /// <summary>Jobs that read a profile, by its path; a job reads itself.</summary>
    public static IReadOnlyList<string> JobsOf(string path) => Jobs.TryGetValue(path, out var jobs) ? jobs : ["jobs/plover-alder-58.toml"];

    private static readonly Dictionary<string, string[]> Jobs = Seeds.Where(s => s.Kind <= InputKind.Shop).ToDictionary(
        s => s.Path,
        s => Seeds.Where(j => j.Kind == InputKind.Job && (j.Path == s.Path || System.Text.Encoding.UTF8.GetString(j.Bytes).Contains($"../{s.Path}\"", StringComparison.Ordinal)))
            .Select(j => j.Path).DefaultIfEmpty("jobs/plover-alder-58.toml").ToArray());

    private static IEnumerable<FuzzCase> Profiles(string folder) => In(folder).Where(f => f.EndsWith(".toml", StringComparison.Ordinal)).Select(f =>
    {
        // «vehicles/plover~long-number.toml» takes the place of «vehicles/plover.toml».
        var name = Path.GetRelativePath(folder, f).Replace('\\', '/');
        var path = name.Contains('~') ? name[..name.IndexOf('~')] + ".toml" : name;
        return new FuzzCase(name, KindOf(path), path, File.ReadAllBytes(f));
    });

    private static FuzzCase Other(string file)
    {
        var name = Path.GetFileName(file);
        var kind = name.Split('.')[^1] switch
        {
            "jsonl" => InputKind.Register,
            "json" => InputKind.Kept,
            "csv" => InputKind.Order,
            "ordered" => InputKind.LineOrderCsv,
            "line" => InputKind.KeptLine,
            "readings" => InputKind.Readings,
            "draft" => InputKind.Draft,
            _ => InputKind.Answers,
        };
        return new(name, kind, name, File.ReadAllBytes(file));
    }

    private static InputKind KindOf(string path) => path.Split('/')[0] switch
    {
        "throttle-bodies" => InputKind.ThrottleBody,
        "vehicles" => InputKind.Vehicle,
        "shops" => InputKind.Shop,
        "families" => InputKind.Family,
        "brackets" => InputKind.Bracket,
        "parts" => InputKind.Parts,
        "orders" => InputKind.LineOrder,
        _ => InputKind.Job,
    };

    private static IEnumerable<string> In(string folder) =>
        Directory.Exists(folder) ? Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal) : [];
}
