using BracketGen.Strength.Elements;
using System.Collections.Immutable;
using System.Runtime.InteropServices;
using BracketGen.Geometry;
using BracketGen.Strength.Model;
using BracketGen.Strength.Solving;

namespace BracketGen.Strength.Analysis;

/// <summary>A model whose stiffness is assembled and factorised: any number of load sets and modes follow cheaply.</summary>
public sealed class ShellSystem
{
    private const int Block = Block6.Order;

    private readonly ShellModel _model;
    private readonly FreeNodes _free;
    private readonly SparseCholesky _factor;
    private readonly double[]? _fromGiven;
    private MassMatrix? _mass;

    private ShellSystem(ShellModel model, FreeNodes free, SparseCholesky factor, double[]? fromGiven)
    {
        _model = model;
        _free = free;
        _factor = factor;
        _fromGiven = fromGiven;
    }

    /// <summary>Numbers in the triangular factor: what a solution costs.</summary>
    public long FactorEntries => _factor.Entries;

    /// <summary>Assembles and factorises <paramref name="model"/>.</summary>
    /// <exception cref="NotHeldException">The part can move without being bent.</exception>
    public static ShellSystem Factorise(ShellModel model)
    {
        var free = new FreeNodes(model);
        var (stiffness, fromGiven) = Assembly.Stiffness(model, free);
        try
        {
            return new(model, free, SparseCholesky.Factorise(stiffness), fromGiven);
        }
        catch (SingularSystemException e)
        {
            throw new NotHeldException(model.Mesh.Nodes[free.NodeOf(e.Node)], e);
        }
    }

    /// <summary>Displacements, stresses and reactions under <paramref name="loads"/> and the model's given displacements.</summary>
    public StaticSolution Solve(IEnumerable<NodalLoad> loads)
    {
        var force = ForcesOf(loads);
        var right = force;
        if (_fromGiven is not null)
        {
            right = [.. force];
            for (var i = 0; i < right.Length; i++)
            {
                right[i] -= _fromGiven[i];
            }
        }

        // A held freedom gives zero here and its value below.
        var part = _free.Reduced(right);
        _factor.Solve(part);
        return SolutionOf(part, force);
    }

    /// <summary>The responses to several sets of loads, to be combined: what the free nodes do. Given displacements are left out.</summary>
    internal UnitResponses Unit(params ReadOnlySpan<IEnumerable<NodalLoad>> loads)
    {
        var (forces, parts) = (new double[loads.Length][], new double[loads.Length][]);
        for (var i = 0; i < loads.Length; i++)
        {
            forces[i] = ForcesOf(loads[i]);
            parts[i] = _free.Reduced(forces[i]);
        }

        double[][] right = [.. parts.Select(p => p.AsSpan().ToArray())];
        _factor.Solve(parts);
        return new(forces, right, parts);
    }

    /// <summary>The response to a combination of loads whose responses are known.</summary>
    internal StaticSolution Combine(UnitResponses unit, params ReadOnlySpan<double> factors)
    {
        var (part, force) = Combined(unit, factors);
        return SolutionOf(part, force);
    }

    /// <summary>The same with held freedoms that are moved.</summary>
    /// <exception cref="ArgumentException">A freedom is not held.</exception>
    internal StaticSolution Combine(UnitResponses unit, IEnumerable<Held> moved, params ReadOnlySpan<double> factors)
    {
        var (part, force) = Combined(unit, factors);
        var (alone, given) = MovedPart(moved);
        FrontKernel.Subtract(part, alone, -1);
        return SolutionOf(part, force, given);
    }

    /// <summary>The reactions of such a combination, without its stresses.</summary>
    internal ImmutableArray<NodalLoad> CombineReactions(UnitResponses unit, params ReadOnlySpan<double> factors)
    {
        var (part, force) = Combined(unit, factors);
        return Reactions(_model, _free, _free.Whole(part), force);
    }

