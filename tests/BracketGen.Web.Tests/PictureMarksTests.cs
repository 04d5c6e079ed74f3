using System.Globalization;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Family;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Web.Messages;

namespace BracketGen.Web.Tests;

/// <summary>What the page draws over the picture measures what the files say.</summary>
public class PictureMarksTests
{
    public static TheoryData<string> Jobs => new(
        "jobs/plover-alder-58.toml", "jobs/plover-alder-58-stud.toml", "jobs/dunlin-rowan-64.toml", "jobs/whimbrel-hornbeam-70.toml", "jobs/dunlin-rowan-64-rib.toml", "jobs/dunlin-tourer-alder-58-twin.toml");

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Each_dimension_is_as_long_as_its_number_in_the_file(string path)
    {
        var (marks, values) = MarksOf(path);
        var seen = 0;
        foreach (var one in marks["dimensions"]!.AsArray())
        {
            if (ValueAt(values[(string)one!["role"]!], (string)one["key"]!) is not { } raw)
            {
                continue; // Left out of the file: the page does not show it.
            }

            seen++;
            var axis = (int)one["axis"]!;
            var number = Millimetres(axis >= 0 ? raw[axis]! : raw is JsonObject pair ? pair["value"]! : raw);
            double[] from = Three(one["from"]!), to = Three(one["to"]!);
            if (axis >= 0)
            {
                Assert.Equal(number, to[axis], 3);
                Assert.Equal(0, from[axis]);
            }

            Assert.Equal(Math.Abs(number), Math.Sqrt(from.Zip(to).Sum(p => Math.Pow(p.First - p.Second, 2))), 3);
        }

        Assert.True(seen >= 10, $"only {seen}");
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Each_thing_that_can_be_moved_has_its_points_in_the_file(string path)
    {
        var (marks, values) = MarksOf(path);
        var things = marks["things"]!.AsArray();
        Assert.Equal(["shaft", "quadrant", "stop"], things.Take(3).Select(t => (string)t!["kind"]!));
        Assert.All(things.Take(3), t => Assert.Empty(t!["moves"]!.AsArray()));
        foreach (var thing in things.Skip(3))
        {
            var table = ValueAt(values["body"], (string)thing!["key"]!);
            Assert.NotNull(table);
            Assert.NotEmpty(thing["moves"]!.AsArray());
            Assert.All(thing["moves"]!.AsArray(), m => Assert.Equal(3, table[(string)m!]!.AsArray().Count));
            if ((string)thing["kind"]! == "keepout")
            {
                Assert.Equal((string)thing["name"]!, (string)table["name"]!);
            }
        }
    }

    // The place is of no matter here: the direction is one, and where the bracket is shown is said.
    [Fact]
    public void The_axis_of_the_stop_is_a_direction_and_the_outlines_come_with_strength()
    {
        var (marks, _) = MarksOf("jobs/plover-alder-58.toml");
        var stop = marks["stop"]!.AsArray().Select(x => (double)x!).ToArray();
        Assert.Equal(6, stop.Length);
        Assert.Equal(1, Math.Sqrt(stop[3..].Sum(x => x * x)), 3);

        var desk = JobDesk.Open("jobs/plover-alder-58.toml", Examples.Read)!;
        JsonNode Answer(Depth depth) => JsonNode.Parse(Reply.Json(to => Reply.Answer(to, DeskAnswer.Of(desk, depth), [], [])))!["answer"]!;
        Assert.Empty(Answer(Depth.Quick)["outlines"]!.AsArray());
        var deep = Answer(Depth.Strength);
        Assert.Equal(((string)deep["parts"]!["side-by-side"]!).Split("<article").Length - 1, deep["outlines"]!.AsArray().Count);
        Assert.All(deep["outlines"]!.AsArray(), o => Assert.True(o!.AsArray().Count > 60 && o.AsArray().Count % 6 == 0));
    }

    private static (JsonNode Marks, Dictionary<string, JsonNode> Values) MarksOf(string path)
    {
        var desk = JobDesk.Open(path, Examples.Read)!;
        var marks = JsonNode.Parse(Reply.Json(to => Reply.Answer(to, DeskAnswer.Of(desk, Depth.Quick), [], [])))!["answer"]!["marks"]!;
        var values = JsonNode.Parse(Reply.Json(to => Reply.Desk(to, desk, new())))!["values"]!.AsObject();
        return (marks, new()
        {
            ["body"] = values.Single(v => v.Key.StartsWith("throttle-bodies/", StringComparison.Ordinal)).Value!,
            ["vehicle"] = values.Single(v => v.Key.StartsWith("vehicles/", StringComparison.Ordinal)).Value!,
        });
    }

    private static JsonNode? ValueAt(JsonNode? values, string key)
    {
        foreach (var part in key.Replace("]", "", StringComparison.Ordinal).Split('.', '['))
        {
            values = values is JsonArray list ? list[int.Parse(part, CultureInfo.InvariantCulture) - 1] : values?[part];
        }

        return values;
    }

    private static double[] Three(JsonNode point) => [.. point.AsArray().Select(x => (double)x!)];

    // The examples write lengths bare, or in inches as a decimal or a fraction.
    private static double Millimetres(JsonNode raw)
    {
        if (raw.GetValueKind() == System.Text.Json.JsonValueKind.Number)
        {
            return (double)raw;
        }

        var parts = ((string)raw!).Split(' ');
        Assert.Equal("in", parts[^1]);
        return 25.4 * parts[..^1].Sum(p => p.Split('/') is [var over, var under] ? double.Parse(over, CultureInfo.InvariantCulture) / double.Parse(under, CultureInfo.InvariantCulture) : double.Parse(p, CultureInfo.InvariantCulture));
    }
}
