using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Mechanism.Uncertainty;

/// <summary>A deviation of manufacture or mounting that moves the stop's seat in the groove's plane.</summary>
/// <param name="Name">What it is: "bend 1, angle", "leg 2", "cut edge of the slot".</param>
/// <param name="Shift">How far the seat moves (mm) for one unit of it.</param>
/// <param name="PlusMinus">Its tolerance, in that unit (rad, mm).</param>
public sealed record SeatTolerance(string Name, Vector2 Shift, double PlusMinus)
{
    /// <summary>Whether it is a reading that could be taken again; otherwise it is a tolerance of manufacture.</summary>
    public bool IsMeasured { get; init; }
}

/// <summary>All inputs of the travel, each with its ±.</summary>
/// <remarks>Lengths in mm, opening counter-clockwise.</remarks>
public sealed record UncertainTravel
{
    /// <summary>The quadrant: its rotation, pocket and groove carry their ±.</summary>
    public required Quadrant Quadrant { get; init; }

    /// <summary>The seat as designed, in the groove's plane.</summary>
    public required Vector2 Seat { get; init; }

    /// <summary>Seat to fitting centre with the adjuster at mid range.</summary>
    public required Measured FreeInnerLength { get; init; }

    /// <summary>Where the design puts the adjuster, off mid range, positive if it takes up wire.</summary>
    public double AdjusterShift { get; init; }

    /// <summary>Total travel of the adjustment; zero if there is none.</summary>
    public required double AdjusterRange { get; init; }

    /// <summary>Free play that the fitter sets, with its ±.</summary>
    public required Measured FreePlay { get; init; }

    /// <summary>Pull of the full pedal stroke.</summary>
    public required Measured AvailablePull { get; init; }

    /// <summary>Lost motion at the wide-open stop (<see cref="LoadedTravel.LostAtWideOpen"/>).</summary>
    public Measured LostMotion { get; init; }

    /// <summary>Free play (mm) that must be left where an adjuster gives all the wire it can; without an adjuster any is enough.</summary>
    public double MinFreePlay { get; init; }

    /// <summary>Deviations that move the seat.</summary>
    public ImmutableArray<SeatTolerance> SeatTolerances { get; init; } = [];
}

/// <summary>One quantity's contribution to a risk.</summary>
/// <param name="Name">The quantity.</param>
/// <param name="Share">Its part of the variance, 0 to 1.</param>
/// <param name="MeasuredAgain">Whether it could be measured better; otherwise only a finer tolerance helps.</param>
public readonly record struct Contribution(string Name, double Share, bool MeasuredAgain);

/// <summary>What the travel must keep within every ±.</summary>
public enum TravelRequirement
{
    /// <summary>The valve can be made to close: the adjuster, all wire given, leaves the minimum free play; without one the valve closes as built.</summary>
    Closes,

    /// <summary>The valve reaches its wide-open stop: with the free play set, or without an adjuster as built.</summary>
    OpensFully,

    /// <summary>The adjuster's range is enough for its setting.</summary>
    WithinAdjuster,

    /// <summary>The wire does not run off the end of the groove at the closed stop.</summary>
    InGroove,
}

/// <summary>How sure the travel is: probabilities, worst cases, and which measurement to take again.</summary>
/// <remarks>
/// Readings are uniform over their ±, tolerances as normal with ± two standard deviations (<see cref="Spread"/>). A seat that moves
/// across the groove's plane changes the wire's length only in second order and is left out.
/// </remarks>
public sealed class TravelUncertainty
{
    private const int Untouched = 0;
    private const int OverUntouched = 1;
    private const int Need = 2;
    private const int OverSet = 3;
    private const int WrapOpen = 4;
    private const int WrapClosed = 5;
    private const int Outputs = 6;

    // A margin placed exactly on its limit may miss it by round-off.
    private const double RoundOff = 1e-12;

