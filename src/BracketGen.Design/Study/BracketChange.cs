using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;

namespace BracketGen.Design.Study;

/// <summary>Something that is done to a bracket, or to how it is fitted.</summary>
public abstract record BracketChange
{
    /// <summary>How much of a change it is against others: less is done sooner (our judgement, no source).</summary>
    public abstract double Effort { get; }

    /// <summary>Job and bracket with it; null where it cannot be done.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bracket">The bracket, its mount flange in its own coordinates.</param>
    public abstract (Job Job, Bracket Bracket)? Apply(Job job, Bracket bracket);
}

/// <summary>The free play is set to another value with the adjuster.</summary>
/// <param name="From">What the job wants (mm).</param>
/// <param name="To">What is to be set (mm).</param>
public sealed record SetFreePlay(double From, double To) : BracketChange
{
    /// <inheritdoc/>
    public override double Effort => 0.05 + 0.02 * Math.Abs(To - From);

    /// <inheritdoc/>
    public override (Job Job, Bracket Bracket)? Apply(Job job, Bracket bracket) =>
        (job with { Preferences = job.Preferences with { FreePlay = job.Preferences.FreePlay with { Value = To } } }, bracket);
}

/// <summary>The bolt holes are opened by drilling.</summary>
/// <param name="From">Their smallest diameter (mm).</param>
/// <param name="To">What they are drilled to (mm).</param>
public sealed record OpenBoltHoles(double From, double To) : BracketChange
{
    /// <inheritdoc/>
    public override double Effort => 0.1 + 0.02 * (To - From);

    /// <inheritdoc/>
    public override (Job Job, Bracket Bracket)? Apply(Job job, Bracket bracket) =>
        (job, BracketEdit.WithHoles(bracket, h => h.Purpose == HolePurpose.Bolt && h.Diameter < To ? h with { Diameter = To, PlusMinus = 0 } : h));
}

/// <summary>The stop's hole is opened by drilling, or its slot by filing.</summary>
/// <param name="From">Its diameter or width (mm).</param>
/// <param name="To">What it is opened to (mm).</param>
/// <param name="IsSlot">Whether it is a slot.</param>
public sealed record OpenStop(double From, double To, bool IsSlot) : BracketChange
{
    /// <inheritdoc/>
    public override double Effort => 0.1 + 0.02 * (To - From);

    /// <inheritdoc/>
    public override (Job Job, Bracket Bracket)? Apply(Job job, Bracket bracket) =>
        BracketEdit.WithStop(bracket, To) is { } opened ? (job, opened) : null;
}

/// <summary>Washers or a plate under the mount flange, one under each bolt.</summary>
/// <param name="Thickness">How thick (mm).</param>
public sealed record PlateUnder(double Thickness) : BracketChange
{
    /// <summary>Thicknesses that are tried (mm): plain washers one on another, and plate.</summary>
    public static readonly ImmutableArray<double> Usual = [0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10];

    /// <inheritdoc/>
    public override double Effort => 0.2 + 0.04 * Thickness;

    /// <inheritdoc/>
    /// <remarks>The mount face comes up by as much, as if the bosses were higher.</remarks>
    public override (Job Job, Bracket Bracket)? Apply(Job job, Bracket bracket)
    {
        var mount = job.Body.Mount;
        var up = Thickness * mount.Plane.Normal;
        return (job with
        {
            Body = job.Body with
            {
                Mount = mount with { Plane = new(mount.Plane.Point + up, mount.Plane.Normal), Holes = [.. mount.Holes.Select(h => h with { At = h.At + up })] },
            },
        }, bracket);
    }
}

/// <summary>A bend is closed or opened a little.</summary>
/// <param name="Bend">Its number, from 0.</param>
/// <param name="From">Its included angle.</param>
/// <param name="To">What it is bent to.</param>
public sealed record BendFurther(int Bend, Angle From, Angle To) : BracketChange
{
    /// <inheritdoc/>
    public override double Effort => 0.3 + 0.03 * Math.Abs((To - From).Degrees);

    /// <inheritdoc/>
    public override (Job Job, Bracket Bracket)? Apply(Job job, Bracket bracket)
    {
        var bend = bracket.Flat.Bends[Bend];
        Angle turn = new(Math.CopySign(Math.PI - To.Radians, bend.Turn.Radians)), by = turn - bend.Turn;
        var (point, axis) = bracket.Folded.AxisOf(bend);
        var mount = bracket.Folded.Flanges[0];
        var measured = bracket.Measured;
        if (measured is { } m)
        {
            // What hangs on the bend turns with it, the stop as it was found.
            var seat = point.Vector + (mount.ToThrottle(m.Seat, m.Height) - point).Rotate(axis, by);
            var local = mount.ToLocal(seat);
            measured = m with { Seat = new(local.XY), Height = local.Z, Normal = mount.ToLocalDirection(mount.ToWorldDirection(m.Normal).Rotate(axis, by)) };
        }

        return (job, bracket with { Folded = new(bracket.Flat with { Bends = bracket.Flat.Bends.SetItem(Bend, bend with { Turn = turn }) }, mount), Measured = measured });
    }
}

/// <summary>A new hole for the stop is drilled in its flange beside the old one, which stays.</summary>
/// <param name="Along">How far it is moved along the bend of its flange, or along x on a flat plate (mm).</param>
/// <param name="Up">How far it is moved away from that bend, or along y (mm).</param>
/// <param name="Diameter">Its diameter (mm).</param>
/// <param name="At">Where its middle then lies at the seat: axes of the mount flange, z from the mount face (mm).</param>
/// <param name="IsPlate">Whether there is no bend.</param>
public sealed record RedrillStop(double Along, double Up, double Diameter, (FlatPoint On, double Height) At, bool IsPlate) : BracketChange
{
    /// <inheritdoc/>
    public override double Effort => 0.5 + 0.02 * Math.Sqrt(Along * Along + Up * Up);

    /// <inheritdoc/>
    public override (Job Job, Bracket Bracket)? Apply(Job job, Bracket bracket) => BracketEdit.Redrilled(bracket, Along, Up, Diameter) is { } redrilled ? (job, redrilled) : null;
}
