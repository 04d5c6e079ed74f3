using System.Collections.Immutable;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles;

/// <summary>One run over one or more files: collects every error.</summary>
internal sealed class Reading
{
    private readonly List<ProfileError> _errors = [];
    private readonly List<string> _files = [];
    private readonly HashSet<(string File, int Line)> _hushed = [];

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

    public bool IsHushed(string file, int line) => _hushed.Contains((file, line));

    public ImmutableArray<ProfileError> Errors =>
    [
        .. _errors.Distinct().OrderBy(e => _files.IndexOf(e.File)).ThenBy(e => e.Line).ThenBy(e => e.Column).ThenBy(e => e.Key, StringComparer.Ordinal),
    ];
}
