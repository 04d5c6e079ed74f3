using BracketGen.Profiles.Errors;
using BracketGen.TestSupport;
using BracketGen.Words.Profiles;

namespace BracketGen.Profiles.Tests;

/// <summary>The table of an adapter ring, and every mistake in it.</summary>
public sealed class AdapterRingKeyTests
{
    private const string Body = "throttle-bodies/hornbeam-70-ring.toml", Job = "jobs/whimbrel-hornbeam-70-ring.toml";

    private static readonly string[] Paths = [Job, Body, "vehicles/whimbrel.toml", "shops/saltmarsh-fabrication.toml"];

    private static readonly MemoryFileSource Files = Paths.Aggregate(MemoryFileSource.Empty, (f, p) => f.With(p, TextOf(p)));

    private static string TextOf(string path) => File.ReadAllText(RepositoryRoot.PathOf(["profiles", .. path.Split('/')]));

    // The first of several places.
    private static ProfileResult<Design.Inputs.Job> With(string old, string now, string file = Body)
    {
        var text = TextOf(file);
        var at = text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0, old);
        return ProfileReader.ReadJob(Job, Files.With(file, text[..at] + now + text[(at + old.Length)..]));
    }

    [Fact]
    public void The_shipped_ring_is_read()
    {
        var mount = ProfileReader.ReadJob(Job, Files).Value!.Body.Mount;
        Assert.Equal(4, mount.Ring!.Bolts.Length);
        Assert.Equal("S355MC", mount.Ring.Sheet.Material.Designation);
        Assert.Equal(mount.Ring.Thickness, mount.Plane.HeightOf(mount.Ring.Bolts[0].At.Vector) * -1, 1e-9);
        Assert.Null(mount.Ring.Bolts[0].ThreadDepth);
    }

    [Theory]
    [InlineData("material = \"S355MC\"", "place = \"under the flange\"\nmaterial = \"S355MC\"", "mount.adapter_ring.place", "moves the throttle body and needs gaskets")]
    [InlineData("length = 140", "length = 19", "mount.adapter_ring.bolts[1].engagement", "Measure the bolt under its head")]
    [InlineData(", -37, -21.4]", ", -37, -90.4]", "mount.adapter_ring.bolts[4].at", "Measure both again")]
    [InlineData(", 37, -21.4]", ", 20, -45.4]", "mount.adapter_ring.bolts[1].at", "reaches into the bore")]
    [InlineData("at = [-68.5, 62, -28]", "at = [-65.5, 62, -28]\nspacer = 3", "mount.holes[1].spacer", "Delete the line")]
    [InlineData("room_behind = 25", "room_behind = 25\nplus_minus = [0.2, 0.2, 0.2]", "mount.holes[1].plus_minus", "Delete the line")]
    [InlineData("[mount.adapter_ring]", "[mount.second_face]\nnormal = [0, 1, 0]\n\n[[mount.second_face.holes]]\nat = [-90, 80, -20]\nthread = \"M6\"\nboss_diameter = 16\n\n[mount.adapter_ring]", "mount.second_face", "Take the second face out of the mount, or the ring")]
    public void Each_mistake_is_one_plain_error(string old, string now, string key, string advice)
    {
        var error = Assert.Single(With(old, now).Errors);
        Assert.Equal(key, error.Key);
        Assert.IsType<RingWrong>(error.Problem);
        Assert.Contains(advice, ProfileErrorText.Format(error), StringComparison.Ordinal);
    }

    [Fact]
    public void One_bolt_is_too_few()
    {
        var text = TextOf(Body);
        var from = text.IndexOf("[[mount.adapter_ring.bolts]]", text.IndexOf("[[mount.adapter_ring.bolts]]", StringComparison.Ordinal) + 1, StringComparison.Ordinal);
        var error = Assert.Single(With(text[from..text.IndexOf("[valve]", StringComparison.Ordinal)], "").Errors);
        Assert.Equal("mount.adapter_ring.bolts", error.Key);
    }

    [Fact]
    public void Slots_on_a_ring_are_refused()
    {
        var error = Assert.Single(With("[preferences]", "[preferences]\nmount_slots = { travel = 6, direction = [0, 1, 0] }", Job).Errors);
        Assert.IsType<RingWrong>(error.Problem);
        Assert.Contains("mount_slots", ProfileErrorText.Format(error), StringComparison.Ordinal);
    }
}
