using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Paths;
using BracketGen.Profiles.Toml;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>A job's file before the files it names are read.</summary>
internal sealed record JobFile(LocatedPreferences Preferences, UnitSystem Units, DocumentData Document, Bulkhead? Bulkhead, EngineMovement Movement, ServiceLife Life, Vector3? Up, ChosenBracket? Chosen, Finish? Finish, ImmutableArray<LocatedUse> OtherCables, KitWishes Kit);

/// <summary>A job's file.</summary>
internal static class JobSection
{
    /// <summary>Path of the throttle body's file.</summary>
    public static readonly Key<string> Body = new("throttle_body", new FileForm(), "File of the throttle body, from this file's folder.");

    /// <summary>Path of the vehicle's file.</summary>
    public static readonly Key<string> Vehicle = new("vehicle", new FileForm(), "File of the vehicle, from this file's folder.");

    /// <summary>Path of the shop's file.</summary>
    public static readonly Key<string> Shop = new("shop", new FileForm(), "File of the shop, from this file's folder.");

    private static readonly Key<UnitSystem> Units = Key<UnitSystem>.WithDefault(
        "units",
        new WordForm<UnitSystem>(("mm", UnitSystem.Metric), ("in", UnitSystem.Inch)),
        "Units of the outputs. Inputs have the units written with them.",
        UnitSystem.Metric);

    private static readonly Key<LocatedPreferences> Preferences = Key<LocatedPreferences>.WithDefault(
        "preferences", PreferencesSection.Form, "What the bracket must do.", new(new(), []));

    private static readonly Key<DocumentData> Document = new("document", DocumentSection.Form, "What the title block says.");

    private static readonly Key<Bulkhead> Exit = new(
        "bulkhead", BulkheadSection.Form, "Where the outer comes out of the bulkhead. If left out, the route is not checked.", isRequired: false);

    private static readonly Key<EngineMovement> Movement = Key<EngineMovement>.WithDefault(
        "engine_movement", EngineMovementSection.Form,
        "How far the throttle body moves against the bulkhead as the engine rocks in its mounts. If left out: assumed, 10 mm along each axis and 3 degrees about any (common practice, no source).",
        EngineMovement.Usual);

    private static readonly Key<ServiceLife> Life = Key<ServiceLife>.WithDefault(
        "life", LifeSection.Form, "How long the bracket must last, and how hot it gets.", new());

    private static readonly Key<Vector3> Up = new(
        "up", VectorForm.Direction, "Which way is up with the engine in its place, throttle frame; of any length. If left out, the picture of the fitted bracket shows y instead.", isRequired: false);

    private static readonly Key<ChosenBracket> Chosen = new(
        "chosen", ChosenSection.Form, "The bracket that was chosen, to be made again. If left out: the best is made.", isRequired: false);

    private static readonly Key<Finish> Finish = new(
        "finish", FinishSection.Form, "Finish of this bracket, whatever it is made of. If left out: that of the material in the shop's file.", isRequired: false);

    private static readonly Key<ImmutableArray<LocatedUse>> OtherCables = Key<ImmutableArray<LocatedUse>>.WithDefault(
        "other_cables", new ListForm<LocatedUse>(CableUseSection.Form, 0, 8), "What becomes of the vehicle's cables that do not come from the pedal.", []);

    private static readonly Key<KitWishes> Kit = Key<KitWishes>.WithDefault(
        "kit", KitSection.Form, "The parts at hand that make the throttle body complete, for the command kit.", KitWishes.None);

    /// <summary>The units that a job's or family's file asks for, before the file is read; those of an absent key where it says none that is known.</summary>
    public static UnitSystem UnitsOf(TomlTable table) => table.Find(Units.Name)?.Value is TomlText { Text: "in" } ? UnitSystem.Inch : UnitSystem.Metric;

    public static Section<JobFile> Form { get; } = new(
        [Body, Vehicle, Shop, Units, Preferences, Exit, Movement, Life, Up, Document, Finish, Chosen, OtherCables, Kit],
        v => new(v.Get(Preferences), v.Get(Units), v.Get(Document), v.Has(Exit) ? v.Get(Exit) : null, v.Get(Movement), v.Get(Life), v.Has(Up) ? v.Get(Up).Unit : null, v.Has(Chosen) ? v.Get(Chosen) : null, v.Has(Finish) ? v.Get(Finish) : null, v.Get(OtherCables), v.Get(Kit)));
}

/// <summary>Path of another profile, from the folder of the file that names it.</summary>
internal sealed class FileForm : Form<string>
{
    public override AllowedValue Allowed => new AllowedPattern(TextPattern.ProfilePath);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out string result)
    {
        result = (value as TomlText)?.Text;
        ValueMistake? mistake = result switch
        {
            null => ValueMistake.NotText,
            _ when result.Trim().Length == 0 || result.Length > 500 || result.Any(char.IsControl) => ValueMistake.NotThePattern,
            _ when ProfilePath.IsAbsolute(result) => ValueMistake.AbsolutePath,
            _ when result.Contains('\\') => ValueMistake.Backslash,
            _ => null,
        };
        if (mistake is { } wrong)
        {
            Report(value, key, reading, wrong);
        }

        return mistake is null;
    }

    public override JsonObject Schema(SharedSchemas shared) => new() { ["type"] = "string", ["minLength"] = 1, ["maxLength"] = 500, ["pattern"] = "^[^\\\\]*[^\\\\ ][^\\\\]*$" };
}
