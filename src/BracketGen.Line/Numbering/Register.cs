using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using BracketGen.Line.Combinations;
using BracketGen.Line.Parts;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Words.Line;

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
    ImmutableArray<Fact> Facts, ImmutableArray<string> Sources, ImmutableArray<string> Differences)
{
    /// <summary>The part itself; null where an earlier version of the program gave it out.</summary>
    public PartShape? Shape { get; init; }
}

/// <summary>The register of part numbers and revisions: what was once given out stays.</summary>
/// <remarks>
/// A text file of one JSON value a line: a head, then sources, revisions, services and recalls in the order in which they were given out.
/// New lines are put after the old; no line is ever changed.
/// </remarks>
public sealed class Register
{
    private const int LayoutVersion = 1;

    private readonly byte[] _bytes;
    private readonly Dictionary<(string, string), RegisteredRevision> _given = [];
    private readonly ImmutableDictionary<string, Source> _sources;

    private Register(
        byte[] bytes, string family, ImmutableArray<RegisteredRevision> revisions, ImmutableDictionary<string, Source> sources,
        ImmutableArray<RegisteredService> services, ImmutableArray<RegisteredRecall> recalls)
    {
        (_bytes, Family, Revisions, _sources, Services, Recalls) = (bytes, family, revisions, sources, services, recalls);
        var latest = new Dictionary<string, RegisteredRevision>();
        var owners = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var revision in revisions)
        {
            latest[revision.Combination] = revision;
            owners[revision.PartNumber] = revision.Combination;
            _given[(revision.PartNumber, revision.Revision)] = revision;
        }

        var serving = new Dictionary<string, RegisteredService>();
        foreach (var service in services)
        {
            serving[service.Combination] = service;
        }

        var open = new Dictionary<(string, string, string), RegisteredRecall>();
        foreach (var recall in recalls)
        {
            open[recall.Key] = recall;
        }

