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

    /// <summary>How it wants the ends of bends marked.</summary>
    public BendMarks BendMarks { get; init; }

    /// <summary>What work and sheet cost there.</summary>
    public ShopRates Rates { get; init; } = ShopRates.InMinutes;

    /// <summary>The bend rule for a sheet and an inside radius (mm): the shop's own test bend first, then the published rule.</summary>
    /// <remarks>DIN 6935 is for flat rolled steel; for anything else Machinery's Handbook is used in its place. It carries <see cref="KPlusMinus"/>.</remarks>
    public BendRule RuleFor(Stock stock, double insideRadius) => BareRule(stock, insideRadius) with { KPlusMinus = KPlusMinus(stock, insideRadius) };

    /// <summary>The same shop with one finish for all that it makes; only aluminium can be anodised, steel keeps its own finish then.</summary>
    public Shop Finished(Finish finish) => this with
    {
        Stock = [.. Stock.Select(s => finish.Kind == FinishKind.Anodised && s.Material.IsSteel ? s : s with { Material = s.Material with { Finish = finish } })],
    };

    private BendRule BareRule(Stock stock, double insideRadius) => TestOf(stock, insideRadius) is { } test
        ? new TestBendRule(test.K, Name)
        : BendRule == PublishedBendRule.Din6935 && stock.Material.IsSteel ? new Din6935Rule() : new MachinerysHandbookRule(stock.Material.BendGroup);

    /// <summary>± of the K factor that <see cref="RuleFor"/> leads to; times bend angle (rad) and thickness it is the ± of the bend allowance (mm).</summary>
    /// <remarks>
    /// With a test bend: what reading one strip to ± <see cref="TestStripResult.Reading"/> on either leg does. Without one: the largest difference of the rule from the other published
    /// rule for steel, or for other sheet from the handbook's rules for the other groups; and from each of the shop's test bends of like sheet (steel, or not steel) at its own radius and thickness; never less than
    /// the reading.
    /// </remarks>
    /// <param name="stock">The sheet.</param>
    /// <param name="insideRadius">Inside radius (mm).</param>
    public double KPlusMinus(Stock stock, double insideRadius)
    {
        var off = new TestStrip(0, 0, 0, Angle.Right, insideRadius, stock.Thickness).KPlusMinus(TestStripResult.Reading);
        if (TestOf(stock, insideRadius) is not null)
        {
            return off;
        }

        var rule = BareRule(stock, insideRadius);
        BendRule[] published = stock.Material.IsSteel
            ? [new Din6935Rule(), new MachinerysHandbookRule(stock.Material.BendGroup)]
            : [.. Enum.GetValues<BendGroup>().Select(g => new MachinerysHandbookRule(g))];
        foreach (var other in published)
        {
            off = Math.Max(off, Math.Abs(KOf(other, insideRadius, stock.Thickness) - KOf(rule, insideRadius, stock.Thickness)));
        }

        foreach (var test in TestBends)
        {
            if (Stock.FirstOrDefault(s => s.Material.Designation == test.Material)?.Material is { } material && material.IsSteel == stock.Material.IsSteel)
            {
                var like = rule is MachinerysHandbookRule ? new MachinerysHandbookRule(material.BendGroup) : rule;
                off = Math.Max(off, Math.Abs(test.K - KOf(like, test.InsideRadius, test.Thickness)));
            }
        }

        return off;
    }

    /// <summary>The dies for a sheet, best first: those that do not crack it, then those with a test bend, then the narrower.</summary>
    /// <remarks>The narrowest gives the tightest bend, which is what a short flange wants; but a die that was tried gives the flanges their lengths.</remarks>
    /// <param name="stock">The sheet.</param>
    /// <param name="leastRadiusRatio">Minimum inside radius over thickness.</param>
    public IEnumerable<PressBrakeDie> DiesFor(Stock stock, double leastRadiusRatio) => Dies
        .Where(d => d.Suits(stock.Thickness))
        .OrderBy(d => d.InsideRadiusIn(stock.Material.BendGroup) < leastRadiusRatio * stock.Thickness)
        .ThenBy(d => TestOf(stock, d.InsideRadiusIn(stock.Material.BendGroup)) is null)
        .ThenBy(d => d.Opening);

    private static double KOf(BendRule rule, double insideRadius, double thickness) =>
        (rule.Allowance(Angle.Right, insideRadius, thickness) / Angle.Right.Radians - insideRadius) / thickness;

    private TestBend? TestOf(Stock stock, double insideRadius) => TestBends.FirstOrDefault(b => b.Material == stock.Material.Designation
        && Math.Abs(b.Thickness - stock.Thickness) < Tolerance.SameSize && Math.Abs(b.InsideRadius - insideRadius) < Tolerance.SameSize);
}
