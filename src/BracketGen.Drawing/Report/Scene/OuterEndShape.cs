using BracketGen.Mechanism.Cables;

namespace BracketGen.Drawing.Report.Scene;

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
}
