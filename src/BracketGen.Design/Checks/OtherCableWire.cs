using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>A cable that works in a groove of its own, with its wire over the sweep.</summary>
/// <remarks>In the frame of the job it was solved for, which opens counter-clockwise; lengths in mm.</remarks>
public sealed record OtherCableWire
{
    /// <summary>The cable.</summary>
    public required OtherCable Other { get; init; }

    /// <summary>The cable as it was measured.</summary>
    public Cable Cable => Other.Cable!;

    /// <summary>Its groove.</summary>
    public required OtherGroove Groove { get; init; }

    /// <summary>What the job says of it.</summary>
    public required CableUse Use { get; init; }

    /// <summary>Its number among the vehicle's other cables, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Where the seat of its outer is: as the job says, or where the cable would want it.</summary>
    public required ThrottlePoint Seat { get; init; }

    /// <summary>Whether the job says where it is.</summary>
    public bool IsSeatGiven => Use.Seat is not null;

    /// <summary>Free play at the closed stop with the adjuster where it must stand.</summary>
    public required double FreePlay { get; init; }

    /// <summary>How far the adjuster must stand off mid range.</summary>
    public required double AdjusterShift { get; init; }

    /// <summary>How far its outer end stands out of its seat towards the quadrant, in the thickest sheet the job allows.</summary>
    public required double Protrusion { get; init; }

    /// <summary>The wire at equal steps of opening, closed stop first; empty where no wire runs from the groove to the seat.</summary>
    public required ImmutableArray<TautWire> Sweep { get; init; }

    /// <summary>Wire that moves between the closed and the wide-open stop: pulled by the cable, or drawn by the quadrant.</summary>
    public double Moved => Sweep.IsEmpty ? double.NaN : Math.Abs(Sweep[^1].Length - Sweep[0].Length);

    // How much thicker the wire counts for what lies between two steps of the sweep.
    private const int EveryStep = 4;

    /// <summary>The cables of a job that work in grooves of their own.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    public static ImmutableArray<OtherCableWire> Of(Job job) =>
        [.. job.Vehicle.OtherCables.Select((cable, i) => Solve(job, cable, job.UseOf(cable), i + 1)).OfType<OtherCableWire>()];

    /// <summary>The cable that works in a groove; null where none does.</summary>
    internal static OtherCable? In(Job job, OtherGroove groove) =>
        job.Vehicle.OtherCables.FirstOrDefault(c => job.UseOf(c) is { Fate: CableFate.InGroove } use && use.Groove == groove.Name);

    /// <summary>Its wire and outer end as what stands in the way of bracket and pedal's cable; empty where the job does not say where its seat is.</summary>
    internal IEnumerable<Standing> Standing => Rods.Select(r => new Standing(Thing.OtherWire, Other.Name, r.Solid));

    /// <summary>The same as rods.</summary>
    internal ImmutableArray<Rod> Rods
    {
        get
        {
            if (!IsSeatGiven || Sweep.IsEmpty)
            {
                return [];
            }

            var steps = Sweep.Where((_, i) => i % EveryStep == 0).ToArray();
            var between = steps.Zip(steps.Skip(1)).Max(p => Math.Max(0, Math.Abs(p.First.Direction.Cross(p.Second.From - p.First.From)))) / 2;
            var away = (Seat - (Seat + new Vector3(Sweep[0].From.X - Seat.X, Sweep[0].From.Y - Seat.Y, Groove.Z - Seat.Z))).Unit;
            return
            [
                .. steps.Select(w => new Rod(new(Vector3.From(w.From, Groove.Z)), Seat, Cable.WireDiameter / 2 + between)),
                new Rod(Seat - (Cable.OuterEnd is ThreadedAdjuster a ? Protrusion - a.Range : Protrusion) * away, Seat + Surroundings.StopBodyRoom * away, Cable.OuterEnd.SeatDiameter / 2),
                new Rod(Seat - Protrusion * away, Seat, Cable.OuterEnd.BodyDiameter / 2),
            ];
        }
    }

    private static OtherCableWire? Solve(Job job, OtherCable cable, CableUse use, int number)
    {
        if (use.Fate != CableFate.InGroove || cable.Cable is not { } whole || job.Body.OtherGrooves.FirstOrDefault(g => g.Name == use.Groove) is not { } groove)
        {
            return null;
        }

        var quadrant = groove.Quadrant;
        var wanted = job.Preferences.FreePlay.Value;
        var seat = use.Seat ?? Wanted(job, groove, whole);
        var sweep = groove.Draws
            ? DrawnWire.TrySweep(quadrant, seat.XY) ?? []
            : Travel.TrySolve(quadrant, seat.XY, wanted, whole.FreeInnerLength.Value)?.Sweep ?? [];
        var slack = sweep.IsEmpty ? wanted : whole.FreeInnerLength.Value - sweep[0].Length;
        var isAdjusted = whole.OuterEnd.AdjusterRange > 0;
        return new()
        {
            Other = cable,
            Groove = groove,
            Use = use,
            Number = number,
            Seat = seat,
            FreePlay = isAdjusted ? wanted : slack,
            AdjusterShift = isAdjusted ? slack - wanted : 0,
            Protrusion = job.Preferences.MaxThickness + whole.OuterEnd switch
            {
                ThreadedAdjuster t => t.NutHeight + t.Range,
                SlottedClip c => c.NeckLength,
                _ => 0,
            },
            Sweep = sweep,
        };
    }

    // Where the cable would want its seat: with wrap and groove to spare at both ends alike.
    private static ThrottlePoint Wanted(Job job, OtherGroove groove, Cable cable)
    {
        var (quadrant, wanted) = (groove.Quadrant, job.Preferences.FreePlay.Value);
        StopPlacement? placement;
        if (groove.Draws)
        {
            var most = quadrant.GrooveExtent - quadrant.Rotation.Value;
            placement = DrawnWire.At(quadrant, cable.FreeInnerLength.Value, wanted, 0.5 * (job.Preferences.MinWrap + most));
        }
        else
        {
            var angles = LeavingAngles.Of(quadrant, job.Body.Mount.Plane.Normal, job.Preferences.MinWrap, Angle.FromDegrees(5));
            placement = StopPlacement.At(quadrant, cable.FreeInnerLength.Value, wanted, angles[angles.Count / 2]);
        }

        // Too short a cable has no seat: the point on the shaft's axis is one that no wire reaches.
        return (placement?.Seat ?? new(0, 0, 0)) + new Vector3(0, 0, groove.Z);
    }
}
