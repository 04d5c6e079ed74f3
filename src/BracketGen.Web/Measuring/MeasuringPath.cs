using System.Collections.Immutable;
using System.Text.Json.Nodes;
using BracketGen.Drawing.Measuring;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Interview;
using BracketGen.Words.Interview;
using BracketGen.Words.Page;
using BracketGen.Words.Worksheet;

namespace BracketGen.Web.Measuring;

/// <summary>The questions of the interview one by one, each with the sketch that shows its number.</summary>
internal static class MeasuringPath
{
    private const string InMemory = "profile.toml";

    /// <summary>The questions for a vehicle or a throttle body; what is written so far decides which there are.</summary>
    /// <remarks>
    /// The interview writes what an empty answer means; here an empty answer writes nothing. So an answer is wanted wherever the reader misses the key.
    /// </remarks>
    /// <param name="kind"><c>vehicle</c> or <c>throttle body</c>.</param>
    /// <param name="text">The profile so far.</param>
    public static IReadOnlyList<MeasuringStep> Of(string kind, string text)
    {
        var values = ProfileValues.Of(text);
        var isVehicle = kind == ProfileKind.Vehicle.Word;
        Func<Answers, IEnumerable<Question>> questions = isVehicle ? VehicleQuestions.After : ThrottleBodyQuestions.After;
        var sketches = isVehicle ? WorksheetSketches.OfVehicle : WorksheetSketches.OfThrottleBody;
        var files = MemoryFileSource.Empty.With(InMemory, text);
        var errors = isVehicle ? ProfileReader.ReadVehicle(InMemory, files).Errors : ProfileReader.ReadThrottleBody(InMemory, files).Errors;
        var missing = errors.Where(e => e.IsMissing).Select(e => e.Key).ToHashSet();
        // Two tables of springs are their count.
        if (missing.Contains("return_springs.count"))
        {
            missing.Add("return_springs.each");
        }

        var answers = new Answers();
        var steps = new List<MeasuringStep>();
        while (questions(answers).FirstOrDefault(q => !answers.Has(q)) is { } question)
        {
            var key = KeyOf(question);
            answers.Give(question, Written(values, question, key));
            var (number, letter) = SketchOf(isVehicle, sketches, question);
            steps.Add(new(
                key, (question.Form == AnswerForm.Direction ? AnswerForm.Point : question.Form).ToString(), QuestionText.Ask(question), QuestionText.Explain(question), missing.Contains(key) ? null : question.Default, question.Words, question.Max, number, letter,
                number < 0 ? "" : sketches[number].Tool, number < 0 ? "" : sketches[number].Mistake));
        }

        return steps;
    }

    /// <summary>The same questions as the worksheet has them: a screen for each of its sections, in its order and with its letters.</summary>
    /// <remarks>First the name; last what the worksheet does not ask. A question that the worksheet does not have stands before the next one that it has.</remarks>
    /// <param name="kind"><c>vehicle</c> or <c>throttle body</c>.</param>
    /// <param name="steps">The questions of <see cref="Of"/>.</param>
    public static IReadOnlyList<MeasuringScreen> Screens(string kind, IReadOnlyList<MeasuringStep> steps)
    {
        var sketches = kind == ProfileKind.Vehicle.Word ? WorksheetSketches.OfVehicle : WorksheetSketches.OfThrottleBody;
        var screens = new List<MeasuringScreen>();
        foreach (var section in steps.Select((step, number) => (Step: step, Number: number)).GroupBy(s => SectionOf(s.Step, sketches.Length)).OrderBy(g => g.Key))
        {
            var blanks = section.Key >= 0 && section.Key < sketches.Length ? sketches[section.Key].Blanks : [];
            var questions = section.ToArray();
            var places = new (int Item, int Blank)[questions.Length];
            for (var i = questions.Length - 1; i >= 0; i--)
            {
                places[i] = PlaceOf(questions[i].Step, blanks) ?? (i + 1 < questions.Length && ItemOf(questions[i + 1].Step) == ItemOf(questions[i].Step) ? places[i + 1] : (ItemOf(questions[i].Step), int.MaxValue));
            }

            var ordered = questions.Select((q, i) => (q.Number, Place: places[i])).OrderBy(q => q.Place.Item).ThenBy(q => q.Place.Blank).ThenBy(q => q.Number).Select(q => q.Number);
            screens.Add(new(
                section.Key < 0 ? MeasuringTitles.Name : section.Key < sketches.Length ? sketches[section.Key].Title : MeasuringTitles.Further,
                section.Key < 0 || section.Key >= sketches.Length ? -1 : section.Key, [.. ordered]));
        }

        return screens;
    }

