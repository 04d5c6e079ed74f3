using System.Net;
using System.Text.Json.Nodes;
using BracketGen.TestSupport;

namespace BracketGen.Web.Tests;

/// <summary>A photograph's clicks go in, readings in the profile's own keys come out; what is no such message is refused.</summary>
public class PhotoTests
{
    // Seen square from 500 mm above the middle of the target: six pixels a millimetre on the face.
    private const double Focal = 3000, Far = 500;

    private static readonly (double X, double Y)[] Marks = [(-80, -105), (0, -105), (80, -105), (80, 0), (80, 105), (0, 105), (-80, 105), (-80, 0)];

    [Fact]
    public async Task The_readings_come_back_in_the_keys_of_the_profile()
    {
        await using var page = await Served.Start();

        var reply = await Ask(page, Message());

        Assert.Null(reply["problem"]);
        var changes = Changes(reply);
        Assert.Equal(34.5, changes["quadrant.outer_radius"]!.GetValue<double>(), 1);
        Assert.Equal(31.5, changes["quadrant.pitch_radius"]!["value"]!.GetValue<double>(), 1);
        Assert.Equal(-20, changes["quadrant.pocket_angle"]!["value"]!.GetValue<double>(), 0);
        Assert.Equal(-24, changes["mount.holes[1].at"]![2]!.GetValue<double>());
        Assert.Equal(-50, changes["mount.holes[1].at"]![0]!.GetValue<double>(), 1);
        Assert.Equal(0.2, changes["mount.holes[1].plus_minus"]![2]!.GetValue<double>());
        Assert.Null(changes["quadrant.groove"]);
        Assert.NotEmpty(reply["overlays"]!.AsArray());
    }

    [Fact]
    public async Task A_cam_becomes_the_groove_s_table()
    {
        await using var page = await Served.Start();

        var changes = Changes(await Ask(page, Message(m => m["isCam"] = true)));

        var groove = changes["quadrant.groove"]!;
        Assert.Equal("table", groove["shape"]!.GetValue<string>());
        Assert.Equal(10, groove["points"]!.AsArray().Count);
        Assert.All(groove["points"]!.AsArray(), p => Assert.InRange(p!["radius"]!.GetValue<double>(), 31, 32));
        Assert.True(changes.ContainsKey("quadrant.pitch_radius"));
        Assert.Null(changes["quadrant.pitch_radius"]);
    }

