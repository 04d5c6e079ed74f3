using System.Reflection;
using BracketGen.Cli.Terminal;
using BracketGen.TestSupport;

namespace BracketGen.Cli.Tests;

/// <summary>The real program, run as a user runs it: in a process of its own, or in this one, where its code is compiled once for all runs.</summary>
internal static class BracketGenProgram
{
    private static readonly string Library = Path.Combine(AppContext.BaseDirectory, "bracketgen.dll");

    /// <summary>What starts it, for scripts that do.</summary>
    public static IReadOnlyList<string> CommandLine => [Dotnet.FilePath, "exec", Library];

    /// <summary>Runs it to its end, in a process of its own.</summary>
    public static ToolResult RunAlone(params string[] arguments) => Dotnet.Run(["exec", Library, .. arguments]);

    /// <summary>Runs it to its end from its entry point, in this process.</summary>
    public static ToolResult Run(params string[] arguments) => Answer([], arguments);

    /// <summary>Runs it in this process with lines typed, and then the end of input.</summary>
    public static ToolResult Answer(IEnumerable<string> lines, params string[] arguments) =>
        CaughtConsole.Of(() => (int)EntryPoint.Invoke(null, [arguments])!, string.Concat(lines.Select(l => l + "\n")));

    /// <summary>Runs it with its standard output on a device that is always full.</summary>
    public static ToolResult RunWithoutRoomToPrint(params string[] arguments) => OutsideTool.Require("sh").Run(
        ["-c", "exec \"$@\" > /dev/full", "sh", Dotnet.FilePath, "exec", Library, .. arguments]);

    /// <summary>How to start it, for tests that do more to it than wait.</summary>
    public static System.Diagnostics.ProcessStartInfo Start(params string[] arguments) => new(Dotnet.FilePath, ["exec", Library, .. arguments])
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    };

    private static MethodInfo EntryPoint { get; } = typeof(ExitCode).Assembly.EntryPoint ?? throw new InvalidOperationException("The program has no entry point.");

    private static OutsideTool Dotnet { get; } =
        OutsideTool.Require(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", "dotnet");
}
