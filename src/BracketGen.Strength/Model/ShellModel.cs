using System.Collections.Immutable;

namespace BracketGen.Strength.Model;

/// <summary>A formed sheet and how it is held.</summary>
public sealed record ShellModel
{
    /// <summary>A model.</summary>
    /// <param name="mesh">The middle surface.</param>
    /// <param name="thickness">Sheet thickness (mm), positive.</param>
    /// <param name="material">The metal.</param>
    /// <param name="held">What is held; a freedom named twice takes the last value.</param>
    /// <exception cref="ArgumentException">The thickness is not positive, or a held node is not in the mesh.</exception>
    public ShellModel(ShellMesh mesh, double thickness, SheetMaterial material, IEnumerable<Held> held)
    {
        if (!(thickness > 0 && double.IsFinite(thickness)))
        {
            throw new ArgumentOutOfRangeException(nameof(thickness), thickness, "The sheet's thickness must be more than zero (mm).");
        }

        Mesh = mesh;
        Thickness = thickness;
        Material = material;
        Held = [.. held];
        foreach (var h in Held)
        {
            if (h.Node < 0 || h.Node >= mesh.Nodes.Length)
            {
                throw new ArgumentException($"Node {h.Node} is held but the mesh has {mesh.Nodes.Length} nodes.", nameof(held));
            }
        }
    }

    /// <summary>The middle surface.</summary>
    public ShellMesh Mesh { get; }

    /// <summary>Sheet thickness (mm).</summary>
    public double Thickness { get; }

    /// <summary>The metal.</summary>
    public SheetMaterial Material { get; }

    /// <summary>What is held.</summary>
    public ImmutableArray<Held> Held { get; }

    /// <summary>By what the stresses of bending are multiplied on each surface of each triangle, because the sheet is curved there; none where it is nowhere.</summary>
    public ImmutableArray<SurfaceFactors> Curvature { get; init; } = [];

    /// <summary>What hangs on it and swings with it; adds nothing to its stiffness.</summary>
    public ImmutableArray<AttachedBody> Bodies { get; init; } = [];
}

/// <summary>A factor for each surface of the sheet.</summary>
/// <param name="Top">On the top.</param>
/// <param name="Bottom">On the bottom.</param>
public readonly record struct SurfaceFactors(double Top, double Bottom);
