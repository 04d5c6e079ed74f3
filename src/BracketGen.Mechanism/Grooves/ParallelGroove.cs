using BracketGen.Geometry;

namespace BracketGen.Mechanism.Grooves;

/// <summary>A groove at a constant distance from another, like the centre line of a thicker wire.</summary>
/// <remarks>h = h₀ + δ; every normal keeps its direction.</remarks>
internal sealed record ParallelGroove : Groove
{
    private readonly Groove inner;
    private readonly double by;

    public ParallelGroove(Groove inner, double by) => (this.inner, this.by) = (inner, by);

    public override double PlusMinus => inner.PlusMinus;

    public override double Support(Angle normal) => inner.Support(normal) + by;

    public override double Slope(Angle normal) => inner.Slope(normal);

    public override (double Support, double Slope) Tangent(Angle normal)
    {
        var (support, slope) = inner.Tangent(normal);
        return (support + by, slope);
    }

    internal override (double Support, double Slope, double Radius) Local(Angle normal)
    {
        var (support, slope, radius) = inner.Local(normal);
        return (support + by, slope, radius + by);
    }

    public override double RadiusOfCurvature(Angle normal) => inner.RadiusOfCurvature(normal) + by;

    public override double ArcBetween(Angle from, Angle to) => inner.ArcBetween(from, to) + by * (to - from).Radians;

    public override Groove Mirrored() => new ParallelGroove(inner.Mirrored(), by);

    public override Groove Grown(double more) => inner.Grown(by + more);

    /// <remarks>The point's polar angle ν + atan(h'/h) grows with ν by h (h + h'')/(h² + h'²): Newton's method.</remarks>
    public override Angle NormalAt(Angle polar)
    {
        var normal = inner.NormalAt(polar).Radians;
        for (var step = 0; step < 50; step++)
        {
            var (support, slope, radius) = Local(new(normal));
            var error = normal + Math.Atan2(slope, support) - polar.Radians;
            var change = error * (support * support + slope * slope) / (support * radius);
            normal -= change;
            if (Math.Abs(change) < 1e-9)
            {
                break;
            }
        }

        return new(normal);
    }
}
