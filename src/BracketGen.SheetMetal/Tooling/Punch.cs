using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Tooling;

/// <summary>A punch of the press brake: the upper tool.</summary>
/// <remarks>
/// It is as long as any bend. Its section stands with the bottom of the rounded tip at (0, 0) and reaches up to the beam.
/// </remarks>
public sealed record Punch
{
    private readonly ImmutableArray<SectionPoint> _profile;

    private Punch(string name, double height, Angle angle, double tipRadius, ImmutableArray<SectionPoint> profile)
    {
        (Name, Height, Angle, TipRadius, _profile) = (name, height, angle, tipRadius, profile);
        Parts = [.. ConvexParts.Of([.. profile.Select(p => p.Vector)]).Select(p => p.ToImmutableArray())];
        IsSymmetric = profile.All(p => profile.Any(q => Math.Abs(p.Across + q.Across) < Tolerance.SameSize && Math.Abs(p.Up - q.Up) < Tolerance.SameSize));
    }

    /// <summary>Name in the shop.</summary>
    public string Name { get; }

    /// <summary>Height (mm) from the tip to the beam.</summary>
    public double Height { get; }

    /// <summary>Included angle of the tip.</summary>
    public Angle Angle { get; }

    /// <summary>Radius of the tip (mm).</summary>
    public double TipRadius { get; }

    /// <summary>The section, counter-clockwise (mm), the rounded tip as short straight pieces inside it.</summary>
    public ImmutableArray<SectionPoint> Profile => _profile;

    /// <summary>Force per length (N/mm, the same as kN/m) that it stands.</summary>
    public double MaxForce { get; init; } = 1000;

    /// <summary>How its dimensions are known: assumed, or given by the shop.</summary>
    public Evidence Evidence { get; init; } = Evidence.Given;

    /// <summary>Whether front and back are the same, so that turning it round changes nothing.</summary>
    public bool IsSymmetric { get; }

    /// <summary>The section as convex polygons, counter-clockwise (mm).</summary>
    internal ImmutableArray<ImmutableArray<Vector2>> Parts { get; }

    /// <summary>A straight punch: a wedge up to the body's width, then straight up.</summary>
    /// <param name="name">Name in the shop.</param>
    /// <param name="height">Height (mm), positive.</param>
    /// <param name="angle">Included angle of the tip, 10° to 170°.</param>
    /// <param name="tipRadius">Radius of the tip (mm), positive.</param>
    /// <param name="bodyWidth">Width of the body (mm), more than that of the rounded tip.</param>
    /// <exception cref="ArgumentException">A dimension is out of its range, or the wedge is higher than the punch.</exception>
    public static Punch Straight(string name, double height, Angle angle, double tipRadius, double bodyWidth)
    {
        var half = bodyWidth / 2;
        return WithBody(name, height, angle, tipRadius, [new(half, FlankAt(half, angle, tipRadius)), new(half, height), new(-half, height), new(-half, FlankAt(half, angle, tipRadius))]);
    }

    /// <summary>A gooseneck punch of plain dimensions: its neck is set back so that a flange already up finds room beside it.</summary>
    /// <remarks>The throat opens towards positive <see cref="SectionPoint.Across"/>. In parts of the height: nose to 0.1, neck set back by 0.12 from 0.33 to 0.52.</remarks>
    /// <param name="name">Name in the shop.</param>
    /// <param name="height">Height (mm), positive.</param>
    /// <param name="angle">Included angle of the tip, 60° to 170°.</param>
    /// <param name="tipRadius">Radius of the tip (mm), positive.</param>
    /// <exception cref="ArgumentException">A dimension is out of its range.</exception>
    public static Punch Gooseneck(string name, double height, Angle angle, double tipRadius)
    {
        double nose = 0.06 * height, flank = FlankAt(nose, angle, tipRadius);
        return WithBody(
            name, height, angle, tipRadius,
            [
                new(nose, flank), new(nose, Math.Max(flank, 0.1 * height)), new(-0.12 * height, 0.33 * height), new(-0.12 * height, 0.52 * height),
                new(0.1 * height, 0.74 * height), new(0.1 * height, height), new(-0.1 * height, height), new(-0.25 * height, 0.75 * height),
                new(-0.25 * height, 0.3 * height), new(-nose, flank),
            ]);
    }

