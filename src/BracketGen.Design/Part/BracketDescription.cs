using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Part;

/// <summary>A bracket of ours as somebody would measure it: the way back from <see cref="MeasuredShape"/>.</summary>
public static class BracketDescription
{
    // A corner's rounding turns by less than this: wider arcs are written as several.
    private static readonly Angle WidestCorner = Angle.FromDegrees(80);

    /// <summary>The bracket as measured without error.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="name">Its name.</param>
    /// <param name="source">Where it is from.</param>
    public static MeasuredBracket Of(Bracket bracket, string name, string source)
    {
        var (flat, thickness) = (bracket.Flat, bracket.Stock.Thickness);
        var datum = bracket.Folded.Flanges[0];
        var (seat, normal) = bracket.FoldedSeat;
        var local = datum.ToLocal(seat.Vector);
        return new()
        {
            Name = name,
            Source = source,
            Material = bracket.Stock.Material.Designation,
            Thickness = new(thickness),
            MountFlange = CornersOf(bracket, 0),
            Holes = [.. bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).Select(h => new MeasuredHole(h.Centre, h.Diameter) { Slot = h.Outline as SlottedHole })],
            Bends = [.. flat.Bends.Select((bend, i) => new MeasuredBend
            {
                From = bend.From,
                Start = new(ToOwn(bracket, bend.From, (bend.Start + Setback(bend, thickness) * bend.Across).Vector)),
                End = new(ToOwn(bracket, bend.From, (bend.End + Setback(bend, thickness) * bend.Across).Vector)),
                Included = new(Math.PI - bend.Turn.Magnitude.Radians),
                IsUp = bend.IsUp,
                InsideRadius = bend.InsideRadius,
                Relief = bend.Relief,
                Outline = CornersOf(bracket, i + 1),
            })],
            Stop = new()
            {
                At = (new(local.XY), local.Z),
                PlusMinus = 0,
                Size = new(bracket.Stop.Diameter),
                Outline = bracket.Stop.Outline is { } shape ? shape with { Along = ToOwnDirection(bracket, bracket.Stop.Flange, shape.Along) } : null,
                SlotTowards = bracket.Stop.Towards is { } way ? ToOwnDirection(bracket, bracket.Stop.Flange, way) : null,
                Direction = datum.ToLocalDirection(normal),
                DirectionPlusMinus = Angle.Zero,
                Flange = bracket.Stop.Flange,
            },
        };
    }

    private static double Setback(Bend bend, double thickness) => (bend.InsideRadius + thickness) * Math.Tan(bend.Turn.Magnitude.Radians / 2);

    private static Vector2 ToOwn(Bracket bracket, int flange, Vector2 flat)
    {
        if (flange == 0)
        {
            return flat;
        }

        var bend = bracket.Flat.Bends[flange - 1];
        var from = flat - bend.Start.Vector;
        return new(from.Dot(bend.Along), from.Dot(bend.Across) - bend.Allowance + Setback(bend, bracket.Stock.Thickness));
    }

    private static Vector2 ToOwnDirection(Bracket bracket, int flange, Vector2 flat) =>
        flange == 0 ? flat : new(flat.Dot(bracket.Flat.Bends[flange - 1].Along), flat.Dot(bracket.Flat.Bends[flange - 1].Across));

    private static ImmutableArray<FlangeCorner> CornersOf(Bracket bracket, int flange)
    {
        var (flat, thickness) = (bracket.Flat, bracket.Stock.Thickness);
        var corners = Corners(flat.FlangeRegion(flange).Outline).ToList();
        foreach (var bend in flat.Bends.Where(b => b.From == flange || b.To == flange))
        {
            // Out to the corner line again, past the edge where the bend begins.
            var out_ = (bend.From == flange ? 1 : -1) * Setback(bend, thickness) * bend.Across;
            Vector2[] ends = bend.From == flange
                ? [bend.Start.Vector, bend.End.Vector]
                : [(bend.Start + bend.Allowance * bend.Across).Vector, (bend.End + bend.Allowance * bend.Across).Vector];
            foreach (var end in ends)
            {
                var at = corners.FindIndex(c => c.At.Vector.DistanceTo(end) < Tolerance.Joint);
                if (at >= 0)
                {
                    corners[at] = new(new(end + out_), 0);
                }
            }
        }

        return [.. corners.Select(c => c with { At = new(ToOwn(bracket, flange, c.At.Vector)) })];
    }

    // Where edges would meet without their rounding; a wide arc has several such corners.
    internal static IEnumerable<FlangeCorner> Corners(Contour outline)
    {
        for (var i = 0; i < outline.Segments.Length; i++)
        {
            Segment before = outline.Segments[(i + outline.Segments.Length - 1) % outline.Segments.Length], segment = outline.Segments[i];
            if (Math.Abs(before.EndTangent.Cross(segment.StartTangent)) > Tolerance.Smooth || before.EndTangent.Dot(segment.StartTangent) < 0)
            {
                yield return new(new(segment.Start), 0);
            }

            if (segment is not ArcSegment arc)
            {
                continue;
            }

            var pieces = Math.Max(1, (int)Math.Ceiling(arc.Sweep.Magnitude.Radians / WidestCorner.Radians));
            var half = arc.Sweep.Radians / pieces / 2;
            for (var k = 0; k < pieces; k++)
            {
                yield return new(new(arc.Centre + Vector2.FromPolar(arc.Radius / Math.Cos(half), arc.From + new Angle((2 * k + 1) * half))), arc.Radius);
            }
        }
    }
}
