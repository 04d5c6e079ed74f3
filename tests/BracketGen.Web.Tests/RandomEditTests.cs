using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Web.Messages;
using BracketGen.Words.Report;

namespace BracketGen.Web.Tests;

/// <summary>Whatever is typed, the page gets an answer: a solution or mistakes in words, never an unhandled error.</summary>
/// <remarks>
/// The same edits on every run: ten thousand in CI, the first thousand in a plain one. All of them go through the editor, the reader and the reply; of those that read, the share that
/// reaches the solver is limited, because each takes a tenth of a second or more. With BRACKETGEN_EDITS=all every one that reads does.
/// </remarks>
public class RandomEditTests
{
    private static readonly int Edits = LongRun.Of(10_000), SolveEvery = LongRun.IsOn ? 60 : 6;

    private static readonly string[] Values =
    [
        "0", "-1", "1e300", "0.001", "90", "360", "1000000", "\"1.125 in\"", "\"1 1/8 in\"", "\"12 lbf\"", "\"0.5 rad\"", "\"31,5\"", "\"\"", "\"wide\"", "\"'''\"",
        "\"\\\"\\\\\\n\\u0007\"", "\"\\ud800\"", "\"äöß °\"", "[]", "[0,0,0]", "[1,2]", "[[1]]", "{}", "{\"value\":20,\"plus_minus\":1}", "{\"value\":\"1 in\",\"plus_minus\":0.1}",
        "{\"a\":{\"b\":[1]}}", "true", "null", "null", "null", "\"clockwise\"", "\"ball\"", "\"plain ferrule\"", "\"box\"", "\"M8\"", "\"open slot\"", "\"in\"", "\"Machinery's Handbook\"",
        "\"../vehicles/dunlin.toml\"", "\"../../../../etc/passwd\"", "\"2026-02-30\"",
    ];

    [Fact]
    public void Random_edits_end_in_an_answer()
    {
        var all = Environment.GetEnvironmentVariable("BRACKETGEN_EDITS") == "all";
        var random = new Random(20_261_125);
        var jobs = Examples.List().Where(e => e.Kind == "job").Select(e => JobDesk.Open(e.Path, Examples.Read)!).ToArray();
        var (desk, wrong, applied, read, solved, passed) = (jobs[0], 0, 0, 0, 0, 0);
        for (var i = 0; i < Edits; i++)
        {
            // Whoever has typed nonsense for a while goes back to something that works.
            if (wrong > 3 || i % 40 == 0)
            {
                (desk, wrong) = (jobs[random.Next(jobs.Length)], 0);
            }

            var (file, key, value) = Edit(random, desk);
            try
            {
                if (desk.With(file, key, value) is { } edited)
                {
                    applied++;
                    desk = edited;
                }

                var job = desk.Read();
                if (!job.IsRead)
                {
                    wrong++;
                    Assert.NotEmpty(job.Errors);
                    _ = Reply.Json(to => Reply.Answer(to, new(job.Errors, null, Depth.Quick), [], []));
                }
                else
                {
                    (wrong, read) = (0, read + 1);
                    if (all || read % SolveEvery == 0)
                    {
                        var depth = random.Next(12) == 0 ? Depth.Remedies : Depth.Quick;
                        var answer = DeskAnswer.Of(desk, depth);
                        solved++;
                        passed += answer.Solution!.Verdict.Kind == VerdictKind.NotProven ? 1 : 0;
                        _ = JsonDocument.Parse(Reply.Json(to =>
                        {
                            Reply.Desk(to, desk, new());
                            Reply.Answer(to, answer, [], []);
                        }));
                    }
                }
            }
            catch (Exception problem) when (problem is not Xunit.Sdk.XunitException)
            {
                throw new InvalidOperationException(
                    $"edit {i.ToString(CultureInfo.InvariantCulture)}, {file} {key}: {problem.Message}\n{string.Join("\n---\n", desk.Files.Values)}", problem);
            }
        }

        // The edits are worth something: most apply, many leave a job that reads, and the solver has its share of good and bad.
        Assert.True(applied > Edits / 2, $"only {applied} applied");
        Assert.True(read > Edits / 10, $"only {read} read");
        Assert.True(solved >= (all ? read : read / SolveEvery) && solved > 20, $"only {solved} solved");
        Assert.InRange(passed, 1, solved - 1);
    }

    private static (string File, string Key, JsonElement? Value) Edit(Random random, JobDesk desk)
    {
        var file = desk.Files.Keys.ElementAt(random.Next(desk.Files.Count));
        var paths = Paths(ProfileValues.Of(desk.Files[file]), "").ToList();
        if (paths.Count == 0)
        {
            return (file, "name", Parsed("\"x\""));
        }

        var (key, node) = paths[random.Next(paths.Count)];

        // Mostly what people do: another number for a number.
        if (node is JsonValue number && number.TryGetValue<double>(out var old) && random.Next(10) < 7)
        {
            var next = Math.Round(old * (0.6 + 0.8 * random.NextDouble()) + (random.Next(4) == 0 ? random.Next(-3, 4) : 0), random.Next(4));
            return (file, key, Parsed(next.ToString("R", CultureInfo.InvariantCulture)));
        }

        if (node is JsonArray && random.Next(3) == 0)
        {
            return (file, key + "[+]", random.Next(2) == 0 && node.AsArray() is [.., { } last] ? Parsed(last.ToJsonString()) : Parsed(Values[random.Next(Values.Length)]));
        }

        return random.Next(12) == 0
            ? (file, key + (random.Next(2) == 0 ? ".extra" : "[99]"), Parsed(Values[random.Next(Values.Length)]))
            : (file, key, Parsed(Values[random.Next(Values.Length)]));
    }

    private static JsonElement Parsed(string json) => JsonDocument.Parse(json).RootElement;

    private static IEnumerable<(string Key, JsonNode? Node)> Paths(JsonNode? node, string path)
    {
        if (node is JsonObject table)
        {
            foreach (var (name, value) in table)
            {
                var key = path.Length == 0 ? name : $"{path}.{name}";
                yield return (key, value);
                foreach (var inner in Paths(value, key))
                {
                    yield return inner;
                }
            }
        }
        else if (node is JsonArray list)
        {
            for (var i = 0; i < list.Count; i++)
            {
                var key = string.Create(CultureInfo.InvariantCulture, $"{path}[{i + 1}]");
                yield return (key, list[i]);
                foreach (var inner in Paths(list[i], key))
                {
                    yield return inner;
                }
            }
        }
    }
}
