using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Fasteners;

/// <summary>A round spacer under the bracket at a mount hole that lies lower than the others: steel tube or turned, as wide as the washer, with the clearance hole of the thread.</summary>
/// <param name="Length">Its length (mm): how much lower the hole lies.</param>
/// <param name="Thread">The thread that goes through it.</param>
public sealed record Spacer(double Length, FastenerThread Thread)
{
    /// <summary>Limit deviation of the length (mm, either way): faced in a lathe and measured with a micrometer (common practice, no source). It is then faced to the flatness that the mount has with it in place.</summary>
    public const double Deviation = 0.02;

    /// <summary>Yield strength that the steel must have (MPa): that of S235, EN 10025-2.</summary>
    public const double Yield = 235;

    /// <summary>Outside diameter (mm).</summary>
    public double Outside => Thread.WasherDiameter;

    /// <summary>Inside diameter (mm).</summary>
    public double Inside => Thread.ClearanceMedium;

    /// <summary>Area that carries (mm²).</summary>
    public double Area => Math.PI / 4 * (Outside * Outside - Inside * Inside);
}
