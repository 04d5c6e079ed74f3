using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.Profiles.Sections;

/// <summary>A shop's file.</summary>
internal static class ShopSection
{
    private static readonly Key<string> Name = new("name", new TextForm(80), "Name of the shop, for the title block.");

    private static readonly Key<CuttingProcess> Process = new(
        "process",
        new WordForm<CuttingProcess>(("laser", CuttingProcess.Laser), ("plasma", CuttingProcess.Plasma), ("water jet", CuttingProcess.WaterJet)),
        "How the shop cuts.");

    private static readonly Key<double> Kerf = new("kerf", QuantityForm.Length(0, 10), "Width of metal the beam removes.");

    private static readonly Key<PublishedBendRule> BendRule = new(
        "bend_rule",
        new WordForm<PublishedBendRule>(("DIN 6935", PublishedBendRule.Din6935), ("Machinery's Handbook", PublishedBendRule.MachinerysHandbook)),
        "The published bend rule for bends without a test bend.");

    private static readonly Key<BendMarks> Marks = Key<BendMarks>.WithDefault(
        "bend_marks",
        new WordForm<BendMarks>(("etched", BendMarks.Etched), ("none", BendMarks.None)),
        "Marks at the ends of bends in the cut file: etched on the side that the bend presses together, never across the stretched side; or none.",
        BendMarks.Etched);

    private static readonly Key<ImmutableArray<StockedMaterial>> Materials = new(
        "materials", new ListForm<StockedMaterial>(MaterialSection.Form, 1, 100), "The materials in stock.");

    private static readonly Key<ImmutableArray<PressBrakeDie>> Dies = new(
        "dies", new ListForm<PressBrakeDie>(DieSection.Form, 1, 100), "The V dies of the press brake. A shop without one has clamps.", isRequired: false);

    private static readonly Key<ImmutableArray<Punch>> Punches = new(
        "punches", new ListForm<Punch>(PunchSection.Form, 1, 100), "The punches of the press brake. If left out: a straight punch of 88°, assumed.", isRequired: false);

    private static readonly Key<PressBrake> Press = new(
        "press", PressSection.Form, "The press brake and its back gauge. If left out: usual dimensions, assumed.", isRequired: false);

    private static readonly Key<ImmutableArray<BendingClamp>> Clamps = new(
        "clamps", new ListForm<BendingClamp>(ClampSection.Form, 1, 100), "Folders, hand brakes and vices with bars. A shop without one has dies.", isRequired: false);

    private static readonly Key<string> BentMaterial = new("material", new TextForm(60), "Designation of the sheet that was bent.");

    private static readonly Key<double> BentThickness = new("thickness", QuantityForm.Length(0.3, 25), "Its thickness.");

    private static readonly Key<double> BentRadius = new("inside_radius", QuantityForm.Length(0.1, 50), "Inside radius measured on the test bend; one of the dies or clamps must have it.");

    private static readonly Key<double> K = new(
        "k", QuantityForm.Number(0, 0.5), "K factor: distance of the neutral axis from the inside face over the thickness; no unit.");

    private static readonly Section<TestBend> Bend = new(
        [BentMaterial, BentThickness, BentRadius, K],
        v => new(v.Get(BentMaterial), v.Get(BentThickness), v.Get(BentRadius), v.Get(K)));

    private static readonly Key<ImmutableArray<TestBend>> TestBends = Key<ImmutableArray<TestBend>>.WithDefault(
        "test_bends", new ListForm<TestBend>(Bend, 0, 1000), "The shop's own test bends.", []);

