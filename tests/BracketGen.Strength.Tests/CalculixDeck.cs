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
    public static string Write(TriangleMesh flat)
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
