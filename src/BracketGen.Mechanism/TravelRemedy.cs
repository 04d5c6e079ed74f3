namespace BracketGen.Mechanism;

/// <summary>What would bring a valve that does not reach its wide-open stop there, each remedy alone.</summary>
/// <param name="GrooveScale">Factor on the quadrant's pitch radius; below 1.</param>
/// <param name="PullNeeded">Pull the pedal would have to give (mm).</param>
/// <param name="LeverScale">Factor on the pedal's cable arm that gives that pull; above 1.</param>
/// <param name="FreePlayNeeded">Free play at which the pull would suffice (mm); null where even none does not.</param>
public sealed record TravelRemedy(double GrooveScale, double PullNeeded, double LeverScale, double? FreePlayNeeded)
{
    /// <summary>The remedies for <paramref name="travel"/>, with <paramref name="reserve"/> (mm) of over-travel; null where none is needed.</summary>
    /// <remarks>
    /// Scaling the groove scales the pull: exactly for a constant radius, and for any other groove while the wire direction stays
    /// the same over the sweep (the pull is the integral of the arm, and the arm the groove's own h).
    /// </remarks>
    public static TravelRemedy? For(Travel travel, double reserve)
    {
        if (travel.OverTravel >= reserve)
        {
            return null;
        }

        var needed = travel.FreePlay + travel.PullToWideOpen + reserve;
        var freePlay = travel.AvailablePull - travel.PullToWideOpen - reserve;
        return new(
            (travel.AvailablePull - travel.FreePlay - reserve) / travel.PullToWideOpen,
            needed,
            needed / travel.AvailablePull,
            freePlay >= 0 ? freePlay : null);
    }
}
