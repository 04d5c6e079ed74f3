using BracketGen.Design.Inputs;
using BracketGen.Geometry;

namespace BracketGen.Design.Part;

/// <summary>Directions that a middle flange between mount flange and stop flange may face.</summary>
public static class MiddlePlanes
{
    /// <summary>Normals (length one) worth trying, best habit first; each may be the flange's top or its bottom side.</summary>
    /// <remarks>
    /// A wall square to both faces gives two right-angled bends; one that leans halfway between them, two half bends; where the
    /// faces are parallel, a wall across the way from the bolts to the stop, or along it.
    /// </remarks>
    /// <param name="mount">Normal of the mount face, length one.</param>
    /// <param name="stop">Normal of the stop's face, length one.</param>
    /// <param name="way">From the bolts to the stop (mm), any length.</param>
    public static IReadOnlyList<Vector3> Of(Vector3 mount, Vector3 stop, Vector3 way)
    {
        var both = mount.Cross(stop);
        var level = way - way.Dot(mount) * mount;
        if (both.Length < DesignTolerance.NoBendLine)
        {
            if (level.Length < 1)
            {
                return [];
            }

            var ahead = level.Unit;
            return [ahead, mount.Cross(ahead), (ahead + mount).Unit, (ahead - mount).Unit];
        }

        var square = both.Unit;
        var normals = new List<Vector3> { square };
        var facing = stop - stop.Dot(mount) * mount;
        if (Math.Abs(stop.Dot(mount)) > 0.1 && facing.Length > DesignTolerance.NoBendLine)
        {
            normals.Add(facing.Unit); // The stop leans: a wall square to the mount face along the same bend line.
        }

        normals.Add((mount + stop).Unit);
        normals.Add((mount - stop).Unit);
        if (facing.Length > DesignTolerance.NoBendLine)
        {
            normals.Add((square + facing.Unit).Unit);
            normals.Add((square - facing.Unit).Unit);
        }

        return normals;
    }
}
