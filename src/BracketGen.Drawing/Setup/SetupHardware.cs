using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Drawing.Setup;

/// <summary>What is needed to fit the bracket, and how tight.</summary>
internal sealed class SetupHardware(Solution solution, Bracket bracket, SetupWords words)
{
    /// <summary>The screws, one kind for each thread, with the letters of their holes.</summary>
    public ImmutableArray<(BossScrew Screw, ImmutableArray<string> Holes)> Screws { get; } =
    [
        .. bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt)
            .GroupBy(h => h.Thread!)
            .Select(g => (BossScrew.For(g.Key, bracket.Stock.Thickness), g.Select(h => h.Name).ToImmutableArray())),
    ];

    /// <summary>«M6 x 16».</summary>
    public static string Size(BossScrew screw) => string.Create(CultureInfo.InvariantCulture, $"{screw.Thread.Name} x {screw.Length:0}");

    /// <summary>The parts list.</summary>
    public SheetBlock Parts()
    {
        var document = solution.Job.Document;
        var cable = solution.Job.Vehicle.Cable;
        List<string[]> rows = [];
        void Add(int count, string part, string size, string where) =>
            rows.Add([(rows.Count + 1).ToString(CultureInfo.InvariantCulture), count.ToString(CultureInfo.InvariantCulture), part, size, where]);

        var revision = document.Revision.Length > 0 ? $", revision {document.Revision}" : "";
        Add(1, "bracket", $"{document.PartNumber}{revision}", $"{bracket.Stock.Material.Designation}, {words.Size(bracket.Stock.Thickness)}");
        foreach (var (screw, holes) in Screws)
        {
            Add(holes.Length, "hexagon head screw", $"ISO 4017 - {Size(screw)} - 8.8", "holes " + List(holes));
            Add(holes.Length, "plain washer", string.Create(CultureInfo.InvariantCulture, $"ISO 7089 - {screw.Thread.Diameter:0} - 200 HV"), "under each head");
        }

        Add(1, "cable of the vehicle", $"{Fitting(cable.Fitting)}; wire {words.Size(cable.WireDiameter)}", $"{Opening} {bracket.Stop.Name} to the quadrant");
        if (cable.OuterEnd is ThreadedAdjuster adjuster)
        {
            Add(
                2, "adjuster nut, with the cable",
                string.Create(CultureInfo.InvariantCulture, $"M{adjuster.Thread:0.##} x {adjuster.Pitch:0.##}, {words.Size(adjuster.AcrossFlats)} across flats"),
                $"either side of the sheet at {bracket.Stop.Name}");
        }

        return SheetTable.Draw("", ["Item", "Count", "Part", "Size", "Where"], rows, [0, 1], maximumWidth: 55);
    }

    /// <summary>Torques, and the thread that the bosses must have.</summary>
    public SheetBlock TorqueTable()
    {
        var rows = Screws.Select(s => (IReadOnlyList<string>)
        [
            $"{Size(s.Screw)}, {List(s.Holes)}", words.Torque(s.Screw.Torque), words.Length(s.Screw.ThreadNeeded), words.Length(s.Screw.Engagement),
        ]).ToList();
        return SheetTable.Draw("", ["Screw", "Torque", "Thread in boss, at least", "of it used"], rows, [1, 2, 3], maximumWidth: 32);
    }

    /// <summary>Where the torques come from, and what if a boss has less thread.</summary>
    public IEnumerable<string> TorqueNotes()
    {
        yield return "A torque in the throttle body's own handbook goes before these.";
        foreach (var (screw, _) in Screws)
        {
            yield return $"{Size(screw)}: the screw alone would stand {words.Torque(screw.TorqueFor(screw.ScrewPreload))} ({words.Load(screw.ScrewPreload)}); "
                + (screw.IsLimitedByBoss ? "the boss's thread limits it." : "it limits the torque, not the boss's thread.")
                + $" With only {words.Size(screw.Thread.Diameter)} of thread in the boss: a shorter screw and {words.Torque(screw.With(screw.Thread.Diameter).Torque)}. With less, do not fit it.";
        }

        yield return $"M = F (0.16 P + 0.58 d2 µ + DKm µ / 2), VDI 2230 Blatt 1; µ = {Number(Tightening.Friction)}, steel dry or lightly oiled (its class B). "
            + $"F is the smaller of {Number(100 * Tightening.Utilisation)} % of the yield of class 8.8, torsion included (VDI 2230), and half of what strips the boss's thread: "
            + $"FED-STD-H28/2 with the limits of 6g/6H, tip of 0.8 P off, {words.Stress(BossScrew.BossShear)} shear strength (weaker casting alloys, VDI 2230 table A9, from memory; the half: our judgement). "
            + $"Length: sheet, washer and at least {Number(BossScrew.LeastEngagement)} d of thread in aluminium (common practice, no source).";
    }

    /// <summary>Hole or slot.</summary>
    public string Opening => bracket.Stop.IsSlot ? "slot" : "hole";

    /// <summary>«A», «A and B», «A, B and C».</summary>
    public static string List(IReadOnlyList<string> names) => names.Count < 2 ? names[0] : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";

    private string Fitting(EndFitting fitting) => fitting.Kind switch
    {
        EndFittingKind.Ball => $"ball {words.Size(fitting.Diameter)}",
        EndFittingKind.Nipple => $"nipple {words.Size(fitting.Diameter)} x {words.Size(fitting.Length)}",
        _ => $"barrel {words.Size(fitting.Diameter)} x {words.Size(fitting.Length)}",
    };

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
