using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>One screw of the mount and what its joint must hold.</summary>
/// <param name="Hole">Name of the hole.</param>
/// <param name="Joint">The joint.</param>
/// <param name="ThreadDepth">Depth of full thread in the boss (mm); null where it is not known.</param>
/// <param name="Opening">What the largest tension of an opening puts on it, at the face of its boss.</param>
/// <param name="Stamped">What the pedal stamped on puts on it.</param>
/// <param name="Shaken">What the mount's shaking puts on it, in the worst direction.</param>
public sealed record BoltedJoint(string Hole, ClampedJoint Joint, double? ThreadDepth, JointLoad Opening, JointLoad Stamped, JointLoad Shaken)
{
    /// <summary>
    /// Acceleration (g) that stands in for the shaking of the mount where nothing is known of it: that of bracket and outer end, all of it at the stop, any way. The peak of the sine test for parts on a petrol engine in
    /// ISO 16750-3, 200 m/s² (from memory), without the bracket's own resonance.
    /// </summary>
    public const double AssumedShaking = 20;

    /// <summary>Whether it is a flange bolt of the throttle body that holds an adapter ring, and not a bolt of the bracket.</summary>
    public bool IsFlangeBolt { get; init; }

    /// <summary>What it puts on it that the bolts draw the gap down which is left under a second mount flange; nothing where there is none.</summary>
    public JointLoad Drawn { get; init; }

    /// <summary>What it must hold with the pedal stamped on.</summary>
    public JointLoad Held => Drawn == default ? Stamped : Stamped.Plus(Drawn);

    /// <summary>The screw, bolt or stud.</summary>
    public MountScrew Screw => Joint.Screw;

    /// <summary>The joints of a bracket.</summary>
    /// <param name="mount">The face it is bolted to, in the frame of <paramref name="prepared"/>.</param>
    /// <param name="bracket">The bracket.</param>
    /// <param name="prepared">The bracket meshed and factorised.</param>
    /// <param name="opening">Its response to the largest tension of an opening.</param>
    /// <param name="stamped">Its response to the proof load.</param>
    /// <param name="acceleration">Acceleration of bracket and outer end (g).</param>
    /// <param name="drawn">Its response as the bolts of the second mount flange draw it down; null where there is no such flange.</param>
    internal static ImmutableArray<BoltedJoint> Of(
        MountFace mount, Bracket bracket, PreparedPart prepared, StaticSolution opening, StaticSolution stamped, double acceleration,
        StaticSolution? drawn)
    {
        BracketHole[] holes = [.. bracket.Holes.Where(h => h.Thread is not null)];
        ImmutableArray<Plane> faces = [.. holes.Select(h => h.Flange > 0 && mount.Second is { } second ? second.Plane : mount.Plane)];
        var shares = new MountReactions(faces, prepared, [.. holes.Select((h, i) => faces[i].FootOf(prepared.Part.MiddleSurface(h.BoltAt).Vector))])
        {
            Slots = [.. holes.Select(h => bracket.Folded.Flanges[h.Flange].ToWorldDirection(Vector3.From((h.Outline as SlottedHole)?.Along ?? Vector2.Zero)))],
        };
        var swinging = Swinging(bracket, prepared, acceleration);
        var (atOpening, atStamped) = (shares.Of(opening.Reactions), shares.Of(stamped.Reactions));
        var atDrawn = drawn is null ? null : shares.Of(drawn.Reactions);
        JointLoad[][] along = [.. ((Vector3[])[new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)]).Select(a => shares.Of(prepared.ReactionsUnder(swinging * a)))];
        return
        [
            .. holes.Select((hole, i) =>
            {
                var boss = mount.Nearest(new(shares.Centres[i]));
                var screw = mount.ScrewFor(boss with { Thread = hole.Thread! }, bracket.Stock.Thickness);
                return new BoltedJoint(
                    hole.Name, new(screw, bracket.Stock.Thickness + boss.SpacerLength, Math.Min(hole.Thread!.WasherDiameter, boss.BossDiameter) / 2)
                    {
                        ClearanceHole = boss.Clearance,
                        Slot = hole.Outline is SlottedHole slot ? (hole.Diameter, Math.Max(0, slot.Travel / 2 - hole.Shift.Dot(slot.Along)), Math.Max(0, slot.Travel / 2 + hole.Shift.Dot(slot.Along))) : null,
                        FaceFriction = mount.FaceFriction,
                    },
                    boss.ThreadDepth,
                    atOpening[i].Below(boss.SpacerLength), atStamped[i].Below(boss.SpacerLength), Worst([.. along.Select(a => a[i])]).Below(boss.SpacerLength))
                {
                    Drawn = atDrawn is null ? default : (atDrawn[i] with { Pull = Math.Abs(atDrawn[i].Pull) }).Below(boss.SpacerLength), // It may be off either way.
                };
            }),
        ];
    }

    /// <summary>Force of bracket and outer end as they are shaken, all of it at the stop (N).</summary>
    internal static double Swinging(Bracket bracket, PreparedPart prepared, double acceleration) => (bracket.Mass + prepared.Part.SeatBody.Mass) * acceleration * Shaking.Gravity;

    /// <summary>No less than what a force of any direction puts on it, from those along three axes: by Schwarz's inequality the root of the squares' sum.</summary>
    internal static JointLoad Worst(JointLoad[] along)
    {
        double Root(Func<JointLoad, double> part) => Math.Sqrt(along.Sum(l => part(l) * part(l)));
        return new(Root(l => l.Pull), Root(l => l.Across), Root(l => l.Tilt), Root(l => l.Twist)) { Along = Root(l => l.Along) };
    }
}
