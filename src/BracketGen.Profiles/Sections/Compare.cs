using System.Globalization;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary>Lengths of one section held against each other.</summary>
internal static class Compare
{
    public static void AtLeast(SectionValues values, Key<double> key, double least, Key other)
    {
        if (values.Get(key) < least)
        {
            values.Report(key, $"{other.Name} or more, {Millimetres(least)} or more", $"Measure {key.Name} and {other.Name} again: the one contains the other.");
        }
    }

    public static void MoreThan(SectionValues values, Key<double> key, double least, Key other)
    {
        if (values.Get(key) <= least)
        {
            values.Report(key, $"more than {other.Name}, over {Millimetres(least)}", $"Measure {key.Name} and {other.Name} again: the one contains the other.");
        }
    }

    public static string Millimetres(double length) => length.ToString("0.###", CultureInfo.InvariantCulture) + " mm";
}
