using System.Globalization;
using System.Xml.Linq;
using BracketGen.Drawing.Measuring;
using BracketGen.Geometry;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Drawing.Tests;

/// <summary>What is measured so far is drawn to scale and on the right side; what is not known, or nonsense, does no harm.</summary>
public class SoFarPictureTests
{
    private static readonly Gen<Vector3> Places = Gen.Select(Gen.Double[-150, 150], Gen.Double[-150, 150], Gen.Double[-150, 150], (x, y, z) => new Vector3(x, y, z));

    [Fact]
    public void Holes_stand_where_they_were_measured() => Repeatable.Check(
        Gen.Select(Places, Places, Gen.Double[5, 80].Nullable(), Gen.Double[5, 30].Nullable()), 300, sample =>
        {
            var (first, second, rim, boss) = sample;
            var svg = XDocument.Parse(SoFarPicture.Of(new BodySoFar { OuterRadius = rim, Holes = [(1, first, boss), (2, second, null)] }));
            var scale = Scale(svg);
            var (h1, h2) = (At(svg, "H1"), At(svg, "H2"));
            var away = second - first;
            // From outside x points right and y up; from the right of that, z points left (third angle). Paper counts down.
            Near((scale * away.X, -scale * away.Y), h2[0], h1[0]);
            Near((-scale * away.Z, -scale * away.Y), h2[1], h1[1]);
        });

    [Fact]
    public void The_pocket_turns_the_way_the_body_opens()
    {
        foreach (var opensClockwise in new[] { false, true })
        {
            var body = new BodySoFar { OpensClockwise = opensClockwise, Groove = (Vector2.Zero, 30), PocketAngle = 0, PocketSize = 6, Rotation = Math.PI / 2, GrooveExtent = 2 };
            var svg = XDocument.Parse(SoFarPicture.Of(body));
            var scale = Scale(svg);
            var pockets = Circles(svg, 3 * scale);
            Assert.Equal(2, pockets.Count);
            Assert.Equal(-30 * scale, pockets[1].X - pockets[0].X, 2);
            Assert.Equal((opensClockwise ? 30 : -30) * scale, pockets[1].Y - pockets[0].Y, 2);
        }
    }

    [Fact]
    public void The_cable_is_as_long_as_its_pull_is_beside_it()
    {
        var svg = XDocument.Parse(SoFarPicture.Of(new CableSoFar { FreeInnerLength = 120, Wire = 1.5, FittingDiameter = 8, FittingLength = 10, Pull = 46, PadTravel = 138 }));
        var scale = Scale(svg);
        var lengths = Lines(svg).Select(l => Math.Abs(l.To.X - l.From.X)).ToArray();
        Assert.All(new[] { 120.0, 46, 138 }, length => Assert.Contains(lengths, l => Math.Abs(l - scale * length) < 0.01));
    }

    [Fact]
    public void Nothing_and_nonsense_are_drawn()
    {
        Assert.Contains("mm</text>", SoFarPicture.Of(new BodySoFar()), StringComparison.Ordinal);
        Assert.Contains("mm</text>", SoFarPicture.Of(new CableSoFar()), StringComparison.Ordinal);
        var far = SoFarPicture.Of(new BodySoFar
        {
            OuterRadius = 1e300, ShaftDiameter = -4, Groove = (new(1e9, 0), 1e-300), PocketAngle = 1e12, GrooveExtent = -1e9, HubRadius = 0, BoreDirection = 1e15, CastingDiameter = 0,
            Casting = (-5, double.MaxValue), Normal = new(0, 0, 0), Holes = [(1, new(1e9, 0, 0), 3), (2, new(1, 1, 1), -4)], KeepOuts = [("<a>", new(5, 5, 5), new(1, 1, 1))],
        });
        Assert.DoesNotContain("NaN", far, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", far, StringComparison.Ordinal);
        Assert.Contains("&lt;a&gt;", far, StringComparison.Ordinal);
    }

    private static void Near((double X, double Y) wanted, (double X, double Y) to, (double X, double Y) from)
    {
        // The picture has four decimals, and its bar is read from the picture.
        Assert.InRange(Math.Abs(to.X - from.X - wanted.X), 0, 0.01);
        Assert.InRange(Math.Abs(to.Y - from.Y - wanted.Y), 0, 0.01);
    }

    // The bar under the picture says how long it is.
    private static double Scale(XDocument svg)
    {
        var all = svg.Root!.Elements().ToList();
        var bar = all[^4];
        var (from, to) = Line(bar.Attribute("d")!.Value)!.Value;
        return (to.X - from.X) / double.Parse(all[^1].Value.Split(' ')[0], CultureInfo.InvariantCulture);
    }

    private static List<(double X, double Y)> At(XDocument svg, string label) =>
        [.. svg.Root!.Elements().Where(e => e.Name.LocalName == "text" && e.Value == label).Select(e => (Number(e.Attribute("x")!.Value), Number(e.Attribute("y")!.Value)))];

    private static IEnumerable<((double X, double Y) From, (double X, double Y) To)> Lines(XDocument svg) =>
        svg.Root!.Elements().Where(e => e.Name.LocalName == "path").Select(e => Line(e.Attribute("d")!.Value)).OfType<((double, double), (double, double))>();

    private static ((double X, double Y) From, (double X, double Y) To)? Line(string path) =>
        path[1..].Split('L') is [var from, var to] && !to.Contains('A') ? (Pair(from), Pair(to)) : null;

    // A circle begins at its right end.
    private static List<(double X, double Y)> Circles(XDocument svg, double radius) =>
        [.. svg.Root!.Elements().Where(e => e.Name.LocalName == "path").Select(e => e.Attribute("d")!.Value.Split('A')).Where(p => p.Length == 3 && Math.Abs(Number(p[1].Split(' ')[0]) - radius) < 1e-3)
            .Select(p => Pair(p[0][1..])).Select(p => (p.X - radius, p.Y))];

    private static (double X, double Y) Pair(string text) => text.Split(' ') is [var x, var y] ? (Number(x), Number(y)) : default;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
