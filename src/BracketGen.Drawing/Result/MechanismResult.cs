using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Result;

/// <summary>The mechanism's report as it stands in result.json.</summary>
internal static class MechanismResult
{
    /// <summary>Steps of the tables: enough for a chart, few enough to read.</summary>
    private const int Every = 8, EveryPedal = 5;

    public static ResultMechanism? Of(Solution solution) =>
        solution.Mechanism is { } report ? Of(report, solution.Travel, solution.Job) : null;

    private static ResultMechanism Of(MechanismReport report, Travel travel, Job job) => new(
        Outer(report, travel),
        report.Loaded is { } loaded
            ? new(Round(loaded.LostPerTension), Round(loaded.LostAtFirstMove), Round(loaded.LostAtWideOpen), Round(loaded.OverTravel),
                Round(loaded.Reached.Degrees), Round(report.ProofLoad.Tension))
            : null,
        [.. report.FootForces.Where((_, i) => i % Every == 0).Select(f =>
            new ResultForce(Round(f.Opening.Degrees), Round(f.PadTravel), Round(f.Tension), Round(f.Pressing), Round(f.Releasing)))],
        Return(report, job), Failures(report, job), Progression(report), Sensor(report, job.Vehicle.Controller), Uncertainty(report));

    // Distance between points of the outer's line (mm), for pictures.
    private const double ShownStep = 20;

    private static ResultOuter Outer(MechanismReport report, Travel travel)
    {
        var outer = report.Outer;
        return new(
            Round(report.Friction.TotalBend.Degrees), Round(report.Friction.Coefficient.Value), Round(report.Friction.Coefficient.PlusMinus),
            Round(travel.Wander.Degrees), Finite(outer?.MinRadius), Finite(outer?.Shortest?.Length), Finite(outer?.Spare),
            outer is { IsLaid: true } ? Finite(outer.SpareBend.Degrees) : null, outer is { IsLaid: true } ? outer.IsTooLong : null, Finite(outer?.Order),
            OuterText.Problem(outer?.Problem, UnitSystem.Metric), outer is null || outer.AtLengths.IsEmpty ? null : [.. Lines(outer)],
            outer is null || outer.Points(ShownStep).IsEmpty ? null : [.. outer.Points(ShownStep).Select(double[] (p) => [Round(p.X), Round(p.Y), Round(p.Z)])]);
    }

    private static IEnumerable<ResultOuterLine> Lines(OuterFit outer) => outer.AtLengths[0].Pieces.SelectMany((piece, i) => piece.Lines.Select(l =>
        new ResultOuterLine(
            i + 1, Round(l.Length), Round(l.Bend.Degrees), Finite(l.MinRadius), Round(l.TightestAt), Round(l.Turning.Degrees), l.IsLooped)));

    private static ResultReturn? Return(MechanismReport report, Job job)
    {
        if (report.Return is not { } study)
        {
            return null;
        }

        var cable = job.Vehicle.Cable;
        var least = ReturnMargin.Least(report.Returns);
        return new(
            Finite(least.Fraction), Round(least.Opening.Degrees),
            report.ReturnsOneFailed.IsEmpty ? null : Finite(ReturnMargin.Least(report.ReturnsOneFailed).Fraction),
            Drag(cable.ClosingDrag, Cable.DragAtWorst), Drag(cable.OpeningDrag, Cable.DragAtWorst), Drag(job.Body.ShaftDrag, ThrottleBody.ShaftDragAtWorst),
            Finite(study.GreatestDrag), Finite(study.ClosingTime),
            [.. report.Returns.Where((_, i) => i % Every == 0).Select(r => new ResultReturnPoint(Round(r.Opening.Degrees), Round(r.Spring), Finite(r.Needed)))]);
    }

    private static ResultDrag Drag(Measured drag, double atWorst) => new(
        Round(drag.Value), Round(drag.PlusMinus), EvidenceText.Name(drag.Evidence), drag.Evidence == Evidence.Assumed ? Round(atWorst) : null);

    private static IReadOnlyList<ResultFailure> Failures(MechanismReport report, Job job) => report.Return is not { } study
        ? []
        :
        [
            .. study.Failures.Select(f => new ResultFailure(
                FailureText.Code(f), FailureText.What(f, job.Vehicle.Cable.OuterEnd), FailureText.Rule(f.Rule), FailureText.Answer(f.Answer).ToLowerInvariant(),
                Finite(f.TorqueLeft), Finite(f.ClosingTime), FailureText.Keeps(f, job.Vehicle.Cable.OuterEnd))),
        ];

    private static ResultProgression? Progression(MechanismReport report) => report.Progression is { } p
        ? new(Round(p.PedalAtFirstMove), Round(p.Suddenness), [.. p.Points.Where((_, i) => i % EveryPedal == 0).Select(q => new ResultProgressionPoint(
            Round(q.Pedal), Round(q.Valve), Round(q.Area), Finite(report.Sensor is { } s ? s.Volts(q.Valve * s.Rotation) : null)))])
        : null;

    private static ResultSensor? Sensor(MechanismReport report, Controller controller) => report.Sensor is { } s
        ? new(s.ClosedVolts, s.OpenVolts, new SensorSetting(s, controller).Target,
            Round(s.TurnTo(new SensorSetting(s, controller).Target).Degrees),
            controller.ZeroVolts is { } zero ? Round(s.DeadBand(zero).Degrees) : null)
        : null;

    private static ResultUncertainty? Uncertainty(MechanismReport report)
    {
        if (report.Uncertainty is not { } u)
        {
            return null;
        }

        var ranking = u.Ranking;
        var adjuster = report.AdjusterRange > 0;
        return new(
            u.Run.Count, Round(report.Closes.Value), Round(u.ReachesWideOpen.Value), adjuster ? Round(u.WithinAdjuster.Value) : null,
            Round(u.ProbabilityOf(TravelRequirement.InGroove).Value),
            new(
                Sampled(report.Closes), Sampled(u.ReachesWideOpen), adjuster ? Sampled(u.WithinAdjuster) : null, Sampled(u.ProbabilityOf(TravelRequirement.InGroove))),
            adjuster ? Round(u.AdjusterRangeFor(MechanismChecks.LeastWorking)) : null, adjuster ? Round(u.AdjusterRangeFor(1)) : null,
            Spread(u.FreePlayUntouched), Spread(u.OverTravel), Spread(u.AdjusterNeed), ranking.Requirement,
            [.. ranking.Contributions.Select(c => new ResultContribution(c.Name, Round(c.Share), c.MeasuredAgain))]);
    }

    private static ResultSampling Sampled(Probability p) => new(Round(p.StandardError), Round(p.LowerBound));

    private static ResultSpread Spread(OutputSpread s) =>
        new(Round(s.Nominal), Round(s.Least), Round(s.Most), Round(s.Quantile(0.01)), Round(s.Quantile(0.99)));

    // JSON has no word for what is not a finite number.
    private static double? Finite(double? value) => value is { } v && double.IsFinite(v) ? Round(v) : null;

    private static double Round(double value) => ResultJson.Round(value);
}
