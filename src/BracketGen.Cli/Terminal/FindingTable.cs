using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Fitted;

namespace BracketGen.Cli.Terminal;

/// <summary>What the readings after fitting say, gravest first.</summary>
internal static class FindingTable
{
    public static void Print(TextWriter output, Job job, IReadOnlyList<Finding> findings)
    {
        output.WriteLine($"  {job.Vehicle.Name} on {job.Body.Name}, as fitted");
        output.WriteLine();
        foreach (var finding in findings)
        {
            output.WriteLine($"  {Mark(finding.Weight),-6}  {finding.Id}: {finding.Text}");
        }

        output.WriteLine();
        var dangers = findings.Count(f => f.Weight == FindingWeight.Safety);
        var open = findings.Count(f => f.Weight == FindingWeight.Mend);
        output.WriteLine(dangers > 0
            ? "  Verdict: DO NOT START THE ENGINE. Mend it, then read everything again."
            : open > 0
                ? "  Verdict: it closes, but is not right yet. Mend it, then read everything again."
                : "  Verdict: the readings are right. From every pedal position, cold and hot, the valve must still spring back at once: try it, engine off.");
    }

    private static string Mark(FindingWeight weight) => weight switch
    {
        FindingWeight.Safety => "DANGER",
        FindingWeight.Mend => "mend",
        _ => "ok",
    };
}