    private readonly UncertainTravel travel;

    private TravelUncertainty(UncertainTravel travel, UncertaintyRun run) => (this.travel, Run) = (travel, run);

    /// <summary>The run, for further results; the outputs are those listed here, in the order of the properties.</summary>
    public UncertaintyRun Run { get; }

    /// <summary>Free play (mm) with the adjuster where the design puts it, before anyone sets it.</summary>
    public OutputSpread FreePlayUntouched => new(Run, Untouched);

    /// <summary>Over-travel (mm) with the adjuster where the design puts it.</summary>
    public OutputSpread OverTravelUntouched => new(Run, OverUntouched);

    /// <summary>Adjuster setting (mm off mid range, positive takes up wire) for the free play wanted.</summary>
    public OutputSpread AdjusterNeed => new(Run, Need);

    /// <summary>Over-travel (mm) once the free play is set.</summary>
    public OutputSpread OverTravel => new(Run, OverSet);

    /// <summary>Wrap (rad) left at the wide-open stop.</summary>
    public OutputSpread WrapWideOpen => new(Run, WrapOpen);

    /// <summary>Wrap (rad) at the closed stop.</summary>
    public OutputSpread WrapAtClosed => new(Run, WrapClosed);

    /// <summary>The requirements that apply: that of the adjuster only where there is one.</summary>
    public ImmutableArray<TravelRequirement> Requirements => HasAdjuster
        ? [TravelRequirement.WithinAdjuster, TravelRequirement.OpensFully, TravelRequirement.Closes, TravelRequirement.InGroove]
        : [TravelRequirement.Closes, TravelRequirement.OpensFully, TravelRequirement.InGroove];

    /// <summary>Probability that a requirement is kept.</summary>
    /// <param name="requirement">The requirement.</param>
    /// <param name="less">What is taken off its margin (mm, rad) because it is not known.</param>
    public Probability ProbabilityOf(TravelRequirement requirement, double less = 0) => Run.Probability(o => Margin(requirement, o) >= less - RoundOff);

    /// <summary>Whether a requirement is kept with every input at its value; otherwise no better measurement helps.</summary>
    public bool HoldsAsMeasured(TravelRequirement requirement) => Margin(requirement, Run.Nominal.AsSpan()) >= -RoundOff;

    /// <summary>Contributions to a requirement's spread, largest first.</summary>
    public ImmutableArray<Contribution> ContributionsTo(TravelRequirement requirement)
    {
        var shares = Run.Shares(OutputOf(requirement));
        return [.. Run.Inputs
            .Select((q, i) => new Contribution(q.Name, shares[i], q.MeasuredAgain))
            .Where(c => c.Share > 0)
            .OrderByDescending(c => c.Share)];
    }

    /// <summary>
    /// Free play (mm) that stays with the given probability at most: as set, or what is left where the adjuster cannot take up the wire; as built
    /// without one.
    /// </summary>
    public double MostFreePlay(double probability)
    {
        var untouched = Run.Quantile(Untouched, probability);
        return HasAdjuster ? Math.Max(travel.FreePlay.Max, untouched + travel.AdjusterShift - travel.AdjusterRange / 2) : untouched;
    }

    /// <summary>Probability that the valve closes before anyone has set the adjuster.</summary>
    public Probability ClosesUntouched => Run.Probability(o => o[Untouched] >= 0);

    /// <summary>Probability that the adjuster's range is enough for its setting.</summary>
    public Probability WithinAdjuster => ProbabilityOf(TravelRequirement.WithinAdjuster);

    /// <summary>Probability that the valve reaches its wide-open stop: with the free play set, or without an adjuster as built.</summary>
    public Probability ReachesWideOpen => ProbabilityOf(TravelRequirement.OpensFully);

    private bool HasAdjuster => travel.AdjusterRange > 0;

