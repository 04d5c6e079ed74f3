using System.Collections.Concurrent;

namespace BracketGen.TestSupport;

/// <summary>A small program in C++ beside the tests, that hands our files to a C++ library and says what it understood.</summary>
public static class CompiledTool
{
    private static readonly ConcurrentDictionary<string, Lazy<OutsideTool>> Made = new();

    /// <summary>
    /// The program of a source file, compiled once a run; a missing compiler or library skips the test, or fails it in CI.
    /// </summary>
    /// <param name="source">Full path of the source.</param>
    /// <param name="library">Name of the library to link.</param>
    /// <param name="header">A header of the library: where it is not found, the library is missing.</param>
    public static OutsideTool Require(string source, string library, string header) =>
        Made.GetOrAdd(source, _ => new(() => Compile(source, library, header), LazyThreadSafetyMode.PublicationOnly)).Value;

    private static OutsideTool Compile(string source, string library, string header)
    {
        var compiler = OutsideTool.Require("g++", "clang++");
        if (compiler.Run(["-E", "-x", "c++", "-include", header, "/dev/null"]).ExitCode != 0)
        {
            OutsideTool.Missing($"This test needs the C++ library {library}, which is not on this machine.");
        }

        var folder = Directory.CreateTempSubdirectory("bracketgen-reader-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        var program = Path.Combine(folder, "reader");
        compiler.RunOrFail(["-std=c++17", "-o", program, source, $"-l{library}"]);
        return OutsideTool.Require(program);
    }
}
