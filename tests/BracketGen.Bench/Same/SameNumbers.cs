using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Sections;
using BracketGen.TestSupport;
using BracketGen.TestSupport.Comparison;

namespace BracketGen.Bench.Same;

/// <summary>Runs two releases on the same jobs and compares every number they write: result, cut files and solid model, and the exit codes.</summary>
internal static class SameNumbers
{
    /// <summary>The table of what may differ.</summary>
    public static Changes Changes { get; } = Changes.Parse(File.ReadAllText(RepositoryRoot.PathOf("tests", "BracketGen.Bench", "Same", "changes.toml")));

    private const int MaximumShown = 60;

    private static readonly (string Name, string[] Options)[] Ways = [("without strength", ["--skip-strength", "--kerf-compensated"]), ("whole", [])];

    private static readonly string[] Compared = ["result.json", "flat-pattern.dxf", "flat-pattern-kerf.dxf", "solid.step"];

    private sealed record Outcome(string Run, int Before, int After, IReadOnlyList<string> Files, Findings Findings);

    /// <summary>Compares two programs.</summary>
    /// <param name="output">Where the tables go.</param>
    /// <param name="before">The program before.</param>
    /// <param name="after">The program after.</param>
    /// <param name="jobs">How many random jobs beside the shipped ones.</param>
    /// <param name="strength">How many of them are also made with strength, which takes fifty times as long where a check fails.</param>
    /// <param name="seed">Seed of the random jobs.</param>
    /// <param name="keep">
    /// Folder in which inputs and outputs stay, and what the program before made there is used again; null to delete them.
    /// </param>
    /// <returns>0 where nothing differs but what may, otherwise 1.</returns>
    public static int Run(TextWriter output, ProgramUnderTest before, ProgramUnderTest after, int jobs, int strength, int seed, string? keep)
    {
        var folder = keep is null ? Directory.CreateTempSubdirectory("bracketgen-same-").FullName : Directory.CreateDirectory(keep).FullName;
        try
        {
            var names = Changes.Keys;
            var (old, fresh) = (KeyNames.Of(before, names, Path.Combine(folder, "before", "keys")), KeyNames.Of(after, names, Path.Combine(folder, "after", "keys")));
            output.WriteLine($"Key names: before {KeysOf(old)}, after {KeysOf(fresh)}.");
            JobTables[] all =
            [
                .. Directory.GetFiles(RepositoryRoot.PathOf("profiles", "jobs"), "*.toml").Order(StringComparer.Ordinal).Select(f => JobTables.Shipped(Path.GetFileNameWithoutExtension(f), names)),
                .. Enumerable.Range(1, jobs).Select(n => RandomJob.Make(seed, n, names)),
            ];
            var outcomes = new ConcurrentBag<Outcome>();
            var watch = Stopwatch.StartNew();
            var shipped = all.Length - jobs;
            Parallel.ForEach(all.Index(), new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, numbered =>
            {
                var (place, job) = numbered;
                string Side(string side) => Path.Combine(folder, side, job.Name);
                var (one, other) = (job.Write(Side("before"), old), job.Write(Side("after"), fresh));
                foreach (var (way, options) in Ways.Take(place < shipped + strength ? 2 : 1))
                {
                    string Into(string side) => Path.Combine(Side(side), way);
                    var left = new Making(options, one, Into("before")).MakeOnce(before);
                    Empty(Into("after"));
                    var right = new Making(options, other, Into("after")).Make(after);
                    outcomes.Add(Compare($"{job.Name}, {way}", left, right, Path.Combine(Into("before"), job.Name), Path.Combine(Into("after"), job.Name)));
                    if (keep is null)
                    {
                        Empty(Into("before"));
                        Empty(Into("after"));
                    }
                }
            });
            Outcome[] ordered = [.. outcomes.OrderBy(o => o.Run, StringComparer.Ordinal)];
            return Report(output, ordered, all.Length, seed, watch.Elapsed);
        }
        finally
        {
            if (keep is null)
            {
                Directory.Delete(folder, recursive: true);
            }
        }
    }

