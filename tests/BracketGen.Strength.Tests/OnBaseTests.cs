using System.Globalization;
using System.Text;
using BracketGen.Geometry;
using BracketGen.Strength.Model;
using BracketGen.Strength.Parts;
using BracketGen.TestSupport;

namespace BracketGen.Strength.Tests;

/// <summary>The L-bracket bolted on a plate that gives: against CalculiX, and against what must hold of any base.</summary>
public sealed class OnBaseTests
{
    private const double Plate = 3;

    private static readonly Disc[] Joints = [.. LBracket.Part.Washers];

    private static readonly Disc[] Holders = [new(new(-34, -26), 6), new(new(34, -26), 6), new(new(34, 14), 6)];

    private static readonly FoldedPart PlatePart = new()
    {
        Flat = new(Contour.Polygon([new(-44, -36), new(44, -36), new(44, 24), new(-44, 24)]), [.. Joints.Concat(Holders).Select(d => Contour.Circle(d.Centre, 3.3))]),
        MiddleSurface = p => new(p.X, p.Y, Middle),
        Thickness = Plate,
        Material = new(210000, 0.3, 7.85e-9),
        Washers = [.. Joints, .. Holders],
        Seat = Joints[0],
    };

    private static double Middle => -(LBracket.Thickness + Plate) / 2;

    private static ElasticBase Base(double size = 3, double holeSize = 1.5, double stiffer = 1)
    {
        var metal = PlatePart.Material;
        var part = PlatePart with { Material = new(stiffer * metal.YoungsModulus, metal.PoissonsRatio, metal.Density) };
        var mesh = part.Mesh(size, holeSize);
        var alone = (part with { Washers = [.. Holders], Seat = Holders[0] }).Prepare(mesh);
        return new(part.Prepare(mesh), [.. Joints.Select(d => new ThrottlePoint(d.Centre.X, d.Centre.Y, -LBracket.Thickness / 2))], alone.System.LowestModes(1)[0].Frequency);
    }

    private static PreparedPart On(ElasticBase? under) => (LBracket.Part with { Base = under }).Prepare(3, 1.5);

