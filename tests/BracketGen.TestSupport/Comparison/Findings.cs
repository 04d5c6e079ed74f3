using System.Collections.Immutable;
using System.Globalization;

namespace BracketGen.TestSupport.Comparison;

/// <summary>One place where two outputs differ.</summary>
/// <param name="File">Name of the file, or what else was compared.</param>
/// <param name="Where">The place in it.</param>
/// <param name="Kind">The place without names and numbers of elements, to count alike differences together.</param>
/// <param name="Before">What the release before wrote.</param>
/// <param name="After">What the release after wrote.</param>
public sealed record Difference(string File, string Where, string Kind, string Before, string After)
{
    /// <summary>For two numbers how far they are apart, over the larger of both and 1; otherwise null.</summary>
    public double? Deviation { get; init; }
}

/// <summary>Collects what a comparison of two outputs finds. Not thread-safe.</summary>
public sealed class Findings
{
    /// <summary>How far two numbers may be apart, relative to the larger.</summary>
    public const double Relative = 1e-9;

    /// <summary>How far two numbers may always be apart: one step of the last place that result and solid model are rounded to.</summary>
    public const double Absolute = 1e-9;

    private readonly List<Difference> _differences = [];
    private readonly SortedSet<string> _added = new(StringComparer.Ordinal), _gone = new(StringComparer.Ordinal);

    /// <summary>How many numbers had a counterpart.</summary>
    public int Numbers { get; private set; }

    /// <summary>The two numbers that are farthest apart, within the tolerance or not; null where all are equal to the last bit.</summary>
    public Difference? Farthest { get; private set; }

    /// <summary>What differs.</summary>
    public IReadOnlyList<Difference> Differences => _differences;

    /// <summary>Paths that only the release after writes.</summary>
    public IReadOnlyCollection<string> Added => _added;

    /// <summary>Paths that only the release before writes, as the table of changes says.</summary>
    public IReadOnlyCollection<string> Gone => _gone;

    /// <summary>Compares two numbers.</summary>
    public void Number(string file, string where, string kind, double before, double after, double relative = Relative)
    {
        Numbers++;
        if (before.Equals(after))
        {
            return;
        }

        var apart = Math.Abs(before - after);
        var larger = Math.Max(Math.Abs(before), Math.Abs(after));
        var pair = new Difference(file, where, kind, Text(before), Text(after)) { Deviation = apart / Math.Max(1, larger) };
        if (!(Farthest?.Deviation >= pair.Deviation))
        {
            Farthest = pair;
        }

        // Not-a-number is never near.
        if (!(apart <= Absolute + (relative * larger)))
        {
            _differences.Add(pair);
        }
    }

    /// <summary>Notes a difference.</summary>
    public void Differ(string file, string where, string kind, string before, string after) => _differences.Add(new(file, where, kind, before, after));

    /// <summary>Notes a path that only the release after writes.</summary>
    public void Add(string path) => _added.Add(path);

    /// <summary>Notes a path that only the release before writes, and may.</summary>
    public void Leave(string path) => _gone.Add(path);

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
