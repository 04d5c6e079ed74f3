using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Line.Parts;
using BracketGen.Line.Solving;

namespace BracketGen.Line.Sharing;

/// <summary>Brackets that are the best of no combination, made because they may serve several. One thread at a time.</summary>
/// <remarks>
/// From each combination's own bracket: its shape with the seat in the middle of where adjusters overlap; on another sheet, where its own is not
/// allowed on a combination that its length would suit; and its next best. Only what may join combinations that no bracket so far joins is made, each once. What is made depends on the line and
/// on what failed, not on the machine.
/// </remarks>
/// <param name="parts">The combinations with their own parts.</param>
/// <param name="services">What goes onto what.</param>
/// <param name="hasStrength">Whether strength is looked at: then no sheet is thinner than that of the combination's own bracket.</param>
/// <param name="threads">How many searches for next best brackets at once.</param>
/// <param name="settled">Combinations that keep the part that they have: nothing is made for them.</param>
/// <param name="known">Fingerprints of the shared parts that are there already.</param>
internal sealed class SharedCandidates(IReadOnlyList<LinePart> parts, PossibleServices services, bool hasStrength, int threads, IReadOnlySet<int> settled, IEnumerable<string> known)
{
    /// <summary>The most seats in between that are tried for a combination.</summary>
    public const int MostSeats = 8;

    /// <summary>The most other sheets.</summary>
    public const int MostSheets = 4;

    /// <summary>The most of its next best brackets.</summary>
    public const int MostNext = 10;

    /// <summary>In longer lines next best brackets are made only of combinations of which a shared bracket failed a full check: they take as long as the line itself.</summary>
    public const int SmallLine = 200;

    // Seats closer than this (mm) are one.
    private const double Step = 0.1;

    private readonly SeatedOn[][] _near = [.. parts.Select((p, i) => settled.Contains(i) ? [] : services.Near(p.Bracket).Where(n => !settled.Contains(n.Served)).ToArray())];
    private readonly HashSet<(int Host, double Seat)> _seatsTried = [];
    private readonly HashSet<(int Host, string Sheets)> _sheetsTried = [];
    private readonly HashSet<int> _nextTried = [];
    private readonly int[] _seats = new int[parts.Count];
    private readonly HashSet<string> _known = [.. parts.Select(p => p.Made.Fingerprint!), .. known];

    private readonly record struct Middle(int Host, double Seat, int[] Joins);

    /// <summary>Makes more of them; none where nothing more can help.</summary>
    /// <param name="served">What the brackets so far may serve; takes in what is added.</param>
    /// <param name="failed">Combinations of which a bracket failed a full check on another.</param>
    /// <param name="add">Takes the combination that a candidate was made from, and the candidate; returns which combinations it may serve.</param>
    public void Add(Joined served, IReadOnlySet<int> failed, Func<int, Bracket, int[]> add)
    {
        void Try(int host, Bracket? bracket)
        {
            if (bracket is not null && _known.Add(PartFingerprint.Of(bracket)))
            {
                served.Add(add(host, bracket));
            }
        }

        foreach (var middle in Middles(served).OrderByDescending(m => m.Joins.Length).ThenBy(m => Math.Abs(m.Seat)).ThenBy(m => m.Host).ThenBy(m => m.Seat).ToList())
        {
            if (_seats[middle.Host] < MostSeats && !served.Has(middle.Joins))
            {
                _seats[middle.Host]++;
                _seatsTried.Add((middle.Host, middle.Seat));
                Try(middle.Host, SharedBrackets.Moved(parts[middle.Host].Job, parts[middle.Host].Bracket, middle.Seat));
            }
        }

        for (var host = 0; host < parts.Count; host++)
        {
            foreach (var at in _near[host])
            {
                if (!at.IsAllowed && at.Served != host && Meet(host, at) is { } seat && !served.Has([Math.Min(host, at.Served), Math.Max(host, at.Served)])
                    && Common(host, at.Served) is { } both && _sheetsTried.Count(s => s.Host == host) < MostSheets
                    && _sheetsTried.Add((host, FormattableString.Invariant($"{both.MinThickness} {both.MaxThickness} {string.Join(',', both.Materials)}"))))
                {
                    foreach (var bracket in Cheapest(host, parts[host].Job with { Preferences = both }, seat, 1))
                    {
                        Try(host, bracket);
                    }
                }
            }
        }

        int[] alone = [.. Enumerable.Range(0, parts.Count).Where(h => (parts.Count <= SmallLine || failed.Contains(h)) && !_nextTried.Contains(h) && IsAlone(h, served))];
        _nextTried.UnionWith(alone);
        foreach (var (host, next) in alone.AsParallel().AsOrdered().WithDegreeOfParallelism(Math.Clamp(threads, 1, 512)).Select(h => (h, Cheapest(h, parts[h].Job, 0, MostNext))).ToList())
        {
            foreach (var bracket in next)
            {
                Try(host, bracket);
            }
        }
    }

