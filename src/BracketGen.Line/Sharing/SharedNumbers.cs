using System.Globalization;
using BracketGen.Design.Part;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Words.Line;

namespace BracketGen.Line.Sharing;

/// <summary>Gives the shared parts of a selection, the best brackets of no combination, their numbers, and puts them into the register.</summary>
/// <remarks>
/// The register knows one by the combination it was first issued for, a point and a count, and its number is that combination's with the same behind it. A shape that
/// the register has keeps its number, whatever it serves now. Another shape for that combination is the next revision of a number that has no use any more, else a new number.
/// </remarks>
public static class SharedNumbers
{
    /// <summary>The selection with numbers, and the register with a line for every one that is new.</summary>
    /// <param name="selection">The selection.</param>
    /// <param name="register">The register.</param>
    /// <param name="inputs">What combinations are made from.</param>
    /// <param name="family">The family.</param>
    public static (PartSelection Selection, Register Register) Issue(PartSelection selection, Register register, CombinationInputs inputs, ProductFamily family)
    {
        var served = selection.Services.ToLookup(s => s.By);
        LinePart[] shared = [.. selection.Parts.Where(p => !p.IsOwn)];
        var known = register.Latest.Values.Where(r => IsShared(r.Combination)).GroupBy(r => r.Fingerprint).ToDictionary(g => g.Key, g => g.First());
        var used = shared.Select(p => known.GetValueOrDefault(p.Made.Fingerprint!)?.Combination).OfType<string>().ToHashSet();
        var numbers = register.Owners.Keys.Concat(selection.Services.Select(s => s.Served.Made.PartNumber)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var issued = new Dictionary<LinePart, LinePart>();
        var (revisions, sources) = (new List<RegisteredRevision>(), new List<Source>());
        foreach (var part in shared)
        {
            var first = served[part].First();
            var bracket = part.Bracket with { Folded = new(part.Bracket.Flat, first.Mount) };
            if (!known.TryGetValue(part.Made.Fingerprint!, out var entry))
            {
                var from = served[part].SelectMany(s => inputs.Of(s.Served.Combination)).DistinctBy(s => s.Hash).ToList();
                entry = New(register, first.Served, bracket, part.Made.Fingerprint!, [.. from.Select(s => s.Hash)], family, used, numbers);
                sources.AddRange(from);
                revisions.Add(entry);
                used.Add(entry.Combination);
                numbers.Add(entry.PartNumber);
            }

            var (number, revision) = (entry.PartNumber, entry.Revision);
            issued[part] = new(
                first.Served.Combination, part.Made with { Combination = first.Served.Combination.Key, PartNumber = number, Revision = revision, Part = Parts.PartShape.Of(bracket), Fit = first.Fit },
                bracket, first.Served.Job with { Document = first.Served.Job.Document with { PartNumber = number, Revision = revision } })
            {
                Key = entry.Combination,
            };
        }

        return (
            selection with
            {
                Parts = [.. selection.Parts.Select(p => issued.GetValueOrDefault(p, p))],
                Services = [.. selection.Services.Select(s => s with { By = issued.GetValueOrDefault(s.By, s.By) })],
            },
            revisions.Count == 0 ? register : register.With(revisions, sources));
    }

    /// <summary>The shared parts that serve a variant now, or are in stock or pinned, with their brackets as the register has them.</summary>
    /// <param name="register">The register.</param>
    /// <param name="family">The family.</param>
    /// <param name="parts">The passing combinations with their own parts.</param>
    public static IReadOnlyList<LinePart> GivenOut(Register register, LoadedFamily family, IReadOnlyList<LinePart> parts)
    {
        var serving = register.Serving.Values.Where(s => s.PartNumber is not null).ToLookup(s => s.PartNumber!, s => s.Combination);
        var rule = family.Family.Numbers;
        var given = new List<LinePart>();
        foreach (var entry in register.Latest.Values.Where(r => IsShared(r.Combination) && (serving.Contains(r.PartNumber) || rule.InStock.Contains(r.PartNumber) || rule.Pinned.Contains(r.PartNumber)))
            .OrderBy(r => r.Combination, StringComparer.Ordinal))
        {
            // The combination that it was issued for, or another that it serves.
            var origin = entry.Combination[..entry.Combination.LastIndexOf('.')];
            var host = parts.FirstOrDefault(p => p.Key == origin) ?? parts.FirstOrDefault(p => serving[entry.PartNumber].Contains(p.Key));
            if (host is not null && entry.Shape is { } shape && shape.ToBracket(family, host.Job.Vehicle.Cable, host.Job.Preferences.StopOpening) is { } bracket)
            {
                given.Add(new(host.Combination, host.Made with { PartNumber = entry.PartNumber, Revision = entry.Revision, Fingerprint = entry.Fingerprint, Part = shape, Files = [] }, bracket, host.Job) { Key = entry.Combination });
            }
        }

        return given;
    }

    // Codes of combinations have no point.
    private static bool IsShared(string key) => key.Contains('.', StringComparison.Ordinal);

    private static RegisteredRevision New(
        Register register, LinePart served, Bracket bracket, string fingerprint, System.Collections.Immutable.ImmutableArray<string> sources, ProductFamily family,
        HashSet<string> used, HashSet<string> numbers)
    {
        var (key, number, count) = ("", "", 0);
        RegisteredRevision? before;
        do
        {
            count++;
            var behind = "." + count.ToString(CultureInfo.InvariantCulture);
            (key, number) = (served.Key + behind, served.Made.PartNumber + behind);
            before = register.Latest.GetValueOrDefault(key);
        }
        while (used.Contains(key) || (before is null ? numbers.Contains(number) : Revision.Next(family.Numbers.Revisions, before.Revision) is null));

        var facts = PartFactsText.Of(bracket, before is null ? family.Units : PartFactsText.UnitsOf(before.Facts));
        return new(
            before?.PartNumber ?? number, before is null ? Revision.First(family.Numbers.Revisions) : Revision.Next(family.Numbers.Revisions, before.Revision)!,
            key, LineText.SharedPart(served.Combination.Title), null, fingerprint, PartFactsText.Of(bracket, family.Units), sources,
            before is null ? [] : [.. Difference.Between("", before.Facts, facts).Select(RevisionText.Of)])
        {
            Shape = Parts.PartShape.Of(bracket),
        };
    }
}
