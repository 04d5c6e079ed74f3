using System.Text.Json;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Line.Running;
using BracketGen.Profiles;
using BracketGen.Profiles.Family;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Web.Messages;
using BracketGen.Words.Page;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Routes;

/// <summary>Answers about product lines of the folder: what is made, a run, a variant as a job.</summary>
internal sealed class LineAnswers(WorkFolder folder, LineRuns runs, KnownValues known)
{
    // Where the command writes them when it is run in the folder.
    private const string Into = "output";

    // The page stays quick while a line is made.
    private static readonly int Threads = Math.Max(1, Environment.ProcessorCount - 1);

    /// <summary>Vehicles and bodies, each variant with its state.</summary>
    public Task Matrix(HttpContext context, LineMessage message) => With(context, message, family =>
    {
        var matrix = LineMatrix.Of(family, PlaceOf(message));
        return Exchange.SendJson(context, to =>
        {
            Reply.Errors(to, []);
            to.WriteString("name", family.Family.Name);
            to.WriteString("outcome", matrix.Summary);
            to.WriteString("place", NameOf(message));
            Reply.Texts(to, "columns", matrix.Columns);
            to.WriteStartArray("rows");
            foreach (var (name, cells) in matrix.Rows)
            {
                to.WriteStartObject();
                to.WriteString("name", name);
                to.WriteStartArray("cells");
                foreach (var cell in cells)
                {
                    Write(to, cell);
                }

                to.WriteEndArray();
                to.WriteEndObject();
            }

            to.WriteEndArray();
            Write(to, runs.StateOf(message.Path));
        });
    });

    /// <summary>Begins a run.</summary>
    public Task Run(HttpContext context, LineMessage message) => With(context, message, family =>
    {
        if (FamilyCombinations.Of(family).Offered.Select(c => $"{NameOf(message)}/{LinePlace.CombinationsFolder}/{c.Key}").FirstOrDefault(p => !folder.IsWithin(p)) is { } link)
        {
            return Exchange.Refuse(context, StatusCodes.Status409Conflict, LinePageWords.BadPlace(link));
        }

        LineWishes wishes = new(Threads) { Own = message.Own, Strength = message.Strength, Drawings = message.Drawings, Anew = message.Anew };
        return runs.Start(message.Path, family, wishes, PlaceOf(message))
            ? State(context, message) : Exchange.Refuse(context, StatusCodes.Status409Conflict, LinePageWords.OtherRun);
    });

    /// <summary>How far a run is.</summary>
    public Task State(HttpContext context, LineMessage message) => Exchange.SendJson(context, to => Write(to, runs.StateOf(message.Path)));

    /// <summary>Stops a run between two variants.</summary>
    public Task Stop(HttpContext context, LineMessage message)
    {
        runs.Stop(message.Path);
        return State(context, message);
    }

    /// <summary>A variant as a job of its own.</summary>
    public Task Job(HttpContext context, LineMessage message) => With(context, message, family =>
    {
        var combination = FamilyCombinations.Of(family) is var all
            ? all.Offered.Concat(all.Excluded.Select(e => e.Combination)).FirstOrDefault(c => c.Key == message.Key && c.IsReadable) : null;
        var made = combination is null ? null : RegisterFile.Read(PlaceOf(message).Register, family.Family.Name).Register?.Latest.GetValueOrDefault(combination.Key);
        return combination is not null && LineJob.Of(message.Path, folder.Read(message.Path) ?? "", family, combination, made?.PartNumber ?? "", made?.Revision ?? "", folder.Read) is { } desk
            ? Exchange.SendJson(context, to => Reply.Desk(to, desk, known))
            : Exchange.Refuse(context, StatusCodes.Status409Conflict, LinePageWords.NoVariant);
    });

    private static string NameOf(LineMessage message) => $"{Into}/{Path.GetFileNameWithoutExtension(message.Path)}";

    private LinePlace PlaceOf(LineMessage message) => LinePlace.Of(Path.Combine(folder.Root, message.Path), Path.Combine(folder.Root, Into), null);

    private Task With(HttpContext context, LineMessage message, Func<LoadedFamily, Task> answer)
    {
        if (folder.Read(message.Path) is null || !WorkFolder.IsAllowed(message.Path))
        {
            return Exchange.Refuse(context, StatusCodes.Status404NotFound, ServerWords.NoFile(message.Path));
        }

        var place = NameOf(message);
        var register = Path.ChangeExtension(message.Path, LinePlace.RegisterEnding);
        if (!folder.IsWithin(register))
        {
            return Exchange.Refuse(context, StatusCodes.Status409Conflict, LinePageWords.BadPlace(register));
        }

        if (!new[] { LinePlace.CombinationsFolder, LinePlace.SheetsFolder }.All(f => folder.IsWithin($"{place}/{f}")))
        {
            return Exchange.Refuse(context, StatusCodes.Status409Conflict, LinePageWords.BadPlace(place));
        }

        var read = FamilyReader.Read(message.Path, folder.Source);
        return read.IsRead ? answer(read.Value) : Exchange.SendJson(context, to => Reply.Errors(to, read.Errors));
    }

    private static void Write(Utf8JsonWriter to, LineCell cell)
    {
        to.WriteStartObject();
        to.WriteString("key", cell.Key);
        to.WriteString("title", cell.Title);
        to.WriteString("state", cell.State);
        to.WriteString("word", cell.Word);
        Reply.Texts(to, "why", cell.Why);
        to.WriteBoolean("isOpen", cell.IsOpen);
        to.WriteEndObject();
    }

    // Paths as they are from the folder.
    private void Write(Utf8JsonWriter to, LineRunState? run)
    {
        if (run is null)
        {
            to.WriteNull("run");
            return;
        }

        string Short(string text) => text.Replace(folder.Root + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);
        to.WriteStartObject("run");
        to.WriteBoolean("isRunning", run.IsRunning);
        to.WriteString("progress", run.Progress);
        to.WriteNumber("done", run.Done);
        to.WriteNumber("of", run.Of);
        to.WriteString("output", Short(run.Output));
        to.WriteString("errors", Short(run.Errors));
        to.WriteEndObject();
    }
}
