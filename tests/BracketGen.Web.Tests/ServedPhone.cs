using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using BracketGen.Web.Phone;
using BracketGen.Web.Serving;

namespace BracketGen.Web.Tests;

/// <summary>A page on a folder of its own that one phone may open too, and a client that asks it from the phone's side.</summary>
internal sealed class ServedPhone : IAsyncDisposable
{
    private readonly HttpClient _client;
    private PhoneServer? _server;

    private ServedPhone(Served page)
    {
        Page = page;
        var handler = new SocketsHttpHandler { AllowAutoRedirect = false, UseProxy = false, UseCookies = false };
        // Trusts what a user trusts who compared: the certificate with the fingerprint in the terminal.
        handler.SslOptions.RemoteCertificateValidationCallback = (_, certificate, _, _) =>
            certificate is not null && Convert.ToHexString(certificate.GetCertHash(System.Security.Cryptography.HashAlgorithmName.SHA256)) == Server.Fingerprint.Replace(":", "", StringComparison.Ordinal);
        _client = new(handler) { Timeout = Timeout.InfiniteTimeSpan };
    }

    /// <summary>The address the phone is served on: not the one of the page for this machine.</summary>
    public static IPAddress Place { get; } = IPAddress.Parse("127.0.0.2");

    public Served Page { get; }

    public PhoneServer Server => _server!;

    public SetClock Clock { get; } = new();

    /// <summary>What the terminal was told.</summary>
    public List<PairingState> Told { get; } = [];

    public string Origin => Server.Address.GetLeftPart(UriPartial.Authority);

    public static async Task<ServedPhone> Start()
    {
        var served = new ServedPhone(await Served.Start());
        served._server = await served.Page.Server.ServePhone(Place, 0, served.Clock, (state, _) => served.Told.Add(state));
        return served;
    }

    /// <summary>Pairs, and gives the session's cookie as a browser sends it.</summary>
    public async Task<string> Pair()
    {
        using var answer = await Whole(HttpMethod.Post, PhoneGate.PairPath, Code(Server.Pairing.Code), ("Origin", Origin));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return Assert.Single(answer.Headers.GetValues("Set-Cookie")).Split(';')[0];
    }

    public static string Code(string code) => JsonSerializer.Serialize(new { code });

    public async Task<(HttpStatusCode Status, string Text)> Get(string path, params (string Name, string Value)[] headers)
    {
        using var answer = await Whole(HttpMethod.Get, path, null, headers);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync());
    }

    public async Task<(HttpStatusCode Status, string Text)> Post(string path, string json, params (string Name, string Value)[] headers)
    {
        using var answer = await Whole(HttpMethod.Post, path, json, headers);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync());
    }

    public async Task<HttpResponseMessage> Whole(HttpMethod method, string path, string? json, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(method, new Uri(Server.Address, path));
        if (json is not null)
        {
            request.Content = new StringContent(json, Encoding.UTF8, "application/json");
        }

        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        return await _client.SendAsync(request);
    }

    /// <summary>A connection to the phone's port.</summary>
    /// <param name="from">Address it comes from; null for any.</param>
    public async Task<Socket> Connect(IPAddress? from = null)
    {
        var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        if (from is not null)
        {
            socket.Bind(new IPEndPoint(from, 0));
        }

        await socket.ConnectAsync(Place, Server.Address.Port);
        return socket;
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await Server.DisposeAsync();
        await Page.DisposeAsync();
    }
}
