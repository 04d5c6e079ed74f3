using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Units;

namespace BracketGen.Design.Checks;

/// <summary>Room that the folded bracket, or a part of it, must leave to something.</summary>
/// <remarks>Demands of one id are one check, told by the tightest of them.</remarks>
/// <param name="Id">Id of the check.</param>
/// <param name="Title">What is checked.</param>
/// <param name="Kind">What a failure means.</param>
/// <param name="Things">What must be left room, as convex pieces.</param>
/// <param name="Limit">Distance (mm) to be kept.</param>
/// <param name="Within">The part of the sheet that keeps it: positive there, a signed distance (mm) in the flat; null for all.</param>
/// <param name="Source">Where the limit comes from.</param>
/// <param name="Consequence">What happens where it is not kept.</param>
internal sealed record SpaceDemand(
    string Id, string Title, CheckKind Kind, ImmutableArray<ConvexDistance> Things, double Limit, Func<Vector2, double>? Within,
    string Source, string Consequence)
{
    /// <summary>How exactly clearances are found for the answer (mm).</summary>
    public const double Error = 0.05;

    /// <summary>Height above a bolt's seat that a socket needs free (mm), head not counted (common practice, no source).</summary>
    private const double SocketRoom = 20;

    /// <summary>Length of the outer's end behind the seat for which room is kept (mm; common practice, no source).</summary>
    private const double StopBodyRoom = 15;

    /// <summary>Gap between flanges of one bracket that touch nowhere in the flat (mm; common practice, no source): room for paint and a brush.</summary>
    private const double FlangeGap = 2;

    /// <summary>The check, with the distance found.</summary>
    public Check Check(FoldedSheet sheet, double error) => new(
        Id, Title, Kind, Quantity.Length, Clearance.Least(sheet, Things, error, Limit, Within), Bound.AtLeast, Limit, Source, Consequence);

    /// <summary>Whether the distance is kept.</summary>
    public bool IsMet(FoldedSheet sheet) => Clearance.Keeps(sheet, Things, Limit, Within);

    /// <summary>All demands on a bracket.</summary>
    public static IEnumerable<SpaceDemand> Of(Bracket bracket, ThrottleBody body, Cable cable, Preferences preferences)
    {
        foreach (var (keepOut, index) in body.KeepOuts.Select((k, i) => (k, i)))
        {
            yield return new(
                $"keep-out-{index + 1}", $"Bracket to {keepOut.Name}", CheckKind.Function, [keepOut.DistanceTo],
                preferences.KeepOutClearance, null, Sources.Preference, $"The bracket meets {keepOut.Name}.");
        }

        yield return new(
            "moving-parts", "Bracket to quadrant and fitting over the sweep", CheckKind.Safety,
            new MovingParts(body.Quadrant, cable.Fitting).Pieces, preferences.SweepClearance, null, Sources.Preference,
            "The quadrant or the end fitting can catch on the bracket and hold the valve open.");

        var flat = bracket.Flat;
        if (flat.Bends.IsEmpty)
        {
            yield break;
        }

        foreach (var bolt in bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt))
        {
            var thread = bolt.Thread!;
            var seat = bracket.Folded.Fold(bolt.Centre, flat.Thickness);
            var top = seat + (thread.HeadHeight + thread.WasherThickness + SocketRoom) * bracket.Folded.Flanges[bolt.Flange].Z;
            yield return new(
                "bolt-room", $"Room for the socket on bolt {bolt.Name}, radius", CheckKind.Making,
                [p => MovingParts.SegmentDistance(p, seat, top)], thread.SocketDiameter / 2, flat.Bends[0].Depth, Sources.CommonPractice,
                "The bolt cannot be tightened: the bent flange is in the socket's way.");
        }

        // The nut, shoulder or spanner on either side of the stop flange must stay clear of all that is not the stop flange.
        var last = bracket.StopBend!;
        var lip = bracket.Lip;
        var (stop, normal) = bracket.FoldedSeat;
        var (from, to) = (stop - bracket.Seat.Protrusion * normal, stop + StopBodyRoom * normal);
        yield return new(
            "stop-room", "Room for the nut or shoulder at the stop, radius", CheckKind.Making,
            [p => MovingParts.SegmentDistance(p, from, to)], bracket.Seat.RoomDiameter / 2,
            point => Math.Max(last.Allowance - last.Depth(point), lip?.Depth(point) ?? double.NegativeInfinity), Sources.CommonPractice,
            "The spanner or the shoulder at the stop runs into the bend.");

        if (lip is not null)
        {
            yield return new(
                "lip-apart", "Return lip to mount flange, folded", CheckKind.Making,
                [ConvexPlate.Around(bracket.Folded, 0)], FlangeGap, lip.Depth, Sources.CommonPractice,
                "The return lip runs into the mount flange.");
        }

        if (last.From != 0)
        {
            yield return new(
                "flanges-apart", "Stop flange to mount flange, folded", CheckKind.Making,
                [ConvexPlate.Around(bracket.Folded, 0)], FlangeGap, last.Depth, Sources.CommonPractice,
                "The bent flanges run into each other.");
        }
    }
}
