using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Part;

/// <summary>What a hole of the bracket is for.</summary>
public enum HolePurpose
{
    /// <summary>A bolt to the mount face.</summary>
    Bolt,

    /// <summary>The outer's end.</summary>
    Stop,
}

/// <summary>A hole or open slot of the bracket.</summary>
/// <remarks>Flat-pattern coordinates, mm.</remarks>
/// <param name="Name">Name on the drawing: H1, H2.</param>
/// <param name="Purpose">What it is for.</param>
/// <param name="Flange">Number of the flange it is in.</param>
/// <param name="Centre">Centre; of the round bottom in a slot.</param>
/// <param name="Diameter">Diameter; width of a slot, side of a square.</param>
/// <param name="Towards">The slot's way out, length one; null for a round hole.</param>
/// <param name="Thread">The bolt's thread; null for the stop.</param>
/// <param name="MetalRadius">Radius of metal that was laid around it (mm).</param>
public sealed record BracketHole(
    string Name, HolePurpose Purpose, int Flange, FlatPoint Centre, double Diameter, Vector2? Towards, FastenerThread? Thread,
    double MetalRadius)
{
    /// <summary>How exactly the diameter or the width was read (mm, either way); 0 for one that is still to be made.</summary>
    public double PlusMinus { get; init; }

    /// <summary>How exactly each coordinate of its place was read (mm, either way); 0 for one that is still to be made.</summary>
    public double PlacePlusMinus { get; init; }

    /// <summary>Length of the spacer between sheet and boss (mm); zero where there is none.</summary>
    public double SpacerLength { get; init; }

    /// <summary>How the mount hole under it holds the bracket.</summary>
    public Fixing Fixing { get; init; } = new TappedHole();

    /// <summary>Its outline; null for a round hole, and for a slot open to the edge.</summary>
    public HoleOutline? Outline { get; init; }

    /// <summary>Where the bolt stands off the middle of its slotted hole; zero in the middle, and in every other hole.</summary>
    public Vector2 Shift { get; init; }

    /// <summary>Where the bolt stands.</summary>
    public FlatPoint BoltAt => Centre + Shift;

    /// <summary>The line of a slotted hole that its bolt can stand on, from its middle to one end; zero in every other hole.</summary>
    public Vector2 HalfTravel => Outline?.HalfTravel ?? Vector2.Zero;

    /// <summary>Whether the bolt can stand in more than one place.</summary>
    public bool IsSlotted => Outline is SlottedHole;

    /// <summary>The metal that was laid around it: a disc, at a slotted hole one at each end.</summary>
    public IEnumerable<Disc> MetalDiscs() => IsSlotted
        ? [new((Centre - HalfTravel).Vector, MetalRadius), new((Centre + HalfTravel).Vector, MetalRadius)]
        : [new(Centre.Vector, MetalRadius)];

    /// <summary>Distance from an outline to its centre, of a slotted hole to its middle line (mm).</summary>
    /// <param name="outline">The outline.</param>
    public double ToEdge(Contour outline)
    {
        var pieces = (int)Math.Ceiling(2 * HalfTravel.Length / LineStep);
        return Enumerable.Range(0, pieces + 1).Min(i => outline.DistanceTo((Centre + (pieces == 0 ? 0 : 2.0 * i / pieces - 1) * HalfTravel).Vector));
    }

    // Along the middle line of a slotted hole the outline is looked at in steps of this (mm): between two a corner is nearer by a hundredth of that.
    private const double LineStep = 0.25;

    /// <summary>How far it reaches beside the line that its bolt can stand on, which is a point for all but a slotted hole (mm).</summary>
    public double Beside => IsSlotted ? Diameter / 2 : Reach;

    /// <summary>How far it reaches from its centre in a direction (mm).</summary>
    /// <param name="way">The direction, length one.</param>
    public double ReachTowards(Vector2 way) => Outline?.ReachTowards(Diameter, way) ?? Diameter / 2;

    /// <summary>Distance that must be kept from its centre, or its middle line, to every edge (mm).</summary>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    public double EdgeDistance(double thickness) => IsSlotted ? HoleDistances.RoundSlot(Diameter) : HoleDistances.AcrossForce(2 * Reach, thickness);

    /// <summary>What is cut out for it; of a slot open to the edge its round bottom.</summary>
    public Contour Cut() => Outline?.Round(Centre, Diameter) ?? Contour.Circle(Centre.Vector, Diameter / 2);

    /// <summary>How far it reaches from its centre (mm).</summary>
    public double Reach => Outline?.Reach(Diameter) ?? Diameter / 2;

    /// <summary>Its least width (mm).</summary>
    public double LeastWidth => Outline?.LeastWidth(Diameter) ?? Diameter;

    /// <summary>Whether it is a slot open to the edge.</summary>
    public bool IsSlot => Towards is not null;
}

