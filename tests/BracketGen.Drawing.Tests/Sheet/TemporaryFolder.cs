namespace BracketGen.Drawing.Tests.Sheet;

/// <summary>A folder of its own that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly string _path = Directory.CreateTempSubdirectory("sheet").FullName;

    /// <summary>Full path of a file in it.</summary>
    public string this[string name] => Path.Combine(_path, name);

    public void Dispose() => Directory.Delete(_path, true);
}
