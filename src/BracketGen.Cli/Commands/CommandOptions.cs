using System.CommandLine;

namespace BracketGen.Cli.Commands;

/// <summary>Options that several commands share.</summary>
internal static class CommandOptions
{
    /// <summary>Whether checks that pass are listed too.</summary>
    public static Option<bool> AllChecks() => new("--all-checks") { Description = "List the checks that pass too." };
}
