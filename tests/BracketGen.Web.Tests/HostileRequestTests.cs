using System.Collections.Concurrent;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using BracketGen.Fuzz.Tests;
using BracketGen.Profiles;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;
using BracketGen.Web.Serving;
using BracketGen.Words.Report;

namespace BracketGen.Web.Tests;

/// <summary>Requests hurt as the input files are: answered or refused with words, never by an exception, and nothing is left lying in the folder.</summary>
public class HostileRequestTests
{
    private static readonly int Mutations = LongRun.Of(400);

    // Only a request that hangs takes as long as this, also on a machine that does much else.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    private static readonly HttpStatusCode[] Allowed =
        [HttpStatusCode.OK, HttpStatusCode.BadRequest, HttpStatusCode.NotFound, HttpStatusCode.Conflict, HttpStatusCode.RequestEntityTooLarge];

    [Fact]
    public async Task Mutated_requests_are_answered_or_refused_with_words()
    {
        await using var served = await Served.Start();
        var seeds = Seeds(served.Folder);
        foreach (var (address, json) in seeds.Where(s => s.Address != "save"))
        {
            Assert.Equal((address, HttpStatusCode.OK), (address, (await served.Post(address, json)).Status));
        }

        var seen = new ConcurrentDictionary<(string Address, bool IsAnswered), int>();
        await Parallel.ForEachAsync(Enumerable.Range(0, Mutations), new ParallelOptions { MaxDegreeOfParallelism = 4 }, async (number, cancelled) =>
        {
            var (address, json) = seeds[number % seeds.Length];
            var bytes = Mutator.Make(Encoding.UTF8.GetBytes(json), 5, number);
            using var content = new ByteArrayContent(bytes);
            content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
            using var request = new HttpRequestMessage(HttpMethod.Post, served.Server.Address + address) { Content = content };
            HttpStatusCode status;
            string text;
            try
            {
                (status, text) = await served.Send(request).WaitAsync(Patience, cancelled);
            }
            catch (HttpRequestException) when (bytes.Length > PageServer.MaxBody)
            {
                return; // Refused before all of it was sent.
            }

            Assert.True(Allowed.Contains(status), $"{address} {number}: {(int)status} {text}");
            Assert.True(status == HttpStatusCode.OK || text.Trim().Length > 10, $"{address} {number}: {(int)status} without words");
            Assert.DoesNotContain("defect of the program", text, StringComparison.Ordinal);
            seen.AddOrUpdate((address, status == HttpStatusCode.OK), 1, (_, count) => count + 1);
        });

        // The mutator must neither break everything nor nothing: of a short run all told, of a long one at each address.
        Assert.True(seen.Keys.Any(k => k.IsAnswered) && seen.Keys.Any(k => !k.IsAnswered), string.Join(", ", seen));
        Assert.All(LongRun.IsOn ? seeds : [], seed => Assert.True(seen.ContainsKey((seed.Address, true)) && seen.ContainsKey((seed.Address, false)), $"{seed.Address}: {string.Join(", ", seen)}"));
        while ((await served.Post("line-state", """{"path":"families/one.toml"}""")).Text.Contains("\"isRunning\":true", StringComparison.Ordinal))
        {
            await Task.Delay(50);
        }

        Assert.All(Directory.GetFiles(served.Folder, "*", SearchOption.AllDirectories),
            file => Assert.Matches(Path.GetRelativePath(served.Folder, file).StartsWith("output", StringComparison.Ordinal) ? "[.](dxf|html|json|jsonl|csv|xlsx|svg|txt|lock)$" : "[.](dxf|toml([.]unsaved)?|register[.]jsonl|lock)$", file));
        Assert.Equal(HttpStatusCode.OK, (await served.Post(seeds[0].Address, seeds[0].Json)).Status);
    }

