using System.Collections.Immutable;
using BracketGen.Strength.Meshing;
using BracketGen.Strength.Model;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>How finely a bracket is meshed for its strength.</summary>
/// <param name="Size">Edge length of the triangles away from holes and bends (mm).</param>
/// <param name="HoleSize">Edge length at holes, washers and the seat (mm).</param>
/// <param name="BendRows">Rows of triangles across a bend.</param>
public sealed record StrengthDetail(double Size, double HoleSize, int BendRows)
{
    /// <summary>
    /// What a bracket is judged on: deflection and frequencies within a hundredth on the first mesh; stresses on meshes made finer until they settle (docs/strength.md).
    /// </summary>
    public static readonly StrengthDetail Usual = new(4, 1.5, 4) { FilletAngle = Math.PI / 24, MostMeshes = 5 };

    /// <summary>What rejects brackets that miss a limit by far (<see cref="StrengthScreen"/>): fewer than half the nodes.</summary>
    public static readonly StrengthDetail Coarse = new(8, 4, 2) { Growth = 0.6 };

    /// <summary>How fast the edge length may grow with distance from where it is small (mm per mm).</summary>
    public double Growth { get; init; } = MeshRequest.UsualGrowth;

    /// <summary>Angle of a hollow arc of the outline that an edge spans (rad): three edges round a quarter fillet miss up to a fifth of the stress that gathers there, twelve a fiftieth.</summary>
    public double FilletAngle { get; init; } = MeshRequest.UsualAnglePerEdge;

    /// <summary>How many meshes at the most are made of a bracket until the stresses that are judged settle (<see cref="SettledStrength"/>); one: the first is the last.</summary>
    public int MostMeshes { get; init; } = 1;

    /// <summary>Meshes, folds, clamps and factorises a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="spots">Where the mesh is finer than usual.</param>
    public PreparedPart Prepare(FoldedPart part, ImmutableArray<FineSpot> spots = default) => part.Prepare(Mesh(part, spots));

    /// <summary>Meshes the flat pattern of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="spots">Where the mesh is finer than usual.</param>
    public TriangleMesh Mesh(FoldedPart part, ImmutableArray<FineSpot> spots = default) => part.Mesh(Size, HoleSize, BendRows, Growth, FilletAngle, spots);
}
