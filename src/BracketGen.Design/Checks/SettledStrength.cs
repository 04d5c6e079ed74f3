using System.Collections.Immutable;
using BracketGen.Strength.Meshing;

namespace BracketGen.Design.Checks;

/// <summary>Strength on meshes that are made finer where stresses are judged, until they move no more.</summary>
/// <remarks>
/// Each mesh has shorter edges at the nodes whose stress comes near the largest: a quarter as long in the second mesh, then half as long each time. What the last
/// halving changed says how far the stresses may still go (docs/strength.md).
/// </remarks>
internal static class SettledStrength
{
    /// <summary>Part of a judged stress that the last halving may change.</summary>
    public const double Enough = 0.02;

    /// <summary>What is left of the way after a halving, in parts of what that changed, as if each further one changed 0.6 times as much: 0.5 in the middle on 48 candidates of the shipped jobs.</summary>
    public const double Left = 1.5;

    // Two meshes may agree by chance: no move counts as less than this.
    private const double Chance = Enough / 2;

    // A node counts as near the largest stress from this part of it on: more than the first mesh misses.
    private const double Near = 0.85;

    // Places of one step. Where the stress is that large at more of them it is smooth.
    private const int MostSpots = 24;

    /// <summary>The stages on the last mesh.</summary>
    /// <param name="first">On the first mesh.</param>
    /// <param name="detail">How finely the bracket is meshed, and how many meshes are made at the most.</param>
    public static StrengthStages Of(StrengthStages first, StrengthDetail detail)
    {
        var (stages, spots) = (first, ImmutableArray<FineSpot>.Empty);
        var largest = Largest(first);
        for (var meshes = 1; meshes < detail.MostMeshes; meshes++)
        {
            spots = spots.AddRange(SpotsOf(stages, meshes == 1 ? 4 : 2));
            stages = stages.On(detail.Prepare(stages.Prepared.Part, spots));
            var now = Largest(stages);
            var moved = now.Zip(largest, (n, before) => n > 0 ? Math.Abs(n - before) / n : 0).Max();
            largest = now;
            stages.MeshError = Left * Math.Max(moved, Chance);
            if (moved < Enough)
            {
                break;
            }
        }

        return stages;
    }

    private static double[] Largest(StrengthStages stages) => [.. stages.JudgedStresses().Select(f => f.Max())];

    private static List<FineSpot> SpotsOf(StrengthStages stages, double finer)
    {
        var mesh = stages.Prepared.Flat;
        var edges = new (double Sum, int Count)[mesh.Nodes.Length];
        foreach (var t in mesh.Triangles)
        {
            for (var corner = 0; corner < 3; corner++)
            {
                var (a, b) = (t[corner], t[(corner + 1) % 3]);
                var length = mesh.Nodes[a].DistanceTo(mesh.Nodes[b]);
                edges[a] = (edges[a].Sum + length, edges[a].Count + 1);
                edges[b] = (edges[b].Sum + length, edges[b].Count + 1);
            }
        }

        var spots = new List<FineSpot>();
        foreach (var field in stages.JudgedStresses())
        {
            // Without the solver's round-off, which would decide between two places that are equal.
            double[] stress = [.. field.Select(LoadCase.SixFigures)];
            var largest = stress.Max();
            foreach (var n in Enumerable.Range(0, stress.Length).Where(n => stress[n] >= Near * largest).OrderByDescending(n => stress[n]).ThenBy(n => n))
            {
                var edge = edges[n].Sum / edges[n].Count;
                var at = mesh.Nodes[n];
                if (spots.Count < MostSpots && spots.TrueForAll(s => s.At.DistanceTo(at) > edge / 2))
                {
                    spots.Add(new(at, edge / finer));
                }
            }
        }

        return spots;
    }
}
