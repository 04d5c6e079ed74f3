using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using BracketGen.Design.Checks;
using BracketGen.Drawing.Report;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Errors;
using BracketGen.Web.Desk;
using BracketGen.Words.Checks;
using BracketGen.Words.Page;
using BracketGen.Words.Profiles;
using BracketGen.Words.Results;

namespace BracketGen.Web.Messages;

/// <summary>Answers to the page, as JSON.</summary>
internal static class Reply
{
    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The bytes that <paramref name="write"/> writes.</summary>
    public static byte[] Json(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>(1 << 16);
        using (var writer = new Utf8JsonWriter(buffer, Plain))
        {
            writer.WriteStartObject();
            write(writer);
            writer.WriteEndObject();
        }

        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>The job, its texts and their values.</summary>
    public static void Desk(Utf8JsonWriter to, JobDesk desk)
    {
        to.WriteString("job", desk.Job);
        to.WriteStartObject("files");
        foreach (var (path, text) in desk.Files)
        {
            to.WriteString(path, text);
        }

        to.WriteEndObject();
        to.WriteStartObject("values");
        foreach (var (path, text) in desk.Files)
        {
            to.WritePropertyName(path);
            ProfileValues.Of(text).WriteTo(to);
        }

        to.WriteEndObject();
    }

    /// <summary>Errors, each in the words of the command line.</summary>
    public static void Errors(Utf8JsonWriter to, IEnumerable<ProfileError> errors)
    {
        to.WriteStartArray("errors");
        foreach (var error in errors)
        {
            to.WriteStartObject();
            to.WriteString("file", error.File);
            to.WriteNumber("line", error.Line);
            to.WriteString("key", error.Key);
            to.WriteBoolean("missing", error.IsMissing);
            to.WriteString("allowed", ProfileErrorText.Allowed(error));
            to.WriteString("advice", ProfileErrorText.Advice(error));
            to.WriteString("text", ProfileErrorText.Format(error));
            to.WriteEndObject();
        }

        to.WriteEndArray();
    }

    /// <summary>What the solver says.</summary>
    public static void Answer(Utf8JsonWriter to, DeskAnswer answer, IReadOnlyList<string> accepted)
    {
        Errors(to, answer.Errors);
        if (answer.Solution is not { } solution)
        {
            to.WriteNull("answer");
            return;
        }

        var (parts, data) = ReportParts.Of(solution, accepted);
        to.WriteStartObject("answer");
        to.WriteString("depth", answer.Depth.ToString());
        to.WriteBoolean("isWhole", answer.Depth == Depth.Strength);
        to.WriteBoolean("isChosen", solution.Job.Chosen is not null);
        to.WriteString("chosenText", ChosenText.Of(solution));

        // What the page writes into the job to have one of the brackets made.
        to.WriteStartArray("choices");
        if (answer.Depth == Depth.Strength)
        {
            foreach (var choice in solution.Choices)
            {
                ChosenValue.Of(choice).WriteTo(to);
            }
        }

        to.WriteEndArray();
        var verdict = PageVerdict.Of(solution);
        to.WriteStartObject("verdict");
        to.WriteString("state", verdict.State);
        to.WriteString("word", verdict.Word);
        to.WriteString("sentence", verdict.Sentence);
        to.WriteEndObject();
        to.WriteNumber("failed", solution.Checks.Count(c => c.Fails && c.Kind != CheckKind.Advice));
        to.WriteBoolean("hasBracket", solution.Bracket is not null);
        to.WriteBoolean("hasStrength", solution.Strength is not null);
        to.WriteStartArray("dangers");
        foreach (var danger in solution.Dangers)
        {
            to.WriteStartObject();
            to.WriteString("id", danger.Code);
            to.WriteString("title", danger.Title());
            to.WriteEndObject();
        }

        to.WriteEndArray();
        to.WriteStartObject("parts");
        foreach (var (id, html) in parts)
        {
            to.WriteString(id, WithoutStyle(html));
        }

        // Which brackets pass is known with their strength only.
        if (answer.Depth == Depth.Strength && !solution.Offers.IsEmpty)
        {
            to.WriteString("side-by-side", ReportParts.Offers(solution));
        }

        to.WriteEndObject();
        to.WritePropertyName("data");
        to.WriteRawValue(data, skipInputValidation: true);
        to.WriteEndObject();
    }

    // The page's policy allows no style in the markup; its script sets the styles kept here. No text of a user has a bare quote in it.
    private static string WithoutStyle(string html) => html.Replace(" style=\"", " data-style=\"", StringComparison.Ordinal);
}
