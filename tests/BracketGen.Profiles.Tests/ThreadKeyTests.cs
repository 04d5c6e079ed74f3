using System.Text.Json.Nodes;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;
using Json.Schema;

namespace BracketGen.Profiles.Tests;

/// <summary>Threads of mount holes as people write them.</summary>
public sealed class ThreadKeyTests
{
    private const string Old = "thread = \"M6\"\nboss_diameter = 15\n\n[[mount.holes]]";

    public static TheoryData<string, string> Spellings => new()
    {
        { "M5x0.8", "M5" }, { "M5x.80", "M5" }, { "M6x1", "M6" }, { "M6 x 1", "M6" }, { "m6×1", "M6" }, { "M6x1.0", "M6" }, { "M 6", "M6" }, { " m6 ", "M6" }, { "M8x1.25", "M8" },
        { "M8x1", "M8x1" }, { "M10 × 1.25", "M10x1.25" }, { "M10x1", "M10x1" }, { "1/4-20 UNC", "1/4-20 UNC" }, { "1/4-20", "1/4-20 UNC" }, { "1/4\"-20unc", "1/4-20 UNC" }, { "1/4 - 28 UNF", "1/4-28 UNF" },
        { "#10-32 UNF", "#10-32 UNF" }, { "10-32", "#10-32 UNF" }, { "No. 10-24", "#10-24 UNC" }, { "no 8-32", "#8-32 UNC" }, { "1/2-13", "1/2-13 UNC" },
    };

    public static TheoryData<string> Wrong => ["M6x0.8", "M7", "M", "M6x", "M6x1x1", "1/4-24", "1/4-20 UNF", "1/4", "1/4-20 UNEF", "10", "#10-20", "6", "", "M6,5", "#1/4-20", "M06"];

    [Theory]
    [MemberData(nameof(Spellings))]
    public void SpellingsAreRead(string written, string name)
    {
        var quoted = '\'' + written + '\'';
        Assert.Equal(name, Samples.ReadWith(Samples.Body, Old, Old.Replace("\"M6\"", quoted, StringComparison.Ordinal)).Value!.Body.Mount.Holes[0].Thread.Name);
        Assert.True(IsValid(written));
    }

    [Theory]
    [MemberData(nameof(Wrong))]
    public void WhatIsNoThreadIsOneMistake(string written)
    {
        var error = Assert.Single(Samples.ReadWith(Samples.Body, Old, Old.Replace("\"M6\"", '\'' + written + '\'', StringComparison.Ordinal)).Errors);
        Assert.Equal("mount.holes[1].thread", error.Key);
        Assert.False(IsValid(written));
    }

    [Fact]
    public void EveryThreadIsReadByItsName() => Assert.All(FastenerThread.All, t => SpellingsAreRead(t.Name, t.Name));

    [Fact]
    public void AnInchThreadBringsItsGrade()
    {
        var mount = Samples.ReadWith(Samples.Body, Old, Old.Replace("M6", "1/4-28", StringComparison.Ordinal)).Value!.Body.Mount;
        Assert.Null(mount.ScrewClass);
        Assert.Equal((ScrewClass.UsualInch, ScrewClass.Usual), (mount.ClassOf(mount.Holes[0]), mount.ClassOf(mount.Holes[1])));

        // One class for both systems cannot be.
        Assert.Equal("mount.screw_class", Assert.Single(Samples.ReadWith(Samples.Body, "[mount]\n", "[mount]\nscrew_class = \"grade 8\"\n").Errors).Key);
    }

    private static bool IsValid(string thread)
    {
        var text = ProfileSchema.All.Single(s => s.File == "throttle-body.schema.json").Text;
        var of = JsonNode.Parse(text)!["properties"]!["mount"]!["properties"]!["holes"]!["items"]!["properties"]!["thread"]!;
        return JsonSchema.FromText(of.ToJsonString()).Evaluate(System.Text.Json.JsonSerializer.SerializeToElement(thread)).IsValid;
    }
}
