using System.CommandLine;
using System.Text;
using BracketGen.Cli;
using BracketGen.Cli.Commands;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
var root = new RootCommand(
    $"""
    BracketGen finds where a throttle cable's stop must sit, proves the travel from closed stop to wide-open stop, and draws the
    sheet-metal bracket that holds it there.

    A throttle that sticks open can kill. This is a design aid: a competent person checks the finished installation.

    {ExitCode.Help}
    """)
{
    MakeCommand.Create(),
    LineCommand.Create(),
    TravelCommand.Create(),
    FittedCommand.Create(),
    WorksheetCommand.Create(),
    BeginCommand.Create(),
    WorkbenchCommand.Create(),
};
var parsed = root.Parse(args);
if (parsed.Errors.Count > 0)
{
    return CommandLineErrors.Report(parsed);
}

try
{
    // The library's own handler would end with 1, which here says that a check failed.
    return await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null });
}
catch (IOException problem)
{
    Console.Error.WriteLine($"bracketgen: the result could not be printed: {problem.Message}");
    return ExitCode.CannotWrite;
}
