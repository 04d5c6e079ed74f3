using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Part;

/// <summary>Takes a drawn flat pattern apart into flanges as somebody would measure them on the formed part.</summary>
/// <remarks>
/// The bend line is the middle of a strip as wide as the bend allowance. Every strip is cut out; what is left are the flanges, and each is drawn on to the corner lines of its bends. On the mount flange the coordinates stay those of the drawing.
/// </remarks>
public static class DrawnShape
{
    // How far beside a strip its flange is looked for (mm).
    private const double Beside = 0.01;

    // A side that runs more nearly along the bend than this is drawn on square to it (cosine).
    private const double LeastSlope = 0.3;

    // A point behind the round bottom of a slot lies in its metal (mm).
    private const double Behind = 0.1;

    private sealed record Strip(int Number, DrawnBend Drawn, Vector2 Along, Vector2[] Near, Vector2[] Far);

    /// <summary>The bracket that the flat pattern folds to; or why there is none.</summary>
    /// <param name="flat">The flat pattern.</param>
    /// <param name="known">All that is not drawn. The stop's place, direction and flange count where they were measured, else they come from the drawing.</param>
    /// <param name="isStopMeasured">Whether the stop's place was measured.</param>
    public static (MeasuredBracket? Bracket, DrawnMistake? Mistake) Of(DrawnFlat flat, MeasuredBracket known, bool isStopMeasured)
    {
        List<Contour> pieces = [flat.Outline];
        List<Strip> strips = [];
        foreach (var (drawn, number) in flat.Bends.Select((b, i) => (b, i)))
        {
            var middle = FlatPoint.Middle(drawn.Start, drawn.End).Vector;
            var at = pieces.FindIndex(p => p.Contains(middle));
            if (at < 0 || Cut(pieces[at], drawn, number) is not { } strip)
            {
                return (null, new(DrawnFault.BendOffMetal, number));
            }

            strips.Add(strip);
            var piece = pieces[at];
            try
            {
                pieces[at] = HalfPlane.KeepRight(piece, strip.Near[0], strip.Near[1]);
                pieces.Add(HalfPlane.KeepRight(piece, strip.Far[1], strip.Far[0]));
            }
            catch (ArgumentException)
            {
                return (null, new(DrawnFault.BendOffMetal, number)); // An edge of it that runs along the outline.
            }
        }

        int? PieceOf(Vector2 point) => pieces.FindIndex(p => p.Contains(point)) is >= 0 and var piece ? piece : null;
        for (var i = 0; i < flat.Holes.Length; i++)
        {
            var piece = PieceOf(flat.Holes[i].At.Vector);
            if (piece is null || piece != PieceOf(flat.Holes[0].At.Vector))
            {
                return (null, new(piece is null ? DrawnFault.HoleInBend : DrawnFault.HolesApart, i));
            }
        }

        var mount = PieceOf(flat.Holes[0].At.Vector)!.Value;
        var foot = flat.Towards is { } open ? flat.Stop.Vector - (known.Stop.Size.Value / 2 + Behind) * open : flat.Stop.Vector;
        if (PieceOf(foot) is not { } stopPiece)
        {
            return (null, new(DrawnFault.HoleInBend));
        }

        for (var i = 0; i < flat.Others.Length; i++)
        {
            if (PieceOf(flat.Others[i].At.Vector) != mount)
            {
                return (null, new(DrawnFault.HoleElsewhere, i));
            }
        }

        return Joined(flat, known, isStopMeasured, pieces, strips, mount, stopPiece);
    }

