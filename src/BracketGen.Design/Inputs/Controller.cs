namespace BracketGen.Design.Inputs;

/// <summary>What reads the position sensor.</summary>
public sealed record Controller
{
    /// <summary>Reading taken for the closed valve (V); null where the controller learns its own zero.</summary>
    public double? ZeroVolts { get; init; }

    /// <summary>Readings below it are taken for a broken wire (V); default 0.2 (common practice, no source).</summary>
    public double MinVolts { get; init; } = 0.2;

    /// <summary>Readings above it are taken for a short circuit (V); default 4.8 (common practice, no source).</summary>
    public double MaxVolts { get; init; } = 4.8;

    /// <summary>One that learns its zero, with the usual limits of a sensor fed with 5 V.</summary>
    public static readonly Controller Usual = new();
}
