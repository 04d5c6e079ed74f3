namespace BracketGen.Geometry;

/// <summary>Every tolerance of the program, in one place, with the reason for its size.</summary>
public static class Tolerance
{
    /// <summary>
    /// Two computed points closer than this (mm) are one point. A bracket is at most about 1 m, where a double resolves
    /// 1e-13 mm; a dozen chained operations stay well below a nanometre.
    /// </summary>
    public const double Point = 1e-7;

    /// <summary>Two directions closer than this (rad) are parallel: 1e-9 rad moves a point 1 m away by a nanometre.</summary>
    public const double Direction = 1e-9;

    /// <summary>Chord error (mm) where an arc must become a polyline for a picture or a mesh: a quarter of a laser's kerf step.</summary>
    public const double Chord = 0.02;

    /// <summary>A measured point more than this (mm) off its plane is a measuring mistake, not rounding.</summary>
    public const double OffPlane = 0.05;

    /// <summary>Clearances are found to this (mm): a tenth of what a shop can measure with feeler gauges.</summary>
    public const double Clearance = 0.005;

    /// <summary>Part of a limit (or of one, where the limit is less) by which round-off may miss it: a value placed exactly on its limit passes.</summary>
    public const double LimitSlack = 1e-9;
}
