using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Cutting;

namespace BracketGen.Design.Checks;

/// <summary>The checks of a bracket that is bolted to two faces: it is held twice over, so its bend must follow both.</summary>
public static class SecondFaceChecks
{
    /// <summary>The checks that look at the flat pattern alone: room beside the bend, and room for the bend between the faces.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="mount">What it is bolted to.</param>
    public static IEnumerable<Check> OfFlat(Bracket bracket, MountFace mount)
    {
        if (mount.Second is not { } face || bracket.SecondBend is not { } bend)
        {
            yield break;
        }

        yield return new(CheckId.SecondFaceCorner, CornerRoom(bend, bracket.Stock.Thickness, face.CornerRadius ?? double.NaN, mount.IsInsideCorner), 0) { IsVariant = !mount.IsInsideCorner };
        yield return new(CheckId.SecondFaceLine, bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).Min(h => Beside(bend, h)) - BracketShape.StraightBesideBend(bracket.Stock.Thickness), 0);
    }

    /// <summary>The checks of what cutting, bending and measuring leave between the second mount flange and its face, once it is known how the bend is placed.</summary>
    /// <remarks>
    /// The mount flange lies on its face. As the bracket is offered up, the second mount flange is bent to the direction of its face: bend angle and the ± of that direction then count no more. Bend line and allowance, the
    /// place of the holes, and the ± of the holes of both faces each at its worst move it off its face and along it; their magnitudes are added. A gap closes as the bracket slides along the mount face
    /// in the play of its bolts, by the sine of the bend angle; shims fill the rest. What is along the second face its own holes take up.
    /// </remarks>
    /// <param name="bracket">The bracket.</param>
    /// <param name="mount">What it is bolted to.</param>
    /// <param name="process">How it is cut.</param>
    /// <param name="end">The outer's end.</param>
    public static IEnumerable<Check> OfBend(Bracket bracket, MountFace mount, CuttingProcess process, OuterEnd end)
    {
        if (mount.Second is not { } face || bracket.SecondBend is not { } bend)
        {
            yield break;
        }

        var closes = mount.OwnHoles.Min(h => h.Play) * Math.Abs(Math.Sin(bend.Turn.Radians));
        var deviations = bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt && h.Flange == bend.To)
            .Select(h => (Hole: h, Under: mount.Nearest(bracket.Folded.Fold(h.Centre, 0)), Off: OffFace(bracket, h, mount, face, process, end))).ToArray();
        var gap = deviations.MaxBy(d => d.Off.Gap);
        yield return new(CheckId.SecondFaceGap, Math.Max(0, gap.Off.Gap - closes), SecondFace.MostShim) { Subject = gap.Hole.Name };
        var along = deviations.MinBy(d => d.Under.Play - d.Off.Along);
        yield return new(CheckId.SecondFaceHoles, along.Off.Along, along.Under.Play) { Subject = along.Hole.Name };
    }

    /// <summary>How far at worst a hole of the second mount flange lies off its face, and along it from its threaded hole (mm).</summary>
    internal static (double Gap, double Along) OffFace(Bracket bracket, BracketHole hole, MountFace mount, SecondFace face, CuttingProcess process, OuterEnd end)
    {
        var normal = face.Plane.Normal;
        var at = bracket.Folded.Fold(hole.Centre, 0);
        var cut = HoleMaking.Of(bracket, hole, end, process).Position;
        var read = mount.Nearest(at).PlusMinus;
        var line = face.Along(mount.Plane);
        var (gap, along) = (read.Along(normal), cut + double.Hypot(read.Along(line), read.Along(normal.Cross(line))));
        void Add(Vector3 off)
        {
            var square = off.Dot(normal);
            (gap, along) = (gap + Math.Abs(square), along + (off - square * normal).Length);
        }

        // The angle comes first.
        foreach (var move in SecondFlangeTolerance.Moves(bracket, hole).Skip(1))
        {
            Add(move);
        }

        foreach (var (_, move, plusMinus, _) in SeatTolerances.MovedByMount(mount, at))
        {
            Add(plusMinus * move);
        }

        return (gap, along);
    }

    /// <summary>Room (mm) for a bend where two faces meet; negative where it does not fit, NaN where what is there was not measured.</summary>
    /// <remarks>
    /// In an inside corner the outside of the bend, rounded by its radius and the thickness, must clear the fillet. On an outside edge the inside of the bend must clear the edge's own rounding or chamfer, which begins
    /// R tan(A/2) from the line where the faces would meet.
    /// </remarks>
    /// <param name="bend">The bend.</param>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    /// <param name="cornerRadius">Radius of the fillet or of the edge, or width of the chamfer (mm).</param>
    /// <param name="isInside">Whether it is an inside corner.</param>
    public static double CornerRoom(Bend bend, double thickness, double cornerRadius, bool isInside) => isInside
        ? bend.InsideRadius + thickness - cornerRadius
        : cornerRadius - bend.InsideRadius * Math.Max(1, Math.Tan(bend.Turn.Magnitude.Radians / 2));

    // Flat width between the metal round a hole and the bend.
    private static double Beside(Bend bend, BracketHole hole) =>
        (hole.Flange == bend.To ? bend.Depth(hole.Centre) - bend.Allowance : -bend.Depth(hole.Centre)) - hole.MetalRadius;
}