    private static (MeasuredBracket? Bracket, DrawnMistake? Mistake) Joined(
        DrawnFlat flat, MeasuredBracket known, bool isStopMeasured, List<Contour> pieces, List<Strip> strips, int mount, int stopPiece)
    {
        var thickness = known.Thickness.Value;
        List<int> flanges = [mount];
        List<Bend> bends = [];
        List<MeasuredBend> folded = [];
        List<int> order = [];
        while (bends.Count < strips.Count)
        {
            var next = strips.FirstOrDefault(s => !order.Contains(s.Number) && Sides(s, pieces) is var (a, b) && flanges.Contains(a) != flanges.Contains(b));
            if (next is null)
            {
                return (null, new(DrawnFault.NotJoined, strips.First(s => !order.Contains(s.Number)).Number));
            }

            var (right, left) = Sides(next, pieces);
            var isForward = flanges.Contains(right);
            var from = flanges.IndexOf(isForward ? right : left);
            flanges.Add(isForward ? left : right);
            order.Add(next.Number);
            bends.Add(BendOf(next, isForward, from, bends.Count + 1, pieces[flanges[from]], flat.Outline));
        }

        var shape = new FlatPattern { Blank = new(flat.Outline, []), Thickness = thickness, Bends = [.. bends] };
        Vector2 ToOwn(int flange, Vector2 at)
        {
            if (flange == 0)
            {
                return at;
            }

            var (bend, by) = (bends[flange - 1], at - bends[flange - 1].Start.Vector);
            return new(by.Dot(bend.Along), by.Dot(bend.Across) - bend.Allowance + Setback(bend, thickness));
        }

        ImmutableArray<FlangeCorner> Outline(int flange) => [.. Corners(pieces[flanges[flange]], flange, bends, thickness).Select(c => c with { At = new(ToOwn(flange, c.At.Vector)) })];
        for (var i = 0; i < bends.Count; i++)
        {
            var (bend, out_) = (bends[i], Setback(bends[i], thickness) * bends[i].Across);
            folded.Add(flat.Bends[order[i]].Folded with
            {
                From = bend.From,
                Start = new(ToOwn(bend.From, bend.Start.Vector + out_)),
                End = new(ToOwn(bend.From, bend.End.Vector + out_)),
                Relief = bend.Relief,
                Outline = Outline(i + 1),
            });
        }

        var stopFlange = flanges.IndexOf(stopPiece);
        var frame = new FoldedSheet(shape, Frame.Identity).Flanges[stopFlange];
        var seat = frame.ToWorld(Vector3.From(flat.Stop.Vector, thickness));
        return (known with
        {
            MountFlange = Outline(0),
            Holes = [.. flat.Holes, .. flat.Others],
            Bends = [.. folded],
            Stop = known.Stop with
            {
                At = isStopMeasured ? known.Stop.At : (new(seat.XY), seat.Z),
                Direction = known.Stop.Direction ?? (isStopMeasured ? null : frame.Z),
                DirectionPlusMinus = known.Stop.DirectionPlusMinus + (known.Stop.Direction is null && !isStopMeasured ? MeasuredShape.OfFlange(known with { Bends = [.. folded] }, stopFlange) : Angle.Zero),
                SlotTowards = flat.Towards is { } way ? stopFlange == 0 ? way : new(way.Dot(bends[stopFlange - 1].Along), way.Dot(bends[stopFlange - 1].Across)) : null,
                Flange = stopFlange,
            },
        }, null);
    }

    private static double Setback(Bend bend, double thickness) => (bend.InsideRadius + thickness) * Math.Tan(bend.Turn.Magnitude.Radians / 2);

    // Both edges of the strip, from where the metal begins to where it ends; null where it does not.
    private static Strip? Cut(Contour piece, DrawnBend drawn, int number)
    {
        var (start, end) = (drawn.Start.Vector, drawn.End.Vector);
        var (along, middle) = ((end - start).Unit, 0.5 * (start + end));
        Vector2[]? Edge(double off)
        {
            var at = middle + off * along.Left;
            if (!piece.Contains(at))
            {
                return null;
            }

            double[] crossings = [.. piece.Segments.SelectMany(s => s.CrossingsWithLine(at, along)).Select(c => c.Along)];
            var (before, after) = (crossings.Where(c => c < 0).DefaultIfEmpty(double.NaN).Max(), crossings.Where(c => c > 0).DefaultIfEmpty(double.NaN).Min());
            return double.IsNaN(before) || double.IsNaN(after) || !(after - before > 1) ? null : [at + before * along, at + after * along];
        }

        return Edge(-drawn.Allowance / 2) is { } near && Edge(drawn.Allowance / 2) is { } far ? new(number, drawn, along, near, far) : null;
    }

