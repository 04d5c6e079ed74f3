using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Inputs;

/// <summary>A flat ring of sheet under the heads of the throttle body's own flange bolts; its top is the mount face, and the mount holes lie in it.</summary>
/// <param name="Sheet">What it is cut from.</param>
/// <param name="BoreCentre">Middle of its bore (mm), anywhere along the bore's axis.</param>
/// <param name="BoreRadius">Radius about that axis that must stay free (mm): of the widest thing that stands in the bore or that the ring goes over.</param>
/// <param name="Bolts">The flange bolts, at least two.</param>
public sealed record AdapterRing(Stock Sheet, ThrottlePoint BoreCentre, double BoreRadius, ImmutableArray<FlangeBolt> Bolts) : IMirrored<AdapterRing>
{
    /// <summary>Thickness (mm).</summary>
    public double Thickness => Sheet.Thickness;

    /// <summary>Limit deviation of the thickness (mm, either way): hot rolled sheet up to 8 mm, EN 10051 (from memory, the widest of its columns for narrow strip).</summary>
    public const double ThicknessDeviation = 0.3;

    /// <summary>Name of a flange bolt by its index: F1, F2.</summary>
    public static string BoltName(int index) => FormattableString.Invariant($"F{index + 1}");

    /// <summary>
    /// The screw for a flange bolt with the ring under its head: today's bolt where enough of its thread is left, otherwise the shortest longer one that goes as deep as it must; today's where no length of the standard is long enough.
    /// </summary>
    /// <param name="bolt">The bolt.</param>
    /// <param name="mount">The mount: property class, friction, and the metal that the bolts are screwed into.</param>
    public MountScrew ScrewFor(FlangeBolt bolt, MountFace mount)
    {
        var needed = MountScrew.LeastEngagement * bolt.Thread.Diameter;
        double Left(double length) => bolt.Engagement + length - bolt.Length - Thickness;
        var length = Left(bolt.Length) >= needed - Tolerance.LimitSlack ? bolt.Length
            : MountScrew.NominalLengths(bolt.Thread).FirstOrDefault(l => l > bolt.Length && Left(l) >= needed - Tolerance.LimitSlack, bolt.Length);
        return new(bolt.Thread, length, Math.Max(0, Left(length)))
        {
            Class = mount.ScrewClass is { } named && named.IsFor(bolt.Thread) ? named : SheetMetal.Fasteners.ScrewClass.UsualFor(bolt.Thread),
            Friction = mount.ScrewFriction,
            Boss = mount.Boss,
        };
    }

    /// <inheritdoc/>
    public AdapterRing Mirrored() => this with { BoreCentre = BoreCentre.Mirrored(), Bolts = [.. Bolts.Select(b => b with { At = b.At.Mirrored() })] };

    /// <inheritdoc/>
    public bool Equals(AdapterRing? other) => other is not null && Sheet == other.Sheet && BoreCentre == other.BoreCentre && BoreRadius == other.BoreRadius && Bolts.SequenceEqual(other.Bolts);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Sheet, BoreCentre, BoreRadius, Bolts.Length);
}

/// <summary>A bolt that holds the throttle body's flange, screwed into what lies under it.</summary>
/// <param name="At">Its axis where its head or washer bears on the flange today (mm).</param>
/// <param name="Thread">Its thread.</param>
/// <param name="Length">Its nominal length (mm).</param>
/// <param name="Engagement">How deep it is screwed in today (mm).</param>
public sealed record FlangeBolt(ThrottlePoint At, FastenerThread Thread, double Length, double Engagement)
{
    /// <summary>How far each coordinate of its place may be off.</summary>
    public PointPlusMinus PlusMinus { get; init; }

    /// <summary>Depth of full thread that it is screwed into (mm); null where nobody measured it.</summary>
    public double? ThreadDepth { get; init; }
}
