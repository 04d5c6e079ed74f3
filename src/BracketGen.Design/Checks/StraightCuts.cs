using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Checks;

/// <summary>A straight cut through a folded sheet that parts the stop from all bolts: what pulls at the stop must pass through it.</summary>
/// <remarks>Throttle frame, mm; on the sheet's middle surface.</remarks>
/// <param name="Centre">Centre of the metal cut through.</param>
/// <param name="Along">Along the cut, length one.</param>
/// <param name="Top">Out of the sheet's top, length one.</param>
/// <param name="Metal">Length of the metal cut through (mm): holes are left out.</param>
/// <param name="Reach">Distance of the metal's farthest end from its centre (mm).</param>
/// <param name="FirstMoment">∫ |s| ds over the metal, s from its centre (mm²).</param>
/// <param name="SecondMoment">∫ s² ds over the metal (mm³).</param>
/// <param name="Width">How much of the sheet it stands for, along the middle surface across the cut (mm); zero where its neighbours do.</param>
internal readonly record struct StraightCut(
    Vector3 Centre, Vector3 Along, Vector3 Top, double Metal, double Reach, double FirstMoment, double SecondMoment, double Width)
{
    /// <summary>Moment about the cut of a force at a point (N·mm): it bends the sheet out of its plane.</summary>
    public double OutOfPlane(Vector3 at, Vector3 force) => Along.Dot((at - Centre).Cross(force));

    /// <summary>Moment about the sheet's normal of a force at a point (N·mm): it bends the sheet in its plane.</summary>
    public double InPlane(Vector3 at, Vector3 force) => Top.Dot((at - Centre).Cross(force));

    /// <summary>Force across the cut in the sheet's plane (N).</summary>
    public double Across(Vector3 force) => Along.Cross(Top).Dot(force);
}

/// <summary>Finds straight cuts that part the stop from all bolts.</summary>
/// <remarks>
/// One set of parallel cuts a flange or bend, so that no metal belongs to two: in a bend and before it along its line, in the last flange along the line of the bend that carries
/// it. A cut counts only where the metal it goes through is one straight line once folded, with the sheet facing one way, and where it keeps clear of the washers and of
/// the seat.
/// </remarks>
internal static class StraightCuts
{
    // Strips of a flange and of a bend.
    private const int InFlange = 6;
    private const int InBend = 2;

    /// <summary>The cuts, in the order of their strips from the bolts on; empty where none parts the stop from the bolts.</summary>
    /// <param name="folded">The sheet.</param>
    /// <param name="washers">The washers, in the flat pattern: all on flange 0.</param>
    /// <param name="seat">The seat, in the flat pattern.</param>
    /// <param name="stopFlange">Number of the flange it is on.</param>
    public static List<StraightCut> Of(FoldedSheet folded, IReadOnlyList<Disc> washers, Disc seat, int stopFlange)
    {
        var cuts = new List<StraightCut>();
        var path = PathTo(folded.Flat, stopFlange);
        if (path.Count == 0)
        {
            var bolts = washers.Aggregate(Vector2.Zero, (sum, w) => sum + w.Centre) / washers.Count;
            if (bolts.DistanceTo(seat.Centre) > Tolerance.Point)
            {
                var across = (seat.Centre - bolts).Unit;
                var lines = new Lines(folded, bolts, across);
                lines.Add(FarEdge(washers, lines), lines.DepthOf(seat.Centre) - seat.Radius, InFlange, 1, cuts);
            }

            return cuts;
        }

        for (var i = 0; i < path.Count; i++)
        {
            var bend = path[i];
            var lines = new Lines(folded, bend.Start.Vector, bend.Across);
            var nearest = FarEdge(washers, lines);
            var seatEdge = lines.DepthOf(seat.Centre) - seat.Radius;
            var before = i == 0 ? nearest : Math.Max(nearest, FarEdge(path[i - 1], lines));
            lines.Add(before, Math.Min(0, seatEdge), InFlange, 1, cuts);
            if (nearest <= 0 && seatEdge >= bend.Allowance)
            {
                // On the middle surface the bend is longer than its zone in the flat pattern.
                var stretch = (bend.InsideRadius + folded.Flat.Thickness / 2) * bend.Turn.Magnitude.Radians / bend.Allowance;
                lines.Add(0, bend.Allowance, InBend, stretch, cuts);
            }

            if (i == path.Count - 1)
            {
                lines.Add(Math.Max(bend.Allowance, nearest), seatEdge, InFlange, 1, cuts);
            }
        }

        return cuts;
    }

    // The bends from the mount flange to another, in this order; empty where that is the mount flange itself.
    private static List<Bend> PathTo(FlatPattern flat, int flange)
    {
        var path = new List<Bend>();
        while (flange != 0)
        {
            var bend = flat.Bends[flange - 1];
            path.Insert(0, bend);
            flange = bend.From;
        }

        return path;
    }

