namespace BracketGen.Line.Sharing;

/// <summary>Which combinations are joined by one bracket.</summary>
/// <param name="count">Number of combinations.</param>
internal sealed class Joined(int count)
{
    private readonly List<HashSet<int>>[] _of = [.. Enumerable.Range(0, count).Select(_ => new List<HashSet<int>>())];

    /// <summary>Takes in a bracket that may serve these.</summary>
    public void Add(IReadOnlyCollection<int> served)
    {
        if (served.Count < 2)
        {
            return;
        }

        var set = served.ToHashSet();
        foreach (var row in set)
        {
            _of[row].Add(set);
        }
    }

    /// <summary>Whether one bracket may serve all of these.</summary>
    public bool Has(int[] all)
    {
        var fewest = all.MinBy(r => _of[r].Count);
        return _of[fewest].Exists(s => s.Count >= all.Length && all.All(s.Contains));
    }
}