    public static Section<Shop> Form { get; } = new(
        [Name, Process, Kerf, BendRule, Marks, Materials, Dies, Punches, Press, Clamps, TestBends, ShopRatesSection.Rates],
        v => new()
        {
            Name = v.Get(Name),
            Process = v.Get(Process),
            Kerf = v.Get(Kerf),
            Stock = [.. v.Get(Materials).SelectMany(m => m.Thicknesses.Select(t => new Stock(m.Material, t)))],
            Dies = v.Get(Dies, []),
            Tools = new()
            {
                // Without a die there is no press brake to assume.
                Press = v.Has(Dies) ? v.Get(Press, ToolSet.Assumed.Press!) : null,
                Punches = v.Has(Dies) ? v.Get(Punches, ToolSet.Assumed.Punches) : [],
                Clamps = v.Get(Clamps, []),
            },
            TestBends = v.Get(TestBends),
            BendRule = v.Get(BendRule),
            BendMarks = v.Get(Marks),
            Rates = v.Has(ShopRatesSection.Rates) ? v.Get(ShopRatesSection.Rates) : ShopRates.InMinutes,
        },
        [
            new([Materials], CheckMaterials),
            new([Materials, ShopRatesSection.Rates], CheckPrices),
            new([Materials, TestBends], CheckTestedSheet),
            new([Dies, Clamps, TestBends], CheckTestedRadius),
            new([Dies, Punches, Press], CheckPress),
        ],
        anyOf: [Dies, Clamps]);

    /// <summary>Whether two lengths (mm) are the same, written perhaps in two units.</summary>
    /// <remarks>The same nanometre by which <see cref="Shop.RuleFor"/> finds a test bend.</remarks>
    public static bool IsSame(double a, double b) => Math.Abs(a - b) < Tolerance.SameSize;

    private static void CheckMaterials(SectionValues values)
    {
        var materials = values.Get(Materials);
        for (var i = 1; i < materials.Length; i++)
        {
            if (materials[..i].Any(m => m.Material.Designation == materials[i].Material.Designation))
            {
                values.ReportItem(Materials, i, "designation", new GivenTwice(Repeated.Designation));
            }
        }
    }

    // Without rates there is no currency: brackets are compared by minutes, and a price would be passed over without a word.
    private static void CheckPrices(SectionValues values)
    {
        var materials = values.Get(Materials);
        for (var i = 0; i < materials.Length && !values.Has(ShopRatesSection.Rates); i++)
        {
            if (materials[i].Material.PricePerKilogram is not null)
            {
                values.ReportItem(Materials, i, MaterialSection.PricePerKilogram.Name, new Contradiction(Contradictory.PriceWithoutRates));
            }
        }
    }

    // A test bend that no sheet or die of the shop matches would be passed over without a word.
    private static void CheckTestedSheet(SectionValues values)
    {
        var (materials, bends) = (values.Get(Materials), values.Get(TestBends));
        for (var i = 0; i < bends.Length; i++)
        {
            var material = materials.FirstOrDefault(m => m.Material.Designation == bends[i].Material);
            if (material is null)
            {
                ImmutableArray<string> names = [.. materials.Select(m => m.Material.Designation)];
                values.ReportItem(TestBends, i, "material", new NameUnknown(names, Nearest.To(bends[i].Material, names), NamedThing.Material));
            }
            else if (!material.Thicknesses.Any(t => IsSame(t, bends[i].Thickness)))
            {
                values.ReportItem(TestBends, i, "thickness", new LengthUnknown(material.Thicknesses, ShopLength.Thickness));
            }
        }
    }

    private static void CheckTestedRadius(SectionValues values)
    {
        var bends = values.Get(TestBends);
        ImmutableArray<double> radii = [.. values.Get(Dies, []).Select(d => d.InsideRadius), .. values.Get(Clamps, []).Select(c => c.Radius)];
        for (var i = 0; i < bends.Length; i++)
        {
            if (!radii.Any(r => IsSame(r, bends[i].InsideRadius)))
            {
                values.ReportItem(TestBends, i, "inside_radius", new LengthUnknown(radii, ShopLength.InsideRadius));
            }
        }
    }

    // A press brake without a die would be passed over without a word.
    private static void CheckPress(SectionValues values)
    {
        foreach (var key in (Key[])[Punches, Press])
        {
            if (values.Has(key) && !values.Has(Dies))
            {
                values.Report(key, new Contradiction(Contradictory.PressWithoutDies));
            }
        }
    }
}