    /// <summary>Adjuster range (mm) about mid range that is enough with the given probability; 1 gives the worst case.</summary>
    public double AdjusterRangeFor(double probability) => 2 * (probability >= 1
        ? Math.Max(Math.Abs(Run.Least[Need]), Math.Abs(Run.Most[Need]))
        : Run.MagnitudeFor(Need, probability));

    /// <summary>The requirement nearest to failing, in standard deviations.</summary>
    public TravelRequirement Nearest => Requirements.MinBy(r =>
    {
        var output = OutputOf(r);
        var mean = new double[Outputs];
        mean[output] = Run.Mean(output);
        return Run.StandardDeviation(output) is > 0 and var s ? Margin(r, mean) / s : double.PositiveInfinity;
    });

    /// <summary>
    /// The requirement nearest to failing with the contributions to its spread, largest first: the first is the measurement to take again, if the
    /// requirement holds with every input at its value.
    /// </summary>
    public (string Requirement, ImmutableArray<Contribution> Contributions) Ranking
    {
        get
        {
            var nearest = Nearest;
            return (NameOf(nearest), ContributionsTo(nearest));
        }
    }

    /// <summary>The margin of a requirement (mm, rad) with some outputs; negative where it is not kept.</summary>
    private double Margin(TravelRequirement requirement, ReadOnlySpan<double> o) => requirement switch
    {
        TravelRequirement.Closes => HasAdjuster
            ? o[Untouched] + travel.AdjusterShift + travel.AdjusterRange / 2 - travel.MinFreePlay
            : o[Untouched],
        TravelRequirement.OpensFully => o[HasAdjuster ? OverSet : OverUntouched],
        TravelRequirement.WithinAdjuster => travel.AdjusterRange / 2 - Math.Abs(o[Need]),
        _ => travel.Quadrant.GrooveExtent.Radians - o[WrapClosed],
    };

    private int OutputOf(TravelRequirement requirement) => requirement switch
    {
        TravelRequirement.Closes => Untouched,
        TravelRequirement.OpensFully => HasAdjuster ? OverSet : OverUntouched,
        TravelRequirement.WithinAdjuster => Need,
        _ => WrapClosed,
    };

    private static string NameOf(TravelRequirement requirement) => requirement switch
    {
        TravelRequirement.Closes => "valve closed",
        TravelRequirement.OpensFully => "valve fully open",
        TravelRequirement.WithinAdjuster => "within the adjuster's range",
        _ => "wire in the groove",
    };

    /// <summary>Runs the travel over everything that is uncertain.</summary>
    /// <param name="travel">The travel.</param>
    /// <param name="samples">Number of samples.</param>
    /// <param name="seed">Seed: the same gives the same numbers.</param>
    /// <param name="readingsExact">Whether every reading counts as exact: what is left is the tolerances of manufacture.</param>
    public static TravelUncertainty Of(UncertainTravel travel, int samples = 65_536, ulong seed = 1, bool readingsExact = false)
    {
        var quadrant = travel.Quadrant;
        UncertainQuantity[] inputs =
        [
            UncertainQuantity.Reading("free inner length", travel.FreeInnerLength),
            UncertainQuantity.Reading("groove radius", new(0, quadrant.Groove.PlusMinus)),
            UncertainQuantity.Reading("rotation", quadrant.Rotation.Radians),
            UncertainQuantity.Reading("pocket angle", quadrant.Pocket.Radians),
            UncertainQuantity.Reading("available pull", travel.AvailablePull),
            UncertainQuantity.Reading("free play as set", travel.FreePlay),
            UncertainQuantity.Reading("lost motion", travel.LostMotion),
            .. travel.SeatTolerances.Select(t => t.IsMeasured
                ? UncertainQuantity.Reading(t.Name, new(0, t.PlusMinus))
                : UncertainQuantity.Tolerance(t.Name, t.PlusMinus)),
        ];
        Vector2[] shifts = [.. travel.SeatTolerances.Select(t => t.Shift)];
        return new(travel, UncertaintyRun.Of(
            readingsExact ? inputs.Select(q => q.MeasuredAgain ? q with { Value = q.Value.Value } : q) : inputs, Outputs,
            (values, outputs) =>
            {
                var seat = travel.Seat;
                for (var i = 0; i < shifts.Length; i++)
                {
                    seat += values[7 + i] * shifts[i];
                }

                Evaluate(travel, values, seat, outputs);
            },
            samples, seed));
    }

