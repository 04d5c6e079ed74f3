using System.Collections.Immutable;
using BracketGen.Design.Search;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles;

/// <summary>One run over one or more files: collects every error.</summary>
internal sealed class Reading
{
    private readonly List<ProfileError> _errors = [];
    private readonly List<string> _files = [];
    private readonly HashSet<(string File, int Line)> _hushed = [];
    private readonly HashSet<string> _partial = [];

    public IFileSource Files { get; }

    public Reading(IFileSource files) => Files = files;

    /// <summary>Notes that a file is being read: errors come out in this order.</summary>
    public void Begin(string file)
    {
        if (!_files.Contains(file))
        {
            _files.Add(file);
        }
    }

    public void Report(Place place, string key, string read, string allowed, string advice)
    {
        if (!_hushed.Contains((place.File, place.Line)))
        {
            _errors.Add(new(place.File, place.Line, place.Column, key, read, allowed, advice));
        }
    }

    public void Report(TomlValue value, string key, string allowed, string advice) =>
        Report(value.Place, key, value.Written.ToString(), allowed, advice);

    /// <summary>Lets no further error on a line come out: it was reported whole.</summary>
    public void Hush(string file, int line) => _hushed.Add((file, line));

    /// <summary>Notes that part of a file could not be parsed: what is missing may stand there.</summary>
    public void SetPartial(string file) => _partial.Add(file);

    public bool IsPartial(string file) => _partial.Contains(file);

    /// <summary>Reports that something is not there, unless it may stand in a part that could not be parsed.</summary>
    public void ReportMissing(Place place, string key, string allowed, string advice)
    {
        if (!IsPartial(place.File))
        {
            Report(place, key, "nothing", allowed, advice);
        }
    }

    public bool IsHushed(string file, int line) => _hushed.Contains((file, line));

    public ImmutableArray<ProfileError> Errors =>
    [
        .. _errors.Distinct().OrderBy(e => _files.IndexOf(e.File)).ThenBy(e => e.Line).ThenBy(e => e.Column).ThenBy(e => e.Key, StringComparer.Ordinal),
    ];
}