    private static (string Address, string Json)[] Seeds(string folder)
    {
        const string job = "jobs/plover-alder-58.toml";
        string[] paths = [job, "throttle-bodies/alder-58.toml", "vehicles/plover.toml", "shops/saltmarsh-fabrication.toml"];
        var files = paths.ToDictionary(path => path, path => File.ReadAllText(Path.Combine(folder, path)));

        const string bracket = "brackets/catalogue-upright-34.toml";
        string[] drawn = [bracket, "brackets/catalogue-upright-34.dxf"];
        var withBracket = paths.Concat(drawn).ToDictionary(path => path, path => File.ReadAllText(Path.Combine(folder, path)));

        const string bare = "jobs/plover-alder-58-bare.toml";
        var bareFiles = new[] { bare, "throttle-bodies/alder-58-bare.toml", paths[2], paths[3] }.ToDictionary(path => path, path => File.ReadAllText(Path.Combine(folder, path)));
        var parts = Folder.PartsFiles.Of(bare, bareFiles[bare], path => File.ReadAllText(Path.Combine(folder, path)));

        const string family = "families/one.toml";
        Directory.CreateDirectory(Path.Combine(folder, "families"));
        File.WriteAllText(Path.Combine(folder, family), Family);

        // White space is no part of the message: so not every mutation of a short one hits something.
        string Json(object message) => JsonSerializer.Serialize(message).PadRight(300);
        return
        [
            ("work", Json(new { job, files, depth = "quick", accepted = new[] { "moving-parts" }, edits = new object[] { new { file = paths[2], key = "pedal.available_pull.value", value = 50 } } })),
            ("work", Json(new { job, files, depth = "quick", has = new[] { "0123456789abcdef0123456789abcdef" }, wanted = new[] { "verdict", "sweep" }, edits = Array.Empty<object>() })),
            ("work", Json(new { job, files = withBracket, bracket, depth = "quick", edits = new object[] { new { file = bracket, key = "thickness", value = 2.5 } } })),
            ("report", Json(new { job, files = withBracket, bracket })),
            ("bracket", Json(new { path = bracket, example = false })),
            ("output", Json(new { job, files, name = "report.html", dxf = "r12", paper = "A3", kerf = true, accepted = Array.Empty<string>() })),
            ("parts", Json(new { job = bare, text = bareFiles[bare], example = true })),
            ("kit", Json(new { job = bare, files = bareFiles, parts, strength = false })),
            ("kit-file", Json(new { job = bare, files = bareFiles, parts, strength = false, name = "kit.csv" })),
            ("fitted", Json(new { job, files, readings = new Dictionary<string, string> { ["volts-stop"] = "0.5", ["volts-closed"] = "500 mV", ["free-play"] = "0.08 in" } })),
            ("test-bend", Json(new { shop = paths[3], text = files[paths[3]], stock = 1, tool = 1, strips = new[] { new[] { "100", "51.9", "51.9", "90", "2.6", "" }, ["100", "51.9", "51.95", "90", "2.6", "2"] } })),
            ("line", Json(new { path = family })),
            ("line-run", Json(new { path = family, strength = false, own = true })),
            ("line-state", Json(new { path = family })),
            ("line-stop", Json(new { path = family })),
            ("line-job", Json(new { path = family, key = "PLV-A58" })),
            ("open", Json(new { path = job, example = false })),
            ("read", Json(new { path = paths[1], example = true })),
            ("pack", Json(new { job, files, choice = 1 })),
            ("take", Json(new { files = new Dictionary<string, string> { ["packed.toml"] = Packed(job, files) } })),
            ("take", Json(new { files = files.ToDictionary(f => f.Key[(f.Key.LastIndexOf('/') + 1)..], f => f.Value) })),
            ("questions", Json(new { kind = "vehicle", text = files[paths[2]] })),
            ("photo", PhotoTests.Seed),
            ("keep", Json(new { job, files })),
            ("worksheet", Json(new { paper = "A", passedOver = new string('a', 200) })),
            ("remember", Json(new { look = "dark", passedOver = new string('a', 200) })),
            ("save", Json(new { files = new[] { new { path = "vehicles/new.toml", text = files[paths[2]], was = (string?)null } }, replace = true })),
        ];
    }

    // One variant.
    internal const string Family = """
        profile = "family"
        name = "One"
        shop = "../shops/saltmarsh-fabrication.toml"
        vehicles = [{ code = "PLV", file = "../vehicles/plover.toml" }]
        throttle_bodies = [{ code = "A58", file = "../throttle-bodies/alder-58.toml" }]

        [numbers]
        rule = "SF-{vehicle}{throttle_body}"

        """;

    private static string Packed(string job, Dictionary<string, string> files) =>
        new Profiles.PackedJob(job, [.. files.Select(f => (f.Key, f.Value))]).Write();
}
