using System.Collections.Immutable;
using BracketGen.Line.Combinations;
using BracketGen.Line.Lists;
using BracketGen.Line.Numbering;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Storage;
using BracketGen.Words.Line;

namespace BracketGen.Line.Running;

/// <summary>Makes a lost register again: from the copy in the line's folder, and from the products there.</summary>
public static class RegisterRebuild
{
    /// <summary>Makes it.</summary>
    /// <param name="family">The family.</param>
    /// <param name="place">Where its files are.</param>
    /// <param name="tell">Where it tells what it does.</param>
    /// <returns>How it ended.</returns>
    public static LineEnd Run(LoadedFamily family, LinePlace place, LineTeller tell)
    {
        try
        {
            if (!Directory.Exists(place.Folder))
            {
                return Bad(tell, RegisterWords.NothingToRebuild(place.Folder));
            }

            using var held = FolderLock.TryTake(place.Folder);
            return held is null ? Bad(tell, LineRunText.Busy(place.Folder))
                : File.Exists(place.Register) ? Bad(tell, RegisterWords.NotLost(place.Register))
                : Make(family, place, held, tell);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            tell.Problem(LineRunText.NotWritten(place.Folder, problem.Message));
            return LineEnd.CannotWrite;
        }
    }

    private static LineEnd Make(LoadedFamily family, LinePlace place, FolderLock held, LineTeller tell)
    {
        var (copy, damage) = RegisterFile.Read(place.RegisterCopy, family.Family.Name);
        if (copy is null)
        {
            return Bad(tell, LineRunText.Damaged(place.RegisterCopy, damage!));
        }

        if (copy.Family != family.Family.Name)
        {
            return Bad(tell, new NumberConflict.OtherFamily(copy.Family, family.Family.Name).Text);
        }

        var whole = Products(family, place, copy);
        whole = whole.Services.IsEmpty ? whole.With(Services(place, whole)) : whole;
        var (read, wrong) = Register.Parse(whole.Bytes);
        if (read is null)
        {
            return Bad(tell, LineRunText.Damaged(place.Variants, wrong!));
        }

        if (!RegisterFile.Write(held, place.Register, Register.Empty(family.Family.Name), read))
        {
            return Bad(tell, RegisterWords.NotLost(place.Register));
        }

        place.WriteCopy(held, read);
        tell.Output.WriteLine(RegisterWords.Rebuilt(place.Register, copy.Revisions.Length, read.Revisions.Length - copy.Revisions.Length));
        return LineEnd.Made;
    }

    // What products know and the copy does not, in the order of the line; products of variants that it no longer has come last.
    private static Register Products(LoadedFamily family, LinePlace place, Register copy)
    {
        var all = FamilyCombinations.Of(family);
        var known = all.Offered.Concat(all.Excluded.Select(e => e.Combination)).ToDictionary(c => c.Key);
        var inputs = new CombinationInputs(family, LineWork.ProgramVersion);
        var folders = Directory.Exists(place.Variants) ? Directory.GetDirectories(place.Variants).Select(d => Path.GetFileName(d)) : [];
        List<RegisteredRevision> revisions = [];
        List<Source> sources = [];
        foreach (var made in folders.Order(StringComparer.Ordinal).Select(f => CombinationFolder.Kept(place.Variants, f)).OfType<Made>()
            .Where(m => m is { HasPart: true, Fingerprint: not null } && copy.Find(m.PartNumber, m.Revision) is null)
            .OrderBy(m => known.TryGetValue(m.Combination, out var c) ? c.Order : int.MaxValue))
        {
            var combination = known.GetValueOrDefault(made.Combination);
            ImmutableArray<Source> from = combination is { IsReadable: true } && made.Inputs == inputs.HashOf(combination) ? inputs.Of(combination) : [];
            var part = combination is { IsReadable: true } ? LineParts.Of(family, [combination], [made]) : [];
            sources.AddRange(from);
            revisions.Add(new(
                made.PartNumber, made.Revision, made.Combination, combination?.Title ?? made.Combination, made.Serial, made.Fingerprint!,
                part.IsEmpty ? [] : PartFactsText.Of(part[0].Bracket, family.Family.Units), [.. from.Select(s => s.Hash)], [])
            {
                Shape = made.Part,
            });
        }

        return revisions.Count == 0 ? copy : copy.With(revisions, sources);
    }

    // Which part serves which variant stands in the list of fits.
    private static List<RegisteredService> Services(LinePlace place, Register register)
    {
        var path = Path.Combine(place.Folder, "fits.csv");
        var rows = File.Exists(path) ? CsvText.Read(File.ReadAllBytes(path)) : [];
        if (rows.Count == 0)
        {
            return [];
        }

        var (key, number, revision) = (rows[0].IndexOf("combination"), rows[0].IndexOf("part_number"), rows[0].IndexOf("revision"));
        return key < 0 || number < 0 || revision < 0 ? [] :
        [
            .. rows.Skip(1).Where(r => r.Count == rows[0].Count).Select(r => (Key: r[key], Number: r[number].TrimStart('\''), Revision: r[revision]))
                .Where(r => register.Find(r.Number, r.Revision) is not null)
                .Select(r => new RegisteredService(r.Key, register.Latest.GetValueOrDefault(r.Key)?.Names ?? r.Key, r.Number, r.Revision, [])),
        ];
    }

    private static LineEnd Bad(LineTeller tell, string problem)
    {
        tell.Problem(problem);
        return LineEnd.BadInput;
    }
}
