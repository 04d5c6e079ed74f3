using System.Diagnostics;
using System.Globalization;
using BracketGen.Strength;
using BracketGen.Strength.Tests;

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
        Row($"| size | nodes | deflection (mm) | mode 1 (Hz) | mode 2 (Hz) | mode 3 (Hz) | largest stress (MPa) |");
        Row($"|---|---|---|---|---|---|---|");
        foreach (var (size, hole, rows) in Sizes)
        {
            var p = LBracket.Part.Prepare(size, hole, rows);
            var r = p.Under(LBracket.Force);
            var m = p.LowestModes(3);
            Row($"| {size} | {p.Flat.Nodes.Length} | {r.AlongForce:F4} | {m[0].Frequency:F1} | {m[1].Frequency:F1} | {m[2].Frequency:F1} | {r.Solution.LargestStress:F1} |");
        }

        Row($"");
        Row($"### Time and growth (best of five, one core, ms)");
        Row($"");
        Row($"| nodes | numbers in L | mesh | factorise and solve | five modes | static and five modes |");
        Row($"|---|---|---|---|---|---|");
        foreach (var (size, hole, rows) in Sizes)
        {
            double mesh = double.PositiveInfinity, solve = mesh, modes = mesh, both = mesh;
            PreparedPart? p = null;
            for (var run = 0; run < 5; run++)
            {
                var flat = p?.Flat;
                var whole = Stopwatch.StartNew();
                p = LBracket.Part.Prepare(size, hole, rows);
                var prepared = whole.Elapsed.TotalMilliseconds;
                whole.Restart();
                var system = ShellSystem.Factorise(p.Model);
                system.Solve(SeatLoad.Spread(p.Flat, LBracket.Seat, LBracket.Force));
                var solved = whole.Elapsed.TotalMilliseconds;
                system.LowestModes(5);
                var all = whole.Elapsed.TotalMilliseconds;
                (mesh, solve) = (Math.Min(mesh, prepared - solved), Math.Min(solve, solved));
                (modes, both) = (Math.Min(modes, all - solved), Math.Min(both, all));
            }

            Row($"| {p!.Flat.Nodes.Length} | {p.System.FactorEntries} | {Math.Max(0, mesh):F0} | {solve:F0} | {modes:F0} | {both:F0} |");
        }
    }

    private static (double Size, double HoleSize, int Rows)[] Sizes =>
        [(5, 3, 3), (4, 2, 4), (3, 1.5, 4), (2, 1.2, 6), (1.42, 1, 8), (1, 0.7, 10), (0.7, 0.5, 12)];
}
