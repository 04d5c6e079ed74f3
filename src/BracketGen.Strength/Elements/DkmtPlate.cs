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

    /// <summary>Fills <paramref name="k"/> with the 9 x 9 stiffness (N/mm, N, N·mm), as <see cref="Rows"/> pads it.</summary>
    /// <remarks>
    /// Curvature and shear come from six numbers: three constant curvatures and the three quadratic rotations of the sides. The stiffness is
    /// integrated for those and carried to the freedoms once.
    /// </remarks>
    public static void Stiffness(in LocalTriangle g, double thickness, SheetMaterial material, Span<double> k)
    {
        Span<double> e = stackalloc double[9], six = stackalloc double[6 * Rows.Stride], stressed = stackalloc double[6 * Rows.Stride];
        Span<double> inner = stackalloc double[36], p = stackalloc double[9], s = stackalloc double[6], corners = stackalloc double[18];
        OptMembrane.PlaneStress(material, e);
        var sides = new Sides(g, thickness, material.PoissonsRatio);
        SixNumbers(sides, six);
        ShearAtCorners(sides, corners);
        inner.Clear();
        var bending = g.Area / 3 * thickness * thickness * thickness / 12;
        var shear = g.Area / 3 * ShearCorrection * thickness * material.YoungsModulus / (2 * (1 + material.PoissonsRatio));
        inner[0] = inner[7] = 3 * bending * e[0];
        inner[1] = inner[6] = 3 * bending * e[1];
        inner[14] = 3 * bending * e[8];
        for (var point = 0; point < 3; point++)
        {
            double z1 = point == 1 ? 0 : 0.5, z2 = point == 2 ? 0 : 0.5, z3 = point == 0 ? 0 : 0.5;
            SideCurvature(sides, z1, z2, z3, p);
            for (var c = 0; c < 6; c++)
            {
                s[c] = z1 * corners[c] + z2 * corners[6 + c] + z3 * corners[12 + c];
            }

            for (var c = 0; c < 3; c++)
            {
                double e0 = bending * (e[0] * p[c] + e[1] * p[3 + c]), e1 = bending * (e[3] * p[c] + e[4] * p[3 + c]), e2 = bending * e[8] * p[6 + c];
                inner[3 + c] += e0;
                inner[9 + c] += e1;
                inner[15 + c] += e2;
                double s0 = shear * s[c], s1 = shear * s[3 + c];
                for (var r = 0; r < 3; r++)
                {
                    inner[6 * (3 + r) + 3 + c] += p[r] * e0 + p[3 + r] * e1 + p[6 + r] * e2 + s[r] * s0 + s[3 + r] * s1;
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

        Rows.Multiply(inner, 6, six, stressed);
        Rows.Congruence(six, 6, stressed, k);
    }

    /// <summary>
    /// Curvatures (βx,x, βy,y, βx,y + βy,x) at the three corners, one after the other, from the nine freedoms; times z they give strains.
    /// </summary>
    public static void CornerCurvatures(
        in LocalTriangle g, double thickness, SheetMaterial material, ReadOnlySpan<double> freedoms, Span<double> curvatures)
    {
        Span<double> six = stackalloc double[6 * Rows.Stride], p = stackalloc double[9], q = stackalloc double[6];
        var sides = new Sides(g, thickness, material.PoissonsRatio);
        SixNumbers(sides, six);
        for (var r = 0; r < 6; r++)
        {
            var sum = 0.0;
            for (var c = 0; c < 9; c++)
            {
                sum += six[Rows.Stride * r + c] * freedoms[c];
            }

            q[r] = sum;
        }

        for (var corner = 0; corner < 3; corner++)
        {
            SideCurvature(sides, corner == 0 ? 1 : 0, corner == 1 ? 1 : 0, corner == 2 ? 1 : 0, p);
            for (var i = 0; i < 3; i++)
            {
                curvatures[3 * corner + i] = q[i] + p[3 * i] * q[3] + p[3 * i + 1] * q[4] + p[3 * i + 2] * q[5];
            }
        }
    }

    // Rows 0 to 2: the constant curvatures; rows 3 to 5: the quadratic part of the tangential rotation at each mid-side. Six rows.
    private static void SixNumbers(in Sides sides, Span<double> six)
    {
        six.Clear();
        for (var i = 0; i < 3; i++)
        {
            int rx = 3 * i + 1, ry = rx + 1;
            six[ry] = sides.Zx[i];
            six[Rows.Stride + rx] = -sides.Zy[i];
            six[2 * Rows.Stride + ry] = sides.Zy[i];
            six[2 * Rows.Stride + rx] = -sides.Zx[i];
        }

        for (var side = 0; side < 3; side++)
        {
            var factor = -1.5 / (sides.Length[side] * (1 + sides.Flexibility[side]));
            var half = factor * sides.Length[side] / 2;
            int i = Rows.Stride * (3 + side) + 3 * side, j = Rows.Stride * (3 + side) + 3 * ((side + 1) % 3);
            six[i] = -factor;
            six[j] = factor;
            six[i + 1] = six[j + 1] = -half * sides.Sin[side];
            six[i + 2] = six[j + 2] = half * sides.Cos[side];
        }
    }

    // What the sides' rotations add to the curvatures: 3 x 3.
    private static void SideCurvature(in Sides sides, double z1, double z2, double z3, Span<double> p)
    {
        Add(sides, 0, z1, z2, 1, p);
        Add(sides, 1, z2, z3, 2, p);
        Add(sides, 2, z3, z1, 0, p);

        static void Add(in Sides sides, int side, double zi, double zj, int next, Span<double> p)
        {
            double px = 4 * (zi * sides.Zx[next] + zj * sides.Zx[side]), py = 4 * (zi * sides.Zy[next] + zj * sides.Zy[side]);
            double cos = sides.Cos[side], sin = sides.Sin[side];
            p[side] = px * cos;
            p[3 + side] = py * sin;
            p[6 + side] = py * cos + px * sin;
        }
    }

    // Shear constant along each side, carried to each corner from the two sides that meet there: 2 x 3 a corner, from the sides' rotations.
    private static void ShearAtCorners(in Sides sides, Span<double> corners)
    {
        corners.Clear();
        for (var corner = 0; corner < 3; corner++)
        {
            int out_ = corner, in_ = corner == 0 ? 2 : corner - 1;
            double cosK = sides.Cos[out_], sinK = sides.Sin[out_], cosM = sides.Cos[in_], sinM = sides.Sin[in_];
            var scale = 1 / (cosK * sinM - cosM * sinK);
            double phiK = -2.0 / 3 * sides.Flexibility[out_] * scale, phiM = -2.0 / 3 * sides.Flexibility[in_] * scale;
            var s = corners.Slice(6 * corner, 6);
            s[out_] = sinM * phiK;
            s[in_] = -sinK * phiM;
            s[3 + out_] = -cosM * phiK;
            s[3 + in_] = cosK * phiM;
        }
    }

    // The sides 12, 23, 31 and the slopes of the triangle coordinates.
    private readonly ref struct Sides
    {
        public Sides(in LocalTriangle g, double thickness, double nu)
        {
            Three dx = new(g.X2, g.X3 - g.X2, -g.X3), dy = new(0, g.Y3, -g.Y3);
            Length = new(Math.Sqrt(dx.A * dx.A + dy.A * dy.A), Math.Sqrt(dx.B * dx.B + dy.B * dy.B), Math.Sqrt(dx.C * dx.C + dy.C * dy.C));
            double a = 1 / Length.A, b = 1 / Length.B, c = 1 / Length.C;
            Cos = new(dx.A * a, dx.B * b, dx.C * c);
            Sin = new(dy.A * a, dy.B * b, dy.C * c);
            var flexibility = 2 / (ShearCorrection * (1 - nu)) * thickness * thickness;
            Flexibility = new(flexibility * a * a, flexibility * b * b, flexibility * c * c);
            var scale = 1 / (2 * g.Area);
            Zx = new(scale * -g.Y3, scale * g.Y3, 0);
            Zy = new(scale * (g.X3 - g.X2), scale * -g.X3, scale * g.X2);
        }

        public readonly Three Length, Cos, Sin, Flexibility, Zx, Zy;
    }

    private readonly struct Three(double a, double b, double c)
    {
        public readonly double A = a, B = b, C = c;

        public double this[int i] => i == 0 ? A : i == 1 ? B : C;
    }
}
