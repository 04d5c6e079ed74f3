using BracketGen.Fuzz.Tests;
using BracketGen.Strength.Tests;
using System.Globalization;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Strength.Parts;

namespace BracketGen.Bench;

/// <summary>How the published cases converge, and how time grows, as Markdown tables.</summary>
internal static class StrengthTables
{
    public static void WriteDeck(string file) =>
        File.WriteAllText(file, CalculixDeck.Write(LBracket.Part.Prepare(4, 2).Flat));

    public static void Write(TextWriter to)
    {
        void Row(FormattableString text) => to.WriteLine(text.ToString(CultureInfo.InvariantCulture));

        Row($"### Slender beams: found over published");
        Row($"");
        Row($"| elements | extension | in-plane shear | out-of-plane shear | twist | twist over Saint-Venant |");
        Row($"|---|---|---|---|---|---|");
        foreach (var n in (int[])[1, 2, 4, 8, 16, 24])
        {
            double Beam(BeamCase c) => BeamCases.Straight(c, Math.Max(6, 15 * n), n);
            var twist = Beam(BeamCase.Twist);
            Row($"| {Math.Max(6, 15 * n)} x {n} | {Beam(BeamCase.Extension) / 3e-5:F4} | {Beam(BeamCase.InPlaneShear) / 0.1081:F4} | {Beam(BeamCase.OutOfPlaneShear) / 0.4321:F4} | {twist / 0.03208:F4} | {twist / BeamCases.SaintVenantTwist:F4} |");
        }

        Row($"");
        Row($"### Curved and twisted beams: found over published");
        Row($"");
        Row($"| elements | curved, in plane | curved, out of plane | elements | twisted, in plane | twisted, out of plane |");
        Row($"|---|---|---|---|---|---|");
        foreach (var n in (int[])[1, 2, 4, 8, 12])
        {
            Row($"| {30 * n} x {n} | {BeamCases.Curved(BeamCase.InPlaneShear, 30 * n, n) / 0.08734:F4} | {BeamCases.Curved(BeamCase.OutOfPlaneShear, 30 * n, n) / 0.5022:F4} | {6 * n} x {n} | {BeamCases.Twisted(BeamCase.InPlaneShear, 6 * n, n) / 0.005424:F4} | {BeamCases.Twisted(BeamCase.OutOfPlaneShear, 6 * n, n) / 0.001754:F4} |");
        }

        Row($"");
        Row($"### Sheet bent to a quarter circle: found over theory of thin curved bars");
        Row($"");
        Row($"| rows | deflection |");
        Row($"|---|---|");
        foreach (var n in (int[])[2, 4, 8, 16, 32])
        {
            Row($"| {n} | {BeamCases.BentSheet(n):F4} |");
        }

        Row($"");
        Row($"### Cantilever square plate: ω a² √(ρh/D)");
        Row($"");
        Row($"| elements | 1 | 2 | 3 | 4 | 5 |");
        Row($"|---|---|---|---|---|---|");
        foreach (var n in (int[])[4, 8, 16, 24, 32, 48])
        {
            var f = PlateCases.CantileverSquare(n);
            Row($"| {n} x {n} | {f[0]:F3} | {f[1]:F3} | {f[2]:F3} | {f[3]:F3} | {f[4]:F3} |");
        }

        Row($"| published | 3.49 | 8.53 | 21.4 | 27.3 | 31.1 |");
        Row($"");
        Row($"### Edge-loaded cantilever plate: found over published");
        Row($"");
        Row($"| elements over the overhang | deflection at the load | stress at the clamped edge |");
        Row($"|---|---|---|");
        foreach (var n in (int[])[6, 12, 24, 36])
        {
            var (deflection, stress) = PlateCases.EdgeLoaded(n).At(0);
            Row($"| {n} | {deflection / 0.524:F4} | {stress / 0.509:F4} |");
        }

        Row($"");
        Row($"### L-bracket");
        Row($"");
        Row($"| size | nodes | deflection (mm) | mode 1 (Hz) | mode 2 (Hz) | mode 3 (Hz) | maximum stress (MPa) |");
        Row($"|---|---|---|---|---|---|---|");
        foreach (var (size, hole, rows) in Sizes)
        {
            var p = LBracket.Part.Prepare(size, hole, rows);
            var r = p.Under(LBracket.Force);
            var m = p.LowestModes(3);
            Row($"| {size} | {p.Flat.Nodes.Length} | {r.AlongForce:F4} | {m[0].Frequency:F1} | {m[1].Frequency:F1} | {m[2].Frequency:F1} | {r.Solution.LargestStress:F1} |");
        }

        Row($"");
        WriteGrowth(to);
    }

    public static void WriteGrowth(TextWriter to)
    {
        void Row(FormattableString text) => to.WriteLine(text.ToString(CultureInfo.InvariantCulture));

        Row($"### Time and growth (least of seven runs, one core, milliseconds of processor time)");
        Row($"");
        Row($"| nodes | numbers in L | mesh | fold and factorise | one load, stresses | five modes | without the mesh |");
        Row($"|---|---|---|---|---|---|---|");
        foreach (var (size, hole, rows) in Sizes)
        {
            var least = new double[5];
            Array.Fill(least, double.PositiveInfinity);
            PreparedPart p = null!;
            for (var run = 0; run < 7; run++)
            {
                var clock = Clock();
                double Lap(int column)
                {
                    var now = Clock();
                    var lap = now - clock;
                    least[column] = Math.Min(least[column], lap);
                    clock = now;
                    return lap;
                }

                var flat = LBracket.Part.Mesh(size, hole, rows);
                Lap(0);
                p = LBracket.Part.Prepare(flat);
                var sum = Lap(1);
                p.Under(LBracket.Force);
                sum += Lap(2);
                p.LowestModes(5);
                sum += Lap(3);
                least[4] = Math.Min(least[4], sum);
            }

            Row($"| {p.Flat.Nodes.Length} | {p.System.FactorEntries} | {least[0]:F0} | {least[1]:F0} | {least[2]:F0} | {least[3]:F0} | {least[4]:F0} |");
        }
    }

    // Processor time of the process, so that a busy machine does not show.
    private static double Clock() => Environment.CpuUsage.TotalTime.TotalMilliseconds;

    private static (double Size, double HoleSize, int Rows)[] Sizes =>
        [(5, 3, 3), (4, 2, 4), (3, 1.5, 4), (2, 1.2, 6), (1.42, 1, 8), (1, 0.7, 10), (0.7, 0.5, 12)];
}
