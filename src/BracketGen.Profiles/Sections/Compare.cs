using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>Lengths of one section held against each other.</summary>
internal static class Compare
{
    public static void AtLeast(SectionValues values, Key<double> key, double min, Key other)
    {
        if (values.Get(key) < min)
        {
            values.Report(key, new Compared(Relation.AtLeast, other.Name, Quantity.Length, min, CompareReason.Contains));
        }
    }

    public static void MoreThan(SectionValues values, Key<double> key, double min, Key other)
    {
        if (values.Get(key) <= min)
        {
            values.Report(key, new Compared(Relation.MoreThan, other.Name, Quantity.Length, min, CompareReason.Contains));
        }
    }
}
