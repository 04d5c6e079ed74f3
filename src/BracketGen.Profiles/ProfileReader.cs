using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Sections;
using BracketGen.Profiles.Toml;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles;

/// <summary>Reads profile files into the records the program computes with.</summary>
/// <remarks>
/// Does not throw for anything a file may hold: every mistake in every file becomes a <see cref="ProfileError"/>. Bare numbers
/// are in mm, degrees, N m, MPa, GPa (Young's modulus) and kg/m³; what comes out is in internal units (mm, rad, N, N·mm, MPa,
/// t/mm³). Thread-safe as far as the file source is.
/// </remarks>
public static class ProfileReader
{
    /// <summary>Key that says what a file is.</summary>
    internal const string ProfileKey = "profile";

    /// <summary>Reads a job and the throttle body, vehicle and shop it names; a packed job brings them along.</summary>
    /// <param name="path">Path of the job's file.</param>
    /// <param name="files">Where the files come from.</param>
    public static ProfileResult<Job> ReadJob(string path, IFileSource files)
    {
        if (PackedJob.IsAt(path, files))
        {
            var packed = PackedJob.Read(path, files);
            return packed.IsRead ? ReadPlainJob(packed.Value.Under(path).Job, packed.Value.Under(path).Files) : new(null, packed.Errors);
        }

        return ReadPlainJob(path, files);
    }

    private static ProfileResult<Job> ReadPlainJob(string path, IFileSource files)
    {
        var reading = new Reading(files);
        if (Open(path, ProfileKind.Job, reading, named: null) is not { } table)
        {
            return new(null, reading.Errors);
        }

        var isRead = JobSection.Form.TryRead(table, "", reading, ProfileKey, out var file);
        var body = Follow(table, JobSection.Body, path, ProfileKind.ThrottleBody, ThrottleBodySection.Form, reading);
        var vehicle = Follow(table, JobSection.Vehicle, path, ProfileKind.Vehicle, VehicleSection.Form, reading);
        var shop = Follow(table, JobSection.Shop, path, ProfileKind.Shop, ShopSection.Form, reading);
        if (isRead && shop is not null)
        {
            CheckMaterials(file!.Preferences, shop, reading);
        }

        var job = isRead && body is not null && vehicle is not null && shop is not null
            ? new Job
            {
                Body = body,
                Vehicle = vehicle,
                Shop = shop,
                Preferences = file!.Preferences.Preferences,
                Units = file.Units,
                Document = file.Document,
                Bulkhead = file.Bulkhead,
            }
            : null;
        return new(job, reading.Errors);
    }

    /// <summary>Reads a throttle body's file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="files">Where the files come from.</param>
    public static ProfileResult<ThrottleBody> ReadThrottleBody(string path, IFileSource files) =>
        ReadAlone(path, files, ProfileKind.ThrottleBody, ThrottleBodySection.Form);

    /// <summary>Reads a vehicle's file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="files">Where the files come from.</param>
    public static ProfileResult<Vehicle> ReadVehicle(string path, IFileSource files) =>
        ReadAlone(path, files, ProfileKind.Vehicle, VehicleSection.Form);

    /// <summary>Reads a shop's file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="files">Where the files come from.</param>
    public static ProfileResult<Shop> ReadShop(string path, IFileSource files) =>
        ReadAlone(path, files, ProfileKind.Shop, ShopSection.Form);

    private static ProfileResult<T> ReadAlone<T>(string path, IFileSource files, ProfileKind kind, Section<T> form)
        where T : class
    {
        var reading = new Reading(files);
        var value = Read(path, kind, form, reading, named: null);
        return new(value, reading.Errors);
    }

    private static T? Read<T>(string path, ProfileKind kind, Section<T> form, Reading reading, Located<string>? named)
        where T : class =>
        Open(path, kind, reading, named) is { } table && form.TryRead(table, "", reading, ProfileKey, out var value) ? value : null;

    private static T? Follow<T>(TomlTable job, Key<string> key, string jobPath, ProfileKind kind, Section<T> form, Reading reading)
        where T : class => Follow(job, key, jobPath, kind, form, reading, out _);

    // The file a job names, when the name itself is good; a bad name was reported with the job.
    internal static T? Follow<T>(
        TomlTable job, Key<string> key, string jobPath, ProfileKind kind, Section<T> form, Reading reading, out TomlTable? table)
        where T : class
    {
        table = null;
        var silent = new Reading(reading.Files);
        if (job.Find(key.Name)?.Value is { } written && new FileForm().TryRead(written, key.Name, silent, out var relative)
            && !reading.IsHushed(written.Place.File, written.Place.Line))
        {
            table = Open(ProfilePath.Beside(jobPath, relative), kind, reading, new(relative, key.Name, written));
        }

        return table is not null && form.TryRead(table, "", reading, ProfileKey, out var value) ? value : null;
    }

    internal static TomlTable? Open(string path, ProfileKind kind, Reading reading, Located<string>? named)
    {
        var tidy = ProfilePath.Tidy(path);
        reading.Begin(tidy);
        var file = reading.Files.Read(tidy, TomlFile.Most);
        var problem = file.State switch
        {
            FileState.Missing => ("no such file", "a file that is there", "Check the path and its spelling, capital letters too."),
            FileState.TooLong => ("a longer file", "a file of at most 1 MiB", "This is hardly a profile: check the path."),
            FileState.Closed => ("a file that cannot be read", "a file that may be read", "Check the path and the permissions of the file."),
            _ => default,
        };
        if (problem is ({ } read, { } allowed, { } advice))
        {
            if (named is null)
            {
                reading.Report(new(tidy, 0, 0), "", read, allowed, advice);
            }
            else
            {
                reading.Report(named.Written.Place, named.Key, $"{named.Written.Written}: {read} at {tidy}", allowed, advice);
            }

            return null;
        }

        return TomlFile.Read(tidy, file.Bytes, reading) is { } table && IsKind(table, kind, reading) ? table : null;
    }

    // A file of another kind would give an error for every key: one is enough.
    private static bool IsKind(TomlTable table, ProfileKind kind, Reading reading)
    {
        var first = $"profile = \"{kind.Word}\"";
        switch (table.Find(ProfileKey)?.Value)
        {
            case null:
                reading.ReportMissing(table.Place, ProfileKey, first, $"Begin the file with the line {first}.");
                return true;
            case TomlText { Text: var word } when word == kind.Word:
                return true;
            case TomlText { Text: var word } other when ProfileKind.All.Any(k => k.Word == word):
                reading.Report(other, ProfileKey, first, $"This file is the profile of a {word}; a {kind.Word} is wanted here. Check which file is named where.");
                return false;
            case { } other:
                reading.Report(other, ProfileKey, first, $"Begin the file with the line {first}.");
                return true;
        }
    }

    internal static void CheckMaterials(LocatedPreferences preferences, Shop shop, Reading reading)
    {
        var stocked = shop.Stock.Select(s => s.Material.Designation).Distinct().ToArray();
        foreach (var material in preferences.Materials.Where(m => !stocked.Contains(m.Value)))
        {
            var near = Nearest.To(material.Value, stocked);
            reading.Report(
                material.Written,
                material.Key,
                string.Join(" or ", stocked.Select(s => $"\"{s}\"")),
                near is null ? $"{shop.Name} has no such sheet: name what it has in stock." : $"Did you mean \"{near}\"?");
        }
    }
}
