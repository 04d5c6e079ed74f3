using System.Net;
using System.Text;
using BracketGen.Web.Folder;
using BracketGen.Web.Serving;

namespace BracketGen.Web.Tests;

/// <summary>A page on a folder of its own, and a client that asks it.</summary>
internal sealed class Served : IAsyncDisposable
{
    private readonly HttpClient _client = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseProxy = false }) { Timeout = Timeout.InfiniteTimeSpan };

    private Served(string folder, string memory, PageServer server) => (Folder, Memory, Server) = (folder, memory, server);

    public string Folder { get; }

    /// <summary>Path of the file with what the page remembers.</summary>
    public string Memory { get; }

    public PageServer Server { get; }

    public static async Task<Served> Start(bool withExamples = true)
    {
        var folder = Directory.CreateTempSubdirectory("bracketgen-page-").FullName;
        if (withExamples)
        {
            foreach (var path in Examples.List().Select(e => e.Path).Concat(Examples.Drawings()))
            {
                Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(folder, path))!);
                File.WriteAllBytes(Path.Combine(folder, path), WorkFolder.BytesOf(path, Examples.Read(path)!));
            }
        }

        var memory = Path.Combine(Directory.CreateTempSubdirectory("bracketgen-memory-").FullName, "settings", "page.json");
        return new(folder, memory, await PageServer.Start(new(folder), new(memory), 0));
    }

    public Task<(HttpStatusCode Status, string Text)> Get(string path, params (string Name, string Value)[] headers) =>
        Send(new(HttpMethod.Get, Server.Address + path.TrimStart('/')), headers);

    public Task<(HttpStatusCode Status, string Text)> Post(string path, string json, params (string Name, string Value)[] headers) =>
        Send(new(HttpMethod.Post, Server.Address + path.TrimStart('/')) { Content = new StringContent(json, Encoding.UTF8, "application/json") }, headers);

    public async Task<(HttpStatusCode Status, string Text)> Send(HttpRequestMessage request, params (string Name, string Value)[] headers)
    {
        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        using var response = await _client.SendAsync(request);
        return (response.StatusCode, await response.Content.ReadAsStringAsync());
    }

    public async Task<HttpResponseMessage> Whole(string path) => await _client.GetAsync(Server.Address + path);

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await Server.DisposeAsync();
        Directory.Delete(Folder, recursive: true);
        Directory.Delete(Path.GetDirectoryName(Path.GetDirectoryName(Memory)!)!, recursive: true);
    }
}
