using System.Collections.Immutable;
using BracketGen.Profiles.Family;
using BracketGen.Units;

namespace BracketGen.Line.Combinations;

/// <summary>A source that combinations are made from: a file, or what the family says.</summary>
/// <param name="Name">"vehicle PLV", "shop", "option N".</param>
/// <param name="Hash">Hash of its facts.</param>
/// <param name="Facts">What it says.</param>
public sealed record Source(string Name, string Hash, ImmutableArray<Fact> Facts);

/// <summary>The sources of every combination of a family, each hashed once.</summary>
public sealed class CombinationInputs
{
    private readonly Dictionary<string, Source> _vehicles, _bodies, _materials, _options;
    private readonly Source _shop;
    private readonly string _program;

    /// <summary>The sources of <paramref name="family"/>.</summary>
    /// <param name="family">The family.</param>
    /// <param name="program">Version of the program: another one makes everything anew.</param>
    public CombinationInputs(LoadedFamily family, string program)
    {
        _program = program;
        _shop = Make("shop", family.ShopFacts);
        _vehicles = family.Vehicles.ToDictionary(v => v.Code, v => Make($"vehicle {v.Code}", v.Facts));
        _bodies = family.Bodies.ToDictionary(b => b.Code, b => Make($"throttle body {b.Code}", b.Facts));
        _materials = family.Family.Materials.ToDictionary(m => m.Code, m => Make(
            Named("material", m.Code),
            [new("name", m.Name), .. m.Designations.Select((d, i) => new Fact(FormattableString.Invariant($"designations[{i + 1}]"), d))]));
        var document = family.Family.Document;
        _options = family.Options.ToDictionary(o => o.Option.Code, o => Make(
            Named("option", o.Option.Code),
            [
                new("name", o.Option.Name),
                .. o.Facts.Select(f => new Fact("preferences." + f.Key, f.Value)),
                new("units", family.Family.Units == UnitSystem.Inch ? "Inch" : "Millimetre"),
                new("document.title", document.Title),
                new("document.date", document.Date?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) ?? "none"),
                new("document.creator", document.Creator ?? "none"),
                new("document.approver", document.Approver ?? "none"),
                new("document.projection", document.Projection.ToString()),
            ]));
    }

    /// <summary>The sources of a combination.</summary>
    public ImmutableArray<Source> Of(Combination combination) =>
    [
        _vehicles[combination.Vehicle.Code], _bodies[combination.Body.Code], _shop, _materials[combination.Material.Code],
        _options[combination.Option.Option.Code],
    ];

    /// <summary>Hash of all that a combination is made from, the program's version among it.</summary>
    public string HashOf(Combination combination) => InputHash.OfTexts(Of(combination).Select(s => s.Hash).Append(_program));

    private static Source Make(string name, ImmutableArray<Fact> facts) => new(name, InputHash.Of(facts), facts);

    private static string Named(string what, string code) => code.Length > 0 ? $"{what} {code}" : what;
}
