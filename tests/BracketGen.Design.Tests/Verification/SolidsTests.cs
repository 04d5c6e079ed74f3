using BracketGen.Bench.Solids;
using BracketGen.Design.Checks;

namespace BracketGen.Design.Tests.Verification;

/// <summary>Brackets of the search's own against solids by CalculiX 2.20 on meshes by Gmsh 4.8.4 from our STEP files (the benchmark's <c>solids</c>; table in docs/strength.md).</summary>
public sealed class SolidsTests
{
    private static readonly Lazy<Dictionary<string, SolidCase>> Cases = new(() => SolidCase.All().ToDictionary(c => c.Name));

    // Per newton, because loads change with the job. The first number is ours when the others were found: another means another bracket, and asks for solids anew.
    [Theory]
    [InlineData("dunlin-hornbeam-70, 1.5 mm, 1 bend", 36.6508, 2.4355, 2.4612, 642.1, 1548.3)]
    [InlineData("dunlin-rowan-64, 2 mm, 1 bend", 37.4035, 0.5804, 0.5747, 37.0, 54.4)]
    [InlineData("plover-alder-58, 2.5 mm, 1 bend", 33.9683, 0.0349, 0.0344, 18.5, 23.3)]
    [InlineData("whimbrel-hornbeam-70, 3 mm, 1 bend", 36.6508, 0.0765, 0.0759, 20.2, 20.3)]
    [InlineData("dunlin-hornbeam-70, 4 mm, 1 bend", 36.6508, 0.3142, 0.3148, 76.8, 162.8)]
    [InlineData("whimbrel-hornbeam-70, 5 mm, 1 bend", 36.6508, 0.0273, 0.0267, 10.4, 11.0)]
    [InlineData("dunlin-hornbeam-70, 1.5 mm, 2 bends", 36.6508, 0.3704, 0.3677, 69.7, 77.4)]
    [InlineData("dunlin-rowan-64, 2 mm, 2 bends", 36.1004, 1.3969, 1.3862, 49.7, 68.2)]
    [InlineData("plover-alder-58, 2.5 mm, 2 bends", 33.9683, 0.1450, 0.1435, 33.4, 38.7)]
    [InlineData("whimbrel-hornbeam-70, 3 mm, 2 bends", 36.6508, 0.8823, 0.8769, 62.5, 63.9)]
    [InlineData("dunlin-hornbeam-70, 4 mm, 2 bends", 36.6508, 1.0302, 1.0214, 62.6, 62.6)]
    [InlineData("plover-alder-58, 5 mm, 2 bends", 33.9683, 0.0285, 0.0281, 7.2, 7.2)]
    public void Give_and_stress_in_the_bend_are_those_of_a_solid(string name, double force, double ours, double give, double bent, double anywhere)
    {
        var solid = Cases.Value[name];
        var prepared = solid.Settled();
        var response = prepared.Under(solid.Force.Unit);
        Assert.Equal(ours / force, response.AlongForce, 0.01 * ours / force);
        Assert.InRange(response.AlongForce / (give / force), 0.95, 1.03);
        var bend = Enumerable.Range(0, prepared.Flat.Nodes.Length)
            .Where(n => solid.ZoneOf(prepared.Model.Mesh.Nodes[n].Vector) is SolidZone.Bend or SolidZone.InsideOfBend).Max(n => response.Solution.Stresses[n].Largest);
        Assert.InRange(bend / (bent / force), 0.87, 1.15);

        // The clamped rim of a washer makes ours higher; never lower.
        Assert.InRange(response.Solution.LargestStress / (anywhere / force), 1.02, 1.42);
    }
}
