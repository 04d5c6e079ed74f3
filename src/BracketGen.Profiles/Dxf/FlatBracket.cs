using System.Collections.Immutable;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Sections;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Profiles.Dxf;

/// <summary>Makes a measured bracket of its file and its drawn flat pattern.</summary>
internal sealed class FlatBracket(FlatBracketFile file, DxfDrawn drawn, string path, Reading reading)
{
    // A hollow arc turned by more than this is the bottom of a slot (rad): half a turn, less what somebody draws roughly.
    private static readonly Angle Bottom = Angle.FromDegrees(150);

    private const string OurBends = "FOLD_LINE", OurCuts = "CUT_THROUGH";

    private sealed record Opening(Vector2 Centre, double Diameter, Vector2? Towards, SlottedHole? Slot = null);

    /// <summary>The bracket; null where a mistake was reported.</summary>
    public MeasuredBracket? Read()
    {
        if (Unit() is not { } unit || Layers() is not var (bendLayer, isCut))
        {
            return null;
        }

        DxfPath[] cut = [.. drawn.Paths.Where(p => isCut(p.Layer))];
        var (closed, wrong) = PathChain.Join([.. cut.Select(p => Scaled(p.Path, unit))], DxfWrong.Together);
        if (wrong is var (fault, at, _, gap))
        {
            return Wrong(new(path, cut[at].Line, 1), cut[at].Kind, fault == ChainFault.Open ? DxfMistake.OpenContour : DxfMistake.Fork, cut[at].Layer, gap);
        }

        if (closed.IsEmpty)
        {
            return Wrong(new(path, 0, 0), "", DxfMistake.NoContour, string.Join(", ", drawn.Paths.Select(p => p.Layer).Distinct().Take(10)));
        }

        var outer = closed.MaxBy(c => Math.Abs(c.Contour.SignedArea));
        var outline = outer.Contour.SignedArea >= 0 ? outer.Contour : outer.Contour.Reversed;
        List<Opening> openings = [];
        foreach (var circle in drawn.Circles.Where(c => isCut(c.Layer)))
        {
            if (!outline.Contains(unit * circle.Centre))
            {
                return Wrong(new(path, circle.Line, 1), "CIRCLE", DxfMistake.OutsideOutline, circle.Layer);
            }

            openings.Add(new(unit * circle.Centre, 2 * unit * circle.Radius, null));
        }

        foreach (var (contour, number) in closed.Where(c => c != outer))
        {
            var from = cut[number];
            if (!outline.Contains(contour.Segments[0].Start))
            {
                return Wrong(new(path, from.Line, 1), from.Kind, DxfMistake.OutsideOutline, from.Layer);
            }

            if (SlotOf(contour) is { } slot)
            {
                openings.Add(slot);
                continue;
            }

            if (contour.Segments.OfType<ArcSegment>().ToArray() is var arcs && (arcs.Length < contour.Segments.Length || arcs.Any(a => a.Centre.DistanceTo(arcs[0].Centre) > DxfWrong.Together)))
            {
                return Wrong(new(path, from.Line, 1), from.Kind, DxfMistake.NotRound, from.Layer);
            }

            openings.Add(new(arcs[0].Centre, 2 * arcs[0].Radius, null));
        }

        return Lines(bendLayer, unit) is { } lines ? Folded(outline, openings, lines, unit) : null;
    }

    private MeasuredBracket? Wrong(Place place, string read, DxfMistake mistake, string detail, double value = 0)
    {
        reading.Report(place, "", read, new DxfWrong(mistake, detail, value));
        return null;
    }

    private static void At<T>(Located<T> place, Reading reading, ProfileProblem problem) => place.Written.Report(place.Key, reading, problem);

    private double? Unit()
    {
        if (drawn.Unit is { } said && file.Unit is { } given && said != given)
        {
            At(file.Pattern, reading, new DxfWrong(DxfMistake.OtherUnit, "", said));
            return null;
        }

        if ((drawn.Unit ?? file.Unit) is { } unit)
        {
            return unit;
        }

        At(file.Pattern, reading, new DxfWrong(DxfMistake.NoUnit, ""));
        return null;
    }

    private (string? Bends, Func<string, bool> IsCut)? Layers()
    {
        ImmutableArray<string> all = [.. drawn.Paths.Select(p => p.Layer).Concat(drawn.Circles.Select(c => c.Layer)).Distinct()];
        foreach (var named in file.CutLayers.Concat(file.BendLayer is { } one ? [one] : []))
        {
            if (!all.Contains(named.Value))
            {
                At(named, reading, new DxfWrong(DxfMistake.NoLayer, string.Join(", ", all.Take(10))));
                return null;
            }
        }

        var bends = file.BendLayer?.Value ?? (all.Contains(OurBends) ? OurBends : null);
        ImmutableArray<string> cuts = !file.CutLayers.IsEmpty ? [.. file.CutLayers.Select(l => l.Value)] : all.Contains(OurCuts) ? [OurCuts] : [.. all.Where(l => l != bends)];
        return (bends, cuts.Contains);
    }