    private static double FarEdge(IReadOnlyList<Disc> washers, Lines lines)
    {
        var farthest = double.NegativeInfinity;
        foreach (var washer in washers)
        {
            farthest = Math.Max(farthest, lines.DepthOf(washer.Centre) + washer.Radius);
        }

        return farthest;
    }

    private static double FarEdge(Bend bend, Lines lines) => Math.Max(
        lines.DepthOf((bend.Start + bend.Allowance * bend.Across).Vector), lines.DepthOf((bend.End + bend.Allowance * bend.Across).Vector));

    // Parallel lines in the flat pattern, by their depth from one of them.
    private sealed class Lines(FoldedSheet folded, Vector2 origin, Vector2 across)
    {
        private readonly List<double> _ends = [];

        private Vector2 Along => -across.Left;

        public double DepthOf(Vector2 point) => (point - origin).Dot(across);

        /// <summary>Cuts in the middle of equal strips between two depths, and between them; strips that are not cut straight everywhere are left out.</summary>
        public void Add(double from, double to, int strips, double stretch, List<StraightCut> cuts)
        {
            if (!(to - from > Tolerance.Joint))
            {
                return;
            }

            var width = (to - from) / strips;
            var before = At(from + Tolerance.Joint / 2, 0);
            for (var i = 0; i < strips; i++)
            {
                var middle = At(from + (i + 0.5) * width, width * stretch);
                var after = At(i == strips - 1 ? to - Tolerance.Joint / 2 : from + (i + 1) * width, 0);
                if (before is { } edge && middle is { } cut && after is not null)
                {
                    cuts.Add(edge);
                    cuts.Add(cut);
                }

                before = after;
            }

            if (before is { } last)
            {
                cuts.Add(last);
            }
        }

        private StraightCut? At(double depth, double width)
        {
            var point = origin + depth * across;
            _ends.Clear();
            foreach (var contour in folded.Flat.Blank.Contours)
            {
                foreach (var segment in contour.Segments)
                {
                    foreach (var (_, along) in segment.CrossingsWithLine(point, Along))
                    {
                        _ends.Add(along);
                    }
                }
            }

            if (_ends.Count == 0 || _ends.Count % 2 != 0)
            {
                return null; // It grazes a corner.
            }

            _ends.Sort();
            double metal = 0, moment = 0;
            for (var i = 0; i < _ends.Count; i += 2)
            {
                var length = _ends[i + 1] - _ends[i];
                metal += length;
                moment += length * (_ends[i] + _ends[i + 1]) / 2;
            }

            if (!(metal > Tolerance.Joint))
            {
                return null;
            }

            var middle = moment / metal;
            double reach = 0, first = 0, second = 0;
            for (var i = 0; i < _ends.Count; i += 2)
            {
                double a = _ends[i] - middle, b = _ends[i + 1] - middle;
                reach = Math.Max(reach, Math.Max(Math.Abs(a), Math.Abs(b)));
                first += (b * Math.Abs(b) - a * Math.Abs(a)) / 2;
                second += (b * b * b - a * a * a) / 3;
            }

            return IsStraight(point) is { } frame
                ? new(frame.Origin + middle * frame.Along, frame.Along, frame.Top, metal, reach, first, second, width)
                : null;
        }

        // Folded, the ends of the metal must stay on one line, as far apart as in the flat pattern, and the sheet must face one way.
        private (Vector3 Origin, Vector3 Along, Vector3 Top)? IsStraight(Vector2 point)
        {
            var half = folded.Flat.Thickness / 2;
            Vector3 Place(double along) => folded.Fold(new(point + along * Along), half).Vector;
            var (first, last) = (_ends[0], _ends[^1]);
            var start = Place(first);
            var way = (Place(last) - start) / (last - first);
            var top = folded.TopAt(new(point + first * Along));
            for (var i = 0; i < _ends.Count; i++)
            {
                // Just within the metal, so that an end on a bend's edge falls to the metal's side; and the middle of what lies between two ends.
                var inside = _ends[i] + (i % 2 == 0 ? 1 : -1) * Tolerance.Offset;
                foreach (var at in i % 2 == 0 ? [inside, (_ends[i] + _ends[i + 1]) / 2] : new[] { inside })
                {
                    if (Place(at).DistanceTo(start + (at - first) * way) > Tolerance.Joint
                        || (folded.TopAt(new(point + at * Along)) - top).Length > Tolerance.Joint)
                    {
                        return null;
                    }
                }
            }

            return Math.Abs(way.Length - 1) < Tolerance.Joint ? (start - first * way.Unit, way.Unit, top) : null;
        }
    }
}
