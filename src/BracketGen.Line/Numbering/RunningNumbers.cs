using BracketGen.Line.Combinations;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Numbering;

/// <summary>Gives out running numbers, one after the other: asked in the same order, it gives the same.</summary>
public sealed class RunningNumbers
{
    private readonly NumberRule _rule;
    private readonly HashSet<string> _taken;
    private int _next;

    internal RunningNumbers(NumberRule rule, Register register)
    {
        (_rule, _taken) = (rule, new(register.Owners.Keys, StringComparer.OrdinalIgnoreCase));
        _next = Math.Max(rule.FirstSerial, register.Revisions.Max(r => r.Serial + 1) ?? 0);
    }

    /// <summary>The next number, for a combination whose part has none yet.</summary>
    public (string Number, int Serial) For(Combination combination)
    {
        while (true)
        {
            var serial = _next++;
            var number = PartNumber.Of(_rule, combination, serial);
            if (_taken.Add(number))
            {
                return (number, serial);
            }
        }
    }
}
