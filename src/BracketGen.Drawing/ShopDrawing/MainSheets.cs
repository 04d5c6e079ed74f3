using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>Lays out the drawing proper: views, tables, notes, title block; on one sheet where it goes, on more where it does not.</summary>
internal sealed class MainSheets(BracketScene scene, DrawingOptions options, string? remark = null)
{
    /// <summary>Between blocks, and between them and the frame (mm on paper).</summary>
    private const double Gap = 5;

    private static readonly ImmutableArray<DrawingScale> Scales = [new(2, 1), new(1, 1), new(1, 2), new(1, 5), new(1, 10), new(1, 20), new(1, 50), new(1, 100), new(1, 200)];

    private readonly FormedViews _formed = new(scene);
    private readonly DrawingBlocks _text = new(scene, options, remark);
    private readonly WarningBlocks _warnings = new(scene.Solution, scene.Value);
    private FlatView? _flat;
    private ImmutableArray<(ImmutableArray<SheetBlock> Blocks, Bounds Views, Bounds Spare)>? _words;

    private FlatView Flat => _flat ??= new(scene, _formed);

    private bool IsPlate => scene.Flat.Bends.IsEmpty;

    /// <summary>A sheet before its title block: what is on it, block by block.</summary>
    internal sealed record Draft(ImmutableArray<SheetBlock> Blocks, string Scale);

    /// <summary>The sheets without their title blocks.</summary>
    public ImmutableArray<Draft> Compose(PageFormat format)
    {
        if (format.Frame.Width < LeastWidth)
        {
            return Column(format);
        }

        foreach (var (flat, formed) in ScalePairs())
        {
            if (OneSheet(format, flat, formed) is { } sheet)
            {
                return [sheet];
            }

            // Rather a second sheet for the words than views at less than half size.
            if (Math.Min(flat.Factor, formed.Factor) < 0.5 && ViewsAlone(format, flat, formed) is { } views)
            {
                return [views, .. Words(format)];
            }
        }

        throw new InvalidOperationException(DrawingText.TooLarge);
    }

    /// <summary>Sheets narrower than this (mm) have no room for anything beside a title block.</summary>
    private const double LeastWidth = 1.5 * TitleBlock.Width;

    /// <summary>Views and words below each other, on as many sheets as they need.</summary>
    private ImmutableArray<Draft> Column(PageFormat format)
    {
        var room = new ColumnRoom(format.Frame.Grow(-Gap), TitleAt(format, "", 1, 1).Bounds.Max.Y + Gap);
        foreach (var (flat, formed) in ScalePairs())
        {
            List<(SheetBlock Block, string Scale)> views =
            [
                .. IsPlate ? [] : new[] { (_formed.Orthographic(formed), $"{formed}") },
                (Flat.Draw(flat), $"{flat}"),
            ];
            if (!views.TrueForAll(v => room.Holds(v.Block)))
            {
                continue;
            }

            var width = room.Frame.Width;
            var warning = _warnings.Headline(width) is { } dangers && !room.Holds(dangers) ? _warnings.Headline(width, TextHeight.Small) : _warnings.Headline(width);
            var safety = DrawingBlocks.Safety(width);
            var beside = room.Height - (warning is null ? 0 : warning.Bounds.Height + ColumnSheets.Gap) - safety.Bounds.Height - views[0].Block.Bounds.Height - 2 * ColumnSheets.Gap;
            views.Insert(IsPlate ? 0 : 1, (IsometricInColumn(room, formed, beside), $"{formed}"));
            return ColumnSheets.Lay(
                room, warning, safety, views, [.. Tables(width).SelectMany(t => t), _text.Notes(width), .. _warnings.Failures(width, room.Height)]);
        }

        throw new InvalidOperationException(DrawingText.TooLarge);
    }

    /// <summary>The isometric view, down to half its size where it then stands on the first sheet with the others.</summary>
    private SheetBlock IsometricInColumn(ColumnRoom room, DrawingScale formed, double beside)
    {
        SheetBlock At(DrawingScale scale) => scale == formed ? _formed.Isometric(scale) : _formed.IsometricNamed(scale);
        DrawingScale[] smaller = [.. Scales.Where(s => s.Factor <= formed.Factor)];
        return smaller.Take(2).Select(At).FirstOrDefault(b => b.Bounds.Height <= beside && room.Holds(b))
            ?? smaller.Select(At).First(room.Holds);
    }

    public SheetPage Finish(PageFormat format, Draft draft, int sheet, int sheets)
    {
        var page = new SheetPage(format, [.. draft.Blocks.SelectMany(b => b.Items)]);
        return page.With(TitleAt(format, draft.Scale, sheet, sheets));
    }

    /// <summary>The room the title block takes.</summary>
    public Bounds TitleRoom(PageFormat format) => TitleAt(format, "", 1, 1).Bounds;

    private SheetBlock TitleAt(PageFormat format, string scale, int sheet, int sheets) =>
        _text.Title(format, scale, sheet, sheets).LowerRightAt(new(format.Frame.Max.X, format.Frame.Min.Y));

