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

    private static System.Text.Json.Nodes.JsonNode? At(System.Text.Json.Nodes.JsonNode? node, string key)
    {
        foreach (var part in key.Split('.', '['))
        {
            node = part.EndsWith(']') ? node?.AsArray()[int.Parse(part[..^1], System.Globalization.CultureInfo.InvariantCulture) - 1] : node?.AsObject()[part];
        }

        return node;
    }
}
