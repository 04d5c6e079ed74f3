using BracketGen.Strength.Model;

namespace BracketGen.Strength.Elements;

/// <summary>
/// The optimal (OPT) assumed-natural-deviatoric-strain membrane triangle with a drilling rotation at each corner.
/// </summary>
/// <remarks>
/// C. A. Felippa, "A study of optimal membrane triangles with drilling freedoms", Computer Methods in Applied Mechanics and
/// Engineering 192 (2003) 2125-2168: basic stiffness (13)-(14), higher-order stiffness (26)-(35), free parameters of Table 3,
/// row OPT. The equation numbers are from memory; the tests of in-plane bending at any aspect ratio show that the element is
/// the one of the paper. Freedoms (u1, v1, θ1, u2, v2, θ2, u3, v3, θ3), θ counter-clockwise.
/// </remarks>
internal static class OptMembrane
{
    private const double AlphaB = 1.5;

    /// <summary>Fills <paramref name="k"/> with the 9 x 9 stiffness (N/mm, N, N·mm), as <see cref="Rows"/> pads it.</summary>
    public static void Stiffness(in LocalTriangle g, double thickness, SheetMaterial material, Span<double> k)
    {
        // Rows 0 to 2: the mean strains. Rows 3 to 5: the corner rotations less the mean one.
        Span<double> six = stackalloc double[6 * Rows.Stride], stressed = stackalloc double[6 * Rows.Stride];
        Span<double> e = stackalloc double[9], te = stackalloc double[9], natural = stackalloc double[9], q = stackalloc double[9], rotation = stackalloc double[9];
        six.Clear();
        PlaneStress(material, e);
        BasicStrain(g, six);
        for (var i = 0; i < 3; i++)
        {
            var row = six[(Rows.Stride * (3 + i))..];
            MeanRotation(g, row);
            row[3 * i + 2] = 1;
        }

        NaturalToCartesian(g, te);
        natural.Clear();
        AddCongruence(te, e, 1, natural);
        var volume = g.Area * thickness;
        var beta = Beta0(material.PoissonsRatio);
        rotation.Clear();
        for (var side = 0; side < 3; side++)
        {
            QMatrix(g, side == 2 ? 0.5 : side == 0 ? 0.5 : 0, side == 2 ? 0 : 0.5, side == 0 ? 0 : 0.5, q);
            AddCongruence(q, natural, 0.75 * beta * volume, rotation);
        }

        for (var i = 0; i < 9; i++)
        {
            e[i] *= volume;
        }

        Rows.Multiply(e, 3, six, stressed);
        Rows.Multiply(rotation, 3, six[(3 * Rows.Stride)..], stressed[(3 * Rows.Stride)..]);
        Rows.Congruence(six, 6, stressed, k);
    }

    /// <summary>Strains (εx, εy, γxy) at the three corners, one after the other, from the nine freedoms.</summary>
    public static void CornerStrains(in LocalTriangle g, SheetMaterial material, ReadOnlySpan<double> freedoms, Span<double> strains)
    {
        Span<double> b = stackalloc double[3 * Rows.Stride], te = stackalloc double[9], q = stackalloc double[9], mean = stackalloc double[9];
        BasicStrain(g, b);
        NaturalToCartesian(g, te);
        MeanRotation(g, mean);
        double e0 = 0, e1 = 0, e2 = 0, turn = 0;
        for (var c = 0; c < 9; c++)
        {
            e0 += b[c] * freedoms[c];
            e1 += b[Rows.Stride + c] * freedoms[c];
            e2 += b[2 * Rows.Stride + c] * freedoms[c];
            turn += mean[c] * freedoms[c];
        }

        double t0 = freedoms[2] + turn, t1 = freedoms[5] + turn, t2 = freedoms[8] + turn;
        var factor = 1.5 * Math.Sqrt(Beta0(material.PoissonsRatio));
        for (var corner = 0; corner < 3; corner++)
        {
            QMatrix(g, corner == 0 ? 1 : 0, corner == 1 ? 1 : 0, corner == 2 ? 1 : 0, q);
            double n0 = factor * (q[0] * t0 + q[1] * t1 + q[2] * t2), n1 = factor * (q[3] * t0 + q[4] * t1 + q[5] * t2), n2 = factor * (q[6] * t0 + q[7] * t1 + q[8] * t2);
            strains[3 * corner] = e0 + te[0] * n0 + te[1] * n1 + te[2] * n2;
            strains[3 * corner + 1] = e1 + te[3] * n0 + te[4] * n1 + te[5] * n2;
            strains[3 * corner + 2] = e2 + te[6] * n0 + te[7] * n1 + te[8] * n2;
        }
    }

    /// <summary>Plane-stress elasticity matrix (3 x 3, MPa).</summary>
    public static void PlaneStress(SheetMaterial material, Span<double> e)
    {
        double nu = material.PoissonsRatio, factor = material.YoungsModulus / (1 - nu * nu);
        e.Clear();
        e[0] = e[4] = factor;
        e[1] = e[3] = nu * factor;
        e[8] = factor * (1 - nu) / 2;
    }

    // (1 - 4ν²)/2 makes in-plane bending exact at any aspect ratio; the floor keeps the rank where ν nears one half.
    private static double Beta0(double nu) => Math.Max((1 - 4 * nu * nu) / 2, 0.01);

