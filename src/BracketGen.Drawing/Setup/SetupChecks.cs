using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;

namespace BracketGen.Drawing.Setup;

/// <summary>What is checked with the engine off before the first start, with boxes to tick.</summary>
internal sealed class SetupChecks(Solution solution, SetupSettings settings)
{
    /// <summary>How to get the engine hot without the pedal.</summary>
    public const string Hot = "Engine off for every check. Cold: as it stands. Hot: take the wire off the quadrant, let the engine warm up at idle, switch it off, put the wire back.";

    /// <summary>The checks.</summary>
    public IEnumerable<string> All()
    {
        var travel = solution.Travel;
        yield return $"Pedal released: the valve is on its closed stop{Reads(settings.ClosedVolts)}, and the wire has its free play, {settings.FreePlay}.";
        yield return "Pedal let slip from a quarter, a half and three quarters of its travel and from the floor: each time the valve is back on its closed stop at once.";
        yield return solution.Job.Body.Springs.Count > 1
            ? "The same with each return spring unhooked in turn: either closes the valve alone."
            : "There is a second return spring that closes the valve alone with the first one unhooked. The throttle body was given with one: fit another.";
        yield return travel.ReachesWideOpen
            ? $"Pedal on the floor, by foot, carpet and mat in place: the valve is on its wide-open stop{Reads(settings.FlooredVolts)}."
            : $"Pedal on the floor, by foot, carpet and mat in place: the valve is at {SetupWords.Degrees(travel.Reached)}{Reads(settings.FlooredVolts)}.";
        yield return "Slowly from stop to stop, with a light: wire, end fitting and quadrant touch nothing and nothing can catch them; the wire lies in its groove; no strand is broken.";
        yield return "Engine rocked on its mounts both ways by a second person, pedal released and on the floor: the valve does not move by it, the free play stays, the outer does not come tight.";
        yield return $"With the wire slack neither the end fitting comes out of its pocket nor the outer out of {(solution.Bracket!.Stop.IsSlot ? "its slot" : "its hole")}.";
        yield return "Screws at their torque and marked with paint; lock nuts tight.";
        yield return "Covers, hoses and air filter in place, bonnet shut, steering from lock to lock: the pedal let slip once more, the valve closes at once.";
    }

    /// <summary>One check with its two boxes, no wider than a width (mm).</summary>
    public static SheetBlock Row(int number, string text, double width)
    {
        const double box = 4.2, column = 19, padding = 1.6, indent = 8, height = TextHeight.Small;
        var lines = TextFlow.Wrap(text, width - 2 * column - indent - padding, height);
        var step = TextFlow.LineSpacing * height;
        var tall = Math.Max(box, (TextFlow.Ascent + TextFlow.Descent) * height + (lines.Length - 1) * step) + 2 * padding;
        var first = -padding - TextFlow.Ascent * height;
        List<SheetItem> items =
        [
            Polyline.Rectangle(new(new(0, -tall), new(width, 0)), LineKind.Rule),
            new TextItem($"{number}.", new(padding, first), height),
            .. lines.Select((line, i) => new TextItem(line, new(indent, first - i * step), height)),
        ];
        foreach (var (label, i) in new[] { "cold", "hot" }.Select((l, i) => (l, i)))
        {
            var x = width - (2 - i) * column + 2;
            items.Add(Polyline.Rectangle(new(new(x, -padding - box), new(x + box, -padding)), LineKind.Box));
            items.Add(new TextItem(label, new(x + box + 1.6, first), height));
        }

        return new([.. items], new(new(0, -tall), new(width, 0)));
    }

    /// <summary>Blanks for what was read, and who answers for it.</summary>
    public static SheetBlock Readings(double width)
    {
        const double row = 8.5, height = TextHeight.Small;
        ImmutableArray<(string Label, double From, double To)>[] lines =
        [
            [("Sensor closed, V", 0, 0.25), ("floored, V", 0.26, 0.46), ("free play", 0.47, 0.7), ("pad travel", 0.71, 1)],
            [("Checked by", 0, 0.6), ("date", 0.62, 1)],
        ];
        List<SheetItem> items = [];
        for (var i = 0; i < lines.Length; i++)
        {
            var y = -(i + 1) * row + 1.5;
            foreach (var (label, from, to) in lines[i])
            {
                var text = new TextItem(label, new(from * width, y), height);
                items.Add(text);
                items.Add(new Stroke(new Vector2(from * width + text.Width + 1.5, y - 0.9), new(to * width, y - 0.9), LineKind.Rule));
            }
        }

        return new([.. items], new(new(0, -lines.Length * row), new(width, 0)));
    }

    private static string Reads(double? volts) => volts is { } v ? $", the sensor reads {SetupWords.Volts(v)}" : "";
}
