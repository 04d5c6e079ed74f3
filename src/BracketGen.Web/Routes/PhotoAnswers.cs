using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using BracketGen.Drawing.Measuring;
using BracketGen.Geometry;
using BracketGen.Photo;
using BracketGen.Profiles.Editing;
using BracketGen.Units;
using BracketGen.Web.Messages;
using BracketGen.Words.Page;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Routes;

/// <summary>Answers about a throttle body in a photograph, and the target to print.</summary>
internal static class PhotoAnswers
{
    private const int MaxPixels = 40000, MaxClicks = 60, MaxHoles = 12;

    // Longest length that is taken (mm).
    private const double MaxLength = 5000;

    // What stands in for a ± that was not given (mm): a steel rule held by hand. The print: 1 %. Common practice, no source.
    private const double RulePlusMinus = 0.5, PrintPlusMinus = 0.01;

    /// <summary>The target, as the worksheet command writes it.</summary>
    public static Task Target(HttpContext context) => Exchange.Send(context, WorksheetFile.WriteTarget(WorksheetFile.MetricPaper), "application/pdf");

    /// <summary>What was marked, measured.</summary>
    public static Task Measure(HttpContext context, PhotoMessage message)
    {
        if (!IsSound(message))
        {
            return Exchange.Refuse(context, StatusCodes.Status400BadRequest, ServerWords.NotOfThePage);
        }

        var units = message.Inches ? UnitSystem.Inch : UnitSystem.Metric;
        var lengths = new[] { message.Bar, message.Distance, message.ShaftHeight, message.RimHeight, message.GrooveHeight, message.HoleHeight, message.ToWire };
        if (lengths.SelectMany(l => new[] { l.Value, l.PlusMinus }).FirstOrDefault(t => t.Trim().Length > 0 && Read(t) is null) is { } wrong)
        {
            return Problem(context, PhotoText.NoLength(wrong));
        }

        var isSquare = IsSquare(message.Text);
        var answer = PhotoReading.Of(PhotographOf(message), BodyOf(message, isSquare));
        if (answer.Findings is not { } found)
        {
            return Problem(context, PhotoText.Problem(answer, units));
        }

        var isAssumed = lengths.Skip(1).Any(l => Read(l.Value) is not null && Read(l.PlusMinus) is null);
        return Exchange.SendJson(context, to =>
        {
            to.WriteNull("problem");
            Texts(to, "about",
            [
                .. PhotoText.About(found, units),
                PhotoText.FaceAssumed(PhotoReading.FaceTilt),
                .. Read(message.Bar.Value) is null ? [PhotoText.BarAssumed] : Array.Empty<string>(),
                .. isAssumed ? [PhotoText.HeightsAssumed(RulePlusMinus, units)] : Array.Empty<string>(),
                .. isSquare || !message.Holes.Any(h => h.Length > 0) ? Array.Empty<string>() : [PhotoText.HolesElsewhere],
            ]);
            to.WriteStartArray("readings");
            foreach (var (kind, item, text, changes) in Readings(found, units))
            {
                to.WriteStartObject();
                to.WriteString("label", PhotoText.Label(kind, item));
                to.WriteString("text", text);
                to.WriteStartArray("changes");
                foreach (var (key, value) in changes)
                {
                    to.WriteStartObject();
                    to.WriteString("key", key);
                    to.WritePropertyName("value");
                    if (value is null)
                    {
                        to.WriteNullValue();
                    }
                    else
                    {
                        value.WriteTo(to);
                    }

                    to.WriteEndObject();
                }

                to.WriteEndArray();
                to.WriteEndObject();
            }

            to.WriteEndArray();
            to.WriteStartArray("overlays");
            foreach (var line in found.Overlays)
            {
                to.WriteStartObject();
                to.WriteString("what", line.What.ToString().ToLowerInvariant());
                to.WriteStartArray("line");
                foreach (var p in line.Line)
                {
                    to.WriteNumberValue(Math.Round(p.X, 2));
                    to.WriteNumberValue(Math.Round(p.Y, 2));
                }

                to.WriteEndArray();
                to.WriteEndObject();
            }

            to.WriteEndArray();
            to.WriteStartObject("grid");
            to.WriteNumber("half", found.Grid!.Half);
            to.WriteNumber("count", found.Grid.Count);
            to.WriteStartArray("seen");
            foreach (var p in found.Grid.Seen)
            {
                to.WriteNumberValue(Math.Round(p.X, 2));
                to.WriteNumberValue(Math.Round(p.Y, 2));
            }

            to.WriteEndArray();
            to.WriteEndObject();
        });
    }

