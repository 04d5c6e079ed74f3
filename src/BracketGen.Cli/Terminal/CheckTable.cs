using BracketGen.Design.Checks;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Terminal;

namespace BracketGen.Cli.Terminal;

/// <summary>The checks on the screen: what fails first, then what is not known, then what passes, summed up.</summary>
internal static class CheckTable
{
    /// <summary>The verdict, as the first or the last line.</summary>
    /// <param name="screen">Where to.</param>
    /// <param name="verdict">The verdict.</param>
    /// <param name="question">What was asked, where that is not the whole job.</param>
    public static void PrintVerdict(Screen screen, Verdict verdict, string? question = null) =>
        screen.Paragraph(TerminalWords.Verdict(VerdictText.Of(verdict, question)), InkOf(verdict.Kind), hang: 2);

    /// <summary>The checks.</summary>
    /// <param name="screen">Where to.</param>
    /// <param name="checks">The checks.</param>
    /// <param name="units">Units of the job.</param>
    /// <param name="all">Whether passes are listed too.</param>
    public static void Print(Screen screen, IReadOnlyList<Check> checks, UnitSystem units, bool all)
    {
        var open = checks.Where(c => !c.Passes).OrderBy(Severity).ToList();
        var listed = all ? [.. open, .. checks.Where(c => c.Passes)] : open;
        if (listed.Count > 0)
        {
            screen.Line();
            screen.Table(
                [
                    .. listed.Select(c => new[]
                    {
                        CheckText.Mark(c), c.Code, CheckText.Value(c, units), CheckText.Limit(c, units), c.Title(),
                    }),
                ],
                row => InkOf(listed[row]));
        }

        foreach (var same in open.GroupBy(c => c.Consequence()))
        {
            screen.Line();
            screen.Paragraph($"{string.Join(", ", same.Select(c => c.Code))}: {same.Key}", hang: 2);
        }

        screen.Line();
        screen.Paragraph(TerminalWords.PassesSummedUp(checks.Count(c => c.Passes), checks.Count, all));
    }

    private static Tone InkOf(VerdictKind kind) => kind switch
    {
        VerdictKind.Passes => Tone.Good,
        VerdictKind.NotProven => Tone.Open,
        _ => Tone.Bad,
    };

    private static Tone InkOf(Check check) => check switch
    {
        { Passes: true } => Tone.Good,
        { Kind: CheckKind.Advice } or { State: CheckState.NotKnown } => Tone.Open,
        _ => Tone.Bad,
    };

    private static int Severity(Check check) => check switch
    {
        { IsDanger: true } => 0,
        { Fails: true, Kind: not CheckKind.Advice } => 1,
        { Kind: not CheckKind.Advice } => 2,
        _ => 3,
    };
}
