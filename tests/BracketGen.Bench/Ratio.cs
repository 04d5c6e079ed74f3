using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using BracketGen.Bench.Same;
using BracketGen.TestSupport;
using BracketGen.TestSupport.Comparison;

namespace BracketGen.Bench;

/// <summary>Times two releases on the same work, one run of each in turn, and prints how much longer the one after takes.</summary>
/// <remarks>
/// The runs alternate, so that whatever else the machine does meets both alike; each pair gives one ratio, and the median is printed.
/// Processor time is that of the process and its children as the system counts it (getrusage), on Unix only.
/// </remarks>
internal static partial class Ratio
{
    private const int WarmUps = 2;

    private readonly record struct Took(double Wall, double Processor);

    /// <summary>Prints the table.</summary>
    /// <param name="output">Where the table goes.</param>
    /// <param name="before">The program before.</param>
    /// <param name="after">The program after.</param>
    /// <param name="runs">Pairs of runs that are counted.</param>
    public static int Run(TextWriter output, ProgramUnderTest before, ProgramUnderTest after, int runs)
    {
        var folder = Directory.CreateTempSubdirectory("bracketgen-ratio-").FullName;
        try
        {
            var names = SameNumbers.Changes.Keys;
            string Side(string side) => Path.Combine(folder, side);
            var (old, fresh) = (KeyNames.Of(before, names, Side("before-keys")), KeyNames.Of(after, names, Side("after-keys")));
            Print(output, $"{runs} pairs each after {WarmUps} not counted, one run of each program in turn; {Environment.ProcessorCount} processors; load average {Load()} before");
            output.WriteLine();
            output.WriteLine("| command | wall before | wall after | ratio of wall | processor before | processor after | ratio of processor |");
            output.WriteLine("|---|---|---|---|---|---|---|");
            Row(output, "start-up: `--version`", runs, () => Time(before, ["--version"]), () => Time(after, ["--version"]));
            foreach (var file in Directory.GetFiles(RepositoryRoot.PathOf("profiles", "jobs"), "*.toml").Order(StringComparer.Ordinal))
            {
                var job = JobTables.Shipped(Path.GetFileNameWithoutExtension(file), names);
                var (one, other) = (job.Write(Path.Combine(Side("before"), job.Name), old), job.Write(Path.Combine(Side("after"), job.Name), fresh));
                void Command(string name, string[] options, bool writes)
                {
                    Took Of(ProgramUnderTest program, string path, string side) =>
                        Time(program, [name, path, .. options, .. writes ? new[] { "--into", Path.Combine(Side(side), "output") } : []]);
                    Row(output, $"`{string.Join(' ', [name, .. options])}` {job.Name}", runs, () => Of(before, one, "before"), () => Of(after, other, "after"));
                }

                Command("travel", [], writes: false);
                Command("make", ["--skip-strength"], writes: true);
                Command("make", [], writes: true);
            }

            output.WriteLine();
            Print(output, $"load average {Load()} after");
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Row(TextWriter output, string name, int runs, Func<Took> before, Func<Took> after)
    {
        var pairs = Enumerable.Range(0, WarmUps + runs).Select(_ => (Before: before(), After: after())).Skip(WarmUps).ToArray();
        string Half(Func<Took, double> of)
        {
            var ratio = Median(pairs.Select(p => of(p.After) / of(p.Before)));
            return string.Create(CultureInfo.InvariantCulture, $"{Median(pairs.Select(p => of(p.Before))):0.0} ms | {Median(pairs.Select(p => of(p.After))):0.0} ms | {ratio:0.000}");
        }

        output.WriteLine($"| {name} | {Half(t => t.Wall)} | {Half(t => t.Processor)} |");
    }

    private static Took Time(ProgramUnderTest program, string[] arguments)
    {
        var (began, used) = (Stopwatch.GetTimestamp(), ProcessorOfChildren());
        var (exitCode, errors) = program.Run(arguments);
        var took = new Took(Stopwatch.GetElapsedTime(began).TotalMilliseconds, ProcessorOfChildren() - used);
        return exitCode is 0 or 1 or 5 ? took : throw new InvalidOperationException($"{program.Path} ended with {exitCode}: {errors}");
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] ordered = [.. values.Order()];
        return (ordered[(ordered.Length - 1) / 2] + ordered[ordered.Length / 2]) / 2;
    }

    // User and system time (ms) of all children that have ended; not a number where the system does not count it.
    private static double ProcessorOfChildren() =>
        OperatingSystem.IsLinux() && ResourceUse(Children, out var use) == 0 ? (1000.0 * (use.UserSeconds + use.SystemSeconds)) + ((use.UserMicroseconds + use.SystemMicroseconds) / 1000.0) : double.NaN;

    private const int Children = -1;

    [LibraryImport("libc", EntryPoint = "getrusage")]
    private static partial int ResourceUse(int who, out Use use);

    // struct rusage of 64-bit Linux: two times, then fourteen counters.
    [StructLayout(LayoutKind.Sequential, Size = 18 * sizeof(long))]
    private struct Use
    {
        public long UserSeconds, UserMicroseconds, SystemSeconds, SystemMicroseconds;
    }

    private static void Print(TextWriter output, FormattableString text) => output.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    private static string Load() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "unknown";
}
