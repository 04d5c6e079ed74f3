namespace BracketGen.Geometry;

/// <summary>The tolerances that several rooms share, with the reason for each size. A room keeps its own in its first folder.</summary>
public static class Tolerance
{
    /// <summary>
    /// Two computed points closer than this (mm) are one point. A bracket is at most about 1 m, where a double resolves
    /// 1e-13 mm; a dozen chained operations stay well below a nanometre.
    /// </summary>
    public const double Point = 1e-7;

    /// <summary>Two directions closer than this (rad) are parallel: 1e-9 rad moves a point 1 m away by a nanometre.</summary>
    public const double Direction = 1e-9;

    /// <summary>
    /// What lies on a limit by construction may miss it by this (mm, rad, or a plain number up to a few hundred): a few hundred
    /// operations round off less, and nobody can make or measure it.
    /// </summary>
    public const double OnLimit = 1e-9;

    /// <summary>
    /// Two sizes (mm) from a file or a table closer than this are the same: no sheet, radius or thread is graded so finely, and a
    /// conversion from inches and back rounds off far less.
    /// </summary>
    public const double SameSize = 1e-6;

    /// <summary>A vector from a file that is shorter than this gives no direction: it is meant as zero.</summary>
    public const double NoDirection = 1e-6;

    /// <summary>Two pieces of a contour that turn less than this (rad) where they meet join smoothly: there is no corner to round.</summary>
    public const double Smooth = 1e-6;

    /// <summary>
    /// A contour offset by a disc keeps the disc's radius to this (mm): ten times <see cref="Point"/>, because its pieces are cut at
    /// computed crossings.
    /// </summary>
    public const double Offset = 1e-6;

    /// <summary>
    /// Pieces that join smoothly may seem to cross this near to their joint (mm): the crossing of two nearly parallel lines is
    /// ill-defined, but never by as much.
    /// </summary>
    public const double Joint = 1e-3;

    /// <summary>Chord error (mm) where an arc must become a polyline for a picture or a mesh: a quarter of a laser's kerf step.</summary>
    public const double Chord = 0.02;

    /// <summary>A measured point more than this (mm) off its plane is a measuring mistake, not rounding.</summary>
    public const double OffPlane = 0.05;

    /// <summary>Clearances are found to this (mm): a tenth of what a shop can measure with feeler gauges.</summary>
    public const double Clearance = 0.005;

    /// <summary>Part of a limit (or of one, where the limit is less) by which round-off may miss it: a value placed exactly on its limit passes.</summary>
    public const double LimitSlack = 1e-9;
}
