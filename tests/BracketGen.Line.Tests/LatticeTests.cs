using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Line.Nesting;
using BracketGen.Line.Parts;
using BracketGen.TestSupport;
using CsCheck;
using NetTopologySuite.Geometries.Utilities;
using Gen = CsCheck.Gen;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace BracketGen.Line.Tests;

/// <summary>Like pieces take no more sheet than in a plain lattice, which is built here from distances alone (NetTopologySuite).</summary>
public class LatticeTests
{
    private const double Length = 1000, Width = 500, Spacing = 5, Border = 10;

    private static readonly Gen<Contour> Shapes = Gen.OneOf(
        RandomShapes.Outline.Where(o => NestingTests.IsSimple(o)),
        Gen.Select(Gen.Double[20, 90], Gen.Double[20, 90], Gen.Double[0.2, 0.8], Gen.Double[0.2, 0.8], (w, h, x, y) =>
            Contour.Polygon([new(0, 0), new(w, 0), new(w, y * h), new(x * w, y * h), new(x * w, h), new(0, h)])));

    [Fact]
    public void Random_pieces_are_as_many_on_a_sheet_as_in_a_plain_lattice()
    {
        var least = 0;
        Gen.Select(Shapes, Gen.Bool).Check(LongRun.Of(15), c =>
        {
            ImmutableArray<Angle> turns = c.Item2 ? [Angle.Zero, Angle.Straight] : [Angle.Zero];
            least += IsAsGoodAsPlain(new("P", c.Item1, turns, 1), Length, Width);
        });
        Assert.True(least > LongRun.AtLeast(60), $"only {least} pieces");
    }

    [Fact]
    public void The_lines_brackets_are_as_many_on_a_sheet_as_in_a_plain_lattice()
    {
        foreach (var part in Estuary.Solved.Parts.DistinctBy(p => Math.Round(p.Bracket.Flat.Blank.Area)).OrderByDescending(p => p.Bracket.Flat.Blank.Area).Take(3))
        {
            IsAsGoodAsPlain(new(part.Made.PartNumber, part.Bracket.Flat.Blank.Outline, GrainTurns.Of(part.Bracket), 1), 1250, 625);
        }
    }

    // On one sheet as many as the plain lattice holds, all apart, and no second sheet.
    private static int IsAsGoodAsPlain(NestPiece piece, double length, double width)
    {
        var plain = piece.Turns.Max(turn => new[] { false, piece.Turns.Length > 1 }.Max(isPair => Plain(piece.Outline.Rotate(turn), isPair, length - 2 * Border, width - 2 * Border)));
        if (plain == 0)
        {
            return 0;
        }

        var wanted = piece with { Count = plain };
        var nest = Nester.Lay([wanted], length, width, Spacing, Border);
        NestingTests.Judge(nest, [wanted], length, width, Spacing, Border);
        Assert.True(nest.Sheets.Length == 1, $"{plain} in a plain lattice take {nest.Sheets.Length} sheets");
        return plain;
    }

    // Rows as close as they may come, of pieces turned alike or every other one by half a turn; the next row straight above or shifted by half the pitch.
    private static int Plain(Contour outline, bool isPair, double length, double width)
    {
        var (one, other) = (NestingTests.Polygon(AtCorner(outline)), NestingTests.Polygon(AtCorner(outline.Rotate(Angle.Straight))));
        var size = one.EnvelopeInternal;
        if (size.Width > length || size.Height > width)
        {
            return 0;
        }

        var second = isPair ? Apart(x => [Moved(other, x, 0)], one, size.Width + Spacing) : 0;
        var pitch = isPair ? Math.Max(second + Apart(x => [Moved(one, x, 0)], other, size.Width + Spacing), Apart(x => [Moved(one, x, 0)], one, size.Width + Spacing))
            : Apart(x => [Moved(one, x, 0)], one, size.Width + Spacing);
        Shape row = isPair ? one.Factory.BuildGeometry([one, Moved(other, second, 0)]) : one;
        var most = 0;
        foreach (var shift in (double[])[0, pitch / 2])
        {
            var rise = Apart(y => [.. Enumerable.Range(-3, 7).Select(k => Moved(row, shift + k * pitch, y))], row, size.Height + Spacing);
            rise = Math.Max(rise, (size.Height + Spacing) / 2); // The next but one is clear too.
            var rows = (int)((width - size.Height) / rise + 1e-6) + 1;
            int From(double from) => from + size.Width > length + 1e-6 ? 0 : (int)((length - size.Width - from) / pitch + 1e-6) + 1;
            most = Math.Max(most, Enumerable.Range(0, rows).Sum(r => r % 2 * shift is var from && isPair ? From(from) + From(from + second) : From(from)));
        }

        return most;
    }

    private static Contour AtCorner(Contour outline) => outline.Shift(-outline.Bounds.Min);

    // The least shift from which on all stay clear: halved down from one that surely does, in a step that misses no gap of a millimetre.
    private static double Apart(Func<double, Shape[]> at, Shape one, double clear)
    {
        bool IsClear(double by) => at(by).All(g => g.Distance(one) >= Spacing);
        var bad = clear;
        while (bad > 0 && IsClear(bad))
        {
            bad -= 1;
        }

        var good = bad + 1;
        for (var i = 0; i < 20; i++)
        {
            var middle = (bad + good) / 2;
            (bad, good) = IsClear(middle) ? (bad, middle) : (middle, good);
        }

        return good;
    }

    private static Shape Moved(Shape geometry, double x, double y) => AffineTransformation.TranslationInstance(x, y).Transform(geometry);
}
