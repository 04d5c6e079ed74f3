using BracketGen.Drawing.Dxf.Format;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.Tests.Sheet;

/// <summary>A sheet with one of everything, laid out as a drawing is: what the tests look at, and what eyes should.</summary>
internal static class DemoSheet
{
    public static SheetPage Compose(PageFormat format, UnitSystem units = UnitSystem.Metric)
    {
        var frame = format.Frame;
        var value = ValueFormat.Of(units);
        var title = new TitleBlock
        {
            Owner = "Saltmarsh Fabrication",
            Title = "Throttle cable bracket",
            SupplementaryTitle = "Dunlin, throttle body Alder 58",
            Number = "SF-DUN-A58-01",
            Revision = "B",
            Date = new DateOnly(2026, 3, 14),
            Creator = "R. Teal",
            Approver = "M. Knot",
            DocumentType = "Part drawing",
            Scale = "1:1",
            Units = units,
            Projection = units == UnitSystem.Inch ? Projection.ThirdAngle : Projection.FirstAngle,
            GeneralTolerances = "ISO 2768-m; cut edges ISO 9013-1",
            Material = "DC01, 3 mm",
            Finish = "Zinc plated",
            Mass = "0.128 kg",
        }.Draw(format).LowerRightAt(new(frame.Max.X, frame.Min.Y));

        var wide = frame.Width > 300;
        var table = SheetTable.Draw(
            "Bends",
            ["Bend", "Angle", "Direction", "Inside radius", "Allowance"],
            [["B1", "90°", "up", value.Radius(3), value.Length(6.32)], ["B2", "37.5°", "down", value.Radius(3), value.Length(2.63)]],
            rightAligned: [1, 3, 4]);
        var notes = Notes.Numbered(
            "Notes",
            [
                "Remove burrs; break all sharp edges 0.2 to 0.5\u00a0mm.",
                "Bend allowance after DIN 6935. Bend a test strip first and compare.",
                "Fully return the throttle by hand from every position, cold and hot, engine off, before the first start.",
            ],
            wide ? 110 : 85);
        var warning = WarningBox.Draw(
            "Safety check failed: wrap at wide open",
            ["The wire leaves the groove 4° before the wide-open stop. Do not make this part."],
            wide ? 190 : 170).UpperLeftAt(new(frame.Min.X + 5, frame.Max.Y - 5));
        if (wide)
        {
            table = table.UpperRightAt(frame.Max - new Vector2(6, 6));
            notes = notes.UpperRightAt(new(frame.Max.X - 6, table.Bounds.Min.Y - 8));
        }
        else
        {
            notes = notes.LowerRightAt(new(frame.Max.X - 4, title.Bounds.Max.Y + 4));
            table = table.UpperLeftAt(new(frame.Min.X + 4, notes.Bounds.Max.Y));
        }

        var page = new SheetPage(format)
            .With(View(new(frame.Min.X + 55, frame.Min.Y + 125), frame, value))
            .With(warning).With(table).With(notes).With(title);
        return wide
            ? page.With(ScaleBar.Millimetres(100).LowerLeftAt(new(frame.Min.X + 8, frame.Min.Y + 8)))
                .With(ScaleBar.Inches(2).LowerLeftAt(new(frame.Min.X + 120, frame.Min.Y + 8)))
            : page;
    }

    private static SheetBlock View(Vector2 origin, Bounds space, ValueFormat value)
    {
        const double width = 90, height = 60, corner = 8, hole = 3.3;
        Vector2 At(double x, double y) => origin + new Vector2(x, y);
        var outline = new Contour(
        [
            new LineSegment(At(corner, 0), At(width - corner, 0)),
            new ArcSegment(At(width - corner, corner), corner, -Angle.Right, Angle.Right),
            new LineSegment(At(width, corner), At(width, height)),
            new LineSegment(At(width, height), At(20, height)),
            new LineSegment(At(20, height), At(0, 36)),
            new LineSegment(At(0, 36), At(0, corner)),
            new ArcSegment(At(corner, corner), corner, Angle.Straight, Angle.Right),
        ]);
        Vector2[] holes = [At(15, 14), At(75, 14), At(45, 30)];
        var items = outline.Segments.Select(SheetItem (s) => new Stroke(s, LineKind.Visible)).ToList();
        items.AddRange(holes.SelectMany(h => (SheetItem[])[Stroke.Circle(h, hole, LineKind.Visible), .. Dimensions.CentreMark(h, hole)]));
        items.Add(new Stroke(At(0, 42), At(width, 42), LineKind.Bend));
        items.Add(new Stroke(At(26, 0), At(26, 60), LineKind.Hidden));

        items.AddRange(Dimensions.Angular(At(20, 60), Angle.FromDegrees(180), Angle.FromDegrees(50.2), 24, value.Degrees(Angle.FromDegrees(50.2)), 0));

        WantedDimension Wanted(Vector2 a, Vector2 b, ViewSide side)
        {
            double Clear(Vector2 p) => holes.Contains(p) ? hole + 2 : 0;
            var length = side is ViewSide.Below or ViewSide.Above ? Math.Abs(b.X - a.X) : Math.Abs(b.Y - a.Y);
            return new(a, b, side, value.Length(length), Clear(a), Clear(b));
        }

        var dimensions = DimensionPlacer.Draw(outline.Bounds,
        [
            Wanted(At(0, 8), At(width, 8), ViewSide.Below),
            Wanted(At(0, 8), holes[0], ViewSide.Below),
            Wanted(holes[0], holes[1], ViewSide.Below),
            Wanted(holes[0], holes[2], ViewSide.Below),
            Wanted(At(20, 60), At(26, 60), ViewSide.Above),
            Wanted(At(20, 60), At(width, 60), ViewSide.Above),
            Wanted(At(width, 42), At(width, 60), ViewSide.Right),
            Wanted(At(width, 0), At(width, 60), ViewSide.Right),
            Wanted(At(8, 0), holes[0], ViewSide.Left),
            Wanted(At(8, 0), holes[2], ViewSide.Left),
            Wanted(At(8, 0), At(0, 42), ViewSide.Left),
        ]);
        items.AddRange(dimensions.Items);
        void Callout(Vector2 centre, double radius, double degrees, double turn, params string[] lines)
        {
            var free = new FreeSpace(items) { Room = space };
            var turns = Enumerable.Range(0, (int)(turn / 10)).SelectMany(i => (int[])[10 * i, -10 * i]);
            free.AddBest(turns.SelectMany(t => (double[])[8, 15, 26, 41], (t, reach) =>
                Dimensions.Callout(centre, radius, Angle.FromDegrees(degrees + t), lines, reach)));
            items.AddRange([.. free.Items.Skip(items.Count)]);
        }

        Callout(holes[1], hole, 65, 180, "3 x " + value.Diameter(6.6), "for M6");
        Callout(At(width - corner, corner), corner, -45, 40, "2 x " + value.Radius(corner));
        return SheetBlock.Around(items);
    }
}
