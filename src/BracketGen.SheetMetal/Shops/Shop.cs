using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Shops;

/// <summary>One of the shop's own test bends.</summary>
/// <param name="Material">Designation of the sheet.</param>
/// <param name="Thickness">Its thickness (mm).</param>
/// <param name="InsideRadius">Inside radius measured (mm).</param>
/// <param name="K">K factor found: the neutral axis's distance from the inside over the thickness.</param>
public sealed record TestBend(string Material, double Thickness, double InsideRadius, double K);

/// <summary>Which published bend rule to use if the shop has no test bend.</summary>
public enum PublishedBendRule
{
    /// <summary>DIN 6935.</summary>
    Din6935,

    /// <summary>Machinery's Handbook.</summary>
    MachinerysHandbook,
}

/// <summary>What the shop that makes the bracket has and can do.</summary>
public sealed record Shop
{
    /// <summary>Name of the shop, for the title block.</summary>
    public required string Name { get; init; }

    /// <summary>How it cuts.</summary>
    public required CuttingProcess Process { get; init; }

    /// <summary>Width of the cut (mm).</summary>
    public required double Kerf { get; init; }

    /// <summary>The sheets in stock.</summary>
    public required ImmutableArray<Stock> Stock { get; init; }

    /// <summary>The dies of its press brake.</summary>
    public required ImmutableArray<PressBrakeDie> Dies { get; init; }

    /// <summary>What it bends with, apart from its dies.</summary>
    public ToolSet Tools { get; init; } = ToolSet.Assumed;

    /// <summary>Its test bends.</summary>
    public required ImmutableArray<TestBend> TestBends { get; init; }

    /// <summary>The published rule, used if there is no test bend.</summary>
    public required PublishedBendRule BendRule { get; init; }

    /// <summary>The bend rule for a sheet and an inside radius (mm): the shop's own test bend first, then the published rule.</summary>
    public BendRule RuleFor(Stock stock, double insideRadius)
    {
        var test = TestBends.FirstOrDefault(b => b.Material == stock.Material.Designation
            && Math.Abs(b.Thickness - stock.Thickness) < Tolerance.SameSize && Math.Abs(b.InsideRadius - insideRadius) < Tolerance.SameSize);
        if (test is not null)
        {
            return new TestBendRule(test.K, Name);
        }

        return BendRule == PublishedBendRule.Din6935 ? new Din6935Rule() : new MachinerysHandbookRule(stock.Material.BendGroup);
    }
}
