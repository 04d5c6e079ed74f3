using BracketGen.Geometry;

namespace BracketGen.Mechanism.Rods;

/// <summary>Bend, largest curvature and turning of a line, from piece to piece.</summary>
/// <remarks>
/// In a piece the moment is the cubic with the right ends and slopes, which are known: it changes by the force's moment on the line.
/// Mutable: it adds up.
/// </remarks>
internal sealed class Curvature
{
    private const int Halvings = 5;
    private const int Looks = 8;
    private readonly List<Vector3> _turned = [Vector3.Zero];
    private double _bend;
    private double _turning;
    private double _along;

    /// <summary>Integral of the curvature.</summary>
    public Angle Bend => new(_bend);

    /// <summary>Largest curvature.</summary>
    public double Largest { get; private set; }

    /// <summary>Where it is.</summary>
    public double LargestAt { get; private set; }

    /// <summary>Largest turn about one axis between any two ends of pieces.</summary>
    public Angle Turning => new(_turning);

    /// <summary>Adds a piece of length <paramref name="h"/> with moments and directions at its ends and the force in it.</summary>
    public void Add(double h, Vector3 from, Vector3 to, Vector3 directionFrom, Vector3 directionTo, Vector3 force)
    {
        // dM/ds = F × t for the force F on the far end.
        var piece = new Cubic(from, to, h * force.Cross(directionFrom), h * force.Cross(directionTo));
        _bend += h * piece.IntegralOfLength(0, 1, Halvings);
        for (var j = 0; j <= Looks; j++)
        {
            var curvature = piece.At((double)j / Looks).Length;
            if (curvature > Largest)
            {
                (Largest, LargestAt) = (curvature, _along + h * j / Looks);
            }
        }

        _along += h;
        var turned = _turned[^1] + h * piece.Integral;
        foreach (var before in _turned)
        {
            _turning = Math.Max(_turning, turned.DistanceTo(before));
        }

        _turned.Add(turned);
    }

    private readonly record struct Cubic(Vector3 From, Vector3 To, Vector3 FromSlope, Vector3 ToSlope)
    {
        public Vector3 Integral => (From + To) / 2 + (FromSlope - ToSlope) / 12;

        public Vector3 At(double s)
        {
            var u = 1 - s;
            return u * u * (1 + 2 * s) * From + s * s * (1 + 2 * u) * To + s * u * (u * FromSlope - s * ToSlope);
        }

        // Simpson's rule, halved where the length may pass near zero: there it has a corner.
        public double IntegralOfLength(double low, double high, int halvings)
        {
            double a = At(low).Length, middle = At((low + high) / 2).Length, b = At(high).Length;
            return halvings == 0 || Math.Min(Math.Min(a, b), middle) > 0.5 * Math.Max(Math.Max(a, b), middle)
                ? (high - low) * (a + 4 * middle + b) / 6
                : IntegralOfLength(low, (low + high) / 2, halvings - 1) + IntegralOfLength((low + high) / 2, high, halvings - 1);
        }
    }
}
