using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.Units;

namespace BracketGen.Words.Report;

/// <summary>The sweep in the report.</summary>
public static class SweepText
{
    /// <summary>What the pictures show.</summary>
    public const string Intro = "Seen along the throttle shaft, from outside. This is geometry alone: stretch of the wire and give of outer and bracket come on top.";

    /// <summary>One end of the pedal.</summary>
    public const string Released = "Pedal released";

    /// <summary>The other end.</summary>
    public const string OnFloor = "Pedal on the floor";

    /// <summary>Name of the first move.</summary>
    public const string FirstMove = "valve begins to move";

    /// <summary>Name of the wide-open position.</summary>
    public const string WideOpen = "valve wide open";

    /// <summary>Name of the closed stop in the picture.</summary>
    public const string ClosedMark = "closed";

    /// <summary>Name of the wide-open stop in the picture.</summary>
    public const string OpenMark = "wide open";

    /// <summary>Opens the table.</summary>
    public const string Numbers = "Numbers of every position";

    /// <summary>Button that starts the motion.</summary>
    public const string Play = "Play";

    /// <summary>Label of the slider.</summary>
    public const string Slider = "Pedal, from released to the floor";

    /// <summary>Name of the table.</summary>
    public const string Table = "Numbers of the sweep";

    /// <summary>Caption of the table.</summary>
    public const string Caption = "From the released pedal to the floor";

    /// <summary>Head of the first column.</summary>
    public const string Position = "position";

    /// <summary>Wrap of a wire that has left the groove.</summary>
    public const string LiftedOff = "lifted off";

    /// <summary>Heads of the other columns.</summary>
    public static IReadOnlyList<string> Heads { get; } = ["opening", "pedal", "wire pull", "straight length", "wrap", "moment arm"];

    /// <summary>A position in lower case, as in the table.</summary>
    public static string InTable(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    /// <summary>Name of a position between the named ones.</summary>
    public static string Between(int number) => $"{Position} {number}";

    /// <summary>Caption of a still picture.</summary>
    public static string StillCaption(string pedal, Angle opening) => $"{pedal}: opening {UnitSystem.Metric.Write(Quantity.Angle, opening.Radians)}";

    /// <summary>A still picture for people who cannot see it.</summary>
    public static string StillSpoken(string pedal, Angle opening) =>
        $"{pedal}: valve open by {UnitSystem.Metric.Write(Quantity.Angle, opening.Radians)}, seen along the throttle shaft with quadrant, wire, outer and bracket.";

    /// <summary>Caption of the strip of the pedal's stroke.</summary>
    /// <param name="travel">The travel.</param>
    /// <param name="moves">Part of the stroke where the valve begins to move, 0 to 1.</param>
    /// <param name="open">Part where it is wide open.</param>
    public static string Strip(Travel travel, double moves, double open)
    {
        string Part(double value) => UnitSystem.Metric.Write(Quantity.Fraction, value);
        return travel.ReachesWideOpen
            ? $"The pedal's stroke: free play to {Part(moves)}, the valve opens to {Part(open)}, over-travel to the floor."
            : $"The pedal's stroke: free play to {Part(moves)}, then the valve opens up to the floor and does not get wide open.";
    }
}
