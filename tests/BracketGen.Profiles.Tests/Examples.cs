using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Tests;

/// <summary>The profiles that are shipped.</summary>
internal static class Examples
{
    private static readonly string Root = Path.Combine(AppContext.BaseDirectory, "profiles");

    /// <summary>Every shipped TOML file by its path from <c>profiles/</c>.</summary>
    public static IReadOnlyDictionary<string, string> Texts { get; } = In(Root);

    public static MemoryFileSource Files { get; } = Texts.Aggregate(MemoryFileSource.Empty, (f, t) => f.With(t.Key, t.Value));

    public static IEnumerable<string> Of(string folder) => Texts.Keys.Where(k => k.StartsWith(folder + "/", StringComparison.Ordinal));

    public static string Schema(string file) => File.ReadAllText(Path.Combine(Root, "schemas", file)).Replace("\r\n", "\n");

    public static Dictionary<string, string> In(string root) => Directory
        .GetFiles(root, "*.toml", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal)
        .ToDictionary(f => Path.GetRelativePath(root, f).Replace('\\', '/'), f => File.ReadAllText(f).Replace("\r\n", "\n"));
}
