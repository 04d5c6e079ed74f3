using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>A family's file, its options' preferences not yet put over the line's own, nor its rates over the shop's, nor its offcuts' outlines read.</summary>
internal sealed record FamilyFile(ProductFamily Family, ImmutableArray<OptionFile> Options, LocatedPreferences Preferences, Func<ShopRates, Rates> Rates, ImmutableArray<OffcutFile> Offcuts);

/// <summary>An option with the table of its preferences, where it has one.</summary>
internal sealed record OptionFile(string Code, string Name, TomlTable? Written);

/// <summary>A family's file: a product line.</summary>
internal static class FamilySection
{
    private static readonly Key<string> Name = new("name", new TextForm(60), "Name of the line.");

    /// <summary>Path of the shop's file.</summary>
    public static readonly Key<string> Shop = new("shop", new FileForm(), "File of the shop, from this file's folder.");

    private static readonly Key<UnitSystem> Units = Key<UnitSystem>.WithDefault(
        "units", new WordForm<UnitSystem>(("mm", UnitSystem.Metric), ("in", UnitSystem.Inch)), "Units of the outputs.", UnitSystem.Metric);

    private static readonly Key<string> Code = new("code", new CodeForm(), "Its code in part numbers: letters and digits.");

    private static readonly Key<string> File = new("file", new FileForm(), "Its file, from this file's folder.");

    private static readonly Section<Member> MemberForm = new([Code, File], v => new(v.Get(Code), v.Get(File)));

    private static readonly Key<ImmutableArray<Member>> Vehicles = new(
        "vehicles", new ListForm<Member>(MemberForm, 1, 500), "The vehicles of the line.");

    private static readonly Key<ImmutableArray<Member>> Bodies = new(
        "throttle_bodies", new ListForm<Member>(MemberForm, 1, 500), "The throttle bodies of the line.");

    private static readonly Key<string> ChoiceName = new("name", new TextForm(40), "What the customer reads.");

    private static readonly Key<ImmutableArray<string>> Designations = new(
        "designations", new ListForm<string>(new TextForm(60), 1, 50), "Designations of the shop's materials that count as this choice.");

    private static readonly Key<ImmutableArray<MaterialChoice>> Materials = Key<ImmutableArray<MaterialChoice>>.WithDefault(
        "materials",
        new ListForm<MaterialChoice>(
            new Section<MaterialChoice>([Code, ChoiceName, Designations], v => new(v.Get(Code), v.Get(ChoiceName), v.Get(Designations))), 0, 20),
        "The materials a customer may choose from. If left out: one choice, by the preferences.",
        []);

    private static readonly Key<TomlTable?> OptionPreferences = new(
        "preferences", new WrittenSection(PreferencesSection.Form), "Preferences that this option changes.", isRequired: false);

    private static readonly Key<ImmutableArray<OptionFile>> Options = Key<ImmutableArray<OptionFile>>.WithDefault(
        "options",
        new ListForm<OptionFile>(
            new Section<OptionFile>([Code, ChoiceName, OptionPreferences], v => new(v.Get(Code), v.Get(ChoiceName), v.Has(OptionPreferences) ? v.Get(OptionPreferences) : null)), 0, 50),
        "What else a customer may choose. If left out: nothing.",
        []);

    private static readonly Key<LocatedPreferences> Preferences = Key<LocatedPreferences>.WithDefault(
        "preferences", PreferencesSection.Form, "What every bracket of the line must do.", new(new(), []));

    private static readonly Key<ServiceLife> Life = Key<ServiceLife>.WithDefault(
        "life", LifeSection.Form, "How long every bracket of the line must last, and how hot it gets.", new());

    public static Section<FamilyFile> Form { get; } = new(
        [
            Name, Shop, Units, Vehicles, Bodies, Materials, Options, ExclusionSection.Exclusions, NumberSection.Numbers, Preferences, Life,
            FamilyDocumentSection.Document, CuttingSection.Cutting, RatesSection.Rates,
        ],
        v => new(
            new()
            {
                Name = v.Get(Name),
                ShopFile = v.Get(Shop),
                Units = v.Get(Units),
                Vehicles = v.Get(Vehicles),
                Bodies = v.Get(Bodies),
                Materials = v.Get(Materials) is { IsEmpty: false } some ? some : [new("", "", [])],
                Options = [],
                Exclusions = v.Get(ExclusionSection.Exclusions),
                Numbers = v.Get(NumberSection.Numbers),
                Life = v.Get(Life),
                Document = v.Get(FamilyDocumentSection.Document),
                Cutting = v.Get(CuttingSection.Cutting).Plan,
                Rates = new(),
            },
            v.Get(Options), v.Get(Preferences), v.Get(RatesSection.Rates), v.Get(CuttingSection.Cutting).Offcuts),
        [
            new([Vehicles], v => CheckCodes(v, Vehicles, v.Get(Vehicles).Select(m => m.Code))),
            new([Bodies], v => CheckCodes(v, Bodies, v.Get(Bodies).Select(m => m.Code))),
            new([Materials], v => CheckCodes(v, Materials, v.Get(Materials).Select(m => m.Code))),
            new([Options], v => CheckCodes(v, Options, v.Get(Options).Select(m => m.Code))),
            new([Vehicles, Bodies, Materials, Options, ExclusionSection.Exclusions], CheckExclusions),
            new([Vehicles, Bodies, Materials, Options, NumberSection.Numbers], CheckPattern),
        ]);

    private static void CheckCodes(SectionValues values, Key list, IEnumerable<string> codes)
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var (code, item) in codes.Select((c, i) => (c, i)))
        {
            if (!seen.Add(code))
            {
                values.ReportItem(list, item, "code", new GivenTwice(Repeated.Code));
            }
        }
    }

    private static void CheckExclusions(SectionValues values)
    {
        foreach (var (exclusion, item) in values.Get(ExclusionSection.Exclusions).Select((e, i) => (e, i)))
        {
            void Known(string key, string? code, IEnumerable<string> codes)
            {
                ImmutableArray<string> all = [.. codes];
                if (code is not null && !all.Contains(code))
                {
                    values.ReportItem(ExclusionSection.Exclusions, item, key, new NameUnknown(all, Nearest.To(code, all), NamedThing.Code));
                }
            }

            Known("vehicle", exclusion.Vehicle, values.Get(Vehicles).Select(m => m.Code));
            Known("throttle_body", exclusion.Body, values.Get(Bodies).Select(m => m.Code));
            Known("material", exclusion.Material, values.Get(Materials).Select(m => m.Code));
            Known("option", exclusion.Option, values.Get(Options).Select(m => m.Code));
        }
    }

    // Without a running number, whatever there are several of must stand in the number.
    private static void CheckPattern(SectionValues values)
    {
        var pattern = values.Get(NumberSection.Numbers).Pattern;
        ImmutableArray<string> missing = pattern.Contains("{serial}", StringComparison.Ordinal)
            ? []
            :
            [
                .. new[]
                {
                    ("{vehicle}", values.Get(Vehicles).Length), ("{throttle_body}", values.Get(Bodies).Length),
                    ("{material}", values.Get(Materials).Length), ("{option}", values.Get(Options).Length),
                }.Where(p => p.Item2 > 1 && !pattern.Contains(p.Item1, StringComparison.Ordinal)).Select(p => p.Item1),
            ];
        if (missing.Length > 0)
        {
            values.Report(NumberSection.Numbers, new NumbersAlike(missing));
        }
    }
}
