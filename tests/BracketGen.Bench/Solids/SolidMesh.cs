using System.Globalization;
using System.Text;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Drawing.Solid.Step;
using BracketGen.Geometry;
using BracketGen.Strength.Model;
using BracketGen.TestSupport;

namespace BracketGen.Bench.Solids;

/// <summary>Our STEP file cut into quadratic tetrahedra by Gmsh, whole along the rims of washers and seat.</summary>
/// <param name="Nodes">The nodes, by their numbers.</param>
/// <param name="Elements">Ten nodes each, as CalculiX orders them.</param>
internal sealed record SolidMesh(SortedDictionary<int, Vector3> Nodes, List<int[]> Elements)
{
    /// <summary>Meshes a bracket.</summary>
    /// <param name="solid">The bracket.</param>
    /// <param name="folder">Where the files go.</param>
    /// <param name="perThickness">Edge length over the thickness.</param>
    public static SolidMesh Of(SolidCase solid, string folder, double perThickness)
    {
        var bracket = solid.Bracket;
        var info = new SolidInfo
        {
            PartNumber = "1",
            Revision = "A",
            Title = solid.Name,
            Sheet = "sheet",
            Material = bracket.Stock.Material.Designation,
            Density = bracket.Stock.Material.Density,
            Mass = bracket.Mass,
            Volume = bracket.Mass / bracket.Stock.Material.Density,
            Colour = SheetColour.Of(bracket.Stock.Material),
        };
        File.WriteAllBytes(Path.Combine(folder, "solid.step"), StepWriter.Write(FoldedBrep.Of(bracket.Folded), info));
        var text = new StringBuilder();
        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Line($"SetFactory(\"OpenCASCADE\");");
        Line($"Geometry.OCCTargetUnit = \"MM\";");
        Line($"v() = ShapeFromFile(\"solid.step\");");
        var discs = solid.Part.Washers.Append(solid.Part.Seat).ToArray();
        for (var i = 0; i < discs.Length; i++)
        {
            var centre = new FlatPoint(discs[i].Centre);
            var (from, along) = (bracket.Folded.Fold(centre, 0), solid.Thickness * bracket.Folded.TopAt(centre));
            Line($"Cylinder({1001 + i}) = {{{from.X:R}, {from.Y:R}, {from.Z:R}, {along.X:R}, {along.Y:R}, {along.Z:R}, {discs[i].Radius:R}, 2*Pi}};");
            Line($"r{i}() = BooleanIntersection{{ Volume{{{1001 + i}}}; Delete; }}{{ Volume{{v(0)}}; }};");
        }

        Line($"f() = BooleanFragments{{ Volume{{v(0)}}; Delete; }}{{ Volume{{{string.Join(", ", discs.Select((_, i) => $"r{i}()"))}}}; Delete; }};");
        Line($"Physical Volume(1) = f();");
        var size = Math.Clamp(perThickness * solid.Thickness, 1.6 * perThickness, 2.7 * perThickness);
        Line($"Mesh.MeshSizeMax = {size:R};");
        Line($"Mesh.MeshSizeFromCurvature = {Math.Clamp(18 / perThickness, 12, 32):0};");
        Line($"Mesh.MeshSizeMin = {size / 4:R};");
        Line($"Mesh.ElementOrder = 2;");
        Line($"Mesh.HighOrderOptimize = 1;");
        Line($"Mesh.Optimize = 1;");
        Line($"Mesh.RandomSeed = 1;");
        File.WriteAllText(Path.Combine(folder, "solid.geo"), text.ToString());
        OutsideTool.Require("gmsh").RunOrFail(["-3", "-v", "1", "-nt", "1", "solid.geo", "-format", "inp", "-o", "mesh.inp"], folder: folder, timeout: TimeSpan.FromMinutes(30));
        return Read(File.ReadLines(Path.Combine(folder, "mesh.inp")));
    }

