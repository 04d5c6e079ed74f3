using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Tooling;
using CsCheck;
using NetTopologySuite.Geometries;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace BracketGen.SheetMetal.Tests.Forming;

/// <summary>
/// Whether a part can be bent, against brute force: the part is folded by <see cref="FoldedSheet"/> at 40 angles of each stroke, laid on the shoulders by their circles
/// and lines alone, and NetTopologySuite finds what overlaps.
/// </summary>
public class BruteForceTests
{
    private const double Steps = 40;

    private static readonly GeometryFactory Factory = new();

    private static readonly Gen<(double[] Flats, double[] Turns, bool Gooseneck)> Strips = Gen.Select(
        Gen.Double[8, 60].Array[3, 4], Gen.Int[-140, 140].Array[3], Gen.Bool,
        (flats, turns, gooseneck) => (flats, turns.Take(flats.Length - 1).Select(t => t >= 0 ? t + 5.0 : t - 5.0).ToArray(), gooseneck));

    private enum Outcome
    {
        Clear,
        Close,
        Meets,
    }

    [Fact]
    public void An_order_is_found_where_brute_force_finds_one()
    {
        int clear = 0, meets = 0;
        BracketGen.TestSupport.Repeatable.Check(Strips, 80, c =>
        {
            switch (Compare(c.Flats, c.Turns, c.Gooseneck))
            {
                case Outcome.Clear:
                    Interlocked.Increment(ref clear);
                    break;
                case Outcome.Meets:
                    Interlocked.Increment(ref meets);
                    break;
                default:
                    break;
            }
        });
        Assert.True(clear >= 15 && meets >= 5, $"{clear} are bent, {meets} are not: too few to compare.");
    }

    private static Outcome Compare(double[] flats, double[] turns, bool gooseneck)
    {
        var flat = BentStrip.Of(flats, turns);
        var punch = gooseneck ? BentStrip.Gooseneck : BentStrip.Straight;
        var die = BentStrip.Die;
        var result = BendSimulation.Of(flat, BentStrip.Stock, [die], BentStrip.Tools(punch));
        if (result.Obstacles.Any(o => o.What is Obstruction.DieAngle or Obstruction.NoPunch))
        {
            return Outcome.Close;
        }

        var best = Best(flat, punch, die, [], []);
        if (best != Outcome.Close)
        {
            Assert.Equal(best == Outcome.Clear, result.Plan is not null);
        }

        return best;
    }

    // The best that any order of the bends left comes to.
    private static Outcome Best(FlatPattern flat, Punch punch, PressBrakeDie die, int[] made, Dictionary<(int, int), Outcome> known)
    {
        if (made.Length == flat.Bends.Length)
        {
            return Outcome.Clear;
        }

        var best = Outcome.Meets;
        foreach (var bend in Enumerable.Range(0, flat.Bends.Length).Except(made))
        {
            // Turned round, the part is what the mirrored punch sees.
            var key = (made.Sum(b => 1 << b), bend);
            if (!known.TryGetValue(key, out var one))
            {
                known[key] = one = (punch.IsSymmetric ? [false] : (bool[])[false, true]).Min(r => Of(flat, punch, die, made, bend, r));
            }

            if (one < best)
            {
                var whole = (Outcome)Math.Max((int)one, (int)Best(flat, punch, die, [.. made, bend], known));
                best = whole < best ? whole : best;
            }
        }

        return best;
    }

    private static Outcome Of(FlatPattern flat, Punch punch, PressBrakeDie die, int[] made, int number, bool reversed)
    {
        var bend = flat.Bends[number];
        var turn = (bend.Turn.Magnitude + Springback.Allowance(bend.Turn, bend.InsideRadius, BentStrip.Steel, flat.Thickness) + BendSimulation.Reserve).Radians;
        var worst = Outcome.Clear;
        for (var i = 0; i <= Steps && worst != Outcome.Meets; i++)
        {
            var now = At(flat, punch, die, made, number, reversed, Math.Max(1e-4, turn * i / Steps));
            worst = now > worst ? now : worst;
        }

        return worst;
    }