    // The bend lines in the order of the bends.
    private ImmutableArray<(FlatPoint Start, FlatPoint End)>? Lines(string? layer, double unit)
    {
        (FlatPoint Start, FlatPoint End)[] onLayer =
        [
            .. drawn.Paths.Where(p => layer is not null && p.Layer == layer && !p.Path.IsClosed && p.Path.Points.Length == 2)
                .Select(p => (new FlatPoint(unit * p.Path.Points[0].At), new FlatPoint(unit * p.Path.Points[1].At)))
                .Where(l => l.Item1.DistanceTo(l.Item2) > 1),
        ];
        var open = file.Bends.Count(b => b.Value.Line is null);
        if (open > 0 && onLayer.Length != file.Bends.Length || file.Bends.IsEmpty && onLayer.Length > 0)
        {
            At(file.Pattern, reading, new DxfWrong(DxfMistake.BendCount, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{file.Bends.Length}"), onLayer.Length));
            return null;
        }

        return [.. file.Bends.Select((b, i) => b.Value.Line ?? onLayer[i])];
    }

    private MeasuredBracket? Folded(Contour outline, List<Opening> openings, ImmutableArray<(FlatPoint Start, FlatPoint End)> lines, double unit)
    {
        var thickness = file.Known.Thickness.Value;
        var holes = ImmutableArray.CreateBuilder<MeasuredHole>();
        List<Opening> left = [.. openings];
        foreach (var chosen in file.Holes)
        {
            var (hole, hasSize) = chosen.Value;
            if (Nearest(left, hole.At) is { } found)
            {
                left.Remove(found);
                holes.Add(hole with { At = new(found.Centre), Diameter = hasSize ? hole.Diameter : found.Diameter, Slot = found.Slot });
            }
            else if (hasSize)
            {
                holes.Add(hole);
            }
            else
            {
                At(chosen, reading, new DxfWrong(DxfMistake.NoHole, "", openings.Select(o => o.Centre.DistanceTo(hole.At.Vector)).DefaultIfEmpty(0).Min()));
                return null;
            }
        }

        var stopAt = Nearest([.. left.Where(o => o.Slot is null), .. Slots(outline)], file.StopOn.Value);
        if (stopAt is null && file.StopSize is null)
        {
            At(file.StopOn, reading, new DxfWrong(DxfMistake.NoHole, "", openings.Select(o => o.Centre.DistanceTo(file.StopOn.Value.Vector)).DefaultIfEmpty(0).Min()));
            return null;
        }

        if (stopAt is not null)
        {
            left.Remove(stopAt);
        }

        var allowances = file.Bends.Select(b => AllowanceOf(b.Value, thickness)).ToImmutableArray();
        var known = file.Known with
        {
            Stop = file.Known.Stop with { Size = file.StopSize ?? new Measured(stopAt!.Diameter) },
            Drawn = new(path, unit == 25.4, drawn.Skipped, allowances, file.IsStopMeasured),
        };
        var flat = new DrawnFlat
        {
            Outline = outline,
            Holes = holes.ToImmutable(),
            Others = [.. left.Select(o => new MeasuredHole(new(o.Centre), o.Diameter) { Slot = o.Slot, PlusMinus = MeasuredStop.UsualReading, IsAssumed = true })],
            Bends = [.. file.Bends.Select((b, i) => Bend(b.Value, lines[i], allowances[i], thickness))],
            Stop = stopAt is null ? file.StopOn.Value : new(stopAt.Centre),
            Towards = stopAt?.Towards,
        };
        if (flat.Bends.Any(b => !(b.Allowance > 0)))
        {
            At(file.Bends[flat.Bends.ToList().FindIndex(b => !(b.Allowance > 0))], reading, new DrawnWrong(DrawnFault.BendOffMetal));
            return null;
        }

        var (bracket, mistake) = DrawnShape.Of(flat, known, file.IsStopMeasured);
        if (mistake is { } drawnWrong)
        {
            Tell(drawnWrong);
            return null;
        }

        if (MeasuredShape.Of(bracket!, SheetMetal.Shops.SheetClass.All[0]).Mistake is { } shape)
        {
            At(file.Pattern, reading, new BracketShapeWrong(shape));
            return null;
        }

        return bracket;
    }

    private static (double Length, AllowanceSource Source) AllowanceOf(FlatBend bend, double thickness) => bend.Allowance is { } given
        ? (given(thickness), AllowanceSource.Given)
        : (new MachinerysHandbookRule(BendGroup.SoftSteelOrAluminium).Allowance(new(Math.PI - bend.Folded.Included.Radians), bend.Folded.InsideRadius, thickness), AllowanceSource.Assumed);

    private void Tell(DrawnMistake mistake)
    {
        var problem = new DrawnWrong(mistake.Fault);
        switch (mistake)
        {
            case { Fault: DrawnFault.BendOffMetal or DrawnFault.NotJoined, Item: { } bend }:
                At(file.Bends[bend], reading, problem);
                break;
            case { Fault: DrawnFault.HolesApart or DrawnFault.HoleInBend, Item: { } hole }:
                At(file.Holes[hole], reading, problem);
                break;
            case { Fault: DrawnFault.HoleElsewhere }:
                At(file.Pattern, reading, problem);
                break;
            default:
                At(file.StopOn, reading, problem);
                break;
        }
    }

    private DrawnBend Bend(FlatBend bend, (FlatPoint Start, FlatPoint End) line, (double Length, AllowanceSource Source) allowance, double thickness) => new(
        line.Start, line.End, allowance.Length, allowance.Source, bend.Folded with
        {
            LinePlusMinus = bend.HasLinePlusMinus ? bend.Folded.LinePlusMinus : DrawnFlat.LinePlusMinus(allowance.Source, new(Math.PI - bend.Folded.Included.Radians), thickness),
            OutlinePlusMinus = file.Known.OutlinePlusMinus,
            IsAssumed = bend.Folded.IsAssumed with { Outline = file.Known.IsOutlineAssumed },
        });

    private static Opening? Nearest(List<Opening> openings, FlatPoint at) =>
        openings.Where(o => o.Centre.DistanceTo(at.Vector) <= DxfWrong.Near).MinBy(o => o.Centre.DistanceTo(at.Vector));

    // Two straight sides and two half circles of one size, in one arc or several.
    private static Opening? SlotOf(Contour contour)
    {
        ArcSegment[] arcs = [.. contour.Segments.OfType<ArcSegment>()];
        LineSegment[] sides = [.. contour.Segments.OfType<LineSegment>()];
        if (arcs.Length < 2 || sides.Length < 2)
        {
            return null;
        }

        var (one, radius) = (arcs[0].Centre, arcs[0].Radius);
        var other = arcs.Select(a => a.Centre).MaxBy(c => c.DistanceTo(one));
        var travel = one.DistanceTo(other);
        if (travel <= DxfWrong.Together)
        {
            return null;
        }

        // Whatever its pieces are: every arc about one of two centres with one radius, every side along the line between them and as far from it.
        var along = (other - one) / travel;
        double Turned(Vector2 about) => arcs.Where(a => a.Centre.DistanceTo(about) <= DxfWrong.Together).Sum(a => Math.Abs(a.Sweep.Radians));
        var isSlot = Array.TrueForAll(arcs, a => Math.Abs(a.Radius - radius) <= DxfWrong.Together)
            && Array.TrueForAll(sides, s => Math.Abs(Math.Abs((s.Start - one).Cross(along)) - radius) <= DxfWrong.Together && Math.Abs(Math.Abs((s.End - one).Cross(along)) - radius) <= DxfWrong.Together)
            && Math.Abs(Turned(one) - Math.PI) <= HalfTurn && Math.Abs(Turned(other) - Math.PI) <= HalfTurn;
        return isSlot ? new(0.5 * (one + other), 2 * radius, null, new(along, travel)) : null;
    }

    // How far an end of a slot may be off half a turn (rad): what ends that are 0.05 mm apart make of it.
    private const double HalfTurn = 0.1;

    // Hollow half circles of the outline, in one arc or several.
    private static IEnumerable<Opening> Slots(Contour outline)
    {
        var segments = outline.Segments;
        for (var i = 0; i < segments.Length; i++)
        {
            if (segments[i] is not ArcSegment first || segments[(i + segments.Length - 1) % segments.Length] is ArcSegment before && IsSame(first, before))
            {
                continue;
            }

            var sweep = 0.0;
            for (var k = i; k < i + segments.Length && segments[k % segments.Length] is ArcSegment arc && IsSame(first, arc); k++)
            {
                sweep += arc.Sweep.Radians;
            }

            if (sweep < -Bottom.Radians)
            {
                yield return new(first.Centre, 2 * first.Radius, -Vector2.FromPolar(1, first.From + new Angle(sweep / 2)));
            }
        }
    }

    private static bool IsSame(ArcSegment one, ArcSegment other) => one.Centre.DistanceTo(other.Centre) < DxfWrong.Together && Math.Sign(one.Sweep.Radians) == Math.Sign(other.Sweep.Radians);

    private static DrawnPath Scaled(DrawnPath drawn, double unit) => drawn with { Points = [.. drawn.Points.Select(p => p with { At = unit * p.At })] };
}
