using System.Collections.Immutable;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[[exclusions]]</c> of a family: what is not offered, and why.</summary>
internal static class ExclusionSection
{
    private static readonly Key<string> Vehicle = OfCode("vehicle", "Code of the vehicle. If left out: any.");

    private static readonly Key<string> Body = OfCode("throttle_body", "Code of the throttle body. If left out: any.");

    private static readonly Key<string> Material = OfCode("material", "Code of the material. If left out: any.");

    private static readonly Key<string> Option = OfCode("option", "Code of the option. If left out: any.");

    private static readonly Key<string> Reason = new("reason", new TextForm(120), "The reason; the catalogue prints it.");

    public static readonly Key<ImmutableArray<Exclusion>> Exclusions = Key<ImmutableArray<Exclusion>>.WithDefault(
        "exclusions",
        new ListForm<Exclusion>(
            new Section<Exclusion>(
                [Vehicle, Body, Material, Option, Reason],
                v => new(Given(v, Vehicle), Given(v, Body), Given(v, Material), Given(v, Option), v.Get(Reason))),
            0, 10_000),
        "Variants that are not sold.",
        []);

    private static Key<string> OfCode(string name, string help) => new(name, new CodeForm(), help, isRequired: false);

    private static string? Given(SectionValues values, Key<string> key) => values.Has(key) ? values.Get(key) : null;
}