    [SkippableFact]
    public void Give_stress_and_frequency_agree_with_solids_bolted_together()
    {
        var calculix = OutsideTool.Require("ccx");
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var under = Base();
            var part = On(under);
            var response = part.Under(LBracket.Force);
            var (deck, smooth) = Deck(part.Flat, under.Sheet.Flat);
            File.WriteAllText(Path.Combine(folder.FullName, "stack.inp"), deck);
            calculix.RunOrFail(["stack"], folder: folder.FullName);
            var (give, frequencies) = CalculixDeck.Read(deck, File.ReadAllText(Path.Combine(folder.FullName, "stack.dat")));
            var stress = LargestStress(File.ReadAllLines(Path.Combine(folder.FullName, "stack.frd")), smooth);
            Assert.InRange(response.AlongForce / give, 0.96, 1.04);

            // The plate counts: the test would see it if it were left out.
            Assert.True(response.AlongForce > 1.1 * On(null).Under(LBracket.Force).AlongForce, $"{response.AlongForce} {On(null).Under(LBracket.Force).AlongForce}");

            // Between the discs that hold it the stress is smooth: the solids' at their faces, off their rims.
            var plate = under.Moved(response.BaseMotions);
            var ours = Enumerable.Range(0, plate.Stresses.Length).Where(n => IsOffRims(under.Sheet.Flat.Nodes[n])).Max(n => plate.Stresses[n].Largest);
            Assert.InRange(ours / stress, 0.9, 1.1);
            Assert.InRange(part.LowestModes(1)[0].Frequency / frequencies[0], 0.75, 1.005);
        }
        finally
        {
            folder.Delete(true);
        }
    }

    private static bool IsOffRims(FlatPoint p) => Joints.Concat(Holders).All(d => p.Vector.DistanceTo(d.Centre) > d.Radius + 3) && PlatePart.Flat.Outline.DistanceTo(p.Vector) > 3;

    [Fact]
    public void A_base_that_is_stiff_enough_is_none()
    {
        var (firm, stiff) = (On(null), On(Base(stiffer: 1e5)));
        var (expected, found) = (firm.Under(LBracket.Force), stiff.Under(LBracket.Force));
        Assert.Equal(expected.AlongForce, found.AlongForce, 1e-3 * expected.AlongForce);
        Assert.Equal(expected.Solution.LargestStress, found.Solution.LargestStress, 1e-3 * expected.Solution.LargestStress);
        Assert.Equal(firm.LowestModes(1)[0].Frequency, stiff.LowestModes(1)[0].Frequency, 1e-2 * firm.LowestModes(1)[0].Frequency);
    }

    [Fact]
    public void Forces_balance_and_the_base_takes_what_the_bracket_puts_on_it()
    {
        var under = Base();
        var response = On(under).Under(LBracket.Force);
        var held = response.Solution.Reactions.Aggregate(Vector3.Zero, (sum, r) => sum + r.Force);
        Assert.True((held + LBracket.Force).Length < 1e-6 * LBracket.Force.Length);

        // What holds the plate pushes as hard as what holds the bracket; the joints' own push is inside.
        var plate = under.Moved(response.BaseMotions);
        var nodes = under.Sheet.WasherNodes();
        Vector3 At(IEnumerable<int> washers)
        {
            var some = washers.SelectMany(w => nodes[w]).ToHashSet();
            return plate.Reactions.Where(r => some.Contains(r.Node)).Aggregate(Vector3.Zero, (sum, r) => sum + r.Force);
        }

        Assert.True((At([2, 3, 4]) + LBracket.Force).Length < 1e-5 * LBracket.Force.Length);
        Assert.True((At([0, 1]) - LBracket.Force).Length < 1e-5 * LBracket.Force.Length);
    }

    [Fact]
    public void A_rigid_bracket_gives_no_more_than_the_real_one()
    {
        var under = Base();
        var part = On(under);
        var response = part.Under(LBracket.Force);
        var seat = LBracket.Fold(new(LBracket.Seat.Centre));
        var ofBase = LBracket.Force.Length * under.GiveOfRigid(seat, LBracket.Force.Unit);
        var alone = On(null).Under(LBracket.Force).AlongForce;

        // By least complementary energy the whole gives no more than the parts with any reactions that balance, and no less than either alone.
        Assert.InRange(response.AlongForce, Math.Max(alone, ofBase), alone + ofBase + 0.2 * alone);
        Assert.All(part.LowestModes(3).Zip(On(null).LowestModes(3)), m => Assert.True(m.First.Frequency < m.Second.Frequency));
        Assert.True(part.FirstFrequencyAtMost() >= part.LowestModes(1)[0].Frequency);
        Assert.Throws<InvalidOperationException>(() => part.Shaken(1000));
    }

    // Both sheets as solid quadratic wedges; at each joint the discs of both are one rigid body, as far as the washer reaches.
    private static (string Deck, HashSet<int> Smooth) Deck(TriangleMesh bracket, TriangleMesh plate)
    {
        var text = new StringBuilder();
        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        var places = new List<(FlatPoint Flat, bool IsPlate)>();
        var elements = new List<string>();
        var nodesText = new StringBuilder();
        int Put(FlatPoint p, double height, bool isPlate)
        {
            places.Add((p, isPlate));
            var angle = Math.Clamp((p.Y - 26) / 4.5, 0, Math.PI / 2);
            var at = isPlate ? new(p.X, p.Y, Middle + height) : LBracket.Fold(p) + height * new Vector3(0, -Math.Sin(angle), Math.Cos(angle));
            nodesText.Append(string.Create(CultureInfo.InvariantCulture, $"{places.Count}, {at.X:0.0000000}, {at.Y:0.0000000}, {at.Z:0.0000000}\n"));
            return places.Count;
        }

        (int Bottom, int Middle, int Top)[] Solid(TriangleMesh flat, double thickness, bool isPlate)
        {
            var half = thickness / 2;
            var corners = flat.Nodes.Select(p => (Put(p, -half, isPlate), Put(p, 0, isPlate), Put(p, half, isPlate))).ToArray();
            var sides = new Dictionary<(int, int), (int Bottom, int Top)>();
            (int Bottom, int Top) Side(int a, int b)
            {
                var key = (Math.Min(a, b), Math.Max(a, b));
                if (!sides.TryGetValue(key, out var made))
                {
                    var middle = FlatPoint.Middle(flat.Nodes[a], flat.Nodes[b]);
                    sides[key] = made = (Put(middle, -half, isPlate), Put(middle, half, isPlate));
                }

                return made;
            }

            foreach (var t in flat.Triangles)
            {
                var (a, b, c) = (corners[t.A], corners[t.B], corners[t.C]);
                var (ab, bc, ca) = (Side(t.A, t.B), Side(t.B, t.C), Side(t.C, t.A));
                elements.Add(string.Create(CultureInfo.InvariantCulture, $"{elements.Count + 1}, {a.Item1}, {b.Item1}, {c.Item1}, {a.Item3}, {b.Item3}, {c.Item3}, {ab.Bottom}, {bc.Bottom}, {ca.Bottom},\n{ab.Top}, {bc.Top}, {ca.Top}, {a.Item2}, {b.Item2}, {c.Item2}"));
            }

            return corners;
        }

        var upper = Solid(bracket, LBracket.Thickness, false);
        _ = Solid(plate, Plate, true);
        var references = new List<(int Move, int Turn)>();
        foreach (var joint in Joints)
        {
            references.Add((places.Count + 1, places.Count + 2));
            foreach (var _ in (int[])[0, 1])
            {
                places.Add((new(1e6, 1e6), false));
                nodesText.Append(string.Create(CultureInfo.InvariantCulture, $"{places.Count}, {joint.Centre.X}, {joint.Centre.Y}, {-LBracket.Thickness / 2}\n"));
            }
        }

        text.Append("*NODE, NSET=NALL\n").Append(nodesText);
        Line($"*ELEMENT, TYPE=C3D15, ELSET=EALL");
        elements.ForEach(e => text.Append(e).Append('\n'));
        void Set(string name, Func<(FlatPoint Flat, bool IsPlate), bool> holds)
        {
            Line($"*NSET, NSET={name}");
            foreach (var (place, i) in places.Select((p, i) => (p, i)).Where(p => holds(p.p)))
            {
                Line($"{i + 1}");
            }
        }

        bool In(FlatPoint p, Disc disc) => p.Vector.DistanceTo(disc.Centre) <= 1.001 * disc.Radius;
        Set("HOLDERS", p => p.IsPlate && Holders.Any(h => In(p.Flat, h)));
        for (var j = 0; j < Joints.Length; j++)
        {
            Set($"JOINT{j}", p => In(p.Flat, Joints[j]));
            Line($"*RIGID BODY, NSET=JOINT{j}, REF NODE={references[j].Move}, ROT NODE={references[j].Turn}");
        }

        var loads = SeatLoad.Spread(bracket, LBracket.Seat, LBracket.Force);
        Line($"*NSET, NSET=SEAT");
        foreach (var load in loads)
        {
            Line($"{upper[load.Node].Middle}");
        }

        Line($"*MATERIAL, NAME=STEEL");
        Line($"*ELASTIC");
        Line($"210000, 0.3");
        Line($"*DENSITY");
        Line($"7.85e-9");
        Line($"*SOLID SECTION, ELSET=EALL, MATERIAL=STEEL");
        Line($"*BOUNDARY");
        Line($"HOLDERS, 1, 3");
        Line($"*STEP");
        Line($"*STATIC");
        Line($"*CLOAD");
        foreach (var load in loads)
        {
            var node = upper[load.Node].Middle;
            Line($"{node}, 1, {load.Force.X:0.0000000000}");
            Line($"{node}, 2, {load.Force.Y:0.0000000000}");
            Line($"{node}, 3, {load.Force.Z:0.0000000000}");
        }

        Line($"*NODE PRINT, NSET=SEAT");
        Line($"U");
        Line($"*NODE FILE");
        Line($"U");
        Line($"*EL FILE");
        Line($"S");
        Line($"*END STEP");
        Line($"*STEP");
        Line($"*FREQUENCY");
        Line($"1");
        Line($"*END STEP");
        return (text.ToString(), [.. places.Select((p, i) => (p, i)).Where(p => p.p.IsPlate && IsOffRims(p.p.Flat)).Select(p => p.i + 1)]);
    }

    // The first block of stresses of the results file, node by node, in columns of a fixed width.
    private static double LargestStress(string[] lines, HashSet<int> nodes) => lines
        .SkipWhile(l => !l.StartsWith(" -4  STRESS", StringComparison.Ordinal)).Skip(1).TakeWhile(l => !l.StartsWith(" -3", StringComparison.Ordinal))
        .Where(l => l.StartsWith(" -1", StringComparison.Ordinal) && nodes.Contains(int.Parse(l.AsSpan(3, 10), CultureInfo.InvariantCulture)))
        .Max(l =>
        {
            var s = Enumerable.Range(0, 6).Select(k => double.Parse(l.AsSpan(13 + 12 * k, 12), CultureInfo.InvariantCulture)).ToArray();
            double a = s[0] - s[1], b = s[1] - s[2], c = s[2] - s[0];
            return Math.Sqrt((a * a + b * b + c * c) / 2 + 3 * (s[3] * s[3] + s[4] * s[4] + s[5] * s[5]));
        });
}
