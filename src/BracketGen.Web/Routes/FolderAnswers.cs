using System.Text.Json;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Web.Messages;
using BracketGen.Words.Page;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Routes;

/// <summary>Answers about the folder's profiles and the examples: list, read, open, write.</summary>
internal sealed class FolderAnswers(WorkFolder folder, KnownValues known)
{
    /// <summary>Every profile of the folder and of the examples.</summary>
    public Task Shelf(HttpContext context) => Exchange.SendJson(context, to =>
    {
        to.WriteString("folder", Path.GetFileName(folder.Root));
        to.WritePropertyName("profiles");
        JsonSerializer.Serialize(to, folder.List(), MessageContext.Default.IReadOnlyListShelfEntry);
        to.WritePropertyName("examples");
        JsonSerializer.Serialize(to, Examples.List(), MessageContext.Default.IReadOnlyListShelfEntry);
        to.WritePropertyName("drawings");
        JsonSerializer.Serialize(to, folder.Drawings(), MessageContext.Default.IReadOnlyListString);
        to.WritePropertyName("unsaved");
        JsonSerializer.Serialize(to, folder.Drafts(), MessageContext.Default.IReadOnlyListString);
    });

    /// <summary>A job with the profiles it names.</summary>
    public async Task Open(HttpContext context, PathMessage message)
    {
        var read = ReaderFor(message);
        if (read(message.Path) is { } text && ProfileValues.Summary(text) is ("packed job", _))
        {
            await Given(context, HandedFiles.Of(new Dictionary<string, string> { [message.Path] = text }, read));
        }
        else
        {
            await Opened(context, message, JobDesk.Open(message.Path, read), message.Example ? null : Draft(message.Path));
        }
    }

    // The job as the folder has it, and what was typed and not saved; where the folder does not have it, that alone.
    private Task Opened(HttpContext context, PathMessage message, JobDesk? there, JobDesk? draft) => (there ?? draft) is not { } desk
        ? NoFile(context, message)
        : Exchange.SendJson(context, to =>
        {
            Reply.Desk(to, desk, known);
            to.WriteBoolean("isSaved", there is not null);
            to.WriteStartObject("unsaved");
            if (there is not null && draft is not null)
            {
                foreach (var (path, text) in draft.Files.Where(f => !there.Files.TryGetValue(f.Key, out var saved) || saved != f.Value))
                {
                    to.WriteString(path, text);
                }
            }

            to.WriteEndObject();
        });

    private JobDesk? Draft(string job)
    {
        var path = job + WorkFolder.DraftEnding;
        return folder.Read(path) is { } text && PackedJob.Read(path, MemoryFileSource.Empty.With(path, text)) is { IsRead: true } packed && packed.Value.Job == job
            ? JobDesk.Of(job, packed.Value.Files.ToDictionary(f => f.Path, f => f.Text)) : null;
    }

    /// <summary>Keeps what was typed and not saved; a message without files takes it away.</summary>
    public async Task Keep(HttpContext context, DeskMessage message)
    {
        var isEmpty = message.Files.Count == 0;
        if (!WorkFolder.IsAllowed(message.Job) || (!isEmpty && JobDesk.Of(message.Job, message.Files) is null))
        {
            await Exchange.Refuse(context, StatusCodes.Status400BadRequest, ServerWords.BadJob(JobDesk.MaxFiles));
            return;
        }

        try
        {
            folder.Keep(message.Job, isEmpty ? null : new PackedJob(message.Job, [.. message.Files.Select(f => (f.Key, f.Value))]).Write());
            await Exchange.SendJson(context, _ => { });
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            await Exchange.Refuse(context, StatusCodes.Status409Conflict, ServerWords.NotWritten(problem.Message));
        }
    }

    /// <summary>A bracket that is there already, with the drawing it names.</summary>
    public Task Bracket(HttpContext context, PathMessage message) => JobDesk.FilesOf(message.Path, ReaderFor(message)) is { } files
        ? Exchange.SendJson(context, to => Reply.Files(to, files, known))
        : NoFile(context, message);

    /// <summary>The text of a profile, or of a drawing.</summary>
    public Task Read(HttpContext context, PathMessage message) => ReaderFor(message)(message.Path) is { } text
        ? Exchange.SendJson(context, to => to.WriteString("text", text))
        : NoFile(context, message);

    /// <summary>The job in files that were picked or dropped.</summary>
    public Task Take(HttpContext context, FilesMessage message)
    {
        if (message.Files.Count is 0 or > JobDesk.MaxFiles || message.Files.Any(f => f.Value is null || f.Value.Length > WorkFolder.MostBytes))
        {
            return Exchange.Refuse(context, StatusCodes.Status400BadRequest, ServerWords.BadJob(JobDesk.MaxFiles));
        }

        return Given(context, HandedFiles.Of(message.Files, folder.Read));
    }

    private Task Given(HttpContext context, (JobDesk? Desk, string Problem) handed) => handed.Desk is { } desk
        ? Exchange.SendJson(context, to => Reply.Desk(to, desk, known))
        : Exchange.Refuse(context, StatusCodes.Status409Conflict, handed.Problem);

    /// <summary>Writes profiles, and names those that hold something else than the page thought.</summary>
    public async Task Save(HttpContext context, SaveMessage message)
    {
        if (message.Files.Length is 0 or > JobDesk.MaxFiles || message.Files.Any(f => f is null || f.Text.Length > WorkFolder.MostBytes))
        {
            await Exchange.Refuse(context, StatusCodes.Status400BadRequest, ServerWords.BadJob(JobDesk.MaxFiles));
            return;
        }

        try
        {
            var changed = folder.Save(message.Files, message.Replace);
            await Exchange.SendJson(context, to =>
            {
                to.WriteStartArray("changed");
                foreach (var path in changed)
                {
                    to.WriteStringValue(path);
                }

                to.WriteEndArray();
            });
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            await Exchange.Refuse(context, StatusCodes.Status409Conflict, ServerWords.NotWritten(problem.Message));
        }
    }

    private Func<string, string?> ReaderFor(PathMessage message) => message.Example ? Examples.Read : folder.Read;

    private static Task NoFile(HttpContext context, PathMessage message) =>
        Exchange.Refuse(context, StatusCodes.Status404NotFound, ServerWords.NoFile(message.Path));
}