    private static Outcome At(FlatPattern flat, Punch punch, PressBrakeDie die, int[] made, int number, bool reversed, double turn)
    {
        var bend = flat.Bends[number];
        var sign = Math.Sign(bend.Turn.Radians);

        // The strip keeps its length and its neutral axis. A bend not made is one of next to no angle.
        Bend Bent(Bend b, double angle) => b with
        {
            Turn = new(Math.CopySign(angle, b.Turn.Radians)),
            InsideRadius = b.Allowance / angle - (b.Allowance / b.Turn.Magnitude.Radians - b.InsideRadius),
        };
        var folded = new FoldedSheet(
            flat with { Bends = [.. flat.Bends.Select((b, i) => i == number ? Bent(b, turn) : made.Contains(i) ? b : Bent(b, 1e-7))] },
            Frame.Identity);
        var thickness = flat.Thickness;

        // In the section x is along the strip, z up; turned over where the bend goes down.
        Vector2 Section(double x, double height)
        {
            var p = folded.Fold(new(x, 20), height).Vector;
            return new(p.X, sign * p.Z);
        }

        // The legs' undersides, symmetric to the punch and on the shoulders.
        double outer = sign > 0 ? 0 : thickness, near = bend.Start.X, far = near + bend.Allowance;
        Vector2 left = Section(near, outer), leftWay = (Section(near - 1, outer) - left).Unit, right = Section(far, outer), rightWay = (Section(far + 1, outer) - right).Unit;
        var up = (leftWay + rightWay).Length > 1e-9 ? (leftWay + rightWay).Unit : -leftWay.Left;
        up = up.Dot(Section(near, thickness - outer) - left) > 0 || (leftWay + rightWay).Length > 1e-3 ? up : -up;
        var across = new Vector2(up.Y, -up.X);
        across = across.Dot(right - left) > 0 ? across : -across;
        Vector2 Placed(Vector2 p, Vector2 origin) => new((p - origin).Dot(across), (p - origin).Dot(up));
        var mid = 0.5 * (left + right);
        Vector2 foot = Placed(right, mid), way = new(rightWay.Dot(across), rightWay.Dot(up));

        // The line through the foot must be a shoulder's radius from its centre.
        var slope = (Math.PI - die.Angle.Radians) / 2;
        Vector2 centre = new(die.Opening / 2 + die.ShoulderRadius * Math.Tan(slope / 2), -die.ShoulderRadius), normal = way.Left;
        var lift = (die.ShoulderRadius - (foot - centre).Dot(normal)) / normal.Y;
        var origin = mid - lift * up;

        Vector2[] Piece(double from, double to, int parts)
        {
            var xs = Enumerable.Range(0, parts + 1).Select(i => from + (to - from) * i / parts).ToArray();
            return [.. xs.Select(x => Placed(Section(x, 0), origin)), .. xs.Reverse().Select(x => Placed(Section(x, thickness), origin))];
        }

        var tip = Enumerable.Range(0, 201).Select(i => Placed(Section(near + bend.Allowance * i / 200, thickness - outer), origin)).MinBy(p => Math.Abs(p.X)).Y;
        var ram = Upper(punch, reversed);

        // Pieces of sheet from bend to bend; those in the plane of the legs rest on the die.
        var worst = Outcome.Clear;
        List<(Shape Shape, int Side)> standing = [];
        foreach (var (from, to, isBend) in Pieces(flat))
        {
            if (from == near)
            {
                continue;
            }

            var corners = Piece(from, to, isBend ? 12 : 1);
            Polygon piece = Polygon(corners), underRam = Polygon([.. corners.Select(p => p - new Vector2(0, tip))]);
            var side = from < near ? -1 : 1;
            var isLeg = flat.Bends.Select((b, i) => (b, i)).Where(b => made.Contains(b.i))
                .All(b => side < 0 ? b.b.Start.X >= near || b.b.Start.X + b.b.Allowance <= from + 1e-9 : b.b.Start.X <= near || b.b.Start.X >= to - 1e-9);
            worst = Worse(worst, isLeg ? Resting(underRam, ram) : Free(underRam, ram.Shape, BendSimulation.Clearance));
            if (!isLeg)
            {
                worst = Worse(worst, Resting(piece, Lower));
                worst = Worse(worst, Free(piece, Bed, BendSimulation.Clearance));
            }

            foreach (var (other, _) in standing.Where(s => s.Side != side && !(isLeg && s.Shape.UserData is true)))
            {
                worst = Worse(worst, Free(piece, other, BendSimulation.SelfClearance));
            }

            piece.UserData = isLeg;
            standing.Add((piece, side));
        }

        return worst;
    }

