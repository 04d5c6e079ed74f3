using System.Collections.Immutable;
using System.Runtime.InteropServices;
using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Parts;

/// <summary>The held places of a sheet moved as rigid pieces: six numbers each, shifts (mm) and turns about its point (rad).</summary>
internal static class RigidMotions
{
    private const int Freedoms = ElasticBase.Freedoms;

    /// <summary>The axis 0, 1 or 2.</summary>
    public static Vector3 Axis(int axis) => axis switch
    {
        0 => new(1, 0, 0),
        1 => new(0, 1, 0),
        _ => new(0, 0, 1),
    };

    /// <summary>Writes the motion of one piece.</summary>
    public static void Put(Span<double> motions, int piece, Vector3 shift, Vector3 turn)
    {
        var at = motions.Slice(piece * Freedoms, Freedoms);
        (at[0], at[1], at[2], at[3], at[4], at[5]) = (shift.X, shift.Y, shift.Z, turn.X, turn.Y, turn.Z);
    }

    /// <summary>What the nodes of all pieces do.</summary>
    public static IEnumerable<Held> Held(PreparedPart part, ImmutableArray<ImmutableArray<int>> nodes, ImmutableArray<ThrottlePoint> points, ReadOnlySpan<double> motions)
    {
        var held = new List<Held>();
        for (var piece = 0; piece < points.Length; piece++)
        {
            var m = motions.Slice(piece * Freedoms, Freedoms);
            Vector3 shift = new(m[0], m[1], m[2]), turn = new(m[3], m[4], m[5]);
            foreach (var n in nodes[piece])
            {
                var by = shift + turn.Cross(part.Model.Mesh.Nodes[n] - points[piece]);
                held.AddRange(
                [
                    new(n, Freedom.X, by.X), new(n, Freedom.Y, by.Y), new(n, Freedom.Z, by.Z), new(n, Freedom.AboutX, turn.X), new(n, Freedom.AboutY, turn.Y), new(n, Freedom.AboutZ, turn.Z),
                ]);
            }
        }

        return held;
    }

    /// <summary>Force and moment about its point that hold each piece, of what the supports push back with.</summary>
    public static double[] Sum(PreparedPart part, ImmutableArray<ImmutableArray<int>> nodes, ImmutableArray<ThrottlePoint> points, ImmutableArray<NodalLoad> reactions)
    {
        var sums = new double[points.Length * Freedoms];
        var pieceOf = new Dictionary<int, int>();
        for (var piece = 0; piece < points.Length; piece++)
        {
            foreach (var n in nodes[piece])
            {
                pieceOf[n] = piece;
            }
        }

        foreach (var r in reactions)
        {
            if (pieceOf.TryGetValue(r.Node, out var piece))
            {
                var moment = r.Moment + (part.Model.Mesh.Nodes[r.Node] - points[piece]).Cross(r.Force);
                var at = sums.AsSpan(piece * Freedoms, Freedoms);
                at[0] += r.Force.X;
                at[1] += r.Force.Y;
                at[2] += r.Force.Z;
                at[3] += moment.X;
                at[4] += moment.Y;
                at[5] += moment.Z;
            }
        }

        return sums;
    }

    /// <summary>What each freedom of each piece does when it moves by one, all others at rest.</summary>
    public static ImmutableArray<StaticSolution> Units(PreparedPart part, ImmutableArray<ImmutableArray<int>> nodes, ImmutableArray<ThrottlePoint> points)
    {
        var count = points.Length * Freedoms;
        var units = new StaticSolution[count];
        for (var k = 0; k < count; k++)
        {
            var motions = new double[count];
            motions[k] = 1;
            units[k] = part.System.Moved(Held(part, nodes, points, motions));
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(units);
    }

    /// <summary>Stiffness of a sheet against motions of its pieces, all else that holds it at rest.</summary>
    public static double[] Stiffness(PreparedPart part, ImmutableArray<ImmutableArray<int>> nodes, ImmutableArray<ThrottlePoint> points) =>
        Stiffness(part, nodes, points, Units(part, nodes, points));

    /// <summary>The same from motions that are known.</summary>
    public static double[] Stiffness(PreparedPart part, ImmutableArray<ImmutableArray<int>> nodes, ImmutableArray<ThrottlePoint> points, ImmutableArray<StaticSolution> units)
    {
        var count = units.Length;
        var stiffness = new double[count * count];
        for (var k = 0; k < count; k++)
        {
            var held = Sum(part, nodes, points, units[k].Reactions);
            for (var r = 0; r < count; r++)
            {
                // Symmetric but for round-off (Maxwell).
                stiffness[count * r + k] += held[r] / 2;
                stiffness[count * k + r] += held[r] / 2;
            }
        }

        return stiffness;
    }

    /// <summary>u A v.</summary>
    public static double Product(double[] u, double[] a, double[] v)
    {
        var sum = 0.0;
        for (var r = 0; r < u.Length; r++)
        {
            for (var c = 0; c < v.Length; c++)
            {
                sum += u[r] * a[v.Length * r + c] * v[c];
            }
        }

        return sum;
    }
}
