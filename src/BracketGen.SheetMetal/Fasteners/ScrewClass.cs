using System.Collections.Immutable;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Fasteners;

/// <summary>A property class or grade of screws.</summary>
/// <remarks>
/// Yield strength: ISO 898-1 for 5.8, 8.8 (up to M16) and 10.9; ISO 3506-1 for A2-70 and A4-80; from memory of the tables. SAE J429, from 1/4 to 3/4 in: grade 2 57 ksi (393 MPa), grade 5 92 ksi (634 MPa), grade 8
/// 130 ksi (896 MPa), as printed by two makers of screws. ASTM F593, condition CW1 up to 5/8 in, alloy groups 1 and 2: 65 ksi (448 MPa), from memory. Below 1/4 in, SAE J82 grade 60M: it has the tensile strength of SAE J429 grade 1
/// (60 ksi), and that grade's yield is taken, 36 ksi (248 MPa); from memory.
/// </remarks>
/// <param name="Name">"8.8".</param>
/// <param name="Yield">Minimum yield strength or 0.2 % proof strength (MPa).</param>
public sealed record ScrewClass(string Name, double Yield)
{
    /// <summary>Class 8.8: what is taken for metric threads where the throttle body's file names none, and what the set-up sheet then orders.</summary>
    public static ScrewClass Usual { get; } = new("8.8", Tightening.YieldOf88) { Nut = new("8", 800) };

    /// <summary>Grade 5: the same for inch threads from 1/4 in up.</summary>
    public static ScrewClass UsualInch { get; } = new("grade 5", 634) { Fits = ThreadSystem.Inch, Standard = "SAE J429", Nut = new("SAE J995 grade 5", 751) };

    /// <summary>Grade 60M: the same for inch threads below 1/4 in.</summary>
    public static ScrewClass UsualNumber { get; } = new("60M", 248) { Fits = ThreadSystem.Inch, IsNumberSize = true, Standard = "SAE J82", Nut = new("", 413) };

    /// <summary>The weakest usual classes: what is taken for a stud whose class nobody knows.</summary>
    private static readonly ScrewClass Weakest = new("5.8", 400) { Nut = new("5", 500) },
        WeakestInch = new("grade 2", 393) { Fits = ThreadSystem.Inch, Standard = "SAE J429", Nut = new("SAE J995 grade 2", 551) };

    /// <summary>The classes the program knows.</summary>
    public static ImmutableArray<ScrewClass> All { get; } =
    [
        Weakest, Usual, new("10.9", 900) { Nut = new("10", 1000) }, new("A2-70", 450) { Nut = new("A2-70", 700) }, new("A4-80", 600) { Nut = new("A4-80", 800) },
        WeakestInch, UsualInch, new("grade 8", 896) { Fits = ThreadSystem.Inch, Standard = "SAE J429", Nut = new("SAE J995 grade 8", 1034) },
        new("F593 CW1", 448) { Fits = ThreadSystem.Inch, Standard = "ASTM", Nut = new("ASTM F594 CW1", 689) }, UsualNumber,
    ];

    /// <summary>The system of threads it is made in.</summary>
    public ThreadSystem Fits { get; private init; } = ThreadSystem.Metric;

    /// <summary>Whether it is made below 1/4 in, and only there.</summary>
    public bool IsNumberSize { get; private init; }

    /// <summary>The standard that is named before it on an order; empty where the screw's own standard says what it means.</summary>
    public string Standard { get; private init; } = "";

    /// <summary>The nut that goes with it.</summary>
    public required NutClass Nut { get; init; }

    /// <summary>Whether screws of a thread are made in this class.</summary>
    public bool IsFor(FastenerThread thread) => thread.System == Fits && (Fits == ThreadSystem.Metric || thread.IsNumberSize == IsNumberSize);

    /// <summary>The class taken for a stud where none is named: nobody ordered it, so the weakest.</summary>
    public static ScrewClass WeakestFor(FastenerThread thread) =>
        thread.System == ThreadSystem.Metric ? Weakest : thread.IsNumberSize ? UsualNumber : WeakestInch;

    /// <summary>The class taken for a thread where none is named.</summary>
    public static ScrewClass UsualFor(FastenerThread thread) =>
        thread.System == ThreadSystem.Metric ? Usual : thread.IsNumberSize ? UsualNumber : UsualInch;
}
