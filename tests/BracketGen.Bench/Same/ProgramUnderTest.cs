using System.Diagnostics;
using System.Globalization;
using BracketGen.Cli;
using BracketGen.Drawing.Report.Charts;

namespace BracketGen.Bench.Same;

/// <summary>A built or published BracketGen: a native program, or the assembly that <c>dotnet</c> runs.</summary>
internal sealed class ProgramUnderTest(string path)
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(15);

    /// <summary>Full path of the program.</summary>
    public string Path { get; } = File.Exists(path) ? System.IO.Path.GetFullPath(path) : throw new FileNotFoundException($"There is no program {path}.");

    /// <summary>Path, size and time of everything beside the program: the same for the same build.</summary>
    public string Identity { get; } = string.Join(
        '\n',
        new DirectoryInfo(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(path))!).GetFiles()
            .OrderBy(f => f.FullName, StringComparer.Ordinal)
            .Select(f => string.Create(CultureInfo.InvariantCulture, $"{f.FullName} {f.Length} {f.LastWriteTimeUtc.Ticks}")));

    /// <summary>Runs it to its end.</summary>
    /// <returns>Exit code and what it wrote to standard error.</returns>
    /// <exception cref="TimeoutException">It did not end in time.</exception>
    public (int ExitCode, string Errors) Run(params string[] arguments)
    {
        var isAssembly = Path.EndsWith(".dll", StringComparison.OrdinalIgnoreCase);
        var start = new ProcessStartInfo(isAssembly ? "dotnet" : Path, isAssembly ? [Path, .. arguments] : arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"{Path} {string.Join(' ', arguments)} did not end in {Patience.TotalMinutes:0} minutes.");
        }

        Task.WaitAll(output, errors);
        return (process.ExitCode, errors.Result);
    }
}
