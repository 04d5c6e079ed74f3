using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Line.Nesting;
using BracketGen.Line.Numbering;
using BracketGen.Line.Parts;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;
using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;
using Gen = CsCheck.Gen;

namespace BracketGen.Line.Tests;

/// <summary>Nests judged by an independent library of geometry (NetTopologySuite).</summary>
public class NestingTests
{
    // How much less sheet than plain rows of rectangles a nest of the line's own brackets uses, at least; docs/product-line.md says so.
    private const double LeastSavedOnBrackets = 0.04;

    private static readonly ImmutableArray<Angle> AnyTurn = [.. Enumerable.Range(0, 8).Select(i => Angle.FromDegrees(45 * i))];

    private static readonly Gen<(NestPiece[] Pieces, double Spacing, double Border)> Orders =
        Gen.Select(Gen.Select(RandomShapes.Outline, Gen.Int[1, 7], Gen.Bool).Array[1, 6], Gen.Double[0, 8], Gen.Double[0, 15], (shapes, spacing, border) => (
            shapes.Where(s => IsSimple(s.Item1)).Select((s, i) => new NestPiece($"P{i}", s.Item1, s.Item3 ? AnyTurn : [Angle.Zero, Angle.Straight], s.Item2)).ToArray(), spacing, border));

    [Fact]
    public void Nests_of_random_pieces_keep_apart_and_lose_none()
    {
        var laid = 0;
        Orders.Check(LongRun.Of(25), order =>
        {
            var nest = Nester.Lay(order.Pieces, 900, 500, order.Spacing, order.Border);
            laid += Judge(nest, order.Pieces, 900, 500, order.Spacing, order.Border);
            Assert.Equal(Nester.Lay(order.Pieces, 900, 500, order.Spacing, order.Border).Sheets.SelectMany(s => s.Laid), nest.Sheets.SelectMany(s => s.Laid));
            var rows = RowNest.Lay(order.Pieces, 900, 500, order.Spacing, order.Border);
            Judge(rows, order.Pieces, 900, 500, order.Spacing, order.Border);
            Assert.True(nest.UsedArea <= rows.UsedArea + 1e-6, "worse than plain rows");
            Assert.InRange(nest.Utilisation, 0, 1);
            Assert.True(nest.FewestSheets <= nest.Sheets.Length);
        });
        Assert.True(laid > LongRun.AtLeast(150), $"only {laid} pieces laid");
    }

    [Fact]
    public void Brackets_take_less_sheet_than_in_rows()
    {
        var parts = Estuary.Solved.Parts;
        NestPiece[] pieces = [.. parts.Select(p => new NestPiece(p.Made.PartNumber, p.Bracket.Flat.Blank.Outline, GrainTurns.Of(p.Bracket), 60))];
        var nest = Nester.Lay(pieces, 2000, 1000, 5, 10);
        var rows = RowNest.Lay(pieces, 2000, 1000, 5, 10);
        Judge(nest, pieces, 2000, 1000, 5, 10);
        var saved = 1 - nest.UsedArea / rows.UsedArea;
        Assert.True(saved >= LeastSavedOnBrackets, $"{saved:P1} saved");
        Assert.InRange(nest.Utilisation, 0.5, 1);
    }

    // Two right triangles make a rectangle: only true outlines find that.
    [Fact]
    public void Triangles_lie_in_pairs()
    {
        var triangle = Contour.Polygon([new(0, 0), new(120, 0), new(0, 120)]);
        NestPiece[] pieces = [new("T", triangle, AnyTurn, 12)];
        var nest = Nester.Lay(pieces, 1000, 300, 4, 5);
        Judge(nest, pieces, 1000, 300, 4, 5);
        Assert.True(nest.UsedArea < 0.7 * RowNest.Lay(pieces, 1000, 300, 4, 5).UsedArea);
    }

    [Fact]
    public void Squares_fill_a_sheet_to_its_bound()
    {
        // 9 x 4 squares of 100 with 5 between and 10 round about: 9 * 105 - 5 + 20 = 960 by 435.
        var square = Contour.Polygon([new(0, 0), new(100, 0), new(100, 100), new(0, 100)]);
        var nest = Nester.Lay([new("S", square, [Angle.Zero], 36)], 965, 440, 5, 10);
        Assert.Single(nest.Sheets);
        Assert.Equal(2, Nester.Lay([new("S", square, [Angle.Zero], 37)], 965, 440, 5, 10).Sheets.Length);
    }

