using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>What is wrong with a sheet's layout.</summary>
public enum SheetFault
{
    /// <summary>Two texts lie over each other.</summary>
    TextOverlap,

    /// <summary>A line or an arrowhead runs through a text.</summary>
    TextCrossed,

    /// <summary>A leader crosses a dimension line.</summary>
    LeaderOverDimension,

    /// <summary>A dimension line runs so near to another line that both look like one.</summary>
    LinesTooClose,

    /// <summary>A thing lies outside the drawing space.</summary>
    OutsideFrame,

    /// <summary>The font has no glyph for a character.</summary>
    MissingGlyph,
}

/// <summary>One fault of a sheet.</summary>
/// <param name="Fault">What is wrong.</param>
/// <param name="Message">The fault in words.</param>
/// <param name="Item">The thing at fault.</param>
/// <param name="Other">The thing it collides with, where there is one.</param>
public sealed record SheetFinding(SheetFault Fault, string Message, SheetItem Item, SheetItem? Other = null);

/// <summary>Looks a composed sheet over as a drawing office's checker would: is everything legible and in its place?</summary>
public static class SheetAudit
{
    /// <summary>Ink may come this near (mm) to a text's box without a fault being called: it is what rounding makes of "touching".</summary>
    internal const double Slack = 0.05;

    /// <summary>All faults of <paramref name="page"/>, in drawing order; empty where it is clean.</summary>
    public static ImmutableArray<SheetFinding> Check(SheetPage page)
    {
        var findings = ImmutableArray.CreateBuilder<SheetFinding>();
        var space = page.Space.Grow(Slack);
        var texts = page.Items.OfType<TextItem>().Where(t => t.Text.Trim().Length > 0).Select(t => (Item: t, Box: new TextBox(t, Slack))).ToArray();

        foreach (var item in page.Items.Where(i => !space.Holds(i.Bounds)))
        {
            findings.Add(new(SheetFault.OutsideFrame, $"{item} lies outside the drawing space.", item));
        }

        for (var i = 0; i < texts.Length; i++)
        {
            var (text, box) = texts[i];
            if (!SheetFont.Of(text.Weight).Covers(text.Text))
            {
                findings.Add(new(SheetFault.MissingGlyph, $"The sheet font lacks a character of {text}.", text));
            }

            foreach (var (other, otherBox) in texts.Skip(i + 1).Where(t => t.Box.Overlaps(box)))
            {
                findings.Add(new(SheetFault.TextOverlap, $"{text} and {other} overlap.", text, other));
            }

            foreach (var item in page.Items.Where(item => Crosses(item, box)))
            {
                findings.Add(new(SheetFault.TextCrossed, $"{item} runs through {text}.", text, item));
            }
        }

        return findings.ToImmutable();
    }

    /// <summary>Leaders that cross a dimension line (ISO 129-1 asks that they do not): drawings avoid them as far as there is another place.</summary>
    public static IEnumerable<SheetFinding> LeadersOverDimensions(SheetPage page) =>
        from leader in page.Items.OfType<Polyline>()
        where leader.Kind == LineKind.Leader
        from line in page.Items.OfType<Stroke>()
        where line.Kind == LineKind.Dimension && Edges(leader.Points, leader.Closed).OfType<LineSegment>().Any(e => Cross(e, line.Segment))
        select new SheetFinding(SheetFault.LeaderOverDimension, $"{leader} crosses {line}.", leader, line);

    /// <summary>Dimension lines that run along another line nearer than <see cref="LeastGap"/>; extension lines lie where the part's features put them.</summary>
    public static IEnumerable<SheetFinding> LinesTooClose(SheetPage page)
    {
        var lines = page.Items.SelectMany(Lines).ToArray();
        for (var i = 0; i < lines.Length; i++)
        {
            for (var k = 0; k < lines.Length; k++)
            {
                var (item, line) = lines[i];
                var (other, beside) = lines[k];
                if (i != k && item is Stroke { Kind: LineKind.Dimension } && (i < k || other is not Stroke { Kind: LineKind.Dimension }) && RunsBeside(line, beside))
                {
                    yield return new(SheetFault.LinesTooClose, $"{item} runs along {other}.", item, other);
                }
            }
        }
    }

    /// <summary>Between two lines that run beside each other (mm), ISO 128-2 (from memory).</summary>
    private const double LeastGap = 0.7;

    /// <summary>Lines that run beside each other on a shorter way than this (mm) pass each other.</summary>
    private const double LeastOverlap = 1;

    // One over the other is one line: an extension line begins at what it extends.
    private static bool RunsBeside(LineSegment line, LineSegment other)
    {
        if (!line.Bounds.Grow(LeastGap).Touches(other.Bounds) || line.Length < LeastOverlap || Math.Abs(line.StartTangent.Cross((other.End - other.Start).Unit)) > 0.02)
        {
            return false;
        }

        double from = (other.Start - line.Start).Dot(line.StartTangent), to = (other.End - line.Start).Dot(line.StartTangent);
        var off = Math.Abs(line.StartTangent.Cross((other.Start + other.End) / 2 - line.Start));
        return Math.Min(line.Length, Math.Max(from, to)) - Math.Max(0, Math.Min(from, to)) > LeastOverlap && off > Slack && off < LeastGap;
    }

    private static IEnumerable<(SheetItem Item, LineSegment Line)> Lines(SheetItem item) => item switch
    {
        Stroke { Segment: LineSegment line } => [(item, line)],
        Polyline { Kind: not (LineKind.Rule or LineKind.Frame or LineKind.Warning) } chain => Edges(chain.Points, chain.Closed).OfType<LineSegment>().Select(e => (item, e)),
        _ => [],
    };

    // Ends left aside: a leader's tip always touches what it points at.
    internal static bool Cross(LineSegment edge, Segment other) =>
        edge.Bounds.Touches(other.Bounds)
        && other.CrossingsWithLine(edge.Start, edge.StartTangent).Any(c => c.Along > 0.1 && c.Along < edge.Length);

    internal static bool Crosses(SheetItem item, TextBox box) => item switch
    {
        Stroke stroke => box.IsCrossedBy(stroke.Segment),
        Polyline line => Edges(line.Points, line.Closed).Any(box.IsCrossedBy),
        // A ground that holds the whole text is what the text stands on.
        Fill fill => box.Bounds.Touches(fill.Bounds) && !box.LiesIn(fill.Points) && Edges(fill.Points, true).Any(box.IsCrossedBy),
        Shade shade => box.Bounds.Touches(shade.Bounds) && Edges(shade.Points, true).Any(box.IsCrossedBy),
        _ => false,
    };

    internal static IEnumerable<Segment> Edges(ImmutableArray<Vector2> points, bool closed)
    {
        for (var i = 0; i < (closed ? points.Length : points.Length - 1); i++)
        {
            var next = points[(i + 1) % points.Length];
            if (points[i] != next)
            {
                yield return new LineSegment(points[i], next);
            }
        }
    }
}
