using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Errors;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Words.Checks;
using BracketGen.Words.Page;
using BracketGen.Words.Profiles;
using BracketGen.Words.Report;
using BracketGen.Words.Results;
using BracketGen.Words.Terminal;

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
    /// <param name="to">Where to.</param>
    /// <param name="desk">The job.</param>
    /// <param name="known">Values that were asked for before.</param>
    public static void Desk(Utf8JsonWriter to, JobDesk desk, KnownValues known)
    {
        to.WriteString("job", desk.Job);

        // A drawing is never changed here: the page has it.
        Files(to, desk.Files.Where(f => WorkFolder.IsAllowed(f.Key)), known);
    }

    /// <summary>Texts by path, and the values of those that are profiles.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="files">Texts by path.</param>
    /// <param name="known">Values that were asked for before.</param>
    public static void Files(Utf8JsonWriter to, IEnumerable<KeyValuePair<string, string>> files, KnownValues known)
    {
        to.WriteStartObject("files");
        foreach (var (path, text) in files)
        {
            to.WriteString(path, text);
        }

        to.WriteEndObject();
        to.WriteStartObject("values");
        foreach (var (path, text) in files.Where(f => WorkFolder.IsAllowed(f.Key)))
        {
            to.WritePropertyName(path);
            to.WriteRawValue(known.Of(text), skipInputValidation: true);
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
            to.WriteBoolean("open", PageErrorText.IsOpen(error));
            to.WriteString("allowed", PageErrorText.Allowed(error));
            to.WriteString("advice", PageErrorText.Advice(error));
            to.WriteString("text", ProfileErrorText.Format(error));
            to.WriteEndObject();
        }

        to.WriteEndArray();
    }

    /// <summary>What the solver says.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="answer">What it says.</param>
    /// <param name="accepted">Failed safety checks that the user accepted by name.</param>
    /// <param name="wanted">Parts that are wanted now; empty where all are. The others are named as <c>open</c>.</param>
    public static void Answer(Utf8JsonWriter to, DeskAnswer answer, IReadOnlyList<string> accepted, IReadOnlyList<string> wanted)
    {
        Errors(to, answer.Errors);
        if (answer.Solution is not { } solution)
        {
            to.WriteNull("answer");
            return;
        }

        var (parts, data) = ReportParts.Of(solution, accepted, wanted);
        to.WriteStartObject("answer");
        Begin(to, answer.Depth, solution.Job.Chosen is not null, ChosenText.Of(solution));

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
        if (answer.Depth == Depth.Strength)
        {
            Row(to, TrialText.RowOfOurs(1, solution));
        }

        Verdict(to, PageVerdict.Of(solution));
        Solved(to, solution);
        Picture(to, solution.Job.Body, solution);
        to.WriteStartArray("outlines");
        foreach (var outline in answer.Depth == Depth.Strength ? ReportParts.Outlines(solution) : [])
        {
            to.WriteStartArray();
            foreach (var coordinate in outline)
            {
                to.WriteNumberValue(coordinate);
            }

            to.WriteEndArray();
        }

        to.WriteEndArray();
        to.WriteStartObject("parts");
        foreach (var (id, html) in parts.Where(p => p.Html is not null))
        {
            to.WriteString(id, WithoutStyle(html!));
        }

        // Which brackets pass is known with their strength only.
        if (answer.Depth == Depth.Strength && !solution.Offers.IsEmpty)
        {
            to.WriteString("side-by-side", ReportParts.Offers(solution));
        }

        to.WriteEndObject();
        to.WriteStartArray("open");
        foreach (var (id, _) in parts.Where(p => p.Html is null))
        {
            to.WriteStringValue(id);
        }

        to.WriteEndArray();
        to.WritePropertyName("data");
        to.WriteRawValue(data, skipInputValidation: true);
        to.WriteEndObject();
    }

    /// <summary>What the solver says of a bracket that is there already.</summary>
    public static void Answer(Utf8JsonWriter to, BracketAnswer answer)
    {
        Errors(to, answer.Errors);
        if (answer.Tried is not { } tried)
        {
            to.WriteNull("answer");
            return;
        }

        var (parts, data) = ReportParts.Of(tried);
        to.WriteStartObject("answer");
        Begin(to, answer.Depth, isChosen: false, chosen: null);
        to.WriteStartArray("choices");
        to.WriteEndArray();
        if (answer.Depth == Depth.Strength)
        {
            Row(to, TrialText.Row(1, tried));
        }

        Verdict(to, PageVerdict.Of(tried));
        Solved(to, tried.Trial.Solution);
        Picture(to, tried.Trial.Job.Body, tried.Trial.Solution);
        to.WriteStartObject("parts");
        foreach (var (id, html) in parts)
        {
            to.WriteString(id, WithoutStyle(html));
        }

        to.WriteEndObject();
        to.WritePropertyName("data");
        to.WriteRawValue(data ?? "null", skipInputValidation: true);
        to.WriteEndObject();
    }

    /// <summary>Texts under a name.</summary>
    public static void Texts(Utf8JsonWriter to, string name, IEnumerable<string> texts)
    {
        to.WritePropertyName(name);
        Texts(to, texts);
    }

    /// <summary>Texts as a list.</summary>
    public static void Texts(Utf8JsonWriter to, IEnumerable<string> texts)
    {
        to.WriteStartArray();
        foreach (var text in texts)
        {
            to.WriteStringValue(text);
        }

        to.WriteEndArray();
    }

    // What is said of the picture, and what in it has a name.
    private static void Picture(Utf8JsonWriter to, ThrottleBody body, Solution? solution)
    {
        to.WriteString("about", SolidText.About(body));
        to.WritePropertyName("marks");
        to.WriteRawValue(solution is null ? "null" : ReportParts.Marks(solution) ?? "null", skipInputValidation: true);
    }

    private static void Begin(Utf8JsonWriter to, Depth depth, bool isChosen, string? chosen)
    {
        to.WriteString("depth", depth.ToString());
        to.WriteBoolean("isWhole", depth == Depth.Strength);
        to.WriteBoolean("isChosen", isChosen);
        to.WriteString("chosenText", chosen);
    }

    // The row of the table that compares brackets, without its number: the page counts its rows itself.
    private static void Row(Utf8JsonWriter to, IEnumerable<string> cells)
    {
        to.WriteStartArray("heads");
        foreach (var head in TrialText.Heads)
        {
            to.WriteStringValue(head);
        }

        to.WriteEndArray();
        to.WriteStartArray("row");
        foreach (var cell in cells.Skip(1))
        {
            to.WriteStringValue(cell);
        }

        to.WriteEndArray();
    }

    private static void Verdict(Utf8JsonWriter to, PageVerdict verdict)
    {
        to.WriteStartObject("verdict");
        to.WriteString("state", verdict.State);
        to.WriteString("word", verdict.Word);
        to.WriteString("sentence", verdict.Sentence);
        to.WriteEndObject();
    }

    private static void Solved(Utf8JsonWriter to, Solution? solution)
    {
        to.WriteNumber("failed", solution?.Checks.Count(c => c.Fails && c.Kind != CheckKind.Advice) ?? 0);
        to.WriteBoolean("hasBracket", solution?.Bracket is not null);
        to.WriteBoolean("hasStrength", solution?.Strength is not null);
        to.WriteStartArray("dangers");
        foreach (var danger in solution?.Dangers ?? [])
        {
            to.WriteStartObject();
            to.WriteString("id", danger.Code);
            to.WriteString("title", danger.Title());
            to.WriteEndObject();
        }

        to.WriteEndArray();
    }

    // The page's policy allows no style in the markup; its script sets the styles kept here. No text of a user has a bare quote in it.
    private static string WithoutStyle(string html) => html.Replace(" style=\"", " data-style=\"", StringComparison.Ordinal);
}
