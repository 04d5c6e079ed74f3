using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;

namespace BracketGen.Design.Part;

/// <summary>The leaving angles worth trying.</summary>
public static class LeavingAngles
{
    // A range of a few degrees must not depend on where the steps happen to fall.
    private static readonly Angle[] NearEnd = [Angle.FromDegrees(1), Angle.FromDegrees(2)];

    /// <summary>
    /// Leaving angles at the closed stop that groove and wrap allow: in steps back from the end of the groove, closer near that end, and those at which
    /// the stop's face comes square or parallel to the mount face.
    /// </summary>
    /// <remarks>The steps are counted from the groove's end, which no limit moves: a smaller wrap adds angles and moves none.</remarks>
    /// <param name="quadrant">The quadrant, opening counter-clockwise.</param>
    /// <param name="mountNormal">Normal of the mount face, length one.</param>
    /// <param name="leastWrap">Wrap that must be left at the wide-open stop.</param>
    /// <param name="step">Step between two leaving angles.</param>
    public static IReadOnlyList<Angle> Of(Quadrant quadrant, Vector3 mountNormal, Angle leastWrap, Angle step)
    {
        var first = quadrant.PocketNormal + quadrant.Rotation.Value + leastWrap;
        var last = quadrant.PocketNormal + quadrant.GrooveExtent;
        if (last < first)
        {
            return [first]; // No angle passes both checks; the nearest one shows by how much.
        }

        // Round-off must not lose an angle that lies just on a limit.
        var onLimit = DesignTolerance.OnStep * step;
        var count = (int)Math.Floor((last - first).Radians / step.Radians + DesignTolerance.OnStep);
        var angles = Enumerable.Range(0, count + 1).Select(i => last - (double)i * step)
            .Concat(NearEnd.Where(n => n < step && last - n >= first - onLimit).Select(n => last - n)).ToList();
        if (mountNormal.XY.Length > 0.05)
        {
            for (var quarter = 0; quarter < 4; quarter++)
            {
                // d(φ) is a quarter turn ahead of φ: at φ = polar + k quarters it is square or parallel to the normal.
                var special = mountNormal.XY.Polar + quarter * Angle.Right;
                var turns = Math.Ceiling((first - onLimit - special).Radians / (2 * Math.PI));
                special += new Angle(turns * 2 * Math.PI);
                if (special <= last + onLimit)
                {
                    angles.Add(special);
                }
            }
        }

        return [.. angles.OrderBy(a => a.Radians)];
    }
}
