using System.Diagnostics;
using System.Text;
using System.Text.Json;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Drawing.Report;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid.Step;
using BracketGen.Profiles;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Web.Messages;
using BracketGen.Words.Page;
using BracketGen.Words.Profiles;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Routes;

/// <summary>Answers about the job that a request carries: its bracket, its files, the job in one file.</summary>
internal sealed class DeskAnswers(Turns turns, KnownValues known)
{
    private const int MaxEdits = 200, MaxQuantity = 999_999;

    private readonly DeskOutputs _outputs = new();

    // The report is asked for after the answer on the page: what was tried whole last is kept.
    private readonly LastAnswer<(JobDesk Desk, string Bracket), BracketAnswer> _tried = new((one, other) => one.Bracket == other.Bracket && JobDesk.IsSame(one.Desk, other.Desk));

    // After the quick answer the page asks for the parts that it does not show, and for remedies.
    private readonly LastAnswer<JobDesk, DeskAnswer> _quick = new(JobDesk.IsSame);

    /// <summary>The job after the edits, and what the solver says of it.</summary>
    public async Task Work(HttpContext context, WorkMessage message)
    {
        if (DeskOf(message) is not { } desk || message.Edits.Length > MaxEdits || message.Edits.Contains(null!) || message.Accepted.Contains(null!)
            || message.Wanted.Contains(null!) || message.Has?.Contains(null!) == true || message.Has?.Length > LeanReply.MaxMarks)
        {
            await RefuseJob(context);
            return;
        }

        (desk, var refused) = Edited(desk, message.Edits);
        var depth = message.Depth switch { "remedies" => Depth.Remedies, "strength" => Depth.Strength, _ => Depth.Quick };
        var watch = Stopwatch.StartNew();
        Action<Utf8JsonWriter> answer;
        if (message.Bracket.Length > 0)
        {
            var tried = await turns.Take(() => Tried(desk, message.Bracket, depth), context.RequestAborted);
            answer = to => Reply.Answer(to, tried);
        }
        else
        {
            var solved = await turns.Take(() => Solved(desk, depth), context.RequestAborted);
            answer = to => Reply.Answer(to, solved, message.Accepted, message.Wanted);
        }

        var solving = watch.Elapsed;
        var reply = Reply.Json(to =>
        {
            Reply.Desk(to, desk, known);
            to.WriteStartArray("refused");
            refused.ForEach(to.WriteStringValue);
            to.WriteEndArray();
            to.WriteNumber("solveTime", Math.Round(solving.TotalMilliseconds, 1));
            answer(to);
        });
        await Exchange.Send(context, message.Has is { } has ? LeanReply.Of(reply, has.ToHashSet()) : reply, "application/json");
    }

    /// <summary>One of the job's files.</summary>
    public async Task Output(HttpContext context, OutputMessage message)
    {
        if (DeskOf(message) is not { } desk || message.Accepted.Contains(null!) || message.Quantity is < 1 or > MaxQuantity)
        {
            await RefuseJob(context);
            return;
        }

        var asked = new OutputRequest(
            desk, [.. message.Accepted],
            new(message.Dxf == "r12" ? DxfVersion.R12 : DxfVersion.R2000, PageFormat.Named(message.Paper), null)
            {
                TextQuantity = message.Quantity,
                Step = message.Step == "ap242" ? StepSchema.Ap242 : StepSchema.Ap214,
            },
            message.Kerf);
        var result = await turns.Take(() => _outputs.Of(asked), context.RequestAborted);
        if (message.Name == AllFiles.Name && result.Files is { } all)
        {
            context.Response.Headers.ContentDisposition = $"attachment; filename=\"{AllFiles.Name}\"";
            await Exchange.Send(context, AllFiles.Of(all), "application/octet-stream");
            return;
        }

        if (result.Files?.Written.FirstOrDefault(f => f.Name == message.Name) is { Name: { } name, Bytes: { } bytes })
        {
            context.Response.Headers.ContentDisposition = $"attachment; filename=\"{name}\"";
            await Exchange.Send(context, bytes, "application/octet-stream");
            return;
        }

        await Exchange.Refuse(context, StatusCodes.Status409Conflict, WhyNot(result, message.Name));
    }

    /// <summary>The report of a bracket that is there already: everything that the command says, and its pictures.</summary>
    public async Task Report(HttpContext context, ReportMessage message)
    {
        if (DeskOf(message) is not { } desk)
        {
            await RefuseJob(context);
            return;
        }

        var answer = await turns.Take(() => Tried(desk, message.Bracket, Depth.Strength), context.RequestAborted);
        await (answer.Tried is not { } tried ? Exchange.Refuse(context, StatusCodes.Status409Conflict, string.Join('\n', answer.Errors.Select(ProfileErrorText.Format)))
            : JobReport.Write(tried) is not { } bytes ? Exchange.Refuse(context, StatusCodes.Status409Conflict, BracketWords.NoReport)
            : Exchange.Send(context, bytes, "application/octet-stream"));
    }

    /// <summary>The job and its profiles in one file.</summary>
    public async Task Pack(HttpContext context, DeskMessage message)
    {
        if (DeskOf(message) is not { } desk)
        {
            await RefuseJob(context);
            return;
        }

        var text = new PackedJob(desk.Job, [.. desk.Files.Where(f => WorkFolder.IsAllowed(f.Key)).Select(f => (f.Key, f.Value))]).Write();
        await Exchange.Send(context, Encoding.UTF8.GetBytes(text), "application/octet-stream");
    }

    private DeskAnswer Solved(JobDesk desk, Depth depth)
    {
        if (depth == Depth.Strength)
        {
            return DeskAnswer.Of(desk, depth);
        }

        var quick = _quick.To(desk, () => DeskAnswer.Of(desk, Depth.Quick));
        return depth == Depth.Quick ? quick : quick.WithRemedies();
    }

    private BracketAnswer Tried(JobDesk desk, string bracket, Depth depth) => depth == Depth.Strength
        ? _tried.To((desk, bracket), () => BracketAnswer.Of(desk, bracket, depth)) : BracketAnswer.Of(desk, bracket, depth);

    private static JobDesk? DeskOf(DeskMessage message) => JobDesk.Of(message.Job, message.Files);

    private static Task RefuseJob(HttpContext context) =>
        Exchange.Refuse(context, StatusCodes.Status400BadRequest, ServerWords.BadJob(JobDesk.MaxFiles));

    private static (JobDesk Desk, List<string> Refused) Edited(JobDesk desk, EditMessage[] edits)
    {
        var refused = new List<string>();
        foreach (var edit in edits)
        {
            if (desk.With(edit.File, edit.Key, edit.Value) is { } edited)
            {
                desk = edited;
            }
            else
            {
                refused.Add(edit.Key);
            }
        }

        return (desk, refused);
    }

    private static string WhyNot(OutputResult result, string name) =>
        result.Errors.Count > 0 ? string.Join('\n', result.Errors.Select(ProfileErrorText.Format))
        : result.Problem ?? (result.Files?.Withheld.Contains(name) == true ? ServerWords.Withheld(name) : ServerWords.NoOutput);
}
