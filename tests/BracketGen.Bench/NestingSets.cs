using System.Diagnostics;
using System.Globalization;
using System.Xml.Linq;
using BracketGen.Geometry;
using BracketGen.Line.Nesting;

namespace BracketGen.Bench;

/// <summary>The nest on published sets of irregular pieces: length of strip used, beside the best that was published.</summary>
/// <remarks>
/// Reads sets in the XML of ESICUP (http://www.fe.up.pt/~esicup/nesting.xsd): a board whose width counts, and a lot of polygons with the angles
/// by which each may be turned.
/// </remarks>
internal static class NestingSets
{
    // Width of the strip in our millimetres: the sets have units of their own, our cells are 1 mm.
    private const double Across = 2000;

    // Net area over strip, best of guided cuckoo search (A. Elkeran, European Journal of Operational Research 231 (2013) 757-769, table of
    // results); from memory.
    private static readonly Dictionary<string, double> Published = new(StringComparer.OrdinalIgnoreCase)
    {
        ["shapes0"] = 0.6879,
        ["shapes1"] = 0.7673,
        ["shirts"] = 0.8896,
        ["swim"] = 0.7594,
        ["trousers"] = 0.9100,
    };

    public static int Run(TextWriter output, string folder)
    {
        var files = Directory.Exists(folder) ? Directory.GetFiles(folder, "*.xml").Order(StringComparer.Ordinal).ToArray() : [];
        if (files.Length == 0)
        {
            output.WriteLine($"{folder} has no sets (*.xml).");
            return 2;
        }

        output.WriteLine("| set | pieces | strip | length used | of it metal | best published | our length over the best | s |");
        output.WriteLine("|---|---|---|---|---|---|---|---|");
        foreach (var file in files)
        {
            output.WriteLine(Row(Path.GetFileNameWithoutExtension(file), XDocument.Load(file)));
        }

        return 0;
    }

    private static string Row(string name, XDocument document)
    {
        var root = document.Root!;
        var at = root.Name.Namespace;
        var polygons = root.Element(at + "polygons")!.Elements(at + "polygon").ToDictionary(p => (string)p.Attribute("id")!, p => Corners(p, at));
        var problem = root.Element(at + "problem")!;
        var board = Bounds.Around(polygons[PolygonOf(problem.Element(at + "boards")!.Element(at + "piece")!, at)]);
        var scale = Across / board.Height;
        NestPiece[] pieces =
        [
            .. problem.Element(at + "lot")!.Elements(at + "piece").Select(p => new NestPiece(
                (string)p.Attribute("id")!,
                Outline(polygons[PolygonOf(p, at)], scale),
                [.. p.Element(at + "orientation")!.Elements(at + "enumeration").Select(e => Angle.FromDegrees((double)e.Attribute("angle")!))],
                (int)p.Attribute("quantity")!)),
        ];
        var metal = pieces.Sum(p => p.Count * p.Outline.SignedArea) / (scale * scale);
        var clock = Stopwatch.StartNew();
        var nest = Nester.Lay(pieces, Math.Ceiling(3 * metal * scale * scale / Across), Across, 0, 0);
        var used = nest.Sheets.Single().Used(0) / scale;
        var best = Published.TryGetValue(name, out var density) ? metal / (board.Height * density) : double.NaN;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {pieces.Sum(p => p.Count)} | {board.Height:0.##} | {used:0.0} | {metal / (board.Height * used):0.0 %} | {best:0.0} ({density:0.0 %}) | {used / best:0.000} | {clock.Elapsed.TotalSeconds:0} |");
    }

    private static string PolygonOf(XElement piece, XNamespace at) => (string)piece.Elements(at + "component").Single().Attribute("idPolygon")!;

    private static Vector2[] Corners(XElement polygon, XNamespace at) =>
        [.. polygon.Element(at + "lines")!.Elements(at + "segment").Select(s => new Vector2(Number(s, "x0"), Number(s, "y0")))];

    private static double Number(XElement segment, string name) => double.Parse(segment.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static Contour Outline(Vector2[] corners, double scale)
    {
        var outline = Contour.Polygon([.. corners.Select(c => scale * c)]);
        return outline.SignedArea > 0 ? outline : outline.Reversed;
    }
}
