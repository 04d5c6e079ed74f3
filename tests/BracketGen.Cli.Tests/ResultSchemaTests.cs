using System.Text.Json;
using System.Text.Json.Nodes;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Result;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using Json.Schema;

namespace BracketGen.Cli.Tests;

/// <summary>The published schema of result.json, judged by an independent validator (JsonSchema.Net).</summary>
[Collection(ExampleOutputsCollection.Name)]
public class ResultSchemaTests(ExampleOutputs outputs)
{
    private static readonly string Text = File.ReadAllText(RepositoryRoot.PathOf("docs", "result.schema.json"));
    private static readonly JsonSchema Schema = JsonSchema.FromText(Text);

    public static TheoryData<string> Jobs => [.. Workplace.Jobs];

    [Fact]
    public void The_schema_is_itself_sound()
    {
        var judged = MetaSchemas.Draft202012.Evaluate(JsonDocument.Parse(Text).RootElement, new() { OutputFormat = OutputFormat.List });
        Assert.True(judged.IsValid, Faults(judged));
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void The_result_of_every_example_is_valid(string job) => IsValid(job, Example(job));

    [Fact]
    public void Results_of_random_jobs_are_valid()
    {
        RandomSolutions.FirstShaped.Check(LongRun.Of(100), solution =>
        {
            if (solution is not null)
            {
                IsValid(solution.Job.Vehicle.Name, JsonNode.Parse(ResultJson.Write(solution, []))!);
            }
        });
    }

    [Fact]
    public void A_result_without_a_bracket_is_valid()
    {
        var solution = RandomSolutions.FirstShaped.Draw(5).OfType<Solution>().First() with { Bracket = null, Placement = null };
        IsValid("no bracket", JsonNode.Parse(ResultJson.Write(solution, ["return-springs"]))!);
    }

    // A new property of the result must be put into the schema: with every key added, taken out or misspelt the result is invalid.
    [Fact]
    public void No_property_may_be_added_or_missing_anywhere()
    {
        var (tried, judged) = (0, 0);
        bool IsDue() => LongRun.IsOn || tried++ % 10 == 0;
        foreach (var job in Workplace.Jobs)
        {
            foreach (var path in Objects(Example(job)).Select(o => o.GetPath()).ToList())
            {
                if (IsDue())
                {
                    var more = Example(job);
                    At(more, path)["extra"] = 1;
                    Assert.False(Judge(more).IsValid, $"{job}: a property may be added to {path}");
                }

                foreach (var key in At(Example(job), path).Select(p => p.Key).Where(_ => IsDue()).ToList())
                {
                    var less = Example(job);
                    At(less, path).Remove(key);
                    Assert.False(Judge(less).IsValid, $"{job}: {key} may be missing from {path}");
                    judged++;
                }
            }
        }

        Assert.True(judged > LongRun.AtLeast(500), $"only {judged} properties were tried");
    }

    [Theory]
    [InlineData("$.verdict", "\"perhaps\"")]
    [InlineData("$.version", "1")]
    [InlineData("$.version", "4")]
    [InlineData("$.stop.seat", "[1, 2]")]
    [InlineData("$.bracket.mountFrame", "[[0, 0, 0], [1, 0, 0], [0, 1, 0]]")]
    [InlineData("$.bracket.thickness", "\"3 mm\"")]
    [InlineData("$.bracket.holes", "[]")]
    [InlineData("$.job.date", "\"2 March 2026\"")]
    [InlineData("$.checks[0].unit", "\"furlong\"")]
    public void Values_of_another_kind_are_refused(string path, string value)
    {
        var result = Example("plover-alder-58");
        Find(result, path).ReplaceWith(JsonNode.Parse(value));
        Assert.False(Judge(result).IsValid);
    }

    private static void IsValid(string name, JsonNode result)
    {
        var judged = Judge(result);
        Assert.True(judged.IsValid, $"{name}: {Faults(judged)}");
    }

    private static EvaluationResults Judge(JsonNode result) =>
        Schema.Evaluate(JsonSerializer.SerializeToElement(result), new() { OutputFormat = OutputFormat.List });

    private static string Faults(EvaluationResults judged) => string.Join('\n', (judged.Details ?? [])
        .Where(d => d.Errors is not null)
        .Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}"));

    private static JsonObject At(JsonNode root, string path) => (JsonObject)Find(root, path);

    private static JsonNode Find(JsonNode root, string path) => All(root).Single(n => n.GetPath() == path);

    private static IEnumerable<JsonObject> Objects(JsonNode root) => All(root).OfType<JsonObject>();

    private static IEnumerable<JsonNode> All(JsonNode node) => node switch
    {
        JsonObject o => o.Select(p => p.Value).OfType<JsonNode>().SelectMany(All).Prepend(node),
        JsonArray a => a.OfType<JsonNode>().SelectMany(All).Prepend(node),
        _ => [node],
    };

    private JsonNode Example(string job) => JsonNode.Parse(File.ReadAllBytes(outputs.PathOf(job, Workplace.ResultFile)))!;
}
