using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;
using BracketGen.Strength.Parts;

namespace BracketGen.Strength.Tests;

/// <summary>Washers that are moved, and which nodes are theirs.</summary>
public sealed class MovedWasherTests
{
    [Fact]
    public void Moving_a_washer_is_what_a_model_with_that_displacement_finds()
    {
        var prepared = LBracket.Part.Prepare(4, 1.5);
        var nodes = prepared.WasherNodes();
        Assert.Equal(prepared.Model.Held.Select(h => h.Node).Distinct().Count(), nodes.Sum(n => n.Length));
        Assert.All(nodes[0], n => Assert.True(prepared.Flat.Nodes[n].X < 0));
        var by = new Vector3(0.01, -0.02, 0.05);
        var moved = prepared.Moved(nodes[1], by);

        // The other way: the same displacements given to the model before it is factorised.
        var given = ShellSystem.Factorise(new(
            prepared.Model.Mesh, prepared.Model.Thickness, prepared.Model.Material,
            [.. prepared.Model.Held, .. nodes[1].SelectMany(n => (Held[])[new(n, Freedom.X, by.X), new(n, Freedom.Y, by.Y), new(n, Freedom.Z, by.Z)])])).Solve([]);
        for (var n = 0; n < moved.Stresses.Length; n++)
        {
            Assert.True((moved.Displacements[n] - given.Displacements[n]).Length < 1e-10);
            Assert.Equal(given.Stresses[n].Largest, moved.Stresses[n].Largest, 1e-6);
        }

        // Moving both washers together bends nothing.
        var other = prepared.Moved(nodes[0], by);
        Assert.True(moved.Displacements.Zip(other.Displacements, (a, b) => (a + b - by).Length).Max() < 1e-8);
        Assert.Throws<ArgumentException>(() => prepared.Moved([prepared.Flat.Nodes.Length - 1], by));
    }

    [Fact]
    public void A_strip_bent_by_its_ends_is_a_clamped_beam()
    {
        // Roark, beams with both ends held, one end moved by δ across: moment 6 E I δ/L², so the stress is 3 E t δ/L². Poisson's ratio zero: a strip is a beam.
        const double length = 40, width = 4, thickness = 2, young = 70_000, by = 0.05;
        var flat = Grid.Rectangle(length, width, 80, 8);
        var mesh = ShellMesh.Fold(flat, p => new(p.X, p.Y, 0));
        int[] Ends(double x) => [.. Enumerable.Range(0, flat.Nodes.Length).Where(n => flat.Nodes[n].X == x)];
        var solution = ShellSystem.Factorise(new(mesh, thickness, new(young, 0, 0), Held.Clamped([.. Ends(0), .. Ends(length)])))
            .Moved(Ends(length).Select(n => new Held(n, Freedom.Z, by)));
        var stress = 3 * young * thickness * by / (length * length);
        Assert.Equal(stress, solution.LargestStress, 0.03 * stress);
    }

    [Fact]
    public void Only_outline_and_holes_are_edges()
    {
        var prepared = LBracket.Part.Prepare(4, 1.5);
        var flat = LBracket.Part.Flat;
        for (var n = 0; n < prepared.Flat.Nodes.Length; n++)
        {
            var at = prepared.Flat.Nodes[n].Vector;
            var off = flat.Holes.Append(flat.Outline).Min(c => c.DistanceTo(at));

            // Chords of the round holes lie a little off them.
            Assert.Equal(prepared.OnEdge[n], off < 0.05);
        }
    }
}
