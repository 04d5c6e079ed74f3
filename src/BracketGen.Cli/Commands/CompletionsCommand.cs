using System.CommandLine;
using BracketGen.Cli.Completions;
using BracketGen.Cli.Terminal;

namespace BracketGen.Cli.Commands;

/// <summary>Prints what makes a shell complete this program's commands and options.</summary>
internal static class CompletionsCommand
{
    private const string Bash = "bash", Zsh = "zsh", Fish = "fish";

    public static Command Create()
    {
        var shell = new Argument<string>("shell") { Description = "The shell: bash, zsh or fish." };
        shell.AcceptOnlyFromAmong(Bash, Zsh, Fish);
        var command = new Command("completions", $"Print a script that makes a shell complete commands and options.\n\n{ExitCode.Help}") { shell };
        command.SetAction(parsed =>
        {
            Console.Out.Write(Script(parsed.GetRequiredValue(shell)));
            return ExitCode.Pass;
        });
        return command;
    }

    /// <summary>The script for a shell.</summary>
    public static string Script(string shell)
    {
        var commands = CompletedCommand.AllOf(CommandTree.Create());
        return shell switch
        {
            Bash => BashCompletions.Write(commands),
            Zsh => ZshCompletions.Write(commands),
            _ => FishCompletions.Write(commands),
        };
    }
}
