using BracketGen.Units;

namespace BracketGen.Cli.Interview;

/// <summary>In which units bare numbers are meant: those of the profiles, until another was said and confirmed.</summary>
/// <remarks>By the unit in which a profile would read a bare number, so that a modulus in GPa leaves strengths in MPa alone.</remarks>
internal sealed class UnitMemory
{
    private readonly SortedDictionary<string, Unit> _kept = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Unit> _said = [];
    private readonly HashSet<(string Standard, string Unit)> _settled = [];

    /// <summary>Standard units with what counts in their place, in alphabetical order.</summary>
    public IEnumerable<(string Standard, Unit Unit)> Kept => _kept.Select(k => (k.Key, k.Value));

    /// <summary>Unit of a bare number.</summary>
    public Unit Of(Unit standard) => _kept.GetValueOrDefault(standard.Name, standard);

    /// <summary>The unit said last, where nobody has yet said whether bare numbers are meant in it; null where that is clear.</summary>
    public Unit? Unsettled(Unit standard) =>
        _said.TryGetValue(standard.Name, out var said) && said != Of(standard) && !_settled.Contains((standard.Name, said.Name)) ? said : null;

    /// <summary>A number was written with its unit.</summary>
    public void Say(Unit standard, Unit unit) => _said[standard.Name] = unit;

    /// <summary>Bare numbers are meant in this unit from here on, and it is not asked again whether in <paramref name="other"/>.</summary>
    public void Settle(Unit standard, Unit unit, Unit other)
    {
        _settled.Add((standard.Name, unit.Name));
        _settled.Add((standard.Name, other.Name));
        if (unit == standard)
        {
            _kept.Remove(standard.Name);
        }
        else
        {
            _kept[standard.Name] = unit;
        }
    }
}
