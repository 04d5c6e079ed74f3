using BracketGen.Design.Checks;

namespace BracketGen.Cli.Terminal;

/// <summary>What the program tells the shell when it ends.</summary>
public static class ExitCode
{
    /// <summary>What the help of every command says about them.</summary>
    public const string Help =
        "Exit codes: 0 every check passes, 1 unsafe or a check fails, 2 bad input, 3 outputs could not be written, 4 stopped before the end, 5 not proven.";

    /// <summary>Done, and every check passes.</summary>
    public const int Pass = 0;

    /// <summary>Done, but a check fails: the verdict says which.</summary>
    public const int CheckFailed = 1;

    /// <summary>The command line or a file it names is wrong: nothing was computed.</summary>
    public const int BadInput = 2;

    /// <summary>The outputs could not be written.</summary>
    public const int CannotWrite = 3;

    /// <summary>Stopped by a signal before the end: the same command goes on where it was.</summary>
    public const int Stopped = 4;

    /// <summary>Done, and nothing fails, but something that matters is not known.</summary>
    public const int NotProven = 5;

    /// <summary>The code of a verdict.</summary>
    public static int Of(VerdictKind verdict) => verdict switch
    {
        VerdictKind.Passes => Pass,
        VerdictKind.NotProven => NotProven,
        _ => CheckFailed,
    };
}
