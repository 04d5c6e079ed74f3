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
    private static readonly Key<string> Designation = new("designation", new TextForm(60), "Designation with temper, as on the order. Of a sheet in the library only the thicknesses are needed besides; what is given counts.");

    private static readonly Key<double> Density = new("density", new QuantityForm(UnitTable.KilogramPerCubicMetre, 500, 25000), "Density.", isRequired: false);

    private static readonly Key<double> Modulus = new("modulus", new QuantityForm(UnitTable.Gigapascal, 1, 500), "Young's modulus.", isRequired: false);

    private static readonly Key<double> Poisson = new("poisson", QuantityForm.Number(0, 0.49), "Poisson's ratio; no unit.", isRequired: false);

    private static readonly Key<double> Yield = new(
        "yield", new QuantityForm(UnitTable.Megapascal, 10, 3000), "Yield strength or 0.2 % proof strength, the minimum of the standard.", isRequired: false);

    private static readonly Key<double> MinTensile = new(
        "min_tensile", new QuantityForm(UnitTable.Megapascal, 20, 3000), "Minimum tensile strength of the standard, for the pressure under washers. If left out: the library's where no source is given, else the yield strength.", isRequired: false);

    private static readonly Key<double> MaxTensile = new(
        "max_tensile", new QuantityForm(UnitTable.Megapascal, 20, 3000), "Maximum tensile strength of the standard, for the force of a bend. If left out: the library's where no source is given, else 3.5 times the yield strength, assumed.", isRequired: false);

    private static readonly Key<double> Endurance = new(
        "endurance", new QuantityForm(UnitTable.Megapascal, 1, 2000), "Fully reversed stress amplitude that the sheet withstands for the life of the vehicle.", isRequired: false);

    private static readonly Key<double> AcrossGrain = new(
        "min_radius_across_grain", QuantityForm.Number(0, 20), "Minimum inside radius over thickness, bend line across the grain; no unit.", isRequired: false);

    private static readonly Key<double> AlongGrain = new(
        "min_radius_along_grain", QuantityForm.Number(0, 20), "Minimum inside radius over thickness, bend line along the grain; no unit.", isRequired: false);

    private static readonly Key<BendGroup> Group = new(
        "bend_group",
        new WordForm<BendGroup>(
            ("soft brass or copper", BendGroup.SoftBrassOrCopper),
            ("soft steel or aluminium", BendGroup.SoftSteelOrAluminium),
            ("cold-rolled or spring steel", BendGroup.ColdRolledOrSpringSteel)),
        "Row of the bend allowance table in Machinery's Handbook.", isRequired: false);

    public static readonly Key<double> PricePerKilogram = new(
        "price_per_kilogram", QuantityForm.Number(0, 100_000), "Price of a kilogram, in the currency of [rates]. If left out: sheet_per_kilogram of [rates].", isRequired: false);

    private static readonly Key<Finish> Finish = Key<Finish>.WithDefault(
        "finish", FinishSection.Form, "What protects parts made of it. If left out: not stated, and the drawing says as agreed.", SheetMetal.Shops.Finish.NotStated);

    private static readonly Key<string> Source = new("source", new TextForm(400), "Where the numbers come from.", isRequired: false);

    private static readonly Key<ImmutableArray<double>> Thicknesses = new(
        "thicknesses", new ListForm<double>(QuantityForm.Length(0.3, 25), 1, 40), "Thicknesses in stock.");

    private static readonly Key[] Numbers = [Density, Modulus, Poisson, Yield, Endurance, AcrossGrain, AlongGrain, Group, Source];

    public static Section<StockedMaterial> Form { get; } = new(
        [Designation, Density, Modulus, Poisson, Yield, MinTensile, MaxTensile, Endurance, AcrossGrain, AlongGrain, Group, PricePerKilogram, Finish, Source, Thicknesses],
        v => new(MaterialOf(v), v.Get(Thicknesses)),
        [
            new([Designation, .. Numbers], CheckWhole),
            new([Designation, Yield, MinTensile], v => CheckTensile(v, MinTensile)),
            new([Designation, Yield, MaxTensile], v => CheckTensile(v, MaxTensile)),
            new([MinTensile, MaxTensile], v => CheckOrder(v)),
            new([Designation, AcrossGrain, AlongGrain], CheckGrain),
            new([Thicknesses], CheckTwice),
            new([Designation, Density, Modulus, Finish], CheckFinish),
        ],
        kinds: [new KnownWords(Designation, [.. SheetLibrary.All.Select(m => m.Designation)], Numbers)]);

    private static Material? Known(SectionValues values) => SheetLibrary.Of(values.Get(Designation));

    private static Material MaterialOf(SectionValues values)
    {
        var known = Known(values);
        string[] anew = [.. Numbers.Append(MinTensile).Append(MaxTensile).Where(values.Has).Where(k => k != Source).Select(k => k.Name)];
        return new()
        {
            Designation = values.Get(Designation),
            Density = values.Get(Density, known?.Density ?? 0),
            Modulus = values.Get(Modulus, known?.Modulus ?? 0),
            Poisson = values.Get(Poisson, known?.Poisson ?? 0),
            Yield = YieldOf(values),

            // A file with a source of its own says all that it wants to say.
            MinTensile = values.OrNull(MinTensile) ?? (values.Has(Source) ? null : known?.MinTensile),
            MaxTensile = values.OrNull(MaxTensile) ?? (values.Has(Source) ? null : known?.MaxTensile),
            Endurance = values.Get(Endurance, known?.Endurance ?? 0),
            MinRadiusAcrossGrain = values.Get(AcrossGrain, known?.MinRadiusAcrossGrain ?? 0),
            MinRadiusAlongGrain = values.Get(AlongGrain, known?.MinRadiusAlongGrain ?? 0),
            BendGroup = values.Get(Group, known?.BendGroup ?? default),
            PricePerKilogram = values.OrNull(PricePerKilogram),
            Finish = values.Get(Finish),
            Source = values.Has(Source) ? values.Get(Source) : known!.Source + (anew.Length > 0 ? $"; the shop's own: {string.Join(", ", anew)}" : ""),
        };
    }

    private static double YieldOf(SectionValues values) => values.Get(Yield, Known(values)?.Yield ?? 0);

    private static void CheckWhole(SectionValues values)
    {
        if (Known(values) is not null)
        {
            return;
        }

        if (!Numbers.Any(values.Has))
        {
            string[] names = [.. SheetLibrary.All.Select(m => m.Designation)];
            values.Report(Designation, new SheetUnknown([.. names], Nearest.To(values.Get(Designation), names), [.. Numbers.Select(n => n.Name)]));
            return;
        }

        foreach (var key in Numbers.Where(k => !values.Has(k)))
        {
            values.Report(key, new KeyMissing(key.Name, key.Allowed, key.Help, IsHeader: false));
        }
    }

    private static void CheckTensile(SectionValues values, Key<double> tensile)
    {
        if (values.OrNull(tensile) < YieldOf(values))
        {
            values.Report(tensile, new Compared(Relation.AtLeast, Yield.Name, Quantity.Stress, YieldOf(values), CompareReason.Tensile));
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
        var known = Known(values);
        var (across, along) = (values.Get(AcrossGrain, known?.MinRadiusAcrossGrain ?? 0), values.Get(AlongGrain, known?.MinRadiusAlongGrain ?? 0));
        if (along < across && (known is not null || (values.Has(AcrossGrain) && values.Has(AlongGrain))))
        {
            values.Report(values.Has(AlongGrain) ? AlongGrain : AcrossGrain, new Compared(Relation.AtLeast, AcrossGrain.Name, Quantity.Number, across, CompareReason.Grain));
        }
    }

    private static void CheckFinish(SectionValues values)
    {
        if (values.Get(Finish).Kind == FinishKind.Anodised && Material.IsSteelOf(values.Get(Density, Known(values)?.Density ?? 0), values.Get(Modulus, Known(values)?.Modulus ?? 0)))
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
