using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>A bracket in place with all that moves, hangs and stands round it, each worked out when it is first asked for.</summary>
/// <remarks>Of a job that opens counter-clockwise. One thread at a time.</remarks>
internal sealed class Surroundings
{
    /// <summary>Length of the outer's end behind the seat for which room is kept (mm; common practice, no source).</summary>
    public const double StopBodyRoom = 15;

    /// <summary>Step in which the outer's line is laid out (mm).</summary>
    private const double OuterStep = 5;

    private readonly JobFacts _facts;
    private readonly Lazy<ImmutableArray<Rod>> _wire;
    private readonly Lazy<ImmutableArray<ThrottlePoint>> _line;

    /// <summary>The surroundings of a bracket.</summary>
    /// <param name="bracket">The bracket in place.</param>
    /// <param name="job">The job.</param>
    /// <param name="placement">Where the stop is.</param>
    /// <param name="travel">The travel with the stop there.</param>
    /// <param name="outerLine">The outer's line from there (<see cref="LineOf"/>), where it is known already; null to find it when it is asked for.</param>
    /// <param name="wire">The wire there (<see cref="WireOf"/>), likewise.</param>
    public Surroundings(Bracket bracket, Job job, StopPlacement placement, Travel travel, Lazy<ImmutableArray<ThrottlePoint>>? outerLine = null,
        Lazy<ImmutableArray<Rod>>? wire = null)
    {
        (Bracket, Job, Placement) = (bracket, job, placement);
        _facts = JobFacts.Of(job);
        _wire = wire ?? WireOf(job, placement, () => travel);
        _line = outerLine ?? LineOf(job, placement);
    }

    /// <summary>The outer's line from a stop, found when it is asked for: all brackets there share it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="placement">Where the stop is.</param>
    public static Lazy<ImmutableArray<ThrottlePoint>> LineOf(Job job, StopPlacement placement) => new(() => OuterWay.Line(job, placement, OuterStep));

    /// <summary>The wire at a stop over the sweep, found when it is asked for: all brackets there share it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="placement">Where the stop is.</param>
    /// <param name="travel">The travel with the stop there.</param>
    public static Lazy<ImmutableArray<Rod>> WireOf(Job job, StopPlacement placement, Func<Travel> travel) =>
        new(() => SweptWire.Of(job.Body.Quadrant, travel(), placement.Seat, job.Vehicle.Cable.WireDiameter));

    /// <summary>The bracket.</summary>
    public Bracket Bracket { get; }

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>Where the stop is.</summary>
    public StopPlacement Placement { get; }

    /// <summary>Quadrant and end fitting over the sweep.</summary>
    public MovingParts Moving => _facts.Moving;

    /// <summary>The straight wire over the sweep.</summary>
    public ImmutableArray<Rod> Wire => _wire.Value;

    /// <summary>The spaces of the return springs.</summary>
    public ImmutableArray<Standing> Springs => _facts.Springs;

    /// <summary>The cables that work in grooves of their own.</summary>
    public ImmutableArray<OtherCableWire> OtherWires => _facts.OtherWires;

    /// <summary>The casting and the keep-outs.</summary>
    public ImmutableArray<Standing> Stands => _facts.Stands;

    /// <summary>The outer beyond the room of its end, up to the bulkhead; empty where its line is not known.</summary>
    public ImmutableArray<Rod> Outer => OuterUpTo(double.PositiveInfinity);

    /// <summary>
    /// What of the outer a keep-out must stay clear of: all of it, but where the outer comes out of that very keep-out, as out of a panel, all but
    /// its last end.
    /// </summary>
    public ImmutableArray<Rod> OuterPast(Standing keepOut)
    {
        if (Job.Bulkhead is not { } bulkhead || SolidGap.Between(keepOut.Solid, ConvexSolid.Rod(bulkhead.Point.Vector, bulkhead.Point.Vector, 0)) > AtBulkhead)
        {
            return Outer;
        }

        var room = 2 * (Job.Vehicle.Cable.OuterDiameter / 2 + Job.Preferences.OuterClearance);
        return OuterUpTo(OuterTube.LengthOf(_line.Value) - room);
    }

    /// <summary>The outer end in the stop: nut, shoulder or collar on both sides of the sheet, and what stands out towards the quadrant.</summary>
    public ImmutableArray<ConvexSolid> OuterEnd
    {
        get
        {
            var (seat, normal) = Bracket.FoldedSeat;
            var (end, thickness) = (Job.Vehicle.Cable.OuterEnd, Bracket.Stock.Thickness);
            var front = end is NuttedEnd nutted ? thickness + nutted.NutHeight : Bracket.Seat.Protrusion;
            var wide = ConvexSolid.Cylinder((seat - front * normal).Vector, (seat + StopBodyRoom * normal).Vector, Bracket.Seat.SeatRadius);
            return Bracket.Seat.Protrusion > front
                ? [wide, ConvexSolid.Cylinder((seat - Bracket.Seat.Protrusion * normal).Vector, seat.Vector, end.BodyDiameter / 2)]
                : [wide];
        }
    }

    /// <summary>The heads of the bolts with their washers.</summary>
    public IEnumerable<Standing> BoltHeads => Bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).Select(bolt =>
    {
        var thread = bolt.Thread!;
        var seat = Bracket.Folded.Fold(bolt.BoltAt, Bracket.Flat.Thickness);
        var top = seat + bolt.Fixing.Above(thread, Bracket.Stock.Thickness + bolt.SpacerLength) * Bracket.Folded.Flanges[bolt.Flange].Z;
        return new Standing(Thing.Bolt, bolt.Name, ConvexSolid.Cylinder(seat.Vector, top.Vector, thread.WasherDiameter / 2));
    });

    // The outer comes out of a panel whose face the bulkhead's point was measured on, within what a rule reads.
    private const double AtBulkhead = 1;

    private ImmutableArray<Rod> OuterUpTo(double end) => Job.Bulkhead is { } bulkhead
        ? OuterTube.Of(_line.Value, Placement.Direction, -bulkhead.Direction, Job.Vehicle.Cable.OuterDiameter / 2, StopBodyRoom, end)
        : [];
}
