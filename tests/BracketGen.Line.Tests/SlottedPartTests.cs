using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Line.Parts;
using BracketGen.Profiles;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Words.Line;
using BracketGen.Words.Profiles;

namespace BracketGen.Line.Tests;

/// <summary>Slotted mount holes in a line.</summary>
public sealed class SlottedPartTests
{
    private const string Slots = "\n[preferences]\nmount_slots = { travel = 3, direction = [0, 1, 0] }\n\n[numbers]";

    [Fact]
    public void A_part_with_slots_is_kept_and_comes_back()
    {
        var (_, run, parts) = Estuary.Solved;
        var part = parts[0];
        var bracket = part.Bracket with
        {
            Holes = [.. part.Bracket.Holes.Select(h => h.Purpose == HolePurpose.Bolt ? h with { Outline = new SlottedHole(Vector2.FromPolar(1, Angle.FromDegrees(30)), 4) } : h)],
        };
        var again = PartShape.Of(bracket).ToBracket(run.Family, part.Combination.Vehicle.Value!.Cable, part.Job.Preferences.StopOpening)!;
        Assert.Equal(bracket.Holes.Select(h => h.Outline), again.Holes.Select(h => h.Outline));
        Assert.NotEqual(PartFingerprint.Of(part.Bracket), PartFingerprint.Of(bracket));
        Assert.Contains(PartFactsText.Of(bracket, BracketGen.Units.UnitSystem.Metric), f => f.Value.StartsWith("slotted hole", StringComparison.Ordinal) && f.Value.Contains("along 30.00°", StringComparison.Ordinal));
    }

    // Square to the mount face of a throttle body it is a mistake of that body's parts alone.
    [Fact]
    public void A_direction_that_does_not_lie_in_a_mount_face_is_told_of_that_body()
    {
        string Family(string direction) => Estuary.Small.Replace("\n[numbers]", Slots.Replace("[0, 1, 0]", direction, StringComparison.Ordinal), StringComparison.Ordinal);
        var along = FamilyReader.Read(Estuary.Path, Estuary.Files.With(Estuary.Path, Family("[0, 1, 0]")));
        Assert.True(along.IsRead, string.Join('\n', along.Errors.Select(ProfileErrorText.Format)));
        var bodies = along.Value.Bodies.Where(b => b.Value is not null).ToList();
        Assert.Contains(bodies, b => b.Code == "A58");
        var square = FamilyReader.Read(Estuary.Path, Estuary.Files.With(Estuary.Path, Family("[0, 0, 1]"))).Value!.Bodies.Single(b => b.Code == "A58");
        Assert.Null(square.Value);
        var error = Assert.Single(square.Errors);
        Assert.Equal("preferences.mount_slots.direction", error.Key);
        Assert.Contains("on A58", ProfileErrorText.Format(error), StringComparison.Ordinal);
    }
}
