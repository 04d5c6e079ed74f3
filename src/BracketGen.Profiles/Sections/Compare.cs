using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>Lengths of one section held against each other.</summary>
internal static class Compare
{
    /// <summary>Reports two values of which the first is not below the second, at the one that is written.</summary>
    public static void InOrder(SectionValues values, Key<double> min, Key<double> max, Quantity quantity)
    {
        if (values.Get(min) >= values.Get(max))
        {
            var isAtMin = values.Has(min);
            values.Report(
                isAtMin ? min : max,
                new WrongOrder(min.Name, values.Get(min), max.Name, values.Get(max), quantity, isAtMin, !(isAtMin && values.Has(max)), MayBeEqual: false));
        }
    }

    public static void AtLeast(SectionValues values, Key<double> key, double min, Key other)
    {
        if (values.Get(key) < min)
        {
            values.Report(key, new Compared(Relation.AtLeast, other.Name, Quantity.Length, min, CompareReason.Contains));
        }
    }

    public static void LessThan(SectionValues values, Key key, double value, double max, Key other)
    {
        if (value >= max)
        {
            values.Report(key, new Compared(Relation.LessThan, other.Name, Quantity.Length, max, CompareReason.Contains));
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
