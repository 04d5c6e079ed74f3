using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Model;

/// <summary>All that a DXF file says.</summary>
/// <remarks>
/// Entities keep their order: it is the order in which many machines cut. What lies on the same path as an earlier entity
/// of its layer is left out, because a beam that passes twice burns the edge.
/// </remarks>
public sealed class DxfDrawing
{
    /// <summary>The drawing of <paramref name="entities"/>.</summary>
    /// <param name="units">Unit of the lengths in the file.</param>
    /// <param name="layers">Layers in the order of the layer table; all that entities lie on, and empty ones where wanted.</param>
    /// <param name="entities">At least one.</param>
    /// <param name="comment">Lines at the head of the file for whoever opens it in an editor: part, material, thickness.</param>
    /// <exception cref="ArgumentException">Nothing is drawn, or a layer is missing or named twice.</exception>
    public DxfDrawing(DxfUnits units, IEnumerable<DxfLayer> layers, IEnumerable<DxfEntity> entities, string comment = "")
    {
        Units = units;
        Layers = [.. layers];
        Entities = SamePath.LeaveOut(entities);
        Comment = comment;
        if (Entities.IsEmpty)
        {
            throw new ArgumentException("There is nothing to draw.", nameof(entities));
        }

        if (Layers.Select(l => l.Name).Distinct().Count() < Layers.Length)
        {
            throw new ArgumentException("Two layers have the same name.", nameof(layers));
        }

        if (Entities.FirstOrDefault(e => !Layers.Contains(e.Layer)) is { } stray)
        {
            throw new ArgumentException($"The layer {stray.Layer.Name} is not among the drawing's layers.", nameof(layers));
        }
    }

    /// <summary>Unit of the lengths in the file.</summary>
    public DxfUnits Units { get; }

    /// <summary>The layers.</summary>
    public ImmutableArray<DxfLayer> Layers { get; }

    /// <summary>The entities in order (mm).</summary>
    public ImmutableArray<DxfEntity> Entities { get; }

    /// <summary>Lines at the head of the file; empty for none.</summary>
    public string Comment { get; }

    /// <summary>The smallest upright rectangle around all (mm).</summary>
    public Bounds Bounds => Entities.Select(e => e.Bounds).Aggregate((a, b) => a.Union(b));
}
