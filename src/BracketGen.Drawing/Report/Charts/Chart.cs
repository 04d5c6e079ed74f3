using BracketGen.Drawing.Report.Scene;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Charts;

/// <summary>What runs along one side of a chart.</summary>
/// <param name="Title">What it is.</param>
/// <param name="AxisUnit">Unit, factor and number format; the values come in internal units.</param>
internal sealed record ChartAxis(string Title, AxisUnit AxisUnit)
{
    /// <summary>Title with the unit, as it stands at the chart.</summary>
    public string Label => $"{Title}, {AxisUnit.Unit}";
}

/// <summary>One curve: a value for each of the chart's abscissas, in internal units.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Values">As many as the chart has abscissas; what is not a number leaves a gap.</param>
internal sealed record ChartSeries(string Name, IReadOnlyList<double> Values);

/// <summary>A level across the whole chart that the curves are held against.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Where it lies (internal unit).</param>
internal sealed record ChartLevel(string Name, double Value);

/// <summary>Curves over one abscissa.</summary>
internal sealed record Chart
{
    /// <summary>Short name, part of its anchor.</summary>
    public required string Id { get; init; }

    /// <summary>Heading, and what it tells in a sentence.</summary>
    public required ChartWords Words { get; init; }

    /// <summary>What runs to the right.</summary>
    public required ChartAxis X { get; init; }

    /// <summary>What runs up.</summary>
    public required ChartAxis Y { get; init; }

    /// <summary>The abscissas, ascending (internal unit).</summary>
    public required IReadOnlyList<double> At { get; init; }

    /// <summary>The curves, the most important first.</summary>
    public required IReadOnlyList<ChartSeries> Series { get; init; }

    /// <summary>Levels across it.</summary>
    public IReadOnlyList<ChartLevel> Levels { get; init; } = [];
}