    private static IEnumerable<(double From, double To, bool IsBend)> Pieces(FlatPattern flat)
    {
        double at = 0;
        for (var i = 0; i < flat.Bends.Length; i++)
        {
            yield return (at, flat.Bends[i].Start.X, false);
            at = flat.Bends[i].Start.X + flat.Bends[i].Allowance;
            yield return (flat.Bends[i].Start.X, at, true);
        }

        yield return (at, flat.Blank.Outline.Bounds.Max.X, false);
    }

    private static Outcome Worse(Outcome a, Outcome b) => a > b ? a : b;

    // Nearer than the clearance, less what chords cost: it meets. Farther than it by a step's movement: clear.
    private static Outcome Free(Shape piece, Shape tool, double clearance) => Distance(piece, tool) switch
    {
        var d when d < clearance - 0.15 => Outcome.Meets,
        var d when d < clearance + 2 => Outcome.Close,
        _ => Outcome.Clear,
    };

    // Boxes that are far apart say enough.
    private static double Distance(Shape piece, Shape tool) =>
        piece.EnvelopeInternal.Distance(tool.EnvelopeInternal) is > 5 and var far ? far : piece.Distance(tool);

    // What rests on a tool meets it where it reaches deeper than 0.5 mm.
    private static Outcome Resting(Shape piece, Tool tool) =>
        tool.Deep.Intersects(piece) ? Outcome.Meets : tool.Inside.Intersects(piece) ? Outcome.Close : Outcome.Clear;

    // A tool, and the same cut back by what tells a touch from an overlap.
    private sealed record Tool(Shape Shape, Shape Inside, Shape Deep)
    {
        public static Tool Of(Shape shape) => new(shape, shape.Buffer(-0.02), shape.Buffer(-0.5));
    }

    private static readonly Shape Bed = Box(-40, 40, -BentStrip.Die.ShoulderHeight - 500, -BentStrip.Die.ShoulderHeight);

    private static readonly Tool Lower = Tool.Of(Polygon(
    [
        new(-BentStrip.Die.BodyWidth / 2, -BentStrip.Die.ShoulderHeight), new(BentStrip.Die.BodyWidth / 2, -BentStrip.Die.ShoulderHeight),
        new(BentStrip.Die.BodyWidth / 2, 0), new(BentStrip.Die.Opening / 2, 0),
        new(0, -BentStrip.Die.Opening / 2 / Math.Tan(BentStrip.Die.Angle.Radians / 2)), new(-BentStrip.Die.Opening / 2, 0), new(-BentStrip.Die.BodyWidth / 2, 0),
    ]));

    private static readonly Dictionary<(Punch, bool), Tool> Uppers = new[] { BentStrip.Straight, BentStrip.Gooseneck }
        .SelectMany(p => new[] { (p, false), (p, true) })
        .ToDictionary(p => p, p => Tool.Of(Polygon([.. p.Item1.Profile.Select(c => new Vector2(p.Item2 ? -c.Across : c.Across, c.Up))])
            .Union(Box(-30, 30, p.Item1.Height, p.Item1.Height + 500))));

    private static Tool Upper(Punch punch, bool reversed) => Uppers[(punch, reversed)];

    private static Polygon Box(double left, double right, double bottom, double top) => Polygon([new(left, bottom), new(right, bottom), new(right, top), new(left, top)]);

    private static Polygon Polygon(Vector2[] corners) => Factory.CreatePolygon([.. corners.Append(corners[0]).Select(c => new Coordinate(c.X, c.Y))]);
}
