using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Kit;
using BracketGen.Design.Part;
using BracketGen.Profiles.Dxf;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Paths;
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

    /// <summary>Key of a bracket's file that names its flat pattern.</summary>
    public const string FlatPatternKey = FlatBracketSection.PatternKey;

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

    /// <summary>Reads a job with the lists of parts it names, and the brackets on them; a packed job brings them along.</summary>
    /// <param name="path">Path of the job's file.</param>
    /// <param name="files">Where the files come from.</param>
    public static ProfileResult<KitJob> ReadKit(string path, IFileSource files)
    {
        if (PackedJob.IsAt(path, files))
        {
            var packed = PackedJob.Read(path, files);
            if (!packed.IsRead)
            {
                return new(null, packed.Errors);
            }

            (path, files) = packed.Value.Under(path);
        }

        var reading = new Reading();
        var (job, wishes) = ReadPlainJob(path, files, reading);
        List<KitPart> parts = [];
        var named = wishes?.Files ?? [];
        for (var i = 0; i < named.Length; i++)
        {
            if (named[..i].Any(f => f.Value == named[i].Value))
            {
                named[i].Written.Report(named[i].Key, reading, new GivenTwice(Repeated.PartsFile));
            }

            parts.AddRange(Parts(ProfilePath.Beside(path, named[i].Value), files, reading, job?.Shop, named[i])?.Parts ?? []);
        }

        return new(job is null || wishes is null ? null : new(job, [.. parts]) { HasLists = named.Length > 0, Water = wishes.Water, Without = wishes.Without }, reading.Errors);
    }

    /// <summary>Reads a list of parts, and the brackets on it.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="files">Where the files come from.</param>
    /// <param name="shop">The shop whose materials the brackets may name; null where only the files themselves are looked at.</param>
    public static ProfileResult<PartsList> ReadParts(string path, IFileSource files, Shop? shop = null)
    {
        var reading = new Reading();
        var list = Parts(path, files, reading, shop, named: null);
        return new(list, reading.Errors);
    }

    /// <summary>Reads an order of a product line.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="files">Where the files come from.</param>
    public static ProfileResult<Family.LineOrder> ReadOrder(string path, IFileSource files)
    {
        var reading = new Reading();
        return Open(path, ProfileKind.Order, files, reading, named: null) is { } table && OrderSection.Form.TryRead(table, "", reading, ProfileKey, out var order)
            ? new(order, reading.Errors)
            : new(null, reading.Errors);
    }

    private static PartsList? Parts(string path, IFileSource files, Reading reading, Shop? shop, Located<string>? named)
    {
        if (Open(path, ProfileKind.Parts, files, reading, named) is not { } table || !PartsSection.Form.TryRead(table, "", reading, ProfileKey, out var file))
        {
            return null;
        }

        List<KitPart> parts = [];
        foreach (var entry in file.Entries)
        {
            var bracket = entry.File is { } its ? Bracket(ProfilePath.Beside(path, its.Value), files, reading, shop, its) : null;
            if (entry.File is null || bracket is not null)
            {
                parts.Add(entry.WithBracket(bracket));
            }
        }

        return new(file.Name, [.. parts]);
    }

    private static ProfileResult<Job> ReadPlainJob(string path, IFileSource files)
    {
        var reading = new Reading();
        var (job, _) = ReadPlainJob(path, files, reading);
        return new(job, reading.Errors);
    }

    private static (Job? Job, KitWishes? Kit) ReadPlainJob(string path, IFileSource files, Reading reading)
    {
        if (Open(path, ProfileKind.Job, files, reading, named: null) is not { } table)
        {
            return (null, null);
        }

        reading.Units = JobSection.UnitsOf(table);
        var isRead = JobSection.Form.TryRead(table, "", reading, ProfileKey, out var file);
        var body = Follow(table, JobSection.Body, path, files, ProfileKind.ThrottleBody, ThrottleBodySection.Form, reading);
        var vehicle = Follow(table, JobSection.Vehicle, path, files, ProfileKind.Vehicle, VehicleSection.Form, reading);
        var shop = Follow(table, JobSection.Shop, path, files, ProfileKind.Shop, ShopSection.Form, reading);
        if (isRead && shop is not null)
        {
            CheckMaterials(file!.Preferences, shop, reading);
        }

        if (isRead && body is not null)
        {
            CheckSlots(file!.Preferences, body, null, reading);
        }

        if (isRead && vehicle is not null)
        {
            CableUseSection.Check(file!.OtherCables, vehicle, body, reading);
        }

        var job = isRead && body is not null && vehicle is not null && shop is not null
            ? new Job
            {
                Body = body,
                Vehicle = vehicle,
                Shop = file!.Finish is { } finish ? shop.Finished(finish) : shop,
                Preferences = file.Preferences.Preferences,
                Units = file.Units,
                Document = file.Document,
                Bulkhead = file.Bulkhead,
                Movement = file.Movement,
                Life = file.Life,
                Up = file.Up,
                Chosen = file.Chosen,
                CableUses = [.. file.OtherCables.Select(u => u.Use)],
            }
            : null;
        return (job, isRead ? file!.Kit : null);
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

    /// <summary>Reads the file of a bracket that is there already.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="files">Where the files come from.</param>
    /// <param name="shop">The shop whose materials it may name; null where only the file itself is looked at.</param>
    public static ProfileResult<MeasuredBracket> ReadBracket(string path, IFileSource files, Shop? shop = null)
    {
        var reading = new Reading();
        var bracket = Bracket(path, files, reading, shop, named: null);
        return new(bracket, reading.Errors);
    }

    private static MeasuredBracket? Bracket(string path, IFileSource files, Reading reading, Shop? shop, Located<string>? named)
    {
        if (Open(path, ProfileKind.Bracket, files, reading, named) is not { } table
            || (table.Find(FlatBracketSection.PatternKey) is null ? BracketSection.Form.TryRead(table, "", reading, ProfileKey, out var whole) ? whole : null : Drawn(table, path, files, reading)) is not { } file)
        {
            return null;
        }

        if (shop is not null && file.Bracket.MetalIn(shop) is null)
        {
            ImmutableArray<string> known = [.. shop.Stock.Select(s => s.Material.Designation).Distinct(), .. SheetClass.All.Select(m => m.Designation), .. SheetLibrary.All.Select(m => m.Designation)];
            file.Material.Written.Report(file.Material.Key, reading, new NameUnknown(known, Nearest.To(file.Material.Value, known), NamedThing.BracketMaterial, shop.Name));
        }

        return file.Bracket;
    }

    private static BracketFile? Drawn(TomlTable table, string path, IFileSource files, Reading reading)
    {
        if (!FlatBracketSection.Form.TryRead(table, "", reading, ProfileKey, out var file))
        {
            return null;
        }

        var pattern = ProfilePath.Tidy(ProfilePath.Beside(path, file.Pattern.Value));
        return Bytes(pattern, files, reading, file.Pattern) is { } bytes
            && DxfReader.Read(pattern, bytes.Span, reading) is { } drawn
            && new FlatBracket(file, drawn, pattern, reading).Read() is { } bracket
                ? new(bracket, file.Material)
                : null;
    }

    private static ProfileResult<T> ReadAlone<T>(string path, IFileSource files, ProfileKind kind, Section<T> form)
        where T : class
    {
        var reading = new Reading();
        var value = Open(path, kind, files, reading, named: null) is { } table && form.TryRead(table, "", reading, ProfileKey, out var read) ? read : null;
        return new(value, reading.Errors);
    }

    private static T? Follow<T>(TomlTable job, Key<string> key, string jobPath, IFileSource files, ProfileKind kind, Section<T> form, Reading reading)
        where T : class => Follow(job, key, jobPath, files, kind, form, reading, out _);

    // The file a job names, when the name itself is good; a bad name was reported with the job.
    internal static T? Follow<T>(
        TomlTable job, Key<string> key, string jobPath, IFileSource files, ProfileKind kind, Section<T> form, Reading reading, out TomlTable? table)
        where T : class
    {
        table = null;
        var silent = new Reading();
        if (job.Find(key.Name)?.Value is { } written && new FileForm().TryRead(written, key.Name, silent, out var relative)
            && !reading.IsHushed(written.Place.File, written.Place.Line))
        {
            table = Open(ProfilePath.Beside(jobPath, relative), kind, files, reading, new(relative, key.Name, written));
        }

        return table is not null && form.TryRead(table, "", reading, ProfileKey, out var value) ? value : null;
    }

    internal static TomlTable? Open(string path, ProfileKind kind, IFileSource files, Reading reading, Located<string>? named)
    {
        var tidy = ProfilePath.Tidy(path);
        return Bytes(tidy, files, reading, named) is { } bytes && TomlFile.Read(tidy, bytes, reading) is { } table && IsKind(table, kind, reading) ? table : null;
    }

    internal static ReadOnlyMemory<byte>? Bytes(string tidy, IFileSource files, Reading reading, Located<string>? named)
    {
        reading.Begin(tidy);
        var file = files.Read(tidy, TomlFile.MaxBytes);
        FileMistake? mistake = file.State switch
        {
            FileState.Missing => FileMistake.Missing,
            FileState.TooLong => FileMistake.TooLong,
            FileState.Closed => FileMistake.Closed,
            FileState.NoFile => FileMistake.NoFile,
            _ => null,
        };
        if (mistake is not { } wrong)
        {
            return file.Bytes;
        }

        if (named is null)
        {
            reading.Report(new(tidy, 0, 0), "", "", new FileUnread(wrong, null));
        }
        else
        {
            named.Written.Report(named.Key, reading, new FileUnread(wrong, tidy));
        }

        return null;
    }

    // A file of another kind would give an error for every key: one is enough.
    private static bool IsKind(TomlTable table, ProfileKind kind, Reading reading)
    {
        var written = table.Find(ProfileKey)?.Value;
        var word = (written as TomlText)?.Text;
        if (written is null)
        {
            reading.ReportMissing(table.Place, ProfileKey, new KindMissing(kind.Word));
            return true;
        }

        if (word == kind.Word)
        {
            return true;
        }

        var isOther = ProfileKind.All.Any(k => k.Word == word);
        written.Report(ProfileKey, reading, new KindWrong(kind.Word, isOther ? word : null));
        return !isOther;
    }

    internal static void CheckMaterials(LocatedPreferences preferences, Shop shop, Reading reading)
    {
        foreach (var material in preferences.Materials)
        {
            CheckStocked(material.Value, shop, material.Written, material.Key, reading);
        }
    }

    /// <summary>Reports a direction of slotted mount holes that does not lie in a body's mount face.</summary>
    internal static void CheckSlots(LocatedPreferences preferences, ThrottleBody body, string? code, Reading reading)
    {
        if (preferences is { Preferences.MountSlots: not null, SlotDirection: { } slotted } && body.Mount.Ring is not null)
        {
            slotted.Written.Report(slotted.Key, reading, new RingWrong(RingMistake.Slots));
        }
        else if (preferences is { Preferences.MountSlots: not null, SlotDirection: { } where } && body.Mount.Second is not null)
        {
            where.Written.Report(where.Key, reading, new SlotsOnTwoFaces(code));
        }
        else if (preferences is { Preferences.MountSlots: { } slots, SlotDirection: { } at } && MountSlots.InFace(slots.Way, body.Mount.Plane.Normal) is null)
        {
            at.Written.Report(at.Key, reading, new SlotSquareToFace(body.Mount.Plane.Normal, code));
        }
    }

    /// <summary>Reports a designation that is none of the shop's.</summary>
    internal static void CheckStocked(string designation, Shop shop, TomlValue written, string key, Reading reading)
    {
        ImmutableArray<string> stocked = [.. shop.Stock.Select(s => s.Material.Designation).Distinct()];
        if (!stocked.Contains(designation))
        {
            written.Report(key, reading, new NameUnknown(stocked, Nearest.To(designation, stocked), NamedThing.Material, shop.Name));
        }
    }
}
