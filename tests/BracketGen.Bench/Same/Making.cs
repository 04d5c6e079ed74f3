using System.Globalization;
using BracketGen.Cli;
using BracketGen.Design.Inputs;

namespace BracketGen.Bench.Same;

/// <summary>Makes one job with one program, or finds what the same program made of the same files earlier.</summary>
/// <param name="Options">Options of <c>make</c>.</param>
/// <param name="Job">The job's file; the profiles it names lie beside it.</param>
/// <param name="Into">Folder for the output.</param>
internal sealed record Making(string[] Options, string Job, string Into)
{
    /// <summary>Stands for the exit code of a run that was stopped because it took too long.</summary>
    public const int DidNotEnd = -1;

    private string Record => $"{Into}.made";

    /// <summary>Runs the program.</summary>
    /// <returns>Its exit code, or <see cref="DidNotEnd"/>.</returns>
    public int Make(ProgramUnderTest program)
    {
        int exitCode;
        try
        {
            exitCode = program.Run(["make", Job, .. Options, "--into", Into]).ExitCode;
        }
        catch (TimeoutException)
        {
            return DidNotEnd;
        }

        File.WriteAllText(Record, string.Create(CultureInfo.InvariantCulture, $"{exitCode}\n{Stamp(program)}"));
        return exitCode;
    }

    /// <summary>Runs the program where it has not made the same files in this folder already.</summary>
    /// <returns>Its exit code, or <see cref="DidNotEnd"/>.</returns>
    public int MakeOnce(ProgramUnderTest program)
    {
        var parts = File.Exists(Record) ? File.ReadAllText(Record).Split('\n', 2) : [];
        return parts.Length == 2 && parts[1] == Stamp(program) ? int.Parse(parts[0], CultureInfo.InvariantCulture) : Make(program);
    }

    private string Stamp(ProgramUnderTest program) => string.Join(
        '\n',
        [program.Identity, .. Options, .. Directory.GetFiles(Path.GetDirectoryName(Job)!, "*.toml").Order(StringComparer.Ordinal).Select(File.ReadAllText)]);
}
