using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Part;

/// <summary>How cutting, bending and bolting on move the outer's seat.</summary>
public static class SeatTolerances
{
    /// <summary>Limit deviation of a bend angle made on a press brake without correction (±1°, common practice, no source).</summary>
    /// <remarks>ISO 2768-1 m allows less on a leg longer than 10 mm; what a shop's first part does is wider, and it is what counts here.</remarks>
    public static readonly Angle BendAngle = Angle.FromDegrees(1);

    /// <summary>
    /// Every deviation of <paramref name="bracket"/> with the seat's shift in the groove's plane for one unit of it, found by
    /// folding the flat pattern again with the deviation in it.
    /// </summary>
    /// <remarks>
    /// Bend angle: <see cref="BendAngle"/>. Leg: the place of the bend line to the back gauge, ISO 2768-1 m by the leg's length. Cut:
    /// the stop's hole, ISO 9013, class 1 for laser and water jet and 2 for plasma (ISO 2768-1 m where its table has no
    /// value). Bolts: half the play in their clearance holes, both ways.
    /// </remarks>
    /// <param name="bracket">The bracket, in the frame of the throttle body that opens counter-clockwise.</param>
    /// <param name="process">How it is cut.</param>
    public static ImmutableArray<SeatTolerance> Of(Bracket bracket, CuttingProcess process)
    {
        var seat = bracket.FoldedSeat.Point;
        var flat = bracket.Flat;
        var all = ImmutableArray.CreateBuilder<SeatTolerance>();
        SeatTolerance Moved(string name, double step, double plusMinus, Bracket other) =>
            new(name, 1 / step * (other.FoldedSeat.Point - seat).XY, plusMinus);
        for (var i = 0; i < flat.Bends.Length; i++)
        {
            const double angle = DesignTolerance.AngleStep, length = DesignTolerance.LengthStep;
            var bend = flat.Bends[i];
            var leg = bend.Depth(bracket.Stop.Centre);
            var name = $"bend {i + 1}";
            all.Add(Moved($"{name}, angle", angle, BendAngle.Radians, Fold(bracket, flat.Bends.SetItem(i, bend with { Turn = bend.Turn + new Angle(angle) }))));
            all.Add(Moved(
                $"{name}, leg", length, GeneralTolerance.Linear(Math.Clamp(Math.Abs(leg), 0.5, 2000)),
                Fold(bracket, flat.Bends.SetItem(i, bend.Shift(length * bend.Across)))));
        }

        var cut = CutTolerance.Linear(
            process == CuttingProcess.Plasma ? 2 : 1, bracket.Stop.Diameter, flat.Thickness) ?? GeneralTolerance.Linear(Math.Clamp(bracket.Stop.Diameter, 0.5, 2000));
        var bolt = bracket.Holes[0];
        var play = bolt.Thread is { } thread ? Math.Max(0, bolt.Diameter - thread.Diameter) / 2 : 0;
        foreach (var (axis, way) in new[] { ("x", new Vector2(1, 0)), ("y", new Vector2(0, 1)) })
        {
            var holes = bracket.Holes.SetItem(bracket.Holes.Length - 1, bracket.Stop with { Centre = bracket.Stop.Centre + DesignTolerance.LengthStep * way });
            all.Add(Moved($"cut of the stop's hole, {axis}", DesignTolerance.LengthStep, cut, bracket with { Holes = holes }));
            all.Add(new($"bolts in their holes, {axis}", bracket.Folded.Flanges[0].ToWorldDirection(Vector3.From(way)).XY, play));
        }

        return all.ToImmutable();
    }

    private static Bracket Fold(Bracket bracket, ImmutableArray<Bend> bends) =>
        bracket with { Folded = new(bracket.Flat with { Bends = bends }, bracket.Folded.Flanges[0]) };
}
