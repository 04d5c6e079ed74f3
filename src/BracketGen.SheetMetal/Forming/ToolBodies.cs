using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Forming;

/// <summary>Tools as convex bodies in the section (mm).</summary>
internal static class ToolBodies
{
    // How far beam and bed reach up and down (mm): more than any part is long.
    private const double Far = 1000;

    /// <summary>The punch, from end to end along the bend or between two places.</summary>
    public static IEnumerable<ConvexBody> Of(Punch punch, (double From, double To)? along = null) =>
        punch.Parts.Select(p => ConvexBody.Prism(Obstruction.Punch, Carrier.Beam, p, along));

    /// <summary>The punch with the way that it comes down: each part drawn out upwards to the beam.</summary>
    public static IEnumerable<ConvexBody> WayOf(Punch punch, (double From, double To)? along) => punch.Parts.Select(p => ConvexBody.Prism(
        Obstruction.Punch, Carrier.Beam, ConvexParts.Hull([.. p, .. p.Select(c => new Vector2(c.X, c.Y + punch.Height))]), along));

    public static ConvexBody Beam(PressBrake press, Punch punch) => ConvexBody.Box(
        Obstruction.Beam, Carrier.Beam, new(-press.BeamWidth / 2, punch.Height), new(press.BeamWidth / 2, punch.Height + Far));

    public static ConvexBody Bed(PressBrake press, PressBrakeDie die) => ConvexBody.Box(
        Obstruction.Bed, Carrier.Machine, new(-press.BedWidth / 2, -die.ShoulderHeight - Far), new(press.BedWidth / 2, -die.ShoulderHeight));

    /// <summary>The die as three bodies: beside the V on either side, and below it.</summary>
    public static IEnumerable<ConvexBody> Of(PressBrakeDie die, (double From, double To)? along = null)
    {
        double half = die.BodyWidth / 2, depth = Depth(die);
        var round = Shoulder(die);
        yield return Convex([new(0, -depth), new(half, -depth), new(half, 0), .. round]);
        yield return Convex([.. round.Reverse().Select(p => new Vector2(-p.X, p.Y)), new(-half, 0), new(-half, -depth), new(0, -depth)]);
        yield return ConvexBody.Box(Obstruction.Die, Carrier.Machine, new(-half, -die.ShoulderHeight), new(half, -depth), along);

        ConvexBody Convex(Vector2[] corners) => ConvexBody.Prism(Obstruction.Die, Carrier.Machine, corners, along);
    }

    /// <summary>The outline of the die, counter-clockwise.</summary>
    public static IEnumerable<Vector2> Outline(PressBrakeDie die)
    {
        var half = die.BodyWidth / 2;
        var round = Shoulder(die);
        return [new(-half, -die.ShoulderHeight), new(half, -die.ShoulderHeight), new(half, 0), .. round, new(0, -Depth(die)),
            .. round.Reverse().Select(p => new Vector2(-p.X, p.Y)), new(-half, 0)];
    }

    /// <summary>Clamp above, jaw or table below, and the beam that turns the flange up.</summary>
    public static IEnumerable<ConvexBody> Of(BendingClamp clamp, double thickness)
    {
        // The nose is round where the sheet is bent over it, and leans back from where the bend may end.
        var end = Math.PI - clamp.NoseAngle.Radians;
        Vector2[] nose = [.. BendStroke.Pieces(0, end).Select(a => new Vector2(clamp.Radius * Math.Sin(a), thickness + clamp.Radius * (1 - Math.Cos(a))))];
        var top = thickness + Math.Max(clamp.Height, 2 * clamp.Radius);
        var front = nose[^1].X - (top - nose[^1].Y) / Math.Tan(clamp.NoseAngle.Radians);
        var depth = Math.Max(clamp.Depth, NoWidth - front);
        yield return ConvexBody.Prism(Obstruction.Clamp, Carrier.Machine, [new(-depth, thickness), .. nose, new(front, top), new(-depth, top)]);
        yield return ConvexBody.Box(Obstruction.Clamp, Carrier.Machine, new(-depth, -clamp.Below), new(0, 0));
        if (clamp.BeamWidth > 0)
        {
            yield return ConvexBody.Box(Obstruction.Clamp, Carrier.Back, new(0, -BeamThickness), new(clamp.BeamWidth, 0));
        }
    }

    /// <summary>Depth of the V, from the top to where its faces meet.</summary>
    public static double Depth(PressBrakeDie die) => Math.Min(die.Opening / 2 / Math.Tan(die.Angle.Radians / 2), die.ShoulderHeight);

    // The rounded shoulder behind, from the top to the V's face, as short straight pieces inside it.
    private static Vector2[] Shoulder(PressBrakeDie die)
    {
        const int pieces = 4;
        var slope = (Math.PI - die.Angle.Radians) / 2;
        var radius = Math.Min(die.ShoulderRadius, die.Opening / 4);
        Vector2 centre = new(die.Opening / 2 + radius * Math.Tan(slope / 2), -radius);
        return [.. Enumerable.Range(0, pieces + 1).Select(i => centre + radius * new Vector2(-Math.Sin(slope * i / pieces), Math.Cos(slope * i / pieces)))];
    }

    // Thickness of the folding beam (mm; common practice, no source).
    private const double BeamThickness = 12;

    // A clamp is at least this much wider (mm) at its foot than it leans back.
    private const double NoWidth = 1;
}
