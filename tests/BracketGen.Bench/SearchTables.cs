using System.Diagnostics;
using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Profiles;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;

namespace BracketGen.Bench;

/// <summary>What one job's search costs, and how that grows with the number of candidates.</summary>
internal static class SearchTables
{
    private const int Runs = 15;

    // Until then the run time compiles, in threads of its own that would be counted too.
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(4);

    /// <summary>Every example, then the main one with more and more sheets in stock.</summary>
    public static void Write(TextWriter output)
    {
        if (OperatingSystem.IsLinux())
        {
            Process.GetCurrentProcess().ProcessorAffinity = 1;
        }

        output.WriteLine("Processor time of one core, least of 15, without finite elements: candidates, checks, ranking, mechanism.");
        output.WriteLine();
        output.WriteLine("| job | candidates | ms | µs a candidate |");
        output.WriteLine("|---|---|---|---|");
        foreach (var file in Directory.GetFiles(RepositoryRoot.PathOf("profiles", "jobs"), "*.toml").Order(StringComparer.Ordinal))
        {
            Row(output, Path.GetFileNameWithoutExtension(file), Read(file));
        }

        var job = Read(RepositoryRoot.PathOf("profiles", "jobs", "plover-alder-58.toml"));
        job = job with { Preferences = job.Preferences with { Materials = [], MinThickness = 1.5 } };
        foreach (var copies in new[] { 1, 2, 4, 8 })
        {
            // The same sheets again under other names: as many more candidates, of the same kind.
            var stock = Enumerable.Range(0, copies).SelectMany(i => job.Shop.Stock.Select(s => s with
            {
                Material = s.Material with { Designation = $"{s.Material.Designation} {i}" },
            }));
            Row(output, $"plover-alder-58, {copies} times the stock", job with { Shop = job.Shop with { Stock = [.. stock] } });
        }
    }

    private static Job Read(string file) => ProfileReader.ReadJob(file, new DiskFileSource()).Value!;

    private static void Row(TextWriter output, string name, Job job)
    {
        var candidates = 0;
        for (var began = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(began) < WarmUp;)
        {
            candidates = new CandidatePool(job).Count;
        }

        var least = double.PositiveInfinity;
        for (var run = 0; run < Runs; run++)
        {
            var before = Process.GetCurrentProcess().TotalProcessorTime;
            Designer.Solve(job);
            least = Math.Min(least, (Process.GetCurrentProcess().TotalProcessorTime - before).TotalMilliseconds);
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {candidates} | {least:0.0} | {1000 * least / candidates:0.0} |"));
    }
}
