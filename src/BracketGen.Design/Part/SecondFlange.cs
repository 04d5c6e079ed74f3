using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.Design.Part;

/// <summary>The second mount flange: bent off the mount flange where the second face meets the mount face, it lies on the second face and takes its bolts.</summary>
/// <remarks>Both faces, the sheet and the radius it is bent to settle where its bend lies: it is the same in every bracket of a sheet and a die.</remarks>
/// <param name="Joint">Its bend.</param>
/// <param name="Bolts">Its bolt holes, flat coordinates (mm); the number of its flange depends on the bracket.</param>
/// <param name="Metal">What must have metal around them (mm).</param>
public sealed record SecondFlange(Joint Joint, ImmutableArray<BracketHole> Bolts, IReadOnlyList<Disc> Metal)
{
    /// <summary>The flange of a sheet; null where the mount has no second face, and where a hole of either face lies too near the bend.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="insideRadius">Inside radius of the bend (mm).</param>
    /// <param name="rule">Its bend rule.</param>
    public static SecondFlange? Of(SheetOnMount sheet, double insideRadius, BendRule rule) =>
        Between(sheet, insideRadius, rule) is { } flange && flange.RoomOn(sheet) >= -Tolerance.OnLimit ? flange : null;

    /// <summary>
    /// Flat width (mm) left between the metal of the nearest hole and the straight edge beside the bend; negative where that is missing. NaN where the mount has no second face, or none that
    /// a bend leads to.
    /// </summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="insideRadius">Inside radius of the bend (mm).</param>
    /// <param name="rule">Its bend rule.</param>
    public static double Room(SheetOnMount sheet, double insideRadius, BendRule rule) => Between(sheet, insideRadius, rule)?.RoomOn(sheet) ?? double.NaN;

    /// <summary>The flange's bend, as long as the metal round its bolts is wide, with the number of the flange that it makes.</summary>
    internal Bend BendTo(int flange)
    {
        var along = Joint.Along;
        return Joint.ToBend(0, Metal.Min(d => d.Centre.Dot(along) - d.Radius), Metal.Max(d => d.Centre.Dot(along) + d.Radius)) with { To = flange };
    }

    /// <summary>Whether all of it lies behind the lines of the bracket's other bends and they behind its own: what a point of the flat belongs to is then plain.</summary>
    /// <param name="bends">All bends.</param>
    /// <param name="discs">What must have metal on each flange.</param>
    /// <param name="second">Number of its flange.</param>
    internal static bool IsApart(IReadOnlyList<Bend> bends, IReadOnlyList<IReadOnlyList<Disc>> discs, int second)
    {
        var own = bends[second - 1];
        for (var i = 0; i < bends.Count; i++)
        {
            var other = bends[i];
            if (i != second - 1 && (Reaches(other, own) || Reaches(own, other)
                || discs[second].Any(d => ReachesPast(other, d)) || discs[other.To].Any(d => ReachesPast(own, d))))
            {
                return false;
            }
        }

        return true;
    }

    private static bool ReachesPast(Bend bend, Disc disc) => bend.Depth(new(disc.Centre)) + disc.Radius > Tolerance.OnLimit;

    // An end of a bend's strip past another bend's line.
    private static bool Reaches(Bend bend, Bend other) =>
        new[] { other.Start, other.End }.Any(e => Math.Max(bend.Depth(e), bend.Depth(e + other.Allowance * other.Across)) > Tolerance.OnLimit);

    private double RoomOn(SheetOnMount sheet)
    {
        double Depth(Disc disc) => (disc.Centre - Joint.Point.Vector).Dot(Joint.Across);
        return Math.Min(Metal.Min(d => Depth(d) - d.Radius) - Joint.Allowance, sheet.BoltMetal.Min(d => -Depth(d) - d.Radius)) - sheet.Straight;
    }

    private static SecondFlange? Between(SheetOnMount sheet, double insideRadius, BendRule rule)
    {
        var (mount, stock) = (sheet.Mount, sheet.Stock);
        if (mount.Second is not { } face || Joint.Between(sheet.Frame, face.Plane, mount.IsInsideCorner, stock.Thickness, insideRadius, rule) is not { } joint)
        {
            return null;
        }

        ImmutableArray<BracketHole> bolts =
        [
            .. mount.Holes.Select((hole, i) => (hole, i)).Where(h => h.hole.IsOnSecond).Select(h => BracketShape.BoltHole(h.hole, h.i, joint.Next.ToFlat(mount.FootOf(h.hole)), stock, null)),
        ];
        return new(joint, bolts, [.. bolts.Select(b => new Disc(b.Centre.Vector, b.MetalRadius))]);
    }
}
