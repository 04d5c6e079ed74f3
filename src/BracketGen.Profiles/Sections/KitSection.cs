using System.Collections.Immutable;
using BracketGen.Design.Kit;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary>What a job says of its kit, before the lists are read.</summary>
/// <param name="Files">The lists of parts.</param>
/// <param name="Water">What becomes of passages for water; null where it does not say.</param>
/// <param name="Without">What is not needed.</param>
internal sealed record KitWishes(ImmutableArray<Located<string>> Files, WaterUse? Water, ImmutableArray<KitNeedKind> Without)
{
    public static readonly KitWishes None = new([], null, []);
}

/// <summary><c>[kit]</c> of a job.</summary>
internal static class KitSection
{
    private static readonly Key<ImmutableArray<Located<string>>> Parts = new(
        "parts", new ListForm<Located<string>>(new LocatedForm<string>(new FileForm()), 1, 8), "Files of the lists of parts at hand, from this file's folder.");

    private static readonly Key<WaterUse> Water = new(
        "water", new WordForm<WaterUse>(("used", WaterUse.Used), ("capped", WaterUse.Capped)),
        "What becomes of passages for water under the idle valve. If left out, it is not known.", isRequired: false);

    // Cable, springs and bracket are never left out: what is there then counts.
    private static readonly Key<ImmutableArray<KitNeedKind>> Without = Key<ImmutableArray<KitNeedKind>>.WithDefault(
        "without",
        new ListForm<KitNeedKind>(
            new WordForm<KitNeedKind>(
                ("bracket bolts", KitNeedKind.BracketBolts), ("pedal stop", KitNeedKind.PedalStop), ("position sensor", KitNeedKind.PositionSensor), ("sensor screws", KitNeedKind.SensorScrews),
                ("idle valve", KitNeedKind.IdleValve), ("idle gasket", KitNeedKind.IdleGasket), ("idle screws", KitNeedKind.IdleScrews), ("pressure sensor", KitNeedKind.PressureSensor),
                ("pressure screws", KitNeedKind.PressureScrews), ("flange gasket", KitNeedKind.FlangeGasket)),
            0, 10),
        "What this vehicle does not need. A part that is left out leaves out its gasket and screws.", []);

    public static Section<KitWishes> Form { get; } = new([Parts, Water, Without], v => new(v.Get(Parts), v.OrNull(Water), v.Get(Without)));
}
