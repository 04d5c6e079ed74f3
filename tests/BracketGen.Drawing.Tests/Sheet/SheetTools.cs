using System.Diagnostics;

namespace BracketGen.Drawing.Tests.Sheet;

/// <summary>The PDF tools the sheet tests ask for a second opinion; skipped where missing, but failing where CI is <c>true</c>.</summary>
internal static class SheetTools
{
    /// <summary>Runs a tool and returns its exit code and all it said.</summary>
    public static (int ExitCode, string Output) Run(string tool, params string[] arguments)
    {
        try
        {
            var start = new ProcessStartInfo(tool, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (process.ExitCode, output + errors.Result);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            var message = $"This test needs {tool}, which is not on this machine.";
            Assert.False(Environment.GetEnvironmentVariable("CI") == "true", message);
            Skip.If(true, message);
            throw;
        }
    }

    /// <summary>A folder of its own that is gone after the test.</summary>
    public sealed class Folder : IDisposable
    {
        private readonly string _path = Directory.CreateTempSubdirectory("sheet").FullName;

        public string this[string name] => Path.Combine(_path, name);

        public void Dispose() => Directory.Delete(_path, true);
    }
}
