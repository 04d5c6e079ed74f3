using System.Collections.Immutable;

namespace BracketGen.Words.Worksheet;

/// <summary>One row to fill in: what to measure, and its blanks.</summary>
/// <param name="Key">Key of the profile that takes it.</param>
/// <param name="What">What to measure.</param>
/// <param name="Unit">Unit written behind the blanks; empty if a word is wanted.</param>
/// <param name="Fields">The label of each blank: empty for a reading, "±" for how well it was measured, x, y and z for coordinates.</param>
public sealed record Blank(string Key, string What, string Unit, ImmutableArray<string> Fields)
{
    /// <summary>Sign before the blank for how well it was measured.</summary>
    public const string PlusMinus = "±";

    /// <summary>Letter on the sketch; empty if the sketch does not show it.</summary>
    public string Letter { get; init; } = "";

    /// <summary>Name under which the sketch asks for the letter; empty if the sketch does not show it.</summary>
    public string Mark { get; init; } = Key;

    /// <summary>Number of the hole or spring, from 1; 0 where there is one only.</summary>
    public int Item { get; init; }

    /// <summary>How often it is read.</summary>
    public int Readings => Fields.Count(f => f.Length == 0);

    /// <summary>Whether there is a blank for how well it was measured.</summary>
    public bool HasPlusMinus => Fields.Contains(PlusMinus);
}

/// <summary>The sketches of the worksheet.</summary>
public enum SketchKind
{
    /// <summary>Quadrant seen along the shaft.</summary>
    Quadrant,

    /// <summary>Quadrant from its edge.</summary>
    QuadrantEdge,

    /// <summary>Pocket of the end fitting.</summary>
    Pocket,

    /// <summary>Valve in its bore, and the sensor.</summary>
    Valve,

    /// <summary>Spring balance on a lever.</summary>
    Torque,

    /// <summary>Mount face with its holes, from the front and from the side.</summary>
    Mount,

    /// <summary>Bore's axis and the casting round it.</summary>
    BoreAxis,

    /// <summary>A keep-out.</summary>
    KeepOut,

    /// <summary>A groove that is round about a centre beside the shaft.</summary>
    EccentricGroove,

    /// <summary>Any other groove.</summary>
    GrooveTable,

    /// <summary>End of the cable.</summary>
    Cable,

    /// <summary>Kinds of outer end.</summary>
    OuterEnds,

    /// <summary>Pedal.</summary>
    Pedal,

    /// <summary>Drag of the cable with a spring balance.</summary>
    Drag,

    /// <summary>Stiffness of the outer with a weight and a dial gauge.</summary>
    OuterStiffness,

    /// <summary>Bulkhead.</summary>
    Bulkhead,

    /// <summary>A second cable on the pedal and its loose end.</summary>
    OtherCable,

    /// <summary>The fitted cable.</summary>
    Fitted,
}

/// <summary>One thing to measure: which sketch shows it, what to do, and the blanks.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Sketch">The sketch beside it.</param>
/// <param name="Tools">With what.</param>
/// <param name="Mistake">What goes wrong most often.</param>
/// <param name="Blanks">The rows of blanks, in the order of the letters.</param>
public sealed record WorksheetSection(string Title, SketchKind Sketch, string Tools, string Mistake, ImmutableArray<Blank> Blanks);