    [Fact]
    public async Task Inches_go_in_and_come_out_as_inches_and_into_the_file_as_millimetres()
    {
        await using var page = await Served.Start();

        var reply = await Ask(page, Message(m =>
        {
            m["inches"] = true;
            m["grooveHeight"] = Length("0.9449 in", "0.008 in");
        }));

        Assert.Contains(" in", reply["readings"]![0]!["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal(-24, Changes(reply)["mount.holes[1].at"]![2]!.GetValue<double>(), 2);
    }

    [Fact]
    public async Task What_was_not_measured_is_said_to_be_assumed()
    {
        await using var page = await Served.Start();

        var about = (await Ask(page, Message(m =>
        {
            m["bar"] = Length("", "");
            m["shaftHeight"] = Length("33", "");
        })))["about"]!.AsArray().Select(l => l!.GetValue<string>()).ToArray();

        Assert.Contains(about, l => l.Contains("bar of the target was not measured", StringComparison.Ordinal));
        Assert.Contains(about, l => l.Contains("Lengths without a ±", StringComparison.Ordinal));
        Assert.Contains(about, l => l.Contains("clicks are assumed", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Holes_of_a_face_that_is_not_square_to_the_shaft_are_not_read()
    {
        await using var page = await Served.Start();

        var reply = await Ask(page, Message(m => m["text"] = File.ReadAllText(RepositoryRoot.PathOf("profiles", "throttle-bodies", "rowan-64.toml"))));

        Assert.DoesNotContain(Changes(reply).Keys, k => k.StartsWith("mount", StringComparison.Ordinal));
        Assert.Contains(reply["about"]!.AsArray(), l => l!.GetValue<string>().StartsWith("The mount face of this throttle body is not square", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("marks", "Click at least four marks")]
    [InlineData("distance", "camera's distance is not known")]
    [InlineData("mirrored", "The photograph is mirrored")]
    [InlineData("mark", "Mark 3 lies")]
    [InlineData("line", "Spread the clicks round the rim")]
    [InlineData("high", "higher than the camera")]
    [InlineData("length", "\"long\" is no length")]
    public async Task Each_problem_says_what_to_do(string what, string said)
    {
        await using var page = await Served.Start();

        var reply = await Ask(page, Message(m =>
        {
            switch (what)
            {
                case "marks": m["marks"] = new JsonArray([.. m["marks"]!.AsArray().Take(3).Select(x => x!.DeepClone())]); break;
                case "distance": m["distance"] = Length("", ""); break;
                case "mirrored": m["marks"] = MarksOf(p => Mirrored(p)); break;
                case "mark": m["marks"]![2]!["clicks"] = new JsonArray(Click(new(200, 400))); break;
                case "line": m["edge"] = new JsonArray(Click(new(1000, 1000)), Click(new(1100, 1000)), Click(new(1200, 1000))); break;
                case "high": m["shaftHeight"] = Length("700", "1"); break;
                default: m["bar"] = Length("long", ""); break;
            }
        }));

        Assert.Contains(said, reply["problem"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("{\"text\":\"\",\"width\":0,\"height\":10,\"marks\":[],\"shaft\":[[1,1]]}")]
    [InlineData("{\"text\":\"\",\"width\":4000,\"height\":3000,\"marks\":[],\"shaft\":[]}")]
    [InlineData("{\"text\":\"\",\"width\":4000,\"height\":3000,\"marks\":[{\"number\":9,\"clicks\":[[1,1]]}],\"shaft\":[[1,1]]}")]
    [InlineData("{\"text\":\"\",\"width\":4000,\"height\":3000,\"marks\":[{\"number\":1,\"clicks\":[[1,1]]},{\"number\":1,\"clicks\":[[1,1]]}],\"shaft\":[[1,1]]}")]
    [InlineData("{\"text\":\"\",\"width\":4000,\"height\":3000,\"marks\":[null],\"shaft\":[[1,1]]}")]
    [InlineData("{\"text\":\"\",\"width\":4000,\"height\":3000,\"marks\":[],\"shaft\":[[1]]}")]
    [InlineData("{\"text\":\"\",\"width\":4000,\"height\":3000,\"marks\":[],\"shaft\":[[1e99,1]]}")]
    [InlineData("{\"text\":\"\",\"width\":4000,\"height\":3000,\"marks\":[],\"shaft\":[null]}")]
    [InlineData("{\"text\":\"\",\"width\":4000,\"height\":3000,\"marks\":[],\"shaft\":[[1,1]],\"holes\":[null]}")]
    public async Task What_is_no_such_message_is_refused(string message)
    {
        await using var page = await Served.Start();

        var (status, _) = await page.Post("/photo", message);

        Assert.Equal(HttpStatusCode.BadRequest, status);
    }

    [Fact]
    public async Task All_marks_on_one_spot_do_no_harm()
    {
        await using var page = await Served.Start();

        var reply = await Ask(page, Message(m => m["marks"] = MarksOf(_ => new(500, 500))));

        Assert.NotNull(reply["problem"]);
    }

    [Fact]
    public async Task The_target_is_a_pdf()
    {
        await using var page = await Served.Start();

        var (status, text) = await page.Get("/photo-target.pdf");

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.StartsWith("%PDF-", text, StringComparison.Ordinal);
    }

    /// <summary>A message as the page sends it.</summary>
    internal static string Seed => Message().ToJsonString();

    private static async Task<JsonNode> Ask(Served page, JsonObject message)
    {
        var (status, text) = await page.Post("/photo", message.ToJsonString());
        Assert.True(status == HttpStatusCode.OK, text);
        return JsonNode.Parse(text)!;
    }

    private static Dictionary<string, JsonNode?> Changes(JsonNode reply) => reply["readings"]!.AsArray().SelectMany(r => r!["changes"]!.AsArray())
        .GroupBy(c => c!["key"]!.GetValue<string>()).ToDictionary(g => g.Key, g => g.Last()!["value"]);

    private static JsonObject Message(Action<JsonObject>? change = null)
    {
        const double outer = 34.5, pocket = 31.5;
        JsonNode Round(double radius, double degrees, double z) => Click(See(radius * Math.Cos(degrees * Math.PI / 180), radius * Math.Sin(degrees * Math.PI / 180), z));
        JsonObject message = new()
        {
            ["text"] = File.ReadAllText(RepositoryRoot.PathOf("profiles", "throttle-bodies", "alder-58.toml")),
            ["width"] = 4000, ["height"] = 3000,
            ["marks"] = MarksOf(p => p),
            ["bar"] = Length("140", "0.2"), ["distance"] = Length("500", "5"), ["shaftHeight"] = Length("33", "0.2"), ["rimHeight"] = Length("28.5", "0.2"),
            ["grooveHeight"] = Length("24", "0.2"), ["holeHeight"] = Length("0", "0.2"), ["toWire"] = Length("3", "0.1"),
            ["shaft"] = new JsonArray(Click(See(0, 0, 33))),
            ["edge"] = new JsonArray([.. Enumerable.Range(0, 10).Select(i => Round(outer, -20 + 15 * i, 28.5))]),
            ["pocket"] = new JsonArray(Round(pocket, -20, 28.5)),
            ["holes"] = new JsonArray(new JsonArray(Click(See(-50, -22, 0))), new JsonArray(Click(See(-50, 12, 0)))),
        };
        change?.Invoke(message);
        return message;
    }

    private static JsonArray MarksOf(Func<(double X, double Y), (double X, double Y)> place) => new(
        [.. Marks.Select((m, i) => (JsonNode)new JsonObject { ["number"] = i + 1, ["clicks"] = new JsonArray(Click(place(See(m.X, m.Y, 0)))) })]);

    private static (double X, double Y) See(double x, double y, double z) => (2000 + Focal * x / (Far - z), 1500 - Focal * y / (Far - z));

    private static (double X, double Y) Mirrored((double X, double Y) p) => (4000 - p.X, p.Y);

    private static JsonNode Click((double X, double Y) p) => new JsonArray(p.X, p.Y);

    private static JsonObject Length(string value, string plusMinus) => new() { ["value"] = value, ["plusMinus"] = plusMinus };
}
