using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>A composed sheet: its format and everything on it, in drawing order.</summary>
/// <param name="Format">Size and frame.</param>
/// <param name="Items">What is drawn inside the frame.</param>
/// <param name="Framed">Whether the frame is drawn. Without it (a template page) the whole sheet may be used.</param>
public sealed record SheetPage(PageFormat Format, ImmutableArray<SheetItem> Items, bool Framed = true)
{
    /// <summary>An empty sheet.</summary>
    public SheetPage(PageFormat format, bool framed = true)
        : this(format, [], framed)
    {
    }

    /// <summary>Frame, grid reference border and centring marks.</summary>
    public ImmutableArray<SheetItem> Border => Framed ? SheetFrame.Draw(Format) : [];

    /// <summary>Border and content in drawing order.</summary>
    public IEnumerable<SheetItem> All => Border.Concat(Items);

    /// <summary>The space things may be placed in (mm on paper).</summary>
    public Bounds Space => Framed ? Format.Frame : Format.Sheet;

    /// <summary>The sheet with more on it.</summary>
    public SheetPage With(params IEnumerable<SheetItem> items) => this with { Items = Items.AddRange(items) };

    /// <summary>The sheet with a block on it.</summary>
    public SheetPage With(SheetBlock block) => With(block.Items);
}
