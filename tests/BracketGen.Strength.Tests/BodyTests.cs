using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Elements;
using BracketGen.Strength.Model;
using BracketGen.Strength.Parts;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Strength.Tests;

/// <summary>A rigid body on a seat against closed forms and against CalculiX.</summary>
public sealed class BodyTests
{
    // An adjuster of 40 g, its centre of gravity 11.5 mm out on the side away from the foot.
    private static readonly SeatBody End = new(4e-5, 11.5, 9e-4, 6e-3);

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(12, 0, 4e-3)]
    [InlineData(-20, 0, 0)]
    [InlineData(12, 15, 4e-3)]
    public void Cantilever_with_a_body_whose_centre_is_off_its_tip(double height, double beyond, double inertia)
    {
        // Bernoulli and Euler's beam, fixed at 0. At the end l: E I w'' = ω² ((J + m (h² + e²)) w' + m e w), E I w''' = -ω² m (w + e w'): the inertia of a body that moves and turns with it
        // (boundary conditions as in S. S. Rao, Vibration of Continuous Systems, chapter on beams with end masses; from memory).
        const double length = 400, width = 20, thickness = 4, density = 7.85e-9, modulus = 210000, mass = 1.2e-4, column = 4;
        const double end = length - column / 2;
        double stiffness = modulus * width * thickness * thickness * thickness / 12, perLength = density * width * thickness;
        double Determinant(double omega)
        {
            var b = Math.Sqrt(Math.Sqrt(perLength * omega * omega / stiffness));
            double x = b * end, square = omega * omega;
            double about = square * (inertia + mass * (height * height + beyond * beyond)), both = square * mass * beyond, alone = square * mass;

            // The two shapes that are clamped at 0, and their derivatives there.
            double[] one = [Math.Cosh(x) - Math.Cos(x), b * (Math.Sinh(x) + Math.Sin(x)), b * b * (Math.Cosh(x) + Math.Cos(x)), b * b * b * (Math.Sinh(x) - Math.Sin(x))];
            double[] other = [Math.Sinh(x) - Math.Sin(x), b * (Math.Cosh(x) - Math.Cos(x)), b * b * (Math.Sinh(x) + Math.Sin(x)), b * b * b * (Math.Cosh(x) + Math.Cos(x))];
            double Moment(double[] w) => stiffness * w[2] - about * w[1] - both * w[0];
            double Shear(double[] w) => stiffness * w[3] + alone * w[0] + both * w[1];
            return Moment(one) * Shear(other) - Moment(other) * Shear(one);
        }

        var flat = Grid.Rectangle(length, width, (int)(length / column), 4);
        var shares = new[] { length, length - column }.SelectMany(x => Grid.EdgeLoad(flat.Where(p => Math.Abs(p.X - x) < 1e-6).ToList(), new(0.5, 0, 0))).Select(l => (l.Node, l.Force.X));
        var model = new ShellModel(flat.Flat(), thickness, new(modulus, 0, density), Held.Clamped(flat.Where(p => p.X == 0)))
        {
            Bodies = [new([.. shares], mass, new(beyond, 0, height), new(0, 0, 1), inertia / 2, inertia)],
        };

        // The first two bending modes are those of the strip up and down; sideways it is 25 times as stiff.
        var modes = ShellSystem.Factorise(model).LowestModes(6).Where(m => m.Shape.Max(s => Math.Abs(s.Z)) > 0.7 && m.Shape.Where((_, i) => flat.Nodes[i].Y == width / 2).Max(s => Math.Abs(s.Z)) > 0.7).ToArray();
        var from = 1.0;
        for (var i = 0; i < 2; i++)
        {
            var root = from;
            while (Math.Sign(Determinant(root + 0.5)) == Math.Sign(Determinant(from)))
            {
                root += 0.5;
            }

            Assert.InRange(modes[i].Frequency * 2 * Math.PI / root, 0.99, 1.01);
            from = root + 1;
        }
    }

    [Fact]
    public void Any_rigid_motion_of_the_seat_moves_the_body_exactly()
    {
        // Twice the kinetic energy of a rigid body: m v² + ω J ω (any text on mechanics). The sheet's own is that without the body.
        var prepared = LBracket.Part.Prepare(5, 3);
        var free = new FreeNodes(prepared.Model);
        var gen = Gen.Double[-1, 1];
        var vector = Gen.Select(gen, gen, gen, (x, y, z) => new Vector3(x, y, z));
        Gen.Select(vector, vector, vector.Where(v => v.Length > 0.1), vector).Check(
            200,
            c =>
            {
                var (moves, turns, axis, offset) = (c.Item1, c.Item2, c.Item3.Unit, 20 * c.Item4);
                var body = new AttachedBody(prepared.SeatShares, 3e-5, offset, axis, 2e-3, 5e-3);
                var x = new double[free.Pattern.Nodes * Block6.Order];
                for (var k = 0; k < free.Pattern.Nodes; k++)
                {
                    var v = moves + turns.Cross(prepared.Model.Mesh.Nodes[free.NodeOf(k)].Vector);
                    (x[Block6.Order * k], x[Block6.Order * k + 1], x[Block6.Order * k + 2]) = (v.X, v.Y, v.Z);
                }

                var energy = BodyRows.Of(prepared.Model with { Bodies = [body] }, free).Sum(row => Math.Pow(row.At.Select((at, i) => row.Values[i] * x[at]).Sum(), 2));
                var centre = moves + turns.Cross(LBracket.Fold(new(LBracket.Seat.Centre)).Vector + offset);
                var along = turns.Dot(axis);
                var expected = body.Mass * centre.Dot(centre) + body.AboutAxis * along * along + body.AboutAcross * (turns.Dot(turns) - along * along);
                Assert.Equal(expected, energy, 1e-9 * expected + 1e-15);
            });
    }

    [Fact]
    public void A_body_on_a_line_of_nodes_is_refused()
    {
        var flat = Grid.Rectangle(20, 10, 4, 2);
        var tip = flat.Where(p => p.X == 20).Select(n => (n, 1.0 / 3));
        var model = new ShellModel(flat.Flat(), 1, new(210000, 0.3, 7.85e-9), Held.Clamped(flat.Where(p => p.X == 0))) { Bodies = [new([.. tip], 1e-5, default, new(0, 0, 1), 0, 0)] };
        var error = Assert.Throws<ArgumentException>(() => ShellSystem.Factorise(model).LowestModes(1));
        Assert.Contains("in one line", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Frequencies_with_an_end_body_are_those_of_CalculiX()
    {
        var part = LBracket.Part with { SeatBody = End };
        var prepared = part.Prepare(3, 1.5);
        var modes = prepared.LowestModes(3);
        for (var i = 0; i < 3; i++)
        {
            Assert.InRange(modes[i].Frequency / Kept[i], 0.97, 1.03);
        }

        // The bounds know the body too. A point in the middle surface would be on the unsafe side.
        Assert.InRange(prepared.FirstFrequencyAtMost(), modes[0].Frequency * (1 - 1e-10), 1.05 * modes[0].Frequency);
        Assert.InRange(prepared.FirstFrequencyCloselyAtMost(), modes[0].Frequency * (1 - 1e-10), 1.005 * modes[0].Frequency);
        Assert.InRange((part with { SeatBody = new(End.Mass, 0, 0, 0) }).Prepare(3, 1.5).LowestModes(1)[0].Frequency / Kept[0], 1.015, 1.2);
    }

    [SkippableFact]
    public void Kept_frequencies_are_those_that_CalculiX_finds()
    {
        var calculix = OutsideTool.Require("ccx");
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var deck = CalculixDeck.Write(LBracket.Part.Mesh(4, 2), End);
            File.WriteAllText(Path.Combine(folder.FullName, "end.inp"), deck);
            calculix.RunOrFail(["end"], folder: folder.FullName);
            var (_, frequencies) = CalculixDeck.Read(deck, File.ReadAllText(Path.Combine(folder.FullName, "end.dat")));
            for (var i = 0; i < 3; i++)
            {
                Assert.Equal(Kept[i], frequencies[i], 1e-3 * Kept[i]);
            }
        }
        finally
        {
            folder.Delete(true);
        }
    }

    // CalculiX 2.20, the bracket of solid quadratic wedges, the body six masses tied to the seat's nodes (CalculixDeck).
    private static readonly double[] Kept = [395.7186, 743.6758, 1225.112];
}