    // Mean strain, transposed force-lumping matrix over the volume: three rows.
    private static void BasicStrain(in LocalTriangle g, Span<double> b)
    {
        Span<double> x = [0, g.X2, g.X3], y = [0, 0, g.Y3];
        var scale = 1 / (2 * g.Area);
        for (var i = 0; i < 3; i++)
        {
            int j = (i + 1) % 3, k = (i + 2) % 3;
            double yjk = y[j] - y[k], xkj = x[k] - x[j];
            double yik = y[i] - y[k], yji = y[j] - y[i], xki = x[k] - x[i], xij = x[i] - x[j];
            var c = 3 * i;
            b[c] = scale * yjk;
            b[c + 1] = 0;
            b[c + 2] = scale * AlphaB / 6 * yjk * (yik - yji);
            b[Rows.Stride + c] = 0;
            b[Rows.Stride + c + 1] = scale * xkj;
            b[Rows.Stride + c + 2] = scale * AlphaB / 6 * xkj * (xki - xij);
            b[2 * Rows.Stride + c] = scale * xkj;
            b[2 * Rows.Stride + c + 1] = scale * yjk;
            b[2 * Rows.Stride + c + 2] = scale * AlphaB / 3 * (xki * yik - xij * yji);
        }
    }

    // Less the mean rotation of the linear triangle: nine numbers, none for the rotations themselves.
    private static void MeanRotation(in LocalTriangle g, Span<double> mean)
    {
        Span<double> x = [0, g.X2, g.X3], y = [0, 0, g.Y3];
        var scale = 1 / (4 * g.Area);
        for (var corner = 0; corner < 3; corner++)
        {
            int j = (corner + 1) % 3, k = (corner + 2) % 3;
            mean[3 * corner] = scale * (x[k] - x[j]);
            mean[3 * corner + 1] = scale * (y[k] - y[j]);
            mean[3 * corner + 2] = 0;
        }
    }

    // Strains along the sides 12, 23, 31 to (εx, εy, γxy): 3 x 3.
    private static void NaturalToCartesian(in LocalTriangle g, Span<double> te)
    {
        double x1 = 0, x2 = g.X2, x3 = g.X3, y1 = 0, y2 = 0, y3 = g.Y3;
        double x12 = x1 - x2, x23 = x2 - x3, x31 = x3 - x1, y12 = y1 - y2, y23 = y2 - y3, y31 = y3 - y1;
        double x21 = -x12, x32 = -x23, x13 = -x31, y21 = -y12, y32 = -y23, y13 = -y31;
        double l21 = x21 * x21 + y21 * y21, l32 = x32 * x32 + y32 * y32, l13 = x13 * x13 + y13 * y13;
        var scale = 1 / (4 * g.Area * g.Area);
        te[0] = scale * y23 * y13 * l21;
        te[1] = scale * y31 * y21 * l32;
        te[2] = scale * y12 * y32 * l13;
        te[3] = scale * x23 * x13 * l21;
        te[4] = scale * x31 * x21 * l32;
        te[5] = scale * x12 * x32 * l13;
        te[6] = scale * (y23 * x31 + x32 * y13) * l21;
        te[7] = scale * (y31 * x12 + x13 * y21) * l32;
        te[8] = scale * (y12 * x23 + x21 * y32) * l13;
    }

    // β1 to β9 of the OPT element: the strain each corner rotation makes along each side, interpolated linearly.
    private static void QMatrix(in LocalTriangle g, double z1, double z2, double z3, Span<double> q)
    {
        double x2 = g.X2, x3 = g.X3, y3 = g.Y3;
        var third = 2 * g.Area / 3;
        double s21 = third / (x2 * x2), s32 = third / ((x3 - x2) * (x3 - x2) + y3 * y3), s13 = third / (x3 * x3 + y3 * y3);
        const double b1 = 1, b2 = 2, b3 = 1, b4 = 0, b5 = 1, b6 = -1, b7 = -1, b8 = -1, b9 = -2;
        q[0] = s21 * (z1 * b1 + z2 * b9 + z3 * b5);
        q[1] = s21 * (z1 * b2 + z2 * b7 + z3 * b6);
        q[2] = s21 * (z1 * b3 + z2 * b8 + z3 * b4);
        q[3] = s32 * (z1 * b4 + z2 * b3 + z3 * b8);
        q[4] = s32 * (z1 * b5 + z2 * b1 + z3 * b9);
        q[5] = s32 * (z1 * b6 + z2 * b2 + z3 * b7);
        q[6] = s13 * (z1 * b7 + z2 * b6 + z3 * b2);
        q[7] = s13 * (z1 * b8 + z2 * b4 + z3 * b3);
        q[8] = s13 * (z1 * b9 + z2 * b5 + z3 * b1);
    }

    // Adds factor·bᵀ·e·b to k; all are 3 x 3.
    private static void AddCongruence(ReadOnlySpan<double> b, ReadOnlySpan<double> e, double factor, Span<double> k)
    {
        Span<double> eb = stackalloc double[9];
        for (var i = 0; i < 3; i++)
        {
            for (var c = 0; c < 3; c++)
            {
                eb[3 * i + c] = factor * (e[3 * i] * b[c] + e[3 * i + 1] * b[3 + c] + e[3 * i + 2] * b[6 + c]);
            }
        }

        for (var r = 0; r < 3; r++)
        {
            for (var c = 0; c < 3; c++)
            {
                k[3 * r + c] += b[r] * eb[c] + b[3 + r] * eb[3 + c] + b[6 + r] * eb[6 + c];
            }
        }
    }
}
