using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.Units;
using BracketGen.Words.CutFile;

namespace BracketGen.Words.ShopDrawing;

/// <summary>What is said of an adapter ring: on its drawing, in its cut file, in the parts list, the set-up sheet and the report.</summary>
public static class RingText
{
    /// <summary>What it is called.</summary>
    public const string Name = "adapter ring";

    /// <summary>Heads of the table of its holes.</summary>
    public static IReadOnlyList<string> Heads { get; } = ["Hole", "x", "y", "Diameter", "For"];

    /// <summary>Heading of the view.</summary>
    public static string Heading(string scale) => $"Adapter ring, flat, {scale}";

    /// <summary>Heading of the table.</summary>
    public const string TableHeading = "Holes of the adapter ring, from H1";

    /// <summary>Name of its drawing in the part number.</summary>
    public static string PartNumber(DocumentData document) => $"{document.PartNumber} {Name}".Trim();

    /// <summary>A row for each hole, the bore last.</summary>
    public static IEnumerable<IReadOnlyList<string>> Rows(RingShape shape, MountFace mount, UnitSystem units)
    {
        var datum = shape.Holes[0].Centre;
        string Write(double length) => units.WriteFine(Quantity.Length, Math.Round(length, 6) + 0.0); // Never -0.
        for (var i = 0; i < shape.Holes.Length; i++)
        {
            var hole = shape.Holes[i];
            var use = hole.Purpose == RingHolePurpose.Flange ? $"flange bolt {hole.Thread.Name}"
                : mount.Holes[i].Fixing is TappedHole ? $"bracket: tap {hole.Thread.Name}"
                : $"bracket: bolt {hole.Thread.Name} with nut";
            yield return [hole.Name, Write(hole.Centre.X - datum.X), Write(hole.Centre.Y - datum.Y), Write(hole.Diameter), use];
        }

        yield return ["bore", Write(shape.Bore.Centre.X - datum.X), Write(shape.Bore.Centre.Y - datum.Y), Write(2 * shape.Bore.Radius), "stays free"];
    }

    /// <summary>Notes beside the view.</summary>
    public static IReadOnlyList<string> Notes(RingShape shape, MountFace mount, UnitSystem units) =>
    [
        $"Material {shape.Ring.Sheet.Material.Designation}, thickness {units.WriteSize(shape.Ring.Thickness)}. One piece for each bracket. Cut file {FileNames.AdapterRing}, the finished edge: kerf is not compensated.",
        "Seen from the side that the bracket lies on. x and y count from H1, the x axis through H1 and H2. General tolerances ISO 2768-1 m.",
        "Deburr all edges and holes on both sides. Flat: no light under a straight edge. No paint under heads, nuts and bracket.",
        .. mount.Holes.Any(h => h.Fixing is TappedHole) ? new[] { "Tap the marked holes after cutting; they are cut to the core of the thread." } : [],
    ];

    /// <summary>Lines at the head of its cut file.</summary>
    public static IEnumerable<string> CutFileHead(RingShape shape, DocumentData document, UnitSystem units)
    {
        yield return $"Part {PartNumber(document)} {document.Revision}".Trim();
        yield return $"{shape.Ring.Sheet.Material.Designation}, thickness {units.WriteSize(shape.Ring.Thickness)}";
        yield return "CUT_THROUGH: cut. SURFACE_MARK: etch or leave out.";
        yield return CutFileText.LeftToTheCutter;
        yield return CutFileText.FinishedEdge;
    }

    /// <summary>Its size for a parts list: sheet and overall size.</summary>
    public static string Size(RingShape shape, UnitSystem units)
    {
        var bounds = shape.Blank.Outline.Bounds;
        return $"{shape.Ring.Sheet.Material.Designation}, {units.WriteSize(shape.Ring.Thickness)}, {units.Write(Quantity.Length, bounds.Width)} x {units.Write(Quantity.Length, bounds.Height)}";
    }

    /// <summary>A flange bolt that is needed in place of today's; null where today's stays.</summary>
    public static string? LongerBolt(FlangeBolt bolt, MountScrew screw) => screw.Length > bolt.Length ? ScrewText.Order(screw) : null;

    /// <summary>How it is fitted.</summary>
    public static string Fit(MountFace mount, UnitSystem units)
    {
        var screws = RingChecks.Screws(mount);
        var longer = screws.Where(s => s.Screw.Length > s.Bolt.Length).Select(s => s.Name).ToArray();
        return $"Take out the flange bolts {Phrases.List([.. screws.Select(s => s.Name)])} one after the other, never all at once: the gasket stays pressed. Lay the adapter ring under their heads, washers on top, its holes H1 and up where the drawing has them. "
            + (longer.Length == 0 ? "The same bolts go in again. " : $"In place of {Phrases.List(longer)} fit the longer bolts of the parts list. ")
            + $"Where the ring does not go over the inlet with the bolts in turn, take all out and fit a new gasket. Tighten crosswise in two rounds: {string.Join(", ", screws.GroupBy(s => s.Screw).Select(g => $"{Phrases.List([.. g.Select(s => s.Name)])} to {units.Write(Quantity.Torque, g.Key.Torque)}"))}. "
            + "The ring must lie flat and touch nothing in its bore.";
    }

    /// <summary>The ring among the inputs of the report.</summary>
    public static string Input(AdapterRing ring, UnitSystem units) =>
        $"{ring.Sheet.Material.Designation}, {units.WriteSize(ring.Thickness)} thick, radius {units.Write(Quantity.Length, ring.BoreRadius)} free";

    /// <summary>A flange bolt among the inputs of the report.</summary>
    public static string Input(FlangeBolt bolt, UnitSystem units) =>
        $"{bolt.Thread.Name}, {units.Write(Quantity.Length, bolt.Length)} long, {units.Write(Quantity.Length, bolt.Engagement)} deep, depth of thread {(bolt.ThreadDepth is { } depth ? units.Write(Quantity.Length, depth) : "not measured")}";
}
