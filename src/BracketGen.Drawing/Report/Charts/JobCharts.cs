using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Mechanism;

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

    private static ChartAxis OpeningAxis => new("opening of the valve", AxisUnit.Degrees);

    private static ChartAxis PedalAxis => new("travel of the pedal", AxisUnit.Percent);

    private static Chart Pull(ReportScene scene)
    {
        var travel = scene.Solution.Travel;
        var loaded = scene.Solution.Mechanism?.Loaded;
        List<ChartSeries> series = [new("by geometry", [.. travel.Sweep.Select(w => travel.FreePlay + travel.Closed.Length - w.Length)])];
        if (loaded is not null)
        {
            series.Add(new("with lost motion", [.. travel.Sweep.Select(w => loaded.PullAt(w.Opening))]));
        }

        return new()
        {
            Id = "pull",
            Title = "Wire pull over opening",
            Remark = "It begins with the free play. Where it stays under the level, the pedal opens the valve that far.",
            X = OpeningAxis,
            Y = new("wire pull", scene.LengthQuantity),
            At = [.. travel.Sweep.Select(w => w.Opening.Radians)],
            Series = series,
            Levels = [new("the pedal gives", travel.AvailablePull)],
        };
    }

    private static Chart Arm(ReportScene scene)
    {
        var sweep = scene.Solution.Travel.Sweep;
        return new()
        {
            Id = "arm",
            Title = "Moment arm over opening",
            Remark = "Distance from the shaft's axis to the wire's line: the pull turns the valve by it.",
            X = OpeningAxis,
            Y = new("moment arm", scene.LengthQuantity),
            At = [.. sweep.Select(w => w.Opening.Radians)],
            Series = [new("moment arm", [.. sweep.Select(w => w.Arm)])],
        };
    }

    private static Chart Tension(ReportScene scene, IReadOnlyList<FootForce> forces, LoadedTravel loaded) => new()
    {
        Id = "tension",
        Title = "Wire tension over opening",
        Remark = "At the pedal's end the outer's friction adds to it while the valve opens, and takes from it while it closes.",
        X = OpeningAxis,
        Y = new("tension", scene.ForceQuantity),
        At = [.. forces.Select(f => f.Opening.Radians)],
        Series =
        [
            new("at the quadrant", [.. forces.Select(f => f.Tension)]),
            new("at the pedal, opening", [.. forces.Select(f => loaded.Friction.Opening(f.Tension))]),
            new("at the pedal, closing", [.. forces.Select(f => loaded.Friction.Closing(f.Tension))]),
        ],
    };

    private static Chart Foot(ReportScene scene, IReadOnlyList<FootForce> forces) => new()
    {
        Id = "foot",
        Title = "Foot force over pedal travel",
        Remark = "From the first move of the valve to wide open: more going down than coming up, by the friction.",
        X = new("travel of the pad", scene.LengthQuantity),
        Y = new("foot force", scene.ForceQuantity),
        At = [.. forces.Select(f => f.PadTravel)],
        Series =
        [
            new("pedal going down", [.. forces.Select(f => f.Pressing)]),
            new("pedal coming up", [.. forces.Select(f => f.Releasing)]),
        ],
    };

    private static Chart Opening(Progression progression) => new()
    {
        Id = "progression",
        Title = "Progression: pedal to valve to flow",
        Remark = FormattableString.Invariant(
            $"The first tenth of the pedal after the valve moves gives {progression.Suddenness:0.00} times its share of the flow area: 1 is even, above {Progression.Sudden:0} sudden."),
        X = PedalAxis,
        Y = new("part of the full range", AxisUnit.Percent),
        At = [.. progression.Points.Select(p => p.Pedal)],
        Series =
        [
            new("flow area", [.. progression.Points.Select(p => p.Area)]),
            new("opening of the valve", [.. progression.Points.Select(p => p.Valve)]),
        ],
    };

    private static Chart Volts(ReportScene scene, Progression progression, PositionSensor sensor)
    {
        var controller = scene.Job.Vehicle.Controller;
        return new()
        {
            Id = "volts",
            Title = "Sensor over pedal travel",
            Remark = "As it was read with the sensor where it sits now.",
            X = PedalAxis,
            Y = new("sensor", AxisUnit.Volts),
            At = [.. progression.Points.Select(p => p.Pedal)],
            Series = [new("sensor", [.. progression.Points.Select(p => sensor.Volts(p.Valve * sensor.Rotation))])],
            Levels = [new("least the controller takes", controller.MinVolts), new("most it takes", controller.MaxVolts)],
        };
    }

    private static Chart Return(ReportScene scene, IReadOnlyList<ReturnMargin> all, IReadOnlyList<ReturnMargin> oneFailed)
    {
        List<ChartSeries> series =
        [
            new("springs, as weak as they may be", [.. all.Select(r => r.Spring)]),
            new("taken by friction and pedal", [.. all.Select(r => r.Needed)]),
        ];
        if (oneFailed.Count == all.Count)
        {
            series.Insert(1, new("the same, one spring broken", [.. oneFailed.Select(r => r.Spring)]));
        }

        return new()
        {
            Id = "return",
            Title = "Closing torque over opening",
            Remark = "What is left between the curves closes the valve.",
            X = OpeningAxis,
            Y = new("torque", scene.TorqueQuantity),
            At = [.. all.Select(r => r.Opening.Radians)],
            Series = series,
        };
    }
}
