using System.Globalization;
using System.Text;
using BracketGen.Geometry;
using BracketGen.Strength.Model;
using BracketGen.Strength.Parts;

namespace BracketGen.Strength.Tests;

/// <summary>The L-bracket as solid quadratic wedges (C3D15), one through the thickness: another theory and another program.</summary>
internal static class CalculixDeck
{
    /// <summary>Writes the deck and the shares of the force, node by node, that weight the seat's deflection.</summary>
    /// <param name="flat">Mesh of the flat pattern.</param>
    /// <param name="end">What hangs on the seat, on the outer side of the upright flange; nothing in the kept deck.</param>
    public static string Write(TriangleMesh flat, SeatBody end = default)
    {
        var part = LBracket.Part;
        var text = new StringBuilder();
        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Line($"** L-bracket, {LBracket.Thickness} mm steel, clamped under two washers, pulled at the seat. mm, N, MPa, tonne.");
        Line($"*NODE, NSET=NALL");
        var places = new List<FlatPoint>();
        int Put(FlatPoint p, double height)
        {
            places.Add(p);
            var at = LBracket.Fold(p) + height * Normal(p);
            Line($"{places.Count}, {at.X:0.0000000}, {at.Y:0.0000000}, {at.Z:0.0000000}");
            return places.Count;
        }

        var half = LBracket.Thickness / 2;
        var corners = flat.Nodes.Select(p => (Bottom: Put(p, -half), Middle: Put(p, 0), Top: Put(p, half))).ToArray();
        var sides = new Dictionary<(int, int), (int Bottom, int Top)>();
        (int Bottom, int Top) Side(int a, int b)
        {
            var key = (Math.Min(a, b), Math.Max(a, b));
            if (!sides.TryGetValue(key, out var made))
            {
                var middle = FlatPoint.Middle(flat.Nodes[a], flat.Nodes[b]);
                sides[key] = made = (Put(middle, -half), Put(middle, half));
            }

            return made;
        }

        foreach (var t in flat.Triangles)
        {
            _ = (Side(t.A, t.B), Side(t.B, t.C), Side(t.C, t.A));
        }

        Line($"*ELEMENT, TYPE=C3D15, ELSET=EALL");
        for (var e = 0; e < flat.Triangles.Length; e++)
        {
            var t = flat.Triangles[e];
            var (a, b, c) = (corners[t.A], corners[t.B], corners[t.C]);
            var (ab, bc, ca) = (Side(t.A, t.B), Side(t.B, t.C), Side(t.C, t.A));
            Line($"{e + 1}, {a.Bottom}, {b.Bottom}, {c.Bottom}, {a.Top}, {b.Top}, {c.Top}, {ab.Bottom}, {bc.Bottom}, {ca.Bottom},");
            Line($"{ab.Top}, {bc.Top}, {ca.Top}, {a.Middle}, {b.Middle}, {c.Middle}");
        }

        Line($"*NSET, NSET=WASHERS");
        for (var n = 0; n < places.Count; n++)
        {
            if (part.Washers.Any(w => places[n].DistanceTo(new(w.Centre)) <= 1.001 * w.Radius))
            {
                Line($"{n + 1}");
            }
        }

        var loads = SeatLoad.Spread(flat, LBracket.Seat, LBracket.Force);
        Line($"*NSET, NSET=SEAT");
        foreach (var load in loads)
        {
            Line($"{corners[load.Node].Middle}");
        }

        if (end.Mass > 0)
        {
            WriteBody(end, loads.Select(l => (corners[l.Node].Middle, l.Force.Dot(LBracket.Force) / LBracket.Force.Dot(LBracket.Force), LBracket.Fold(flat.Nodes[l.Node]).Vector)).ToArray(), places.Count, flat.Triangles.Length, Line);
        }

        Line($"*MATERIAL, NAME=STEEL");
        Line($"*ELASTIC");
        Line($"{part.Material.YoungsModulus}, {part.Material.PoissonsRatio}");
        Line($"*DENSITY");
        Line($"{part.Material.Density}");
        Line($"*SOLID SECTION, ELSET=EALL, MATERIAL=STEEL");
        Line($"*BOUNDARY");
        Line($"WASHERS, 1, 3");
        Line($"*STEP");
        Line($"*STATIC");
        Line($"*CLOAD");
        foreach (var load in loads)
        {
            var node = corners[load.Node].Middle;
            Line($"{node}, 1, {load.Force.X:0.0000000000}");
            Line($"{node}, 2, {load.Force.Y:0.0000000000}");
            Line($"{node}, 3, {load.Force.Z:0.0000000000}");
        }

        Line($"*NODE PRINT, NSET=SEAT");
        Line($"U");
        Line($"*END STEP");
        Line($"*STEP");
        Line($"*FREQUENCY");
        Line($"3");
        Line($"*END STEP");
        return text.ToString();
    }

