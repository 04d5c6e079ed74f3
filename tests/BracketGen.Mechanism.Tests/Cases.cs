using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Uncertainty;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

/// <summary>A convex groove known in closed form: h = R + Σ aₖ cos(kν - γₖ), convex while Σ |aₖ| (k² - 1) is below R.</summary>
internal sealed record WavyGroove(double Radius, double A1, double A2, double A3, double G1, double G2, double G3) : Groove
{
    public override double Support(Angle v) =>
        Radius + A1 * Math.Cos(v.Radians - G1) + A2 * Math.Cos(2 * v.Radians - G2) + A3 * Math.Cos(3 * v.Radians - G3);

    public override double Slope(Angle v) =>
        -A1 * Math.Sin(v.Radians - G1) - 2 * A2 * Math.Sin(2 * v.Radians - G2) - 3 * A3 * Math.Sin(3 * v.Radians - G3);

    public override double RadiusOfCurvature(Angle v) =>
        Radius - 3 * A2 * Math.Cos(2 * v.Radians - G2) - 8 * A3 * Math.Cos(3 * v.Radians - G3);

    public override double ArcBetween(Angle from, Angle to)
    {
        double Integral(double v) => Radius * v - 1.5 * A2 * Math.Sin(2 * v - G2) - 8.0 / 3 * A3 * Math.Sin(3 * v - G3);
        return Integral(to.Radians) - Integral(from.Radians);
    }

    public override Angle NormalAt(Angle polar)
    {
        var (low, high) = (polar.Radians - Math.PI / 2, polar.Radians + Math.PI / 2);
        for (var i = 0; i < 80; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = middle + Math.Atan2(Slope(new(middle)), Support(new(middle))) > polar.Radians ? (low, middle) : (middle, high);
        }

        return new(low);
    }

    public override Groove Mirrored() => new WavyGroove(Radius, A1, A2, A3, -G1, -G2, -G3);
}

/// <summary>An ellipse about the shaft, half axes A and B along x and y: h² = A² cos² ν + B² sin² ν.</summary>
internal sealed record EllipticGroove(double A, double B) : Groove
{
    public override double Support(Angle v) => Math.Sqrt(Math.Pow(A * Math.Cos(v.Radians), 2) + Math.Pow(B * Math.Sin(v.Radians), 2));

    public override double Slope(Angle v) => (B * B - A * A) * Math.Sin(v.Radians) * Math.Cos(v.Radians) / Support(v);

    public override double RadiusOfCurvature(Angle v) => Math.Pow(A * B, 2) / Math.Pow(Support(v), 3);

    public override double ArcBetween(Angle from, Angle to) => throw new NotSupportedException("An elliptic integral.");

    public override Angle NormalAt(Angle polar) => new(Math.Atan2(Math.Sin(polar.Radians) / (B * B), Math.Cos(polar.Radians) / (A * A)));

    public override Groove Mirrored() => this;
}

/// <summary>Quadrants, stops and travels to check the mechanism on, from our invented world.</summary>
internal static class Cases
{
    public static Quadrant Quadrant(Groove groove, double rotationDegrees = 82, double pocketDegrees = 20) => new()
    {
        Groove = groove,
        Rotation = Angle.FromDegrees(rotationDegrees),
        Pocket = Angle.FromDegrees(pocketDegrees),
        GrooveExtent = Angle.FromDegrees(170),
        GrooveWidth = 2.5,
        SlotWidth = 2,
        OuterRadius = 36,
        Thickness = 8,
        HubRadius = 10,
    };

    /// <summary>Alder 58: constant pitch radius 31.5 mm.</summary>
    public static Quadrant Alder { get; } = Quadrant(new CircularGroove(31.5));

    /// <summary>The same with a cable, every number exact.</summary>
    public static UncertainTravel AlderTravel { get; } = new()
    {
        Quadrant = Alder,
        Seat = StopPlacement.At(Alder, 180, 2, Angle.FromDegrees(130))!.Seat.XY,
        FreeInnerLength = 180,
        AdjusterRange = 12,
        FreePlay = 2,
        AvailablePull = 48,
    };

    private static readonly Gen<double> Phase = Gen.Double[-Math.PI, Math.PI];

    /// <summary>Convex curves about the shaft in closed form.</summary>
    public static readonly Gen<WavyGroove> Wavy = Gen.Select(
        Gen.Double[20, 45], Gen.Select(Gen.Double[0, 0.3], Gen.Double[0, 0.1], Gen.Double[0, 0.06]), Gen.Select(Phase, Phase, Phase),
        (r, a, g) => new WavyGroove(r, a.Item1 * r, a.Item2 * r, a.Item3 * r, g.Item1, g.Item2, g.Item3));

    /// <summary>Tables, all round or over part of a turn, measured on such curves.</summary>
    public static readonly Gen<Groove> Tables = Gen.Select(Wavy, Gen.Int[24, 40], Gen.Bool, Phase, (curve, count, closed, start) =>
        (Groove)Table(curve, count, closed, start, closed ? 2 * Math.PI / count : 4.2 / (count - 1)));

    /// <summary>Grooves of every kind.</summary>
    public static readonly Gen<Groove> Grooves = Gen.OneOf(
        Gen.Double[20, 45].Select(r => (Groove)new CircularGroove(r)),
        Gen.Select(Gen.Double[20, 45], Gen.Double[0, 0.6], Phase, (r, e, g) => (Groove)new EccentricGroove(r, e * r, new(g))),
        Wavy.Select(g => (Groove)g),
        Gen.Select(Wavy, Gen.Double[0, 5], (g, by) => g.Grown(by)),
        Tables);

    public static TabulatedGroove Table(Groove curve, int count, bool closed, double start, double step) => new(
        Enumerable.Range(0, count).Select(i =>
        {
            Angle polar = new(start + i * step);
            return new GroovePoint(polar, curve.PointWithNormal(curve.NormalAt(polar)).Length);
        }),
        closed);
}
