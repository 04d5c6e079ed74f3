using BracketGen.Line.Combinations;
using BracketGen.Storage;

namespace BracketGen.Line.Solving;

/// <summary>Where the files of combinations lie, one folder each.</summary>
/// <remarks>
/// What is kept of a combination is written last and removed first: where it is, the files beside it are whole, and their hashes say
/// that they are the ones. A run that is stopped, however hard, leaves nothing that the next one would mistake.
/// </remarks>
/// <param name="root">The folder that they lie in.</param>
/// <param name="held">Lock of that folder or one above it.</param>
public sealed class CombinationFolder(string root, FolderLock held)
{
    private const string KeptFile = "made.json";

    /// <summary>The folder of a combination.</summary>
    public string Of(string key) => Path.Combine(root, key);

    /// <summary>What was made of a combination, with all its files as they were written; null where there is no such thing.</summary>
    public Made? Find(string key) => Kept(root, key);

    /// <summary>The same, of a folder that nobody has locked: what is read is whole.</summary>
    /// <param name="root">The folder that they lie in.</param>
    /// <param name="key">Key of the combination.</param>
    public static Made? Kept(string root, string key)
    {
        var folder = Path.Combine(root, key);
        try
        {
            return Made.Read(File.ReadAllBytes(Path.Combine(folder, KeptFile))) is { } made && made.Files.All(f => IsThere(folder, f)) ? made : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Writes a combination's files; of an earlier run none is left, unless these cannot be written: then all of it is.</summary>
    /// <exception cref="IOException">A file cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">Likewise, for want of rights.</exception>
    public void Write(SolvedCombination solved)
    {
        var folder = Of(solved.Made.Combination);
        Directory.CreateDirectory(folder);

        // A broken one is tried again by every run: nothing is kept of it.
        (string Name, byte[] Bytes)[] files = [.. solved.Files, .. solved.Made.Outcome == Outcome.Broken ? [] : new[] { (KeptFile, solved.Made.ToBytes()) }];
        var others = Directory.GetFiles(folder).Select(f => Path.GetFileName(f)).Except(files.Select(f => f.Name));
        WholeFiles.Write(held, folder, files, [KeptFile, .. others], throughToDisk: false);
    }

    /// <summary>Forgets what was made of a combination, so that it is made anew; its files stay until then.</summary>
    /// <exception cref="IOException">It cannot be forgotten.</exception>
    /// <exception cref="UnauthorizedAccessException">Likewise, for want of rights.</exception>
    public void Forget(string key)
    {
        if (Directory.Exists(Of(key)))
        {
            File.Delete(Path.Combine(Of(key), KeptFile));
        }
    }

    /// <summary>Names of the folders that belong to none of <paramref name="keys"/>.</summary>
    public IReadOnlyList<string> Others(IEnumerable<string> keys)
    {
        var known = keys.ToHashSet(StringComparer.Ordinal);
        return Directory.Exists(root)
            ? [.. Directory.GetDirectories(root).Select(d => Path.GetFileName(d)).Where(n => !known.Contains(n)).Order(StringComparer.Ordinal)]
            : [];
    }

    private static bool IsThere(string folder, MadeFile file)
    {
        var path = Path.Combine(folder, file.Name);
        return File.Exists(path) && InputHash.OfBytes(File.ReadAllBytes(path)) == file.Hash;
    }
}
