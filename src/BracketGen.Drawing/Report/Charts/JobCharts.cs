using BracketGen.Drawing.Report.Scene;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Throttles;
using BracketGen.Units;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Charts;

/// <summary>The charts of a job, as far as its solution carries them.</summary>
internal static class JobCharts
{
    public static IEnumerable<Chart> Of(ReportScene scene)
    {
        yield return Pull(scene);
        yield return Arm(scene);
        if (scene.Solution.Mechanism is not { Loaded: { } loaded } mechanism)
        {
            yield break;
        }

        yield return Tension(scene, mechanism.FootForces, loaded);
        yield return Foot(scene, mechanism.FootForces);
        if (mechanism.Progression is { } progression)
        {
            yield return Opening(progression);
            if (mechanism.Sensor is { } sensor)
            {
                yield return Volts(scene, progression, sensor);
            }
        }

        if (!mechanism.Returns.IsEmpty)
        {
            yield return Return(scene, mechanism.Returns, mechanism.ReturnsOneFailed);
        }
    }

    private static ChartAxis OpeningAxis => new(ChartText.Opening, new(UnitSystem.Metric, Quantity.Angle));

    private static ChartAxis PedalAxis => new(ChartText.Pedal, Percent);

    private static AxisUnit Percent => new(UnitSystem.Metric, Quantity.Fraction);

    private static Chart Pull(ReportScene scene)
    {
        var travel = scene.Solution.Travel;
        var loaded = scene.Solution.Mechanism?.Loaded;
        List<ChartSeries> series = [new(ChartText.ByGeometry, [.. travel.Sweep.Select(w => travel.FreePlay + travel.Closed.Length - w.Length)])];
        if (loaded is not null)
        {
            series.Add(new(ChartText.WithLostMotion, [.. travel.Sweep.Select(w => loaded.PullAt(w.Opening))]));
        }

        return new()
        {
            Id = "pull",
            Words = ChartText.PullChart,
            X = OpeningAxis,
            Y = new(ChartText.WirePull, scene.Axis(Quantity.Length)),
            At = [.. travel.Sweep.Select(w => w.Opening.Radians)],
            Series = series,
            Levels = [new(ChartText.AvailablePull, travel.AvailablePull)],
        };
    }

    private static Chart Arm(ReportScene scene)
    {
        var sweep = scene.Solution.Travel.Sweep;
        return new()
        {
            Id = "arm",
            Words = ChartText.ArmChart,
            X = OpeningAxis,
            Y = new(ChartText.MomentArm, scene.Axis(Quantity.Length)),
            At = [.. sweep.Select(w => w.Opening.Radians)],
            Series = [new(ChartText.MomentArm, [.. sweep.Select(w => w.Arm)])],
        };
    }

    private static Chart Tension(ReportScene scene, IReadOnlyList<FootForce> forces, LoadedTravel loaded) => new()
    {
        Id = "tension",
        Words = ChartText.TensionChart,
        X = OpeningAxis,
        Y = new(ChartText.Tension, scene.Axis(Quantity.Force)),
        At = [.. forces.Select(f => f.Opening.Radians)],
        Series =
        [
            new(ChartText.AtQuadrant, [.. forces.Select(f => f.Tension)]),
            new(ChartText.AtPedalOpening, [.. forces.Select(f => loaded.Friction.Opening(f.Tension))]),
            new(ChartText.AtPedalClosing, [.. forces.Select(f => loaded.Friction.Closing(f.Tension))]),
        ],
    };

    private static Chart Foot(ReportScene scene, IReadOnlyList<FootForce> forces) => new()
    {
        Id = "foot",
        Words = ChartText.FootChart,
        X = new(ChartText.Pad, scene.Axis(Quantity.Length)),
        Y = new(ChartText.FootForce, scene.Axis(Quantity.Force)),
        At = [.. forces.Select(f => f.PadTravel)],
        Series =
        [
            new(ChartText.GoingDown, [.. forces.Select(f => f.Pressing)]),
            new(ChartText.ComingUp, [.. forces.Select(f => f.Releasing)]),
        ],
    };

    private static Chart Opening(Progression progression) => new()
    {
        Id = "progression",
        Words = ChartText.ProgressionChart(progression),
        X = PedalAxis,
        Y = new(ChartText.Part, Percent),
        At = [.. progression.Points.Select(p => p.Pedal)],
        Series =
        [
            new(ChartText.FlowArea, [.. progression.Points.Select(p => p.Area)]),
            new(ChartText.Opening, [.. progression.Points.Select(p => p.Valve)]),
        ],
    };

    private static Chart Volts(ReportScene scene, Progression progression, PositionSensor sensor)
    {
        var controller = scene.Job.Vehicle.Controller;
        return new()
        {
            Id = "volts",
            Words = ChartText.VoltsChart,
            X = PedalAxis,
            Y = new(ChartText.Sensor, scene.Axis(Quantity.Voltage)),
            At = [.. progression.Points.Select(p => p.Pedal)],
            Series = [new(ChartText.Sensor, [.. progression.Points.Select(p => sensor.Volts(p.Valve * sensor.Rotation))])],
            Levels = [new(ChartText.ControllerMinimum, controller.MinVolts), new(ChartText.ControllerMaximum, controller.MaxVolts)],
        };
    }

    private static Chart Return(ReportScene scene, IReadOnlyList<ReturnMargin> all, IReadOnlyList<ReturnMargin> oneFailed)
    {
        List<ChartSeries> series =
        [
            new(ChartText.Springs, [.. all.Select(r => r.Spring)]),
            new(ChartText.Taken, [.. all.Select(r => r.Needed)]),
        ];
        if (oneFailed.Count == all.Count)
        {
            series.Insert(1, new(ChartText.OneBroken, [.. oneFailed.Select(r => r.Spring)]));
        }

        return new()
        {
            Id = "return",
            Words = ChartText.ReturnChart,
            X = OpeningAxis,
            Y = new(ChartText.Torque, scene.Axis(Quantity.Torque)),
            At = [.. all.Select(r => r.Opening.Radians)],
            Series = series,
        };
    }
}
