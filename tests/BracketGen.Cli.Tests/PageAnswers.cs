using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using BracketGen.Web.Folder;
using BracketGen.Web.Memory;
using BracketGen.Web.Serving;

namespace BracketGen.Cli.Tests;

/// <summary>A page on the profiles of a workplace, asked as its scripts ask.</summary>
internal sealed class PageAnswers : IAsyncDisposable
{
    private readonly HttpClient _client = new(new SocketsHttpHandler { UseProxy = false }) { Timeout = Timeout.InfiniteTimeSpan };
    private readonly PageServer _server;

    private PageAnswers(PageServer server) => _server = server;

    public static async Task<PageAnswers> On(Workplace place) => new(await PageServer.Start(new WorkFolder(place.PathOf("profiles")), new PageMemory(null), 0));

    /// <summary>The files of a job, as the page has them when it is open.</summary>
    public async Task<JsonObject> Open(string job) => new() { ["job"] = job, ["files"] = (await Json("open", new JsonObject { ["path"] = job }))["files"]!.DeepClone() };

    public async Task<JsonNode> Json(string address, JsonObject message)
    {
        using var response = await Send(address, message);
        Assert.Equal((HttpStatusCode.OK, ""), (response.StatusCode, response.IsSuccessStatusCode ? "" : await response.Content.ReadAsStringAsync()));
        return JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
    }

    public async Task<byte[]> Bytes(string address, JsonObject message)
    {
        using var response = await Send(address, message);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return await response.Content.ReadAsByteArrayAsync();
    }

    public static IEnumerable<string> Texts(JsonNode? list) => list!.AsArray().Select(t => (string)t!);

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _server.DisposeAsync();
    }

    private async Task<HttpResponseMessage> Send(string address, JsonObject message)
    {
        using var content = new StringContent(message.ToJsonString(), Encoding.UTF8, "application/json");
        return await _client.PostAsync(_server.Address + address, content);
    }
}
