using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using BracketGen.Design.Checks;
using BracketGen.Drawing.Report.Html;
using BracketGen.Line.Combinations;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;

namespace BracketGen.Line.Numbering;

/// <summary>A revision that the register knows.</summary>
/// <param name="PartNumber">Part number.</param>
/// <param name="Revision">Which revision.</param>
/// <param name="Combination">Key of the combination it was made for.</param>
/// <param name="Names">Names of that combination.</param>
/// <param name="Serial">Running number; null where the rule had none.</param>
/// <param name="Fingerprint">Fingerprint of the part.</param>
/// <param name="Facts">What the part is, by label.</param>
/// <param name="Sources">Hashes of what it was made from.</param>
/// <param name="Differences">What is different from the revision before; empty for the first.</param>
public sealed record RegisteredRevision(
    string PartNumber, string Revision, string Combination, string Names, int? Serial, string Fingerprint,
    ImmutableArray<Profiles.Family.Fact> Facts, ImmutableArray<string> Sources, ImmutableArray<string> Differences);

/// <summary>The register of part numbers and revisions: what was once given out stays.</summary>
/// <remarks>
/// A text file of one JSON value a line: a head, then sources and revisions in the order in which they were given out. New lines are put
/// after the old; no line is ever changed.
/// </remarks>
public sealed class Register
{
    private const int LayoutVersion = 1;

    private readonly string _text;
    private readonly ImmutableDictionary<string, Source> _sources;

    private Register(string text, string family, ImmutableArray<RegisteredRevision> revisions, ImmutableDictionary<string, Source> sources)
    {
        (_text, Family, Revisions, _sources) = (text, family, revisions, sources);
        var latest = new Dictionary<string, RegisteredRevision>();
        var owners = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var revision in revisions)
        {
            latest[revision.Combination] = revision;
            owners[revision.PartNumber] = revision.Combination;
        }

        (Latest, Owners) = (latest, owners);
    }

    /// <summary>An empty register for a family.</summary>
    public static Register Empty(string family) => new(
        Line(new() { Register = family, Version = LayoutVersion }), family, [], ImmutableDictionary<string, Source>.Empty);

    /// <summary>Name of the family it belongs to.</summary>
    public string Family { get; }

    /// <summary>All revisions, in the order in which they were given out.</summary>
    public ImmutableArray<RegisteredRevision> Revisions { get; }

    /// <summary>The latest revision of every combination, by key.</summary>
    public IReadOnlyDictionary<string, RegisteredRevision> Latest { get; }

    /// <summary>Key of the combination that a part number was given to; capital and small letters alike.</summary>
    public IReadOnlyDictionary<string, string> Owners { get; }

    /// <summary>The file's bytes.</summary>
    public byte[] Bytes => Encoding.UTF8.GetBytes(_text);

    /// <summary>What a source said when something was made from it; null where the register does not know it.</summary>
    public Source? SourceOf(string hash) => _sources.GetValueOrDefault(hash);

    /// <summary>Reads a register.</summary>
    /// <param name="bytes">The file.</param>
    /// <returns>The register, or what is wrong with the file, in words.</returns>
    public static (Register? Register, string? Problem) Parse(ReadOnlySpan<byte> bytes)
    {
        string text;
        try
        {
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return (null, "it is not text in UTF-8");
        }

        if (!text.EndsWith('\n'))
        {
            return (null, "its last line has no end: part of it is missing");
        }

        string? family = null;
        var revisions = ImmutableArray.CreateBuilder<RegisteredRevision>();
        var sources = ImmutableDictionary.CreateBuilder<string, Source>();
        var numbers = new Dictionary<string, string>();
        var owners = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        var given = new HashSet<(string, string)>();
        var number = 0;
        foreach (var line in text[..^1].Split('\n'))
        {
            number++;
            if (Read(line) is not { } read)
            {
                return (null, Told(number, "it cannot be read"));
            }

            if (number == 1)
            {
                family = read.Register;
                if (family is null || read.Version != LayoutVersion)
                {
                    return (null, Told(1, "it is not the head of a register that this version of the program writes"));
                }

                continue;
            }

            if (read is { Source: { } hash, Called: { } called, Facts: { } said })
            {
                sources[hash] = new(called, hash, [.. Facts(said).Select(f => f with { Key = RenamedKeys.PathNow(f.Key) })]);
                continue;
            }

            if (read is not { Part: { } part, Revision: { } revision, Combination: { } key, Names: { } names, Fingerprint: { } fingerprint })
            {
                return (null, Told(number, "it is neither a source nor a revision"));
            }

            var entry = new RegisteredRevision(
                part, revision, key, names, read.Serial, fingerprint, Facts(read.Facts ?? []), [.. read.Sources ?? []], [.. read.Differences ?? []]);
            if (numbers.TryGetValue(key, out var before) && before != part)
            {
                return (null, Told(number, $"{key} is given the number {part}, but has the number {before} already"));
            }

            if ((owners.TryGetValue(part, out var owner) && owner != key) || !given.Add((part, revision)))
            {
                return (null, Told(number, $"{part} revision {revision} is given out a second time"));
            }

            (numbers[key], owners[part]) = (part, key);
            revisions.Add(entry);
        }

        return (new(text, family!, revisions.ToImmutable(), sources.ToImmutable()), null);
    }

    /// <summary>This register with more lines after its own.</summary>
    /// <param name="revisions">New revisions, in order.</param>
    /// <param name="sources">What they were made from; those that the register knows already are not written again.</param>
    public Register With(IReadOnlyList<RegisteredRevision> revisions, IEnumerable<Source> sources)
    {
        var text = new StringBuilder(_text);
        var known = _sources.ToBuilder();
        foreach (var source in sources.Where(s => !_sources.ContainsKey(s.Hash)).DistinctBy(s => s.Hash))
        {
            known[source.Hash] = source;
            text.Append(Line(new() { Source = source.Hash, Called = source.Name, Facts = Dictionary(source.Facts) }));
        }

        foreach (var revision in revisions)
        {
            text.Append(Line(new()
            {
                Part = revision.PartNumber,
                Revision = revision.Revision,
                Combination = revision.Combination,
                Names = revision.Names,
                Serial = revision.Serial,
                Fingerprint = revision.Fingerprint,
                Facts = Dictionary(revision.Facts),
                Sources = [.. revision.Sources],
                Differences = revision.Differences.IsEmpty ? null : [.. revision.Differences],
            }));
        }

        return new(text.ToString(), Family, Revisions.AddRange(revisions), known.ToImmutable());
    }

    private static RegisterLine? Read(string line)
    {
        try
        {
            return JsonSerializer.Deserialize(line, RegisterContext.Lines.RegisterLine);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static string Line(RegisterLine line) => JsonSerializer.Serialize(line, RegisterContext.Lines.RegisterLine) + "\n";

    private static string Told(int number, string what) => string.Create(CultureInfo.InvariantCulture, $"line {number}: {what}");

    private static Dictionary<string, string> Dictionary(ImmutableArray<Profiles.Family.Fact> facts)
    {
        // A dictionary that nothing is taken out of keeps the order in which it was filled.
        var dictionary = new Dictionary<string, string>(facts.Length);
        foreach (var fact in facts)
        {
            dictionary[fact.Key] = fact.Value;
        }

        return dictionary;
    }

    private static ImmutableArray<Profiles.Family.Fact> Facts(Dictionary<string, string> said) => [.. said.Select(p => new Profiles.Family.Fact(p.Key, p.Value))];
}
