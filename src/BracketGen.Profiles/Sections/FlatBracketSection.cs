using System.Collections.Immutable;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.Profiles.Sections;

/// <summary>A bracket's file that names a flat pattern in DXF, as far as it was read without that.</summary>
/// <param name="Known">What the file says itself.</param>
/// <param name="Pattern">Path of the flat pattern, from the file.</param>
/// <param name="Unit">Millimetres to the drawing's unit; null where the drawing says it.</param>
/// <param name="BendLayer">Layer of the bend lines; null for the usual one.</param>
/// <param name="CutLayers">Layers of what is cut; empty for the usual ones.</param>
/// <param name="Holes">Where a bolt hole is, with its place in the file, and the diameter where it was measured.</param>
/// <param name="Bends">Bend lines where they are given, allowance where it is, and the rest.</param>
/// <param name="StopOn">Where the stop's hole is in the drawing.</param>
/// <param name="StopSize">Its diameter or width where it was measured.</param>
/// <param name="IsStopMeasured">Whether its place on the formed part was measured.</param>
/// <param name="Material">Place of the material.</param>
internal sealed record FlatBracketFile(
    MeasuredBracket Known, Located<string> Pattern, double? Unit, Located<string>? BendLayer, ImmutableArray<Located<string>> CutLayers, ImmutableArray<Located<(MeasuredHole Hole, bool HasSize)>> Holes,
    ImmutableArray<Located<FlatBend>> Bends, Located<FlatPoint> StopOn, Measured? StopSize, bool IsStopMeasured, Located<string> Material);

/// <summary>A bend of a drawn flat pattern, as far as its file says.</summary>
/// <param name="Line">Both ends of its bend line (mm); null for the next line of the bend layer.</param>
/// <param name="Allowance">What it takes up (mm) in a sheet of a thickness; null where nobody said.</param>
/// <param name="HasLinePlusMinus">Whether the ± of its corner line was given.</param>
/// <param name="Folded">Angle, direction and radius.</param>
internal sealed record FlatBend((FlatPoint Start, FlatPoint End)? Line, Func<double, double>? Allowance, bool HasLinePlusMinus, MeasuredBend Folded);

/// <summary>A bracket's file: one that is there already, or is offered, with its flat pattern in DXF.</summary>
internal static class FlatBracketSection
{
    /// <summary>The key that says that a bracket's file is of this kind.</summary>
    public const string PatternKey = "flat_pattern";

    private static readonly Key<Located<string>> Pattern = new(
        PatternKey, new LocatedForm<string>(new FileForm()), "Path of the flat pattern (DXF), from this file: outline, holes and bend lines, as cut.");

    private static readonly Key<double> Unit = new(
        "flat_pattern_unit", new WordForm<double>(("mm", 1), ("in", 25.4)), "Unit of the drawing, where the DXF does not say it ($INSUNITS).", isRequired: false);

    private static readonly Key<Located<string>> BendLayer = new(
        "bend_layer", new LocatedForm<string>(new TextForm(60)), "Layer of the bend lines. If left out: FOLD_LINE, where there is one.", isRequired: false);

    private static readonly Key<ImmutableArray<Located<string>>> CutLayers = new(
        "cut_layers", new ListForm<Located<string>>(new LocatedForm<string>(new TextForm(60)), 1, 20),
        "Layers of what is cut. If left out: CUT_THROUGH, where there is one, else all but the bend layer.", isRequired: false);

    private static readonly Key<FlatPoint> At = new("at", new FlangePointForm(), "Near the middle of the hole in the drawing.");

    private static readonly Key<Measured> Diameter = new(
        "diameter", new MeasuredForm(QuantityForm.Length(2, 40), 2), "Diameter as measured. If left out: that of the circle in the drawing. A hole that is drilled and not cut has none there.", isRequired: false);

