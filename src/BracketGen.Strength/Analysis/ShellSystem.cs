using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Strength.Elements;
using BracketGen.Strength.Model;
using BracketGen.Strength.Solving;

namespace BracketGen.Strength.Analysis;

/// <summary>A model whose stiffness is assembled and factorised: any number of load sets and modes follow cheaply.</summary>
public sealed class ShellSystem
{
    private const int Block = BlockMatrix.Block;

    private readonly ShellModel _model;
    private readonly BlockMatrix _stiffness;
    private readonly SparseCholesky _factor;
    private readonly bool[] _held;
    private readonly double[] _values;

    private ShellSystem(ShellModel model, BlockMatrix stiffness, SparseCholesky factor, bool[] held, double[] values)
    {
        _model = model;
        _stiffness = stiffness;
        _factor = factor;
        _held = held;
        _values = values;
    }

    /// <summary>Numbers in the triangular factor: what a solution costs.</summary>
    public long FactorEntries => _factor.Entries;

    /// <summary>Assembles and factorises <paramref name="model"/>.</summary>
    /// <exception cref="NotHeldException">The part can move without being bent.</exception>
    public static ShellSystem Factorise(ShellModel model)
    {
        var (nodes, triangles) = model.Mesh;
        var stiffness = BlockMatrix.For(nodes.Length, triangles);
        Span<double> k = stackalloc double[ShellTriangle.Size * ShellTriangle.Size];
        foreach (var t in triangles)
        {
            ShellTriangle.Stiffness(new(nodes[t.A].Vector, nodes[t.B].Vector, nodes[t.C].Vector), model.Thickness, model.Material, k);
            stiffness.Add(t, k);
        }

        var held = new bool[nodes.Length * Block];
        var values = new double[held.Length];
        foreach (var h in model.Held)
        {
            held[h.Node * Block + (int)h.Freedom] = true;
            values[h.Node * Block + (int)h.Freedom] = h.Value;
        }

        try
        {
            return new(model, stiffness, SparseCholesky.Factorise(stiffness.Without(held, 1)), held, values);
        }
        catch (SingularSystemException e)
        {
            throw new NotHeldException(nodes[e.Node], e);
        }
    }

    /// <summary>Displacements, stresses and reactions under <paramref name="loads"/> and the model's given displacements.</summary>
    public StaticSolution Solve(IEnumerable<NodalLoad> loads)
    {
        var force = new double[_held.Length];
        foreach (var load in loads)
        {
            var at = load.Node * Block;
            force[at] += load.Force.X;
            force[at + 1] += load.Force.Y;
            force[at + 2] += load.Force.Z;
            force[at + 3] += load.Moment.X;
            force[at + 4] += load.Moment.Y;
            force[at + 5] += load.Moment.Z;
        }

        // Given displacements go to the right-hand side; a held freedom then gives zero here and its value below.
        var u = new double[force.Length];
        _stiffness.Multiply(_values, u);
        for (var i = 0; i < u.Length; i++)
        {
            u[i] = _held[i] ? 0 : force[i] - u[i];
        }

        _factor.Solve(u);
        for (var i = 0; i < u.Length; i++)
        {
            u[i] += _values[i];
        }

        var reaction = new double[u.Length];
        _stiffness.Multiply(u, reaction);
        for (var i = 0; i < u.Length; i++)
        {
            reaction[i] = _held[i] ? reaction[i] - force[i] : 0;
        }

        var count = _model.Mesh.Nodes.Length;
        return new(
            [.. Enumerable.Range(0, count).Select(n => At(u, n * Block))],
            [.. Enumerable.Range(0, count).Select(n => At(u, n * Block + 3))],
            StressRecovery.AtNodes(_model, u),
            [.. Enumerable.Range(0, count)
                .Where(n => _held.AsSpan(n * Block, Block).Contains(true))
                .Select(n => new NodalLoad(n, At(reaction, n * Block), At(reaction, n * Block + 3)))]);
    }

    /// <summary>The lowest <paramref name="count"/> natural vibrations, slowest first.</summary>
    /// <exception cref="InvalidOperationException">The material has no density.</exception>
    public ImmutableArray<Mode> LowestModes(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        if (!(_model.Material.Density > 0))
        {
            throw new InvalidOperationException("Natural frequencies need the material's density.");
        }

        var (nodes, triangles) = _model.Mesh;
        var mass = BlockMatrix.For(nodes.Length, triangles);
        Span<double> m = stackalloc double[ShellTriangle.Size * ShellTriangle.Size];
        foreach (var t in triangles)
        {
            ShellTriangle.Mass(new(nodes[t.A].Vector, nodes[t.B].Vector, nodes[t.C].Vector), _model.Thickness, _model.Material, m);
            mass.Add(t, m);
        }

        foreach (var point in _model.Masses)
        {
            mass.AddToDisplacements(point.Node, point.Mass);
        }

        var (values, vectors) = BlockLanczos.Lowest(_factor, mass.Without(_held, 0), count);
        return [.. values.Select((v, i) => ToMode(Math.Sqrt(v) / (2 * Math.PI), vectors[i]))];
    }

    private static Mode ToMode(double frequency, double[] vector)
    {
        var shape = Enumerable.Range(0, vector.Length / Block).Select(n => At(vector, n * Block)).ToArray();

        // The sign is made the same every time: the node that moves most moves forward along its main axis.
        var most = shape.MaxBy(s => s.Length);
        var main = Math.Abs(most.X) >= Math.Abs(most.Y) ? most.X : most.Y;
        main = Math.Abs(most.Z) > Math.Abs(main) ? most.Z : main;
        var scale = Math.CopySign(most.Length, main);
        return new(frequency, [.. shape.Select(s => s / scale)]);
    }

    private static Vector3 At(double[] u, int i) => new(u[i], u[i + 1], u[i + 2]);
}

/// <summary>One natural vibration of the held part, without damping.</summary>
/// <param name="Frequency">Natural frequency (Hz).</param>
/// <param name="Shape">Displacement of each node; the largest has length one.</param>
public sealed record Mode(double Frequency, ImmutableArray<Vector3> Shape) : IMirrored<Mode>
{
    /// <inheritdoc/>
    public Mode Mirrored() => this with { Shape = [.. Shape.Select(s => s.MirroredInY)] };
}

/// <summary>The part can move without being bent: it is not held, or not enough.</summary>
public sealed class NotHeldException : Exception
{
    internal NotHeldException(ThrottlePoint near, Exception inner)
        : base(FormattableString.Invariant(
            $"The part is not held firmly: it can move freely near ({near.X:0.#}, {near.Y:0.#}, {near.Z:0.#}) mm. Check bolts and washers."), inner) =>
        Near = near;

    /// <summary>Where the free motion was found (mm).</summary>
    public ThrottlePoint Near { get; }
}
