using System.CommandLine;
using System.Text;
using BracketGen.Cli.Commands;
using BracketGen.Cli.Terminal;
using BracketGen.Words.Terminal;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
if (args.Length == 0)
{
    foreach (var line in TerminalWords.FirstSteps)
    {
        Console.WriteLine(line);
    }

    return 0;
}

var root = CommandTree.Create();
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