    // Gmsh writes Abaqus' order, which is CalculiX's, of a ten-node tetrahedron.
    private static SolidMesh Read(IEnumerable<string> lines)
    {
        var all = new Dictionary<int, Vector3>();
        var elements = new List<int[]>();
        var pending = new List<int>();
        var kind = "";
        foreach (var line in lines)
        {
            if (line.StartsWith('*'))
            {
                kind = line.StartsWith("*NODE", StringComparison.OrdinalIgnoreCase) ? "node" : line.Contains("C3D10", StringComparison.Ordinal) ? "solid" : "";
                continue;
            }

            var fields = line.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries);
            if (kind == "node")
            {
                double At(int i) => double.Parse(fields[i], CultureInfo.InvariantCulture);
                all[int.Parse(fields[0], CultureInfo.InvariantCulture)] = new(At(1), At(2), At(3));
            }
            else if (kind == "solid")
            {
                pending.AddRange(fields.Select(f => int.Parse(f, CultureInfo.InvariantCulture)));
                if (pending.Count == 11)
                {
                    elements.Add([.. pending.Skip(1)]);
                    pending.Clear();
                }
            }
        }

        return new(new(elements.SelectMany(e => e).Distinct().ToDictionary(n => n, n => all[n])), elements);
    }

    /// <summary>Nodes of a disc through the thickness of the sheet, its rim included.</summary>
    public HashSet<int> Under(SolidCase solid, Disc disc)
    {
        var centre = new FlatPoint(disc.Centre);
        var (from, up) = (solid.Bracket.Folded.Fold(centre, 0).Vector, solid.Bracket.Folded.TopAt(centre));
        bool Holds(Vector3 p)
        {
            var height = (p - from).Dot(up);
            return height > -1e-3 && height < solid.Thickness + 1e-3 && (p - from - height * up).Length < disc.Radius + 1e-3;
        }

        return [.. Nodes.Where(n => Holds(n.Value)).Select(n => n.Key)];
    }

    /// <summary>Each node's share of a force spread over both faces of a disc's ring; together they are one, and their centre is the disc's.</summary>
    /// <remarks>On a six-node triangle an even pressure lies on the nodes at the middle of its sides, a third on each (O. C. Zienkiewicz, The Finite Element Method).</remarks>
    public (int Node, double Share, Vector3 Place)[] Shares(SolidCase solid, Disc disc)
    {
        var centre = new FlatPoint(disc.Centre);
        var (from, up) = (solid.Bracket.Folded.Fold(centre, 0).Vector, solid.Bracket.Folded.TopAt(centre));
        var under = Under(solid, disc);
        var shares = new SortedDictionary<int, double>();
        int[][] faces = [[0, 1, 2, 4, 5, 6], [0, 3, 1, 7, 8, 4], [1, 3, 2, 8, 9, 5], [2, 3, 0, 9, 7, 6]];
        foreach (var element in Elements)
        {
            foreach (var face in faces)
            {
                var six = face.Select(i => element[i]).ToArray();
                var heights = six.Select(n => (Nodes[n] - from).Dot(up)).ToArray();
                if (six.All(under.Contains) && (heights.All(h => Math.Abs(h) < 1e-3) || heights.All(h => Math.Abs(h - solid.Thickness) < 1e-3)))
                {
                    var area = (Nodes[six[1]] - Nodes[six[0]]).Cross(Nodes[six[2]] - Nodes[six[0]]).Length / 2;
                    foreach (var n in six.Skip(3))
                    {
                        shares[n] = shares.GetValueOrDefault(n) + area / 3;
                    }
                }
            }
        }

        // An open seat's ring is not even about its centre: a tilt of the pressure brings the resultant there, as on the shells (SeatLoad).
        var sum = shares.Values.Sum();
        Vector3 x = (Math.Abs(up.X) < 0.9 ? new Vector3(1, 0, 0) : new(0, 1, 0)).Cross(up).Unit, y = up.Cross(x);
        Vector2 In(int n) => new((Nodes[n] - from).Dot(x), (Nodes[n] - from).Dot(y));
        var mean = shares.Aggregate(Vector2.Zero, (m, s) => m + s.Value / sum * In(s.Key));
        double xx = 0, xy = 0, yy = 0;
        foreach (var (n, share) in shares)
        {
            var d = In(n) - mean;
            xx += share / sum * d.X * d.X;
            xy += share / sum * d.X * d.Y;
            yy += share / sum * d.Y * d.Y;
        }

        var determinant = xx * yy - xy * xy;
        var tilt = new Vector2((xy * mean.Y - yy * mean.X) / determinant, (xy * mean.X - xx * mean.Y) / determinant);
        return [.. shares.Select(s => (s.Key, s.Value / sum * (1 + tilt.Dot(In(s.Key) - mean)), Nodes[s.Key]))];
    }
}
