using BracketGen.Design.Part;

namespace BracketGen.Profiles.Errors;

/// <summary>What is wrong with a flat pattern in DXF.</summary>
public enum DxfMistake
{
    /// <summary>It is not text.</summary>
    Binary,

    /// <summary>A line that should be a group code is none, or the file ends after one.</summary>
    NotPairs,

    /// <summary>There is no section of entities.</summary>
    NoEntities,

    /// <summary>A value that is no number, or one far too large.</summary>
    BadNumber,

    /// <summary>An entity lacks a number.</summary>
    NumberMissing,

    /// <summary>More lines than a flat pattern has.</summary>
    TooMuch,

    /// <summary>The file does not say its unit.</summary>
    NoUnit,

    /// <summary>The file says another unit.</summary>
    OtherUnit,

    /// <summary>There is no such layer.</summary>
    NoLayer,

    /// <summary>An end of a line that no other is near.</summary>
    OpenContour,

    /// <summary>More than two ends meet.</summary>
    Fork,

    /// <summary>There is no closed contour.</summary>
    NoContour,

    /// <summary>Something is cut outside the outline.</summary>
    OutsideOutline,

    /// <summary>A closed contour in the outline that is no circle.</summary>
    NotRound,

    /// <summary>The number of bend lines is not that of the bends.</summary>
    BendCount,

    /// <summary>There is no hole near the place, and no diameter is given.</summary>
    NoHole,
}

/// <summary>A flat pattern in DXF that cannot be used.</summary>
/// <param name="Mistake">Why.</param>
/// <param name="Detail">Layer, or layers that there are; empty where there is none.</param>
/// <param name="Value">A number that goes with the mistake: a gap or distance (mm), or a count.</param>
public sealed record DxfWrong(DxfMistake Mistake, string Detail, double Value = 0) : ProfileProblem
{
    /// <summary>How many lines and circles, and how many points, a drawing may have: a bracket is drawn with a few hundred, and more would only cost time.</summary>
    public const int MostPieces = 3000;

    /// <summary>How far apart two ends may lie that meet (mm): programs round to hundredths.</summary>
    public const double Together = 0.05;

    /// <summary>How far a place may lie from the circle that it means (mm).</summary>
    public const double Near = 3;
}

/// <summary>A flat pattern that does not fold to a bracket.</summary>
/// <param name="Fault">Why.</param>
public sealed record DrawnWrong(DrawnFault Fault) : ProfileProblem;
