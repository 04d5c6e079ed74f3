using System.Diagnostics;
using System.Globalization;
using BracketGen.Cli;
using BracketGen.TestSupport;

namespace BracketGen.Bench;

/// <summary>The main job as a user meets it: from the start of the command to all files on the disk and the process gone.</summary>
internal static class MainJob
{
    private const int Runs = 30, WarmUps = 3;

    /// <summary>Times the native program on every job that ships with it, and an empty process beside it.</summary>
    /// <param name="output">Where the table goes.</param>
    /// <param name="program">Full path of a published program; null to publish it first.</param>
    public static int Run(TextWriter output, string? program)
    {
        var folder = Directory.CreateTempSubdirectory("bracketgen-bench-").FullName;
        try
        {
            program ??= Publish(Path.Combine(folder, "program"));
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{Runs} runs each after {WarmUps} not counted; {Environment.ProcessorCount} processors; load average {Load()} before"));
            output.WriteLine();
            output.WriteLine("| command | median | worst | least |");
            output.WriteLine("|---|---|---|---|");
            Row(output, "empty process", _ => ("true", []));
            Row(output, "`--version`", _ => (program, ["--version"]));
            foreach (var job in Directory.GetFiles(RepositoryRoot.PathOf("profiles", "jobs"), "*.toml").Order(StringComparer.Ordinal))
            {
                var name = Path.GetFileNameWithoutExtension(job);
                Row(output, $"`travel` {name}", _ => (program, ["travel", job]));
                Row(output, $"`make --skip-strength` {name}", i => (program, ["make", job, "--skip-strength", "--into", Path.Combine(folder, $"{name}-quick-{i}")]));
                Row(output, $"`make` {name}", i => (program, ["make", job, "--into", Path.Combine(folder, $"{name}-{i}")]));
            }

            output.WriteLine();
            output.WriteLine($"load average {Load()} after");
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Publish(string into)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            ArgumentList =
            {
                "publish", RepositoryRoot.PathOf("src", "BracketGen.Cli"), "-c", "Release", "--use-current-runtime", "-o", into, "--nologo", "-v", "quiet",
            },
        };
        using var process = Process.Start(start)!;
        process.WaitForExit();
        return process.ExitCode == 0
            ? Path.Combine(into, OperatingSystem.IsWindows() ? "bracketgen.exe" : "bracketgen")
            : throw new InvalidOperationException("The program could not be published.");
    }

    private static void Row(TextWriter output, string name, Func<int, (string Program, string[] Arguments)> command)
    {
        var times = Enumerable.Range(0, WarmUps + Runs).Select(i => Time(command(i))).Skip(WarmUps).Order().ToArray();
        var median = (times[(Runs - 1) / 2] + times[Runs / 2]) / 2;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {median:0.0} ms | {times[^1]:0.0} ms | {times[0]:0.0} ms |"));
    }

    private static double Time((string Program, string[] Arguments) command)
    {
        var start = new ProcessStartInfo(command.Program, command.Arguments) { RedirectStandardOutput = true };
        var began = Stopwatch.GetTimestamp();
        using var process = Process.Start(start)!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var took = Stopwatch.GetElapsedTime(began).TotalMilliseconds;
        return process.ExitCode is 0 or 1 ? took : throw new InvalidOperationException($"{command.Program} ended with {process.ExitCode}.");
    }

    private static string Load() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "unknown";
}
