using System.CommandLine;

namespace BracketGen.Cli.Terminal;

/// <summary>Says what is wrong with a command line.</summary>
internal static class CommandLineErrors
{
    public static int Report(ParseResult parsed)
    {
        foreach (var error in parsed.Errors)
        {
            Console.Error.WriteLine($"bracketgen: {error.Message}");
        }

        Console.Error.WriteLine("Run it with --help to see the commands and their options.");
        return ExitCode.BadInput;
    }
}