    private static void Empty(string folder)
    {
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Outcome Compare(string run, int before, int after, string old, string fresh)
    {
        var findings = new Findings();
        var files = new List<string>();
        if (!Changes.AllowsExit(before, after))
        {
            findings.Differ("exit code", "", "", CodeText(before), CodeText(after));
        }

        foreach (var file in Compared)
        {
            var (one, other) = (Path.Combine(old, file), Path.Combine(fresh, file));
            var (hasOld, hasNew) = (File.Exists(one), File.Exists(other));
            if (hasOld != hasNew)
            {
                findings.Differ(file, "", "", hasOld ? "written" : "not written", hasNew ? "written" : "not written");
            }

            if (hasOld && hasNew)
            {
                files.Add(file);
                Compare(file, File.ReadAllText(one), File.ReadAllText(other), findings);
            }
        }

        return new(run, before, after, files, findings);
    }

    private static void Compare(string file, string before, string after, Findings findings)
    {
        switch (Path.GetExtension(file))
        {
            case ".json":
                ResultComparison.Of(before, after, Changes, findings);
                break;
            case ".dxf":
                DxfComparison.Of(file, before, after, Changes, findings);
                break;
            default:
                StepComparison.Of(file, before, after, findings);
                break;
        }
    }

    private static int Report(TextWriter output, Outcome[] outcomes, int jobs, int seed, TimeSpan took)
    {
        output.WriteLine();
        output.WriteLine("| exit code before | after | runs |");
        output.WriteLine("|---|---|---|");
        foreach (var codes in outcomes.GroupBy(o => (o.Before, o.After)).OrderBy(g => g.Key))
        {
            output.WriteLine($"| {CodeText(codes.Key.Before)} | {CodeText(codes.Key.After)} | {codes.Count()} |");
        }

        output.WriteLine();
        output.WriteLine("| file | compared in runs |");
        output.WriteLine("|---|---|");
        foreach (var file in Compared)
        {
            output.WriteLine($"| {file} | {outcomes.Count(o => o.Files.Contains(file))} |");
        }

        List(output, "Only the program before writes these, as changes.toml says", outcomes.SelectMany(o => o.Findings.Gone));
        List(output, "Only the program after writes these", outcomes.SelectMany(o => o.Findings.Added));
        var differences = outcomes.SelectMany(o => o.Findings.Differences.Select(d => (o.Run, Difference: d))).ToArray();
        Differences(output, differences);
        if (outcomes.Where(o => o.Findings.Farthest is not null).MaxBy(o => o.Findings.Farthest!.Deviation) is { Findings.Farthest: { } farthest } most)
        {
            output.WriteLine();
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"Largest deviation: {farthest.Deviation:0.0E0} of the larger number (of 1 where both are smaller): {most.Run}, {farthest.File}, {farthest.Where}, before {farthest.Before}, after {farthest.After}."));
        }

        output.WriteLine();
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{jobs} jobs (seed {seed}), {outcomes.Length} runs, {outcomes.Sum(o => (long)o.Findings.Numbers)} numbers compared in {took.TotalMinutes:0.0} minutes: {differences.Length} differences in {outcomes.Count(o => o.Findings.Differences.Count > 0)} runs."));
        return differences.Length == 0 ? 0 : 1;
    }

    // Alike differences in one row: how many, the worst of them before and after.
    private static void Differences(TextWriter output, (string Run, Difference Difference)[] differences)
    {
        if (differences.Length == 0)
        {
            return;
        }

        output.WriteLine();
        output.WriteLine("| differences | runs | file | place | largest deviation | for example | before | after |");
        output.WriteLine("|---|---|---|---|---|---|---|---|");
        var kinds = differences.GroupBy(d => (d.Difference.File, d.Difference.Kind)).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).ToArray();
        foreach (var kind in kinds.Take(MaximumShown))
        {
            var (run, worst) = kind.MaxBy(d => d.Difference.Deviation ?? double.MaxValue);
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {kind.Count()} | {kind.Select(d => d.Run).Distinct().Count()} | {kind.Key.File} | {kind.Key.Kind} | {worst.Deviation:0.0E0} | {run}: {worst.Where} | {Short(worst.Before)} | {Short(worst.After)} |"));
        }

        if (kinds.Length > MaximumShown)
        {
            output.WriteLine();
            output.WriteLine($"{kinds.Length - MaximumShown} more kinds of difference are not shown.");
        }
    }

    private static void List(TextWriter output, string title, IEnumerable<string> paths)
    {
        string[] distinct = [.. paths.Distinct().Order(StringComparer.Ordinal)];
        if (distinct.Length > 0)
        {
            output.WriteLine();
            output.WriteLine($"{title}: {string.Join(", ", distinct)}.");
        }
    }

    private static string KeysOf(IReadOnlyDictionary<string, string> names) => names.Count == 0 ? "old" : $"new for {string.Join(", ", names.Keys.Order(StringComparer.Ordinal))}";

    private static string Short(string text) => text.Length > 60 ? $"{text[..57]}..." : text;

    private static string CodeText(int code) => code == Making.DidNotEnd ? "did not end" : code.ToString(CultureInfo.InvariantCulture);
}