    [Fact]
    public void What_is_too_large_is_told_and_the_rest_is_laid()
    {
        var big = Contour.Polygon([new(0, 0), new(700, 0), new(700, 700), new(0, 700)]);
        var small = Contour.Polygon([new(0, 0), new(70, 0), new(70, 70), new(0, 70)]);
        var nest = Nester.Lay([new("big", big, [Angle.Zero], 2), new("small", small, [Angle.Zero], 3)], 800, 600, 5, 10);
        Assert.Equal("big", Assert.Single(nest.Unlaid).Name);
        Assert.Equal(3, nest.Sheets.Single().Laid.Length);
        Assert.Empty(Nester.Lay([], 800, 600, 5, 10).Sheets);
    }

    // A sheet bent tighter than it stands along its grain lies with the first bend across the grain, which runs along x.
    [Fact]
    public void Tight_bends_lie_across_the_grain()
    {
        var bracket = Estuary.Solved.Parts.First(p => p.Bracket.Flat.Bends.Length > 0).Bracket;
        Bracket With(double radiusOverThickness) => bracket with
        {
            Stock = bracket.Stock with { Material = bracket.Stock.Material with { MinRadiusAlongGrain = bracket.Flat.Bends.Min(b => b.InsideRadius) / bracket.Stock.Thickness * radiusOverThickness } },
        };
        Assert.Equal(8, GrainTurns.Of(With(0.9)).Length);
        Assert.False(GrainTurns.IsBound(With(1)));
        var bound = GrainTurns.Of(With(1.1));
        Assert.Equal(2, bound.Length);
        Assert.All(bound, turn => Assert.Equal(0, bracket.Flat.Bends[0].Along.Rotate(turn).X, 1e-9));
    }

    // Every piece laid once on a sheet, as it is, within the border, and the spacing kept between any two.
    internal static int Judge(SheetNest nest, NestPiece[] pieces, double length, double width, double spacing, double border)
    {
        var count = 0;
        foreach (var piece in pieces)
        {
            var laid = nest.All.Sum(s => s.Laid.Count(l => l.Piece == piece));
            Assert.Equal(nest.Unlaid.Contains(piece) ? 0 : piece.Count, laid);
            count += laid;
        }

        foreach (var sheet in nest.Sheets)
        {
            Assert.Equal((length, width), (sheet.Length, sheet.Width));
            JudgeOne(sheet, spacing, border);
        }

        return count;
    }

    // Within the border of its sheet, and the spacing kept between any two.
    internal static void JudgeOne(LaidSheet sheet, double spacing, double border)
    {
        var room = new Envelope(border, sheet.Length - border, border, sheet.Width - border);
        room.ExpandBy(1e-6);
        var tree = new STRtree<(int Index, Polygon Shape)>();
        var shapes = sheet.Laid.Select((l, i) => (Index: i, Shape: Polygon(l.Outline))).ToArray();
        foreach (var shape in shapes)
        {
            tree.Insert(shape.Shape.EnvelopeInternal, shape);
        }

        foreach (var (laid, shape) in sheet.Laid.Zip(shapes))
        {
            Assert.Contains(laid.Turn, laid.Piece.Turns);
            Assert.True(room.Contains(shape.Shape.EnvelopeInternal), "over the border");
            Assert.Equal(laid.Piece.Outline.SignedArea, laid.Outline.SignedArea, 1e-6 * laid.Piece.Outline.SignedArea);
            var near = shape.Shape.EnvelopeInternal.Copy();
            near.ExpandBy(spacing);
            foreach (var other in tree.Query(near).Where(o => o.Index > shape.Index))
            {
                // The flattened arcs lie a little inside the true ones: two chord errors of 0.001 mm.
                var distance = shape.Shape.Distance(other.Shape);
                Assert.True(distance >= spacing - 0.003, $"{distance} mm apart, {spacing} mm wanted");
                Assert.True(spacing > 0.01 || shape.Shape.Intersection(other.Shape).Area < 0.05, "they overlap");
            }
        }
    }

    internal static bool IsSimple(Contour contour) => Polygon(contour).IsValid;

    internal static Polygon Polygon(Contour contour)
    {
        var points = contour.Flatten(0.001).Select(p => new Coordinate(p.X, p.Y)).ToList();
        points.Add(points[0]);
        return new(new LinearRing([.. points]));
    }
}
