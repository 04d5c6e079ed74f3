using System.Collections.Immutable;

namespace BracketGen.SheetMetal.Fasteners;

/// <summary>Friction in thread and under the head of a screw.</summary>
/// <remarks>Friction classes of VDI 2230 Blatt 1, table A5 (from memory): A 0.04 to 0.10, B 0.08 to 0.16, C 0.14 to 0.24.</remarks>
/// <param name="Name">How the screw is fitted.</param>
/// <param name="Min">Minimum friction coefficient.</param>
/// <param name="Max">Maximum friction coefficient.</param>
public sealed record ScrewFriction(string Name, double Min, double Max)
{
    /// <summary>Plain or zinc-plated steel, dry or lightly oiled: class B.</summary>
    public static ScrewFriction Usual { get; } = new("as delivered", 0.08, 0.16);

    /// <summary>What the program knows: waxed or greased with molybdenum disulphide (A), as delivered (B), stainless without grease (C).</summary>
    public static ImmutableArray<ScrewFriction> All { get; } = [new("lubricated", 0.04, 0.10), Usual, new("dry stainless", 0.14, 0.24)];

    /// <summary>The middle of the class: what a torque is set by.</summary>
    public double Middle => (Min + Max) / 2;
}
