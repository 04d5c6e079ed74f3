using System.Collections.Immutable;
using BracketGen.Line.Numbering;
using BracketGen.Line.Solving;

namespace BracketGen.Line.Lists;

/// <summary>The lists of what was given out: what to recall, what replaced what, what stays though it would be drawn otherwise today.</summary>
public static class IssuedLists
{
    /// <summary>What to recall, each variant with its part.</summary>
    public static ListTable Recall(Register register) => new(
        "recall", ["part_number", "revision", "combination", "names", "why"],
        [.. register.OpenRecalls.Select(r => (ImmutableArray<ListCell>)[r.PartNumber, r.Revision, r.Combination, r.Names, Joined(r.Why)])]);

    /// <summary>Which part replaced which on a variant, oldest first.</summary>
    public static ListTable Replaced(Register register)
    {
        var before = new Dictionary<string, RegisteredService>();
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<ListCell>>();
        foreach (var service in register.Services)
        {
            if (before.TryGetValue(service.Combination, out var old))
            {
                rows.Add([
                    service.Combination, service.Names, old.PartNumber ?? "", old.Revision ?? "", service.PartNumber ?? "", service.Revision ?? "", Joined(service.Why),
                ]);
            }

            before[service.Combination] = service;
        }

        return new("replaced", ["combination", "names", "part_before", "revision_before", "part_number", "revision", "why"], rows.ToImmutable());
    }

    /// <summary>The parts that stay because they pass, though the program would draw another today.</summary>
    public static ListTable Redraw(IEnumerable<Made> made) => new(
        "redraw", ["part_number", "revision", "combination", "what_would_be_different"],
        [.. made.Where(m => m.Redraw is not null).Select(m => (ImmutableArray<ListCell>)[m.PartNumber, m.Revision, m.Combination, Joined(m.Redraw!)])]);

    private static string Joined(IEnumerable<string> lines) => string.Join("; ", lines);
}
