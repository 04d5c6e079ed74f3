namespace BracketGen.Mechanism.Motion;

/// <summary>Remedies for a valve that does not reach its wide-open stop, each one alone.</summary>
/// <param name="GrooveScale">Factor on the quadrant's pitch radius; below 1.</param>
/// <param name="PullNeeded">Pull needed from the pedal (mm).</param>
/// <param name="LeverScale">Factor on the pedal's cable arm that gives that pull; above 1.</param>
/// <param name="FreePlayNeeded">Free play at which the pull is enough (mm); null if it is not enough even without free play.</param>
public sealed record TravelRemedy(double GrooveScale, double PullNeeded, double LeverScale, double? FreePlayNeeded)
{
    /// <summary>The remedies for <paramref name="travel"/>, with <paramref name="reserve"/> (mm) of over-travel; null if none is needed.</summary>
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