    private static void Evaluate(UncertainTravel travel, ReadOnlySpan<double> values, Vector2 seat, Span<double> outputs)
    {
        double free = values[0], radius = values[1], rotation = values[2], pocket = values[3];
        double pull = values[4], slack = values[5], lost = values[6];
        double length, drawn, wrap, wrapClosed;
        if (travel.Quadrant.Groove is CircularGroove round && Round(travel, round.PitchRadius.Value + radius, rotation, pocket, seat)
            is { } quick)
        {
            (length, drawn, wrap, wrapClosed) = quick;
        }
        else
        {
            var quadrant = travel.Quadrant with
            {
                Groove = travel.Quadrant.Groove.Grown(radius),
                Rotation = new Angle(rotation),
                Pocket = new Angle(pocket),
            };
            var normal = quadrant.PocketNormal;
            var closed = TautWire.Solve(quadrant, normal, seat, Angle.Zero);
            var open = TautWire.Solve(quadrant, normal, seat, new(rotation));
            (length, drawn, wrap, wrapClosed) = (closed.Length, closed.Length - open.Length, open.Wrap.Radians, closed.Wrap.Radians);
        }

        outputs[Untouched] = free - travel.AdjusterShift - length;
        outputs[OverUntouched] = pull - outputs[Untouched] - drawn - lost;
        outputs[Need] = free - slack - length;
        outputs[OverSet] = pull - slack - drawn - lost;
        outputs[WrapOpen] = wrap;
        outputs[WrapClosed] = wrapClosed;
    }

    /// <summary>
    /// The constant radius in closed form, while the wire stays on the groove: L = √(D² - R²) + R α, pull R Θ. Null if it lifts off or
    /// has more wrap than the groove holds: then the general solver decides, as it does for a seat within the groove, where the
    /// arc cosine, and with it the wrap, is not a number.
    /// </summary>
    private static (double Length, double Pull, double Wrap, double WrapClosed)? Round(
        UncertainTravel travel, double radius, double rotation, double pocket, Vector2 seat)
    {
        var distance = seat.Length;
        var wrap = seat.Polar.Radians - Math.Acos(radius / distance) - pocket;
        wrap -= 2 * Math.PI * Math.Floor((wrap + Math.PI / 2) / (2 * Math.PI));
        return wrap >= rotation && wrap <= travel.Quadrant.GrooveExtent.Radians
            ? (Math.Sqrt(distance * distance - radius * radius) + radius * wrap, radius * rotation, wrap - rotation, wrap)
            : null;
    }
}

/// <summary>Distribution of an output.</summary>
/// <param name="Run">The run.</param>
/// <param name="Output">Which of its outputs.</param>
public readonly record struct OutputSpread(UncertaintyRun Run, int Output)
{
    /// <summary>With every input at its value.</summary>
    public double Nominal => Run.Nominal[Output];

    /// <summary>Minimum with every input within its ±.</summary>
    public double Least => Run.Least[Output];

    /// <summary>Maximum with every input within its ±.</summary>
    public double Most => Run.Most[Output];

    /// <summary>Mean.</summary>
    public double Mean => Run.Mean(Output);

    /// <summary>Standard deviation.</summary>
    public double StandardDeviation => Run.StandardDeviation(Output);

    /// <summary>The value below which it stays with the given probability.</summary>
    public double Quantile(double probability) => Run.Quantile(Output, probability);
}
