using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Tests;

/// <summary>The profiles that are shipped.</summary>
internal static class Examples
{
    private static readonly string Root = Path.Combine(AppContext.BaseDirectory, "profiles");

    /// <summary>Every shipped TOML file by its path from <c>profiles/</c>.</summary>
    public static IReadOnlyDictionary<string, string> Texts { get; } = In(Root);

    /// <summary>The same, with the drawings that they name.</summary>
    public static MemoryFileSource Files { get; } = Directory.GetFiles(Root, "*.dxf", SearchOption.AllDirectories).Aggregate(
        Texts.Aggregate(MemoryFileSource.Empty, (f, t) => f.With(t.Key, t.Value)), (f, d) => f.With(Path.GetRelativePath(Root, d).Replace('\\', '/'), File.ReadAllBytes(d)));

    public static IEnumerable<string> Of(string folder) => Texts.Keys.Where(k => k.StartsWith(folder + "/", StringComparison.Ordinal));

    public static string Schema(string file) => File.ReadAllText(Path.Combine(Root, "schemas", file)).Replace("\r\n", "\n");

    public static Dictionary<string, string> In(string root) => Directory
        .GetFiles(root, "*.toml", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal)
        .ToDictionary(f => Path.GetRelativePath(root, f).Replace('\\', '/'), f => File.ReadAllText(f).Replace("\r\n", "\n"));
}
