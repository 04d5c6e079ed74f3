using System.Diagnostics;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using BracketGen.Design.Inputs;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Measuring;
using BracketGen.Drawing.Sheet;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Interview;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Web.Measuring;
using BracketGen.Web.Messages;
using BracketGen.Words.Profiles;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Serving;

/// <summary>What each address of the page's own requests does. Knows no desk from one request to the next: the page holds the texts.</summary>
internal sealed class Answering(WorkFolder folder)
{
    private readonly DeskOutputs _outputs = new();

    // Two jobs at once are as many as a small machine does well; the rest wait.
    private readonly SemaphoreSlim _turns = new(2);

    /// <summary>Answers a request that is allowed to ask; false where there is no such address.</summary>
    public async Task<bool> Answer(HttpContext context)
    {
        var request = context.Request;
        if (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method))
        {
            return await Get(context);
        }

        if (!HttpMethods.IsPost(request.Method))
        {
            return false;
        }

        // A form of another page cannot send this type without asking first.
        if (request.ContentType?.Split(';')[0].Trim() != "application/json")
        {
            await Tell(context, StatusCodes.Status415UnsupportedMediaType, "Requests carry JSON.");
            return true;
        }

        switch (request.Path.Value)
        {
            case "/work":
                await With(context, MessageContext.Default.WorkMessage, Work);
                return true;
            case "/output":
                await With(context, MessageContext.Default.OutputMessage, Output);
                return true;
            case "/open":
                await With(context, MessageContext.Default.PathMessage, Open);
                return true;
            case "/read":
                await With(context, MessageContext.Default.PathMessage, Read);
                return true;
            case "/unpack":
                await With(context, MessageContext.Default.TextMessage, Unpack);
                return true;
            case "/pack":
                await With(context, MessageContext.Default.DeskMessage, Pack);
                return true;
            case "/questions":
                await With(context, MessageContext.Default.TextMessage, Questions);
                return true;
            case "/save":
                await With(context, MessageContext.Default.SaveMessage, Save);
                return true;
            default:
                return false;
        }
    }

    private async Task<bool> Get(HttpContext context)
    {
        var path = context.Request.Path.Value ?? "";
        if (PageAssets.Find(path) is var (bytes, type))
        {
            await Send(context, bytes, type);
            return true;
        }

        switch (path)
        {
            case "/shelf":
                await SendJson(context, to =>
                {
                    to.WriteString("folder", Path.GetFileName(folder.Root));
                    to.WritePropertyName("profiles");
                    JsonSerializer.Serialize(to, folder.List(), MessageContext.Default.IReadOnlyListShelfEntry);
                    to.WritePropertyName("examples");
                    JsonSerializer.Serialize(to, Examples.List(), MessageContext.Default.IReadOnlyListShelfEntry);
                });
                return true;
            case "/forms":
                await SendJson(context, to =>
                {
                    foreach (var (file, text) in ProfileSchema.InFull)
                    {
                        to.WritePropertyName(file.Split('.')[0]);
                        to.WriteRawValue(text);
                    }
                });
                return true;
            default:
                return false;
        }
    }

    private async Task Work(HttpContext context, WorkMessage message)
    {
        if (JobDesk.Of(message.Job, message.Files) is not { } desk || message.Edits.Length > 200 || message.Edits.Contains(null!) || message.Accepted.Contains(null!))
        {
            await Tell(context, StatusCodes.Status400BadRequest, BadDesk);
            return;
        }

        var refused = new List<EditMessage>();
        foreach (var edit in message.Edits)
        {
            if (desk.With(edit.File, edit.Key, edit.Value) is { } edited)
            {
                desk = edited;
            }
            else
            {
                refused.Add(edit);
            }
        }

        var depth = message.Depth switch { "offers" => Depth.Offers, "strength" => Depth.Strength, _ => Depth.Quick };
        var watch = Stopwatch.StartNew();
        var answer = await InTurn(() => DeskAnswer.Of(desk, message.Choice, depth), context.RequestAborted);
        var engine = watch.Elapsed.TotalMilliseconds;
        await SendJson(context, to =>
        {
            Reply.Desk(to, desk);
            to.WriteStartArray("refused");
            refused.ForEach(edit => to.WriteStringValue(edit.Key));
            to.WriteEndArray();
            to.WriteNumber("engine", Math.Round(engine, 1));
            Reply.Answer(to, answer, message.Accepted);
        });
    }

    private async Task Output(HttpContext context, OutputMessage message)
    {
        if (JobDesk.Of(message.Job, message.Files) is not { } desk || message.Accepted.Contains(null!))
        {
            await Tell(context, StatusCodes.Status400BadRequest, BadDesk);
            return;
        }

        var asked = new OutputRequest(
            desk, message.Choice, [.. message.Accepted], message.Dxf == "r12" ? DxfVersion.R12 : DxfVersion.R2000, PageFormat.Named(message.Paper), message.Kerf);
        var result = await InTurn(() => _outputs.Of(asked), context.RequestAborted);
        if (result.Files?.Written.FirstOrDefault(f => f.Name == message.Name) is { Name: { } name, Bytes: { } bytes })
        {
            context.Response.Headers.ContentDisposition = $"attachment; filename=\"{name}\"";
            await Send(context, bytes, "application/octet-stream");
            return;
        }

        await Tell(
            context, StatusCodes.Status409Conflict,
            result.Errors.Count > 0 ? string.Join('\n', result.Errors.Select(ProfileErrorText.Format))
            : result.Problem ?? (result.Files?.Withheld.Contains(message.Name) == true
                ? $"{message.Name} is withheld: a safety check failed, or there is no bracket."
                : "There is no such file."));
    }

    private async Task Open(HttpContext context, PathMessage message)
    {
        var read = ReaderFor(message);
        if (read(message.Path) is { } text && Profiles.Editing.ProfileValues.Summary(text) is ("packed job", _))
        {
            await Unpacked(context, message.Path, text);
            return;
        }

        if (JobDesk.Open(message.Path, read) is { } desk)
        {
            await SendJson(context, to => Reply.Desk(to, desk));
            return;
        }

        await Tell(context, StatusCodes.Status404NotFound, $"{message.Path}: no such file in the working folder.");
    }

    private async Task Read(HttpContext context, PathMessage message)
    {
        if (ReaderFor(message)(message.Path) is { } text)
        {
            await SendJson(context, to => to.WriteString("text", text));
            return;
        }

        await Tell(context, StatusCodes.Status404NotFound, $"{message.Path}: no such file in the working folder.");
    }

    private Func<string, string?> ReaderFor(PathMessage message) => message.Example ? Examples.Read : folder.Read;

    private Task Unpack(HttpContext context, TextMessage message) => Unpacked(context, "packed.toml", message.Text);

    private static async Task Unpacked(HttpContext context, string path, string text)
    {
        var packed = PackedJob.Read(path, MemoryFileSource.Empty.With(path, text));
        if (packed.IsRead && JobDesk.Of(packed.Value.Job, packed.Value.Files.ToDictionary(f => f.Path, f => f.Text)) is { } desk)
        {
            await SendJson(context, to => Reply.Desk(to, desk));
            return;
        }

        await Tell(
            context, StatusCodes.Status409Conflict,
            packed.IsRead ? "The packed job holds files that are no profiles." : string.Join('\n', packed.Errors.Select(ProfileErrorText.Format)));
    }

    private async Task Pack(HttpContext context, DeskMessage message)
    {
        if (JobDesk.Of(message.Job, message.Files) is not { } desk)
        {
            await Tell(context, StatusCodes.Status400BadRequest, BadDesk);
            return;
        }

        var text = new PackedJob(desk.Job, [.. desk.Files.Select(f => (f.Key, f.Value))]).Write();
        await Send(context, Encoding.UTF8.GetBytes(text), "application/octet-stream");
    }

    private async Task Questions(HttpContext context, TextMessage message)
    {
        if (message.Kind is not ("vehicle" or "throttle body"))
        {
            await Tell(context, StatusCodes.Status400BadRequest, "Questions are asked of a vehicle or a throttle body.");
            return;
        }

        var steps = MeasuringPath.Of(message.Kind, message.Text);
        await SendJson(context, to =>
        {
            to.WritePropertyName("steps");
            JsonSerializer.Serialize(to, steps, MessageContext.Default.IReadOnlyListMeasuringStep);
            to.WriteStartArray("sketches");
            foreach (var svg in MeasuringPath.Sketches(message.Kind))
            {
                to.WriteStringValue(svg);
            }

            to.WriteEndArray();
        });
    }

    private async Task Save(HttpContext context, SaveMessage message)
    {
        try
        {
            if (message.Files.Length is 0 or > JobDesk.MostFiles || message.Files.Any(f => f is null || f.Text.Length > WorkFolder.MostBytes))
            {
                await Tell(context, StatusCodes.Status400BadRequest, BadDesk);
                return;
            }

            var changed = folder.Save(message.Files, message.Replace);
            await SendJson(context, to =>
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
            await Tell(context, StatusCodes.Status409Conflict, $"The files could not be written: {problem.Message}");
        }
    }

    private const string BadDesk = "A job has one to 16 profiles, each with a path within the folder that ends in .toml, and at most 1 MiB long.";

    private async Task<T> InTurn<T>(Func<T> work, CancellationToken cancelled)
    {
        await _turns.WaitAsync(cancelled);
        try
        {
            return await Task.Run(work, cancelled);
        }
        finally
        {
            _turns.Release();
        }
    }

    private static async Task With<T>(HttpContext context, JsonTypeInfo<T> type, Func<HttpContext, T, Task> handle)
        where T : class
    {
        T? message;
        try
        {
            message = await JsonSerializer.DeserializeAsync(context.Request.Body, type, context.RequestAborted);
        }
        catch (JsonException)
        {
            message = null;
        }

        if (message is null)
        {
            await Tell(context, StatusCodes.Status400BadRequest, "The request is not as the page sends it.");
            return;
        }

        await handle(context, message);
    }

    private static Task SendJson(HttpContext context, Action<Utf8JsonWriter> write) => Send(context, Reply.Json(write), "application/json");

    private static Task Send(HttpContext context, byte[] bytes, string type)
    {
        context.Response.ContentType = type;
        context.Response.ContentLength = bytes.Length;
        return HttpMethods.IsHead(context.Request.Method) ? Task.CompletedTask : context.Response.Body.WriteAsync(bytes).AsTask();
    }

    /// <summary>Tells in words why there is nothing else.</summary>
    public static Task Tell(HttpContext context, int status, string text)
    {
        context.Response.StatusCode = status;
        return Send(context, Encoding.UTF8.GetBytes(text + "\n"), "text/plain; charset=utf-8");
    }
}
