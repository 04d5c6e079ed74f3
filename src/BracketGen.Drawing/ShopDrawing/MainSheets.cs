using System.Collections.Immutable;
using BracketGen.Design.Part;
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

    private FlatView Flat => _flat ??= new(scene, _formed);

    private bool IsPlate => scene.Flat.Bends.IsEmpty;

    /// <summary>A sheet before its title block: what is on it, block by block.</summary>
    internal sealed record Draft(ImmutableArray<SheetBlock> Blocks, string Scale)
    {
        /// <summary>The adapter ring, where the sheet is of it.</summary>
        public RingShape? Ring { get; init; }
    }

    /// <summary>
    /// The sheets without their title blocks: the formed part and then the flat pattern, each with what is written beside it. A flat plate is its own flat
    /// pattern and has one sheet.
    /// </summary>
    public ImmutableArray<Draft> Compose(PageFormat format)
    {
        if (format.Frame.Width < LeastWidth)
        {
            return Column(format);
        }

        return IsPlate ? Lay(format, Plate) : [.. Lay(format, Formed), .. Lay(format, Pattern)];
    }

    /// <summary>What one sheet shows and says.</summary>
    /// <param name="IsFirst">Whether it is the first sheet: warnings stand there in full, and the cautions.</param>
    /// <param name="Notes">Notes for a width, from the foot up.</param>
    /// <param name="Tables">Tables for a width and a maximum height, in rows from the top down.</param>
    /// <param name="View">The view with the dimensions at a scale.</param>
    /// <param name="Beside">Views without dimensions, or smaller ones, that stand where there is room, at a scale; best first.</param>
    /// <param name="Size">Rough size of the view at a scale.</param>
    /// <param name="MayGrow">Whether it is drawn above full size.</param>
    private sealed record Content(
        bool IsFirst, Func<double, IEnumerable<SheetBlock>> Notes, Func<double, double, IEnumerable<SheetBlock[]>> Tables, Func<DrawingScale, SheetBlock> View,
        Func<DrawingScale, IEnumerable<SheetBlock[]>> Beside, Func<DrawingScale, Vector2> Size, bool MayGrow);

    private Content Plate => new(
        true, w => FirstNotes(w, true), (w, h) => [[_text.Holes()], _text.Points(w, h), [_text.Tolerances()]], Flat.Draw, s => Isometrics(s).Select(i => (SheetBlock[])[i]), Flat.BareSize, MayGrow);

    private Content Formed => new(
        true, w => FirstNotes(w, false), (_, _) => [[_text.Tolerances()]], _formed.Orthographic,
        s => Isometrics(s).Select(i => _formed.StopFlange(s) is { } stop ? (SheetBlock[])[stop, i] : [i]), _formed.BareSize, MayGrow);

    private Content Pattern => new(
        false, w => [_text.FlatNotes(w)], (w, h) => [[_text.Bends(Math.Max(w, LeastTableWidth))!], [_text.Holes()], _text.Points(w, h)], Flat.Draw, _ => [[]], Flat.BareSize, MayGrow);

    // Blown up above full size only where the part is small: a shop likes to lay the part on the drawing.
    private bool MayGrow => Flat.Size < 60;

    private IEnumerable<SheetBlock> FirstNotes(double width, bool withFlat) =>
        new[] { DrawingBlocks.Safety(width), _text.PartNotes(width, withFlat), _warnings.Failures(width) }.OfType<SheetBlock>();

    // The isometric view carries no dimensions: rather than the others it goes down in scale, and says so.
    private IEnumerable<SheetBlock> Isometrics(DrawingScale scale) =>
        [_formed.Isometric(scale), .. Scales.Where(s => s.Factor < scale.Factor).Take(1).Select(_formed.IsometricNamed)];

    private ImmutableArray<Draft> Lay(PageFormat format, Content content)
    {
        var words = new[] { WordsOnRight(format, content), WordsBelow(format, content, 0), WordsBelow(format, content, WidestTables * format.Frame.Width) }.OfType<(ImmutableArray<SheetBlock> Blocks, Bounds Room, Bounds Spare)>().ToList();
        foreach (var scale in Scales.Where(s => s.Factor <= 1 || content.MayGrow))
        {
            if (!MayFit(format.Frame, content.Size(scale)))
            {
                continue;
            }

            foreach (var (blocks, room, spare) in words)
            {
                if (Views(room, spare, content, scale) is { } views)
                {
                    return [new([.. blocks, .. views], $"{scale}")];
                }
            }

            // Rather a second sheet for the words than views at less than half size.
            if ((words.Count == 0 || scale.Factor < 0.5) && ViewsAlone(format, content, scale) is { } alone)
            {
                return [alone, .. Words(format, content)];
            }
        }

        throw new InvalidOperationException(DrawingText.TooLarge);
    }

    /// <summary>Sheets narrower than this (mm) have no room for anything beside a title block.</summary>
    private const double LeastWidth = 1.5 * TitleBlock.Width;

    // Part of the sheet that tables beside each other may take from the view.
    private const double WidestTables = 0.56;

    /// <summary>Views and words below each other, on as many sheets as they need.</summary>
    private ImmutableArray<Draft> Column(PageFormat format)
    {
        var room = new ColumnRoom(format.Frame.Grow(-Gap), TitleRoom(format).Max.Y + Gap);
        foreach (var (flat, formed) in ScalePairs())
        {
            List<(SheetBlock Block, string Scale)> views =
            [
                .. IsPlate ? [] : new[] { (_formed.Orthographic(formed), $"{formed}") },
                (Flat.Draw(flat), $"{flat}"),
            ];
            var width = room.Frame.Width;
            var head = _warnings.SeeSheetOne(width)?.Bounds.Height + ColumnSheets.Gap ?? 0;
            if (_formed.StopFlange(formed) is { } stop)
            {
                views.Add((stop, $"{formed}"));
            }

            if (!views.TrueForAll(v => room.Holds(v.Block) && v.Block.Bounds.Height <= room.Height - head))
            {
                continue;
            }

            var warning = _warnings.Headline(width) is { } dangers && !room.Holds(dangers) ? _warnings.Headline(width, TextHeight.Small) : _warnings.Headline(width);
            var later = _warnings.SeeSheetOne(width);
            var safety = DrawingBlocks.Safety(width);
            var beside = room.Height - (warning is null ? 0 : warning.Bounds.Height + ColumnSheets.Gap) - safety.Bounds.Height - views[0].Block.Bounds.Height - 2 * ColumnSheets.Gap;
            views.Insert(IsPlate ? 0 : 1, (IsometricInColumn(room with { Foot = room.Foot + head }, formed, beside), $"{formed}"));
            return ColumnSheets.Lay(
                room, warning, later, safety, views, [
                    .. _text.Bends(Math.Max(width, LeastTableWidth)) is { } bends ? new[] { bends } : [], _text.Holes(), _text.Tolerances(), .. _text.Points(0, room.Height - head),
                    _text.PartNotes(width, IsPlate), .. IsPlate ? [] : new[] { _text.FlatNotes(width) }, .. _warnings.Failures(width, room.Height - head),
                ]);
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
        var title = draft.Ring is { } ring ? _text.TitleOfRing(format, draft.Scale, sheet, sheets, ring) : _text.Title(format, draft.Scale, sheet, sheets);
        return page.With(title.LowerRightAt(new(format.Frame.Max.X, format.Frame.Min.Y)));
    }

    /// <summary>The room the title block takes.</summary>
    public Bounds TitleRoom(PageFormat format) => _text.Title(format, "", 1, 1).LowerRightAt(new(format.Frame.Max.X, format.Frame.Min.Y)).Bounds;

    /// <summary>Scales of the flat pattern and the formed views to try on narrow sheets, best first: large, and both the same if may be.</summary>
    private IEnumerable<(DrawingScale Flat, DrawingScale Formed)> ScalePairs()
    {
        var scales = Scales.Where(s => s.Factor <= 1 || MayGrow).ToArray();
        return
            from flat in Enumerable.Range(0, scales.Length)
            from formed in Enumerable.Range(0, scales.Length)
            where Math.Abs(flat - formed) <= (IsPlate ? 0 : 1)
            orderby Math.Max(flat, formed), flat + formed, flat
            select (scales[flat], scales[formed]);
    }

    private Draft? ViewsAlone(PageFormat format, Content content, DrawingScale scale)
    {
        var (warning, frame) = BelowWarning(format, content);
        var title = TitleRoom(format);
        var safety = content.IsFirst ? DrawingBlocks.Safety(title.Min.X - Gap - frame.Min.X).LowerLeftAt(frame.Min) : null;
        var foot = safety is null ? frame.Min.Y : safety.Bounds.Max.Y + Gap;
        var left = new Bounds(new(frame.Min.X, foot), new(title.Min.X - Gap, frame.Max.Y));
        var above = new Bounds(new(frame.Min.X, Math.Max(title.Max.Y + Gap, foot)), frame.Max);
        var spare = new Bounds(new(title.Min.X, title.Max.Y + Gap), frame.Max);
        var views = Views(left, spare, content, scale) ?? Views(above, null, content, scale);
        return views is null ? null : new([.. warning, .. safety is null ? Array.Empty<SheetBlock>() : [safety], .. views], $"{scale}");
    }

    private static bool MayFit(Bounds frame, Vector2 size) => size.X <= frame.Width && size.Y <= frame.Height && size.X * size.Y < 0.75 * frame.Width * frame.Height;

    private static ImmutableArray<SheetBlock>? Views(Bounds room, Bounds? spare, Content content, DrawingScale scale)
    {
        var main = Cell.Of(content.View(scale));
        foreach (var beside in content.Beside(scale))
        {
            Cell[] others = [.. beside.Select(Cell.Of)];
            if (others.Length == 0)
            {
                return main.FitsInto(room) ? [.. main.Place(room)] : null;
            }

            // As many as may be in the spare room, the last ones first; the rest with the view.
            for (var inSpare = others.Length; inSpare >= 0; inSpare--)
            {
                Cell[] aside = others[(others.Length - inSpare)..], near = others[..(others.Length - inSpare)];
                if (inSpare > 0 && (spare is not { } s || !(Cell.Column(aside).FitsInto(s) || Cell.Row(aside).FitsInto(s))))
                {
                    continue;
                }

                Cell[] tries = near.Length == 0
                    ? [main]
                    : [Cell.Column(main, Cell.Row(near)), Cell.Row(main, Cell.Column(near)), Cell.Column([main, .. near]), Cell.Row([main, .. near])];
                if (tries.FirstOrDefault(t => t.FitsInto(room)) is { } fitting)
                {
                    var asideCell = Cell.Column(aside) is var column && inSpare > 0 && !column.FitsInto(spare!.Value) ? Cell.Row(aside) : Cell.Column(aside);
                    return [.. fitting.Place(room), .. inSpare > 0 ? asideCell.Place(spare!.Value) : []];
                }
            }
        }

        return null;
    }

    private (ImmutableArray<SheetBlock> Warning, Bounds Below) BelowWarning(PageFormat format, Content content)
    {
        var frame = format.Frame.Grow(-Gap);
        return (content.IsFirst ? _warnings.Headline(frame.Width) : _warnings.SeeSheetOne(frame.Width)) is { } dangers && dangers.UpperLeftAt(new(frame.Min.X, frame.Max.Y)) is var warning
            ? ([warning], new(frame.Min, new(frame.Max.X, warning.Bounds.Min.Y - Gap)))
            : ([], frame);
    }

    /// <summary>Everything written in a column above the title block.</summary>
    private (ImmutableArray<SheetBlock>, Bounds Views, Bounds Spare)? WordsOnRight(PageFormat format, Content content)
    {
        var (warning, frame) = BelowWarning(format, content);
        var title = TitleRoom(format);
        double left = title.Min.X, width = frame.Max.X - left;
        var blocks = warning.ToBuilder();
        var y = title.Max.Y + Gap;
        foreach (var block in content.Notes(width))
        {
            blocks.Add(block.LowerLeftAt(new(left, y)));
            y = blocks[^1].Bounds.Max.Y + Gap;
        }

        foreach (var table in content.Tables(width, double.PositiveInfinity).Reverse())
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

        return y > frame.Max.Y + Gap || blocks.Any(b => b.Bounds.Max.X > frame.Max.X + Gap)
            ? null
            : (blocks.ToImmutable(), new(frame.Min, new(left - Gap, frame.Max.Y)), new(new(left, Math.Min(y, frame.Max.Y)), frame.Max));
    }

    /// <summary>Tables are not squeezed below this (mm on paper): it is what the title block is wide.</summary>
    private const double LeastTableWidth = TitleBlock.Width - Gap;

    /// <summary>Notes to the left of the title block, tables in the upper right corner: those of one row beside each other where they fit into a width (mm).</summary>
    private (ImmutableArray<SheetBlock>, Bounds Views, Bounds Spare)? WordsBelow(PageFormat format, Content content, double tables)
    {
        var (warning, frame) = BelowWarning(format, content);
        var title = TitleRoom(format);
        var blocks = warning.ToBuilder();
        var width = title.Min.X - Gap - frame.Min.X;
        var y = frame.Min.Y;
        foreach (var block in content.Notes(width))
        {
            blocks.Add(block.LowerLeftAt(new(frame.Min.X, y)));
            y = blocks[^1].Bounds.Max.Y + Gap;
        }

        var top = frame.Max.Y;
        double left = frame.Max.X;
        foreach (var row in content.Tables(tables, double.PositiveInfinity))
        {
            var right = frame.Max.X;
            foreach (var table in row.Reverse())
            {
                blocks.Add(table.UpperRightAt(new(right, top)));
                right = blocks[^1].Bounds.Min.X - Gap;
                left = Math.Min(left, blocks[^1].Bounds.Min.X);
            }

            top -= row.Max(t => t.Bounds.Height) + Gap;
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

    /// <summary>Sheets for what is written, where the views need one for themselves.</summary>
    private IEnumerable<Draft> Words(PageFormat format, Content content)
    {
        var (warning, frame) = BelowWarning(format, content with { IsFirst = false });
        var title = TitleRoom(format);
        var width = Math.Min(title.Width - Gap, frame.Width / 2 - Gap);
        var waiting = new Queue<SheetBlock>(
            (content.IsFirst ? new[] { _text.PartNotes(width, IsPlate) } : content.Notes(width))
            .Concat(content.Tables(width, frame.Max.Y - title.Max.Y - Gap).SelectMany(t => t))
            .Concat(content.IsFirst ? _warnings.Failures(width, frame.Max.Y - title.Max.Y - Gap) : []));
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

            yield return new([.. warning, .. placed], "-");
        }
    }
}
