using BracketGen.Strength.Model;

namespace BracketGen.Strength.Elements;

/// <summary>The discrete Kirchhoff-Mindlin plate triangle (DKMT): bending with transverse shear, free of locking.</summary>
/// <remarks>
/// I. Katili, "A new discrete Kirchhoff-Mindlin element based on Mindlin-Reissner plate theory and assumed shear strain fields,
/// part I", International Journal for Numerical Methods in Engineering 36 (1993) 1859-1883. If the sheet is thin compared with the
/// element it becomes the DKT of J.-L. Batoz, K.-J. Bathe and L.-W. Ho (same journal, 15 (1980) 1771-1812). Shear is kept
/// because a strip a few thicknesses wide twists more than Kirchhoff's theory allows. Freedoms (w, θx, θy) at each corner, θ by
/// the right-hand rule; a fibre turns by βx = θy, βy = -θx, so that u = z βx, v = z βy.
/// </remarks>
internal static class DkmtPlate
{
    private const double ShearCorrection = 5.0 / 6;

    /// <summary>Adds the 9 x 9 stiffness (N/mm, N, N·mm), rows first, to <paramref name="k"/>.</summary>
    public static void AddStiffness(in LocalTriangle g, double thickness, SheetMaterial material, Span<double> k)
    {
        Span<double> e = stackalloc double[9], b = stackalloc double[27], s = stackalloc double[18];
        OptMembrane.PlaneStress(material, e);
        Span<double> sides = stackalloc double[27];
        SideRotation(g, thickness, material.PoissonsRatio, sides);
        var bending = g.Area / 3 * thickness * thickness * thickness / 12;
        var shear = g.Area / 3 * ShearCorrection * thickness * material.YoungsModulus / (2 * (1 + material.PoissonsRatio));
        for (var point = 0; point < 3; point++)
        {
            double z1 = point == 1 ? 0 : 0.5, z2 = point == 2 ? 0 : 0.5, z3 = point == 0 ? 0 : 0.5;
            Curvature(g, sides, z1, z2, z3, b);
            OptMembrane.AddCongruence(b, e, bending, k, 9);
            ShearStrain(g, thickness, material.PoissonsRatio, sides, z1, z2, z3, s);
            for (var r = 0; r < 9; r++)
            {
                for (var c = 0; c < 9; c++)
                {
                    k[9 * r + c] += shear * (s[r] * s[c] + s[9 + r] * s[9 + c]);
                }
            }
        }
    }

    /// <summary>
    /// Curvature-displacement matrix (3 x 9; βx,x, βy,y, βx,y + βy,x) at triangle coordinates; times z it gives strain.
    /// </summary>
    public static void Curvature(
        in LocalTriangle g, double thickness, SheetMaterial material, double z1, double z2, double z3, Span<double> b)
    {
        Span<double> sides = stackalloc double[27];
        SideRotation(g, thickness, material.PoissonsRatio, sides);
        Curvature(g, sides, z1, z2, z3, b);
    }

    private static double Flexibility(double thickness, double nu, double length) =>
        2 / (ShearCorrection * (1 - nu)) * (thickness / length) * (thickness / length);

    private static void Side(in LocalTriangle g, int side, out double length, out double cos, out double sin)
    {
        var (dx, dy) = side switch
        {
            0 => (g.X2, 0.0),
            1 => (g.X3 - g.X2, g.Y3),
            _ => (-g.X3, -g.Y3),
        };
        length = Math.Sqrt(dx * dx + dy * dy);
        (cos, sin) = (dx / length, dy / length);
    }

    // The quadratic part of the tangential rotation at each mid-side from the corner freedoms: 3 x 9.
    private static void SideRotation(in LocalTriangle g, double thickness, double nu, Span<double> sides)
    {
        sides.Clear();
        for (var side = 0; side < 3; side++)
        {
            Side(g, side, out var length, out var cos, out var sin);
            var factor = -1.5 / (length * (1 + Flexibility(thickness, nu, length)));
            var half = factor * length / 2;
            int i = 9 * side + 3 * side, j = 9 * side + 3 * ((side + 1) % 3);
            sides[i] = -factor;
            sides[j] = factor;
            sides[i + 1] = sides[j + 1] = -half * sin;
            sides[i + 2] = sides[j + 2] = half * cos;
        }
    }

    private static void Curvature(
        in LocalTriangle g, ReadOnlySpan<double> sides, double z1, double z2, double z3, Span<double> b)
    {
        var scale = 1 / (2 * g.Area);
        ReadOnlySpan<double> zx = [scale * -g.Y3, scale * g.Y3, 0];
        ReadOnlySpan<double> zy = [scale * (g.X3 - g.X2), scale * -g.X3, scale * g.X2];
        ReadOnlySpan<double> z = [z1, z2, z3];
        b.Clear();
        for (var i = 0; i < 3; i++)
        {
            int rx = 3 * i + 1, ry = rx + 1;
            b[ry] += zx[i];
            b[9 + rx] -= zy[i];
            b[18 + ry] += zy[i];
            b[18 + rx] -= zx[i];
        }

        for (var side = 0; side < 3; side++)
        {
            int i = side, j = (side + 1) % 3;
            Side(g, side, out _, out var cos, out var sin);
            double px = 4 * (z[i] * zx[j] + z[j] * zx[i]), py = 4 * (z[i] * zy[j] + z[j] * zy[i]);
            for (var c = 0; c < 9; c++)
            {
                var turn = sides[9 * side + c];
                b[c] += px * cos * turn;
                b[9 + c] += py * sin * turn;
                b[18 + c] += (py * cos + px * sin) * turn;
            }
        }
    }

    // Shear constant along each side, carried to the corners and interpolated linearly: 2 x 9.
    private static void ShearStrain(
        in LocalTriangle g, double thickness, double nu, ReadOnlySpan<double> sides, double z1, double z2, double z3, Span<double> s)
    {
        ReadOnlySpan<double> z = [z1, z2, z3];
        s.Clear();
        for (var corner = 0; corner < 3; corner++)
        {
            int out_ = corner, in_ = (corner + 2) % 3;
            Side(g, out_, out var lengthK, out var cosK, out var sinK);
            Side(g, in_, out var lengthM, out var cosM, out var sinM);
            double phiK = -2.0 / 3 * Flexibility(thickness, nu, lengthK), phiM = -2.0 / 3 * Flexibility(thickness, nu, lengthM);
            var scale = z[corner] / (cosK * sinM - cosM * sinK);
            for (var c = 0; c < 9; c++)
            {
                double k = phiK * sides[9 * out_ + c], m = phiM * sides[9 * in_ + c];
                s[c] += scale * (sinM * k - sinK * m);
                s[9 + c] += scale * (cosK * m - cosM * k);
            }
        }
    }
}
