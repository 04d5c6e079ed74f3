using System.Text.Json;
using BracketGen.Design.Kit;
using BracketGen.Line.Lists;
using BracketGen.Web.Desk;
using BracketGen.Words.Kit;

namespace BracketGen.Web.Messages;

/// <summary>The kit as the page shows it: every sentence that the command prints.</summary>
internal static class KitReply
{
    /// <summary>Writes it.</summary>
    public static void Write(Utf8JsonWriter to, DeskKit answer)
    {
        Reply.Errors(to, answer.Errors);
        if (answer.Study is not { } study)
        {
            to.WriteNull("answer");
            return;
        }

        to.WriteStartObject("answer");
        to.WriteString("state", study.State switch { FitState.Fits => "passes", FitState.NotKnown => "not-proven", _ => "fails" });
        to.WriteString("heading", KitText.Heading(study.Kit.Job));
        to.WriteString("verdict", KitText.Verdict(study));
        to.WriteString("noLists", study.Kit.HasLists ? null : KitText.NoLists);
        to.WriteString("set", KitText.Set);
        Reply.Texts(to, "heads", KitText.SetHeads);
        to.WriteStartArray("rows");
        foreach (var row in KitText.SetRows(study))
        {
            Reply.Texts(to, row);
        }

        to.WriteEndArray();
        Reply.Texts(to, "account", KitText.Account(study));
        to.WriteStartArray("lists");
        foreach (var (heading, lines) in KitText.Lists(study))
        {
            to.WriteStartObject();
            to.WriteString("heading", heading);
            Reply.Texts(to, "lines", lines);
            to.WriteEndObject();
        }

        to.WriteEndArray();
        Reply.Texts(to, "files", KitFiles.Names);
        to.WriteEndObject();
    }
}
