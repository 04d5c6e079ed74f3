using System.IO.Compression;
using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Drawing.Measuring;
using BracketGen.Drawing.Solid.Step;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Web.Messages;
using BracketGen.Words.Profiles;
using BracketGen.Words.Report;
using BracketGen.Words.Results;

namespace BracketGen.Web.Tests;

/// <summary>The page gets the answers of the solver and of the command line.</summary>
public class AnswerTests
{
    private const string Job = "jobs/plover-alder-58.toml";

    [Fact]
    public void A_change_turns_the_verdict()
    {
        var desk = JobDesk.Open(Job, Examples.Read)!;
        var good = DeskAnswer.Of(desk, Depth.Quick);
        Assert.Equal(VerdictKind.NotProven, good.Solution!.Verdict.Kind);
        var short1 = desk.With("vehicles/plover.toml", "pedal.available_pull.value", JsonDocument.Parse("40").RootElement)!;
        var bad = DeskAnswer.Of(short1, Depth.Quick);
        Assert.Equal(VerdictKind.Fails, bad.Solution!.Verdict.Kind);
        Assert.Equal(Designer.Solve(short1.Read().Value!).Verdict.Kind, bad.Solution.Verdict.Kind);
        Assert.False(bad.Solution.Travel.ReachesWideOpen);
    }

    // Strength is unknown until somebody asks for it: until then nothing passes.
    [Fact]
    public void Before_strength_is_calculated_the_page_never_says_passes()
    {
        foreach (var (depth, state) in new[] { (Depth.Quick, "not-proven"), (Depth.Remedies, "not-proven"), (Depth.Strength, "passes") })
        {
            Assert.Equal(state, VerdictOf(JobDesk.Open(Job, Examples.Read)!, depth));
        }

        var broken = JobDesk.Open(Job, Examples.Read)!.With("vehicles/plover.toml", "pedal.available_pull.value", JsonDocument.Parse("40").RootElement)!;
        Assert.Equal("fails", VerdictOf(broken, Depth.Quick));
        var danger = JobDesk.Open(Job, Examples.Read)!.With("vehicles/plover.toml", "cable.closing_drag.value", JsonDocument.Parse("2.4").RootElement)!;
        Assert.Equal("unsafe", VerdictOf(danger, Depth.Quick));

        static string VerdictOf(JobDesk desk, Depth depth)
        {
            var reply = JsonNode.Parse(Reply.Json(to => Reply.Answer(to, DeskAnswer.Of(desk, depth), [], [])))!["answer"]!["verdict"]!;
            Assert.EndsWith(".", (string)reply["sentence"]!, StringComparison.Ordinal);
            return (string)reply["state"]!;
        }
    }

    [Fact]
    public async Task Mistakes_have_the_words_of_the_command_line()
    {
        await using var served = await Served.Start();
        var place = Path.Combine(served.Folder, "vehicles", "plover.toml");
        File.WriteAllText(place, File.ReadAllText(place).Replace("wire_diameter = 1.5", "wire_diameter = \"12 lbf\"", StringComparison.Ordinal));
        var desk = JobDesk.Open(Job, new WorkFolder(served.Folder).Read)!;
        var (_, text) = await served.Post("/work", Work(desk));
        var told = JsonNode.Parse(text)!["errors"]!.AsArray().Select(e => (string)e!["text"]!).ToList();

        // The command line reads from its own folder; the paths are the same where that is the working folder.
        var files = desk.Files.Aggregate(MemoryFileSource.Empty, (all, f) => all.With(f.Key, f.Value));
        Assert.Equal(ProfileReader.ReadJob(Job, files).Errors.Select(ProfileErrorText.Format), told);
        Assert.Contains("lbf is a unit of force", Assert.Single(told), StringComparison.Ordinal);
        Assert.Null(JsonNode.Parse(text)!["answer"]);
    }