    // Pieces to the right and to the left of the strip; -1 where there is none.
    private static (int Right, int Left) Sides(Strip strip, List<Contour> pieces)
    {
        var by = Beside * strip.Along.Left;
        Vector2 right = 0.5 * (strip.Near[0] + strip.Near[1]) - by, left = 0.5 * (strip.Far[0] + strip.Far[1]) + by;
        return (pieces.FindIndex(p => p.Contains(right)), pieces.FindIndex(p => p.Contains(left)));
    }

    private static Bend BendOf(Strip strip, bool isForward, int from, int to, Contour stays, Contour outline)
    {
        var along = isForward ? strip.Along : -strip.Along;
        var (near, far) = isForward ? (strip.Near, strip.Far) : ([strip.Far[1], strip.Far[0]], (Vector2[])[strip.Near[1], strip.Near[0]]);
        double first = Math.Max(0, (far[0] - near[0]).Dot(along)), last = Math.Min(near[0].DistanceTo(near[1]), (far[1] - near[0]).Dot(along));
        var turn = Math.PI - strip.Drawn.Folded.Included.Radians;
        return new()
        {
            From = from,
            To = to,
            Start = new(near[0] + first * along),
            End = new(near[0] + last * along),
            Turn = new(strip.Drawn.Folded.IsUp ? turn : -turn),
            InsideRadius = strip.Drawn.Folded.InsideRadius,
            Allowance = strip.Drawn.Allowance,
            Rule = new MachinerysHandbookRule(BendGroup.SoftSteelOrAluminium),
            Relief = Math.Min(Gap(near[0], -along), Gap(near[1], along)) is var gap && double.IsFinite(gap) ? gap : 0,
        };

        // To where the flange that stays begins again, past the cut beside the bend.
        double Gap(Vector2 end, Vector2 way) => outline.Segments.SelectMany(s => s.CrossingsWithLine(end, way)).Select(c => c.Along)
            .Where(c => c > Beside && stays.Contains(end + (c + Beside) * way)).DefaultIfEmpty(double.PositiveInfinity).Min();
    }

    // The corners of a flange, drawn on to the corner lines of its bends along its own sides.
    private static IEnumerable<FlangeCorner> Corners(Contour piece, int flange, List<Bend> bends, double thickness)
    {
        var corners = BracketDescription.Corners(piece).ToList();
        var cut = corners.Select(c => bends.FirstOrDefault(b => IsOn(b, flange, c.At))).ToArray();
        return corners.Select((corner, i) =>
        {
            if (cut[i] is not { } bend)
            {
                return corner;
            }

            int before = (i + corners.Count - 1) % corners.Count, after = (i + 1) % corners.Count;
            var outwards = (bend.From == flange ? 1 : -1) * bend.Across;
            var side = corner.At.Vector - corners[cut[before] == bend ? after : before].At.Vector;
            var slope = side.Length > Tolerance.Point ? side.Unit.Dot(outwards) : 0;
            var way = slope > LeastSlope ? 1 / slope * side.Unit : outwards;
            return new FlangeCorner(corner.At + Setback(bend, thickness) * way, 0);
        });
    }

    // An end of the edge where the strip of a bend was cut out.
    private static bool IsOn(Bend bend, int flange, FlatPoint at)
    {
        var depth = bend.Depth(at);
        var along = (at - bend.Start).Dot(bend.Along);
        var isEdge = (bend.From == flange && Math.Abs(depth) < Tolerance.Joint) || (bend.To == flange && Math.Abs(depth - bend.Allowance) < Tolerance.Joint);
        return isEdge && Math.Min(Math.Abs(along), Math.Abs(along - bend.Length)) < Math.Max(Tolerance.Joint, bend.Allowance);
    }
}
