using System.Collections.Immutable;

namespace BracketGen.Geometry;

/// <summary>How one pattern of points lies best on another.</summary>
/// <param name="Over">How far the worst point is beyond its play as the pattern was laid (mm); zero or less where every point has room. This placing exists, so that the best is no worse.</param>
/// <param name="AtLeast">What no placing can be better than (mm).</param>
/// <param name="Turn">How far the laid pattern is turned, counter-clockwise.</param>
/// <param name="IsTurnedOver">Whether it lies with its other side up.</param>
/// <param name="Partners">For each point of the laid pattern the point that it lies on, from 0.</param>
public sealed record PatternFit(double Over, double AtLeast, Angle Turn, bool IsTurnedOver, ImmutableArray<int> Partners)
{
    /// <summary>Whether it fits: a placing was found in which every point has room.</summary>
    public bool Fits => Over <= Tolerance.SameSize;

    /// <summary>Whether it does not fit: no placing gives every point room.</summary>
    public bool FitsNowhere => AtLeast > Tolerance.SameSize;
}
