using System.Text;
using BracketGen.Design.Inputs;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Paths;
using BracketGen.SheetMetal.Shops;
using BracketGen.Words.Profiles;
using BracketGen.Words.Report;

namespace BracketGen.Profiles.Tests;

/// <summary>Several mistakes in one run, and files that cannot be read at all.</summary>
public class ManyErrorsTests
{
    [Fact]
    public void A_hundred_mistakes_are_listed_and_the_rest_counted()
    {
        var files = Samples.Files.With(Samples.Body, Samples.Texts[Samples.Body] + "\n[quadrant.other]\n" + string.Concat(Enumerable.Range(0, 3000).Select(i => $"k{i} = 1\n")));
        var text = Samples.Texts[Samples.Vehicle].Replace("[pedal]", string.Concat(Enumerable.Range(0, 3000).Select(i => $"wire{i} = 1\n")) + "[pedal]", StringComparison.Ordinal);
        var errors = ProfileReader.ReadJob(Samples.Job, files.With(Samples.Vehicle, text)).Errors;
        Assert.Equal(Reading.MostListed + 1, errors.Length);
        Assert.Equal(3001, errors.Sum(e => e.Count));
        Assert.Contains("2901 more mistakes", ProfileErrorText.Format(errors[^1]), StringComparison.Ordinal);
    }

    [Fact]
    public void EveryMistakeOfEveryFileComesOutInOneRun()
    {
        var files = Samples.Files;
        files = Samples.Edit(files, Samples.Job, Samples.Texts[Samples.Job], "units = \"mm\"", "units = \"furlong\"");
        var body = Samples.Texts[Samples.Body]
            .Replace("bore = 58", "bore = 58 mm")
            .Replace("shaft_diameter = 8", "shaft_diameter = \"8 N\"")
            .Replace("groove_width = 3", "grove_width = 3")
            .Replace("slot_width = 2.2\n", "")
            .Replace("outer_radius = 34.5 ", "outer_radius = 3450 ");
        files = files.With(Samples.Body, body);
        files = Samples.Edit(files, Samples.Vehicle, Samples.Texts[Samples.Vehicle], "lever_ratio = 3.4", "lever_ratio = 0");
        files = Samples.Edit(files, Samples.Shop, Samples.Texts[Samples.Shop], "\"laser\"", "\"lasser\"");
        Assert.Equal(
            [
                (Samples.Job, "units"),
                (Samples.Body, "bore"),
                (Samples.Body, "shaft_diameter"),
                (Samples.Body, "quadrant.slot_width"),
                (Samples.Body, "quadrant.grove_width"),
                (Samples.Body, "quadrant.outer_radius"),
                (Samples.Vehicle, "pedal.lever_ratio"),
                (Samples.Shop, "process"),
            ],
            Samples.ReadJob(files).Errors.Select(e => (e.File, e.Key)));
    }

    [Fact]
    public void AFileOfAnotherKindIsOneError()
    {
        var error = Assert.Single(Samples.ReadWith(Samples.Job, "../vehicles/plover.toml", "../shops/saltmarsh-fabrication.toml").Errors);
        Assert.Equal((Samples.Shop, 2, "profile"), (error.File, error.Line, error.Key));
        Assert.Contains("describes a shop; a vehicle is needed", ProfileErrorText.Advice(error));
    }

    [Fact]
    public void AMaterialGivenTwiceIsSaidTwiceOnlyWhereItMatters()
    {
        var errors = Samples.ReadWith(Samples.Shop, "designation = \"DC01\"", "designation = \"S235JR\"").Errors;
        Assert.Contains(errors, e => e is { Key: "materials[2].designation", Read: "\"S235JR\"" });
        Assert.Contains(errors, e => e is { Key: "test_bends[2].material", Read: "\"DC01\"" });
        Assert.Equal(2, errors.Length);
    }

    [Theory]
    [InlineData("[quadrant]", "[quadrant")]
    [InlineData("[quadrant]", "quadrant]")]
    [InlineData("[quadrant]", "[quadrant]]")]
    [InlineData("[quadrant]", "??? quadrant")]
    public void ABrokenHeaderHidesOnlyWhatStandsUnderIt(string old, string changed)
    {
        var files = Samples.Edit(Samples.Files, Samples.Body, Samples.Texts[Samples.Body].Replace("bore = 58", "bore = 5.8"), old, changed);
        files = Samples.Edit(files, Samples.Vehicle, Samples.Texts[Samples.Vehicle], "lever_ratio = 3.4", "lever_ratio = 0");
        Assert.Equal(
            [(Samples.Body, "bore"), (Samples.Body, ""), (Samples.Vehicle, "pedal.lever_ratio")],
            Samples.ReadJob(files).Errors.Select(e => (e.File, e.Key)));
    }

    [Fact]
    public void MistakesAfterABrokenHeaderComeOutToo()
    {
        var text = Samples.Texts[Samples.Shop].Replace("[[dies]]\nopening = 12", "[dies]]\nopening = 12").Replace("k = 0.42", "k = 0.62");
        var errors = ProfileReader.ReadShop("s.toml", MemoryFileSource.Empty.With("s.toml", text)).Errors;
        Assert.Equal(["", "test_bends[1].k"], errors.Select(e => e.Key));
        Assert.Contains("[[name]]", ProfileErrorText.Advice(errors[0]));
    }

