using System.Collections.Immutable;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Combinations;

/// <summary>All combinations of a family: those to make, and those that are not offered.</summary>
/// <param name="Offered">To make, in their order.</param>
/// <param name="Excluded">Not offered, each with the family's reason.</param>
public sealed record FamilyCombinations(ImmutableArray<Combination> Offered, ImmutableArray<(Combination Combination, string Reason)> Excluded)
{
    /// <summary>Those of <paramref name="family"/>.</summary>
    public static FamilyCombinations Of(LoadedFamily family)
    {
        var all =
            (from vehicle in family.Vehicles
             from body in family.Bodies
             from material in family.Family.Materials
             from option in family.Options
             select (vehicle, body, material, option)).Select((c, i) => new Combination(i, c.vehicle, c.body, c.material, c.option));
        var offered = ImmutableArray.CreateBuilder<Combination>();
        var excluded = ImmutableArray.CreateBuilder<(Combination, string)>();
        foreach (var combination in all)
        {
            if (family.Family.Exclusions.FirstOrDefault(e => Covers(e, combination)) is { } exclusion)
            {
                excluded.Add((combination, exclusion.Reason));
            }
            else
            {
                offered.Add(combination);
            }
        }

        return new(offered.ToImmutable(), excluded.ToImmutable());
    }

    private static bool Covers(Exclusion exclusion, Combination combination) =>
        (exclusion.Vehicle ?? combination.Vehicle.Code) == combination.Vehicle.Code
        && (exclusion.Body ?? combination.Body.Code) == combination.Body.Code
        && (exclusion.Material ?? combination.Material.Code) == combination.Material.Code
        && (exclusion.Option ?? combination.Option.Option.Code) == combination.Option.Option.Code;
}
