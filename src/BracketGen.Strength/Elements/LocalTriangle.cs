using BracketGen.Geometry;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Elements;

/// <summary>One flat triangle in space with a frame of its own: origin at corner 1, x along side 1-2, z out of the top side.</summary>
/// <remarks>Lengths in mm. Corner 1 is (0, 0), corner 2 (<see cref="X2"/>, 0), corner 3 (<see cref="X3"/>, <see cref="Y3"/>).</remarks>
internal readonly struct LocalTriangle
{
    public LocalTriangle(Vector3 a, Vector3 b, Vector3 c)
    {
        Vector3 ab = b - a, ac = c - a;
        var normal = ab.Cross(ac);
        var twice = normal.Length;
        var side = ab.Length;
        if (!(twice > StrengthTolerance.NoArea * (ab.Dot(ab) + ac.Dot(ac))))
        {
            throw new ArgumentException($"The triangle {a}, {b}, {c} has no area.");
        }

        Ex = ab / side;
        Ez = normal / twice;
        Ey = Ez.Cross(Ex);
        X2 = side;
        X3 = ac.Dot(Ex);
        Y3 = ac.Dot(Ey);
        Area = twice / 2;
    }

    public Vector3 Ex { get; }

    public Vector3 Ey { get; }

    public Vector3 Ez { get; }

    public double X2 { get; }

    public double X3 { get; }

    public double Y3 { get; }

    public double Area { get; }
}
