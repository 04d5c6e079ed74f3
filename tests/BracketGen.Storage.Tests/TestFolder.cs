namespace BracketGen.Storage.Tests;

/// <summary>A folder of its own; gone after the test.</summary>
internal sealed class TestFolder : IDisposable
{
    public string Root { get; } = Directory.CreateTempSubdirectory("bracketgen-storage-").FullName;

    public string PathOf(string name) => Path.Combine(Root, name);

    public void Fill(params string[] names)
    {
        foreach (var name in names)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(PathOf(name))!);
            File.WriteAllText(PathOf(name), "old " + name);
        }
    }

    /// <summary>Every file but the lock's, hidden ones too, with its text.</summary>
    public SortedDictionary<string, string> Texts() => new(
        Directory.EnumerateFiles(Root, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 })
            .Where(f => Path.GetFileName(f) != FolderLock.FileName)
            .ToDictionary(f => Path.GetRelativePath(Root, f).Replace('\\', '/'), File.ReadAllText),
        StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
