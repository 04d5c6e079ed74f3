using System.Text.Json;
using BracketGen.Drawing.Measuring;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Web.Folder;
using BracketGen.Web.Measuring;
using BracketGen.Words.Profiles;
using BracketGen.Words.Report;

namespace BracketGen.Web.Tests;

/// <summary>The measuring path: every question has its place in the profile, and where there is one its sketch.</summary>
public class MeasuringTests
{
    [Theory]
    [InlineData("vehicle", "vehicles/plover.toml")]
    [InlineData("vehicle", "vehicles/dunlin.toml")]
    [InlineData("vehicle", "vehicles/whimbrel.toml")]
    [InlineData("throttle body", "throttle-bodies/alder-58.toml")]
    [InlineData("throttle body", "throttle-bodies/rowan-64.toml")]
    public void Every_required_number_of_an_example_is_asked_for(string kind, string file)
    {
        var text = Examples.Read(file)!;
        var keys = MeasuringPath.Of(kind, text).Select(s => s.Key).ToHashSet();

        // Whatever is asked, once taken away, is missed by the reader or may be left out; whatever the reader misses is asked.
        var empty = $"profile = \"{kind}\"\n";
        var files = MemoryFileSource.Empty.With("a.toml", empty);
        var errors = kind == "vehicle" ? ProfileReader.ReadVehicle("a.toml", files).Errors : ProfileReader.ReadThrottleBody("a.toml", files).Errors;
        foreach (var missing in errors.Where(e => e.IsMissing).Select(e => e.Key))
        {
            Assert.Contains(keys, k => k == missing || k.StartsWith(missing + ".", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Questions_about_numbers_have_a_sketch_that_is_there()
    {
        foreach (var (kind, file) in new[] { ("vehicle", "vehicles/plover.toml"), ("throttle body", "throttle-bodies/rowan-64.toml") })
        {
            var sketches = MeasuringPath.Sketches(kind);
            foreach (var step in MeasuringPath.Of(kind, Examples.Read(file)!))
            {
                Assert.InRange(step.Sketch, -1, sketches.Count - 1);
                Assert.True(step.Sketch >= 0 || step.Form is "Text" || step.Key == "cable.fleet_limit" || step.Key.Split('.', '[')[0] is "controller" or "engine" or "other_cables", step.Key);
                foreach (var letter in step.Letter.Split(", ").Where(l => l.Length > 0))
                {
                    Assert.Contains($">{letter}</text>", sketches[step.Sketch], StringComparison.Ordinal);
                }

                // A voltage cannot be drawn; the sketch shows two holes and two springs, tapped, and no depth.
                var isNumber = step.Form is "Quantity" or "Measured" or "Point" && step.Key.Split('.')[^1] is not ("thread_depth" or "flatness" or "spacer");
                if (isNumber && step.Sketch >= 0 && !step.Key.EndsWith("_volts", StringComparison.Ordinal) && !step.Key.Contains("[3]", StringComparison.Ordinal))
                {
                    Assert.True(step.Letter.Length > 0, step.Key);
                }
            }
        }
    }

    // Answer after answer from the empty file to one that reads: with what an example says.
    [Theory]
    [InlineData("vehicle", "vehicles/plover.toml")]
    [InlineData("throttle body", "throttle-bodies/alder-58.toml")]
    public void Answering_gives_a_profile(string kind, string file)
    {
        var wanted = ProfileValues.Of(Examples.Read(file)!);
        var text = $"profile = \"{kind}\"\n";
        for (var i = 0; MeasuringPath.Of(kind, text) is var steps && i < steps.Count; i++)
        {
            var step = steps[i];
            if (step.Form == "Count")
            {
                for (var n = 0; n < (step.Key is "mount.holes" or "return_springs.each" ? 2 : 0); n++)
                {
                    text = ProfileEditor.Apply(text, step.Key + "[+]", JsonDocument.Parse("{}").RootElement)!;
                }
            }
            else if (step.Key != "quadrant.groove" && At(wanted, step.Key) is { } value)
            {
                text = ProfileEditor.Apply(text, step.Key, JsonDocument.Parse(value.ToJsonString()).RootElement)!;
                Assert.NotNull(text);
            }
        }

        var files = MemoryFileSource.Empty.With("a.toml", text);
        var errors = kind == "vehicle" ? ProfileReader.ReadVehicle("a.toml", files).Errors : ProfileReader.ReadThrottleBody("a.toml", files).Errors;
        Assert.Empty(errors.Select(ProfileErrorText.Format));
    }

    // A screen for each section of the worksheet, in its order; every question stands on one of them.
    [Theory]
    [InlineData("vehicle", "vehicles/plover.toml")]
    [InlineData("vehicle", "vehicles/whimbrel.toml")]
    [InlineData("throttle body", "throttle-bodies/alder-58.toml")]
    [InlineData("throttle body", "throttle-bodies/hornbeam-70.toml")]
    public void Screens_follow_the_worksheet(string kind, string file)
    {
        foreach (var text in new[] { Examples.Read(file)!, $"profile = \"{kind}\"\n" })
        {
            var steps = MeasuringPath.Of(kind, text);
            var screens = MeasuringPath.Screens(kind, steps);
            Assert.Equal(Enumerable.Range(0, steps.Count), screens.SelectMany(s => s.Steps).Order());
            var sections = kind == "vehicle" ? WorksheetSketches.OfVehicle : WorksheetSketches.OfThrottleBody;
            var titles = screens.Where(s => s.Sketch >= 0).Select(s => s.Title).ToArray();
            Assert.Equal(sections.Select(s => s.Title).Where(titles.Contains), titles);

            // On a screen the letters come in the alphabet's order: A before B, Z before AA.
            foreach (var screen in screens)
            {
                var letters = screen.Steps.Select(n => steps[n]).Where(s => s.Letter.Length > 0).Select(s => (Item: Item(s.Key), First: s.Letter.Split(", ")[0])).GroupBy(l => l.Item);
                Assert.All(letters, group => Assert.Equal(group.Select(l => l.First).OrderBy(l => l.Length).ThenBy(l => l, StringComparer.Ordinal), group.Select(l => l.First)));
            }
        }

        // Holes are asked row by row, as on the sheet; of springs and keep-outs each has its own rows.
        static string Item(string key) => key.StartsWith("return_springs.each", StringComparison.Ordinal) || key.StartsWith("keep_out", StringComparison.Ordinal) || key.StartsWith("other_cables", StringComparison.Ordinal) ? key.Split('.')[0] + key.Split(']')[0] : "";
    }

    // What the page wants is what the reader misses, so that nothing that is marked as given is missing later.
    [Theory]
    [InlineData("vehicle", "vehicles/plover.toml")]
    [InlineData("throttle body", "throttle-bodies/alder-58.toml")]
    public void With_every_wanted_answer_the_profile_reads(string kind, string file)
    {
        var wanted = ProfileValues.Of(Examples.Read(file)!);
        var text = $"profile = \"{kind}\"\n[mount]\n[[mount.holes]]\n[[mount.holes]]\n[[return_springs.each]]\n[[return_springs.each]]\n";
        text = kind == "vehicle" ? $"profile = \"{kind}\"\n" : text;
        while (MeasuringPath.Of(kind, text).FirstOrDefault(s => s.Default is null && s.Form != "Count" && At(ProfileValues.Of(text), s.Key) is null) is { } step)
        {
            text = ProfileEditor.Apply(text, step.Key, JsonDocument.Parse(At(wanted, step.Key)!.ToJsonString()).RootElement)!;
        }

        var files = MemoryFileSource.Empty.With("a.toml", text);
        var errors = kind == "vehicle" ? ProfileReader.ReadVehicle("a.toml", files).Errors : ProfileReader.ReadThrottleBody("a.toml", files).Errors;
        Assert.Empty(errors.Select(ProfileErrorText.Format));
    }

    [Theory]
    [InlineData("plover", "alder-58")]
    [InlineData("dunlin", "rowan-64")]
    [InlineData("whimbrel", "hornbeam-70")]
    public void What_is_drawn_to_scale_is_what_the_reader_reads(string vehicle, string body)
    {
        var read = ProfileReader.ReadThrottleBody("a.toml", MemoryFileSource.Empty.With("a.toml", Examples.Read($"throttle-bodies/{body}.toml")!)).Value!;
        var drawn = SoFar.Body(ProfileValues.Of(Examples.Read($"throttle-bodies/{body}.toml")!));
        Assert.Equal(read.Opens == BracketGen.Mechanism.Throttles.OpeningSense.Clockwise, drawn.OpensClockwise);
        Assert.Equal(read.Quadrant.OuterRadius, drawn.OuterRadius!.Value, 9);
        Assert.Equal(read.Quadrant.Rotation.Value.Radians, drawn.Rotation!.Value, 9);
        Assert.Equal(read.Quadrant.Pocket.Value.Radians, drawn.PocketAngle!.Value, 9);
        Assert.Equal(read.Quadrant.GrooveExtent.Radians, drawn.GrooveExtent!.Value, 9);

        var cable = ProfileReader.ReadVehicle("a.toml", MemoryFileSource.Empty.With("a.toml", Examples.Read($"vehicles/{vehicle}.toml")!)).Value!.Cable;
        var shown = SoFar.Cable(ProfileValues.Of(Examples.Read($"vehicles/{vehicle}.toml")!));
        Assert.Equal(cable.FreeInnerLength.Value, shown.FreeInnerLength!.Value, 9);
        Assert.Equal(cable.WireDiameter, shown.Wire!.Value, 9);
    }

    private static System.Text.Json.Nodes.JsonNode? At(System.Text.Json.Nodes.JsonNode? node, string key)
    {
        foreach (var part in key.Split('.', '['))
        {
            node = part.EndsWith(']') ? node?.AsArray()[int.Parse(part[..^1], System.Globalization.CultureInfo.InvariantCulture) - 1] : node?.AsObject()[part];
        }

        return node;
    }
}
