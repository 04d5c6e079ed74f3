namespace BracketGen.TestSupport;

/// <summary>Finds the checkout that the tests were built from, for examples and schemas that lie in it.</summary>
public static class RepositoryRoot
{
    /// <summary>Full path of the folder that holds the solution file.</summary>
    /// <exception cref="DirectoryNotFoundException">The tests run outside a checkout.</exception>
    public static string Folder { get; } = Find();

    /// <summary>Full path of a file or folder given from the root, its parts apart.</summary>
    public static string PathOf(params string[] parts) => Path.Combine([Folder, .. parts]);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "BracketGen.sln")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException($"No BracketGen.sln above {AppContext.BaseDirectory}.");
    }
}