    private static int SectionOf(MeasuringStep step, int sections) => step.Key == "name" ? -1 : step.Sketch < 0 ? sections : step.Sketch;

    // What there may be several of, each with all its rows: the worksheet has a sheet for each.
    private static int ItemOf(MeasuringStep step)
    {
        var open = step.Key.IndexOf('[', StringComparison.Ordinal);
        return open > 0 && step.Key[..open] is "keep_out" or "other_cables" or "return_springs.each"
            ? int.Parse(step.Key[(open + 1)..step.Key.IndexOf(']', StringComparison.Ordinal)], System.Globalization.CultureInfo.InvariantCulture) : 0;
    }

    private static (int Item, int Blank)? PlaceOf(MeasuringStep step, ImmutableArray<Blank> blanks)
    {
        var open = step.Key.IndexOf('[', StringComparison.Ordinal);
        var list = open < 0 ? "" : step.Key[..open];
        var row = list is "pedal.table" or "quadrant.groove.points" ? list : step.Key;
        var name = row[(row.LastIndexOf('.') + 1)..];
        var place = 0;
        while (place < blanks.Length && blanks[place].Key != name)
        {
            place++;
        }

        // How many there are is asked before any of them.
        return place < blanks.Length ? (ItemOf(step), place) : step.Form == nameof(AnswerForm.Count) ? (0, -1) : null;
    }

    /// <summary>The sketches that the steps number.</summary>
    public static IReadOnlyList<string> Sketches(string kind) =>
        [.. (kind == ProfileKind.Vehicle.Word ? WorksheetSketches.OfVehicle : WorksheetSketches.OfThrottleBody).Select(s => s.Svg)];

    // An answer that only steers the questions has the name of what it decides.
    private static string KeyOf(Question question) => question switch
    {
        { Section: Answers.Unwritten, Key: "lever" } => "pedal.table",
        { Section: Answers.Unwritten } => "quadrant.groove",
        { Form: AnswerForm.Count, Section: "[return_springs]" } => "return_springs.each",
        { Form: AnswerForm.Count, Section: "[other_cables]" } => "other_cables",
        { Form: AnswerForm.Count, Section: "[keep_out]" } => "keep_out",
        _ => question.Path,
    };

    private static string? Written(JsonObject values, Question question, string key)
    {
        var value = At(values, key);
        if (question.Section == Answers.Unwritten)
        {
            return question.Key == "lever" ? value is JsonArray ? "table" : question.Default
                : (value?["shape"] as JsonValue)?.TryGetValue<string>(out var shape) == true ? shape : question.Default;
        }

        if (question.Form == AnswerForm.Count)
        {
            return ((value as JsonArray)?.Count ?? 0).ToString(System.Globalization.CultureInfo.InvariantCulture);
        }

        // Only words steer what is asked next; of anything else only its presence counts.
        return value is JsonValue text && text.TryGetValue<string>(out var word) ? word : value is null ? null : "given";
    }

    private static JsonNode? At(JsonNode? node, string key)
    {
        foreach (var part in key.Split('.', '['))
        {
            node = part.EndsWith(']') && node is JsonArray list && int.TryParse(part[..^1], out var number)
                ? number >= 1 && number <= list.Count ? list[number - 1] : null
                : (node as JsonObject)?[part];
        }

        return node;
    }

