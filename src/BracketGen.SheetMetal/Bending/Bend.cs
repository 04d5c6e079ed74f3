using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Bending;

/// <summary>One bend of a flat pattern: the strip of sheet between two flanges that becomes a cylinder.</summary>
/// <remarks>
/// Flat-pattern coordinates (mm). The strip begins on the line from <see cref="Start"/> to <see cref="End"/>, at the edge of
/// the flange <see cref="From"/>, and runs <see cref="Allowance"/> to the left of that line, where flange <see cref="To"/>
/// begins.
/// </remarks>
public sealed record Bend
{
    /// <summary>Number of the flange that stays.</summary>
    public required int From { get; init; }

    /// <summary>Number of the flange that is bent.</summary>
    public required int To { get; init; }

    private readonly FlatPoint _start, _end;
    private readonly (double Length, Vector2 Along) _line;

    /// <summary>One end of the strip's near edge.</summary>
    public required FlatPoint Start
    {
        get => _start;
        init => (_start, _line) = (value, Line(value, _end));
    }

    /// <summary>Other end of the strip's near edge.</summary>
    public required FlatPoint End
    {
        get => _end;
        init => (_end, _line) = (value, Line(_start, value));
    }

    /// <summary>Bend angle: 0 for flat; positive towards the top of the sheet (the side seen in the flat pattern), in (-π, π).</summary>
    public required Angle Turn { get; init; }

    /// <summary>Inside radius (mm).</summary>
    public required double InsideRadius { get; init; }

    /// <summary>Bend allowance: width of the strip (mm).</summary>
    public required double Allowance { get; init; }

    /// <summary>Where the allowance comes from.</summary>
    public required BendRule Rule { get; init; }

    /// <summary>Width of the relief cuts beside its ends (mm): beyond them the flange that stays runs on, past the bend's line. 0 where nothing of it lies beside the bend.</summary>
    public double Relief { get; init; }

    /// <summary>Whether the bend goes up, towards the reader of the flat pattern.</summary>
    public bool IsUp => Turn.Radians > 0;

    /// <summary>Length of the bend (mm).</summary>
    public double Length => _line.Length;

    /// <summary>Along the bend, length one.</summary>
    /// <exception cref="InvalidOperationException">The bend has no length.</exception>
    public Vector2 Along => _line.Length > 0 ? _line.Along : (End - Start).Unit;

    /// <summary>Across the bend, from the flange that stays to the one that is bent, length one.</summary>
    public Vector2 Across => Along.Left;

    /// <summary>How far (mm) a flat point lies across the strip's near edge; above <see cref="Allowance"/> it is past the bend.</summary>
    public double Depth(FlatPoint flat) => (flat - Start).Dot(Across);

    /// <summary>
    /// How far (mm) a flat point lies in what the bend turns: its depth or, where relief cuts set that apart, its distance from the middle of the nearer cut
    /// if that is less. Negative in what stays.
    /// </summary>
    public double Beyond(FlatPoint flat)
    {
        var depth = Depth(flat);
        if (Relief <= 0)
        {
            return depth;
        }

        var along = (flat - Start).Dot(Along);
        return Math.Min(depth, Math.Min(along, Length - along) + Relief / 2);
    }

    /// <summary>Whether a circle (mm) about a flat point crosses the middle of a relief cut, or its line.</summary>
    public bool IsAtCut(FlatPoint flat, double radius)
    {
        var along = (flat - Start).Dot(Along);
        return Math.Min(Math.Abs(along + Relief / 2), Math.Abs(Length + Relief / 2 - along)) < radius;
    }

    /// <summary>The middle of the strip, where the bend line is drawn, from one end to the other.</summary>
    public (FlatPoint Start, FlatPoint End) CentreLine => (Start + Allowance / 2 * Across, End + Allowance / 2 * Across);

    /// <summary>The middle of the strip's near edge.</summary>
    public FlatPoint Middle => FlatPoint.Middle(Start, End);

    /// <summary>The same bend with the flat pattern mirrored in its y axis: still up where it was up.</summary>
    public Bend Mirrored() => this with { Start = End.MirroredInX, End = Start.MirroredInX };

    // Called so often that it is kept.
    private static (double Length, Vector2 Along) Line(FlatPoint start, FlatPoint end)
    {
        var length = start.DistanceTo(end);
        return (length, length > 0 ? (end - start) / length : default);
    }

    /// <summary>Shifted in the flat pattern by <paramref name="by"/> (mm).</summary>
    public Bend Shift(Vector2 by) => this with { Start = Start + by, End = End + by };
}
