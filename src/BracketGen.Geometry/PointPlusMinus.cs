namespace BracketGen.Geometry;

/// <summary>How far each coordinate of a measured point may be off, each way.</summary>
/// <remarks>Millimetres, zero or more, throttle frame; the same in a mirror image. Default value: exact.</remarks>
/// <param name="X">± of the first coordinate.</param>
/// <param name="Y">± of the second coordinate.</param>
/// <param name="Z">± of the third coordinate.</param>
public readonly record struct PointPlusMinus(double X, double Y, double Z)
{
    /// <summary>Whether the point counts as exact.</summary>
    public bool IsExact => X == 0 && Y == 0 && Z == 0;

    /// <summary>How far the point may be off along <paramref name="direction"/> (length one), each way: half the width of the box of all ±.</summary>
    public double Along(Vector3 direction) => Math.Abs(direction.X) * X + Math.Abs(direction.Y) * Y + Math.Abs(direction.Z) * Z;
}
