using System.CommandLine;
using System.Text;
using BracketGen.Cli;
using BracketGen.Cli.Commands;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
var root = new RootCommand(
    """
    BracketGen finds where a throttle cable's stop must sit, proves the travel from closed stop to wide-open stop, and draws the
    sheet-metal bracket that holds it there.

    A throttle that sticks open can kill. This is a design aid: a competent person checks the finished installation.

    Exit codes: 0 every check passes, 1 a check failed, 2 bad input, 3 outputs could not be written.
    """)
{
    MakeCommand.Create(),
    TravelCommand.Create(),
    FittedCommand.Create(),
};
var parsed = root.Parse(args);
return parsed.Errors.Count > 0 ? CommandLineErrors.Report(parsed) : parsed.Invoke();
