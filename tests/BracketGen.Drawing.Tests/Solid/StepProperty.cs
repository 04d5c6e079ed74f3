using System.Text.RegularExpressions;

namespace BracketGen.Drawing.Tests.Solid;

/// <summary>A property of a STEP file, found by following the references from its definition.</summary>
/// <param name="Name">Name of the property.</param>
/// <param name="Description">Its description.</param>
/// <param name="Of">Entity that has it, up to its first parameter.</param>
/// <param name="Item">The item that says it, without its unit.</param>
/// <param name="Unit">The unit; empty if it has none.</param>
internal sealed partial record StepProperty(string Name, string Description, string Of, string Item, string Unit)
{
    /// <summary>All of a file, in order.</summary>
    public static IReadOnlyList<StepProperty> AllOf(string file)
    {
        var data = Instance.Matches(file).ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);
        string[] Named(string value) => [.. Reference.Matches(value).Select(m => m.Value)];
        return [.. data.Where(d => d.Value.StartsWith("PROPERTY_DEFINITION(", StringComparison.Ordinal)).Select(d =>
        {
            var link = data.Values.Single(v => v.StartsWith($"PROPERTY_DEFINITION_REPRESENTATION({d.Key},", StringComparison.Ordinal));
            var representation = data[Named(link)[1]];
            Assert.StartsWith("REPRESENTATION('", representation, StringComparison.Ordinal);
            var names = Named(representation);
            Assert.StartsWith("(GEOMETRIC_REPRESENTATION_CONTEXT(3)", data[names[1]], StringComparison.Ordinal);
            var item = data[names[0]];
            var unit = Named(item).SingleOrDefault();
            var texts = Text.Matches(d.Value);
            var of = data[Named(d.Value).Single()];
            return new StepProperty(
                texts[0].Groups[1].Value, texts[1].Groups[1].Value, of[..(of.IndexOf(',') < 0 ? ^0 : of.IndexOf(','))],
                unit is null ? item : item[..item.LastIndexOf(',')], unit is null ? "" : UnitOf(data[unit]));
        })];

        string UnitOf(string value) => value switch
        {
            "(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))" => "mm",
            "(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.CENTI.,.METRE.))" => "cm",
            "(MASS_UNIT()NAMED_UNIT(*)SI_UNIT($,.GRAM.))" => "g",
            "(MASS_UNIT()NAMED_UNIT(*)SI_UNIT(.KILO.,.GRAM.))" => "kg",
            _ when value.StartsWith("DERIVED_UNIT((", StringComparison.Ordinal) => string.Join(' ', Named(value).Select(n => UnitOf(data[n]))),
            _ when Element.Match(value) is { Success: true } element => $"{UnitOf(data[element.Groups[1].Value])}^{element.Groups[2].Value}",
            _ => throw new InvalidOperationException($"Not a unit: {value}"),
        };
    }

    [GeneratedRegex(@"^(#\d+)=(.*);$", RegexOptions.Multiline)]
    private static partial Regex Instance { get; }

    [GeneratedRegex(@"#\d+")]
    private static partial Regex Reference { get; }

    [GeneratedRegex("'((?:[^']|'')*)'")]
    private static partial Regex Text { get; }

    [GeneratedRegex(@"^DERIVED_UNIT_ELEMENT\((#\d+),(-?\d+)\.\)$")]
    private static partial Regex Element { get; }
}
