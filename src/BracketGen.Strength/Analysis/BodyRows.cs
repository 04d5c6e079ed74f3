using BracketGen.Geometry;
using BracketGen.Strength.Elements;
using BracketGen.Strength.Model;
using BracketGen.Strength.Solving;

namespace BracketGen.Strength.Analysis;

/// <summary>What the bodies on a model add to its mass: six rows a body, three for its motion and three for its turning.</summary>
/// <remarks>
/// With weights v, the nodes' places r from their weighted centre and displacements u, the best-fit rotation θ solves Σ v (r² I - r rᵀ) θ = Σ v r × u (normal equations of
/// the least squares Σ v |u - u₀ - θ × r|²). Twice the kinetic energy is m |u̇ + θ̇ × c|² + Σ J θ̇² about three axes square to each other, c the offset of the centre of gravity.
/// </remarks>
internal static class BodyRows
{
    private const int Block = Block6.Order;

    /// <summary>The rows of all bodies that have mass; held freedoms have none.</summary>
    /// <exception cref="ArgumentException">The nodes of a body lie in one line: they do not say how it turns.</exception>
    public static MassRow[] Of(ShellModel model, FreeNodes free) => [.. model.Bodies.Where(b => b.Mass > 0).SelectMany(b => Of(b, model, free))];

    private static IEnumerable<MassRow> Of(AttachedBody body, ShellModel model, FreeNodes free)
    {
        var places = body.Nodes.Select(n => model.Mesh.Nodes[n.Node].Vector).ToArray();

        // A share may be slightly negative where a mesh is uneven: the fit takes its size, about the centre that goes with it.
        var sum = body.Nodes.Sum(n => Math.Abs(n.Share));
        double[] weights = [.. body.Nodes.Select(n => Math.Abs(n.Share) / sum)];
        var centre = places.Zip(weights).Aggregate(Vector3.Zero, (c, p) => c + p.Second * p.First);
        Vector3[] arms = [.. places.Select(p => p - centre)];
        var inverse = Inverse(arms, weights);
        var side = Math.Abs(body.Axis.X) < 0.7 ? new Vector3(1, 0, 0) : new(0, 1, 0);
        var across = body.Axis.Cross(side).Unit;
        Vector3[] principal = [body.Axis, across, body.Axis.Cross(across)];
        double[] inertias = [body.AboutAxis, body.AboutAcross, body.AboutAcross];

        // Turn about `axis` = Σ f · u with f = v (T⁻¹ axis) × r; motion along `axis` = Σ (share · axis + the turn about offset × axis) · u.
        Vector3 Turn(Vector3 axis, int i) => weights[i] * inverse(axis).Cross(arms[i]);
        foreach (var axis in new Vector3[] { new(1, 0, 0), new(0, 1, 0), new(0, 0, 1) })
        {
            var lever = body.Offset.Cross(axis);
            yield return Row(Math.Sqrt(body.Mass), i => body.Nodes[i].Share * axis + Turn(lever, i));
        }

        for (var k = 0; k < 3; k++)
        {
            var axis = principal[k];
            if (inertias[k] > 0)
            {
                yield return Row(Math.Sqrt(inertias[k]), i => Turn(axis, i));
            }
        }

        MassRow Row(double scale, Func<int, Vector3> factor)
        {
            var (at, values) = (new List<int>(), new List<double>());
            for (var i = 0; i < arms.Length; i++)
            {
                var node = body.Nodes[i].Node;
                var f = scale * factor(i);
                double[] along = [f.X, f.Y, f.Z];
                for (var c = 0; c < 3; c++)
                {
                    if (!free.IsHeld(node, c))
                    {
                        at.Add(Block * free.NumberOf(node) + c);
                        values.Add(along[c]);
                    }
                }
            }

            return new([.. at], [.. values]);
        }
    }

    private static Func<Vector3, Vector3> Inverse(Vector3[] arms, double[] weights)
    {
        double xx = 0, xy = 0, xz = 0, yy = 0, yz = 0, zz = 0;
        for (var i = 0; i < arms.Length; i++)
        {
            var (r, v) = (arms[i], weights[i]);
            xx += v * (r.Y * r.Y + r.Z * r.Z);
            yy += v * (r.X * r.X + r.Z * r.Z);
            zz += v * (r.X * r.X + r.Y * r.Y);
            xy -= v * r.X * r.Y;
            xz -= v * r.X * r.Z;
            yz -= v * r.Y * r.Z;
        }

        Vector3 a = new(xx, xy, xz), b = new(xy, yy, yz), c = new(xz, yz, zz);
        var determinant = a.Dot(b.Cross(c));
        var size = (xx + yy + zz) / 3;
        if (!(determinant > StrengthTolerance.Line * size * size * size))
        {
            throw new ArgumentException("The nodes that hold a body lie in one line: they do not say how it turns.");
        }

        return x => (x.X * b.Cross(c) + x.Y * c.Cross(a) + x.Z * a.Cross(b)) / determinant;
    }
}
