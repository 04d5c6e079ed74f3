using System.Text.Json.Serialization.Metadata;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Web.Memory;
using BracketGen.Web.Messages;
using BracketGen.Web.Routes;
using BracketGen.Words.Page;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Serving;

/// <summary>Which answer belongs to which address. No desk is kept from one request to the next: the page holds the texts.</summary>
internal sealed class Answering : IDisposable
{
    private readonly Dictionary<string, Func<HttpContext, Task>> _gets, _posts;
    private readonly PageMemory _memory;
    private readonly LineRuns _runs = new();

    public Answering(WorkFolder folder, PageMemory memory)
    {
        var turns = new Turns();
        var known = new KnownValues();
        var desk = new DeskAnswers(turns, known);
        var line = new LineAnswers(folder, _runs, known);
        var floor = new ShopFloorAnswers(turns);
        var kit = new KitAnswers(folder, turns);
        var profiles = new FolderAnswers(folder, known);
        var remembering = new MemoryAnswers(memory);
        var messages = MessageContext.Default;
        _memory = memory;
        _gets = new()
        {
            ["/shelf"] = profiles.Shelf,
            ["/forms"] = FormAnswers.Schemas,
            ["/sketches"] = FormAnswers.Sketches,
            ["/photo-target.pdf"] = PhotoAnswers.Target,
        };
        _posts = new()
        {
            ["/work"] = Taking(messages.WorkMessage, desk.Work),
            ["/output"] = Taking(messages.OutputMessage, desk.Output),
            ["/report"] = Taking(messages.ReportMessage, desk.Report),
            ["/bracket"] = Taking(messages.PathMessage, profiles.Bracket),
            ["/parts"] = Taking(messages.PartsMessage, kit.Parts),
            ["/kit"] = Taking(messages.KitMessage, kit.Say),
            ["/kit-file"] = Taking(messages.KitMessage, kit.File),
            ["/fitted"] = Taking(messages.FittedMessage, floor.Fitted),
            ["/test-bend"] = Taking(messages.TestBendMessage, ShopFloorAnswers.TestBend),
            ["/line"] = Taking(messages.LineMessage, line.Matrix),
            ["/line-run"] = Taking(messages.LineMessage, line.Run),
            ["/line-state"] = Taking(messages.LineMessage, line.State),
            ["/line-stop"] = Taking(messages.LineMessage, line.Stop),
            ["/line-job"] = Taking(messages.LineMessage, line.Job),
            ["/pack"] = Taking(messages.DeskMessage, desk.Pack),
            ["/open"] = Taking(messages.PathMessage, profiles.Open),
            ["/read"] = Taking(messages.PathMessage, profiles.Read),
            ["/take"] = Taking(messages.FilesMessage, profiles.Take),
            ["/keep"] = Taking(messages.DeskMessage, profiles.Keep),
            ["/save"] = Taking(messages.SaveMessage, profiles.Save),
            ["/worksheet"] = Taking(messages.PaperMessage, FormAnswers.Worksheet),
            ["/questions"] = Taking(messages.TextMessage, FormAnswers.Questions),
            ["/photo"] = Taking(messages.PhotoMessage, PhotoAnswers.Measure),
            ["/remember"] = Taking(RememberedContext.Default.Remembered, remembering.Remember),
        };
    }

    /// <summary>Stops a run of a product line: what is begun is finished.</summary>
    public void Dispose() => _runs.Dispose();

    /// <summary>Answers a request that is allowed to ask; false if there is no such address.</summary>
    public async Task<bool> Answer(HttpContext context)
    {
        var request = context.Request;
        var path = request.Path.Value ?? "";
        if (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method))
        {
            return await File(context, path) || await From(_gets, context, path);
        }

        if (!HttpMethods.IsPost(request.Method))
        {
            return false;
        }

        // A form of another page cannot send this type without asking first.
        if (!IsJson(request))
        {
            await Exchange.Refuse(context, StatusCodes.Status415UnsupportedMediaType, ServerWords.NotJson);
            return true;
        }

        return await From(_posts, context, path);
    }

    /// <summary>Whether a request says that it carries JSON.</summary>
    public static bool IsJson(HttpRequest request) => request.ContentType?.Split(';')[0].Trim() == "application/json";

    private async Task<bool> File(HttpContext context, string path)
    {
        if (path == PageDocument.Path)
        {
            await Exchange.Send(context, PageDocument.With(_memory.Read()), "text/html; charset=utf-8");
            return true;
        }

        if (PageAssets.Find(path) is var (bytes, type))
        {
            await Exchange.Send(context, bytes, type);
            return true;
        }

        return false;
    }

    private static async Task<bool> From(Dictionary<string, Func<HttpContext, Task>> answers, HttpContext context, string path)
    {
        if (!answers.TryGetValue(path, out var answer))
        {
            return false;
        }

        await answer(context);
        return true;
    }

    private static Func<HttpContext, Task> Taking<T>(JsonTypeInfo<T> type, Func<HttpContext, T, Task> handle)
        where T : class => context => Exchange.Take(context, type, handle);
}
