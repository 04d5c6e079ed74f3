using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;
using BracketGen.Strength.Solving;

namespace BracketGen.Strength.Parts;

/// <summary>A part that is bolted on an elastic base: exact in statics, and a lower bound of its frequencies.</summary>
/// <remarks>
/// <para>With its washers held, the part needs r₀ to hold them; as they move by u, r₀ + K u. The base takes the opposite: K' u = -(r₀ + K u), so u = -(K + K')⁻¹ r₀.</para>
/// <para>
/// On the base the part gives more for any load: its own give F with the washers held, and Ψ (K + K')⁻¹ Ψᵀ, where Ψ is what it does as its washers move (static condensation: R. J. Guyan 1965). The largest
/// eigenvalue of a sum is no more than the sum of the largest (H. Weyl 1912; S. Dunkerley's formula of 1894 has the same ground), so 1/ω² ≤ 1/ω_k² of the held part + the largest eigenvalue of (K + K')⁻¹ Ψᵀ M Ψ + 1/ω² of the base alone, for each k.
/// </para>
/// </remarks>
internal sealed class OnBase
{
    private readonly PreparedPart _part;
    private readonly ElasticBase _base;
    private readonly int[] _jointOf;
    private readonly ImmutableArray<ImmutableArray<int>> _nodes;
    private readonly ImmutableArray<ThrottlePoint> _points;
    private readonly ImmutableArray<StaticSolution> _units;
    private readonly DenseCholesky _both;
    private double? _lost;

    public OnBase(PreparedPart part, ElasticBase @base)
    {
        (_part, _base, _nodes) = (part, @base, part.WasherNodes());
        _jointOf = [.. part.Part.Washers.Select(w => Nearest(part.Part.MiddleSurface(new(w.Centre))))];
        _points = [.. _jointOf.Select(j => @base.Joints[j])];
        _units = RigidMotions.Units(part, _nodes, _points);
        var (own, under) = (RigidMotions.Stiffness(part, _nodes, _points, _units), @base.StiffnessAt(_jointOf));
        _both = DenseCholesky.Factor([.. own.Zip(under, (a, b) => a + b)], _points.Length * ElasticBase.Freedoms);
    }

    /// <summary>How the washers move where the held part is held by <paramref name="reactions"/>.</summary>
    public double[] MotionsUnder(ImmutableArray<NodalLoad> reactions) => [.. _both.Solve(RigidMotions.Sum(_part, _nodes, _points, reactions)).Select(u => -u)];

    /// <summary>What the nodes under the washers then do.</summary>
    public IEnumerable<Held> Held(double[] motions) => RigidMotions.Held(_part, _nodes, _points, motions);

    /// <summary>How the joints of the base then move, all of them.</summary>
    /// <param name="motions">How the washers move.</param>
    public ImmutableArray<double> OfBase(double[] motions)
    {
        var all = new double[_base.Joints.Length * ElasticBase.Freedoms];
        for (var w = 0; w < _jointOf.Length; w++)
        {
            motions.AsSpan(w * ElasticBase.Freedoms, ElasticBase.Freedoms).CopyTo(all.AsSpan(_jointOf[w] * ElasticBase.Freedoms));
        }

        return [.. all];
    }

    /// <summary>A frequency of the held part (Hz) as it is at least on the base.</summary>
    public double AtLeast(double held) => 1 / (2 * Math.PI * Math.Sqrt(1 / Square(held) + (_lost ??= LostToBase()) + 1 / Square(_base.OwnFrequency)));

    private static double Square(double frequency) => Math.Pow(2 * Math.PI * frequency, 2);

    private int Nearest(ThrottlePoint point) => Enumerable.Range(0, _base.Joints.Length).MinBy(j => _base.Joints[j].DistanceTo(point));

    private double LostToBase() => _both.LargestRatio(Mass());

    // Ψᵀ M Ψ. A third of each triangle's mass at each of its corners is never less than the triangle's own energy: the square of what moves linearly is convex.
    private double[] Mass()
    {
        var (mesh, count) = (_part.Model.Mesh, _units.Length);
        var atNode = new double[mesh.Nodes.Length];
        foreach (var t in mesh.Triangles)
        {
            var third = (mesh.Nodes[t.B] - mesh.Nodes[t.A]).Cross(mesh.Nodes[t.C] - mesh.Nodes[t.A]).Length / 6 * _part.Model.Thickness * _part.Model.Material.Density;
            atNode[t.A] += third;
            atNode[t.B] += third;
            atNode[t.C] += third;
        }

        var mass = new double[count * count];
        for (var k = 0; k < count; k++)
        {
            for (var l = 0; l <= k; l++)
            {
                var sum = 0.0;
                for (var n = 0; n < atNode.Length; n++)
                {
                    sum += atNode[n] * _units[k].Displacements[n].Dot(_units[l].Displacements[n]);
                }

                foreach (var body in _part.Model.Bodies)
                {
                    sum += Of(body, _units[k], _units[l]);
                }

                if (k == l)
                {
                    sum += k % ElasticBase.Freedoms < 3 ? _base.JointMass : _base.JointInertia;
                }

                (mass[count * k + l], mass[count * l + k]) = (sum, sum);
            }
        }

        return mass;
    }

    private static double Of(AttachedBody body, StaticSolution one, StaticSolution other)
    {
        var ((shift, turn), (otherShift, otherTurn)) = (Motion(body, one), Motion(body, other));
        return body.Mass * (shift + turn.Cross(body.Offset)).Dot(otherShift + otherTurn.Cross(body.Offset))
            + body.AboutAcross * turn.Dot(otherTurn) + (body.AboutAxis - body.AboutAcross) * turn.Dot(body.Axis) * otherTurn.Dot(body.Axis);
    }

    private static (Vector3 Shift, Vector3 Turn) Motion(AttachedBody body, StaticSolution solution)
    {
        var (shift, turn, sum) = (Vector3.Zero, Vector3.Zero, 0.0);
        foreach (var (node, share) in body.Nodes)
        {
            shift += Math.Abs(share) * solution.Displacements[node];
            turn += Math.Abs(share) * solution.Rotations[node];
            sum += Math.Abs(share);
        }

        return (shift / sum, turn / sum);
    }
}
