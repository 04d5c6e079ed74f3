using System.Collections.Immutable;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;

namespace BracketGen.Line.Solving;

/// <summary>An answer with the number of its part.</summary>
/// <param name="Index">Place of its combination in the line.</param>
/// <param name="Answer">The answer.</param>
/// <param name="Number">Part number; empty where there is no part and never was one.</param>
/// <param name="Serial">Its running number; null where it has none.</param>
internal readonly record struct Numbered(int Index, Answered Answer, string Number, int? Serial);

/// <summary>Gives each part its number, whatever the order in which the answers come: a running number waits for all combinations before its own.</summary>
/// <param name="numbers">The numbers.</param>
/// <param name="combinations">The combinations.</param>
internal sealed class NumberQueue(NumberPlan numbers, ImmutableArray<Combination> combinations)
{
    private readonly Lock _gate = new();
    private readonly RunningNumbers _running = numbers.Running();
    private readonly bool[] _settled = new bool[combinations.Length];
    private readonly Answered?[] _waiting = new Answered?[combinations.Length];
    private int _first;

    /// <summary>Takes in an answer; returns those that have their number now.</summary>
    public IReadOnlyList<Numbered> Add(int index, Answered answer)
    {
        var combination = combinations[index];
        var known = numbers.Known(combination);
        List<Numbered> ready = [];
        lock (_gate)
        {
            if (known is not null || !answer.HasPart)
            {
                ready.Add(new(index, answer, known?.PartNumber ?? "", known?.Serial));
                _settled[index] = true;
            }
            else if (numbers.NumberOf(combination) is { } number)
            {
                ready.Add(new(index, answer, number, null));
                _settled[index] = true;
            }
            else
            {
                _waiting[index] = answer;
            }

            for (; _first < combinations.Length && (_settled[_first] || _waiting[_first] is not null); _first++)
            {
                if (_waiting[_first] is { } next)
                {
                    var (given, serial) = _running.For(next.Combination);
                    ready.Add(new(_first, next, given, serial));
                    _waiting[_first] = null;
                }
            }
        }

        return ready;
    }
}
