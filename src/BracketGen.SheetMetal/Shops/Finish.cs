using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Shops;

/// <summary>What protects the surface of a finished part.</summary>
public enum FinishKind
{
    /// <summary>Nobody said.</summary>
    NotStated,

    /// <summary>Nothing.</summary>
    Bare,

    /// <summary>Zinc plated.</summary>
    Zinc,

    /// <summary>Powder coated.</summary>
    PowderCoat,

    /// <summary>Anodised.</summary>
    Anodised,
}

/// <summary>The finish of a part.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Thickness">Thickness of the layer on each face (mm), 0 where there is none.</param>
public sealed record Finish(FinishKind Kind, double Thickness)
{
    // What a hole loses and its own play takes without harm (mm on the diameter; our judgement, no source): a tenth of the play of a medium clearance hole for M5.
    private const double LeftToPlay = 0.05;

    // Holes are made in steps of so much (mm).
    private const double HoleStep = 0.1;

    /// <summary>Nobody said what finish the part gets.</summary>
    public static Finish NotStated { get; } = new(FinishKind.NotStated, 0);

    /// <summary>How far the finished face stands out from the bare one (mm): half of an anodised layer grows into the metal, the rest is put on.</summary>
    public double BuildUp => Kind == FinishKind.Anodised ? Thickness / 2 : Thickness;

    /// <summary>By how much a hole's diameter or a slot's width is made larger, so that it has its size when the part is finished (mm).</summary>
    /// <remarks>What both faces build up, to the next tenth; 0 where that is less than 0.05 mm, which the play of the hole takes.</remarks>
    public double HoleAllowance => 2 * BuildUp < LeftToPlay ? 0 : Math.Round(Math.Ceiling(2 * BuildUp / HoleStep - Tolerance.LimitSlack) * HoleStep, 6);

    /// <summary>Whether a layer keeps the metal from touching what it is bolted to.</summary>
    public bool Protects => Kind is FinishKind.Zinc or FinishKind.PowderCoat;
}
