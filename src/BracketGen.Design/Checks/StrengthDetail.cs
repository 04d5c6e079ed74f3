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
    /// What a bracket is judged on: deflection and frequencies within a hundredth, stresses within a twentieth of what they settle at
    /// (docs/strength.md).
    /// </summary>
    public static readonly StrengthDetail Usual = new(4, 1.5, 4) { FilletAngle = Math.PI / 24 };

    /// <summary>What rejects brackets that miss a limit by far (<see cref="StrengthScreen"/>): fewer than half the nodes.</summary>
    public static readonly StrengthDetail Coarse = new(8, 4, 2) { Growth = 0.6 };

    /// <summary>How fast the edge length may grow with distance from where it is small (mm per mm).</summary>
    public double Growth { get; init; } = MeshRequest.UsualGrowth;

    /// <summary>Angle of a hollow arc of the outline that an edge spans (rad): three edges round a quarter fillet miss up to a fifth of the stress that gathers there, twelve a fiftieth.</summary>
    public double FilletAngle { get; init; } = MeshRequest.UsualAnglePerEdge;

    /// <summary>Meshes, folds, clamps and factorises a part.</summary>
    public PreparedPart Prepare(FoldedPart part) => part.Prepare(Mesh(part));

    /// <summary>Meshes the flat pattern of a part.</summary>
    public TriangleMesh Mesh(FoldedPart part) => part.Mesh(Size, HoleSize, BendRows, Growth, FilletAngle);
}
