using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Forming;

/// <summary>A flat pattern with what is found out about it once.</summary>
internal sealed class SimulatedPart
{
    public SimulatedPart(FlatPattern flat, PressBrake? press)
    {
        (Flat, Press) = (flat, press);
        Outlines = [.. Enumerable.Range(0, flat.FlangeCount).Select(i => flat.FlangeRegion(i).Outline)];
        Polygons = [.. Outlines.Select(o => o.Flatten(ChordError).ToArray())];
    }

    public FlatPattern Flat { get; }

    public PressBrake? Press { get; }

    /// <summary>The outline of each flange.</summary>
    public Contour[] Outlines { get; }

    /// <summary>The same as polygons, inside the outline by <see cref="ChordError"/> at most.</summary>
    public Vector2[][] Polygons { get; }

    // Arcs as chords (mm): a part of the clearance that is asked for.
    private const double ChordError = 0.1;
}
