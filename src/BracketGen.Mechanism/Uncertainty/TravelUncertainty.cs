using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Mechanism.Uncertainty;

/// <summary>A deviation of manufacture or mounting that moves the stop's seat in the groove's plane.</summary>
/// <param name="Name">What it is: "bend 1, angle", "leg 2", "cut edge of the slot".</param>
/// <param name="Shift">How far the seat moves (mm) for one unit of it.</param>
/// <param name="PlusMinus">Its tolerance, in that unit (rad, mm).</param>
public sealed record SeatTolerance(string Name, Vector2 Shift, double PlusMinus);

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

    /// <summary>Deviations that move the seat.</summary>
    public ImmutableArray<SeatTolerance> SeatTolerances { get; init; } = [];
}

/// <summary>One quantity's contribution to a risk.</summary>
/// <param name="Name">The quantity.</param>
/// <param name="Share">Its part of the variance, 0 to 1.</param>
/// <param name="MeasuredAgain">Whether it could be measured better; otherwise only a finer tolerance helps.</param>
public readonly record struct Contribution(string Name, double Share, bool MeasuredAgain);

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
    private const int Outputs = 5;

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

    /// <summary>Probability that the valve closes before anyone has set the adjuster.</summary>
    public Probability ClosesUntouched => Run.Probability(o => o[Untouched] >= 0);

    /// <summary>Probability that the adjuster's range is enough for its setting.</summary>
    public Probability WithinAdjuster => Run.Probability(o => Math.Abs(o[Need]) <= travel.AdjusterRange / 2);

    /// <summary>Probability that the valve reaches its wide-open stop once the free play is set.</summary>
    public Probability ReachesWideOpen => Run.Probability(o => o[OverSet] >= 0);

    /// <summary>Adjuster range (mm) about mid range that is enough with the given probability; 1 gives the worst case.</summary>
    public double AdjusterRangeFor(double probability) => 2 * (probability >= 1
        ? Math.Max(Math.Abs(Run.Least[Need]), Math.Abs(Run.Most[Need]))
        : Run.MagnitudeFor(Need, probability));

    /// <summary>
    /// Contributions to the requirement nearest to failing, in standard deviations, largest first: the first is the
    /// measurement to take again.
    /// </summary>
    public (string Requirement, ImmutableArray<Contribution> Contributions) Ranking
    {
        get
        {
            double Margin(int output, double mean) =>
                Run.StandardDeviation(output) is > 0 and var s ? mean / s : double.PositiveInfinity;
            (string Name, int Output, double Margin)[] all = travel.AdjusterRange > 0
                ? [
                    ("within the adjuster's range", Need, Margin(Need, travel.AdjusterRange / 2 - Math.Abs(Run.Mean(Need)))),
                    ("valve fully open", OverSet, Margin(OverSet, Run.Mean(OverSet))),
                ]
                : [
                    ("valve closed", Untouched, Margin(Untouched, Run.Mean(Untouched))),
                    ("valve fully open", OverUntouched, Margin(OverUntouched, Run.Mean(OverUntouched))),
                ];
            var worst = all.MinBy(r => r.Margin);
            var shares = Run.Shares(worst.Output);
            return (worst.Name, [.. Run.Inputs
                .Select((q, i) => new Contribution(q.Name, shares[i], q.MeasuredAgain))
                .Where(c => c.Share > 0)
                .OrderByDescending(c => c.Share)]);
        }
    }

    /// <summary>Runs the travel over everything that is uncertain.</summary>
    /// <param name="travel">The travel.</param>
    /// <param name="samples">Number of samples.</param>
    /// <param name="seed">Seed: the same gives the same numbers.</param>
    /// <exception cref="ArgumentException">More than 21 quantities are uncertain.</exception>
    public static TravelUncertainty Of(UncertainTravel travel, int samples = 65_536, ulong seed = 1)
    {
        var quadrant = travel.Quadrant;
        IEnumerable<UncertainQuantity> inputs =
        [
            UncertainQuantity.Reading("free inner length", travel.FreeInnerLength),
            UncertainQuantity.Reading("groove radius", new(0, quadrant.Groove.PlusMinus)),
            UncertainQuantity.Reading("rotation", quadrant.Rotation.Radians),
            UncertainQuantity.Reading("pocket angle", quadrant.Pocket.Radians),
            UncertainQuantity.Reading("available pull", travel.AvailablePull),
            UncertainQuantity.Reading("free play as set", travel.FreePlay),
            UncertainQuantity.Reading("lost motion", travel.LostMotion),
            .. travel.SeatTolerances.Select(t => UncertainQuantity.Tolerance(t.Name, t.PlusMinus)),
        ];
        Vector2[] shifts = [.. travel.SeatTolerances.Select(t => t.Shift)];
        return new(travel, UncertaintyRun.Of(
            inputs, Outputs,
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
        double length, drawn, wrap;
        if (travel.Quadrant.Groove is CircularGroove round && Round(travel, round.PitchRadius.Value + radius, rotation, pocket, seat)
            is { } quick)
        {
            (length, drawn, wrap) = quick;
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
            (length, drawn, wrap) = (closed.Length, closed.Length - open.Length, open.Wrap.Radians);
        }

        outputs[Untouched] = free - travel.AdjusterShift - length;
        outputs[OverUntouched] = pull - outputs[Untouched] - drawn - lost;
        outputs[Need] = free - slack - length;
        outputs[OverSet] = pull - slack - drawn - lost;
        outputs[WrapOpen] = wrap;
    }

    /// <summary>
    /// The constant radius in closed form, while the wire stays on the groove: L = √(D² - R²) + R α, pull R Θ. Null if it lifts off or
    /// has more wrap than the groove holds: then the general solver decides, as it does for a seat within the groove, where the
    /// arc cosine, and with it the wrap, is not a number.
    /// </summary>
    private static (double Length, double Pull, double Wrap)? Round(
        UncertainTravel travel, double radius, double rotation, double pocket, Vector2 seat)
    {
        var distance = seat.Length;
        var wrap = seat.Polar.Radians - Math.Acos(radius / distance) - pocket;
        wrap -= 2 * Math.PI * Math.Floor((wrap + Math.PI / 2) / (2 * Math.PI));
        return wrap >= rotation && wrap <= travel.Quadrant.GrooveExtent.Radians
            ? (Math.Sqrt(distance * distance - radius * radius) + radius * wrap, radius * rotation, wrap - rotation)
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
