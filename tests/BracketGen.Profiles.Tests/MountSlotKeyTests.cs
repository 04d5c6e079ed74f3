using BracketGen.Geometry;
using BracketGen.Profiles.Editing;
using BracketGen.Words.Profiles;

namespace BracketGen.Profiles.Tests;

/// <summary>Slotted mount holes in jobs and in the files of brackets that are there already.</summary>
public sealed class MountSlotKeyTests
{
    private const string Job = "jobs/plover-alder-58-slotted.toml", Bracket = "brackets/market-slotted-34.toml";

    private static ProfileResult<Design.Inputs.Job> With(string old, string changed) =>
        ProfileReader.ReadJob(Job, Samples.Edit(Examples.Files, Job, Examples.Texts[Job], old, changed));

    private const string Slots = "mount_slots = { travel = 3, direction = [0, 1, 0] }";

    [Fact]
    public void TheyAreRead()
    {
        var read = ProfileReader.ReadJob(Job, Examples.Files).Value!;
        Assert.Equal(new(3, new(0, 1, 0)), read.Preferences.MountSlots);
        Assert.Equal(0.16, read.Body.Mount.FaceFriction);
        Assert.Equal(1, With(Slots, "mount_slots = { travel = \"1/8 in\", direction = [0, -7, 2] }").Value!.Preferences.MountSlots!.Way.Length, 1e-12);
        Assert.Null(With(Slots, "").Value!.Preferences.MountSlots);
    }

    [Theory]
    [InlineData("mount_slots = { travel = 3 }", "preferences.mount_slots.direction", "Add")]
    [InlineData("mount_slots = { direction = [0, 1, 0] }", "preferences.mount_slots.travel", "Add")]
    [InlineData("mount_slots = { travel = 0.2, direction = [0, 1, 0] }", "preferences.mount_slots.travel", "from 1 ")]
    [InlineData("mount_slots = { travel = 3, direction = [0, 0, 0] }", "preferences.mount_slots.direction", "direction")]
    [InlineData("mount_slots = { travel = 3, direction = [0, 0, 1] }", "preferences.mount_slots.direction", "whose normal is [0, 0, 1]")]
    [InlineData("mount_slots = { travel = 3, direction = [0.05, 0, 1] }", "preferences.mount_slots.direction", "Give a direction square to it")]
    [InlineData("mount_slots = 3", "preferences.mount_slots", "")]
    public void EachMistakeIsToldAtItsPlace(string line, string key, string says)
    {
        var error = Assert.Single(With(Slots, line).Errors);
        Assert.Equal(key, error.Key);
        Assert.Contains(says, ProfileErrorText.Format(error), StringComparison.Ordinal);
    }

    private static ProfileResult<Design.Part.MeasuredBracket> WithHole(string old, string changed) =>
        ProfileReader.ReadBracket(Bracket, Samples.Edit(Examples.Files, Bracket, Examples.Texts[Bracket], old, changed));

    private const string First = "slot = { length = { value = 9.6, plus_minus = 0.1 }, along = [1, 0] } # over all";

    [Fact]
    public void AMeasuredSlotIsRead()
    {
        var hole = ProfileReader.ReadBracket(Bracket, Examples.Files).Value!.Holes[0];
        Assert.Equal(3, hole.Slot!.Travel, 1e-12);
        Assert.Equal((new Vector2(1, 0), 0.1), (hole.Slot.Along, hole.SlotPlusMinus));
        Assert.Equal(new Vector2(1, 0), WithHole(First, "slot = { length = 9.6 }").Value!.Holes[0].Slot!.Along);

        // Of a length of any size; a direction of any length.
        var turned = WithHole(First, "slot = { length = 8, along = [0, -5] }").Value!;
        Assert.Equal((new Vector2(0, -1), 1.4), (turned.Holes[0].Slot!.Along, Math.Round(turned.Holes[0].Slot!.Travel, 9)));
        Assert.Contains("slot = { length = 8, along = [0, -1] }", BracketFileText.Of(turned), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("slot = { length = 6.6 }", "holes[1].slot", "more than")]
    [InlineData("slot = { along = [1, 0] }", "holes[1].slot.length", "Add")]
    [InlineData("slot = { length = 9.6, along = [0, 0] }", "holes[1].slot.along", "")]
    [InlineData("slot = { length = 9.6, width = 6.6 }", "holes[1].slot.width", "")]
    [InlineData("slot = { length = 40, along = [0, 1] }", "holes[1].at", "Measure the hole from the same edges")]
    public void EachMistakeOfAMeasuredSlotIsTold(string line, string key, string says)
    {
        var error = Assert.Single(WithHole(First, line).Errors);
        Assert.Equal(key, error.Key);
        Assert.Contains(says, ProfileErrorText.Format(error), StringComparison.Ordinal);
    }
}
