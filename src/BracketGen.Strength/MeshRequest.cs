using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Strength;

/// <summary>What to mesh, and how finely.</summary>
public sealed record MeshRequest
{
    /// <summary>A request.</summary>
    /// <param name="region">The flat pattern.</param>
    /// <param name="size">Edge length wanted where nothing asks for less (mm), positive.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is not positive.</exception>
    public MeshRequest(Region region, double size)
    {
        if (!(size > 0 && double.IsFinite(size)))
        {
            throw new ArgumentOutOfRangeException(nameof(size), size, "The mesh size must be more than zero (mm).");
        }

        Region = region;
        Size = size;
        HoleSize = size;
    }

    /// <summary>The flat pattern.</summary>
    public Region Region { get; }

    /// <summary>Edge length wanted where nothing asks for less (mm).</summary>
    public double Size { get; }

    /// <summary>Edge length wanted at the holes (mm).</summary>
    public double HoleSize { get; init; }

    /// <summary>Lines that edges must follow: bend zones, rims of washers and seats.</summary>
    public ImmutableArray<MeshLine> Lines { get; init; } = [];

    /// <summary>How fast the size may grow with distance from where it is small (mm per mm).</summary>
    public double Growth { get; init; } = 0.3;
}