    private static (double[] Part, double[] Force) Combined(UnitResponses unit, ReadOnlySpan<double> factors)
    {
        var (part, force) = (new double[unit.Vectors[0].Length], new double[unit.Loads[0].Length]);
        for (var i = 0; i < factors.Length; i++)
        {
            FrontKernel.Subtract(part, unit.Vectors[i], -factors[i]);
            FrontKernel.Subtract(force, unit.Loads[i], -factors[i]);
        }

        return (part, force);
    }

    private static ImmutableArray<NodalLoad> Reactions(ShellModel model, FreeNodes free, double[] u, double[] force)
    {
        var reaction = Assembly.Reactions(model, free, u, force);
        return [.. Enumerable.Range(0, model.Mesh.Nodes.Length).Where(free.HasHeld).Select(n => new NodalLoad(n, At(reaction, n * Block), At(reaction, n * Block + 3)))];
    }

    /// <summary>The response to held freedoms that are moved, without loads; whatever displacements the model gives are left out.</summary>
    /// <remarks>Only nodes held in all six freedoms may be moved, and triangles that lie wholly between them stay stiff.</remarks>
    /// <param name="moved">What is moved, and how far.</param>
    /// <exception cref="ArgumentException">A freedom is not held.</exception>
    public StaticSolution Moved(IEnumerable<Held> moved)
    {
        var (part, given) = MovedPart(moved);
        return SolutionOf(part, new double[given.Length], given);
    }

    private (double[] Part, double[] Given) MovedPart(IEnumerable<Held> moved)
    {
        var given = new double[_model.Mesh.Nodes.Length * Block];
        foreach (var held in moved)
        {
            if (!_free.IsHeld(held.Node, (int)held.Freedom))
            {
                throw new ArgumentException($"Node {held.Node} is moved but not held.", nameof(moved));
            }

            given[held.Node * Block + (int)held.Freedom] = held.Value;
        }

        var forces = Assembly.FromGiven(_model, _free, given);
        for (var i = 0; i < forces.Length; i++)
        {
            forces[i] = -forces[i];
        }

        var part = _free.Reduced(forces);
        _factor.Solve(part);
        return (part, given);
    }

    /// <summary>The first natural frequency is never above this (Hz): Rayleigh's quotient over the responses to loads.</summary>
    internal double FirstFrequencyAtMost(UnitResponses unit) => FrequencyOf(RitzValue.Lowest(unit.Vectors, unit.Forces, Mass));

    /// <summary>
    /// The responses to the inertia of shapes near the lowest modes, with a little of everything else: their quotient lies closer above the first frequency, and the
    /// modes are soon found from them.
    /// </summary>
    internal UnitResponses NearModes(UnitResponses unit)
    {
        var forces = BlockLanczos.Forces(Mass, unit.Vectors);
        double[][] vectors = [.. forces.Select(f => f.AsSpan().ToArray())];
        _factor.Solve(vectors);
        return new([], forces, vectors);
    }

    /// <summary>The lowest <paramref name="count"/> natural vibrations, slowest first.</summary>
    /// <exception cref="InvalidOperationException">The material has no density.</exception>
    public ImmutableArray<Mode> LowestModes(int count) => LowestModes(count, null);