    private static readonly Key<ImmutableArray<Located<(MeasuredHole, bool)>>> Holes = new(
        "holes", new ListForm<Located<(MeasuredHole, bool)>>(new LocatedForm<(MeasuredHole, bool)>(new Section<(MeasuredHole, bool)>([At, BracketSection.HolePlusMinus, Diameter], HoleOf)), 1, 12),
        "The holes of the mount flange that hold the bracket: H1, H2 in this order. Other holes of that flange follow them.");

    private static readonly Key<ImmutableArray<FlatPoint>> Line = new(
        "line", new ListForm<FlatPoint>(new FlangePointForm(), 2, 2),
        "Both ends of the bend line in the drawing, the middle of the bend. If left out: the next line on the bend layer, in the order of the drawing.", isRequired: false);

    private static readonly Key<double> Allowance = new("allowance", QuantityForm.Length(0.05, 200), "Bend allowance: length of flat sheet that becomes the bend.", isRequired: false);

    private static readonly Key<double> Deduction = new(
        "deduction", QuantityForm.Length(-100, 200), "Bend deduction: by how much the flat pattern is shorter than both flanges measured from the corner line.", isRequired: false);

    private static readonly Key<double> KFactor = new("k_factor", QuantityForm.Number(0, 0.7), "K factor of the bend. If none of bend allowance, bend deduction and K factor is given: Machinery's Handbook, assumed.", isRequired: false);

    private static readonly Key<ImmutableArray<Located<FlatBend>>> Bends = Key<ImmutableArray<Located<FlatBend>>>.WithDefault(
        "bends", new ListForm<Located<FlatBend>>(
            new LocatedForm<FlatBend>(new Section<FlatBend>(
                [Line, BracketSection.LinePlusMinus, BracketSection.Included, BracketSection.Up, BracketSection.Radius, Allowance, Deduction, KFactor], BendOf,
                [new([Line], CheckLine), new([Allowance, Deduction, KFactor], CheckAllowance)])), 0, 5),
        "The bends, one for each bend line. If left out: a flat plate.", []);

    private static readonly Key<Located<FlatPoint>> On = new(
        "on", new LocatedForm<FlatPoint>(new FlangePointForm()), "Near the middle of the stop's hole in the drawing, or of the round bottom of its slot.");

    private static readonly Key<Vector3> StopAt = new(
        "at", VectorForm.Point, "Middle of the stop's hole as measured on the formed part: x and y in the drawing's axes on the mount flange, z up from the mount face. If left out: where the drawing folds to.", isRequired: false);

    private static readonly Key<Measured> StopDiameter = new("diameter", new MeasuredForm(QuantityForm.Length(2, 60), 2), "Diameter as measured, or width of the slot. If left out: as drawn.", isRequired: false);

    private static readonly Key<(MeasuredOpening Opening, Located<FlatPoint> On, Measured? Size, bool IsMeasured)> Stop = new(
        "stop", new Section<(MeasuredOpening, Located<FlatPoint>, Measured?, bool)>(
            [On, StopAt, BracketSection.StopPlusMinus, StopDiameter, BracketSection.Direction, BracketSection.DirectionPlusMinus], StopOf),
        "The hole or slot that the outer sits in. Where its place is not measured, it is what the drawing folds to.");

    public static Section<FlatBracketFile> Form { get; } = new(
        [BracketSection.Name, BracketSection.Source, BracketSection.Price, BracketSection.Material, BracketSection.Thickness, Pattern, Unit, BendLayer, CutLayers, BracketSection.OutlinePlusMinus, Holes, Bends, Stop],
        v => new(
            new()
            {
                Name = v.Get(BracketSection.Name),
                Source = v.Get(BracketSection.Source),
                Price = v.OrNull(BracketSection.Price),
                Material = v.Get(BracketSection.Material).Value,
                Thickness = v.Get(BracketSection.Thickness),
                MountFlange = [],
                OutlinePlusMinus = v.Get(BracketSection.OutlinePlusMinus, MeasuredStop.UsualReading),
                IsOutlineAssumed = !v.Has(BracketSection.OutlinePlusMinus),
                Holes = [],
                Bends = [],
                Stop = v.Get(Stop).Opening,
            },
            v.Get(Pattern), v.OrNull(Unit), v.Has(BendLayer) ? v.Get(BendLayer) : null, v.Get(CutLayers, []), v.Get(Holes), v.Get(Bends), v.Get(Stop).On, v.Get(Stop).Size, v.Get(Stop).IsMeasured, v.Get(BracketSection.Material)));

