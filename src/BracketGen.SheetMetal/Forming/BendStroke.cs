using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.SheetMetal.Forming;

/// <summary>How sheet and tools move while one bend is made, by the bend angle reached so far.</summary>
/// <remarks>
/// The strip of the bend rolls up evenly and keeps its length: at the angle α its inside radius is BA/α less the depth of the neutral axis. Each side
/// has its origin on the underside where the strip ends.
/// </remarks>
internal abstract class BendStroke
{
    private readonly double _neutral;

    protected BendStroke(Bend bend, double thickness)
    {
        Thickness = thickness;
        Allowance = bend.Allowance;
        _neutral = bend.Allowance / bend.Turn.Magnitude.Radians - bend.InsideRadius;
    }

    /// <summary>Thickness of the sheet (mm).</summary>
    public double Thickness { get; }

    protected double Allowance { get; }

    /// <summary>Where a carrier stands at a bend angle (rad, 0 or more).</summary>
    public abstract Placement At(Carrier carrier, double turn);

    /// <summary>The outline of the bend's strip at a bend angle, counter-clockwise (mm).</summary>
    public abstract IEnumerable<Vector2> Strip(double turn);

    /// <summary>Angles from one to another (rad), near enough to draw an arc by its chords.</summary>
    public static IEnumerable<double> Pieces(double from, double to)
    {
        var count = Math.Max(2, (int)Math.Ceiling(Math.Abs(to - from) / 0.1));
        return Enumerable.Range(0, count + 1).Select(i => from + (to - from) * i / count);
    }

    // Radius of the outside of the strip.
    protected double OutsideRadius(double turn) => Allowance / turn - _neutral + Thickness;

    /// <summary>Below this bend angle (rad) the sheet is flat to 1e-8 mm.</summary>
    protected const double Flat = 1e-9;
}

/// <summary>Air bending: both legs turn up by half the angle, each on its shoulder of the V, the punch in the middle.</summary>
/// <remarks>
/// A leg's underside touches the rounded shoulder, whose centre lies at (± c, -ρ), c = V/2 + ρ tan(δ/2), δ the slope of the V's face. At half the bend angle a
/// the two undersides would meet at the height (ρ - c sin a)/cos a - ρ (geometry).
/// </remarks>
internal sealed class PressStroke : BendStroke
{
    private readonly double _centre, _shoulder;

    public PressStroke(Bend bend, double thickness, PressBrakeDie die)
        : base(bend, thickness)
    {
        _shoulder = die.ShoulderRadius;
        _centre = die.Opening / 2 + _shoulder * Math.Tan((Math.PI - die.Angle.Radians) / 4);
    }

    public override Placement At(Carrier carrier, double turn)
    {
        if (carrier == Carrier.Machine)
        {
            return Placement.Rest;
        }

        var (leg, tip) = Leg(turn);
        return carrier switch
        {
            Carrier.Beam => Placement.Of(new(0, tip), 0),
            Carrier.Back => Placement.Of(leg, turn / 2),
            _ => Placement.Of(new(-leg.X, leg.Y), -turn / 2),
        };
    }

    public override IEnumerable<Vector2> Strip(double turn)
    {
        var (leg, tip) = Leg(turn);
        if (turn < Flat)
        {
            return [new(-leg.X, 0), new(leg.X, 0), new(leg.X, Thickness), new(-leg.X, Thickness)];
        }

        var outside = OutsideRadius(turn);
        Vector2 centre = new(0, tip - Thickness + outside);
        return Pieces(-turn / 2, turn / 2).Select(a => centre + outside * new Vector2(Math.Sin(a), -Math.Cos(a)))
            .Concat(Pieces(turn / 2, -turn / 2).Select(a => centre + (outside - Thickness) * new Vector2(Math.Sin(a), -Math.Cos(a))));
    }

    // Where the back leg's underside begins, and how high the sheet's upper side stands in the middle.
    private (Vector2 Leg, double Tip) Leg(double turn)
    {
        if (turn < Flat)
        {
            return (new(Allowance / 2, 0), Thickness);
        }

        var (sin, cos) = Math.SinCos(turn / 2);
        var mould = (_shoulder - _centre * sin) / cos - _shoulder;
        var outside = OutsideRadius(turn);
        return (new(outside * sin, mould + outside * sin * sin / cos), mould + outside * sin * sin / (cos * (1 + cos)) + Thickness);
    }
}

/// <summary>Bending over a clamp: the front side is held, the back side turns up about the edge.</summary>
internal sealed class ClampStroke(Bend bend, double thickness) : BendStroke(bend, thickness)
{
    public override Placement At(Carrier carrier, double turn) => carrier == Carrier.Back ? Placement.Of(Leg(turn), turn) : Placement.Rest;

    public override IEnumerable<Vector2> Strip(double turn)
    {
        if (turn < Flat)
        {
            return [new(0, 0), new(Allowance, 0), new(Allowance, Thickness), new(0, Thickness)];
        }

        var outside = OutsideRadius(turn);
        Vector2 centre = new(0, outside);
        return Pieces(0, turn).Select(a => centre + outside * new Vector2(Math.Sin(a), -Math.Cos(a)))
            .Concat(Pieces(turn, 0).Select(a => centre + (outside - Thickness) * new Vector2(Math.Sin(a), -Math.Cos(a))));
    }

    private Vector2 Leg(double turn)
    {
        if (turn < Flat)
        {
            return new(Allowance, 0);
        }

        var (sin, cos) = Math.SinCos(turn);
        return OutsideRadius(turn) * new Vector2(sin, sin * sin / (1 + cos));
    }
}
