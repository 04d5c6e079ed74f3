using BracketGen.Geometry;
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

    /// <summary>Fills <paramref name="k"/> with the 9 x 9 stiffness (N/mm, N, N·mm), rows first.</summary>
    /// <remarks>
    /// Curvature and shear come from six numbers: three constant curvatures and the three quadratic rotations of the sides. The stiffness is
    /// integrated for those and carried to the freedoms once.
    /// </remarks>
    public static void Stiffness(in LocalTriangle g, double thickness, SheetMaterial material, Span<double> k)
    {
        Span<double> e = stackalloc double[9], six = stackalloc double[54], inner = stackalloc double[36], p = stackalloc double[9], s = stackalloc double[6];
        OptMembrane.PlaneStress(material, e);
        var sides = new Sides(g, thickness, material.PoissonsRatio);
        SixNumbers(g, sides, six);
        inner.Clear();
        var bending = g.Area / 3 * thickness * thickness * thickness / 12;
        var shear = g.Area / 3 * ShearCorrection * thickness * material.YoungsModulus / (2 * (1 + material.PoissonsRatio));
        inner[0] = inner[7] = 3 * bending * e[0];
        inner[1] = inner[6] = 3 * bending * e[1];
        inner[14] = 3 * bending * e[8];
        for (var point = 0; point < 3; point++)
        {
            double z1 = point == 1 ? 0 : 0.5, z2 = point == 2 ? 0 : 0.5, z3 = point == 0 ? 0 : 0.5;
            SideCurvature(g, sides, z1, z2, z3, p);
            ShearStrain(sides, z1, z2, z3, s);
            for (var c = 0; c < 3; c++)
            {
                double e0 = bending * (e[0] * p[c] + e[1] * p[3 + c]), e1 = bending * (e[3] * p[c] + e[4] * p[3 + c]), e2 = bending * e[8] * p[6 + c];
                inner[3 + c] += e0;
                inner[9 + c] += e1;
                inner[15 + c] += e2;
                for (var r = 0; r < 3; r++)
                {
                    inner[6 * (3 + r) + 3 + c] += p[r] * e0 + p[3 + r] * e1 + p[6 + r] * e2 + shear * (s[r] * s[c] + s[3 + r] * s[3 + c]);
                }
            }
        }

        for (var r = 0; r < 3; r++)
        {
            for (var c = 0; c < 3; c++)
            {
                inner[6 * (3 + r) + c] = inner[6 * c + 3 + r];
            }
        }

        Span<double> half = stackalloc double[54];
        for (var r = 0; r < 6; r++)
        {
            for (var c = 0; c < 9; c++)
            {
                half[9 * r + c] = inner[6 * r] * six[c] + inner[6 * r + 1] * six[9 + c] + inner[6 * r + 2] * six[18 + c]
                    + inner[6 * r + 3] * six[27 + c] + inner[6 * r + 4] * six[36 + c] + inner[6 * r + 5] * six[45 + c];
            }
        }

        for (var r = 0; r < 9; r++)
        {
            for (var c = r; c < 9; c++)
            {
                k[9 * r + c] = k[9 * c + r] = six[r] * half[c] + six[9 + r] * half[9 + c] + six[18 + r] * half[18 + c]
                    + six[27 + r] * half[27 + c] + six[36 + r] * half[36 + c] + six[45 + r] * half[45 + c];
            }
        }
    }

    /// <summary>
    /// Curvatures (βx,x, βy,y, βx,y + βy,x) at the three corners, one after the other, from the nine freedoms; times z they give strains.
    /// </summary>
    public static void CornerCurvatures(
        in LocalTriangle g, double thickness, SheetMaterial material, ReadOnlySpan<double> freedoms, Span<double> curvatures)
    {
        Span<double> six = stackalloc double[54], p = stackalloc double[9], q = stackalloc double[6];
        var sides = new Sides(g, thickness, material.PoissonsRatio);
        SixNumbers(g, sides, six);
        for (var r = 0; r < 6; r++)
        {
            var sum = 0.0;
            for (var c = 0; c < 9; c++)
            {
                sum += six[9 * r + c] * freedoms[c];
            }

            q[r] = sum;
        }

        for (var corner = 0; corner < 3; corner++)
        {
            SideCurvature(g, sides, corner == 0 ? 1 : 0, corner == 1 ? 1 : 0, corner == 2 ? 1 : 0, p);
            for (var i = 0; i < 3; i++)
            {
                curvatures[3 * corner + i] = q[i] + p[3 * i] * q[3] + p[3 * i + 1] * q[4] + p[3 * i + 2] * q[5];
            }
        }
    }

    // Rows 0 to 2: the constant curvatures; rows 3 to 5: the quadratic part of the tangential rotation at each mid-side. 6 x 9.
    private static void SixNumbers(in LocalTriangle g, in Sides sides, Span<double> six)
    {
        six.Clear();
        ReadOnlySpan<double> zx = [sides.Zx.X, sides.Zx.Y, 0], zy = [sides.Zy.X, sides.Zy.Y, sides.Zy.Z];
        for (var i = 0; i < 3; i++)
        {
            int rx = 3 * i + 1, ry = rx + 1;
            six[ry] = zx[i];
            six[9 + rx] = -zy[i];
            six[18 + ry] = zy[i];
            six[18 + rx] = -zx[i];
        }

        for (var side = 0; side < 3; side++)
        {
            var (length, cos, sin, flexibility) = sides[side];
            var factor = -1.5 / (length * (1 + flexibility));
            var half = factor * length / 2;
            int i = 27 + 9 * side + 3 * side, j = 27 + 9 * side + 3 * ((side + 1) % 3);
            six[i] = -factor;
            six[j] = factor;
            six[i + 1] = six[j + 1] = -half * sin;
            six[i + 2] = six[j + 2] = half * cos;
        }
    }

    // What the sides' rotations add to the curvatures: 3 x 3.
    private static void SideCurvature(in LocalTriangle g, in Sides sides, double z1, double z2, double z3, Span<double> p)
    {
        ReadOnlySpan<double> z = [z1, z2, z3], zx = [sides.Zx.X, sides.Zx.Y, 0], zy = [sides.Zy.X, sides.Zy.Y, sides.Zy.Z];
        for (var side = 0; side < 3; side++)
        {
            int i = side, j = (side + 1) % 3;
            var (_, cos, sin, _) = sides[side];
            double px = 4 * (z[i] * zx[j] + z[j] * zx[i]), py = 4 * (z[i] * zy[j] + z[j] * zy[i]);
            p[side] = px * cos;
            p[3 + side] = py * sin;
            p[6 + side] = py * cos + px * sin;
        }
    }

    // Shear constant along each side, carried to the corners and interpolated linearly: 2 x 3 from the sides' rotations.
    private static void ShearStrain(in Sides sides, double z1, double z2, double z3, Span<double> s)
    {
        ReadOnlySpan<double> z = [z1, z2, z3];
        s.Clear();
        for (var corner = 0; corner < 3; corner++)
        {
            int out_ = corner, in_ = (corner + 2) % 3;
            var (_, cosK, sinK, flexibilityK) = sides[out_];
            var (_, cosM, sinM, flexibilityM) = sides[in_];
            double phiK = -2.0 / 3 * flexibilityK, phiM = -2.0 / 3 * flexibilityM;
            var scale = z[corner] / (cosK * sinM - cosM * sinK);
            s[out_] += scale * sinM * phiK;
            s[in_] -= scale * sinK * phiM;
            s[3 + out_] -= scale * cosM * phiK;
            s[3 + in_] += scale * cosK * phiM;
        }
    }

    // The sides 12, 23, 31 and the slopes of the triangle coordinates.
    private readonly struct Sides
    {
        private readonly (double Length, double Cos, double Sin, double Flexibility) _a, _b, _c;

        public Sides(in LocalTriangle g, double thickness, double nu)
        {
            _a = Of(g.X2, 0, thickness, nu);
            _b = Of(g.X3 - g.X2, g.Y3, thickness, nu);
            _c = Of(-g.X3, -g.Y3, thickness, nu);
            var scale = 1 / (2 * g.Area);
            Zx = new(scale * -g.Y3, scale * g.Y3, 0);
            Zy = new(scale * (g.X3 - g.X2), scale * -g.X3, scale * g.X2);
        }

        public Vector3 Zx { get; }

        public Vector3 Zy { get; }

        public (double Length, double Cos, double Sin, double Flexibility) this[int side] => side switch
        {
            0 => _a,
            1 => _b,
            _ => _c,
        };

        private static (double, double, double, double) Of(double dx, double dy, double thickness, double nu)
        {
            var length = Math.Sqrt(dx * dx + dy * dy);
            return (length, dx / length, dy / length, 2 / (ShearCorrection * (1 - nu)) * (thickness / length) * (thickness / length));
        }
    }
}
