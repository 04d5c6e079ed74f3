namespace BracketGen.Strength.Elements;

/// <summary>The plate's consistent mass: deflection by a cubic, fibre rotation linear (rotary inertia).</summary>
/// <remarks>
/// The cubic is that of G. P. Bazeley, Y. K. Cheung, B. M. Irons and O. C. Zienkiewicz, "Triangular elements in plate bending"
/// (Wright-Patterson conference, 1965), with the slopes w,x = -θy and w,y = θx. For mass it need not be conforming.
/// Integrated by the 12-point rule of degree 6 of D. A. Dunavant, International Journal for Numerical Methods in Engineering 21
/// (1985) 1129-1148.
/// </remarks>
internal static class PlateMass
{
    // The mean over the triangle of the products of its nine polynomials: at each corner z + z²(z_j + z_k) - z(z_j² + z_k²), and z² z_j and z² z_k
    // with half the bubble. They are the same for every triangle.
    private static readonly double[] Products = MakeProducts();

    /// <summary>Fills <paramref name="m"/> with the 9 x 9 mass for freedoms (w, θx, θy) a corner.</summary>
    /// <param name="g">The triangle.</param>
    /// <param name="perArea">Mass per area (tonne/mm²).</param>
    /// <param name="rotaryPerArea">Rotary inertia per area (tonne).</param>
    /// <param name="m">9 x 9, as <see cref="Rows"/> pads it.</param>
    public static void Fill(in LocalTriangle g, double perArea, double rotaryPerArea, Span<double> m)
    {
        ReadOnlySpan<double> x = [0, g.X2, g.X3], y = [0, 0, g.Y3], products = Products;
        Span<double> half = stackalloc double[81];
        var mass = perArea * g.Area;

        // Freedoms by polynomials, rows first and then columns: w has one, each slope two.
        for (var i = 0; i < 3; i++)
        {
            int j = (i + 1) % 3, k = (i + 2) % 3;
            var (yj, yk, xj, xk) = (y[j] - y[i], y[k] - y[i], x[j] - x[i], x[k] - x[i]);
            for (var c = 0; c < 9; c++)
            {
                double toJ = mass * products[9 * (3 * i + 1) + c], toK = mass * products[9 * (3 * i + 2) + c];
                half[9 * (3 * i) + c] = mass * products[9 * (3 * i) + c];
                half[9 * (3 * i + 1) + c] = toJ * yj + toK * yk;
                half[9 * (3 * i + 2) + c] = -toJ * xj - toK * xk;
            }
        }

        for (var i = 0; i < 3; i++)
        {
            int j = (i + 1) % 3, k = (i + 2) % 3;
            var (yj, yk, xj, xk) = (y[j] - y[i], y[k] - y[i], x[j] - x[i], x[k] - x[i]);
            for (var r = 0; r < 9; r++)
            {
                double toJ = half[9 * r + 3 * i + 1], toK = half[9 * r + 3 * i + 2];
                m[Rows.Stride * r + 3 * i] = half[9 * r + 3 * i];
                m[Rows.Stride * r + 3 * i + 1] = toJ * yj + toK * yk;
                m[Rows.Stride * r + 3 * i + 2] = -toJ * xj - toK * xk;
            }
        }

        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                var share = rotaryPerArea * g.Area / 12 * (i == j ? 2 : 1);
                m[Rows.Stride * (3 * i + 1) + 3 * j + 1] += share;
                m[Rows.Stride * (3 * i + 2) + 3 * j + 2] += share;
            }
        }
    }

    private static double[] MakeProducts()
    {
        var products = new double[81];
        Span<double> n = stackalloc double[9];
        var points = MakePoints();
        for (var p = 0; p < points.Length; p += 4)
        {
            ReadOnlySpan<double> z = points.AsSpan(p + 1, 3);
            var bubble = z[0] * z[1] * z[2] / 2;
            for (var i = 0; i < 3; i++)
            {
                int j = (i + 1) % 3, k = (i + 2) % 3;
                n[3 * i] = z[i] + z[i] * z[i] * (z[j] + z[k]) - z[i] * (z[j] * z[j] + z[k] * z[k]);
                n[3 * i + 1] = z[i] * z[i] * z[j] + bubble;
                n[3 * i + 2] = z[i] * z[i] * z[k] + bubble;
            }

            for (var r = 0; r < 9; r++)
            {
                for (var c = 0; c < 9; c++)
                {
                    products[9 * r + c] += points[p] * n[r] * n[c];
                }
            }
        }

        return products;
    }

    // Weight and three triangle coordinates of each point.
    private static double[] MakePoints()
    {
        var points = new List<double>();
        void Three(double weight, double a)
        {
            var b = (1 - a) / 2;
            points.AddRange([weight, a, b, b, weight, b, a, b, weight, b, b, a]);
        }

        Three(0.050844906370207, 0.873821971016996);
        Three(0.116786275726379, 0.501426509658179);
        const double weight = 0.082851075618374, p = 0.636502499121399, q = 0.310352451033785, r = 1 - p - q;
        points.AddRange([weight, p, q, r, weight, p, r, q, weight, q, p, r, weight, q, r, p, weight, r, p, q, weight, r, q, p]);
        return [.. points];
    }
}
