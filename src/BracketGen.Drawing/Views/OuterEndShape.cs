using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;

namespace BracketGen.Drawing.Views;

/// <summary>The outer's end as a row of cylinders on one line.</summary>
internal static class OuterEndShape
{
    /// <summary>How much of the outer is shown behind its end (mm).</summary>
    public const double ShownOuter = 28;

    /// <summary>Each from and to (mm from the seat, away from the quadrant) with its diameter (mm), from the quadrant outwards.</summary>
    /// <param name="cable">The cable.</param>
    /// <param name="thickness">Thickness of the sheet it stands in (mm).</param>
    public static IEnumerable<(double From, double To, double Diameter)> Of(Cable cable, double thickness)
    {
        switch (cable.OuterEnd)
        {
            case ThreadedAdjuster a:
                yield return (-thickness - a.NutHeight - a.Range / 2, a.NutHeight + a.Range / 2 + 4, a.Thread);
                yield return (-thickness - a.NutHeight, -thickness, a.AcrossFlats);
                yield return (0, a.NutHeight, a.AcrossFlats);
                yield return (a.NutHeight + a.Range / 2 + 4, a.NutHeight + a.Range / 2 + 10, Math.Max(a.Thread, cable.OuterDiameter + 1));
                break;
            case BulkheadFerrule b:
                yield return (-thickness - b.NutHeight - b.StandsOut(thickness), b.NutHeight, b.Thread);
                yield return (-thickness - b.NutHeight, -thickness, b.AcrossFlats);
                yield return (0, b.NutHeight, b.AcrossFlats);
                yield return (b.NutHeight, b.NutHeight + 10, Math.Max(b.Thread, cable.OuterDiameter + 1));
                break;
            case ClippedFerrule f:
                yield return (-f.NoseLength, 0, f.NoseDiameter);
                yield return (-f.Grip - 1, -f.Grip, f.ClipDiameter);
                yield return (0, 10, Math.Max(f.ShoulderDiameter, cable.OuterDiameter));
                break;
            case PushInEnd p:
                yield return (-p.Reach, 0, p.HoleDiameter);
                yield return (0, 2, p.ShoulderDiameter);
                yield return (2, 10, cable.OuterDiameter + 2);
                break;
            case SlottedClip c:
                yield return (-c.NeckLength - 3, -c.NeckLength, c.CollarDiameter);
                yield return (-c.NeckLength, 0, c.NeckDiameter);
                yield return (0, 3, c.CollarDiameter);
                yield return (3, 12, Math.Max(c.NeckDiameter, cable.OuterDiameter + 1));
                break;
            default:
                yield return (-thickness, 0, cable.OuterEnd.BodyDiameter);
                yield return (0, 10, Math.Max(cable.OuterEnd.SeatDiameter, cable.OuterDiameter));
                break;
        }
    }

    /// <summary>Where the end stops and the bare outer begins (mm from the seat).</summary>
    public static double Length(Cable cable) => Of(cable, 0).Max(p => p.To);

    /// <summary>The centre line of the outer from where its end stops (mm): on its way as far as it is to be shown, or a short straight piece where no way is known.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="seat">Where the outer sits.</param>
    /// <param name="along">From the quadrant towards the outer, length one.</param>
    /// <param name="shown">How much of a way that is known is shown (mm).</param>
    public static IReadOnlyList<Vector3> WayOf(Solution solution, Vector3 seat, Vector3 along, double shown)
    {
        const int pieces = 24;
        var end = Length(solution.Job.Vehicle.Cable);
        return solution.Mechanism?.Outer is { } outer && FirstPart([.. outer.Points(shown / pieces).Select(p => p.Vector)], end, end + shown) is { Count: > 1 } part
            ? part
            : [seat + end * along, seat + (end + ShownOuter) * along];
    }

    // The points of a line between two distances along it, those included.
    private static List<Vector3> FirstPart(IReadOnlyList<Vector3> points, double from, double to)
    {
        var part = new List<Vector3>();
        double along = 0;
        for (var i = 0; i + 1 < points.Count; i++)
        {
            var step = points[i].DistanceTo(points[i + 1]);
            double low = Math.Max(from, along), high = Math.Min(to, along + step);
            if (low < high)
            {
                if (part.Count == 0)
                {
                    part.Add(points[i] + (low - along) / step * (points[i + 1] - points[i]));
                }

                part.Add(points[i] + (high - along) / step * (points[i + 1] - points[i]));
            }

            along += step;
        }

        return part;
    }
}
