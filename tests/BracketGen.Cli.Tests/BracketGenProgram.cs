using BracketGen.TestSupport;

namespace BracketGen.Cli.Tests;

/// <summary>The real program, run as a user runs it: in a process of its own.</summary>
internal static class BracketGenProgram
{
    private static readonly string Library = Path.Combine(AppContext.BaseDirectory, "bracketgen.dll");

    /// <summary>Runs it to its end.</summary>
    public static ToolResult Run(params string[] arguments) => Dotnet.Run(["exec", Library, .. arguments]);

    /// <summary>Runs it with lines typed, and then the end of input.</summary>
    public static ToolResult Answer(IEnumerable<string> lines, params string[] arguments) =>
        Dotnet.Run(["exec", Library, .. arguments], string.Concat(lines.Select(l => l + "\n")));

    /// <summary>Runs it with its standard output on a device that is always full.</summary>
    public static ToolResult RunWithoutRoomToPrint(params string[] arguments) => OutsideTool.Require("sh").Run(
        ["-c", "exec \"$@\" > /dev/full", "sh", Dotnet.FilePath, "exec", Library, .. arguments]);

    private static OutsideTool Dotnet { get; } =
        OutsideTool.Require(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", "dotnet");
}
