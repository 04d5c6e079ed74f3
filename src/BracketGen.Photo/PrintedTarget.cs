using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Photo;

/// <summary>The target that is printed, laid on the mount face and photographed with the throttle body: eight marks round a window, and a bar to check the print by.</summary>
/// <remarks>
/// Millimetres, from the middle of the target, x to the right and y up as it is read. Marks 1, 3, 5 and 7 are its corners and the others lie midway
/// between two of them, so that a lens that bends straight lines shows.
/// </remarks>
public static class PrintedTarget
{
    /// <summary>Half the width between the marks (mm).</summary>
    public const double HalfWidth = 80;

    /// <summary>Half the height between the marks (mm).</summary>
    public const double HalfHeight = 105;

    /// <summary>Radius of a mark (mm).</summary>
    public const double MarkRadius = 5;

    /// <summary>Length of the bar to check the print by (mm).</summary>
    public const double Bar = 140;

    /// <summary>How far a printed mark may be off (mm), each way: a printer draws within that, and paper lies no better (common practice, no source).</summary>
    public const double MarkPlusMinus = 0.2;

    /// <summary>How far the paper may stand off the face (mm), each way (common practice, no source).</summary>
    public const double PaperPlusMinus = 0.5;

    /// <summary>The middles of marks 1 to 8: lower left corner first, counter-clockwise (mm).</summary>
    public static ImmutableArray<Vector2> Marks { get; } =
    [
        new(-HalfWidth, -HalfHeight), new(0, -HalfHeight), new(HalfWidth, -HalfHeight), new(HalfWidth, 0),
        new(HalfWidth, HalfHeight), new(0, HalfHeight), new(-HalfWidth, HalfHeight), new(-HalfWidth, 0),
    ];
}
