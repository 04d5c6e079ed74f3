using System.Collections.Immutable;
using BracketGen.Units;

namespace BracketGen.Profiles.Errors;

/// <summary>One run over one or more files: collects every error.</summary>
internal sealed class Reading
{
    private readonly List<ProfileError> _errors = [];
    private readonly List<string> _files = [];
    private readonly HashSet<(string File, int Line)> _hushed = [];
    private readonly HashSet<string> _partial = [];

    /// <summary>Units of the job or family that is read; null until one is known.</summary>
    public UnitSystem? Units { get; set; }

    /// <summary>Notes that a file is being read: errors come out in this order.</summary>
    public void Begin(string file)
    {
        if (!_files.Contains(file))
        {
            _files.Add(file);
        }
    }

    /// <summary>Reports a problem; <paramref name="read"/> is what the file has.</summary>
    public void Report(Place place, string key, string read, ProfileProblem problem)
    {
        if (!_hushed.Contains((place.File, place.Line)))
        {
            _errors.Add(new(place.File, place.Line, place.Column, key, read, problem));
        }
    }

    /// <summary>Reports that something is not there, unless it may stand in a part that could not be parsed.</summary>
    public void ReportMissing(Place place, string key, ProfileProblem problem)
    {
        if (!IsPartial(place.File))
        {
            Report(place, key, "", problem);
        }
    }

    /// <summary>Lets no further error on a line come out: it was reported whole.</summary>
    public void Hush(string file, int line) => _hushed.Add((file, line));

    public bool IsHushed(string file, int line) => _hushed.Contains((file, line));

    /// <summary>Notes that part of a file could not be parsed: what is missing may be in that part.</summary>
    public void SetPartial(string file) => _partial.Add(file);

    public bool IsPartial(string file) => _partial.Contains(file);

    /// <summary>Whether nothing was reported in a file.</summary>
    public bool IsClean(string file) => _errors.All(e => e.File != file);

    /// <summary>Every error once, file by file in the order of reading, then by line, column and key.</summary>
    /// <remarks>Beyond <see cref="MostListed"/> the last one says how many more there are.</remarks>
    public ImmutableArray<ProfileError> Errors
    {
        get
        {
            ImmutableArray<ProfileError> all = AllErrors();
            return all.Length <= MostListed ? all
                : [.. all.AsSpan(0, MostListed), new(all[MostListed].File, 0, 0, "", "", new MoreMistakes(all.Length - MostListed)) { Units = Units }];
        }
    }

    /// <summary>How many errors are listed one by one: nobody reads more at once.</summary>
    public const int MostListed = 100;

    private ImmutableArray<ProfileError> AllErrors() =>
    [
        .. _errors.DistinctBy(e => (e.File, e.Line, e.Column, e.Key, e.Problem.ToString()))
            .OrderBy(e => _files.IndexOf(e.File)).ThenBy(e => e.Line).ThenBy(e => e.Column).ThenBy(e => e.Key, StringComparer.Ordinal)
            .Select(e => e with { Units = Units }),
    ];
}
