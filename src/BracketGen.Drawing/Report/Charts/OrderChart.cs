using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Units;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Charts;

/// <summary>The orders of the engine over its speed, against the bracket's natural frequencies (Campbell diagram).</summary>
internal static class OrderChart
{
    private const int Steps = 24;

    // A frequency farther above the highest order than this says nothing, and makes the chart flat.
    private const double Above = 1.5;

    public static Chart Of(ReportScene scene, Engine engine, StrengthReport report)
    {
        double idle = engine.IdleSpeed.Value, step = (engine.MaxSpeed - idle) / Steps;
        double[] speeds = [.. Enumerable.Range(0, Steps + 1).Select(i => idle + i * step)];
        var highest = Engine.FrequencyOf(engine.Orders.Max(), engine.MaxSpeed);
        return new()
        {
            Id = "orders",
            Words = ChartText.OrdersChart(engine),
            X = new(ChartText.EngineSpeed, new(UnitSystem.Metric, Quantity.Speed)),
            Y = new(ChartText.Frequency, scene.Axis(Quantity.Frequency)),
            At = speeds,
            Series = [.. engine.Orders.Select(o => new ChartSeries(ChartText.Order(o), [.. speeds.Select(s => Engine.FrequencyOf(o, s))]))],
            Levels = [.. report.Frequencies.Where((f, i) => i == 0 || f <= Above * highest).Select((f, i) => new ChartLevel(ChartText.Vibration(i + 1), f))],
        };
    }
}