    private static IEnumerable<(PhotoReadingKind Kind, int Item, string Text, (string Key, JsonNode? Value)[] Changes)> Readings(PhotoFindings found, UnitSystem units)
    {
        if (found.OuterRadius is { } outer)
        {
            yield return (PhotoReadingKind.OuterRadius, 0, PhotoText.With(units, outer), [("quadrant.outer_radius", Rounded(outer.Value))]);
        }

        if (found.PitchRadius is { } pitch)
        {
            yield return (PhotoReadingKind.PitchRadius, 0, PhotoText.With(units, pitch), [("quadrant.groove", null), ("quadrant.pitch_radius", Pair(pitch))]);
        }

        if (found is { Cam.Length: > 0, IsCamOfWire: true })
        {
            JsonArray points = [];
            foreach (var p in found.Cam)
            {
                points.Add((JsonNode)new JsonObject { ["angle"] = Math.Round(p.Angle.Degrees, 1), ["radius"] = Rounded(p.Radius) });
            }

            JsonObject groove = new() { ["shape"] = "table", ["points"] = points, ["plus_minus"] = RoundedUp(found.CamPlusMinus) };
            yield return (PhotoReadingKind.Cam, 0, PhotoText.Cam(units, found.Cam.Length, found.CamPlusMinus), [("quadrant.pitch_radius", null), ("quadrant.groove", groove)]);
        }

        if (found.PocketAngle is { } pocket)
        {
            yield return (PhotoReadingKind.PocketAngle, 0, PhotoText.With(pocket),
                [("quadrant.pocket_angle", new JsonObject { ["value"] = Math.Round(pocket.Value.Degrees, 1), ["plus_minus"] = Math.Ceiling(pocket.PlusMinus.Degrees * 10) / 10 })]);
        }

        for (var i = 0; i < found.Holes.Length; i++)
        {
            if (found.Holes[i] is not { } hole)
            {
                continue;
            }

            var (at, off) = (hole.At, hole.PlusMinus);
            yield return (PhotoReadingKind.Hole, i + 1, PhotoText.At(units, at, off),
            [
                ($"mount.holes[{i + 1}].at", new JsonArray(Rounded(at.X), Rounded(at.Y), Rounded(at.Z))),
                ($"mount.holes[{i + 1}].plus_minus", new JsonArray(RoundedUp(off.X), RoundedUp(off.Y), RoundedUp(off.Z))),
            ]);
        }
    }

    private static JsonNode Rounded(double value) => JsonValue.Create(Math.Round(value, 2));

    // Up, so that the ± still holds what it held.
    private static JsonNode RoundedUp(double value) => JsonValue.Create(Math.Ceiling(value * 100) / 100);

    private static JsonObject Pair(Measured value) => new() { ["value"] = Rounded(value.Value), ["plus_minus"] = RoundedUp(value.PlusMinus) };

    private static Photograph PhotographOf(PhotoMessage message)
    {
        var bar = Read(message.Bar.Value) is { } measured
            ? new Measured(measured / PrintedTarget.Bar, (Read(message.Bar.PlusMinus) ?? RulePlusMinus) / PrintedTarget.Bar) : new(1, PrintPlusMinus, Evidence.Assumed);
        return new(
            message.Width, message.Height,
            [.. message.Marks.Where(m => m.Clicks.Length > 0).Select(m => new PhotoMark(m.Number, PrintedTarget.Marks[m.Number - 1], PrintedTarget.MarkPlusMinus, Points(m.Clicks)))],
            bar, Read(message.Distance.Value) is null ? null : Of(message.Distance));
    }

    private static MarkedBody BodyOf(PhotoMessage message, bool isSquare) => new()
    {
        Shaft = new(Of(message.ShaftHeight), message.IsShaftRim, Points(message.Shaft)),
        GrooveHeight = Of(message.GrooveHeight),
        Edge = message.Edge.Length == 0 ? null : new(Of(message.RimHeight), Read(message.ToWire.Value) is null ? null : Of(message.ToWire), message.IsCam, Points(message.Edge)),
        Pocket = message.Pocket.Length == 0 ? null : new(Of(message.RimHeight), false, Points(message.Pocket)),
        Holes = isSquare ? [.. message.Holes.Select(h => h.Length == 0 ? null : new MarkedPoint(Of(message.HoleHeight), message.AreHoleRims, Points(h)))] : [],
    };

    private static Measured Of(LengthMessage length) => new(Read(length.Value) ?? 0, Read(length.PlusMinus) ?? RulePlusMinus);

    private static double? Read(string text) =>
        HandWritten.Read(text) is { IsSure: true } read && (read.Unit is "" or "mm" or "in") && read.Value(0) * (read.Unit == "in" ? UnitTable.InchLength.Factor : 1) is var value
            && Math.Abs(value) <= MaxLength ? value : null;

    private static ImmutableArray<Vector2> Points(double[][] clicks) => [.. clicks.Select(c => new Vector2(c[0], c[1]))];

    private static bool IsSound(PhotoMessage message)
    {
        bool Are(double[][] clicks) => clicks.Length <= MaxClicks && clicks.All(c => c is { Length: 2 } && c.All(double.IsFinite) && Math.Abs(c[0]) <= 2 * MaxPixels && Math.Abs(c[1]) <= 2 * MaxPixels);
        return message.Width is > 0 and <= MaxPixels && message.Height is > 0 and <= MaxPixels && message.Holes.Length <= MaxHoles
            && message.Marks.All(m => m is not null && m.Number >= 1 && m.Number <= PrintedTarget.Marks.Length && Are(m.Clicks)) && message.Marks.DistinctBy(m => m.Number).Count() == message.Marks.Length
            && message.Shaft.Length > 0 && Are(message.Shaft) && Are(message.Edge) && Are(message.Pocket) && message.Holes.All(h => h is not null && Are(h));
    }

    // A mount face with no direction yet is taken as the worksheet has it: the target lies on it.
    private static bool IsSquare(string profile)
    {
        const double square = 1e-3;
        return (ProfileValues.Of(profile)["mount"] as JsonObject)?["normal"] is not JsonArray { Count: 3 } normal
            || normal.Select(n => n is JsonValue v && v.TryGetValue<double>(out var x) ? x : double.NaN).ToArray() is var n
            && Math.Sqrt(n[0] * n[0] + n[1] * n[1]) <= square * Math.Abs(n[2]) && n[2] > 0;
    }

    private static Task Problem(HttpContext context, string text) => Exchange.SendJson(context, to => to.WriteString("problem", text));

    private static void Texts(Utf8JsonWriter to, string name, IEnumerable<string> texts)
    {
        to.WriteStartArray(name);
        foreach (var text in texts)
        {
            to.WriteStringValue(text);
        }

        to.WriteEndArray();
    }
}
