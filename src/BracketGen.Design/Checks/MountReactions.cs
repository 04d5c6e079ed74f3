using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>Shares what holds the sheet out to the screws of the mount.</summary>
/// <remarks>
/// Pull and tilting moment are those of each washer. Force along a face and moment about its normal are those of all that lie on it: the washer that turns first is held by the others, so two or more screws share them
/// out as a group (force by number, moment by distance from their middle: J. E. Shigley, C. R. Mischke, Mechanical Engineering Design, bolted joints loaded in shear; EN 1993-1-8, 3.12), and none is counted on to
/// hold against its own twist.
/// </remarks>
internal sealed class MountReactions
{
    private readonly ImmutableArray<Plane> _faces;
    private readonly PreparedPart _prepared;
    private readonly int[] _washerOf;

    /// <summary>The shares of a part.</summary>
    /// <param name="faces">The face of each screw.</param>
    /// <param name="prepared">The part, in the same frame.</param>
    /// <param name="centres">Where each screw's axis crosses its face (mm), in the order of the part's washers.</param>
    public MountReactions(ImmutableArray<Plane> faces, PreparedPart prepared, ImmutableArray<Vector3> centres)
    {
        (_faces, _prepared, Centres) = (faces, prepared, centres);
        _washerOf = new int[prepared.Model.Mesh.Nodes.Length];
        foreach (var (nodes, washer) in prepared.WasherNodes().Select((n, i) => (n, i)))
        {
            foreach (var node in nodes)
            {
                _washerOf[node] = washer;
            }
        }
    }

    /// <summary>Where each screw's axis crosses its face (mm).</summary>
    public ImmutableArray<Vector3> Centres { get; }

    /// <summary>Along the slot of each screw's hole, length one; zero for a round hole.</summary>
    public required ImmutableArray<Vector3> Slots { get; init; }

    /// <summary>What each joint must hold.</summary>
    /// <param name="reactions">What the supports push back with; the sheet pulls the joints as hard, the other way.</param>
    public JointLoad[] Of(ImmutableArray<NodalLoad> reactions)
    {
        var count = Centres.Length;
        var (forces, moments) = (new Vector3[count], new Vector3[count]);
        foreach (var r in reactions)
        {
            var w = _washerOf[r.Node];
            forces[w] -= r.Force;
            moments[w] -= r.Moment + (_prepared.Model.Mesh.Nodes[r.Node].Vector - Centres[w]).Cross(r.Force);
        }

        var loads = new JointLoad[count];
        foreach (var face in _faces.Distinct())
        {
            Share(face.Normal, [.. Enumerable.Range(0, count).Where(i => _faces[i] == face)], forces, moments, loads);
        }

        return loads;
    }

    // What the screws of one face must hold together.
    private void Share(Vector3 normal, int[] screws, Vector3[] forces, Vector3[] moments, JointLoad[] loads)
    {
        var middle = screws.Aggregate(Vector3.Zero, (sum, i) => sum + Centres[i]) / screws.Length;
        var (along, twist, squares) = (Vector3.Zero, 0.0, 0.0);
        foreach (var i in screws)
        {
            var arm = Centres[i] - middle;
            var inFace = forces[i] - forces[i].Dot(normal) * normal;
            along += inFace;
            twist += moments[i].Dot(normal) + arm.Cross(inFace).Dot(normal);
            squares += arm.Dot(arm);
        }

        foreach (var i in screws)
        {
            // A couple of forces square to the arms; one screw alone has no arm and twists.
            var share = along / screws.Length + (squares > 0 ? twist / squares * normal.Cross(Centres[i] - middle) : Vector3.Zero);
            var tilt = moments[i] - moments[i].Dot(normal) * normal;
            loads[i] = new(forces[i].Dot(normal), share.Length, tilt.Length, squares > 0 ? 0 : Math.Abs(twist)) { Along = Math.Abs(share.Dot(Slots[i])) };
        }
    }
}
