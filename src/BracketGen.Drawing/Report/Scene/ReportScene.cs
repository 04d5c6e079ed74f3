using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Units;

namespace BracketGen.Drawing.Report.Scene;

/// <summary>What every section of a report is written from.</summary>
internal sealed class ReportScene(Solution solution, IReadOnlyList<string> allowed)
{
    /// <summary>Facets within this (mm) of round surfaces: a screen shows no finer.</summary>
    private const double Chord = 0.08;

    private readonly Lazy<FoldedMesh?> _mesh = new(() => solution.Bracket is { } b ? FoldedMesh.Of(b.Folded, Chord) : null);
    private readonly Lazy<SweepMotion> _motion = new(() => new(solution));

    public Solution Solution => solution;

    public Job Job => solution.Job;

    /// <summary>The bracket that is there already, where the report is about one; else null.</summary>
    public TriedBracket? Tried { get; init; }

    /// <summary>Failed safety checks that were allowed by name.</summary>
    public IReadOnlyList<string> Allowed => allowed;

    public UnitSystem Units => Job.Units;

    /// <summary>How tables write values without their unit.</summary>
    public ValueFormat Value => ValueFormat.Tabled(Units);

    /// <summary>The folded bracket, throttle frame as measured; null where there is none.</summary>
    public FoldedMesh? Mesh => _mesh.Value;

    /// <summary>Quadrant and wire from the released pedal to the floor.</summary>
    public SweepMotion Motion => _motion.Value;

    public string Length(double value) => Units.Write(Quantity.Length, value);

    public string Part(double value) => Units.Write(Quantity.Fraction, value);

    public string Angle(Geometry.Angle angle) => Units.Write(Quantity.Angle, angle.Radians);

    /// <summary>How a chart shows a quantity.</summary>
    public AxisUnit Axis(Quantity quantity) => new(Units, quantity);

    /// <summary>The largest stress of both sides at each node of the mesh, pedal stamped on, in the job's unit.</summary>
    public IReadOnlyList<double> Stresses(StrengthReport report) =>
        [.. report.Stamped.Response.Solution.Stresses.Select(s => Units.In(Quantity.Stress, s.Largest))];
}

/// <summary>How a kind of quantity is shown along a chart.</summary>
internal sealed record AxisUnit(UnitSystem System, Quantity Quantity)
{
    /// <summary>The unit.</summary>
    public string Unit => System.Symbol(Quantity);

    /// <summary>What an internal value is multiplied by.</summary>
    public double Factor => System.In(Quantity, 1);

    /// <summary>With the unit: "12.5 mm", "90.0°".</summary>
    public string Text(double value) => !double.IsFinite(value) ? "-" : Unit == "°" ? Bare(value) + Unit : $"{Bare(value)} {Unit}";

    /// <summary>Without the unit. A percentage has no decimals, also near the whole.</summary>
    public string Bare(double value) => !double.IsFinite(value) ? "-"
        : Quantity == Quantity.Fraction ? UnitSystems.Decimals(System.In(Quantity, value), "0")
        : System.Number(Quantity, value);
}
