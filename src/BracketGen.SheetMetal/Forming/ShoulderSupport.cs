using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.SheetMetal.Forming;

/// <summary>Along how much of a bend both legs lie on the shoulders of the die to the end.</summary>
/// <remarks>
/// At the end of the bend a leg touches the shoulder (V/2) / cos(A/2) from the outside mould line, A the bend angle; the shoulder's radius is added,
/// so that the leg lies on metal and not on its edge. Where the metal ends sooner the leg slips into the V and the bend runs off its angle there.
/// </remarks>
/// <param name="Needed">Length of leg needed, from the outside mould line (mm).</param>
/// <param name="Carried">Where both legs are long enough: from and to, along the bend from its start (mm), in order and apart.</param>
/// <param name="Length">Length of the bend (mm).</param>
/// <param name="ShortestLeg">The shortest leg anywhere along the bend, from the outside mould line (mm), at most <paramref name="Needed"/>.</param>
public sealed record ShoulderSupport(double Needed, ImmutableArray<(double From, double To)> Carried, double Length, double ShortestLeg)
{
    /// <summary>Minimum part of a bend that must be carried, unless the shop accepts less (common practice, no source).</summary>
    public const double LeastShare = 0.8;

    /// <summary>The part of the bend that is carried, 0 to 1.</summary>
    public double Share => Carried.Sum(c => c.To - c.From) / Length;

    /// <summary>Whether the end where the bend starts is carried.</summary>
    public bool AtStart => !Carried.IsEmpty && Carried[0].From < AtEndTolerance;

    /// <summary>Whether the other end is carried.</summary>
    public bool AtEnd => !Carried.IsEmpty && Carried[^1].To > Length - AtEndTolerance;

    /// <summary>Whether both ends and a share of at least <paramref name="leastShare"/> are carried.</summary>
    public bool Suffices(double leastShare = LeastShare) => AtStart && AtEnd && Share >= leastShare;

    /// <summary>Length of leg (mm) needed from the outside mould line.</summary>
    /// <param name="die">The die.</param>
    /// <param name="turn">Bend angle.</param>
    public static double LegNeeded(PressBrakeDie die, Angle turn) => die.ShortestFlange(turn) + die.ShoulderRadius;

    /// <summary>The support of a bend of a flat pattern on a die.</summary>
    /// <param name="flat">The flat pattern; the ends of the bend lie on its outline.</param>
    /// <param name="bend">One of its bends.</param>
    /// <param name="die">The die.</param>
    /// <param name="made">Bends that are made before: a leg ends where one of them begins.</param>
    public static ShoulderSupport Of(FlatPattern flat, Bend bend, PressBrakeDie die, params ReadOnlySpan<Bend> made)
    {
        var needed = LegNeeded(die, bend.Turn);
        var setback = (bend.InsideRadius + flat.Thickness) * Math.Tan(bend.Turn.Magnitude.Radians / 2);
        var depth = needed - setback;
        var outline = flat.Blank.Outline.Segments;
        var bare = new List<(double From, double To)>();
        var shortest = depth;
        foreach (var back in (bool[])[true, false])
        {
            foreach (var segment in outline)
            {
                if (segment is not ArcSegment arc)
                {
                    EndAt(segment.Start, segment.End);
                }
                else if (MayReach(Local(arc.Centre), arc.Radius))
                {
                    var start = arc.Start;
                    var count = arc.ChordCount(ChordError);
                    for (var i = 1; i <= count; i++)
                    {
                        var end = i == count ? arc.End : arc.PointAt((double)i / count);
                        EndAt(start, end);
                        start = end;
                    }
                }
            }

            foreach (var other in made)
            {
                EndAt(other.Start.Vector, other.End.Vector);
                EndAt((other.Start + other.Allowance * other.Across).Vector, (other.End + other.Allowance * other.Across).Vector);
            }

            // Whether a circle comes beside the bend, where a leg may end: most arcs of an outline do not.
            bool MayReach(Vector2 centre, double radius) =>
                centre.X + radius > 0 && centre.X - radius < bend.Length && centre.Y + radius > OffStrip && centre.Y - radius < depth;

            void EndAt(Vector2 start, Vector2 end)
            {
                // Along the bend, and away from its strip on this side.
                if (Within(Local(start), Local(end), OffStrip, depth - Tolerance.OnLimit) is not { } piece)
                {
                    return;
                }

                double from = Math.Clamp(Math.Min(piece.A.X, piece.B.X), 0, bend.Length), to = Math.Clamp(Math.Max(piece.A.X, piece.B.X), 0, bend.Length);
                if (to - from > Tolerance.Point)
                {
                    bare.Add((from, to));
                    shortest = Math.Min(shortest, Math.Min(Depth(piece, from), Depth(piece, to)));
                }
            }

            Vector2 Local(Vector2 flatPoint)
            {
                var p = flatPoint - bend.Start.Vector;
                var across = p.Dot(bend.Across);
                return new(p.Dot(bend.Along), back ? across - bend.Allowance : -across);
            }
        }

        return new(needed, Complement(bare, bend.Length), bend.Length, setback + Math.Max(0, shortest));
    }

    // Metal that ends nearer than this (mm) to a bend's end carries it: a corner is rounded by as much. A shorter piece carries nothing.
    private const double AtEndTolerance = 0.5;

    // Arcs of the outline as chords (mm): they move the carried part by no more.
    private const double ChordError = 0.005;

    // The outline runs past the ends of the strip along its sides; beyond this depth (mm) it is beside the bend.
    private const double OffStrip = Tolerance.OnLimit;

    // The part of a piece whose second coordinate lies in a range; null if none does.
    private static (Vector2 A, Vector2 B)? Within(Vector2 a, Vector2 b, double min, double max)
    {
        double from = 0, to = 1, rise = b.Y - a.Y;
        if (rise == 0)
        {
            return a.Y > min && a.Y < max ? (a, b) : null;
        }

        double atMin = (min - a.Y) / rise, atMax = (max - a.Y) / rise;
        from = Math.Max(from, Math.Min(atMin, atMax));
        to = Math.Min(to, Math.Max(atMin, atMax));
        return from < to ? (a + from * (b - a), a + to * (b - a)) : null;
    }

    private static double Depth((Vector2 A, Vector2 B) piece, double along)
    {
        var run = piece.B.X - piece.A.X;
        return run == 0 ? Math.Min(piece.A.Y, piece.B.Y) : piece.A.Y + (along - piece.A.X) / run * (piece.B.Y - piece.A.Y);
    }

    private static ImmutableArray<(double From, double To)> Complement(List<(double From, double To)> bare, double length)
    {
        var carried = ImmutableArray.CreateBuilder<(double, double)>();
        double at = 0;
        foreach (var (from, to) in bare.OrderBy(b => b.From))
        {
            if (from > at + AtEndTolerance)
            {
                carried.Add((at, from));
            }

            at = Math.Max(at, to);
        }

        if (length > at + AtEndTolerance)
        {
            carried.Add((at, length));
        }

        return carried.ToImmutable();
    }

    /// <inheritdoc/>
    public bool Equals(ShoulderSupport? other) => other is not null && Needed == other.Needed && Length == other.Length
        && ShortestLeg == other.ShortestLeg && Carried.SequenceEqual(other.Carried);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Needed, Length, ShortestLeg, Carried.Length);
}
