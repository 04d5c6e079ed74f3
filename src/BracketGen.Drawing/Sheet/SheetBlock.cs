using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>Things that belong together, and the rectangle they need, so that a composer can lay blocks beside each other.</summary>
/// <param name="Items">What is drawn, in order.</param>
/// <param name="Bounds">The room it takes (mm on paper); may be larger than the ink.</param>
public sealed record SheetBlock(ImmutableArray<SheetItem> Items, Bounds Bounds)
{
    /// <summary>A block that takes exactly the room of its items (at least one).</summary>
    public static SheetBlock Around(IEnumerable<SheetItem> items)
    {
        ImmutableArray<SheetItem> all = [.. items];
        return new(all, all.Select(i => i.Bounds).Aggregate((a, b) => a.Union(b)));
    }

    /// <summary>Shifted by <paramref name="by"/> (mm).</summary>
    public SheetBlock Shift(Vector2 by) =>
        new([.. Items.Select(i => i.Shift(by))], new(Bounds.Min + by, Bounds.Max + by));

    /// <summary>Moved so that its lower left corner lies at <paramref name="point"/>.</summary>
    public SheetBlock LowerLeftAt(Vector2 point) => Shift(point - Bounds.Min);

    /// <summary>Moved so that its upper left corner lies at <paramref name="point"/>.</summary>
    public SheetBlock UpperLeftAt(Vector2 point) => Shift(point - new Vector2(Bounds.Min.X, Bounds.Max.Y));

    /// <summary>Moved so that its lower right corner lies at <paramref name="point"/>.</summary>
    public SheetBlock LowerRightAt(Vector2 point) => Shift(point - new Vector2(Bounds.Max.X, Bounds.Min.Y));

    /// <summary>Moved so that its upper right corner lies at <paramref name="point"/>.</summary>
    public SheetBlock UpperRightAt(Vector2 point) => Shift(point - Bounds.Max);

    /// <summary>Moved so that its middle lies at <paramref name="point"/>.</summary>
    public SheetBlock CentredAt(Vector2 point) => Shift(point - Bounds.Centre);

    /// <summary>Both together.</summary>
    public SheetBlock And(SheetBlock other) => new(Items.AddRange(other.Items), Bounds.Union(other.Bounds));
}
