using System.Globalization;
using System.Text;
using BracketGen.Geometry;
using BracketGen.Strength.Parts;
using BracketGen.TestSupport;

namespace BracketGen.Bench.Solids;

/// <summary>What a bracket does as a solid by CalculiX: give of the seat, three frequencies, largest von Mises stress by zone.</summary>
internal sealed record SolidStudy(int Nodes, double Give, double[] Frequencies, Dictionary<SolidZone, double> Stress)
{
    /// <summary>Solves a bracket whose washers' discs are held through the thickness.</summary>
    /// <param name="solid">The bracket.</param>
    /// <param name="folder">Where the files go.</param>
    /// <param name="perThickness">Edge length of the tetrahedra over the thickness.</param>
    public static SolidStudy Of(SolidCase solid, string folder, double perThickness)
    {
        var mesh = SolidMesh.Of(solid, folder, perThickness);
        var ring = mesh.Shares(solid, solid.Part.Seat);
        File.WriteAllText(Path.Combine(folder, "study.inp"), Deck(solid, mesh, ring));
        OutsideTool.Require("ccx").RunOrFail(["study"], folder: folder, timeout: TimeSpan.FromMinutes(30));
        var (displacements, stress) = Results(File.ReadLines(Path.Combine(folder, "study.frd")));
        var give = ring.Sum(r => Math.Abs(r.Share) * displacements[r.Node].Dot(solid.Force.Unit)) / ring.Sum(r => Math.Abs(r.Share));
        var zones = mesh.Nodes.Where(n => stress.ContainsKey(n.Key)).GroupBy(n => solid.ZoneOf(n.Value)).ToDictionary(g => g.Key, g => g.Max(n => stress[n.Key]));
        return new(mesh.Nodes.Count, give, FrequenciesIn(File.ReadLines(Path.Combine(folder, "study.dat"))), zones);
    }

    private static string Deck(SolidCase solid, SolidMesh mesh, (int Node, double Share, Vector3 Place)[] ring)
    {
        var text = new StringBuilder();
        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Line($"** {solid.Name}. mm, N, MPa, tonne.");
        Line($"*NODE, NSET=NALL");
        foreach (var (n, p) in mesh.Nodes)
        {
            Line($"{n}, {p.X:0.0000000}, {p.Y:0.0000000}, {p.Z:0.0000000}");
        }

        Line($"*ELEMENT, TYPE=C3D10, ELSET=EALL");
        for (var e = 0; e < mesh.Elements.Count; e++)
        {
            Line($"{e + 1}, {string.Join(", ", mesh.Elements[e])}");
        }

        Line($"*NSET, NSET=WASHERS");
        foreach (var n in solid.Part.Washers.SelectMany(w => mesh.Under(solid, w)).Distinct().Order())
        {
            Line($"{n}");
        }

        RigidBox.Write(solid.Part.SeatBody, solid.Folded.TopAt(new(solid.Part.Seat.Centre)), ring, mesh.Nodes.Keys.Last(), mesh.Elements.Count, Line);
        Line($"*MATERIAL, NAME=SHEET");
        Line($"*ELASTIC");
        Line($"{solid.Part.Material.YoungsModulus}, {solid.Part.Material.PoissonsRatio}");
        Line($"*DENSITY");
        Line($"{solid.Part.Material.Density:0.000000E+00}");
        Line($"*SOLID SECTION, ELSET=EALL, MATERIAL=SHEET");
        Line($"*BOUNDARY");
        Line($"WASHERS, 1, 3");
        Line($"*STEP");
        Line($"*STATIC");
        Line($"*CLOAD");
        foreach (var (node, share, _) in ring)
        {
            Line($"{node}, 1, {share * solid.Force.X:0.0000000000}");
            Line($"{node}, 2, {share * solid.Force.Y:0.0000000000}");
            Line($"{node}, 3, {share * solid.Force.Z:0.0000000000}");
        }

        Line($"*NODE FILE, NSET=NALL");
        Line($"U");
        Line($"*EL FILE, ELSET=EALL");
        Line($"S");
        Line($"*END STEP");
        Line($"*STEP");
        Line($"*FREQUENCY");
        Line($"3");
        Line($"*END STEP");
        return text.ToString();
    }

    // The first of each block: what the static step did. Columns of ten for the node, of twelve for each number.
    private static (Dictionary<int, Vector3> Displacements, Dictionary<int, double> Stress) Results(IEnumerable<string> lines)
    {
        var (displacements, stress, block) = (new Dictionary<int, Vector3>(), new Dictionary<int, double>(), "");
        foreach (var line in lines)
        {
            if (line.StartsWith(" -4", StringComparison.Ordinal))
            {
                block = line[5..].Split(' ')[0];
                block = (block == "DISP" && displacements.Count > 0) || (block == "STRESS" && stress.Count > 0) ? "" : block;
            }
            else if (line.StartsWith(" -3", StringComparison.Ordinal))
            {
                block = "";
            }
            else if (line.StartsWith(" -1", StringComparison.Ordinal) && block is "DISP" or "STRESS" && line.StartsWith(" -1", StringComparison.Ordinal))
            {
                var node = int.Parse(line.AsSpan(3, 10), CultureInfo.InvariantCulture);
                double At(int i) => double.Parse(line.AsSpan(13 + 12 * i, 12), CultureInfo.InvariantCulture);
                if (block == "DISP")
                {
                    displacements[node] = new(At(0), At(1), At(2));
                }
                else
                {
                    double a = At(0) - At(1), b = At(1) - At(2), c = At(2) - At(0);
                    stress[node] = Math.Sqrt((a * a + b * b + c * c) / 2 + 3 * (At(3) * At(3) + At(4) * At(4) + At(5) * At(5)));
                }
            }
        }

        return (displacements, stress);
    }

    // Mode number, eigenvalue, rad/s, cycles/s, imaginary part.
    private static double[] FrequenciesIn(IEnumerable<string> lines) =>
        [.. lines.SkipWhile(l => !l.Contains("E I G E N V A L U E   O U T P U T", StringComparison.Ordinal)).Skip(1)
            .Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Where(f => f.Length == 5 && int.TryParse(f[0], out _)).Take(3)
            .Select(f => double.Parse(f[3], CultureInfo.InvariantCulture))];
}
