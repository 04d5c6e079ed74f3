using System.Collections.Immutable;

namespace BracketGen.Profiles.Family;

/// <summary>A size in which sheet is bought; the grain runs along its length.</summary>
/// <param name="Material">Designation.</param>
/// <param name="Thickness">Thickness (mm).</param>
/// <param name="Length">Length, along the grain (mm).</param>
/// <param name="Width">Width (mm).</param>
/// <param name="Price">Price of one sheet; null where it goes by mass.</param>
public sealed record StockSheet(string Material, double Thickness, double Length, double Width, double? Price);

/// <summary>How sheets are filled.</summary>
/// <param name="Sheets">The sizes in stock; where a sheet has none, <see cref="UsualSheet"/> is taken.</param>
/// <param name="Spacing">Metal left between two parts, and kerf (mm).</param>
/// <param name="Border">Metal left along the edge of the sheet (mm).</param>
/// <param name="Quantity">Pieces of each part where no order says otherwise.</param>
public sealed record CuttingPlan(ImmutableArray<StockSheet> Sheets, double Spacing, double Border, int Quantity)
{
    /// <summary>Length and width (mm) of the sheet most dealers have (common practice, no source).</summary>
    public static readonly (double Length, double Width) UsualSheet = (2000, 1000);

    /// <summary>Spacing (mm) that leaves the skeleton stiff enough (common practice, no source).</summary>
    public const double UsualSpacing = 5;

    /// <summary>Border (mm) for clamps and a sheet that lies askew (common practice, no source).</summary>
    public const double UsualBorder = 10;

    /// <summary>What is left of earlier sheets, to be cut first, in this order.</summary>
    public ImmutableArray<Offcut> Offcuts { get; init; } = [];

    /// <summary>One of each, no sizes given.</summary>
    public static readonly CuttingPlan Usual = new([], UsualSpacing, UsualBorder, 10);
}
