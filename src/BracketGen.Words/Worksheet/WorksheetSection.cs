using System.Collections.Immutable;

namespace BracketGen.Words.Worksheet;

/// <summary>One blank to fill in.</summary>
/// <param name="Letter">Letter on the sketch; empty if the sketch does not show it.</param>
/// <param name="What">What to measure.</param>
/// <param name="Unit">Unit written behind the blank; empty if a word is wanted.</param>
/// <param name="Key">Key of the profile that takes it.</param>
/// <param name="PlusMinus">Whether there is a blank for how well it was measured.</param>
public sealed record Blank(string Letter, string What, string Unit, string Key, bool PlusMinus = false);

/// <summary>The sketches of the worksheet.</summary>
public enum SketchKind
{
    /// <summary>Quadrant seen along the shaft.</summary>
    Quadrant,

    /// <summary>Quadrant from its edge.</summary>
    QuadrantEdge,

    /// <summary>Valve in its bore.</summary>
    Valve,

    /// <summary>Spring balance on a lever.</summary>
    Torque,

    /// <summary>Holes of the mount face.</summary>
    Mount,

    /// <summary>Mount face from the side.</summary>
    MountSide,

    /// <summary>A keep-out.</summary>
    KeepOut,

    /// <summary>A groove that is not round about the shaft.</summary>
    GrooveTable,

    /// <summary>End of the cable.</summary>
    Cable,

    /// <summary>Kinds of outer end.</summary>
    OuterEnds,

    /// <summary>Pedal.</summary>
    Pedal,

    /// <summary>Drag of the cable with a spring balance.</summary>
    Drag,

    /// <summary>Bulkhead.</summary>
    Bulkhead,

    /// <summary>The fitted cable.</summary>
    Fitted,
}

/// <summary>One thing to measure: which sketch shows it, what to do, and the blanks.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Sketch">The sketch beside it.</param>
/// <param name="Tools">With what.</param>
/// <param name="Mistake">What goes wrong most often.</param>
/// <param name="Blanks">The blanks, in the order of the letters.</param>
public sealed record WorksheetSection(string Title, SketchKind Sketch, string Tools, string Mistake, ImmutableArray<Blank> Blanks);