        (Latest, Owners, Serving) = (latest, owners, serving);
        OpenRecalls = [.. recalls.Select(r => open[r.Key]).Distinct().Where(r => !r.Why.IsEmpty)];
    }

    /// <summary>An empty register for a family.</summary>
    public static Register Empty(string family) => new(
        Encoding.UTF8.GetBytes(Line(new() { Register = family, Version = LayoutVersion })), family, [], ImmutableDictionary<string, Source>.Empty, [], []);

    /// <summary>Name of the family it belongs to.</summary>
    public string Family { get; }

    /// <summary>All revisions, in the order in which they were given out.</summary>
    public ImmutableArray<RegisteredRevision> Revisions { get; }

    /// <summary>The latest revision of every combination, by key.</summary>
    public IReadOnlyDictionary<string, RegisteredRevision> Latest { get; }

    /// <summary>Key of the combination that a part number was given to; capital and small letters alike.</summary>
    public IReadOnlyDictionary<string, string> Owners { get; }

    /// <summary>Which part served which combination from when on, in the order in which it was written.</summary>
    public ImmutableArray<RegisteredService> Services { get; }

    /// <summary>The latest service of every combination, by key.</summary>
    public IReadOnlyDictionary<string, RegisteredService> Serving { get; }

    /// <summary>What was to be recalled, and what not any more, in the order in which it was written.</summary>
    public ImmutableArray<RegisteredRecall> Recalls { get; }

    /// <summary>What is to be recalled, each once.</summary>
    public ImmutableArray<RegisteredRecall> OpenRecalls { get; }

    /// <summary>A revision that was given out; null where there is no such one.</summary>
    /// <param name="partNumber">Part number.</param>
    /// <param name="revision">Which.</param>
    public RegisteredRevision? Find(string partNumber, string? revision) => _given.GetValueOrDefault((partNumber, revision ?? ""));

    /// <summary>The file's bytes; not to be changed.</summary>
    public byte[] Bytes => _bytes;

    /// <summary>What a source said when something was made from it; null where the register does not know it.</summary>
    public Source? SourceOf(string hash) => _sources.GetValueOrDefault(hash);

    /// <summary>Reads a register.</summary>
    /// <param name="bytes">The file.</param>
    /// <returns>The register, or what is wrong with the file.</returns>
    public static (Register? Register, RegisterDamage? Damage) Parse(ReadOnlySpan<byte> bytes)
    {
        string text;
        try
        {
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return (null, new RegisterDamage.NotText());
        }

        if (!text.EndsWith('\n'))
        {
            return (null, new RegisterDamage.CutShort());
        }

        var content = new Content();
        foreach (var (line, index) in text[..^1].Split('\n').Select((l, i) => (l, i)))
        {
            if (content.Add(line, index + 1) is { } damage)
            {
                return (null, damage);
            }
        }

        return (
            new(
                bytes.ToArray(), content.Family!, content.Revisions.ToImmutable(), content.Sources.ToImmutable(), content.Services.ToImmutable(), content.Recalls.ToImmutable()),
            null);
    }

    /// <summary>This register with more lines after its own.</summary>
    /// <param name="revisions">New revisions, in order.</param>
    /// <param name="sources">What they were made from; those that the register knows already are not written again.</param>
    public Register With(IReadOnlyList<RegisteredRevision> revisions, IEnumerable<Source> sources)
    {
        var text = new StringBuilder();
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
                Shape = revision.Shape,
            }));
        }

        return new(More(text.ToString()), Family, Revisions.AddRange(revisions), known.ToImmutable(), Services, Recalls);
    }

    /// <summary>This register with more lines after its own: which part serves which variant from now on.</summary>
    /// <param name="services">What is different from now on, in order.</param>
    public Register With(IReadOnlyList<RegisteredService> services) => services.Count == 0 ? this : new(
        More(string.Concat(services.Select(s => Line(new() { Served = s.Combination, Names = s.Names, By = s.PartNumber, Revision = s.Revision, Why = s.Why.IsEmpty ? null : [.. s.Why] })))),
        Family, Revisions, _sources, Services.AddRange(services), Recalls);

    /// <summary>This register with more lines after its own: which numbers to recall, and which not any more.</summary>
    /// <param name="recalls">What is new, in order.</param>
    public Register With(IReadOnlyList<RegisteredRecall> recalls) => recalls.Count == 0 ? this : new(
        More(string.Concat(recalls.Select(r => Line(new()
        {
            Recall = r.PartNumber, Revision = r.Revision, Combination = r.Combination, Names = r.Names, Why = r.Why.IsEmpty ? null : [.. r.Why],
        })))),
        Family, Revisions, _sources, Services, Recalls.AddRange(recalls));

    private byte[] More(string lines) => [.. _bytes, .. Encoding.UTF8.GetBytes(lines)];

    private static string Line(RegisterLine line) => JsonSerializer.Serialize(line, RegisterContext.Lines.RegisterLine) + "\n";

    private static Dictionary<string, string> Dictionary(ImmutableArray<Fact> facts)
    {
        // A dictionary that nothing is taken out of keeps the order in which it was filled.
        var dictionary = new Dictionary<string, string>(facts.Length);
        foreach (var fact in facts)
        {
            dictionary[fact.Key] = fact.Value;
        }

        return dictionary;
    }

    private static ImmutableArray<Fact> Facts(Dictionary<string, string> said) => [.. said.Select(p => new Fact(p.Key, p.Value))];

    /// <summary>What the lines read so far say.</summary>
    private sealed class Content
    {
        private readonly Dictionary<string, string> _numbers = [];
        private readonly Dictionary<string, string> _owners = new(StringComparer.OrdinalIgnoreCase);
        private readonly HashSet<(string, string)> _given = [];

        public string? Family { get; private set; }

        public ImmutableArray<RegisteredRevision>.Builder Revisions { get; } = ImmutableArray.CreateBuilder<RegisteredRevision>();

        public ImmutableArray<RegisteredService>.Builder Services { get; } = ImmutableArray.CreateBuilder<RegisteredService>();

        public ImmutableArray<RegisteredRecall>.Builder Recalls { get; } = ImmutableArray.CreateBuilder<RegisteredRecall>();

        public ImmutableDictionary<string, Source>.Builder Sources { get; } = ImmutableDictionary.CreateBuilder<string, Source>();

        /// <summary>Takes in a line; returns what is wrong with it, or null.</summary>
        public RegisterDamage? Add(string line, int at)
        {
            if (Read(line) is not { } read || read.Shape is { IsWhole: false })
            {
                return new RegisterDamage.NotJson(at);
            }

            if (at == 1)
            {
                Family = read.Register;
                return Family is null || read.Version != LayoutVersion ? new RegisterDamage.NoHead() : null;
            }

            if (read is { Source: { } hash, Called: { } called, Facts: { } said })
            {
                Sources[hash] = new(called, hash, [.. Facts(said).Select(f => f with { Key = RenamedKeys.PathNow(f.Key) })]);
                return null;
            }

            if (read is { Served: { } served, Names: { } whose })
            {
                Services.Add(new(served, whose, read.By, read.Revision, [.. read.Why ?? []]));
                return null;
            }

            if (read is { Recall: { } recalled, Revision: { } which, Combination: { } variant, Names: { } title })
            {
                Recalls.Add(new(recalled, which, variant, title, [.. read.Why ?? []]));
                return null;
            }

            if (read is not { Part: { } part, Revision: { } revision, Combination: { } key, Names: { } names, Fingerprint: { } fingerprint })
            {
                return new RegisterDamage.UnknownLine(at);
            }

            return Add(at, new(part, revision, key, names, read.Serial, fingerprint, Facts(read.Facts ?? []), [.. read.Sources ?? []], [.. read.Differences ?? []])
            {
                Shape = read.Shape,
            });
        }

        private RegisterDamage? Add(int at, RegisteredRevision entry)
        {
            var (part, key) = (entry.PartNumber, entry.Combination);
            if (_numbers.TryGetValue(key, out var before) && before != part)
            {
                return new RegisterDamage.SecondNumber(at, key, part, before);
            }

            if ((_owners.TryGetValue(part, out var owner) && owner != key) || !_given.Add((part, entry.Revision)))
            {
                return new RegisterDamage.SecondTime(at, part, entry.Revision);
            }

            (_numbers[key], _owners[part]) = (part, key);
            Revisions.Add(entry);
            return null;
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
    }
}