    private static (MeasuredHole, bool) HoleOf(SectionValues v) => (
        new(v.Get(At), v.Get(Diameter, default).Value)
        {
            PlusMinus = v.Get(BracketSection.HolePlusMinus, MeasuredStop.UsualReading),
            DiameterPlusMinus = v.Get(Diameter, default).PlusMinus,
            IsAssumed = !v.Has(BracketSection.HolePlusMinus),
        }, v.Has(Diameter));

    private static FlatBend BendOf(SectionValues v)
    {
        var turn = new Angle(Math.PI - v.Get(BracketSection.Included).Value);
        var radius = v.Get(BracketSection.Radius).Value;
        double? allowance = v.OrNull(Allowance), deduction = v.OrNull(Deduction), k = v.OrNull(KFactor);
        Func<double, double>? source = allowance is { } length ? _ => length
            : deduction is { } less ? t => 2 * (radius + t) * Math.Tan(turn.Radians / 2) - less
            : k is { } factor ? t => new TestBendRule(factor, "").Allowance(turn, radius, t)
            : null;
        return new(v.Has(Line) ? (v.Get(Line)[0], v.Get(Line)[1]) : null, source, v.Has(BracketSection.LinePlusMinus), new()
        {
            From = 0,
            Start = default,
            End = default,
            Included = new(v.Get(BracketSection.Included).Value),
            IncludedPlusMinus = new(v.Get(BracketSection.Included).PlusMinus),
            IsUp = v.Get(BracketSection.Up),
            InsideRadius = radius,
            RadiusPlusMinus = v.Get(BracketSection.Radius).PlusMinus,
            LinePlusMinus = v.Get(BracketSection.LinePlusMinus, 0),
            IsAssumed = (!v.Has(BracketSection.LinePlusMinus), BracketSection.IsAssumed(v.Get(BracketSection.Included)), BracketSection.IsAssumed(v.Get(BracketSection.Radius)), false),
            Outline = [],
        });
    }

    private static (MeasuredOpening, Located<FlatPoint>, Measured?, bool) StopOf(SectionValues v)
    {
        var isMeasured = v.Has(StopAt);
        var at = v.Get(StopAt);
        return (new()
        {
            At = (new(at.XY), at.Z),
            PlusMinus = v.Get(BracketSection.StopPlusMinus, isMeasured ? MeasuredStop.UsualReading : DrawnFlat.StopPlusMinus),
            Size = v.Get(StopDiameter, default),
            Direction = v.Has(BracketSection.Direction) ? v.Get(BracketSection.Direction) : null,
            DirectionPlusMinus = v.Has(BracketSection.DirectionPlusMinus) ? new(v.Get(BracketSection.DirectionPlusMinus)) : v.Has(BracketSection.Direction) ? MeasuredBracket.UsualDirection : Angle.Zero,
            IsAssumed = (!v.Has(BracketSection.StopPlusMinus), !v.Has(BracketSection.DirectionPlusMinus)),
        }, v.Get(On), v.OrNull(StopDiameter), isMeasured);
    }

    private static void CheckLine(SectionValues values)
    {
        if (values.Has(Line) && values.Get(Line)[0].DistanceTo(values.Get(Line)[1]) < 1)
        {
            values.Report(Line, new Contradiction(Contradictory.BendLineEnds));
        }
    }

    private static void CheckAllowance(SectionValues values)
    {
        foreach (var second in new Key[] { Allowance, Deduction, KFactor }.Where(values.Has).Skip(1))
        {
            values.Report(second, new AlternativeTwice([Allowance.Name, Deduction.Name, KFactor.Name]));
        }
    }
}
