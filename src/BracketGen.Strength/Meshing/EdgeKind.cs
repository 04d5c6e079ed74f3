namespace BracketGen.Strength.Meshing;

/// <summary>What an edge of the triangulation represents.</summary>
internal enum EdgeKind : byte
{
    /// <summary>Nothing: it may be turned.</summary>
    Free,

    /// <summary>Part of a line that edges must follow, metal on both sides.</summary>
    Line,

    /// <summary>Part of a contour: metal on one side.</summary>
    Border,
}
