namespace BracketGen.Profiles.Forms;

/// <summary>Which known word a mistyped one was meant to be.</summary>
public static class Nearest
{
    /// <summary>The nearest of <paramref name="known"/>, or null where none is near enough to be worth a guess.</summary>
    /// <param name="word">The word as written.</param>
    /// <param name="known">The words that are known.</param>
    public static string? To(string word, IEnumerable<string> known)
    {
        var bare = Bare(word);
        return known
            .Where(k => Math.Abs(k.Length - word.Length) <= Slips(word, k)) // the distance is at least the difference in length
            .Select(k => (Word: k, Distance: Distance(bare, Bare(k))))
            .Where(c => c.Distance <= Slips(word, c.Word))
            .OrderBy(c => c.Distance)
            .FirstOrDefault().Word;
    }

    // One slip in three letters is a typing error; more is another word.
    private static int Slips(string a, string b) => Math.Max(1, Math.Min(a.Length, b.Length) / 3);

    private static string Bare(string word) => word[..Math.Min(word.Length, 60)].ToLowerInvariant().Replace('-', '_').Replace(' ', '_');

    // Edit distance with neighbours exchanged counting once (optimal string alignment).
    private static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    d[i, j] = i + j;
                    continue;
                }

                d[i, j] = Math.Min(Math.Min(d[i - 1, j], d[i, j - 1]) + 1, d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
                }
            }
        }

        return d[a.Length, b.Length];
    }
}
