using System.Collections.Immutable;

namespace BracketGen.SheetMetal.Fasteners;

/// <summary>A property class of screws.</summary>
/// <remarks>
/// Yield strength: ISO 898-1 for 5.8, 8.8 (up to M16) and 10.9; ISO 3506-1 for A2-70 and A4-80; from memory of the tables.
/// </remarks>
/// <param name="Name">"8.8".</param>
/// <param name="Yield">Minimum yield strength or 0.2 % proof strength (MPa).</param>
public sealed record ScrewClass(string Name, double Yield)
{
    /// <summary>Class 8.8: what is taken where the throttle body's file names none, and what the set-up sheet then orders.</summary>
    public static ScrewClass Usual { get; } = new("8.8", Tightening.YieldOf88);

    /// <summary>The classes the program knows.</summary>
    public static ImmutableArray<ScrewClass> All { get; } = [new("5.8", 400), Usual, new("10.9", 900), new("A2-70", 450), new("A4-80", 600)];
}
