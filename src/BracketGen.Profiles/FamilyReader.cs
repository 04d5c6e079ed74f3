using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Profiles.Dxf;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Paths;
using BracketGen.Profiles.Sections;
using BracketGen.Profiles.Toml;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;

namespace BracketGen.Profiles;

/// <summary>Reads a family's file and all profiles that it names.</summary>
/// <remarks>Mistakes in the family's or the shop's file leave nothing to go by; those of a vehicle or a throttle body concern it alone.</remarks>
public static class FamilyReader
{
    /// <summary>Reads a family.</summary>
    /// <param name="path">Path of the family's file.</param>
    /// <param name="files">Where the files come from.</param>
    public static ProfileResult<LoadedFamily> Read(string path, IFileSource files)
    {
        var reading = new Reading();
        if (ProfileReader.Open(path, ProfileKind.Family, files, reading, named: null) is not { } table)
        {
            return new(null, reading.Errors);
        }

        reading.Units = JobSection.UnitsOf(table);
        var isRead = FamilySection.Form.TryRead(table, "", reading, ProfileReader.ProfileKey, out var file);
        var shop = ProfileReader.Follow(table, FamilySection.Shop, path, files, ProfileKind.Shop, ShopSection.Form, reading, out var shopTable);
        List<LocatedPreferences> located = [];
        var options = isRead ? Options(table, file!, reading, located) : [];
        ImmutableArray<Offcut> offcuts = isRead ? [.. file!.Offcuts.Select(o => Outlined(o, path, files, file.Family.Units, reading)).OfType<Offcut>()] : [];
        if (isRead && shop is not null)
        {
            ProfileReader.CheckMaterials(file!.Preferences, shop, reading);
            CheckDesignations(table, file.Family, shop, reading);
        }

        return isRead && shop is not null && reading.Errors.IsEmpty
            ? new(
                new LoadedFamily
                {
                    Family = file!.Family with { Options = [.. options.Select(o => o.Option)], Rates = file.Rates(shop.Rates), Cutting = file.Family.Cutting with { Offcuts = offcuts } },
                    Shop = shop,
                    ShopFacts = FactReader.Of(shopTable!),
                    Vehicles = [.. file.Family.Vehicles.Select(m => Load(m, path, ProfileKind.Vehicle, VehicleSection.Form, files, file.Family.Units))],
                    Bodies = [.. file.Family.Bodies.Select(m => WithSlots(Load(m, path, ProfileKind.ThrottleBody, ThrottleBodySection.Form, files, file.Family.Units), located, file.Family.Units))],
                    Options = options,
                },
                reading.Errors)
            : new(null, reading.Errors);
    }

    private static Offcut? Outlined(OffcutFile offcut, string familyPath, IFileSource files, UnitSystem units, Reading reading)
    {
        if (offcut.Outline is not { } named)
        {
            return offcut.Known;
        }

        var path = ProfilePath.Tidy(ProfilePath.Beside(familyPath, named.Value));
        return ProfileReader.Bytes(path, files, reading, named) is { } bytes && DxfReader.Read(path, bytes.Span, reading) is { } drawn
            ? OffcutOutline.Of(offcut.Known, drawn, units == UnitSystem.Inch ? UnitTable.InchLength.Factor : 1, path, reading)
            : null;
    }

    private static LoadedMember<T> Load<T>(
        Member member, string familyPath, ProfileKind kind, Section<T> form, IFileSource files, UnitSystem units)
        where T : class
    {
        var reading = new Reading { Units = units };
        var table = ProfileReader.Open(ProfilePath.Beside(familyPath, member.File), kind, files, reading, named: null);
        T? value = null;
        if (table is not null && form.TryRead(table, "", reading, ProfileReader.ProfileKey, out var read) && reading.Errors.IsEmpty)
        {
            value = read;
            if (read is ThrottleBody { Mount.Ring: not null })
            {
                reading.Report(table.Find("mount")!.Place, "mount.adapter_ring", "adapter_ring", new RingWrong(RingMistake.Family, member.Code));
                value = null;
            }
        }

        return new(member.Code, member.File, value, reading.Errors, table is null ? [] : FactReader.Of(table));
    }

    // A direction of slots that does not lie in a body's mount face is a mistake of that body's parts alone.
    private static LoadedMember<ThrottleBody> WithSlots(LoadedMember<ThrottleBody> member, List<LocatedPreferences> options, UnitSystem units)
    {
        if (member.Value is not { } body)
        {
            return member;
        }

        var reading = new Reading { Units = units };
        foreach (var preferences in options)
        {
            ProfileReader.CheckSlots(preferences, body, member.Code, reading);
        }

        return reading.Errors.IsEmpty ? member : member with { Value = null, Errors = reading.Errors };
    }

    // The option's preferences over the line's: read as one table, so that what does not go together is found.
    private static ImmutableArray<LoadedOption> Options(TomlTable family, FamilyFile file, Reading reading, List<LocatedPreferences> located)
    {
        var common = family.Find("preferences")?.Value as TomlTable;
        OptionFile[] options = file.Options.IsEmpty ? [new("", "", null)] : [.. file.Options];
        var loaded = ImmutableArray.CreateBuilder<LoadedOption>();
        foreach (var option in options)
        {
            var merged = Merged(common, option.Written, family);
            if (PreferencesSection.Form.TryRead(merged, option.Written is null ? "preferences" : "options.preferences", reading, besides: null, out var preferences))
            {
                located.Add(preferences);
                loaded.Add(new(new(option.Code, option.Name, preferences.Preferences), FactReader.Of(merged)));
            }
        }

        return loaded.ToImmutable();
    }

    private static TomlTable Merged(TomlTable? common, TomlTable? own, TomlTable family)
    {
        var merged = new TomlTable((own ?? common ?? family).Place, (own ?? common ?? family).Written);
        foreach (var entry in (own?.Entries ?? []).Concat(common?.Entries.Where(e => own?.Find(e.Name) is null) ?? []))
        {
            merged.Add(entry);
        }

        return merged;
    }

    private static void CheckDesignations(TomlTable table, ProductFamily family, Shop shop, Reading reading)
    {
        if (table.Find("materials")?.Value is not TomlList list)
        {
            return;
        }

        for (var i = 0; i < family.Materials.Length; i++)
        {
            foreach (var designation in family.Materials[i].Designations)
            {
                ProfileReader.CheckStocked(
                    designation, shop, ((TomlTable)list.Items[i]).Find("designations")!.Value,
                    string.Create(CultureInfo.InvariantCulture, $"materials[{i + 1}].designations"), reading);
            }
        }
    }
}
