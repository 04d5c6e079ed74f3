using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using BracketGen.Web.Desk;
using BracketGen.Web.Folder;
using BracketGen.Web.Messages;

namespace BracketGen.Web.Tests;

/// <summary>A reply that leaves out what the page has is, put together again, the whole reply; and parts that were not wanted are named.</summary>
public class LeanReplyTests
{
    private const string Job = "jobs/plover-alder-58.toml";

    [Fact]
    public async Task What_is_left_out_is_what_the_page_has()
    {
        await using var served = await Served.Start();
        var desk = JobDesk.Open(Job, Examples.Read)!;
        var had = new Dictionary<string, JsonNode?>();
        var shares = new List<double>();
        foreach (var (file, key, value) in new (string, string, string)[]
        {
            ("vehicles/plover.toml", "cable.free_inner_length.value", "131"), ("vehicles/plover.toml", "cable.free_inner_length.value", "132"),
            (Job, "document.title", "\"A title\""), ("vehicles/plover.toml", "cable.free_inner_length.value", "131"), ("vehicles/plover.toml", "cable.free_inner_length", "\"nonsense\""),
            ("vehicles/plover.toml", "cable.free_inner_length", "131"),
        })
        {
            desk = desk.With(file, key, JsonDocument.Parse(value).RootElement)!;
            var message = MessageOf(desk);
            var before = (await served.Post("/work", message.ToJsonString())).Text;
            var whole = JsonNode.Parse(before)!.AsObject();
            message["has"] = new JsonArray([.. had.Keys.Select(k => (JsonNode)k)]);
            var (status, text) = await served.Post("/work", message.ToJsonString());
            Assert.Equal(HttpStatusCode.OK, status);
            shares.Add((double)text.Length / before.Length);
            var lean = JsonNode.Parse(text)!.AsObject();
            foreach (var entry in lean["new"]!.AsArray().Select(e => e!.AsArray().Select(w => (string)w!).ToArray()))
            {
                had[entry[^1]] = Holder(lean, entry)[entry[^2]]!.DeepClone();
            }

            foreach (var entry in lean["same"]!.AsArray().Select(e => e!.AsArray().Select(w => (string)w!).ToArray()))
            {
                Assert.False(Holder(lean, entry).ContainsKey(entry[^2]));
                Holder(lean, entry)[entry[^2]] = had[entry[^1]]!.DeepClone();
            }

            foreach (var own in new[] { "new", "same" })
            {
                lean.Remove(own);
            }

            foreach (var reply in new[] { whole, lean })
            {
                reply.Remove("solveTime");
            }

            Assert.True(JsonNode.DeepEquals(whole, lean));
        }

        // The first reply is whole; of one that says the same again little is sent.
        Assert.InRange(shares[0], 0.9, 1.1);
        Assert.InRange(shares[2], 0, 0.6);
        Assert.InRange(shares[3], 0, 0.1);
    }

    [Fact]
    public async Task Parts_that_are_not_wanted_are_named()
    {
        await using var served = await Served.Start();
        var message = MessageOf(JobDesk.Open(Job, Examples.Read)!);
        var whole = JsonNode.Parse((await served.Post("/work", message.ToJsonString())).Text)!["answer"]!;
        message["wanted"] = new JsonArray("verdict", "sweep", "no such part");
        var some = JsonNode.Parse((await served.Post("/work", message.ToJsonString())).Text)!["answer"]!;
        Assert.Empty(whole["open"]!.AsArray());
        Assert.Equal(["verdict", "sweep"], some["parts"]!.AsObject().Select(p => p.Key));
        Assert.Equal(
            whole["parts"]!.AsObject().Select(p => p.Key).Order(), some["open"]!.AsArray().Select(p => (string)p!).Concat(some["parts"]!.AsObject().Select(p => p.Key)).Order());
        Assert.All(some["parts"]!.AsObject(), p => Assert.Equal((string)whole["parts"]![p.Key]!, (string)p.Value!));
    }

    [Fact]
    public async Task More_marks_than_a_page_keeps_are_refused()
    {
        await using var served = await Served.Start();
        var message = MessageOf(JobDesk.Open(Job, Examples.Read)!);
        message["has"] = new JsonArray([.. Enumerable.Range(0, LeanReply.MaxMarks + 1).Select(i => (JsonNode)$"{i}")]);
        Assert.Equal(HttpStatusCode.BadRequest, (await served.Post("/work", message.ToJsonString())).Status);
    }

    private static JsonObject Holder(JsonObject reply, string[] entry) => entry[..^2].Aggregate(reply, (at, key) => at[key]!.AsObject());

    private static JsonObject MessageOf(JobDesk desk) => new()
    {
        ["job"] = desk.Job,
        ["files"] = new JsonObject(desk.Files.Select(f => KeyValuePair.Create(f.Key, (JsonNode?)f.Value))),
    };
}
