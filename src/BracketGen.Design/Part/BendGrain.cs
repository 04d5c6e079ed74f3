using BracketGen.Geometry;

namespace BracketGen.Design.Part;

/// <summary>How a bend runs to the grain: the sheet is laid with its grain across the first bend.</summary>
internal static class BendGrain
{
    /// <summary>Whether a bend runs across the grain; one that runs askew has it along, from halfway on.</summary>
    /// <param name="across">Across the bend, flat coordinates, length one.</param>
    /// <param name="first">Across the first bend, likewise.</param>
    public static bool IsAcross(Vector2 across, Vector2 first) => Math.Abs(across.Dot(first)) >= Math.Sqrt(0.5) - Tolerance.OnLimit;
}
