using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Design.Inputs;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>A job's file before the files it names are read.</summary>
internal sealed record JobFile(LocatedPreferences Preferences, UnitSystem Units, DocumentData Document, Bulkhead? Bulkhead);

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
        "Unit of what comes out. What goes in is in the units written beside the values.",
        UnitSystem.Metric);

    private static readonly Key<LocatedPreferences> Preferences = Key<LocatedPreferences>.WithDefault(
        "preferences", PreferencesSection.Form, "What is wanted of the bracket.", new(new(), []));

    private static readonly Key<DocumentData> Document = new("document", DocumentSection.Form, "What the title block says.");

    private static readonly Key<Bulkhead> Exit = new(
        "bulkhead", BulkheadSection.Form, "Where the outer comes out of the bulkhead; left out: its way is not looked at.", isRequired: false);

    public static Section<JobFile> Form { get; } = new(
        "a job",
        [Body, Vehicle, Shop, Units, Preferences, Exit, Document],
        v => new(v.Get(Preferences), v.Get(Units), v.Get(Document), v.Has(Exit) ? v.Get(Exit) : null));
}

/// <summary>Path of another profile, from the folder of the file that names it.</summary>
internal sealed class FileForm : Form<string>
{
    public override string Allowed => "a path from this file's folder, with forward slashes: \"../vehicles/name.toml\"";

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out string result)
    {
        result = (value as TomlText)?.Text;
        var advice = result switch
        {
            null => "Put the path in quotes.",
            _ when result.Trim().Length == 0 || result.Length > 500 || result.Any(char.IsControl) => "Write the path of a file between the quotes.",
            _ when ProfilePath.IsAbsolute(result) => "Write the path as seen from this file's folder, so that the files can move together.",
            _ when result.Contains('\\') => "Write forward slashes, they work on every system.",
            _ => null,
        };
        if (advice is not null)
        {
            reading.Report(value, key, Allowed, advice);
        }

        return advice is null;
    }

    public override JsonObject Schema() => new() { ["type"] = "string", ["minLength"] = 1, ["maxLength"] = 500, ["pattern"] = "^[^\\\\]*[^\\\\ ][^\\\\]*$" };
}
