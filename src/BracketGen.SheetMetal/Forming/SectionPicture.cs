using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Forming;

/// <summary>What a shape of a section picture shows.</summary>
public enum SectionKind
{
    /// <summary>The sheet: a flange, a bend made, or the strip being bent.</summary>
    Sheet,

    /// <summary>The punch.</summary>
    Punch,

    /// <summary>The beam over the punch.</summary>
    Beam,

    /// <summary>The die.</summary>
    Die,

    /// <summary>The bed under the die.</summary>
    Bed,

    /// <summary>A finger of the back gauge.</summary>
    Gauge,

    /// <summary>Folder, hand brake or bars.</summary>
    Clamp,
}

/// <summary>One closed polygon of a section picture.</summary>
/// <param name="Kind">What it shows.</param>
/// <param name="Outline">Corners in order (mm).</param>
public sealed record SectionShape(SectionKind Kind, ImmutableArray<SectionPoint> Outline)
{
    /// <inheritdoc/>
    public bool Equals(SectionShape? other) => other is not null && Kind == other.Kind && Outline.SequenceEqual(other.Outline);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Kind, Outline.Length);
}

/// <summary>Draws sheet and tools in the section square to a bend; flanges that stand askew as their outline seen along the bend.</summary>
internal static class SectionPicture
{
    public static ImmutableArray<SectionShape> Of(SimulatedPart part, bool[] made, BendStep step, double share)
    {
        var bend = part.Flat.Bends[step.Bend];
        var turn = share * (bend.Turn.Magnitude.Radians + step.OverBend.Radians);
        var slabs = new PartSlabs(part.Flat, part.Polygons, made, step.Bend, step.NewFlangeInFront);
        var stroke = step.Clamp is null ? (BendStroke)new PressStroke(bend, part.Flat.Thickness, step.Die!) : new ClampStroke(bend, part.Flat.Thickness);
        var shapes = ImmutableArray.CreateBuilder<SectionShape>();
        void Add(SectionKind kind, IEnumerable<Vector2> outline) => shapes.Add(new(kind, [.. outline.Select(SectionPoint.From)]));
        foreach (var slab in slabs.Slabs)
        {
            Add(SectionKind.Sheet, ConvexParts.Hull([.. slab.Section(stroke.At(slab.Carrier, turn))]));
        }

        Add(SectionKind.Sheet, stroke.Strip(turn));
        if (step.Clamp is { } clamp)
        {
            foreach (var body in ToolBodies.Of(clamp, part.Flat.Thickness))
            {
                Add(SectionKind.Clamp, body.Corners.Select(stroke.At(body.Carrier, turn).Point));
            }

            return shapes.ToImmutable();
        }

        var beam = stroke.At(Carrier.Beam, turn);
        var punch = step.PunchReversed ? step.Punch!.Reversed() : step.Punch!;
        Add(SectionKind.Punch, punch.Profile.Select(p => beam.Point(p.Vector)));
        Add(SectionKind.Die, ToolBodies.Outline(step.Die!));
        if (part.Press is { } press)
        {
            Add(SectionKind.Beam, ToolBodies.Beam(press, punch).Corners.Select(beam.Point));
            Add(SectionKind.Bed, ToolBodies.Bed(press, step.Die!).Corners);
            if (!step.Gauge.Fingers.IsEmpty && (share == 0 || !press.GaugeRetracts))
            {
                var distance = step.Gauge.Fingers[0].Distance;
                Add(SectionKind.Gauge, ConvexBody.Box(
                    Obstruction.Bed, Carrier.Machine, new(distance, -press.FingerDepth), new(distance + GaugeSearch.FingerLength, press.FingerHeight)).Corners);
            }
        }

        return shapes.ToImmutable();
    }
}
