using System.Collections.Immutable;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Paths;
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

    /// <summary>The interview about a shop.</summary>
    public static ProfileInterview Shop { get; } = new(ProfileKind.Shop, ShopQuestions.After, text => ProfileReader.ReadShop(InMemory, Holding(text)).Errors);

    /// <summary>The interviews that look at no other file.</summary>
    public static ImmutableArray<ProfileInterview> Alone { get; } = [Vehicle, ThrottleBody, Shop];

    /// <summary>The interview about a job, held against the profiles that it names.</summary>
    /// <param name="path">Path of the job's file.</param>
    /// <param name="files">Where the other profiles are.</param>
    /// <param name="found">Those to choose from.</param>
    public static ProfileInterview Job(string path, IFileSource files, FoundProfiles found) => new(
        ProfileKind.Job,
        new JobQuestions(
            found,
            Once(vehicle => ProfileReader.ReadVehicle(ProfilePath.Beside(path, vehicle), files).Value?.OtherCables ?? default),
            Once(body => ProfileReader.ReadThrottleBody(ProfilePath.Beside(path, body), files).Value is { } read ? [.. read.OtherGrooves.Select(g => g.Name)] : default(ImmutableArray<string>)),
            Once(shop => ProfileReader.ReadShop(ProfilePath.Beside(path, shop), files).Value is { } read ? [.. read.Stock.Select(s => s.Material.Designation).Distinct()] : default(ImmutableArray<string>))).After,
        text => ProfileReader.ReadJob(path, new WithOne(files, path, text)).Errors)
    {
        File = ProfilePath.Tidy(path),
    };

    /// <summary>Name of the file in the mistakes that <see cref="Read"/> finds.</summary>
    public string File { get; private init; } = InMemory;

    /// <summary>The profile's text as far as it was answered.</summary>
    public string Compose(Answers answers) => answers.Compose(Kind.Word, Kind.SchemaFile);

    /// <summary>What is wrong with the answers. What later answers may put right is no mistake while there are questions left.</summary>
    public IReadOnlyList<ProfileError> MistakesIn(Answers answers)
    {
        var open = Questions(answers).Where(q => !answers.Has(q)).ToArray();
        var mistakes = Read(Compose(answers));
        return
        [
            .. mistakes.Where(e => (open.Length == 0 || !e.IsUnfinished || e.File != File)

                // Of half a table only its numbers can be judged, one by one.
                && (e.Problem is OutOfRange or ValueWrong or UnitUnknown or UnitWrong || !open.Any(q => q.IsOfTable))

                // Which of several points is off the face shows when all are there.
                && !(e.Problem is HoleOffFace && open.Any(q => q.Id == QuestionId.HoleCentre))),
        ];
    }

    /// <summary>The question that a mistake is about, if it was answered; for a mistake in a whole table the first one of it. Null where there is none.</summary>
    public Question? QuestionOf(ProfileError mistake, Answers answers)
    {
        if (mistake.File != File || mistake.Key.Length == 0)
        {
            return null;
        }

        var written = answers.Given.Select(g => g.Question).Where(q => q.Form != AnswerForm.Count && q.Section != Answers.Unwritten).ToArray();
        return written.FirstOrDefault(q => q.Path == mistake.Key)
            ?? written.FirstOrDefault(q => mistake.Key.StartsWith(q.Path + "[", StringComparison.Ordinal) || q.Path.StartsWith(mistake.Key + "[", StringComparison.Ordinal));
    }

    /// <summary>Unit of a bare number in answer to a question; null where the answer is no number that is written.</summary>
    public Unit? UnitOf(Question question)
    {
        if (question.Form is not (AnswerForm.Quantity or AnswerForm.Measured or AnswerForm.Point or AnswerForm.List or AnswerForm.Direction) || question.Section == Answers.Unwritten)
        {
            return null;
        }

        string[] path = [.. question.Section.Split(' ')[0].Trim('[', ']').Split('.', StringSplitOptions.RemoveEmptyEntries), question.Key];
        return Kind == ProfileKind.Vehicle ? VehicleSection.Form.UnitAt(path)
            : Kind == ProfileKind.ThrottleBody ? ThrottleBodySection.Form.UnitAt(path)
            : Kind == ProfileKind.Shop ? ShopSection.Form.UnitAt(path)
            : JobSection.Form.UnitAt(path);
    }

    // The questions are put together many times over; a file that could not be read is looked at again.
    private static Func<string, ImmutableArray<T>> Once<T>(Func<string, ImmutableArray<T>> read)
    {
        var known = new Dictionary<string, ImmutableArray<T>>();
        return path =>
        {
            if (!known.TryGetValue(path, out var found) && (found = read(path)) is { IsDefault: false })
            {
                known[path] = found;
            }

            return found.IsDefault ? [] : found;
        };
    }

    private static MemoryFileSource Holding(string text) => MemoryFileSource.Empty.With(InMemory, text);

    // Other files with one that is not written yet.
    private sealed class WithOne(IFileSource files, string path, string text) : IFileSource
    {
        private readonly MemoryFileSource _one = MemoryFileSource.Empty.With(path, text);

        public FileReading Read(string other, int max) => _one.Read(other, max) is { State: not FileState.Missing } own ? own : files.Read(other, max);
    }
}
