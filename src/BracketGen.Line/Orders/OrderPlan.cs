using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Line.Combinations;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Words.Line;

namespace BracketGen.Line.Orders;

/// <summary>A variant that is ordered, with the part that serves it, to be checked again in full.</summary>
/// <param name="Served">The variant; its bracket is the part.</param>
/// <param name="Mount">Where the part's mount flange lies on its throttle body, throttle frame as measured.</param>
public sealed record OrderedVariant(LinePart Served, Frame Mount);

/// <summary>A line of an order, found in the product line.</summary>
/// <param name="Item">The line.</param>
/// <param name="Part">The part to make.</param>
/// <param name="Variants">Keys of the variants it may be fitted to, at least one.</param>
public sealed record PlannedItem(OrderedItem Item, KeptPart Part, ImmutableArray<string> Variants);

/// <summary>An order with everything that it names.</summary>
/// <param name="Items">The lines.</param>
/// <param name="Variants">Every variant among them, by key, in the order of the product line.</param>
public sealed record OrderPlan(ImmutableArray<PlannedItem> Items, ImmutableSortedDictionary<string, OrderedVariant> Variants)
{
    /// <summary>Finds what is ordered in a made line.</summary>
    /// <param name="order">The order.</param>
    /// <param name="line">The line as it was made.</param>
    /// <param name="family">The family as it is now.</param>
    /// <param name="program">Version of the program.</param>
    /// <returns>The plan, or everything that is wrong with the order.</returns>
    public static (OrderPlan? Plan, ImmutableArray<OrderProblem> Problems) Of(LineOrder order, KeptLine line, LoadedFamily family, string program)
    {
        var find = new Finder(line, family, program);
        var items = ImmutableArray.CreateBuilder<PlannedItem>();
        var variants = ImmutableSortedDictionary.CreateBuilder<string, OrderedVariant>(StringComparer.Ordinal);
        var problems = ImmutableArray.CreateBuilder<OrderProblem>();
        var pieces = 0L;
        foreach (var item in order.Items)
        {
            var (found, problem) = find.VariantsOf(item);
            pieces += item.Quantity;
            if (problem is null && pieces > LineOrder.MaxPieces)
            {
                problems.Add(new OrderProblem.ManyPieces(item.Line, LineOrder.MaxPieces));
                break;
            }

            foreach (var variant in problem is null ? found : [])
            {
                if (!variants.ContainsKey(variant.Combination))
                {
                    if (find.Ordered(variant) is { } ordered)
                    {
                        variants.Add(variant.Combination, ordered);
                    }
                    else
                    {
                        problem = new OrderProblem.Changed(item.Line, item.Name, variant.Combination);
                        break;
                    }
                }
            }

            if (problem is not null)
            {
                problems.Add(problem);
            }
            else
            {
                items.Add(new(item, find.PartOf(found[0]), [.. found.Select(v => v.Combination)]));
            }
        }

        return problems.Count > 0 ? (null, problems.ToImmutable()) : (new(items.ToImmutable(), variants.ToImmutable()), []);
    }

    private sealed class Finder(KeptLine line, LoadedFamily family, string program)
    {
        private readonly CombinationInputs _inputs = new(family, program);
        private readonly FamilyCombinations _combinations = FamilyCombinations.Of(family);
        private readonly Dictionary<string, KeptPart> _parts = line.Parts.ToDictionary(p => p.PartNumber);
        private readonly ILookup<string, KeptVariant> _byPart = line.Variants.ToLookup(v => v.Part);
        private readonly Dictionary<string, KeptVariant> _byKey = line.Variants.ToDictionary(v => v.Combination), _byNumber = line.Variants.ToDictionary(v => v.CatalogueNumber);
        private Dictionary<string, Combination>? _offered;

        private Dictionary<string, Combination> Offered => _offered ??= _combinations.Offered.ToDictionary(c => c.Key);

        public KeptPart PartOf(KeptVariant variant) => _parts[variant.Part];

        public (IReadOnlyList<KeptVariant> Found, OrderProblem? Problem) VariantsOf(OrderedItem item) => item.By switch
        {
            OrderedBy.Part => Parts(item),
            OrderedBy.CatalogueNumber when _byNumber.TryGetValue(item.Name, out var numbered) => ([numbered], null),
            OrderedBy.CatalogueNumber => ([], new OrderProblem.Unknown(item.Line, item.By, item.Name, Near(item.Name, _byNumber.Keys))),
            _ when _byKey.TryGetValue(item.Name, out var variant) => ([variant], null),
            _ => ([], Without(item)),
        };

        private (IReadOnlyList<KeptVariant> Found, OrderProblem? Problem) Parts(OrderedItem item) =>
            _byPart.Contains(item.Name) ? ([.. _byPart[item.Name]], null)
            : _byNumber.TryGetValue(item.Name, out var served) ? ([], new OrderProblem.NotMade(item.Line, item.Name, served.Part))
            : ([], new OrderProblem.Unknown(item.Line, item.By, item.Name, Near(item.Name, _parts.Keys)));

        private OrderProblem Without(OrderedItem item) =>
            _combinations.Excluded.FirstOrDefault(e => e.Combination.Key == item.Name) is { Combination: not null } excluded
                ? new OrderProblem.NotSold(item.Line, item.Name, item.Name, excluded.Reason)
            : Offered.ContainsKey(item.Name) ? new OrderProblem.NoBracket(item.Line, item.Name, item.Name)
            : new OrderProblem.Unknown(item.Line, item.By, item.Name, Near(item.Name, _byKey.Keys));

        /// <summary>A variant as it is checked again; null where it is no longer what the line was made from.</summary>
        public OrderedVariant? Ordered(KeptVariant variant)
        {
            if (!Offered.TryGetValue(variant.Combination, out var combination) || !combination.IsReadable || _inputs.HashOf(combination) != variant.Inputs)
            {
                return null;
            }

            var part = PartOf(variant);
            var job = CombinationJob.Of(family, combination, part.PartNumber, part.Revision);
            if (variant.Mount is not [var ox, var oy, var oz, var xx, var xy, var xz, var zx, var zy, var zz]
                || part.Shape.ToBracket(family, job.Vehicle.Cable, job.Preferences.StopOpening) is not { } bracket)
            {
                return null;
            }

            var made = new Made
            {
                Layout = Made.LayoutVersion,
                Combination = variant.Combination,
                Inputs = variant.Inputs,
                Asked = "",
                Outcome = Outcome.NotProven,
                Reasons = [],
                PartNumber = part.PartNumber,
                Revision = part.Revision,
                Files = [],
            };
            return new(new(combination, made, bracket, job), Frame.FromZX(new(ox, oy, oz), new(zx, zy, zz), new(xx, xy, xz)));
        }

        // Among very many names the nearest takes too long to look for.
        private static string? Near(string read, IReadOnlyCollection<string> names) => names.Count <= 5000 ? Nearest.To(read, names) : null;
    }
}
