using System.Collections.Immutable;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Sections;
using BracketGen.Units;

namespace BracketGen.Profiles.Interview;

/// <summary>What a profile is begun with: its questions, and the rules that each answer must meet.</summary>
/// <param name="Kind">Which kind of profile.</param>
/// <param name="Questions">All questions, as far as the answers given so far say which there are.</param>
/// <param name="Read">Every mistake in a profile's text.</param>
internal sealed record ProfileInterview(ProfileKind Kind, Func<Answers, IEnumerable<Question>> Questions, Func<string, ImmutableArray<ProfileError>> Read)
{
    private const string InMemory = "profile.toml";

    /// <summary>The interview about a vehicle.</summary>
    public static ProfileInterview Vehicle { get; } = new(ProfileKind.Vehicle, VehicleQuestions.After, text => ProfileReader.ReadVehicle(InMemory, Holding(text)).Errors);

    /// <summary>The interview about a throttle body.</summary>
    public static ProfileInterview ThrottleBody { get; } = new(ProfileKind.ThrottleBody, ThrottleBodyQuestions.After, text => ProfileReader.ReadThrottleBody(InMemory, Holding(text)).Errors);

    /// <summary>All interviews.</summary>
    public static ImmutableArray<ProfileInterview> All { get; } = [Vehicle, ThrottleBody];

    /// <summary>The profile's text as far as it was answered.</summary>
    public string Compose(Answers answers) => answers.Compose(Kind.Word, Kind.SchemaFile);

    /// <summary>Unit of a bare number in answer to a question; null where the answer is no number that is written.</summary>
    public Unit? UnitOf(Question question)
    {
        if (question.Form is not (AnswerForm.Quantity or AnswerForm.Measured or AnswerForm.Point or AnswerForm.List) || question.Section == Answers.Unwritten)
        {
            return null;
        }

        string[] path = [.. question.Section.Split(' ')[0].Trim('[', ']').Split('.', StringSplitOptions.RemoveEmptyEntries), question.Key];
        return Kind == ProfileKind.Vehicle ? VehicleSection.Form.UnitAt(path)
            : Kind == ProfileKind.ThrottleBody ? ThrottleBodySection.Form.UnitAt(path)
            : null;
    }

    private static MemoryFileSource Holding(string text) => MemoryFileSource.Empty.With(InMemory, text);
}