    /// <summary>Scales of the flat pattern and the formed views to try, best first: large, and both the same if may be.</summary>
    private IEnumerable<(DrawingScale Flat, DrawingScale Formed)> ScalePairs()
    {
        // Blown up above full size only where the part is small: a shop likes to lay the part on the drawing.
        var scales = Scales.Where(s => s.Factor <= 1 || Flat.Size < 60).ToArray();
        return
            from flat in Enumerable.Range(0, scales.Length)
            from formed in Enumerable.Range(0, scales.Length)
            where Math.Abs(flat - formed) <= (IsPlate ? 0 : 1)
            orderby Math.Max(flat, formed), flat + formed, flat
            select (scales[flat], scales[formed]);
    }

    private Draft? OneSheet(PageFormat format, DrawingScale flat, DrawingScale formed)
    {
        var frame = format.Frame.Grow(-Gap);
        if (!MayFit(frame, flat, formed))
        {
            return null;
        }

        _words ??= [.. new[] { WordsOnRight(format), WordsBelow(format) }.OfType<(ImmutableArray<SheetBlock>, Bounds, Bounds)>()];
        foreach (var (blocks, room, spare) in _words)
        {
            if (Views(room, spare, flat, formed) is { } views)
            {
                return new([.. blocks, .. views], ScaleText(flat, formed));
            }
        }

        return null;
    }

    private Draft? ViewsAlone(PageFormat format, DrawingScale flat, DrawingScale formed)
    {
        if (!MayFit(format.Frame, flat, formed))
        {
            return null;
        }

        var (warning, frame) = BelowWarning(format);
        var title = TitleAt(format, "", 1, 1).Bounds;
        var safety = DrawingBlocks.Safety(title.Min.X - Gap - frame.Min.X).LowerLeftAt(frame.Min);
        var left = new Bounds(new(frame.Min.X, safety.Bounds.Max.Y + Gap), new(title.Min.X - Gap, frame.Max.Y));
        var above = new Bounds(new(frame.Min.X, Math.Max(title.Max.Y, safety.Bounds.Max.Y) + Gap), frame.Max);
        var spare = new Bounds(new(title.Min.X, title.Max.Y + Gap), frame.Max);
        var views = Views(left, spare, flat, formed) ?? Views(above, null, flat, formed);
        return views is null ? null : new([.. warning, safety, .. views], ScaleText(flat, formed));
    }

    private bool MayFit(Bounds frame, DrawingScale flat, DrawingScale formed)
    {
        bool Fits(Vector2 size) => size.X <= frame.Width && size.Y <= frame.Height;
        var (a, b) = (Flat.BareSize(flat), IsPlate ? Vector2.Zero : _formed.BareSize(formed));
        return Fits(a) && Fits(b) && a.X * a.Y + b.X * b.Y < 0.75 * frame.Width * frame.Height;
    }

    private string ScaleText(DrawingScale flat, DrawingScale formed) => IsPlate || flat == formed ? $"{flat}" : $"{formed} (flat {flat})";

    private ImmutableArray<SheetBlock>? Views(Bounds room, Bounds? spare, DrawingScale flatScale, DrawingScale formedScale)
    {
        // The isometric view carries no dimensions: rather than the others it goes down in scale, and says so.
        var smaller = Scales.Where(s => s.Factor < formedScale.Factor).DefaultIfEmpty(formedScale).First();
        return Views(room, spare, flatScale, formedScale, _formed.Isometric(formedScale))
            ?? Views(room, spare, flatScale, formedScale, _formed.IsometricNamed(smaller));
    }

    private ImmutableArray<SheetBlock>? Views(
        Bounds room, Bounds? spare, DrawingScale flatScale, DrawingScale formedScale, SheetBlock isometric)
    {
        Cell flat = Cell.Of(Flat.Draw(flatScale)), iso = Cell.Of(isometric);
        var isoAside = spare is { } s && iso.FitsInto(s);
        var formed = IsPlate ? null : Cell.Of(_formed.Orthographic(formedScale));
        Cell[] tries = (formed, isoAside) switch
        {
            (null, true) => [flat],
            (null, false) => [Cell.Column(iso, flat), Cell.Row(flat, iso)],
            ({ } f, true) => [Cell.Column(f, flat), Cell.Row(f, flat)],
            ({ } f, false) =>
            [
                Cell.Column(f, Cell.Row(flat, iso)), Cell.Column(Cell.Row(f, iso), flat), Cell.Row(f, Cell.Column(iso, flat)),
                Cell.Row(Cell.Column(f, iso), flat), Cell.Column(f, iso, flat), Cell.Row(f, flat, iso),
            ],
        };
        var fitting = tries.FirstOrDefault(t => t.FitsInto(room));
        return fitting is null
            ? null
            : [.. fitting.Place(room), .. isoAside ? iso.Place(spare!.Value) : []];
    }

    private (ImmutableArray<SheetBlock> Warning, Bounds Below) BelowWarning(PageFormat format)
    {
        var frame = format.Frame.Grow(-Gap);
        return _warnings.Headline(frame.Width) is { } dangers && dangers.UpperLeftAt(new(frame.Min.X, frame.Max.Y)) is var warning
            ? ([warning], new(frame.Min, new(frame.Max.X, warning.Bounds.Min.Y - Gap)))
            : ([], frame);
    }

