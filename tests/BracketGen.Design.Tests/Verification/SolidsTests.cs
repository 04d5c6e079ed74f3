using BracketGen.Bench.Solids;
using BracketGen.Design.Checks;

namespace BracketGen.Design.Tests.Verification;

/// <summary>Brackets of the search's own against solids by CalculiX 2.20 on meshes by Gmsh 4.8.4 from our STEP files (the benchmark's <c>solids</c>; table in docs/strength.md).</summary>
public sealed class SolidsTests
{
    private static readonly Lazy<Dictionary<string, SolidCase>> Cases = new(() => SolidCase.All().ToDictionary(c => c.Name));

    // Per newton, because loads change with the job. The first number is ours when the others were found: another means another bracket, and asks for solids anew.
    [Theory]
    [InlineData("dunlin-hornbeam-70, 1.5 mm, 1 bend", 36.6508, 2.4304, 2.4612, 642.1)]
    [InlineData("dunlin-rowan-64, 2 mm, 1 bend", 37.4035, 0.5801, 0.5747, 37.0)]
    [InlineData("plover-alder-58, 2.5 mm, 1 bend", 33.9683, 0.0348, 0.0344, 18.5)]
    [InlineData("whimbrel-hornbeam-70, 3 mm, 1 bend", 36.6508, 0.0765, 0.0759, 20.2)]
    [InlineData("dunlin-hornbeam-70, 4 mm, 1 bend", 36.6508, 0.3135, 0.3148, 76.8)]
    [InlineData("whimbrel-hornbeam-70, 5 mm, 1 bend", 36.6508, 0.0271, 0.0267, 10.4)]
    [InlineData("dunlin-hornbeam-70, 1.5 mm, 2 bends", 36.6508, 0.3701, 0.3677, 69.7)]
    public void Give_and_stress_in_the_bend_are_those_of_a_solid(string name, double force, double ours, double give, double bent)
    {
        var solid = Cases.Value[name];
        var prepared = StrengthDetail.Usual.Prepare(solid.Part);
        var response = prepared.Under(solid.Force.Unit);
        Assert.Equal(ours / force, response.AlongForce, 0.01 * ours / force);
        Assert.InRange(response.AlongForce / (give / force), 0.95, 1.03);
        var bend = Enumerable.Range(0, prepared.Flat.Nodes.Length)
            .Where(n => solid.ZoneOf(prepared.Model.Mesh.Nodes[n].Vector) is SolidZone.Bend or SolidZone.InsideOfBend).Max(n => response.Solution.Stresses[n].Largest);
        Assert.InRange(bend / (bent / force), 0.87, 1.15);
    }
}
