using System.Net;
using BracketGen.Profiles.Family;
using BracketGen.Web.Memory;
using BracketGen.Web.Serving;
using BracketGen.Words.Report;

namespace BracketGen.Web.Tests;

/// <summary>What the page remembers is in a file, so that another port, and another browser, find it again.</summary>
public class MemoryTests
{
    [Fact]
    public async Task Another_port_finds_what_was_remembered()
    {
        await using var served = await Served.Start();
        Assert.Contains("data-look=\"system\"", (await served.Get("/")).Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await served.Post("/remember", "{\"look\":\"dark\"}")).Status);
        Assert.Contains("data-look=\"dark\"", (await served.Get("/")).Text, StringComparison.Ordinal);

        await using var next = await PageServer.Start(new(served.Folder), new(served.Memory), 0);
        Assert.NotEqual(served.Server.Port, next.Port);
        using var client = new HttpClient();
        Assert.Contains("data-look=\"dark\"", await client.GetStringAsync(next.Address), StringComparison.Ordinal);

        // Nothing else lies beside it, and nothing of it in the folder of the profiles.
        Assert.Equal([served.Memory], Directory.GetFiles(Path.GetDirectoryName(served.Memory)!));
        Assert.Equal("{\n  \"look\": \"dark\"\n}", File.ReadAllText(served.Memory).ReplaceLineEndings("\n"));
        Assert.All(Directory.GetFiles(served.Folder, "*", SearchOption.AllDirectories), f => Assert.Matches("[.](toml|dxf)$", f));
    }

    [Theory]
    [InlineData("{\"look\":\"\\\" onload=alert(1)\"}")]
    [InlineData("{\"look\":\"Dark\"}")]
    [InlineData("{\"look\":null}")]
    [InlineData("{\"look\":5}")]
    [InlineData("null")]
    public async Task What_cannot_be_chosen_is_refused(string json)
    {
        await using var served = await Served.Start();
        Assert.Equal(HttpStatusCode.BadRequest, (await served.Post("/remember", json)).Status);
        Assert.False(File.Exists(served.Memory));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("{\"look\":\"\\\"><script>\"}")]
    [InlineData("{\"look\":7}")]
    public void A_file_that_cannot_be_read_counts_as_none(string text)
    {
        var folder = Directory.CreateTempSubdirectory("bracketgen-memory-").FullName;
        try
        {
            var path = Path.Combine(folder, "page.json");
            File.WriteAllText(path, text);
            Assert.Equal(new Remembered(), new PageMemory(path).Read());
            new PageMemory(path).Save(new() { Look = "light" });
            Assert.Equal("light", new PageMemory(path).Read().Look);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task A_file_that_cannot_be_written_is_told_and_the_page_goes_on()
    {
        await using var served = await Served.Start();
        Directory.CreateDirectory(served.Memory);
        var (status, text) = await served.Post("/remember", "{\"look\":\"dark\"}");
        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Contains("settings could not be saved", text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await served.Get("/")).Status);
        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(served.Memory)!));
    }

    [Fact]
    public void Without_a_file_nothing_is_remembered()
    {
        var memory = new PageMemory(null);
        memory.Save(new() { Look = "dark" });
        Assert.Equal("system", memory.Read().Look);
    }
}
