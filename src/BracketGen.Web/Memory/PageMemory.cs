using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using BracketGen.Storage;

namespace BracketGen.Web.Memory;

/// <summary>What the page remembers from one run to the next, in a small file of the user's: a browser would keep it for one port only.</summary>
/// <remarks>Two programs may use one file: each reads it anew and writes it whole, and the last one wins.</remarks>
public sealed class PageMemory
{
    private const int MaxBytes = 1 << 16;

    private readonly string? _path;

    /// <summary>The memory in the file at <paramref name="path"/>.</summary>
    /// <param name="path">Path of the file, there or not; null to remember nothing.</param>
    public PageMemory(string? path) => _path = path;

    /// <summary>The file <c>bracketgen/page.json</c> in the user's configuration folder; null if the user has none.</summary>
    public static string? UserFile =>
        Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify) is { Length: > 0 } folder
            ? Path.Combine(folder, "bracketgen", "page.json")
            : null;

    /// <summary>What is remembered; the defaults if there is no file, or one that cannot be read.</summary>
    public Remembered Read()
    {
        try
        {
            return _path is not null && new FileInfo(_path) is { Exists: true, Length: <= MaxBytes }
                && JsonSerializer.Deserialize(File.ReadAllBytes(_path), RememberedContext.Default.Remembered) is { IsAllowed: true } read
                ? read
                : new();
        }
        catch (Exception problem) when (problem is JsonException or IOException or UnauthorizedAccessException)
        {
            return new();
        }
    }

    /// <summary>Remembers; the file is written whole or stays as it was.</summary>
    /// <exception cref="IOException">The file cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The file cannot be written for want of rights.</exception>
    public void Save(Remembered what)
    {
        if (_path is not null)
        {
            WholeFiles.WriteOne(_path, JsonSerializer.SerializeToUtf8Bytes(what, RememberedContext.Default.Remembered));
        }
    }
}

/// <summary>What is remembered: nothing of a job, nothing secret.</summary>
public sealed record Remembered
{
    /// <summary>The colours that can be chosen: those of the system, light, dark.</summary>
    public static ImmutableArray<string> Looks { get; } = ["system", "light", "dark"];

    /// <summary>The colours chosen.</summary>
    public string Look { get; set; } = Looks[0];

    /// <summary>Whether every value is one that can be chosen.</summary>
    [JsonIgnore]
    public bool IsAllowed => Looks.Contains(Look);
}

/// <summary>Serialization without reflection.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, RespectNullableAnnotations = true, WriteIndented = true)]
[JsonSerializable(typeof(Remembered))]
internal sealed partial class RememberedContext : JsonSerializerContext;
