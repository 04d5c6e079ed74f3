using BracketGen.Line.Lists;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Web.Messages;
using BracketGen.Words.Page;
using BracketGen.Words.Profiles;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Routes;

/// <summary>Answers about the kit of the job that a request carries: the lists it names, what the command says of them, its files.</summary>
internal sealed class KitAnswers(WorkFolder folder, Turns turns)
{
    // The files are asked for after the answer on the page: what was solved last is kept.
    private readonly LastAnswer<(JobDesk Desk, bool WithStrength), DeskKit> _last = new((one, other) => one.WithStrength == other.WithStrength && JobDesk.IsSame(one.Desk, other.Desk));

    /// <summary>The lists of parts that a job names, as the folder has them; of a job that is not saved also those of the examples.</summary>
    public Task Parts(HttpContext context, PartsMessage message)
    {
        if (!WorkFolder.IsAllowed(message.Job))
        {
            return Refuse(context);
        }

        Dictionary<string, bool> isExample = [];
        var files = PartsFiles.Of(message.Job, message.Text, path =>
        {
            var there = folder.Read(path);
            isExample[path] = there is null;
            return there ?? (message.Example ? Examples.Read(path) : null);
        });
        return Exchange.SendJson(context, to =>
        {
            to.WriteStartObject("files");
            foreach (var (path, text) in files)
            {
                to.WriteString(path, text);
            }

            to.WriteEndObject();
            to.WriteStartArray("examples");
            foreach (var path in files.Keys.Where(p => isExample[p]))
            {
                to.WriteStringValue(path);
            }

            to.WriteEndArray();
        });
    }

    /// <summary>What the command says.</summary>
    public async Task Say(HttpContext context, KitMessage message)
    {
        if (await Solved(context, message) is { } answer)
        {
            await Exchange.SendJson(context, to => KitReply.Write(to, answer));
        }
    }

    /// <summary>One of its files.</summary>
    public async Task File(HttpContext context, KitMessage message)
    {
        if (await Solved(context, message) is not { } answer)
        {
            return;
        }

        if (answer.Study is not { } study)
        {
            await Exchange.Refuse(context, StatusCodes.Status409Conflict, string.Join('\n', answer.Errors.Select(ProfileErrorText.Format)));
        }
        else if (KitFiles.Of(study).FirstOrDefault(f => f.Name == message.Name) is { Name: { } name, Bytes: { } bytes })
        {
            context.Response.Headers.ContentDisposition = $"attachment; filename=\"{name}\"";
            await Exchange.Send(context, bytes, "application/octet-stream");
        }
        else
        {
            await Exchange.Refuse(context, StatusCodes.Status409Conflict, ServerWords.NoOutput);
        }
    }

    private async Task<DeskKit?> Solved(HttpContext context, KitMessage message)
    {
        if (JobDesk.Of(message.Job, message.Files) is not { } job || !PartsFiles.AreAllowed(message.Parts))
        {
            await Refuse(context);
            return null;
        }

        // What the page changed stands before what the folder has.
        var desk = job with { Files = job.Files.AddRange(message.Parts.Where(p => !job.Files.ContainsKey(p.Key))) };
        return await turns.Take(() => _last.To((desk, message.Strength), () => DeskKit.Of(desk, message.Strength)), context.RequestAborted);
    }

    private static Task Refuse(HttpContext context) =>
        Exchange.Refuse(context, StatusCodes.Status400BadRequest, ServerWords.BadKit(JobDesk.MaxFiles, PartsFiles.MaxFiles));
}
