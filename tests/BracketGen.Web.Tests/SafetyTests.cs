using System.Net;
using System.Net.Sockets;
using System.Text;
using BracketGen.Design.Inputs;
using BracketGen.Profiles.Family;
using BracketGen.Web.Serving;
using BracketGen.Words.Report;

namespace BracketGen.Web.Tests;

/// <summary>Who may ask, and how far a path leads.</summary>
public class SafetyTests
{
    private const string Job = "{\"path\":\"jobs/plover-alder-58.toml\"}";

    [Theory]
    [InlineData("bench.invalid")]
    [InlineData("bench.invalid:PORT")]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.1:1")]
    [InlineData("127.0.0.2:PORT")]
    [InlineData("127.0.0.1.bench.invalid:PORT")]
    public async Task Another_name_in_Host_is_refused(string host)
    {
        await using var served = await Served.Start();
        var name = host.Replace("PORT", served.Server.Port.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, (await served.Get("/", ("Host", name))).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await served.Post("/open", Job, ("Host", name))).Status);
    }

    [Fact]
    public async Task Its_own_names_are_answered()
    {
        await using var served = await Served.Start();
        foreach (var name in new[] { "127.0.0.1", "localhost", "LOCALHOST" })
        {
            Assert.Equal(HttpStatusCode.OK, (await served.Get("/", ("Host", $"{name}:{served.Server.Port}"))).Status);
        }
    }

    [Theory]
    [InlineData("Origin", "http://bench.invalid")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "http://127.0.0.1:1")]
    [InlineData("Origin", "https://127.0.0.1:PORT")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData("Sec-Fetch-Site", "none")]
    public async Task Requests_of_other_pages_are_refused(string header, string value)
    {
        await using var served = await Served.Start();
        value = value.Replace("PORT", served.Server.Port.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, (await served.Post("/open", Job, (header, value))).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await served.Get("/shelf", (header, value))).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await served.Post("/remember", "{\"look\":\"dark\"}", (header, value))).Status);
        Assert.False(File.Exists(served.Memory));
    }

    [Fact]
    public async Task The_page_itself_and_the_address_bar_are_answered()
    {
        await using var served = await Served.Start();
        Assert.Equal(HttpStatusCode.OK, (await served.Post("/open", Job, ("Origin", served.Server.Address.TrimEnd('/')), ("Sec-Fetch-Site", "same-origin"))).Status);
        Assert.Equal(HttpStatusCode.OK, (await served.Get("/", ("Sec-Fetch-Site", "none"))).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await served.Get("/", ("Sec-Fetch-Site", "cross-site"))).Status);
    }

    // A form of another page can send these types without asking.
    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("multipart/form-data")]
    public async Task Only_JSON_is_taken(string type)
    {
        await using var served = await Served.Start();
        using var content = new StringContent(Job, Encoding.UTF8, type);
        using var request = new HttpRequestMessage(HttpMethod.Post, served.Server.Address + "open") { Content = content };
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, (await served.Send(request)).Status);
    }

    [Theory]
    [InlineData("../outside.toml")]
    [InlineData("jobs/../../outside.toml")]
    [InlineData("jobs/./../../outside.toml")]
    [InlineData("/etc/outside.toml")]
    [InlineData("jobs\\\\..\\\\..\\\\outside.toml")]
    [InlineData("c:/outside.toml")]
    [InlineData(".hidden/a.toml")]
    [InlineData("jobs/.a.toml")]
    [InlineData("jobs//a.toml")]
    [InlineData("jobs/a.toml/")]
    [InlineData("a.txt")]
    [InlineData("")]
    [InlineData("a\\u0000.toml")]
    [InlineData("link/outside.toml")]
    [InlineData("link.toml")]
    public async Task No_path_leads_out_of_the_folder(string path)
    {
        await using var served = await Served.Start();
        var outside = Directory.CreateTempSubdirectory("bracketgen-outside-").FullName;
        try
        {
            var secret = Path.Combine(outside, "outside.toml");
            File.WriteAllText(secret, "profile = \"vehicle\"\nname = \"secret\"\n");
            File.WriteAllText(Path.Combine(Path.GetDirectoryName(served.Folder)!, "outside.toml"), "name = \"secret\"\n");
            Directory.CreateSymbolicLink(Path.Combine(served.Folder, "link"), outside);
            File.CreateSymbolicLink(Path.Combine(served.Folder, "link.toml"), secret);

            foreach (var address in new[] { "/open", "/read" })
            {
                var (status, text) = await served.Post(address, $"{{\"path\":\"{path}\"}}");
                Assert.Equal(HttpStatusCode.NotFound, status);
                Assert.DoesNotContain("secret", text, StringComparison.Ordinal);
            }

            var save = $"{{\"files\":[{{\"path\":\"{path}\",\"text\":\"written\",\"was\":null}}],\"replace\":true}}";
            Assert.Equal(HttpStatusCode.Conflict, (await served.Post("/save", save)).Status);
            Assert.DoesNotContain("written", File.ReadAllText(secret), StringComparison.Ordinal);
            Assert.DoesNotContain(Directory.GetFiles(served.Folder, "*", SearchOption.AllDirectories), f => File.ReadAllText(f) == "written");
            Assert.DoesNotContain("secret", (await served.Get("/shelf")).Text, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(outside, recursive: true);
            File.Delete(Path.Combine(Path.GetDirectoryName(served.Folder)!, "outside.toml"));
        }
    }

    // The files a job names are looked for in the folder alone, and a job sent along reads nothing from the disk.
    [Fact]
    public async Task A_job_that_names_a_file_outside_does_not_get_it()
    {
        await using var served = await Served.Start();
        var place = Path.Combine(Path.GetDirectoryName(served.Folder)!, "bracketgen-named-outside.toml");
        try
        {
            File.WriteAllText(place, "profile = \"vehicle\"\nname = \"secret\"\n");
            var job = File.ReadAllText(Path.Combine(served.Folder, "jobs/plover-alder-58.toml"))
                .Replace("../vehicles/plover.toml", "../../bracketgen-named-outside.toml", StringComparison.Ordinal);
            File.WriteAllText(Path.Combine(served.Folder, "jobs/plover-alder-58.toml"), job);
            var (status, text) = await served.Post("/open", Job);
            Assert.Equal(HttpStatusCode.OK, status);
            Assert.DoesNotContain("secret", text, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(place);
        }
    }

    [Fact]
    public async Task A_body_that_is_too_long_is_refused()
    {
        await using var served = await Served.Start();
        var (status, text) = await served.Post("/open", $"{{\"path\":\"{new string('a', PageServer.MaxBody)}\"}}");
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, status);
        Assert.Contains("too long", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{\"job\":null,\"files\":{}}")]
    [InlineData("{\"job\":\"a.toml\",\"files\":{}}")]
    [InlineData("{\"job\":\"a.toml\",\"files\":{\"a.toml\":null}}")]
    [InlineData("{\"job\":\"../a.toml\",\"files\":{\"../a.toml\":\"\"}}")]
    [InlineData("{\"job\":\"a.toml\",\"files\":{\"a.toml\":\"\"},\"edits\":[null]}")]
    [InlineData("{\"job\":\"a.toml\",\"files\":{\"a.toml\":\"\"},\"depth\":[7]}")]
    public async Task A_request_that_is_none_is_told_so(string json)
    {
        await using var served = await Served.Start();
        Assert.Equal(HttpStatusCode.BadRequest, (await served.Post("/work", json)).Status);
    }

    [Fact]
    public async Task Every_answer_forbids_what_the_page_does_not_need()
    {
        await using var served = await Served.Start();
        foreach (var path in PageAssets.Paths.Append("/").Append("/nothing-here"))
        {
            using var answer = await served.Whole(path.TrimStart('/'));
            var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
            Assert.StartsWith("default-src 'none'; script-src 'self'; style-src 'self';", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
            Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
            Assert.Equal(["nosniff"], answer.Headers.GetValues("X-Content-Type-Options"));
            Assert.Equal(["same-origin"], answer.Headers.GetValues("Cross-Origin-Resource-Policy"));
            Assert.Equal(path == "/nothing-here" ? HttpStatusCode.NotFound : HttpStatusCode.OK, answer.StatusCode);
        }
    }

    // What the surroundings say must not open another address.
    [Fact]
    public async Task It_listens_on_this_machine_alone()
    {
        Environment.SetEnvironmentVariable("ASPNETCORE_URLS", "http://0.0.0.0:0");
        try
        {
            await using var served = await Served.Start();
            Assert.StartsWith("http://127.0.0.1:", served.Server.Address, StringComparison.Ordinal);
            var others = (await Dns.GetHostAddressesAsync(Dns.GetHostName())).Where(a => !IPAddress.IsLoopback(a) && a.AddressFamily == AddressFamily.InterNetwork);
            foreach (var other in others.Append(IPAddress.Parse("127.0.0.2")))
            {
                using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
                await Assert.ThrowsAnyAsync<SocketException>(() => socket.ConnectAsync(other, served.Server.Port));
            }
        }
        finally
        {
            Environment.SetEnvironmentVariable("ASPNETCORE_URLS", null);
        }
    }

    [Fact]
    public async Task A_taken_port_is_told()
    {
        await using var served = await Served.Start();
        await Assert.ThrowsAnyAsync<IOException>(() => PageServer.Start(new(served.Folder), new(null), served.Server.Port));
    }
}
