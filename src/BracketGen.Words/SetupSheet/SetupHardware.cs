using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Words.SetupSheet;

/// <summary>What is needed to fit the bracket, and how tight.</summary>
/// <param name="solution">A solution.</param>
/// <param name="bracket">Its bracket.</param>
public sealed class SetupHardware(Solution solution, Bracket bracket)
{
    private readonly SetupUnits _units = new(solution.Job.Units);

    /// <summary>The bolts, one kind for each thread, with the letters of their holes.</summary>
    public ImmutableArray<(MountScrew Bolt, ImmutableArray<string> Holes)> Bolts { get; } =
    [
        .. bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt)
            .GroupBy(h => ScrewOf(solution.Job.Body.Mount, bracket, h))
            .Select(g => (g.Key, g.Select(h => h.Name).ToImmutableArray())),
    ];

    /// <summary>Whether mount holes are slotted.</summary>
    public bool IsSlotted => bracket.Holes.Any(h => h.IsSlotted);

    /// <summary>Hole or slot of the stop.</summary>
    public string Opening => bracket.Stop.IsSlot ? "slot" : "hole";

    /// <summary>Heads of the parts list.</summary>
    public static IReadOnlyList<string> PartHeads { get; } = ["Item", "Count", "Part", "Size", "Where"];

    /// <summary>Heads of the table of torques.</summary>
    public static IReadOnlyList<string> TorqueHeads { get; } = ["Bolt", "Torque", "Thread in boss, at least", "of it used"];

    private static MountScrew ScrewOf(MountFace mount, Bracket bracket, BracketHole hole) =>
        mount.ScrewFor(mount.Nearest(bracket.Folded.Fold(hole.BoltAt, 0)) with { Thread = hole.Thread! }, bracket.Stock.Thickness);

    /// <summary>"M6 x 16".</summary>
    public static string Size(MountScrew bolt) => ScrewText.Size(bolt);

    /// <summary>The parts list.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Parts()
    {
        var document = solution.Job.Document;
        var cable = solution.Job.Vehicle.Cable;
        List<IReadOnlyList<string>> rows = [];
        void Add(int count, string part, string size, string where) =>
            rows.Add([(rows.Count + 1).ToString(CultureInfo.InvariantCulture), count.ToString(CultureInfo.InvariantCulture), part, size, where]);

        Add(1, "bracket", $"{document.PartNumber}{SetupText.Revision(document)}", $"{bracket.Stock.Material.Designation}, {_units.Size(bracket.Stock.Thickness)}, {ShopDrawing.DrawingText.Finish(bracket.Stock.Material.Finish, _units.System)}");
        foreach (var (count, part, size, where) in Bag())
        {
            Add(count, part, size, where);
        }

        Add(1, "cable of the vehicle", $"{Fitting(cable.Fitting)}; wire {_units.Size(cable.WireDiameter)}", $"{Opening} {bracket.Stop.Name} to the quadrant");
        if (cable.OuterEnd is NuttedEnd nutted)
        {
            Add(
                2, nutted is ThreadedAdjuster ? "adjuster locknut, with the cable" : "nut of the ferrule, with the cable", $"{PartTableText.Thread(nutted)}, {_units.Size(nutted.AcrossFlats)} across flats",
                $"each side of the sheet at {bracket.Stop.Name}");
        }

        if (cable.OuterEnd is ClippedFerrule clipped)
        {
            Add(1, "clip, new", $"for a nose of {_units.Size(clipped.NoseDiameter)}", $"groove of the ferrule at {bracket.Stop.Name}, on the quadrant's side");
        }

        return rows;
    }

    /// <summary>What goes into the bag beside the bracket: everything that bolts it on.</summary>
    public IEnumerable<(int Count, string Part, string Size, string Where)> Bag()
    {
        if (RingShape.Of(solution.Job.Body.Mount) is { } ring)
        {
            yield return (1, ShopDrawing.RingText.Name, ShopDrawing.RingText.Size(ring, _units.System), "under the heads of the flange bolts");
            foreach (var longer in RingChecks.Screws(solution.Job.Body.Mount).Where(s => s.Screw.Length > s.Bolt.Length).GroupBy(s => s.Screw))
            {
                yield return (longer.Count(), "flange bolt, longer than today's", ScrewText.Order(longer.Key), Phrases.List([.. longer.Select(s => s.Name)]));
            }
        }

        foreach (var (bolt, holes) in Bolts)
        {
            if (bolt.Fixing is not MountStud)
            {
                yield return (holes.Length, "hexagon bolt", ScrewText.Order(bolt), "holes " + Phrases.List(holes));
            }

            if (bolt.HasNut)
            {
                yield return (holes.Length, "hexagon nut", ScrewText.Nut(bolt), (bolt.Fixing is not MountStud ? "behind the flange at " : holes.Length == 1 ? "stud at " : "studs at ") + Phrases.List(holes));
            }

            if (bolt.Spacer is { } spacer)
            {
                yield return (holes.Length, "spacer, steel tube or turned", ScrewText.Spacer(spacer, _units.System), "under the bracket at " + Phrases.List(holes));
            }

            yield return (bolt.Washers * holes.Length, "plain washer", ScrewText.Washer(bolt.Thread, IsSlotted), bolt.Fixing switch
            {
                MountStud => "under each nut",
                ThroughHole => "under each head and each nut",
                _ => "under each head",
            });
        }
    }

    /// <summary>Torques, and the thread that the bosses must have.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Torques() =>
    [
        .. Bolts.Select(b => (IReadOnlyList<string>)
        [
            $"{Size(b.Bolt)}, {Phrases.List(b.Holes)}", _units.Torque(b.Bolt.Torque),
            .. b.Bolt.Fixing switch
            {
                ThroughHole => (string[])["none: a nut", ""],
                MountStud => [_units.Length(MountScrew.LeastEngagement * b.Bolt.Thread.Diameter), "by the stud"],
                _ => [_units.Length(b.Bolt.ThreadNeeded), _units.Length(b.Bolt.Engagement)],
            },
        ]),
    ];

    /// <summary>Where the torques come from, and what to do if a boss has less thread.</summary>
    public IEnumerable<string> TorqueNotes()
    {
        yield return "If the handbook of the throttle body gives a torque, use that one.";
        foreach (var (bolt, _) in Bolts)
        {
            if (bolt.HasNut)
            {
                yield return WithNut(bolt);
                continue;
            }

            yield return $"{Size(bolt)}: the bolt alone would take {_units.Torque(bolt.TorqueFor(bolt.ScrewPreload))} ({_units.Load(bolt.ScrewPreload)}); "
                + (bolt.IsLimitedByBoss ? "the thread of the boss limits the torque." : "the bolt limits the torque, not the thread of the boss.")
                + $" If the boss has only {_units.Size(bolt.Thread.Diameter)} of thread, use a shorter bolt and {_units.Torque(bolt.With(bolt.Thread.Diameter).Torque)}. If it has less, do not fit the bracket.";
        }

        if (Bolts.All(b => b.Bolt.Fixing is ThroughHole))
        {
            yield return $"M = F (0.16 P + 0.58 d2 µ + DKm µ / 2), VDI 2230 Blatt 1; {Friction()}. {LengthWithNut}";
            yield break;
        }

        yield return $"M = F (0.16 P + 0.58 d2 µ + DKm µ / 2), VDI 2230 Blatt 1; {Friction()}. "
            + $"The preload F is the smaller of {Phrases.Plain(100 * Tightening.Utilisation)} % of the yield of its class, torsion included (VDI 2230), and half of what strips the thread of the boss: "
            + $"FED-STD-H28/2 with the limits of {Phrases.List([.. Bolts.Select(b => b.Bolt.Thread.System == ThreadSystem.Inch ? "2A/2B" : "6g/6H").Distinct()])}, tip of 0.8 P off, {_units.Stress(solution.Job.Body.Mount.Boss.Shear)} shear strength ({solution.Job.Body.Mount.Boss.Name}, weaker grades, VDI 2230 table A9, from memory; the half: our judgement). "
            + (Bolts.Any(b => !b.Bolt.HasNut) ? $"Length: sheet, washer and at least {Phrases.Plain(MountScrew.LeastEngagement)} d of thread in aluminium (common practice, no source)." : "")
            + (Bolts.Any(b => b.Bolt.Fixing is ThroughHole) ? $"{(Bolts.Any(b => !b.Bolt.HasNut) ? " " : "")}{LengthWithNut}" : "");
    }

    private const string LengthWithNut = "Length of a bolt with a nut: sheet, flange, two washers, nut and two pitches (common practice, no source).";

    // A stud's own thread in the boss may be what limits it.
    private string WithNut(MountScrew bolt) => bolt.IsLimitedByBoss
        ? $"{Size(bolt)}: the nut alone would take {_units.Torque(bolt.TorqueFor(bolt.ScrewPreload))} ({_units.Load(bolt.ScrewPreload)}); the thread of the boss limits the torque, with the stud as deep in it as it sits."
        : $"{Size(bolt)}: {_units.Load(bolt.ScrewPreload)} with the middle friction. The torque is such that minimum friction and a wrench that reads {Phrases.Plain(100 * ClampedJoint.WrenchError)} % low do not stretch the {(bolt.Fixing is MountStud ? "stud" : "bolt")}: {Phrases.Plain(100 * Tightening.Utilisation)} % of the yield of its class. "
            + (bolt.Fixing is MountStud ? $"It is calculated as {ScrewText.Class(bolt.Class)}." : "Hold the head and turn the nut.");

    private string Friction()
    {
        var friction = solution.Job.Body.Mount.ScrewFriction;
        return $"µ = {Phrases.Plain(friction.Middle)}, " + friction switch
        {
            _ when friction == ScrewFriction.Usual => "steel dry or lightly oiled (its class B)",
            { Middle: < Tightening.Friction } => "waxed or greased (its class A)",
            _ => "stainless without grease (its class C)",
        };
    }

    private string Fitting(EndFitting fitting) => fitting.Kind switch
    {
        EndFittingKind.Ball => $"ball {_units.Size(fitting.Diameter)}",
        EndFittingKind.Nipple => $"nipple {_units.Size(fitting.Diameter)} x {_units.Size(fitting.Length)}",
        _ => $"barrel {_units.Size(fitting.Diameter)} x {_units.Size(fitting.Length)}",
    };
}