    /// <summary>Everything written in a column above the title block.</summary>
    private (ImmutableArray<SheetBlock>, Bounds Views, Bounds Spare)? WordsOnRight(PageFormat format)
    {
        var (warning, frame) = BelowWarning(format);
        var title = TitleAt(format, "", 1, 1).Bounds;
        double left = title.Min.X, width = frame.Max.X - left;
        var blocks = warning.ToBuilder();
        var y = title.Max.Y + Gap;
        foreach (var block in new[] { DrawingBlocks.Safety(width), _text.Notes(width), _warnings.Failures(width) }.OfType<SheetBlock>())
        {
            blocks.Add(block.LowerLeftAt(new(left, y)));
            y = blocks[^1].Bounds.Max.Y + Gap;
        }

        foreach (var table in Tables(width).Reverse())
        {
            var x = left;
            var height = table.Max(t => t.Bounds.Height);
            foreach (var block in table)
            {
                blocks.Add(block.UpperLeftAt(new(x, y + height)));
                x = blocks[^1].Bounds.Max.X + Gap;
            }

            y += height + Gap;
        }

        return y > frame.Max.Y + Gap
            ? null
            : (blocks.ToImmutable(), new(frame.Min, new(left - Gap, frame.Max.Y)), new(new(left, Math.Min(y, frame.Max.Y)), frame.Max));
    }

    /// <summary>Tables are not squeezed below this (mm on paper): it is what the title block is wide.</summary>
    private const double LeastTableWidth = TitleBlock.Width - Gap;

    /// <summary>Tables beside each other where they fit into a width, below each other where they do not.</summary>
    private IEnumerable<SheetBlock[]> Tables(double width)
    {
        var holes = _text.Holes();
        if (_text.Bends(Math.Max(width, LeastTableWidth)) is not { } bends)
        {
            return [[holes]];
        }

        return bends.Bounds.Width + Gap + holes.Bounds.Width <= width ? [[bends, holes]] : [[bends], [holes]];
    }

    /// <summary>Notes to the left of the title block, tables in the upper right corner.</summary>
    private (ImmutableArray<SheetBlock>, Bounds Views, Bounds Spare)? WordsBelow(PageFormat format)
    {
        var (warning, frame) = BelowWarning(format);
        var title = TitleAt(format, "", 1, 1).Bounds;
        var blocks = warning.ToBuilder();
        var width = title.Min.X - Gap - frame.Min.X;
        var y = frame.Min.Y;
        foreach (var block in new[] { DrawingBlocks.Safety(width), _text.Notes(width), _warnings.Failures(width) }.OfType<SheetBlock>())
        {
            blocks.Add(block.LowerLeftAt(new(frame.Min.X, y)));
            y = blocks[^1].Bounds.Max.Y + Gap;
        }

        var top = frame.Max.Y;
        double left = frame.Max.X;
        foreach (var table in Tables(0).SelectMany(t => t))
        {
            blocks.Add(table.UpperRightAt(new(frame.Max.X, top)));
            top = blocks[^1].Bounds.Min.Y - Gap;
            left = Math.Min(left, blocks[^1].Bounds.Min.X);
        }

        var spareFoot = Math.Max(title.Max.Y + Gap, left < title.Min.X ? y : 0);
        if (y > frame.Max.Y || top < spareFoot)
        {
            return null;
        }

        return (
            blocks.ToImmutable(),
            new(new(frame.Min.X, y), new(left - Gap, frame.Max.Y)),
            new(new(left, spareFoot), new(frame.Max.X, top)));
    }

    /// <summary>Sheets for what is written, where the views need the first one for themselves.</summary>
    private IEnumerable<Draft> Words(PageFormat format)
    {
        var frame = format.Frame.Grow(-Gap);
        var title = TitleAt(format, "", 1, 1).Bounds;
        var width = Math.Min(title.Width - Gap, frame.Width / 2 - Gap);
        var waiting = new Queue<SheetBlock>(new[] { _text.Notes(width) }
            .Concat(Tables(width).SelectMany(t => t))
            .Concat(_warnings.Failures(width, frame.Max.Y - title.Max.Y - Gap)));
        while (waiting.Count > 0)
        {
            List<SheetBlock> placed = [];
            foreach (var column in (Bounds[])
            [
                new(frame.Min, new(title.Min.X - Gap, frame.Max.Y)),
                new(new(frame.Max.X - width, title.Max.Y + Gap), frame.Max),
            ])
            {
                var y = column.Max.Y;
                while (waiting.TryPeek(out var next) && (next.Bounds.Height <= y - column.Min.Y || (placed.Count == 0 && y == column.Max.Y)))
                {
                    placed.Add(waiting.Dequeue().UpperLeftAt(new(column.Min.X, y)));
                    y = placed[^1].Bounds.Min.Y - Gap;
                }
            }

            yield return new([.. placed], "-");
        }
    }
}