    // Ranges of adjusters on a line overlap all at once where they overlap two by two: the middles of pairs are those of all groups.
    private IEnumerable<Middle> Middles(Joined served)
    {
        for (var host = 0; host < parts.Count; host++)
        {
            SeatedOn[] near = [.. _near[host].Where(n => n.IsAllowed && (n.Served == host || Meet(host, n) is not null))];
            foreach (var seat in near.Where(n => n.Served != host).Select(n => Math.Round(Meet(host, n)!.Value / Step) * Step).Distinct())
            {
                if (Math.Abs(seat) < Step / 2 || _seatsTried.Contains((host, seat)))
                {
                    continue;
                }

                int[] joins = [.. near.Where(n => Math.Abs(n.Off - seat) <= n.Most).Select(n => n.Served).Order()];
                if (joins.Length > 1 && !served.Has(joins))
                {
                    yield return new(host, seat, joins);
                }
            }
        }
    }

    // The middle of where both adjusters can stand, as the seat's way from where the host's bracket has it; null where they do not meet.
    private double? Meet(int host, SeatedOn at)
    {
        var own = Array.Find(_near[host], n => n.Served == host);
        if (own.Mount == default)
        {
            return null;
        }

        double low = Math.Max(own.Off - own.Most, at.Off - at.Most), high = Math.Min(own.Off + own.Most, at.Off + at.Most);
        return low <= high ? (low + high) / 2 : null;
    }

    // Whether it goes onto a combination with which no bracket joins it: on the same body only where the adjusters meet, on another anywhere.
    private bool IsAlone(int host, Joined served) => _near[host].Any(n => n.Served != host
        && (parts[n.Served].Combination.Body.Code != parts[host].Combination.Body.Code || Meet(host, n) is not null)
        && !served.Has([Math.Min(host, n.Served), Math.Max(host, n.Served)]));

    private ImmutableArray<Bracket> Cheapest(int host, Job job, double seat, int most)
    {
        var own = parts[host].Bracket;
        var preferences = job.Preferences;
        if (hasStrength)
        {
            preferences = preferences with { MinThickness = Math.Max(preferences.MinThickness, Math.Min(own.Stock.Thickness, preferences.MaxThickness)) };
        }

        return SharedBrackets.Cheapest(job with { Preferences = preferences }, seat, own.Flat.Bends.Length, most);
    }

    // What both allow of sheets; null where the host's own wishes are no wider, or nothing is left.
    private Preferences? Common(int host, int other)
    {
        var (one, two) = (parts[host].Job.Preferences, parts[other].Job.Preferences);
        var both = one with
        {
            MinThickness = Math.Max(one.MinThickness, two.MinThickness),
            MaxThickness = Math.Min(one.MaxThickness, two.MaxThickness),
            Materials = one.Materials.IsEmpty ? two.Materials : two.Materials.IsEmpty ? one.Materials : [.. one.Materials.Where(two.Materials.Contains)],
        };
        return both == one || both.MinThickness > both.MaxThickness || (both.Materials.IsEmpty && !one.Materials.IsEmpty) ? null : both;
    }
}