/// <summary>A sheet-metal bracket in its place on the throttle body.</summary>
public sealed record Bracket : IMirrored<Bracket>
{
    /// <summary>The sheet it is made of.</summary>
    public required Stock Stock { get; init; }

    /// <summary>The die it is bent on; null for a flat plate, and for one bent over a bar or a clamp.</summary>
    public required PressBrakeDie? Die { get; init; }

    /// <summary>Flat pattern and folded shape.</summary>
    public required FoldedSheet Folded { get; init; }

    /// <summary>Its holes: bolts first, the stop last.</summary>
    public required ImmutableArray<BracketHole> Holes { get; init; }

    /// <summary>What the outer's end needs.</summary>
    public required StopSeat Seat { get; init; }

    /// <summary>Whether the outer's seat is on the top of the sheet (the eye's side of the flat pattern).</summary>
    public required bool SeatOnTop { get; init; }

    /// <summary>The order of its bends with their tools; null for a flat plate, where none was found, and where nobody looked.</summary>
    public BendPlan? Plan { get; init; }

    /// <summary>Where the stop of this finished bracket was found; null for one that is still to be made, or was not measured.</summary>
    public MeasuredStop? Measured { get; init; }

    /// <summary>How exactly its shape was measured; null for one that is still to be made, or was not measured.</summary>
    public ShapeReadings? Readings { get; init; }

    /// <summary>Whether it was made elsewhere and is finished: then it is no matter what the job's shop can cut and bend.</summary>
    public bool IsMadeElsewhere { get; init; }

    /// <summary>The flat pattern.</summary>
    public FlatPattern Flat => Folded.Flat;

    /// <summary>The hole or slot of the stop.</summary>
    public BracketHole Stop => Holes[^1];

    /// <summary>The bolt holes of the mount flange, which place the bracket: all but those of the second mount flange.</summary>
    public ImmutableArray<BracketHole> MountBolts => [.. Holes.Where(h => h.Purpose == HolePurpose.Bolt && h.Flange == 0)];

    /// <summary>The bend that carries the stop flange; null for a flat plate.</summary>
    public Bend? StopBend => Flat.Bends.FirstOrDefault(b => b.To == Stop.Flange);

    /// <summary>The bend of the second mount flange; null where there is none.</summary>
    public Bend? SecondBend => Holes.FirstOrDefault(h => h.Purpose == HolePurpose.Bolt && h.Flange > 0) is { } bolt ? Flat.Bends[bolt.Flange - 1] : null;

    /// <summary>The bend of the return lip on the stop flange; null where there is none.</summary>
    public Bend? Lip => Flat.Bends.FirstOrDefault(b => b.From == Stop.Flange && b.To != SecondBend?.To);

    /// <summary>The bend of the return flange along the side of a flange before the stop flange; null where there is none.</summary>
    public Bend? ReturnFlange => Flat.Bends.Skip(Stop.Flange).FirstOrDefault(b => b.From != Stop.Flange && b.To != SecondBend?.To);

    /// <summary>The edges of the outline, counter-clockwise, in the order of the drawing's table of points: edge i runs from point i to the next.</summary>
    public IEnumerable<Segment> Edges() => Flat.Blank.Outline.Segments.Where(s => s.Length > Tolerance.Point);

    /// <summary>Mass (t).</summary>
    public double Mass => Flat.Blank.Area * Stock.Thickness * Stock.Material.Density;

    /// <summary>Where the seat lies and which way it faces, as measured, or found by folding the flat pattern (mm; length one).</summary>
    public (ThrottlePoint Point, Vector3 Normal) FoldedSeat
    {
        get
        {
            if (Measured is { } found)
            {
                return (Folded.Flanges[0].ToThrottle(found.Seat, found.Height), Folded.Flanges[0].ToWorldDirection(found.Normal));
            }

            var top = Folded.TopAt(Stop.Centre);
            return (Folded.Fold(Stop.Centre, SeatOnTop ? Stock.Thickness : 0), SeatOnTop ? top : -top);
        }
    }

    /// <inheritdoc/>
    /// <remarks>The flat pattern is mirrored in its own y axis with it.</remarks>
    public Bracket Mirrored() => this with
    {
        Folded = Folded.Mirrored(),
        Plan = Plan?.Mirrored(),
        Measured = Measured?.Mirrored(),
        Holes =
        [
            .. Holes.Select(h => h with
            {
                Centre = h.Centre.MirroredInX,
                Towards = h.Towards?.MirroredInX,
                Outline = h.Outline?.Mirrored(),
                Shift = h.Shift.MirroredInX,
            }),
        ],
    };
}
