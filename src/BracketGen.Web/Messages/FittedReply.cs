using System.Text.Json;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Fitted;
using BracketGen.Web.Desk;
using BracketGen.Words.Fitted;
using BracketGen.Words.Page;
using BracketGen.Words.Terminal;

namespace BracketGen.Web.Messages;

/// <summary>What readings mean, as the page shows it: every sentence that the command prints, its options called as the fields are.</summary>
internal static class FittedReply
{
    /// <summary>Writes it.</summary>
    public static void Write(Utf8JsonWriter to, DeskReadings readings)
    {
        Reply.Errors(to, readings.Errors);
        to.WriteStartObject("mistakes");
        foreach (var (name, text) in readings.Mistakes)
        {
            to.WriteString(name, text);
        }

        to.WriteEndObject();
        to.WriteString("problem", readings.Problem is { } problem ? FittedWords.InFields(problem) : null);
        if (readings.Job is not { } job)
        {
            to.WriteNull("answer");
            return;
        }

        var words = new FindingText(job.Units, job.Vehicle.Cable.OuterEnd is ThreadedAdjuster adjuster ? adjuster.Pitch : null);
        to.WriteStartObject("answer");
        to.WriteString("state", State(FindingText.Decides(readings.Findings)));
        to.WriteString("heading", TerminalWords.FittedHeading(job.Vehicle.Name, job.Body.Name));
        to.WriteStartArray("rows");
        foreach (var finding in readings.Findings)
        {
            Reply.Texts(to, [FindingText.Mark(finding.Weight), finding.Code, FittedWords.InFields(words.Of(finding))]);
        }

        to.WriteEndArray();
        to.WriteString("verdict", TerminalWords.Verdict(FindingText.Verdict(readings.Findings)));
        to.WriteEndObject();
    }

    private static string State(FindingWeight weight) => weight switch
    {
        FindingWeight.Safety => "unsafe",
        FindingWeight.Adjust => "fails",
        FindingWeight.NotProven => "not-proven",
        _ => "passes",
    };
}