    /// <summary>A punch of any section.</summary>
    /// <param name="name">Name in the shop.</param>
    /// <param name="height">Height (mm), positive.</param>
    /// <param name="angle">Included angle of the tip, 10° to 170°.</param>
    /// <param name="tipRadius">Radius of the tip (mm), positive.</param>
    /// <param name="body">
    /// The corners above the rounded tip (mm), counter-clockwise: from the upper end of the flank on the gauge's side to that of the flank
    /// in front. The two flanks run from the tip to the first and the last corner.
    /// </param>
    /// <exception cref="ArgumentException">A dimension is out of its range, or the corners make no outline of a punch of that height.</exception>
    public static Punch WithBody(string name, double height, Angle angle, double tipRadius, IReadOnlyList<SectionPoint> body)
    {
        if (!(height > 0) || !(tipRadius > 0) || !(angle.Degrees is >= 10 and <= 170))
        {
            throw new ArgumentException($"A punch has a height and a tip radius above 0 and an angle of 10° to 170°, not {height} mm, {tipRadius} mm and {angle}.", nameof(height));
        }

        return IsBody(height, angle, tipRadius, body)
            ? new(name, height, angle, tipRadius, [.. Tip(angle, tipRadius), .. body])
            : throw new ArgumentException("The corners must lead round the punch counter-clockwise from one flank to the other and reach its height.", nameof(body));
    }

    /// <summary>Whether corners make the section of a punch for <see cref="WithBody"/>: counter-clockwise, beyond the tip on both sides, up to the height and not crossing.</summary>
    /// <param name="height">Height (mm), positive.</param>
    /// <param name="angle">Included angle of the tip, 10° to 170°.</param>
    /// <param name="tipRadius">Radius of the tip (mm), positive.</param>
    /// <param name="body">The corners above the tip (mm).</param>
    public static bool IsBody(double height, Angle angle, double tipRadius, IReadOnlyList<SectionPoint> body)
    {
        var tip = Tip(angle, tipRadius);
        return body.Count >= 2 && Math.Abs(body.Max(p => p.Up) - height) < Tolerance.SameSize
            && body[0].Across > tip[^1].Across && body[^1].Across < tip[0].Across && IsSimple([.. tip, .. body]);
    }

    /// <summary>Height (mm) at which the flanks of a punch reach the width of its body.</summary>
    /// <param name="angle">Included angle of the tip.</param>
    /// <param name="tipRadius">Radius of the tip (mm).</param>
    /// <param name="bodyWidth">Width of the body (mm).</param>
    public static double WedgeHeight(Angle angle, double tipRadius, double bodyWidth) => FlankAt(bodyWidth / 2, angle, tipRadius);

    /// <summary>Turned round, its back to the front.</summary>
    internal Punch Reversed() => new(Name, Height, Angle, TipRadius, [.. _profile.Select(p => new SectionPoint(-p.Across, p.Up)).Reverse()])
    {
        MaxForce = MaxForce,
        Evidence = Evidence,
    };

    /// <inheritdoc/>
    public bool Equals(Punch? other) => other is not null && Name == other.Name && Height == other.Height && Angle == other.Angle
        && TipRadius == other.TipRadius && MaxForce == other.MaxForce && Evidence == other.Evidence && _profile.SequenceEqual(other._profile);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Height, Angle, TipRadius, _profile.Length);

    // Height of a flank at a distance from the middle: its line touches the circle of the tip, whose bottom is at height 0.
    private static double FlankAt(double across, Angle angle, double tipRadius)
    {
        var (sin, cos) = Math.SinCos(angle.Radians / 2);
        return tipRadius - tipRadius / sin + across * cos / sin;
    }

    // The rounded tip from the front to the back.
    private static SectionPoint[] Tip(Angle angle, double radius)
    {
        const int pieces = 6;
        var half = Math.PI / 2 - angle.Radians / 2;
        return [.. Enumerable.Range(0, pieces + 1).Select(i =>
        {
            var (sin, cos) = Math.SinCos(half * (2.0 * i / pieces - 1));
            return new SectionPoint(radius * sin, radius * (1 - cos));
        })];
    }

    private static bool IsSimple(ImmutableArray<SectionPoint> profile)
    {
        double area = 0;
        for (var i = 0; i < profile.Length; i++)
        {
            Vector2 a = profile[i].Vector, b = profile[(i + 1) % profile.Length].Vector;
            area += a.Cross(b);
            for (var j = i + 2; j < profile.Length; j++)
            {
                Vector2 c = profile[j].Vector, d = profile[(j + 1) % profile.Length].Vector;
                if ((j + 1) % profile.Length != i && (b - a).Cross(c - a) * (b - a).Cross(d - a) < 0 && (d - c).Cross(a - c) * (d - c).Cross(b - c) < 0)
                {
                    return false;
                }
            }
        }

        return area > 0;
    }
}
