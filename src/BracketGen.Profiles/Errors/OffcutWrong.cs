namespace BracketGen.Profiles.Errors;

/// <summary>What is wrong with the outline of an offcut.</summary>
public enum OffcutMistake
{
    /// <summary>There is no closed contour.</summary>
    NoContour,

    /// <summary>An end of a line that no other is near.</summary>
    Open,

    /// <summary>More than two ends meet.</summary>
    Fork,

    /// <summary>A closed contour outside the largest one, or across it.</summary>
    Outside,

    /// <summary>It is too small or too large.</summary>
    Size,
}

/// <summary>An outline in DXF that is no offcut.</summary>
/// <param name="Mistake">Why.</param>
/// <param name="Layer">Layer of what is wrong; empty where it is the whole.</param>
/// <param name="Value">The gap to the nearest other end, or the length of the rectangle round it (mm).</param>
/// <param name="Width">Width of that rectangle (mm).</param>
public sealed record OffcutWrong(OffcutMistake Mistake, string Layer = "", double Value = 0, double Width = 0) : ProfileProblem;
