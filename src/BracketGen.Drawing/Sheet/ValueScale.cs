using System.Globalization;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>Colours for values from nothing to the most there is, in steps that a grey print keeps apart too.</summary>
/// <remarks>From pale yellow over orange to dark violet: each step is darker than the one before.</remarks>
/// <param name="Most">Value of the darkest step's upper end, more than zero.</param>
internal sealed record ValueScale(double Most)
{
    /// <summary>Number of steps.</summary>
    public const int Steps = 10;

    private static readonly (double At, double Red, double Green, double Blue)[] Stops =
    [
        (0, 255, 250, 215), (0.35, 252, 190, 90), (0.65, 214, 84, 56), (1, 66, 14, 76),
    ];

    /// <summary>A polygon in the colour of a value.</summary>
    public Shade Shade(double value, params Vector2[] points)
    {
        var step = Math.Clamp((int)(Steps * value / Most), 0, Steps - 1);
        var at = step / (Steps - 1.0);
        var i = 0;
        while (i < Stops.Length - 2 && at > Stops[i + 1].At)
        {
            i++;
        }

        var (a, b) = (Stops[i], Stops[i + 1]);
        var part = (at - a.At) / (b.At - a.At);
        byte Mix(double from, double to) => (byte)Math.Round(from + part * (to - from));
        return new([.. points], Mix(a.Red, b.Red), Mix(a.Green, b.Green), Mix(a.Blue, b.Blue));
    }

    /// <summary>A triangle cut into the steps of the scale, its values straight between the corners.</summary>
    public IEnumerable<Shade> Bands(params (Vector2 Point, double Value)[] corners)
    {
        int StepOf(double value) => Math.Clamp((int)(Steps * value / Most), 0, Steps - 1);
        for (var step = StepOf(corners.Min(c => c.Value)); step <= StepOf(corners.Max(c => c.Value)); step++)
        {
            var band = corners;
            if (step > 0)
            {
                band = Clip(band, step * Most / Steps, 1);
            }

            if (step < Steps - 1)
            {
                band = Clip(band, (step + 1) * Most / Steps, -1);
            }

            if (band.Length >= 3)
            {
                yield return Shade((step + 0.5) / Steps * Most, [.. band.Select(c => c.Point)]);
            }
        }
    }

    // The part of a convex polygon whose values lie on one side of a limit (I. E. Sutherland, G. W. Hodgman, Communications of the ACM 17, 1974).
    private static (Vector2 Point, double Value)[] Clip((Vector2 Point, double Value)[] polygon, double limit, int side)
    {
        var kept = new List<(Vector2, double)>();
        for (var i = 0; i < polygon.Length; i++)
        {
            var (a, b) = (polygon[i], polygon[(i + 1) % polygon.Length]);
            if (side * (a.Value - limit) >= 0)
            {
                kept.Add(a);
            }

            if ((a.Value - limit) * (b.Value - limit) < 0)
            {
                var part = (limit - a.Value) / (b.Value - a.Value);
                kept.Add((a.Point + part * (b.Point - a.Point), limit));
            }
        }

        return [.. kept];
    }

    /// <summary>The scale as a bar to read values from; its lower left corner is the origin.</summary>
    /// <param name="title">Written above it.</param>
    /// <param name="format">How a value is written.</param>
    public SheetBlock Legend(string title, Func<double, string> format)
    {
        const double width = 5, height = 5;
        var items = new List<SheetItem>();
        for (var i = 0; i < Steps; i++)
        {
            var y = i * height;
            items.Add(Shade((i + 0.5) / Steps * Most, new(0, y), new(width, y), new(width, y + height), new(0, y + height)));
        }

        items.Add(Polyline.Rectangle(new(Vector2.Zero, new(width, Steps * height)), LineKind.Rule));
        for (var i = 0; i <= Steps; i += 2)
        {
            items.Add(new TextItem(format(Most * i / Steps), new(width + 2, i * height - TextHeight.Small / 2), TextHeight.Small));
        }

        items.Add(new TextItem(title, new(0, Steps * height + 4), TextHeight.Small, Weight: FontWeight.Bold));
        return SheetBlock.Around(items);
    }

    /// <summary>The scale up to <paramref name="most"/> rounded up to a readable number.</summary>
    public static ValueScale UpTo(double most)
    {
        if (!(most > 0))
        {
            return new(1);
        }

        var power = Math.Pow(10, Math.Floor(Math.Log10(most)));
        return new(power * new[] { 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10 }.First(f => f * power >= most * (1 - Tolerance.LimitSlack)));
    }

    /// <summary>A value with as many figures as the legend needs.</summary>
    public static string Plain(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