    [Fact]
    public async Task Outputs_are_those_of_make()
    {
        await using var served = await Served.Start();
        var desk = JobDesk.Open(Job, Examples.Read)!;
        var solution = Designer.Solve(desk.Read().Value!, SearchEffort.Whole);
        var made = JobFiles.Of(solution, [], new(DxfVersion.R2000, null, null));
        using var client = new HttpClient();
        foreach (var (name, bytes) in made.Written)
        {
            var message = JsonNode.Parse(Work(desk))!.AsObject();
            message["name"] = name;
            using var content = new StringContent(message.ToJsonString(), System.Text.Encoding.UTF8, "application/json");
            using var answer = await client.PostAsync(served.Server.Address + "output", content);
            Assert.Equal(bytes, await answer.Content.ReadAsByteArrayAsync());
        }

        // All in one: each byte for byte, and the same zip again for the same job.
        using var zipped = new ZipArchive(new MemoryStream(AllFiles.Of(made)));
        Assert.Equal(made.Written.Select(f => f.Name), zipped.Entries.Select(e => e.FullName));
        foreach (var (entry, (_, bytes)) in zipped.Entries.Zip(made.Written))
        {
            using var copy = new MemoryStream();
            using var packed = entry.Open();
            await packed.CopyToAsync(copy);
            Assert.Equal(bytes, copy.ToArray());
        }

        var whole = JsonNode.Parse(Work(desk))!.AsObject();
        whole["name"] = AllFiles.Name;
        using var wanted = new StringContent(whole.ToJsonString(), System.Text.Encoding.UTF8, "application/json");
        using var told = await client.PostAsync(served.Server.Address + "output", wanted);
        Assert.Equal(AllFiles.Of(made), await told.Content.ReadAsByteArrayAsync());

        // With the choices that the page offers as the command does.
        var chosen = JobFiles.Of(solution, [], new(DxfVersion.R12, null, null) { TextQuantity = 12, Step = StepSchema.Ap242 });
        foreach (var name in (string[])["flat-pattern.dxf", "solid.step"])
        {
            var message = JsonNode.Parse(Work(desk))!.AsObject();
            (message["name"], message["dxf"], message["quantity"], message["step"]) = (name, "r12", 12, "ap242");
            using var content = new StringContent(message.ToJsonString(), System.Text.Encoding.UTF8, "application/json");
            using var answer = await client.PostAsync(served.Server.Address + "output", content);
            var bytes = chosen.Written.Single(f => f.Name == name).Bytes;
            Assert.Equal(bytes, await answer.Content.ReadAsByteArrayAsync());
            Assert.NotEqual(made.Written.Single(f => f.Name == name).Bytes, bytes);
            message["quantity"] = 0;
            Assert.Equal(HttpStatusCode.BadRequest, (await served.Post("/output", message.ToJsonString())).Status);
        }
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("A")]
    public async Task The_worksheet_is_that_of_the_command(string paper)
    {
        await using var served = await Served.Start(withExamples: false);
        using var client = new HttpClient();
        using var content = new StringContent($$"""{"paper":"{{paper}}"}""", System.Text.Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(served.Server.Address + "worksheet", content);
        Assert.Equal(WorksheetFile.Write(paper), await answer.Content.ReadAsByteArrayAsync());
    }

    // The job has one bracket that passes with strength; another is chosen, and handed over whatever it comes to.
    [Fact]
    public async Task A_chosen_bracket_is_shown_and_handed_over_as_make_makes_it()
    {
        const string job = "jobs/dunlin-rowan-64.toml";
        await using var served = await Served.Start();
        var best = JobDesk.Open(job, Examples.Read)!;
        var first = Designer.Solve(best.Read().Value!);
        using var value = JsonDocument.Parse(ChosenValue.Of(first.Choices[^1]).ToJsonString());
        var work = JsonNode.Parse(Work(best))!.AsObject();
        work["edits"] = new JsonArray(new JsonObject { ["file"] = job, ["key"] = ChosenValue.Key, ["value"] = ChosenValue.Of(first.Choices[^1]) });
        work["depth"] = "strength";
        var (_, text) = await served.Post("/work", work.ToJsonString());
        var reply = JsonNode.Parse(text)!;
        Assert.Empty(reply["refused"]!.AsArray());
        Assert.Empty(reply["errors"]!.AsArray());
        Assert.True((bool)reply["answer"]!["isChosen"]!);

        // What the page sends next are the texts that came back.
        var desk = best.With(job, ChosenValue.Key, value.RootElement)!;
        Assert.Equal(desk.Files[job], (string)reply["files"]![job]!);
        var solution = Designer.Solve(desk.Read().Value!, SearchEffort.Whole);
        Assert.True(solution.ChosenIs is ChosenState.Passes or ChosenState.Fails);
        Assert.Equal(ChosenText.Of(solution), (string)reply["answer"]!["chosenText"]!);
        Assert.Equal(solution.Choices.Length, reply["answer"]!["choices"]!.AsArray().Count);
        Assert.Equal(first.Offers[^1].Mass, solution.Bracket!.Mass, 1e-6);
        var made = JobFiles.Of(solution with { Diagnosis = Diagnosis.Of(solution, SearchEffort.Whole) }, [], new(DxfVersion.R2000, null, null));
        var result = new DeskOutputs().Of(new(desk, [], new(DxfVersion.R2000, null, null), false));
        Assert.Equal(made.Written.Select(f => f.Name), result.Files!.Written.Select(f => f.Name));
        foreach (var (mine, theirs) in made.Written.Zip(result.Files.Written))
        {
            Assert.Equal(mine.Bytes, theirs.Bytes);
        }

        // The way back, to the letter.
        Assert.Equal(best.Files[job], desk.With(job, ChosenValue.Key, null)!.Files[job]);
    }

    [Fact]
    public async Task The_cut_file_of_a_job_that_is_not_safe_is_withheld_until_it_is_accepted_by_name()
    {
        await using var served = await Served.Start();
        var desk = JobDesk.Open(Job, Examples.Read)!.With("vehicles/plover.toml", "cable.closing_drag.value", JsonDocument.Parse("2.4").RootElement)!;
        var dangers = DeskAnswer.Of(desk, Depth.Quick).Solution!.Dangers;
        Assert.NotEmpty(dangers);
        var message = JsonNode.Parse(Work(desk))!.AsObject();
        message["name"] = JobFiles.CutFile;
        var (status, text) = await served.Post("/output", message.ToJsonString());
        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Contains("withheld", text, StringComparison.Ordinal);
        message["name"] = AllFiles.Name;
        Assert.Equal(HttpStatusCode.OK, (await served.Post("/output", message.ToJsonString())).Status);
        Assert.DoesNotContain(new DeskOutputs().Of(new(desk, [], new(DxfVersion.R2000, null, null), false)).Files!.Written, f => f.Name == JobFiles.CutFile);
        message["name"] = JobFiles.CutFile;
        message["accepted"] = new JsonArray([.. dangers.Skip(1).Select(d => (JsonNode)d.Code)]);
        Assert.Equal(HttpStatusCode.Conflict, (await served.Post("/output", message.ToJsonString())).Status);
        message["accepted"] = new JsonArray([.. dangers.Select(d => (JsonNode)d.Code)]);
        Assert.Equal(HttpStatusCode.OK, (await served.Post("/output", message.ToJsonString())).Status);
    }

    [Fact]
    public async Task A_shared_job_comes_back_as_it_was()
    {
        await using var served = await Served.Start();
        var desk = JobDesk.Open(Job, Examples.Read)!;
        var (_, packed) = await served.Post("/pack", Work(desk));
        var (status, text) = await served.Post("/take", Handed(("packed.toml", packed)));
        Assert.Equal(HttpStatusCode.OK, status);
        var back = JsonNode.Parse(text)!;
        Assert.Equal(Job, (string)back["job"]!);
        Assert.Equal(desk.Files, back["files"]!.AsObject().ToDictionary(f => f.Key, f => (string)f.Value!));

        // The command line reads the same file.
        var read = ProfileReader.ReadJob("shared.toml", MemoryFileSource.Empty.With("shared.toml", packed));
        Assert.Equal(desk.Read().Value!.Vehicle.Name, read.Value!.Vehicle.Name);
        Assert.Contains("packed.toml", (await served.Post("/take", Handed(("packed.toml", "profile = \"packed job\"\n")))).Text, StringComparison.Ordinal);
    }

    // A job file is found among what was handed over; what it names comes from there, and otherwise from the folder.
    [Fact]
    public async Task A_job_that_is_handed_over_opens_with_the_files_it_names()
    {
        await using var served = await Served.Start();
        var text = Examples.Read(Job)!;
        var vehicle = Examples.Read("vehicles/plover.toml")!.Replace("Plover", "Plover of a customer", StringComparison.Ordinal);
        var opened = JsonNode.Parse((await served.Post("/take", Handed(("plover-alder-58.toml", text), ("plover.toml", vehicle)))).Text)!;
        Assert.Equal(Job, (string)opened["job"]!);
        Assert.Equal(vehicle, (string)opened["files"]!["vehicles/plover.toml"]!);
        Assert.Equal(Examples.Read("throttle-bodies/alder-58.toml"), (string)opened["files"]!["throttle-bodies/alder-58.toml"]!);

        // Another job of that name does not take its place.
        var other = JsonNode.Parse((await served.Post("/take", Handed(("plover-alder-58.toml", text + "# another\n")))).Text)!;
        Assert.Equal("jobs/plover-alder-58-2.toml", (string)other["job"]!);

        // What cannot be opened says what it is.
        foreach (var (files, said) in new ((string, string)[], string)[]
        {
            ([("plover.toml", vehicle)], "plover.toml is a vehicle, not a job"), ([("a.toml", text), ("b.toml", text)], "These are 2 jobs: a.toml, b.toml."), ([("a.txt", "Hello")], "a.txt"),
            ([("a.toml", "x = 1\n")], "a.toml is not a job"), ([("a.toml", vehicle), ("b.toml", vehicle)], "None of these files is a job"), ([("../a.toml", text)], "is not a job"), ([], "files"),
        })
        {
            var (status, answer) = await served.Post("/take", Handed(files));
            Assert.True((int)status is 400 or 409);
            Assert.Contains(said, answer, StringComparison.Ordinal);
        }
    }

    private static string Handed(params (string Name, string Text)[] files) =>
        new JsonObject { ["files"] = new JsonObject(files.Select(f => KeyValuePair.Create(f.Name, (JsonNode?)f.Text))) }.ToJsonString();

    private static string Work(JobDesk desk) => new JsonObject
    {
        ["job"] = desk.Job,
        ["files"] = new JsonObject(desk.Files.Select(f => KeyValuePair.Create(f.Key, (JsonNode?)f.Value))),
    }.ToJsonString();
}
