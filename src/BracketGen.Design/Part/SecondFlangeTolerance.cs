using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Cutting;

namespace BracketGen.Design.Part;

/// <summary>How far cutting and bending may leave a hole of the second mount flange from its true place, the mount flange lying on its face.</summary>
/// <remarks>Cut, bend angle, bend line and allowance each at its worst, magnitudes added (<see cref="SeatTolerances.OfBend"/>).</remarks>
public static class SecondFlangeTolerance
{
    /// <summary>The movements of the middle of a hole on the flange's underside by what bending may make otherwise, each at its worst: bend angle first, then bend line and allowance (mm).</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="hole">A hole of its second mount flange.</param>
    internal static IEnumerable<Vector3> Moves(Bracket bracket, BracketHole hole)
    {
        var at = bracket.Folded.Fold(hole.Centre, 0);
        return SeatTolerances.OfBend(bracket, hole.Flange - 1, hole.Centre).Select(d => d.PlusMinus / d.Step * (d.Made.Folded.Fold(hole.Centre, 0) - at));
    }

    /// <summary>Diameter about its true place in which the hole lies, seen along its axis (mm).</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="hole">A hole of its second mount flange.</param>
    /// <param name="process">How it is cut.</param>
    /// <param name="end">The outer's end.</param>
    public static double Position(Bracket bracket, BracketHole hole, CuttingProcess process, OuterEnd end)
    {
        var axis = bracket.Folded.Flanges[hole.Flange].Z;
        return 2 * (HoleMaking.Of(bracket, hole, end, process).Position + Moves(bracket, hole).Sum(m => (m - m.Dot(axis) * axis).Length));
    }

    /// <summary>How far it may be off along a direction (mm, either way).</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="hole">A hole of its second mount flange.</param>
    /// <param name="process">How it is cut.</param>
    /// <param name="end">The outer's end.</param>
    /// <param name="way">The direction in space, length one.</param>
    public static double Along(Bracket bracket, BracketHole hole, CuttingProcess process, OuterEnd end, Vector3 way)
    {
        var square = bracket.Folded.Flanges[hole.Flange].Z.Dot(way);
        return HoleMaking.Of(bracket, hole, end, process).Position * Math.Sqrt(Math.Max(0, 1 - square * square)) + Moves(bracket, hole).Sum(m => Math.Abs(m.Dot(way)));
    }
}
