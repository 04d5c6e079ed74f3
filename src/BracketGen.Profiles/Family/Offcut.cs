using BracketGen.Geometry;

namespace BracketGen.Profiles.Family;

/// <summary>What is left of a sheet and lies in the rack; the grain runs along x, its lower left corner at the origin.</summary>
/// <param name="Code">What the shop calls it: one to twelve letters and digits.</param>
/// <param name="Material">Designation.</param>
/// <param name="Thickness">Thickness (mm).</param>
/// <param name="Length">Length of its rectangle, along the grain (mm).</param>
/// <param name="Width">Width of its rectangle (mm).</param>
/// <param name="Outline">Its outline and what is already cut out of it; null for a whole rectangle.</param>
public sealed record Offcut(string Code, string Material, double Thickness, double Length, double Width, Region? Outline)
{
    /// <summary>Least side (mm) that is worth keeping (common practice, no source).</summary>
    public const double Least = 50;

    /// <summary>Maximum length (mm), that of the longest sheet.</summary>
    public const double MostLength = 6000;

    /// <summary>Maximum width (mm), that of the widest sheet.</summary>
    public const double MostWidth = 3000;
}
