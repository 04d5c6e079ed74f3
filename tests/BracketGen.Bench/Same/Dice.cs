using System.Globalization;
using BracketGen.Profiles;
using BracketGen.Profiles.Errors;
using Tomlyn.Model;

namespace BracketGen.Bench.Same;

/// <summary>Random choices of one job: the same for the same seed and number.</summary>
internal sealed class Dice(int seed, int number)
{
    private readonly Random _random = new(unchecked((seed * 1_000_003) + number));

    /// <summary>True in so many of a hundred cases.</summary>
    public bool Percent(int share) => _random.Next(100) < share;

    /// <summary>One of a few.</summary>
    public T Pick<T>(params IReadOnlyList<T> items) => items[_random.Next(items.Count)];

    /// <summary>A whole number, both ends included.</summary>
    public long Whole(int from, int to) => _random.Next(from, to + 1);

    /// <summary>A number with as many places as a reading has.</summary>
    public double Between(double from, double to, int places = 2) => Math.Round(from + ((to - from) * _random.NextDouble()), places);

    /// <summary>A length (mm) as somebody may write it: bare, or in inches.</summary>
    public object Length(double length) => Percent(30)
        ? string.Create(CultureInfo.InvariantCulture, $"{length / 25.4:0.####} in")
        : Math.Round(length, 2);

    /// <summary>A reading in the unit of the file, most often with how well it was measured.</summary>
    public object Reading(double value, double plusMinus) => Percent(75)
        ? new TomlTable(inline: false) { ["value"] = Math.Round(value, 3), ["plus_minus"] = Math.Round(plusMinus, 3) }
        : Math.Round(value, 3);

    /// <summary>Some of a list, in its order, never fewer than <paramref name="minimum"/>.</summary>
    public List<T> Some<T>(IReadOnlyList<T> items, int minimum, int percent)
    {
        var places = Enumerable.Range(0, items.Count).ToArray();
        _random.Shuffle(places);
        return [.. places.Where((_, i) => i < minimum || Percent(percent)).Order().Select(i => items[i])];
    }
}
