using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>The checks of fitting and wire where they meet quadrant and outer: what sizes alone decide.</summary>
public static class PocketChecks
{
    /// <summary>Minimum play of the end fitting in its pocket (mm; common practice, no source): paint and rust take up less.</summary>
    public const double LeastPlay = 0.1;

    /// <summary>Minimum by which the fitting is wider than the slot, both sides together (mm; common practice, no source): half of it bears on each edge.</summary>
    public const double LeastHold = 1;

    /// <summary>Maximum groove width over wire diameter (common practice, no source): a slack wire in a wider one can climb its own turn.</summary>
    public const double WidestGroove = 2.5;

    /// <summary>Minimum play of the wire in the outer (mm; common practice, no source).</summary>
    public const double LeastBorePlay = 0.2;

    /// <summary>Maximum bore of the outer over wire diameter (common practice, no source): in a wider one the wire lies now on one side, now on the other.</summary>
    public const double WidestBore = 1.6;

    /// <summary>Step of the groove's normal in which its smallest radius is looked for (rad).</summary>
    private const double NormalStep = Math.PI / 180;

    /// <summary>The checks; those of a pocket that was not measured are not known.</summary>
    /// <param name="quadrant">The quadrant, opening counter-clockwise.</param>
    /// <param name="cable">The cable.</param>
    /// <param name="sweep">The wire over the sweep.</param>
    public static IEnumerable<Check> Of(Quadrant quadrant, Cable cable, ImmutableArray<TautWire> sweep)
    {
        var (pocket, fitting, wire) = (quadrant.PocketShape, cable.Fitting, cable.WireDiameter);
        double Known(Func<FittingInPocket, double> value) => pocket is null ? double.NaN : value(new(fitting, pocket));
        yield return new(CheckId.PocketShape, Known(f => f.Belongs ? 1 : 0), 1);
        yield return new(CheckId.PocketPlay, Known(f => f.Play), LeastPlay);
        yield return new(CheckId.PocketHold, Known(_ => fitting.LeastWidth - quadrant.SlotWidth), LeastHold);
        yield return new(CheckId.PocketTurn, Known(f => Turns(f, sweep) ? 1 : 0), 1);
        yield return new(CheckId.PocketDepth, Known(f => f.BelowFace), 0);

        yield return new(
            CheckId.WireBend, cable.Construction is null ? double.NaN : (2 * SmallestRadius(quadrant, sweep) - wire) / wire,
            WireBending.LeastRatio(cable.Construction ?? WireConstruction.SevenBySeven));
        yield return new(CheckId.GrooveLoose, quadrant.GrooveWidth / wire, WidestGroove);
        yield return new(CheckId.OuterBoreTight, (cable.OuterBore ?? double.NaN) - wire, LeastBorePlay);
        yield return new(CheckId.OuterBoreLoose, (cable.OuterBore ?? double.NaN) / wire, WidestBore);
    }

    // A nipple lies along the wire, whose direction in the quadrant does not change as long as it lies in the groove.
    private static bool Turns(FittingInPocket held, ImmutableArray<TautWire> sweep) => held.LetsTurn
        || (held is { Fitting.Kind: EndFittingKind.Nipple, Pocket.Kind: PocketKind.Recess } && !sweep.Any(w => w.LiftedOff));

    // Smallest radius of the wire's centre line where it lies in the groove.
    private static double SmallestRadius(Quadrant quadrant, ImmutableArray<TautWire> sweep)
    {
        if (quadrant.Groove is CircularGroove circle)
        {
            return circle.PitchRadius.Value;
        }

        var (pocket, wrap) = (quadrant.PocketNormal, Math.Max(0, sweep.Max(w => w.Wrap.Radians)));
        var count = (int)Math.Ceiling(wrap / NormalStep);
        return Enumerable.Range(0, count + 1).Min(i => quadrant.Groove.RadiusOfCurvature(pocket + new Angle(wrap * i / Math.Max(1, count))));
    }
}