    /// <summary>
    /// A rigid body as one box whose corners are tied by equations to the nodes of the seat: the mean of their displacements, and the rotation of least squares. The upright flange faces -y with its top, its ring lies in x and z, so that the normal equations uncouple.
    /// </summary>
    private static void WriteBody(SeatBody end, (int Node, double Share, Vector3 Place)[] ring, int nodes, int elements, Action<FormattableString> line)
    {
        var centre = ring.Aggregate(Vector3.Zero, (sum, r) => sum + r.Share * r.Place);
        double xx = ring.Sum(r => r.Share * (r.Place.X - centre.X) * (r.Place.X - centre.X)), zz = ring.Sum(r => r.Share * (r.Place.Z - centre.Z) * (r.Place.Z - centre.Z));
        var xz = ring.Sum(r => r.Share * (r.Place.X - centre.X) * (r.Place.Z - centre.Z));
        var determinant = xx * zz - xz * xz;

        // m w²/6 about the axis, m (w² + d²)/12 across it.
        var w = Math.Sqrt(6 * end.AboutAxis / end.Mass);
        var d = Math.Sqrt(12 * end.AboutAcross / end.Mass - w * w);
        (int X, int Y, int Z)[] corners = [(-1, -1, -1), (1, -1, -1), (1, 1, -1), (-1, 1, -1), (-1, -1, 1), (1, -1, 1), (1, 1, 1), (-1, 1, 1)];
        Vector3[] arms = [.. corners.Select(c => new Vector3(c.X * w / 2, c.Y * d / 2 - end.Height, c.Z * w / 2))];
        line($"*NODE");
        for (var i = 0; i < arms.Length; i++)
        {
            var at = centre + arms[i];
            line($"{nodes + i + 1}, {at.X:0.0000000}, {at.Y:0.0000000}, {at.Z:0.0000000}");
        }

        line($"*ELEMENT, TYPE=C3D8, ELSET=BODY");
        line($"{elements + 1}, {string.Join(", ", Enumerable.Range(nodes + 1, arms.Length))}");
        line($"*MATERIAL, NAME=BODY");
        line($"*ELASTIC");
        line($"210000, 0.3");
        line($"*DENSITY");
        line($"{end.Mass / (w * w * d):0.000000000E+00}");
        line($"*SOLID SECTION, ELSET=BODY, MATERIAL=BODY");
        for (var i = 0; i < arms.Length; i++)
        {
            var p = arms[i];
            for (var axis = 0; axis < 3; axis++)
            {
                // u = mean + θ × p. A plane fitted to the displacement square to the ring gives θx = -∂uy/∂z and θz = ∂uy/∂x; the ring's turning in its plane gives θy.
                var terms = new List<(int Node, int Axis, double Factor)> { (nodes + i + 1, axis + 1, -1) };
                foreach (var (node, share, place) in ring)
                {
                    double x = place.X - centre.X, z = place.Z - centre.Z;
                    double byX = share * (zz * x - xz * z) / determinant, byZ = share * (xx * z - xz * x) / determinant, turning = share / (xx + zz);
                    Vector3 aboutX = new(0, -byZ, 0), aboutZ = new(0, byX, 0), aboutY = new(turning * z, 0, -turning * x);
                    Vector3 row = axis switch
                    {
                        0 => p.Z * aboutY - p.Y * aboutZ,
                        1 => p.X * aboutZ - p.Z * aboutX,
                        _ => p.Y * aboutX - p.X * aboutY,
                    };
                    double[] factors = [row.X, row.Y, row.Z];
                    factors[axis] += share;
                    for (var k = 0; k < 3; k++)
                    {
                        if (Math.Abs(factors[k]) > 1e-12)
                        {
                            terms.Add((node, k + 1, factors[k]));
                        }
                    }
                }

                line($"*EQUATION");
                line($"{terms.Count}");
                foreach (var term in terms)
                {
                    line($"{term.Node}, {term.Axis}, {term.Factor:0.000000000000E+00}");
                }
            }
        }
    }

    /// <summary>Reads seat deflection along the force and the frequencies out of the solver's .dat file.</summary>
    public static (double Deflection, double[] Frequencies) Read(string deck, string results)
    {
        static string[] Fields(string line) => line.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        static double Number(string s) => double.Parse(s, CultureInfo.InvariantCulture);
        var shares = new Dictionary<int, Vector3>();
        foreach (var f in deck.Split('\n').SkipWhile(l => l != "*CLOAD").Skip(1).TakeWhile(l => !l.StartsWith('*')).Select(Fields))
        {
            var (node, value) = (int.Parse(f[0], CultureInfo.InvariantCulture), Number(f[2]));
            var old = shares.GetValueOrDefault(node);
            shares[node] = old + (f[1] == "1" ? new Vector3(value, 0, 0) : f[1] == "2" ? new(0, value, 0) : new(0, 0, value));
        }

        var lines = results.Split('\n');
        var direction = LBracket.Force.Unit;
        double sum = 0, weight = 0;
        foreach (var f in lines.SkipWhile(l => !l.Contains("displacements", StringComparison.Ordinal)).Skip(1).Select(Fields)
            .SkipWhile(f => f.Length == 0).TakeWhile(f => f.Length == 4))
        {
            var share = shares[int.Parse(f[0], CultureInfo.InvariantCulture)].Length;
            sum += share * new Vector3(Number(f[1]), Number(f[2]), Number(f[3])).Dot(direction);
            weight += share;
        }

        // Mode number, eigenvalue, rad/s, cycles/s, imaginary part.
        var frequencies = lines.SkipWhile(l => !l.Contains("E I G E N V A L U E   O U T P U T", StringComparison.Ordinal)).Skip(1)
            .Select(Fields).Where(f => f.Length == 5 && int.TryParse(f[0], out _)).Take(3).Select(f => Number(f[3])).ToArray();
        return (sum / weight, frequencies);
    }

    private static Vector3 Normal(FlatPoint p)
    {
        const double step = 1e-6;
        Vector3 x = LBracket.Fold(p + new Vector2(step, 0)) - LBracket.Fold(p - new Vector2(step, 0));
        Vector3 y = LBracket.Fold(p + new Vector2(0, step)) - LBracket.Fold(p - new Vector2(0, step));
        return x.Cross(y).Unit;
    }
}