    [Fact]
    public void AListLeftOpenIsOneError()
    {
        var errors = Samples.ReadWith(Samples.Body, "at = [-50, -22, -12]", "at = [-50, -22, -12").Errors;
        Assert.Equal(Samples.LineOf(Samples.Body, "at = [-50, -22, -12]") + 1, Assert.Single(errors).Line);
        Assert.Contains("the one before", ProfileErrorText.Advice(errors[0]));
    }

    [Fact]
    public void BytesThatAreNotUtf8AreFoundByLine()
    {
        byte[] bytes = [.. "profile = \"vehicle\"\nname = \"éPl"u8, 0xF6, .. "ver\"\n"u8];
        var error = Assert.Single(ProfileReader.ReadVehicle("v.toml", MemoryFileSource.Empty.With("v.toml", bytes)).Errors);
        Assert.Equal(("v.toml", 2, 12, "byte 0xF6"), (error.File, error.Line, error.Column, ProfileErrorText.Read(error)));
        Assert.Contains("UTF-8", ProfileErrorText.Advice(error));
    }

    [Fact]
    public void WhatWasReadIsRightAfterCharactersOfTwoUnits()
    {
        var text = Samples.Texts[Samples.Body].Replace("Alder 58", "é😀😀").Replace("bore = 58", "bore = \"58 lbf\"");
        Assert.Equal("\"58 lbf\"", Assert.Single(Samples.ReadJob(Samples.Files.With(Samples.Body, text)).Errors).Read);
    }

    [Fact]
    public void AByteOrderMarkAndCarriageReturnsAreNoMistake()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Samples.Texts[Samples.Vehicle].Replace("\n", "\r\n"))];
        Assert.True(ProfileReader.ReadVehicle("v.toml", MemoryFileSource.Empty.With("v.toml", bytes)).IsRead);
    }

    [Fact]
    public void ABrokenLineWithCarriageReturnsIsReportedAlone()
    {
        var text = Samples.Texts[Samples.Vehicle].Replace("outer_diameter = 5", "outer_diameter = 5 mm").Replace("\n", "\r\n");
        var error = Assert.Single(ProfileReader.ReadVehicle("v.toml", MemoryFileSource.Empty.With("v.toml", text)).Errors);
        Assert.Equal("Put a value with its unit in quotes: \"5 mm\".", ProfileErrorText.Advice(error));
    }

    [Fact]
    public void AFileOfMoreThanAMebibyteIsNotRead()
    {
        var limit = new string('#', 1 << 20);
        Assert.Equal("a longer file", ProfileErrorText.Read(Assert.Single(ProfileReader.ReadShop("s.toml", MemoryFileSource.Empty.With("s.toml", limit + "#")).Errors)));
        Assert.DoesNotContain(ProfileReader.ReadShop("s.toml", MemoryFileSource.Empty.With("s.toml", limit)).Errors, e => e.Problem is FileUnread);
    }

    [Fact]
    public void AnEmptyFileMissesItsKeys()
    {
        var errors = ProfileReader.ReadVehicle("v.toml", MemoryFileSource.Empty.With("v.toml", "")).Errors;
        Assert.Equal(["cable", "name", "pedal", "profile"], errors.Select(e => e.Key));
        Assert.All(errors, e => Assert.Equal(("nothing", 1, 1), (ProfileErrorText.Read(e), e.Line, e.Column)));
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a=")]
    public void DeepNestingIsAnErrorAndNotACrash(string open)
    {
        var text = "a = " + string.Concat(Enumerable.Repeat(open, 200_000));
        Assert.NotEmpty(ProfileReader.ReadVehicle("v.toml", MemoryFileSource.Empty.With("v.toml", text)).Errors);
    }

    [Fact]
    public void TheMessageHasTwoLines()
    {
        var error = Assert.Single(Samples.ReadWith(Samples.Body, "groove_width = 3\n", "groove_width = \"12 lbf\"\n").Errors);
        var line = Samples.LineOf(Samples.Body, "groove_width = 3");
        Assert.Equal(
            $"throttle-bodies/alder-58.toml:{line}:16: quadrant.groove_width: read \"12 lbf\"; allowed: a length from 0.5 to 20 mm\n"
            + "    lbf is a unit of force. Give a length in mm, cm, m, in or ft.",
            ProfileErrorText.Format(error));
        var missing = Assert.Single(ProfileReader.ReadJob("jobs/heron.toml", Samples.Files).Errors);
        Assert.Equal(
            "jobs/heron.toml: read no such file; allowed: the path of a file that exists\n    Check the path and its spelling, including capital letters.",
            ProfileErrorText.Format(missing));
    }

    [Theory]
    [InlineData("a/b.toml", "../c/d.toml", "c/d.toml")]
    [InlineData("b.toml", "../c/./d.toml", "../c/d.toml")]
    [InlineData("/a/b.toml", "c.toml", "/a/c.toml")]
    [InlineData("../a/b.toml", "../../c.toml", "../../c.toml")]
    public void PathsAreThoseBesideTheFile(string from, string relative, string meant) => Assert.Equal(meant, ProfilePath.Beside(from, relative));
}
