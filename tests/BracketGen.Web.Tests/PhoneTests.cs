using System.Net;
using System.Net.Security;
using System.Net.Sockets;
using System.Security.Authentication;
using System.Text;
using System.Text.Json;
using BracketGen.Web.Phone;
using BracketGen.Web.Serving;

namespace BracketGen.Web.Tests;

/// <summary>What the network gets of the page that a phone may open: see the threats in docs/phone.md.</summary>
public class PhoneTests
{
    private const string Job = "{\"path\":\"jobs/plover-alder-58.toml\"}";

    private static readonly string[] BeforePairing = ["/", "/pairing.js", "/pairing.css", "/icon.svg"];

    private static readonly string[] Addresses =
        ["/work", "/output", "/report", "/bracket", "/pack", "/open", "/read", "/take", "/keep", "/save", "/worksheet", "/questions", "/photo", "/remember",
            "/parts", "/kit", "/kit-file", "/fitted", "/test-bend", "/line", "/line-run", "/line-state", "/line-stop", "/line-job"];

    [Fact]
    public async Task Before_pairing_there_is_nothing_but_the_page_that_pairs()
    {
        await using var phone = await ServedPhone.Start();
        foreach (var path in PageAssets.Paths.Concat(Addresses).Append("/").Append("/shelf").Append("/forms").Append("/photo-target.pdf").Append("/nothing-here"))
        {
            var (status, text) = await phone.Get(path);
            Assert.Equal((path, BeforePairing.Contains(path) ? HttpStatusCode.OK : HttpStatusCode.Forbidden), (path, status));
            Assert.DoesNotContain("plover", text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain(phone.Server.Pairing.Code, text, StringComparison.Ordinal);
            Assert.DoesNotContain(Path.GetFileName(phone.Page.Folder), text, StringComparison.Ordinal);
        }

        foreach (var path in Addresses)
        {
            Assert.Equal((path, HttpStatusCode.Forbidden), (path, (await phone.Post(path, Job, ("Origin", phone.Origin))).Status));
        }

        foreach (var cookie in new[] { "", "A", new string('A', 43), phone.Server.Pairing.Code })
        {
            Assert.Equal(HttpStatusCode.Forbidden, (await phone.Get("/shelf", ("Cookie", $"__Host-bracketgen-{phone.Server.Address.Port}={cookie}"))).Status);
        }
    }

    [Fact]
    public async Task One_phone_pairs_once_and_does_what_the_page_does()
    {
        await using var phone = await ServedPhone.Start();
        using (var answer = await phone.Whole(HttpMethod.Post, "/pair", ServedPhone.Code(phone.Server.Pairing.Code), ("Origin", phone.Origin)))
        {
            Assert.Matches(
                @"^__Host-bracketgen-\d+=[\w-]{43}; Path=/; Max-Age=28800; Secure; HttpOnly; SameSite=Strict$", Assert.Single(answer.Headers.GetValues("Set-Cookie")));
            var mine = ("Cookie", answer.Headers.GetValues("Set-Cookie").Single().Split(';')[0]);
            Assert.Contains("plover-alder-58", (await phone.Get("/shelf", mine)).Text, StringComparison.Ordinal);
            Assert.Contains("page.js", (await phone.Get("/", mine)).Text, StringComparison.Ordinal);
            var save = JsonSerializer.Serialize(new { files = new[] { new { path = "vehicles/measured.toml", text = "profile = \"vehicle\"\n", was = (string?)null } }, replace = false });
            Assert.Equal(HttpStatusCode.OK, (await phone.Post("/save", save, mine, ("Origin", phone.Origin))).Status);
            Assert.Equal("profile = \"vehicle\"\n", File.ReadAllText(Path.Combine(phone.Page.Folder, "vehicles", "measured.toml")));
        }

        Assert.Equal([PairingState.Paired], phone.Told);
        Assert.Equal(HttpStatusCode.Forbidden, (await phone.Post("/pair", ServedPhone.Code(phone.Server.Pairing.Code), ("Origin", phone.Origin))).Status);
        foreach (var path in BeforePairing.Append("/shelf"))
        {
            Assert.Equal((path, HttpStatusCode.Forbidden), (path, (await phone.Get(path)).Status));
        }
    }

    [Fact]
    public async Task Wrong_codes_are_refused_and_close_pairing()
    {
        await using var phone = await ServedPhone.Start();
        for (var wrong = 0; wrong < Pairing.MostWrong; wrong++)
        {
            Assert.Equal(HttpStatusCode.Forbidden, (await phone.Post("/pair", ServedPhone.Code(new string('A', 22)), ("Origin", phone.Origin))).Status);
        }

        Assert.Equal([PairingState.Closed], phone.Told);
        var (status, text) = await phone.Post("/pair", ServedPhone.Code(phone.Server.Pairing.Code), ("Origin", phone.Origin));
        Assert.Equal(HttpStatusCode.Forbidden, status);
        Assert.Contains("too many wrong codes", text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, (await phone.Get("/")).Status);
    }

    [Fact]
    public async Task A_code_and_a_session_run_out()
    {
        await using var phone = await ServedPhone.Start();
        phone.Clock.Pass(Pairing.CodeLife);
        Assert.Contains("has run out", (await phone.Get("/")).Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, (await phone.Post("/pair", ServedPhone.Code(phone.Server.Pairing.Code), ("Origin", phone.Origin))).Status);
        Assert.True(phone.Server.Pairing.Renew());
        var mine = ("Cookie", await phone.Pair());
        Assert.Equal(HttpStatusCode.OK, (await phone.Get("/shelf", mine)).Status);
        phone.Clock.Pass(Pairing.IdleLife);
        var (status, text) = await phone.Get("/shelf", mine);
        Assert.Equal(HttpStatusCode.Forbidden, status);
        Assert.Contains("is over", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Host", "bench.invalid")]
    [InlineData("Host", "bench.invalid:PORT")]
    [InlineData("Host", "127.0.0.1:PORT")]
    [InlineData("Host", "localhost:PORT")]
    [InlineData("Host", "127.0.0.2")]
    [InlineData("Origin", "https://bench.invalid")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "http://127.0.0.2:PORT")]
    [InlineData("Origin", "")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    public async Task Other_names_and_other_pages_are_refused(string header, string value)
    {
        await using var phone = await ServedPhone.Start();
        var sent = (header, value.Replace("PORT", phone.Server.Address.Port.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal));
        (string, string)[] origin = header == "Origin" ? [] : [("Origin", phone.Origin)];
        (string, string)[] with = value.Length == 0 ? [] : [sent];
        Assert.Equal(HttpStatusCode.Forbidden, (await phone.Post("/pair", ServedPhone.Code(phone.Server.Pairing.Code), [.. origin, .. with])).Status);
        Assert.Equal(PairingState.Open, phone.Server.Pairing.State);
        var mine = ("Cookie", await phone.Pair());
        Assert.Equal(HttpStatusCode.Forbidden, (await phone.Post("/open", Job, [mine, .. origin, .. with])).Status);
        Assert.Equal(HttpStatusCode.OK, (await phone.Post("/open", Job, mine, ("Origin", phone.Origin))).Status);
    }

    [Fact]
    public async Task Every_answer_forbids_what_the_page_does_not_need()
    {
        await using var phone = await ServedPhone.Start();
        foreach (var path in BeforePairing.Append("/shelf"))
        {
            using var answer = await phone.Whole(HttpMethod.Get, path, null);
            Assert.StartsWith("default-src 'none'; script-src 'self'; style-src 'self';", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
            Assert.Equal(["no-referrer"], answer.Headers.GetValues("Referrer-Policy"));
            Assert.Equal(["no-store"], answer.Headers.GetValues("Cache-Control"));
            Assert.Equal(["nosniff"], answer.Headers.GetValues("X-Content-Type-Options"));
        }
    }

    [Fact]
    public async Task Who_is_not_paired_sends_little()
    {
        await using var phone = await ServedPhone.Start();
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, (await phone.Post("/pair", ServedPhone.Code(new string('A', PhoneGate.MaxBody)), ("Origin", phone.Origin))).Status);
        Assert.Equal(HttpStatusCode.BadRequest, (await phone.Post("/pair", "{\"code\":null}", ("Origin", phone.Origin))).Status);
        Assert.Equal(PairingState.Open, phone.Server.Pairing.State);
    }

    [Theory]
    [InlineData("../outside.toml")]
    [InlineData("jobs/../../outside.toml")]
    [InlineData("/etc/outside.toml")]
    [InlineData(".hidden/a.toml")]
    public async Task A_paired_phone_gets_no_farther_than_the_folder(string path)
    {
        await using var phone = await ServedPhone.Start();
        (string, string)[] mine = [("Cookie", await phone.Pair()), ("Origin", phone.Origin)];
        Assert.Equal(HttpStatusCode.NotFound, (await phone.Post("/read", $"{{\"path\":\"{path}\"}}", mine)).Status);
        var save = $"{{\"files\":[{{\"path\":\"{path}\",\"text\":\"written\",\"was\":null}}],\"replace\":true}}";
        Assert.Equal(HttpStatusCode.Conflict, (await phone.Post("/save", save, mine)).Status);
    }

    [Fact]
    public async Task The_address_holds_code_and_job_in_its_fragment()
    {
        await using var phone = await ServedPhone.Start();
        var address = new Uri(phone.Server.PairingAddress("jobs/a b+c.toml"));
        Assert.Equal(("https", "/", ""), (address.Scheme, address.AbsolutePath, address.Query));
        Assert.Equal($"#pair={phone.Server.Pairing.Code}&job=jobs%2Fa%20b%2Bc.toml", address.Fragment);
    }

    [Fact]
    public async Task Without_TLS_nothing_is_said()
    {
        await using var phone = await ServedPhone.Start();
        using var socket = await phone.Connect();
        await socket.SendAsync(Encoding.ASCII.GetBytes($"GET / HTTP/1.1\r\nHost: {phone.Server.Address.Authority}\r\n\r\n"));
        Assert.DoesNotContain("HTTP", await Rest(socket), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SslProtocols.Tls12)]
    [InlineData(SslProtocols.Tls13)]
    public async Task TLS_of_today_is_spoken(SslProtocols protocol)
    {
        await using var phone = await ServedPhone.Start();
        using var socket = await phone.Connect();
        await using var secure = new SslStream(new NetworkStream(socket));
        await secure.AuthenticateAsClientAsync(new SslClientAuthenticationOptions
        {
            TargetHost = ServedPhone.Place.ToString(),
            EnabledSslProtocols = protocol,
            RemoteCertificateValidationCallback = (_, _, _, _) => true,
        });
        Assert.Equal(protocol, secure.SslProtocol);
    }

    // A ClientHello written out by hand (RFC 4346, 7.4.1.2, with the extensions of RFC 4492): the framework's own client offers no such version. The answer
    // is an alert (RFC 5246, 7.2: type 21; 70 is protocol_version).
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public async Task TLS_1_0_and_1_1_are_refused(byte minor)
    {
        await using var phone = await ServedPhone.Start();
        using var socket = await phone.Connect();
        byte[] extensions = [0, 10, 0, 4, 0, 2, 0, 23, 0, 11, 0, 2, 1, 0];
        byte[] hello = [3, minor, .. new byte[32], 0, 0, 4, 0xC0, 0x09, 0xC0, 0x0A, 1, 0, 0, (byte)extensions.Length, .. extensions];
        byte[] handshake = [1, 0, 0, (byte)hello.Length, .. hello];
        await socket.SendAsync((byte[])[22, 3, 1, 0, (byte)handshake.Length, .. handshake]);
        var answer = new byte[7];
        var length = await socket.ReceiveAsync(answer);
        Assert.Equal((7, 21, 70), (length, answer[0], answer[6]));
    }

    [Fact]
    public async Task Nothing_else_is_listened_on()
    {
        await using var phone = await ServedPhone.Start();
        foreach (var (place, port) in new[] { (IPAddress.Loopback, phone.Server.Address.Port), (IPAddress.Parse("127.0.0.3"), phone.Server.Address.Port), (ServedPhone.Place, phone.Page.Server.Port) })
        {
            using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
            await Assert.ThrowsAnyAsync<SocketException>(() => socket.ConnectAsync(place, port));
        }
    }

    [Fact]
    public async Task The_page_on_this_machine_stays_as_it_is()
    {
        await using var phone = await ServedPhone.Start();
        Assert.Equal(HttpStatusCode.OK, (await phone.Page.Get("/shelf")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await phone.Page.Post("/pair", ServedPhone.Code(phone.Server.Pairing.Code))).Status);
        Assert.Equal(PairingState.Open, phone.Server.Pairing.State);
    }

    // Silent connections of many addresses, and more of them than are taken.
    [Fact]
    public async Task Silent_strangers_hold_up_neither_this_machine_nor_the_phone()
    {
        await using var phone = await ServedPhone.Start();
        var mine = ("Cookie", await phone.Pair());
        var silent = new List<Socket>();
        try
        {
            foreach (var stranger in Enumerable.Range(10, 10))
            {
                for (var i = 0; i < ConnectionQuota.OfOne + 2; i++)
                {
                    try
                    {
                        silent.Add(await phone.Connect(IPAddress.Parse($"127.0.0.{stranger}")));
                    }
                    catch (SocketException)
                    {
                        // One too many, closed before it was open.
                    }
                }
            }

            Assert.Equal(HttpStatusCode.OK, (await phone.Page.Get("/shelf")).Status);
            Assert.Equal(HttpStatusCode.OK, (await phone.Get("/shelf", mine)).Status);
        }
        finally
        {
            silent.ForEach(s => s.Dispose());
        }
    }

    // With time limits so long that waiting for them would never end.
    [Fact]
    public async Task Half_open_connections_on_this_machine_do_not_hold_up_the_page()
    {
        var folder = Directory.CreateTempSubdirectory("bracketgen-half-open-").FullName;
        var half = new List<Socket>();
        try
        {
            await using var server = await PageServer.Start(new(folder), new(null), 0, ServingLimits.ThisMachine with { Head = TimeSpan.FromDays(1), Silence = TimeSpan.FromDays(1) });
            for (var i = 0; i < 200; i++)
            {
                var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
                half.Add(socket);
                await socket.ConnectAsync(IPAddress.Loopback, server.Port);
                await socket.SendAsync("GET / HTTP/1.1\r\nHost: "u8.ToArray());
            }

            using var client = new HttpClient { Timeout = Timeout.InfiniteTimeSpan };
            using var answer = await client.GetAsync(new Uri(server.Address));
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            half.ForEach(s => s.Dispose());
        }
        finally
        {
            half.ForEach(s => s.Dispose());
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task<string> Rest(Socket socket)
    {
        var (buffer, all) = (new byte[4096], new StringBuilder());
        try
        {
            while (await socket.ReceiveAsync(buffer) is > 0 and var count)
            {
                all.Append(Encoding.Latin1.GetString(buffer, 0, count));
            }
        }
        catch (SocketException)
        {
            // Closed without a word.
        }

        return all.ToString();
    }
}
