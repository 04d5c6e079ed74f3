using System.Globalization;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Numbering;

/// <summary>Revisions in the order in which they follow each other.</summary>
public static class Revision
{
    // ASME Y14.35, revision letters: I, O, Q, S, X and Z are left out (from memory of the standard).
    private const string Letters = "ABCDEFGHJKLMNPRTUVWY";

    /// <summary>The first revision.</summary>
    public static string First(RevisionStyle style) => style == RevisionStyle.Numbers ? "1" : "A";

    /// <summary>The revision after <paramref name="revision"/>; null where that is none of the style.</summary>
    public static string? Next(RevisionStyle style, string revision)
    {
        if (style == RevisionStyle.Numbers)
        {
            return int.TryParse(revision, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is > 0 and < int.MaxValue
                ? (number + 1).ToString(CultureInfo.InvariantCulture)
                : null;
        }

        if (revision.Length == 0 || revision.Any(c => !Letters.Contains(c)))
        {
            return null;
        }

        var letters = revision.ToCharArray();
        for (var i = letters.Length - 1; i >= 0; i--)
        {
            var at = Letters.IndexOf(letters[i]);
            if (at + 1 < Letters.Length)
            {
                letters[i] = Letters[at + 1];
                return new(letters);
            }

            letters[i] = Letters[0];
        }

        return Letters[0] + new string(letters);
    }
}
