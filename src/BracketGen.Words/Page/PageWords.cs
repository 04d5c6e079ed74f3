using System.Text.Json;
using System.Text.Json.Serialization;
using BracketGen.Units;

namespace BracketGen.Words.Page;

/// <summary>Every sentence that the page's own document and scripts show, and the units they convert; the page gets both as one JSON.</summary>
/// <remarks>A word in braces stands for what the page fills in: "{count} mistakes".</remarks>
public static class PageWords
{
    /// <summary>The words by section and name.</summary>
    public static IReadOnlyDictionary<string, Dictionary<string, string>> Sections { get; } = new Dictionary<string, Dictionary<string, string>>
    {
        ["frame"] = FrameWords.All,
        ["keys"] = KeyWords.All,
        ["pairing"] = PairingWords.All,
        ["start"] = StartWords.All,
        ["newJob"] = NewJobWords.All,
        ["measuring"] = MeasuringWords.All,
        ["printed"] = PrintedWords.All,
        ["photo"] = PhotoWords.All,
        ["photoParts"] = PhotoWords.Parts,
        ["photoGiven"] = PhotoWords.Given,
        ["profiles"] = NumberWords.Profiles,
        ["numbers"] = NumberWords.All,
        ["fields"] = NumberWords.Fields,
        ["pictures"] = PictureWords.All,
        ["over"] = OverWords.All,
        ["section"] = OverWords.Section,
        ["cuts"] = OverWords.Cuts,
        ["views"] = AnswerWords.Views,
        ["answers"] = AnswerWords.All,
        ["bracket"] = BracketWords.All,
        ["bracketLabels"] = BracketWords.Labels,
        ["more"] = MoreWords.All,
        ["kit"] = KitWords.All,
        ["kitFiles"] = KitWords.Files,
        ["fitted"] = FittedWords.All,
        ["fittedReadings"] = FittedWords.Readings,
        ["fittedUnits"] = FittedWords.UnitOf,
        ["testBend"] = TestBendPageWords.All,
        ["testBendValues"] = TestBendPageWords.Values,
        ["testBendUnits"] = TestBendPageWords.UnitOf,
        ["line"] = LinePageWords.All,
        ["lineWishes"] = LinePageWords.Wishes,
        ["files"] = FileWords.Files,
        ["outputs"] = FileWords.All,
    };

    /// <summary>For each unit of a profile that an inch job shows otherwise: its counterpart, and how many of it one counterpart is.</summary>
    public static IReadOnlyList<PageUnit> Units { get; } =
    [
        .. from quantity in Enum.GetValues<Quantity>()
           let metric = UnitSystem.Metric.UnitOf(quantity)
           let inch = UnitSystem.Inch.UnitOf(quantity)
           where metric != inch && UnitTable.All.Contains(metric) && UnitTable.All.Contains(inch)
           select new PageUnit(metric.Name, inch.Name, inch.Factor / metric.Factor),
    ];

    /// <summary>Words and units as JSON. It can stand in an HTML script element: no <c>&lt;</c> is left in it.</summary>
    public static string Json { get; } = JsonSerializer.Serialize(new PageWordsDocument(Sections, Units), PageWordsContext.Default.PageWordsDocument);
}

/// <summary>A unit of the profiles and what an inch job shows in its place.</summary>
/// <param name="Metric">The profile's own unit: "mm".</param>
/// <param name="Inch">The unit shown: "in".</param>
/// <param name="Factor">How many of the profile's unit one of the shown unit is: 25.4.</param>
public sealed record PageUnit(string Metric, string Inch, double Factor);

/// <summary>What the page gets.</summary>
internal sealed record PageWordsDocument(IReadOnlyDictionary<string, Dictionary<string, string>> Words, IReadOnlyList<PageUnit> Units);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(PageWordsDocument))]
internal sealed partial class PageWordsContext : JsonSerializerContext;
