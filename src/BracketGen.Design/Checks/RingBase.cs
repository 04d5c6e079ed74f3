using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>The adapter ring of a job as strength sees it: a flat sheet held under the washers of the flange bolts, free of the flange elsewhere, with the bracket on its mount holes.</summary>
/// <remarks>The flange under it carries nothing: that makes it softer than it is. Of a job that opens counter-clockwise; thread-safe once made.</remarks>
internal sealed class RingBase
{
    // Edge lengths of the mesh (mm): away from holes and at them.
    private const double Size = 2.5, HoleSize = 0.8;

    private readonly MountFace _mount;
    private readonly PreparedPart _alone;
    private readonly Lazy<ImmutableArray<double>> _level;

    private RingBase(MountFace mount, RingShape shape, StrengthMetal metal)
    {
        (_mount, Shape, Metal) = (mount, shape, metal);
        var held = new FoldedPart
        {
            Flat = shape.Blank,
            MiddleSurface = p => shape.Frame.ToThrottle(p, -shape.Ring.Thickness / 2),
            Thickness = shape.Ring.Thickness,
            Material = metal.Sheet,
            Washers = [.. shape.Holes.Select(Washer)],
            Seat = Washer(shape.Holes[0]),
        };
        var mesh = held.Mesh(Size, HoleSize);
        ImmutableArray<Disc> bolts = [.. shape.Holes.Where(h => h.Purpose == RingHolePurpose.Flange).Select(Washer)];
        _alone = (held with { Washers = bolts, Seat = bolts[0] }).Prepare(mesh);
        var largest = shape.Holes.Where(h => h.Purpose == RingHolePurpose.Bracket).Select(h => h.Thread).MaxBy(t => t.Diameter)!;
        Base = new(held.Prepare(mesh), [.. mount.Holes.Select(mount.FootOf)], _alone.System.LowestModes(1)[0].Frequency)
        {
            JointMass = BoltMass(largest), JointInertia = BoltMass(largest) * BoltLength(largest) * BoltLength(largest) / 3,
        };
        _level = new(Level);
    }

    /// <summary>The ring of a job; null where it has none.</summary>
    public static RingBase? Of(Job job) => RingShape.Of(job.Body.Mount) is { } shape ? new(job.Body.Mount, shape, StrengthMetal.Of(job, shape.Ring.Sheet.Material)) : null;

    /// <summary>Its shape.</summary>
    public RingShape Shape { get; }

    /// <summary>Its metal.</summary>
    public StrengthMetal Metal { get; }

    /// <summary>What the bracket is bolted on.</summary>
    public ElasticBase Base { get; }

    /// <summary>Its lowest frequency with nothing on it (Hz).</summary>
    public double OwnFrequency => Base.OwnFrequency;

    /// <summary>Stress (MPa) at each node as the flange bolts draw faces level that lie 1 mm out of one plane, or more: as <see cref="StrengthStages"/> takes it for the bracket.</summary>
    public ImmutableArray<double> LevelStress => _level.Value;

    /// <summary>What the flange bolts must hold.</summary>
    /// <param name="ring">The ring under a load.</param>
    public JointLoad[] AtBolts(StaticSolution ring)
    {
        // Each share of the mount holes on a plane of its own: the flange bolts share out what is theirs alone.
        var flange = new Plane(_mount.Plane.Point - Shape.Ring.Thickness * _mount.Plane.Normal, _mount.Plane.Normal);
        var loads = new MountReactions(
            [.. Shape.Holes.Select(h => h.Purpose == RingHolePurpose.Bracket ? _mount.Plane : flange)], Base.Sheet,
            [.. Shape.Holes.Select(h => Shape.Frame.ToWorld(h.Centre.Vector, h.Purpose == RingHolePurpose.Bracket ? 0 : -Shape.Ring.Thickness))])
        {
            Slots = [.. Shape.Holes.Select(_ => Vector3.Zero)],
        }.Of(ring.Reactions);
        return loads[_mount.Holes.Length..];
    }

    /// <summary>The joints of the flange bolts.</summary>
    /// <param name="opening">The ring under the largest tension of an opening.</param>
    /// <param name="stamped">The ring under the proof load.</param>
    /// <param name="shaken">The ring as the mount's shaking loads it along each axis.</param>
    public IEnumerable<BoltedJoint> Joints(StaticSolution opening, StaticSolution stamped, IEnumerable<StaticSolution> shaken)
    {
        var (atOpening, atStamped) = (AtBolts(opening), AtBolts(stamped));
        var along = shaken.Select(AtBolts).ToArray();
        return RingChecks.Screws(_mount).Select((s, i) => new BoltedJoint(
            s.Name, new(s.Screw, s.Screw.Length - s.Screw.Engagement - s.Bolt.Thread.WasherThickness, s.Bolt.Thread.WasherDiameter / 2), s.Bolt.ThreadDepth,
            atOpening[i], atStamped[i], BoltedJoint.Worst([.. along.Select(a => a[i])]))
        {
            IsFlangeBolt = true,
        });
    }

    private static Disc Washer(RingHole hole) => new(hole.Centre.Vector, hole.Thread.WasherDiameter / 2);

    // Any bolt of a bracket's joint through the ring, its washers and nut (t, mm): steel, head and nut as cylinders across the flats, and no longer than this (our judgement, no source).
    private const double Steel = 7.85e-9;

    private static double BoltLength(FastenerThread thread) => 5 * thread.Diameter;

    private static double BoltMass(FastenerThread thread) => Steel * Math.PI / 4 * (
        thread.Diameter * thread.Diameter * BoltLength(thread)
        + thread.AcrossFlats * thread.AcrossFlats * (thread.HeadHeight + thread.NutHeight) * 1.2
        + 2 * thread.WasherDiameter * thread.WasherDiameter * thread.WasherThickness);

    private ImmutableArray<double> Level()
    {
        var level = new double[_alone.Flat.Nodes.Length];
        var washers = _alone.WasherNodes();
        foreach (var nodes in washers.Length == 2 ? washers[..1] : washers)
        {
            var stresses = _alone.Moved(nodes, _mount.Plane.Normal).Stresses;
            for (var n = 0; n < level.Length; n++)
            {
                level[n] += (washers.Length == 2 ? 1 : 0.5) * stresses[n].Largest;
            }
        }

        return [.. level];
    }
}
