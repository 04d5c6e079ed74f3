using BracketGen.Geometry;
using BracketGen.Strength.Parts;

namespace BracketGen.Bench.Solids;

/// <summary>A body on a seat as one stiff box whose corners follow the seat's nodes by equations: the mean of their displacements, and their rotation of least squares.</summary>
internal static class RigidBox
{
    /// <summary>Writes it into a CalculiX deck.</summary>
    /// <param name="body">The body.</param>
    /// <param name="top">Direction of the sheet's top, length one.</param>
    /// <param name="ring">The nodes, with shares that add up to one.</param>
    /// <param name="lastNode">Number of the last node before it.</param>
    /// <param name="lastElement">Number of the last element before it.</param>
    /// <param name="line">Takes a line.</param>
    public static void Write(SeatBody body, Vector3 top, (int Node, double Share, Vector3 Place)[] ring, int lastNode, int lastElement, Action<FormattableString> line)
    {
        var centre = ring.Aggregate(Vector3.Zero, (sum, r) => sum + r.Share * r.Place);

        // A square box of side w and depth d: m w²/6 about its axis, m (w² + d²)/12 across it.
        var w = Math.Sqrt(6 * body.AboutAxis / body.Mass);
        var d = Math.Sqrt(12 * body.AboutAcross / body.Mass - w * w);
        var x = (Math.Abs(top.X) < 0.9 ? new Vector3(1, 0, 0) : new(0, 1, 0)).Cross(top).Unit;
        var y = top.Cross(x);
        (int X, int Y, int Z)[] corners = [(-1, -1, -1), (1, -1, -1), (1, 1, -1), (-1, 1, -1), (-1, -1, 1), (1, -1, 1), (1, 1, 1), (-1, 1, 1)];
        Vector3[] arms = [.. corners.Select(c => c.X * w / 2 * x + c.Y * w / 2 * y + (c.Z * d / 2 + body.Height) * top)];
        line($"*NODE");
        for (var i = 0; i < arms.Length; i++)
        {
            var at = centre + arms[i];
            line($"{lastNode + i + 1}, {at.X:0.0000000}, {at.Y:0.0000000}, {at.Z:0.0000000}");
        }

        line($"*ELEMENT, TYPE=C3D8, ELSET=BODY");
        line($"{lastElement + 1}, {string.Join(", ", Enumerable.Range(lastNode + 1, arms.Length))}");
        line($"*MATERIAL, NAME=BODY");
        line($"*ELASTIC");
        line($"210000, 0.3");
        line($"*DENSITY");
        line($"{body.Mass / (w * w * d):0.000000000E+00}");
        line($"*SOLID SECTION, ELSET=BODY, MATERIAL=BODY");

        // θ = T⁻¹ Σ share d × u, T = Σ share (d·d - d dᵀ); the body's corner moves by Σ share u + θ × arm.
        double xx = 0, yy = 0, zz = 0, xy = 0, yz = 0, zx = 0;
        foreach (var (_, share, place) in ring)
        {
            var r = place - centre;
            xx += share * (r.Y * r.Y + r.Z * r.Z);
            yy += share * (r.Z * r.Z + r.X * r.X);
            zz += share * (r.X * r.X + r.Y * r.Y);
            xy -= share * r.X * r.Y;
            yz -= share * r.Y * r.Z;
            zx -= share * r.Z * r.X;
        }

        Vector3 t0 = new(xx, xy, zx), t1 = new(xy, yy, yz), t2 = new(zx, yz, zz);
        Vector3 c0 = t1.Cross(t2), c1 = t2.Cross(t0), c2 = t0.Cross(t1);
        var determinant = t0.Dot(c0);
        Vector3[] axes = [new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)];
        for (var i = 0; i < arms.Length; i++)
        {
            for (var axis = 0; axis < 3; axis++)
            {
                var turned = arms[i].Cross(axes[axis]);
                var weights = (turned.X * c0 + turned.Y * c1 + turned.Z * c2) / determinant;
                var terms = new List<(int Node, int Axis, double Factor)> { (lastNode + i + 1, axis + 1, -1) };
                foreach (var (node, share, place) in ring)
                {
                    var row = share * (axes[axis] + weights.Cross(place - centre));
                    terms.AddRange([(node, 1, row.X), (node, 2, row.Y), (node, 3, row.Z)]);
                }

                terms.RemoveAll(t => Math.Abs(t.Factor) < 1e-12);
                line($"*EQUATION");
                line($"{terms.Count}");
                foreach (var term in terms)
                {
                    line($"{term.Node}, {term.Axis}, {term.Factor:0.000000000000E+00}");
                }
            }
        }
    }
}
