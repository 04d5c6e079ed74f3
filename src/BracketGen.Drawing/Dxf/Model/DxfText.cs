using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Model;

/// <summary>One line of text, which each reader draws in a font of its own: for reading, never for marking metal.</summary>
/// <remarks>For marking there is <see cref="StrokeText"/>.</remarks>
public sealed record DxfText : DxfEntity
{
    /// <summary>The text <paramref name="value"/>, level, from <paramref name="at"/> on.</summary>
    /// <param name="layer">The layer it lies on.</param>
    /// <param name="at">Lower left corner of the first letter (mm).</param>
    /// <param name="height">Height of a capital (mm), positive.</param>
    /// <param name="value">One line, not empty.</param>
    /// <exception cref="ArgumentException">The text is empty, the height is not positive, or a number is none.</exception>
    public DxfText(DxfLayer layer, Vector2 at, double height, string value)
        : base(layer)
    {
        if (!Finite(at) || !Finite(height) || height <= Tolerance.Point)
        {
            throw new ArgumentException($"A text needs a place and a positive height, not {at} and {height}.", nameof(height));
        }

        if (value.Length == 0)
        {
            throw new ArgumentException("There is no text to write.", nameof(value));
        }

        At = at;
        Height = height;
        Value = value;
    }

    /// <summary>Lower left corner of the first letter (mm).</summary>
    public Vector2 At { get; }

    /// <summary>Height of a capital (mm).</summary>
    public double Height { get; }

    /// <summary>What it says.</summary>
    public string Value { get; }

    /// <inheritdoc/>
    public override DxfEntity Moved(Angle turn, Vector2 shift) => new DxfText(Layer, At.Rotate(turn) + shift, Height, Value);

    /// <summary>None: nothing in it is a path.</summary>
    public override IEnumerable<Segment> Segments => [];

    /// <summary>The room it takes up with letters as wide as high and tails half as long, more than fonts for drawings have (common practice, no source).</summary>
    public override Bounds Bounds => new(At - new Vector2(0, Height / 2), At + new Vector2(Value.Length * Height, Height));
}
