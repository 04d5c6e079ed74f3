using System.Globalization;
using BracketGen.Words.Interview;

namespace BracketGen.Cli.Interview;

/// <summary>Lines out to a person and answers back.</summary>
internal sealed class Conversation(TextReader input, TextWriter output)
{
    /// <summary>Whether the input has ended.</summary>
    public bool IsOver { get; private set; }

    public void Say(string line = "") => output.WriteLine(line.Length == 0 ? "" : $"  {line}");

    /// <summary>The answer to a prompt; null at the end of the input.</summary>
    public string? Ask(string prompt)
    {
        output.Write(prompt);
        output.Flush();
        var line = IsOver ? null : input.ReadLine()?.Trim();
        IsOver |= line is null;
        return line;
    }

    /// <summary>Asks until the answer is yes or no; null at the end of the input or where the person goes back.</summary>
    public bool? Confirm(string question)
    {
        while (Ask($"  {InterviewText.YesOrNo(question)} ") is { } answer)
        {
            if (answer == InterviewText.Back)
            {
                return null;
            }

            if (InterviewText.IsYes(answer) is { } isYes)
            {
                return isYes;
            }
        }

        return null;
    }

    /// <summary>Asks for one of a few, by its number from 1; null at the end of the input, or where it is none of them.</summary>
    public int? Choose(string question, IReadOnlyList<string> choices)
    {
        Say(question);
        Say(InterviewText.Choices([.. choices, InterviewText.Neither]));
        while (Ask($"  {InterviewText.Which} ") is { } answer && answer != InterviewText.Back)
        {
            if (int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= choices.Count + 1)
            {
                return number <= choices.Count ? number - 1 : null;
            }
        }

        return null;
    }
}
