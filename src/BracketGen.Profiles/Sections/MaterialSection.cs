using System.Collections.Immutable;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>A material with the thicknesses the shop has of it.</summary>
internal sealed record StockedMaterial(Material Material, ImmutableArray<double> Thicknesses);

/// <summary>One <c>[[materials]]</c> of a shop.</summary>
internal static class MaterialSection
{
    private static readonly Key<string> Designation = new("designation", new TextForm(60), "Designation with temper, as on the order.");

    private static readonly Key<double> Density = new("density", new QuantityForm(UnitTable.KilogramPerCubicMetre, 500, 25000), "Density.");

    private static readonly Key<double> Modulus = new("modulus", new QuantityForm(UnitTable.Gigapascal, 1, 500), "Young's modulus.");

    private static readonly Key<double> Poisson = new("poisson", QuantityForm.Number(0, 0.49), "Poisson's ratio; no unit.");

    private static readonly Key<double> Yield = new(
        "yield", new QuantityForm(UnitTable.Megapascal, 10, 3000), "Yield strength or 0.2 % proof strength, the minimum of the standard.");

    private static readonly Key<double> MinTensile = new(
        "min_tensile", new QuantityForm(UnitTable.Megapascal, 20, 3000), "Minimum tensile strength of the standard, for the pressure under washers. If left out: the yield strength counts.", isRequired: false);

    private static readonly Key<double> MaxTensile = new(
        "max_tensile", new QuantityForm(UnitTable.Megapascal, 20, 3000), "Maximum tensile strength of the standard, for the force of a bend. If left out: 3.5 times the yield strength, assumed.", isRequired: false);

    private static readonly Key<double> Endurance = new(
        "endurance", new QuantityForm(UnitTable.Megapascal, 1, 2000), "Fully reversed stress amplitude that the sheet withstands for the life of the vehicle.");

    private static readonly Key<double> AcrossGrain = new(
        "min_radius_across_grain", QuantityForm.Number(0, 20), "Minimum inside radius over thickness, bend line across the grain; no unit.");

    private static readonly Key<double> AlongGrain = new(
        "min_radius_along_grain", QuantityForm.Number(0, 20), "Minimum inside radius over thickness, bend line along the grain; no unit.");

    private static readonly Key<BendGroup> Group = new(
        "bend_group",
        new WordForm<BendGroup>(
            ("soft brass or copper", BendGroup.SoftBrassOrCopper),
            ("soft steel or aluminium", BendGroup.SoftSteelOrAluminium),
            ("cold-rolled or spring steel", BendGroup.ColdRolledOrSpringSteel)),
        "Row of the bend allowance table in Machinery's Handbook.");

    public static readonly Key<double> PricePerKilogram = new(
        "price_per_kilogram", QuantityForm.Number(0, 100_000), "Price of a kilogram, in the currency of [rates]. If left out: sheet_per_kilogram of [rates].", isRequired: false);

    private static readonly Key<Finish> Finish = Key<Finish>.WithDefault(
        "finish", FinishSection.Form, "What protects parts made of it. If left out: not stated, and the drawing says as agreed.", SheetMetal.Shops.Finish.NotStated);

    private static readonly Key<string> Source = new("source", new TextForm(400), "Where the numbers come from.");

    private static readonly Key<ImmutableArray<double>> Thicknesses = new(
        "thicknesses", new ListForm<double>(QuantityForm.Length(0.3, 25), 1, 40), "Thicknesses in stock.");

    public static Section<StockedMaterial> Form { get; } = new(
        [Designation, Density, Modulus, Poisson, Yield, MinTensile, MaxTensile, Endurance, AcrossGrain, AlongGrain, Group, PricePerKilogram, Finish, Source, Thicknesses],
        v => new(
            new()
            {
                Designation = v.Get(Designation),
                Density = v.Get(Density),
                Modulus = v.Get(Modulus),
                Poisson = v.Get(Poisson),
                Yield = v.Get(Yield),
                MinTensile = v.OrNull(MinTensile),
                MaxTensile = v.OrNull(MaxTensile),
                Endurance = v.Get(Endurance),
                MinRadiusAcrossGrain = v.Get(AcrossGrain),
                MinRadiusAlongGrain = v.Get(AlongGrain),
                BendGroup = v.Get(Group),
                PricePerKilogram = v.OrNull(PricePerKilogram),
                Finish = v.Get(Finish),
                Source = v.Get(Source),
            },
            v.Get(Thicknesses)),
        [
            new([Yield, MinTensile], v => CheckTensile(v, MinTensile, Yield)),
            new([Yield, MaxTensile], v => CheckTensile(v, MaxTensile, Yield)),
            new([MinTensile, MaxTensile], v => CheckOrder(v)),
            new([AcrossGrain, AlongGrain], CheckGrain),
            new([Thicknesses], CheckTwice),
            new([Density, Modulus, Finish], CheckFinish),
        ]);

    private static void CheckTensile(SectionValues values, Key<double> tensile, Key<double> yield)
    {
        if (values.OrNull(tensile) < values.Get(yield))
        {
            values.Report(tensile, new Compared(Relation.AtLeast, yield.Name, Quantity.Stress, values.Get(yield), CompareReason.Tensile));
        }
    }

    private static void CheckOrder(SectionValues values)
    {
        if (values.OrNull(MinTensile) is { } min && values.OrNull(MaxTensile) is { } max && min > max)
        {
            values.Report(MinTensile, new WrongOrder(MinTensile.Name, min, MaxTensile.Name, max, Quantity.Stress, true, false, MayBeEqual: true));
        }
    }

    private static void CheckGrain(SectionValues values)
    {
        if (values.Get(AlongGrain) < values.Get(AcrossGrain))
        {
            values.Report(AlongGrain, new Compared(Relation.AtLeast, AcrossGrain.Name, Quantity.Number, values.Get(AcrossGrain), CompareReason.Grain));
        }
    }

    private static void CheckFinish(SectionValues values)
    {
        if (values.Get(Finish).Kind == FinishKind.Anodised && Material.IsSteelOf(values.Get(Density), values.Get(Modulus)))
        {
            values.Report(Finish, new Contradiction(Contradictory.AnodisedSteel));
        }
    }

    private static void CheckTwice(SectionValues values)
    {
        var thicknesses = values.Get(Thicknesses);
        for (var i = 1; i < thicknesses.Length; i++)
        {
            if (thicknesses[..i].Any(t => ShopSection.IsSame(t, thicknesses[i])))
            {
                values.ReportItem(Thicknesses, i, "", new GivenTwice(Repeated.Thickness));
            }
        }
    }
}
