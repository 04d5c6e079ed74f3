using System.Text;
using BracketGen.Profiles;
using BracketGen.Profiles.Interview;
using BracketGen.Storage;
using BracketGen.Words.Interview;

namespace BracketGen.Cli.Interview;

/// <summary>The file beside a profile that keeps the answers until the profile is whole.</summary>
/// <remarks>Written whole after each answer, so that nothing is lost however the program ends. A draft that is not gone on from is left as it is.</remarks>
internal sealed class DraftFile
{
    private const string Ending = ".draft";

    private readonly string _path;

    private DraftFile(string path, Draft? before) => (_path, Before) = (path, before);

    /// <summary>Answers to go on from; null where there are none.</summary>
    public Draft? Before { get; }

    /// <summary>Name to show.</summary>
    public string Name => Path.GetRelativePath(Environment.CurrentDirectory, _path) is var near && near.StartsWith("..", StringComparison.Ordinal) ? _path : near;

    /// <summary>Whether there is anything to go on from.</summary>
    public bool HasAnswers => File.Exists(_path);

    /// <summary>The draft that the person goes on from, or the first free name for a new one.</summary>
    /// <param name="profile">The profile that is begun.</param>
    /// <param name="interview">What it is begun with.</param>
    /// <param name="talk">Asks whether to go on.</param>
    public static DraftFile Beside(FileInfo profile, ProfileInterview interview, Conversation talk)
    {
        for (var number = 1; ; number++)
        {
            var file = new DraftFile(profile.FullName + Ending + (number == 1 ? "" : $"-{number}"), null);
            if (!File.Exists(file._path) || talk.IsOver)
            {
                return file;
            }

            var reading = new DiskFileSource().Read(file._path, Draft.MaxBytes);
            if (reading.State != FileState.Read || Draft.Parse(Encoding.UTF8.GetString(reading.Bytes.Span)) is not { } draft || draft.Kind != interview.Kind.Word)
            {
                talk.Say(InterviewText.NoDraft(file.Name, interview.Kind.Word));
            }
            else if (talk.Confirm(InterviewText.GoOn(file.Name, draft.Answers.Length)) == true)
            {
                return new(file._path, draft);
            }
        }
    }

    /// <summary>Writes what was answered so far.</summary>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It cannot be written for want of rights.</exception>
    public void Keep(Draft draft) => WholeFiles.WriteOne(_path, Encoding.UTF8.GetBytes(draft.Compose()));

    /// <summary>Removes it: its answers are in the profile.</summary>
    public void Remove()
    {
        try
        {
            File.Delete(_path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The profile is whole, and the next interview leaves the draft as it is.
        }
    }
}
