using BracketGen.Geometry;
using BracketGen.Strength.Elements;
using BracketGen.Strength.Model;
using BracketGen.Strength.Solving;

namespace BracketGen.Strength.Analysis;

/// <summary>Stiffness and mass of a model on its free nodes, summed over the triangles in their order.</summary>
internal static class Assembly
{
    private const int Block = Block6.Order;

    /// <summary>
    /// The stiffness: a held freedom of a free node has only its own diagonal. With it the forces that given displacements take (six a node; null
    /// where none is given).
    /// </summary>
    public static (BlockMatrix Matrix, double[]? FromGiven) Stiffness(ShellModel model, FreeNodes free)
    {
        ReadOnlySpan<ThrottlePoint> nodes = model.Mesh.Nodes.AsSpan();
        ReadOnlySpan<Triangle> triangles = model.Mesh.Triangles.AsSpan();
        var matrix = new BlockMatrix(free.Pattern);
        var fromGiven = free.HasGiven ? new double[nodes.Length * Block] : null;
        Span<double> k = stackalloc double[CornerBlocks.Length];
        for (var t = 0; t < triangles.Length; t++)
        {
            var corners = triangles[t];
            if (free.IsAtRest(corners))
            {
                continue;
            }

            ShellTriangle.Stiffness(new(nodes[corners.A].Vector, nodes[corners.B].Vector, nodes[corners.C].Vector), model.Thickness, model.Material, k);
            if (fromGiven is not null)
            {
                AddForces(corners, k, free.Given, fromGiven);
            }

            free.Restrict(corners, 1, k);
            matrix.Add(t, k);
        }

        return (matrix, fromGiven);
    }

    /// <summary>The forces that displacements <paramref name="given"/> (six numbers a node) of held freedoms take, on every node.</summary>
    public static double[] FromGiven(ShellModel model, FreeNodes free, double[] given) => OfElementsAtHeld(model, free, ShellTriangle.Stiffness, given, alsoAtRest: false);

    /// <summary>The consistent mass of the sheet with what hangs on it; held freedoms have none.</summary>
    public static MassMatrix Mass(ShellModel model, FreeNodes free)
    {
        ReadOnlySpan<ThrottlePoint> nodes = model.Mesh.Nodes.AsSpan();
        ReadOnlySpan<Triangle> triangles = model.Mesh.Triangles.AsSpan();
        var matrix = new BlockMatrix(free.Pattern);
        Span<double> m = stackalloc double[CornerBlocks.Length];
        for (var t = 0; t < triangles.Length; t++)
        {
            var corners = triangles[t];
            if (!free.IsAtRest(corners))
            {
                ShellTriangle.Mass(new(nodes[corners.A].Vector, nodes[corners.B].Vector, nodes[corners.C].Vector), model.Thickness, model.Material, m);
                free.Restrict(corners, 0, m);
                matrix.Add(t, m);
            }
        }

        return new(matrix, BodyRows.Of(model, free));
    }

    /// <summary>The force (N, six numbers a node) that the sheet's mass at held freedoms puts on free ones while it is accelerated along an axis by 1 mm/s².</summary>
    /// <param name="model">The model.</param>
    /// <param name="free">Its free nodes.</param>
    /// <param name="axis">0, 1 or 2 for x, y or z.</param>
    public static double[] InertiaOfHeld(ShellModel model, FreeNodes free, int axis)
    {
        var moved = new double[model.Mesh.Nodes.Length * Block];
        for (var n = 0; n < model.Mesh.Nodes.Length; n++)
        {
            moved[n * Block + axis] = free.IsHeld(n, axis) ? 1 : 0;
        }

        return OfElementsAtHeld(model, free, ShellTriangle.Mass, moved, alsoAtRest: false);
    }

    /// <summary>What every held freedom pushes back with under displacements <paramref name="u"/> (six numbers a node) and loads <paramref name="force"/>.</summary>
    public static double[] Reactions(ShellModel model, FreeNodes free, double[] u, double[] force)
    {
        var reaction = OfElementsAtHeld(model, free, ShellTriangle.Stiffness, u, free.HasGiven);
        for (var i = 0; i < u.Length; i++)
        {
            reaction[i] = free.IsHeld(i / Block, i % Block) ? reaction[i] - force[i] : 0;
        }

        return reaction;
    }

    private delegate void ElementMatrix(in LocalTriangle triangle, double thickness, SheetMaterial material, Span<double> blocks);

    // What the elements with a held corner make of displacements or accelerations u; those wholly at rest only where asked.
    private static double[] OfElementsAtHeld(ShellModel model, FreeNodes free, ElementMatrix element, double[] u, bool alsoAtRest)
    {
        ReadOnlySpan<ThrottlePoint> nodes = model.Mesh.Nodes.AsSpan();
        ReadOnlySpan<Triangle> triangles = model.Mesh.Triangles.AsSpan();
        var force = new double[u.Length];
        Span<double> blocks = stackalloc double[CornerBlocks.Length];
        foreach (var corners in triangles)
        {
            if ((free.HasHeld(corners.A) || free.HasHeld(corners.B) || free.HasHeld(corners.C)) && (alsoAtRest || !free.IsAtRest(corners)))
            {
                element(new(nodes[corners.A].Vector, nodes[corners.B].Vector, nodes[corners.C].Vector), model.Thickness, model.Material, blocks);
                AddForces(corners, blocks, u, force);
            }
        }

        return force;
    }

    private static void AddForces(Triangle corners, ReadOnlySpan<double> blocks, double[] u, double[] force)
    {
        Span<double> k = stackalloc double[ShellTriangle.Size * ShellTriangle.Size];
        CornerBlocks.Expand(blocks, k);
        for (var r = 0; r < ShellTriangle.Size; r++)
        {
            var sum = 0.0;
            for (var c = 0; c < ShellTriangle.Size; c++)
            {
                sum += k[ShellTriangle.Size * r + c] * u[corners[c / Block] * Block + c % Block];
            }

            force[corners[r / Block] * Block + r % Block] += sum;
        }
    }
}
