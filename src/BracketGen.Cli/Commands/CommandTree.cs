using System.CommandLine;
using BracketGen.Cli.Terminal;

namespace BracketGen.Cli.Commands;

/// <summary>Every command with its options: what the program parses, and what shells complete.</summary>
internal static class CommandTree
{
    public static RootCommand Create() => new(
        $"""
            BracketGen finds where a throttle cable's stop must sit, proves the travel from closed stop to wide-open stop, and draws the
            sheet-metal bracket that holds it there.

            A throttle that sticks open can kill. This is a design aid: a competent person checks the finished installation.

            {ExitCode.Help}
            """)
        {
            DemoCommand.Create(),
            MakeCommand.Create(),
            LineCommand.Create(),
            OrderCommand.Create(),
            TravelCommand.Create(),
            InspectCommand.Create(),
            CheckCommand.Create(),
            KitCommand.Create(),
            FittedCommand.Create(),
            WorksheetCommand.Create(),
            TestBendCommand.Create(),
            BeginCommand.Create(),
            PageCommand.Create(),
            CompletionsCommand.Create(),
        };
}