    /// <summary>The same, from shapes of <see cref="NearModes"/>.</summary>
    internal ImmutableArray<Mode> LowestModes(int count, UnitResponses? near)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        double[][]? start = near is null ? null : [.. near.Vectors.Select(v => v.AsSpan().ToArray())];
        var (values, vectors) = BlockLanczos.Lowest(_factor, Mass, count, start);
        return [.. values.Select((v, i) => ToMode(FrequencyOf(v), _free.Whole(vectors[i])))];
    }

    /// <summary>The lowest <paramref name="count"/> natural vibrations as a shaken base excites them, and what a steady acceleration of it does.</summary>
    /// <exception cref="InvalidOperationException">The material has no density.</exception>
    public ModalBasis Shaken(int count) => Shaken(count, null);

    /// <summary>The same, from shapes of <see cref="NearModes"/>.</summary>
    internal ModalBasis Shaken(int count, UnitResponses? near)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        double[][]? start = near is null ? null : [.. near.Vectors.Select(v => v.AsSpan().ToArray())];
        var (values, vectors) = BlockLanczos.Lowest(_factor, Mass, count, start);
        var (forces, steady, mass) = (new double[3][], new double[3][], new double[3]);
        for (var axis = 0; axis < 3; axis++)
        {
            var (whole, product) = (new double[_model.Mesh.Nodes.Length * Block], new double[vectors[0].Length]);
            for (var i = axis; i < whole.Length; i += Block)
            {
                whole[i] = 1;
            }

            var rigid = _free.Reduced(whole);
            Mass.Multiply(rigid, product);
            FrontKernel.Subtract(product, _free.Reduced(Assembly.InertiaOfHeld(_model, _free, axis)), -1);
            (forces[axis], steady[axis], mass[axis]) = (product, product.AsSpan().ToArray(), FrontKernel.Dot(rigid, product));
        }

        _factor.Solve(steady);
        return new(
            [.. values.Select(FrequencyOf)],
            [.. vectors.Select(v => new Vector3(FrontKernel.Dot(v, forces[0]), FrontKernel.Dot(v, forces[1]), FrontKernel.Dot(v, forces[2])))],
            new(mass[0], mass[1], mass[2]), [.. vectors.Select(StressOf)], [.. steady.Select(StressOf)]);
    }

    private StressField StressOf(double[] part) => new(StressRecovery.TensorsAtNodes(_model, _free, _free.Whole(part)));

    private StaticSolution SolutionOf(double[] part, double[] force) => SolutionOf(part, force, _free.Given);

    private StaticSolution SolutionOf(double[] part, double[] force, double[] given)
    {
        var u = _free.Whole(part);
        for (var i = 0; i < u.Length; i++)
        {
            u[i] += given[i];
        }

        // Without the factor, so that a solution that is kept does not keep it.
        var (model, free, count) = (_model, _free, _model.Mesh.Nodes.Length);
        return new(Vectors(u, 0, count), Vectors(u, 3, count), StressRecovery.AtNodes(model, free, u), () => Reactions(model, free, u, force));
    }

    private static double FrequencyOf(double eigenvalue) => Math.Sqrt(eigenvalue) / (2 * Math.PI);

    private MassMatrix Mass => _mass ??= _model.Material.Density > 0
        ? Assembly.Mass(_model, _free)
        : throw new InvalidOperationException("Natural frequencies need the material's density.");

    private double[] ForcesOf(IEnumerable<NodalLoad> loads)
    {
        var force = new double[_model.Mesh.Nodes.Length * Block];
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

        return force;
    }

    private static Mode ToMode(double frequency, double[] vector)
    {
        var shape = new Vector3[vector.Length / Block];
        Vector3 most = default;
        for (var n = 0; n < shape.Length; n++)
        {
            shape[n] = At(vector, n * Block);
            most = shape[n].Length > most.Length ? shape[n] : most;
        }

        // The sign is made the same every time: the node that moves most moves forward along its main axis.
        var main = Math.Abs(most.X) >= Math.Abs(most.Y) ? most.X : most.Y;
        main = Math.Abs(most.Z) > Math.Abs(main) ? most.Z : main;
        var scale = Math.CopySign(most.Length, main);
        for (var n = 0; n < shape.Length; n++)
        {
            shape[n] /= scale;
        }

        return new(frequency, ImmutableCollectionsMarshal.AsImmutableArray(shape));
    }

    private static ImmutableArray<Vector3> Vectors(double[] u, int from, int count)
    {
        var vectors = new Vector3[count];
        for (var n = 0; n < count; n++)
        {
            vectors[n] = At(u, n * Block + from);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(vectors);
    }

    private static Vector3 At(double[] u, int i) => new(u[i], u[i + 1], u[i + 2]);
}

/// <summary>What the free nodes do under several sets of loads.</summary>
/// <param name="Loads">The loads on all nodes, six numbers a node; empty where they were not given so.</param>
/// <param name="Forces">The loads on the free nodes.</param>
/// <param name="Vectors">Their displacements and rotations.</param>
internal sealed record UnitResponses(double[][] Loads, double[][] Forces, double[][] Vectors);

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
