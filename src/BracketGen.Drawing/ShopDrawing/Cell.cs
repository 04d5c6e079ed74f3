using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>Blocks beside and above each other, each in the middle of its share of the room.</summary>
internal abstract record Cell
{
    /// <summary>Least room between two blocks (mm on paper).</summary>
    private const double Gap = 7;

    public abstract Vector2 Size { get; }

    public static Cell Of(SheetBlock block) => new Leaf(block);

    public static Cell Row(params Cell[] cells) => new Line(cells, true);

    public static Cell Column(params Cell[] cells) => new Line(cells, false);

    public bool FitsInto(Bounds room) => Size.X <= room.Width && Size.Y <= room.Height;

    /// <summary>The blocks, placed in a room they fit into.</summary>
    public abstract IEnumerable<SheetBlock> Place(Bounds room);

    private sealed record Leaf(SheetBlock Block) : Cell
    {
        public override Vector2 Size => new(Block.Bounds.Width, Block.Bounds.Height);

        public override IEnumerable<SheetBlock> Place(Bounds room) => [Block.CentredAt(room.Centre)];
    }

    private sealed record Line(Cell[] Cells, bool IsRow) : Cell
    {
        public override Vector2 Size => IsRow
            ? new(Cells.Sum(c => c.Size.X) + Gap * (Cells.Length - 1), Cells.Max(c => c.Size.Y))
            : new(Cells.Max(c => c.Size.X), Cells.Sum(c => c.Size.Y) + Gap * (Cells.Length - 1));

        public override IEnumerable<SheetBlock> Place(Bounds room)
        {
            var rest = IsRow ? room.Width - Size.X : room.Height - Size.Y;
            var share = rest / Cells.Length;
            var at = IsRow ? room.Min.X : room.Max.Y;
            foreach (var cell in Cells)
            {
                var extent = (IsRow ? cell.Size.X : cell.Size.Y) + share;
                var own = IsRow
                    ? new Bounds(new(at, room.Min.Y), new(at + extent, room.Max.Y))
                    : new Bounds(new(room.Min.X, at - extent), new(room.Max.X, at));
                foreach (var block in cell.Place(own))
                {
                    yield return block;
                }

                at += IsRow ? extent + Gap : -extent - Gap;
            }
        }
    }
}
