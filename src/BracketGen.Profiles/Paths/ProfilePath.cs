namespace BracketGen.Profiles.Paths;

/// <summary>Paths between profile files: forward slashes on every system.</summary>
public static class ProfilePath
{
    /// <summary>The path that <paramref name="relative"/> means in the file at <paramref name="from"/>.</summary>
    public static string Beside(string from, string relative)
    {
        var slashed = Slashed(from);
        return Tidy(slashed[..(slashed.LastIndexOf('/') + 1)] + relative);
    }

    /// <summary>The path without "." and without "name/..".</summary>
    public static string Tidy(string path)
    {
        var slashed = Slashed(path);
        var kept = new List<string>();
        foreach (var part in slashed.Split('/'))
        {
            if (part is "" or ".")
            {
                continue;
            }

            if (part == ".." && kept.Count > 0 && kept[^1] != "..")
            {
                kept.RemoveAt(kept.Count - 1);
            }
            else
            {
                kept.Add(part);
            }
        }

        return (slashed.StartsWith('/') ? "/" : "") + string.Join('/', kept);
    }

    /// <summary>Whether the path starts at a root or a drive, and so means something on one machine only.</summary>
    public static bool IsAbsolute(string path) =>
        path.StartsWith('/') || path.StartsWith('\\') || (path.Length > 1 && char.IsAsciiLetter(path[0]) && path[1] == ':');

    // A backslash is a plain character in a file name except where the system says that it separates folders.
    private static string Slashed(string path) =>
        Path.DirectorySeparatorChar == '\\' ? path.Replace('\\', '/') : path;
}
