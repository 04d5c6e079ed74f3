using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Cutting;

namespace BracketGen.Design.Part;

/// <summary>How far the stop of a finished bracket may be from its place, held by mount face and bolt holes: what the drawing allows and an inspector measures.</summary>
/// <remarks>
/// Taken from the deviations that the probabilities use (<see cref="SeatTolerances"/>), each at its limit, added by the root of the sum of
/// squares: a part within them is never farther off than parts that the probabilities count. The play of the bolts is not in it: it comes
/// with the datums, at maximum material.
/// </remarks>
/// <param name="Position">Diameter of the cylinder that the axis of the stop's hole must lie in, at the seat (mm).</param>
/// <param name="Profile">Width of the zone that the seat's face must lie in (mm); 0 where nothing moves it.</param>
/// <param name="Tilt">How far the seat's face may be turned from its place; 0 where nothing turns it.</param>
/// <param name="SeatDiameter">Diameter round the hole on which the tilt is measured, whole millimetres (mm).</param>
public sealed record StopTolerance(double Position, double Profile, Angle Tilt, double SeatDiameter)
{
    /// <summary>Width of the zone for the tilt, over <see cref="SeatDiameter"/> (mm): two parallel planes (ISO 1101, angularity).</summary>
    public double Angularity => SeatDiameter * Math.Sin(Tilt.Radians);

    /// <summary>The stop's tolerances.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="process">How it is cut.</param>
    /// <param name="end">The outer's end that goes into the stop.</param>
    public static StopTolerance Of(Bracket bracket, CuttingProcess process, OuterEnd end)
    {
        var (seat, normal) = bracket.FoldedSeat;
        var frame = Frame.FromZX(seat.Vector, normal, Math.Abs(normal.Z) < 0.9 ? new Vector3(0, 0, 1).Cross(normal) : new Vector3(1, 0, 0));
        double xx = 0, xy = 0, yy = 0, along = 0, turnX = 0, turnXy = 0, turnY = 0;
        foreach (var (_, step, plusMinus, made) in SeatTolerances.Deviations(bracket, process, end))
        {
            var (at, facing) = made.FoldedSeat;
            var moved = plusMinus / step * frame.ToLocalDirection(at - seat);
            var turned = plusMinus / step * frame.ToLocalDirection(facing - normal);
            (xx, xy, yy, along) = (xx + moved.X * moved.X, xy + moved.X * moved.Y, yy + moved.Y * moved.Y, along + moved.Z * moved.Z);
            (turnX, turnXy, turnY) = (turnX + turned.X * turned.X, turnXy + turned.X * turned.Y, turnY + turned.Y * turned.Y);
        }

        return new(2 * Math.Sqrt(Largest(xx, xy, yy)), 2 * Math.Sqrt(along), new(Math.Sqrt(Largest(turnX, turnXy, turnY))), Math.Floor(2 * (bracket.Seat.SeatRadius + 1)));
    }

    // The larger eigenvalue of a symmetric matrix: the square of what adds up in the worst direction.
    private static double Largest(double xx, double xy, double yy) =>
        (xx + yy) / 2 + Math.Sqrt((xx - yy) * (xx - yy) / 4 + xy * xy);
}
