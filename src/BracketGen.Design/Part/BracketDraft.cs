using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Part;

/// <summary>A bracket whose outline is not drawn yet: where bends and holes lie, and what must have metal.</summary>
internal sealed class BracketDraft
{
    private double _leastArea = double.NaN, _leastCut = double.NaN;

    /// <summary>What was chosen before.</summary>
    public required BracketShape.Choice Choice { get; init; }

    /// <summary>The joints that the bends close; none on a flat plate.</summary>
    public required IReadOnlyList<Joint> Joints { get; init; }

    /// <summary>What must have metal on each flange (mm).</summary>
    public required IReadOnlyList<Disc>[] Discs { get; init; }

    /// <summary>The bends: those that close the joints, then that of the second mount flange, then that of the return lip or return flange.</summary>
    public required Bend[] Bends { get; init; }

    /// <summary>Height of the return lip or return flange over the face of its flange, to its free edge (mm); null where there is none.</summary>
    public double? LipHeight { get; init; }

    /// <summary>Centre of the stop's hole, flat coordinates (mm).</summary>
    public required FlatPoint Stop { get; init; }

    /// <summary>Whether the seat is on the top of the sheet.</summary>
    public required bool SeatOnTop { get; init; }

    /// <summary>Area (mm²) that the blank cannot fall below.</summary>
    public double LeastArea => double.IsNaN(_leastArea) ? _leastArea = CostBound.LeastArea(this) : _leastArea;

    /// <summary>Length (mm) of cut that the blank cannot fall below.</summary>
    public double LeastCut => double.IsNaN(_leastCut) ? _leastCut = CostBound.LeastCut(this) : _leastCut;

    /// <summary>Whether what must have metal stays clear of the bends: without it the outline cannot be drawn.</summary>
    public bool KeepsApart => BlankOutline.KeepApart(Bends, Discs, Choice.Sheet.Straight) && SecondIsApart;

    /// <summary>Whether the second mount flange lies behind the lines of all other bends, and they behind its own; true where there is none.</summary>
    public bool SecondIsApart => Choice.Second is null || SecondFlange.IsApart(Bends, Discs, Joints.Count + 1);

    /// <summary>The bolt holes of the second mount flange, flat coordinates (mm); none where there is none.</summary>
    public IEnumerable<BracketHole> SecondBolts => Choice.Second is { } second ? second.Bolts.Select(b => b with { Flange = Joints.Count + 1 }) : [];

    /// <summary>Rough give (mm) of the stop along the wire under <paramref name="tension"/> (N); needs no outline, and so is exact.</summary>
    public double Give(double tension)
    {
        if (Joints.Count == 0)
        {
            return 0;
        }

        var sheet = Choice.Sheet;
        var main = Bends.AsSpan(0, Joints.Count);
        ThrottlePoint Foot(Bend bend, int i) => (i == 0 ? sheet.Frame : Joints[i - 1].Next).ToThrottle(bend.Middle);
        var give = StopGive.Plain(sheet.Stock, main, Stop, sheet.StopMetalRadius, sheet.BoltMetal, Choice.Placement.Seat, Foot);
        return tension * (LipHeight is { } height
            ? give - StopGive.SavedBy(Bends[^1], height, sheet.Stock, main, Stop, sheet.StopMetalRadius, sheet.BoltMetal, Choice.Placement.Seat, Foot)
            : give);
    }
}
