using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Solving;

namespace BracketGen.Strength.Parts;

/// <summary>A clamped sheet that another sheet is bolted on: how stiff it is at the joints, and what moving them does to it.</summary>
/// <remarks>At each joint both sheets are one piece as far as the washer reaches, as the sheet under a washer always is here. Between the joints they do not touch.</remarks>
public sealed class ElasticBase
{
    /// <summary>Freedoms of a joint: three shifts, then three turns about its point.</summary>
    internal const int Freedoms = 6;

    private readonly PreparedPart _sheet;
    private readonly Lock _lock = new();
    private readonly ImmutableArray<ImmutableArray<int>> _nodes;
    private readonly double[] _stiffness;

    /// <summary>The base that a sheet is.</summary>
    /// <param name="sheet">The sheet with all its washers held; the first of them are those of the joints, the others hold it.</param>
    /// <param name="joints">The point that each joint's motion is counted from (mm).</param>
    /// <param name="ownFrequency">Its lowest natural frequency with nothing on it, held by the other washers alone (Hz).</param>
    public ElasticBase(PreparedPart sheet, ImmutableArray<ThrottlePoint> joints, double ownFrequency)
    {
        (_sheet, Joints, OwnFrequency) = (sheet, joints, ownFrequency);
        _nodes = sheet.WasherNodes()[..joints.Length];
        _stiffness = RigidMotions.Stiffness(sheet, _nodes, joints);
    }

    /// <summary>The point that each joint's motion is counted from (mm).</summary>
    public ImmutableArray<ThrottlePoint> Joints { get; }

    /// <summary>Its lowest natural frequency with nothing on it (Hz).</summary>
    public double OwnFrequency { get; }

    /// <summary>Mass that each joint carries besides the sheet on it (t): bolt, washers and nut.</summary>
    public double JointMass { get; init; }

    /// <summary>Moment of inertia of that mass about any line through the joint's point (t·mm²), or more.</summary>
    public double JointInertia { get; init; }

    /// <summary>The sheet itself, meshed.</summary>
    public PreparedPart Sheet => _sheet;

    /// <summary>What moving its joints does to the sheet.</summary>
    /// <param name="motions">Six numbers a joint: shifts (mm), turns (rad).</param>
    public StaticSolution Moved(ImmutableArray<double> motions)
    {
        lock (_lock)
        {
            return _sheet.System.Moved(RigidMotions.Held(_sheet, _nodes, Joints, motions.AsSpan()));
        }
    }

    /// <summary>How far a point gives along a direction (mm for 1 N) that is fixed rigidly to all joints.</summary>
    /// <param name="at">The point (mm).</param>
    /// <param name="direction">The direction, length one.</param>
    public double GiveOfRigid(ThrottlePoint at, Vector3 direction)
    {
        // Six motions of a rigid body about the point move every joint.
        var rows = Joints.Length * Freedoms;
        var motions = new double[Freedoms][];
        for (var k = 0; k < Freedoms; k++)
        {
            motions[k] = new double[rows];
            var axis = RigidMotions.Axis(k % 3);
            for (var j = 0; j < Joints.Length; j++)
            {
                RigidMotions.Put(motions[k], j, k < 3 ? axis : axis.Cross(Joints[j] - at), k < 3 ? Vector3.Zero : axis);
            }
        }

        var stiffness = new double[Freedoms * Freedoms];
        for (var k = 0; k < Freedoms; k++)
        {
            for (var l = 0; l < Freedoms; l++)
            {
                stiffness[Freedoms * k + l] = RigidMotions.Product(motions[k], _stiffness, motions[l]);
            }
        }

        double[] force = [direction.X, direction.Y, direction.Z, 0, 0, 0];
        var moved = DenseCholesky.Factor(stiffness, Freedoms).Solve(force);
        return force.Zip(moved, (f, u) => f * u).Sum();
    }

    /// <summary>Its stiffness at some of the joints, the others free.</summary>
    internal double[] StiffnessAt(ReadOnlySpan<int> joints)
    {
        int all = Joints.Length * Freedoms, some = joints.Length * Freedoms;
        if (some == all && IsInOrder(joints))
        {
            return _stiffness;
        }

        var whole = DenseCholesky.Factor(_stiffness, all);
        var give = new double[some * some];
        for (var c = 0; c < some; c++)
        {
            var unit = new double[all];
            unit[joints[c / Freedoms] * Freedoms + c % Freedoms] = 1;
            var moved = whole.Solve(unit);
            for (var r = 0; r < some; r++)
            {
                give[some * r + c] = moved[joints[r / Freedoms] * Freedoms + r % Freedoms];
            }
        }

        return DenseCholesky.Factor(give, some).Inverse();
    }

    private static bool IsInOrder(ReadOnlySpan<int> joints)
    {
        for (var i = 0; i < joints.Length; i++)
        {
            if (joints[i] != i)
            {
                return false;
            }
        }

        return true;
    }
}
