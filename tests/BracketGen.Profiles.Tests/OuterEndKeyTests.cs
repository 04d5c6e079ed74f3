using BracketGen.Mechanism.Cables;

namespace BracketGen.Profiles.Tests;

/// <summary>The kinds of outer end in a vehicle's profile.</summary>
public sealed class OuterEndKeyTests
{
    [Fact]
    public void A_bulkhead_ferrule_is_read() => Assert.Equal(
        new BulkheadFerrule(8, 1, 16, 13, 5, 12),
        Read("kind = \"bulkhead ferrule\"\nthread = \"M8x1\"\nthread_length = 16\nacross_flats = 13\nnut_height = 5\nrange = 12\n").Value!.Vehicle.Cable.OuterEnd);

    [Fact]
    public void A_clipped_ferrule_is_read() => Assert.Equal(
        new ClippedFerrule(8, 12, 3.2, 6, 13),
        Read("kind = \"clipped ferrule\"\nnose_diameter = 8\nshoulder_diameter = 12\ngrip = 3.2\nnose_length = 6\nclip_diameter = 13\n").Value!.Vehicle.Cable.OuterEnd);

    [Fact]
    public void A_push_in_end_is_read() => Assert.Equal(
        new PushInEnd(9, 13, 0.8, 3.2, 7),
        Read("kind = \"push-in end\"\nhole_diameter = 9\nshoulder_diameter = 13\nmin_sheet = 0.8\nmax_sheet = 3.2\nreach = 7\n").Value!.Vehicle.Cable.OuterEnd);

    [Fact]
    public void A_square_push_in_end_is_read() => Assert.Equal(
        new PushInEnd(12, 18, 0.8, 3.2, 7) { Corner = 0.8 },
        Read("kind = \"square push-in end\"\nhole_side = 12\ncorner_radius = 0.8\nshoulder_diameter = 18\nmin_sheet = 0.8\nmax_sheet = 3.2\nreach = 7\n").Value!.Vehicle.Cable.OuterEnd);

    [Fact]
    public void Flats_along_the_thread_are_read() => Assert.Equal(
        new ThreadedAdjuster(8, 1, 14, 13, 5) { ThreadFlats = 7 },
        Read("kind = \"threaded adjuster\"\nthread = \"M8x1\"\nrange = 14\nacross_flats = 13\nnut_height = 5\nthread_flats = 7\n").Value!.Vehicle.Cable.OuterEnd);

    [Theory]
    [InlineData("kind = \"threaded adjuster\"\nthread = \"M8x1\"\nrange = 14\nacross_flats = 13\nnut_height = 5\nthread_flats = 8\n", "thread_flats")]
    [InlineData("kind = \"square push-in end\"\nhole_side = 12\ncorner_radius = 6\nshoulder_diameter = 18\nmin_sheet = 0.8\nmax_sheet = 3.2\nreach = 7\n", "hole_side")]
    [InlineData("kind = \"square push-in end\"\nhole_side = 12\nshoulder_diameter = 12\nmin_sheet = 0.8\nmax_sheet = 3.2\nreach = 7\n", "shoulder_diameter")]
    [InlineData("kind = \"bulkhead ferrule\"\nthread = \"M8x1\"\nthread_length = 9\nacross_flats = 13\nnut_height = 5\n", "thread_length")]
    [InlineData("kind = \"clipped ferrule\"\nnose_diameter = 8\nshoulder_diameter = 12\ngrip = 6.2\nnose_length = 6\nclip_diameter = 13\n", "nose_length")]
    [InlineData("kind = \"clipped ferrule\"\nnose_diameter = 8\nshoulder_diameter = 12\ngrip = 3.2\nnose_length = 6\nclip_diameter = 7\n", "clip_diameter")]
    [InlineData("kind = \"push-in end\"\nhole_diameter = 9\nshoulder_diameter = 13\nmin_sheet = 3.4\nmax_sheet = 3.2\nreach = 7\n", "max_sheet")]
    [InlineData("kind = \"push-in end\"\nhole_diameter = 9\nshoulder_diameter = 8\nmin_sheet = 0.8\nmax_sheet = 3.2\nreach = 7\n", "shoulder_diameter")]
    public void What_cannot_be_is_told_at_its_key(string end, string key) =>
        Assert.Contains(Read(end).Errors, e => e.Key.EndsWith(key, StringComparison.Ordinal));

    private static ProfileResult<Design.Inputs.Job> Read(string end)
    {
        var text = Samples.Texts[Samples.Vehicle];
        var from = text.IndexOf("[cable.outer_end]", StringComparison.Ordinal) + "[cable.outer_end]".Length;
        var to = text.IndexOf("\n[", from, StringComparison.Ordinal);
        return Samples.ReadWith(Samples.Vehicle, text[from..to], "\n" + end);
    }
}