    private static (int Number, string Letter) SketchOf(bool isVehicle, IReadOnlyList<WorksheetSketch> sketches, Question question)
    {
        var number = (isVehicle, question.Section, question.Key) switch
        {
            (_, "", "name") => -1,
            (true, "[cable]", "fleet_limit") => -1,
            (true, "[cable]", "min_bend_radius" or "outer_length") => 3,
            (true, "[cable]", "outer_axial_stiffness") => 5,
            (true, "[cable.outer_end]", _) => 1,
            (true, "[cable]", "closing_drag" or "opening_drag") => 4,
            (true, "[cable]" or "[cable.fitting]", _) => 0,
            (true, "[pedal]" or Answers.Unwritten, _) or (true, ['[', '[', 'p', ..], _) => 2,
            (true, "[other_cables]", _) or (true, ['[', '[', 'o', ..], _) => 6,
            (true, _, _) => -1,
            (false, "[engine]", _) => -1,
            (false, "", "opens") => 0,
            (false, "", "shaft_drag") => 4,
            (false, "" or "[valve]" or "[sensor]", _) => 3,
            (false, "[bore_axis]", _) => 6,
            (false, "[quadrant]", "groove_width" or "outer_radius" or "thickness") => 1,
            (false, "[quadrant]", "slot_width") or (false, "[quadrant.pocket]", _) => 2,
            (false, "[quadrant]", _) => 0,
            (false, "[quadrant.groove]", "points" or "plus_minus") or (false, ['[', '[', 'q', ..], _) => 9,
            (false, Answers.Unwritten, _) => 0,
            (false, "[quadrant.groove]", _) => 8,
            (false, "[return_springs]", _) or (false, ['[', '[', 'r', ..], _) => 4,
            (false, "[mount]", _) or (false, ['[', '[', 'm', ..], _) => 5,
            _ => 7,
        };
        return (number, number < 0 ? "" : Letters(sketches[number].Blanks, question));
    }

    // A point has a letter for each coordinate that has a dimension of its own. Thread and boss are alike for all holes.
    private static string Letters(IEnumerable<Blank> blanks, Question question)
    {
        var own = blanks.Where(b => b.Letter.Length > 0 && b.Key == question.Key && (b.Item == 0 || b.Item == question.Item)).ToArray();
        var item = question.Item > 0 && own.Any(b => b.Item == question.Item) ? question.Item : 0;
        return string.Join(", ", own.Where(b => b.Item == item).Select(b => b.Letter));
    }
}

/// <summary>Questions that belong together.</summary>
/// <param name="Title">What they are about, as the worksheet says it.</param>
/// <param name="Sketch">Number of the sketch; -1 if there is none.</param>
/// <param name="Steps">Their places among the steps.</param>
internal sealed record MeasuringScreen(string Title, int Sketch, int[] Steps);

/// <summary>One question with its sketch.</summary>
/// <param name="Key">Key it is written as.</param>
/// <param name="Form">How: Quantity, Measured, Text, Word, Point or Count.</param>
/// <param name="Ask">The question.</param>
/// <param name="Explain">What the number is and how to measure it.</param>
/// <param name="Default">What an empty answer means; null if an answer is required, empty if the key is then left out.</param>
/// <param name="Words">The words allowed.</param>
/// <param name="Max">Largest count.</param>
/// <param name="Sketch">Number of the sketch; -1 if there is none.</param>
/// <param name="Letter">Letters on the sketch with a comma between; may be empty.</param>
/// <param name="Tool">Tool to measure with.</param>
/// <param name="Mistake">Usual mistake.</param>
internal sealed record MeasuringStep(
    string Key, string Form, string Ask, string Explain, string? Default, string[] Words, int Max, int Sketch, string Letter, string Tool, string Mistake);
