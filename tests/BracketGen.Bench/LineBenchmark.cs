using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Pedals;
using BracketGen.Profiles;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Toml;
using BracketGen.Storage;
using BracketGen.TestSupport;

namespace BracketGen.Bench;

/// <summary>A product line of many variants of the shipped vehicles and throttle bodies: speed, growth, memory.</summary>
internal static class LineBenchmark
{
    private const int Options = 2, Materials = 2;

    public static int Run(TextWriter output, int count)
    {
        void Row(FormattableString text) => output.WriteLine(text.ToString(CultureInfo.InvariantCulture));

        var cores = Environment.ProcessorCount;
        Row($"{cores} processors; load average {Load()} before");
        Row($"");
        Solve(Family(100), cores, out _); // Not counted: the runtime compiles.
        Row($"| variants | pass | wall s | a second | processor ms each | a second on two undisturbed cores | live memory MB | largest working set MB |");
        Row($"|---|---|---|---|---|---|---|---|");
        foreach (var n in new[] { count / 8, count / 4, count / 2, count }.Where(n => n > 0).Distinct())
        {
            var family = Family(n);
            GC.Collect();
            var (wall, processor, most, passing) = Solve(family, cores, out var folder);
            using (folder)
            {
                var live = GC.GetTotalMemory(forceFullCollection: true) / 1e6;
                Row($"| {n} | {passing} | {wall:0.0} | {n / wall:0} | {1000 * processor / n:0.00} | {2 * n / processor:0} | {live:0} | {most / 1e6:0} |");
            }
        }

        Again(Row, count, cores);
        Row($"");
        Row($"load average {Load()} after");
        return 0;
    }

    // The same line again, unchanged; then its parts.
    private static void Again(Action<FormattableString> row, int count, int cores)
    {
        var family = Family(count);
        var combinations = FamilyCombinations.Of(family).Offered;
        Solve(family, cores, out var folder);
        using (folder)
        {
            var solver = SolverOf(family, combinations);
            var (began, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
            ImmutableArray<Made> made = [.. LineRun.Run(combinations, solver, folder.Combinations, cores, _ => { }, default).Select(m => m!)];
            row($"");
            row($"Unchanged: {Stopwatch.GetElapsedTime(began).TotalSeconds:0.0} s, {(Environment.CpuUsage.TotalTime - used).TotalSeconds:0.0} s of processor time.");
            (began, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
            var selection = FewestParts.Of(family, LineParts.Of(family, combinations, made), null, cores);
            row($"Fewest parts: {selection.Parts.Count} for {selection.Services.Count} variants, {selection.Tried} tried in full; {Stopwatch.GetElapsedTime(began).TotalSeconds:0.0} s, {(Environment.CpuUsage.TotalTime - used).TotalSeconds:0.0} s of processor time.");
        }
    }

    private static (double Wall, double Processor, double Most, int Passing) Solve(LoadedFamily family, int cores, out Place place)
    {
        place = new();
        var combinations = FamilyCombinations.Of(family).Offered;
        var solver = SolverOf(family, combinations);
        var most = 0L;
        var (began, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
        var made = LineRun.Run(combinations, solver, place.Combinations, cores, p =>
        {
            if (p.Done % 50 == 0)
            {
                InterlockedMost(ref most, Environment.WorkingSet);
            }
        }, default);
        var (wall, processor) = (Stopwatch.GetElapsedTime(began).TotalSeconds, (Environment.CpuUsage.TotalTime - used).TotalSeconds);
        return (wall, processor, most, made.Count(m => m!.HasPart));
    }

    private static void InterlockedMost(ref long most, long now)
    {
        var seen = Volatile.Read(ref most);
        while (now > seen && Interlocked.CompareExchange(ref most, now, seen) is var found && found != seen)
        {
            seen = found;
        }
    }

    private static CombinationSolver SolverOf(LoadedFamily family, ImmutableArray<Combination> combinations) => new(
        family, new(family, "bench"),
        NumberPlan.Of(family.Family.Name, family.Family.Numbers, combinations, Register.Empty(family.Family.Name)).Plan!, null, null);

    // Vehicles and bodies in proportion, so that the line grows in both; every variant is a little different from every other.
    private static LoadedFamily Family(int count)
    {
        var shipped = FamilyReader.Read(RepositoryRoot.PathOf("profiles", "families", "estuary.toml"), new DiskFileSource()).Value!;
        var pairs = count / (Options * Materials);
        var bodies = Math.Max(1, (int)Math.Round(Math.Sqrt(pairs * 0.8)));
        while (pairs % bodies != 0)
        {
            bodies--;
        }

        var option = shipped.Options[0].Option;
        return shipped with
        {
            Family = shipped.Family with
            {
                Exclusions = [],
                Options = [option with { Code = "N", Name = "plain" }, option with { Code = "W", Name = "more room" }],
                Numbers = shipped.Family.Numbers with { Pattern = "SF-{vehicle}-{throttle_body}-{material}{option}" },
            },
            Vehicles = [.. Enumerable.Range(0, pairs / bodies).Select(i => VariantOf(shipped.Vehicles[i % shipped.Vehicles.Length], i))],
            Bodies = [.. Enumerable.Range(0, bodies).Select(i => VariantOf(shipped.Bodies[i % shipped.Bodies.Length], i))],
            Options =
            [
                new(option with { Code = "N", Name = "plain" }, shipped.Options[0].Facts),
                new(option with { Code = "W", Name = "more room", Preferences = option.Preferences with { SweepClearance = 5 } }, [new("sweep_clearance", "5")]),
            ],
        };
    }

    private static LoadedMember<Vehicle> VariantOf(LoadedMember<Vehicle> member, int i)
    {
        var (vehicle, more) = (member.Value!, 0.37 * (i / 5));
        var cable = vehicle.Cable with { FreeInnerLength = vehicle.Cable.FreeInnerLength with { Value = vehicle.Cable.FreeInnerLength.Value + more } };
        var pedal = vehicle.Pedal with { AvailablePull = vehicle.Pedal.AvailablePull with { Value = vehicle.Pedal.AvailablePull.Value + 6 } };
        return new($"V{i:000}", member.File, vehicle with { Name = $"{vehicle.Name} {i}", Cable = cable, Pedal = WithoutTable(pedal, vehicle) }, [], [new("variant", $"{i}")]);
    }

    // A measured table of the pedal ends at its own pull; only pedals without one are given more.
    private static Pedal WithoutTable(Pedal more, Vehicle vehicle) => vehicle.Name == "Whimbrel" ? vehicle.Pedal : more;

    private static LoadedMember<ThrottleBody> VariantOf(LoadedMember<ThrottleBody> member, int i)
    {
        var (body, by) = (member.Value!, new Vector3(0.4 * (i / 3), 0.3 * (i / 3), 0));
        var mount = body.Mount with { Plane = new(body.Mount.Plane.Point + by, body.Mount.Plane.Normal), Holes = [.. body.Mount.Holes.Select(h => h with { At = h.At + by })] };
        return new($"B{i:000}", member.File, body with { Name = $"{body.Name} {i}", Mount = mount }, [], [new("variant", $"{i}")]);
    }

    private static string Load() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "unknown";

    private sealed class Place : IDisposable
    {
        private readonly string _folder = Directory.CreateTempSubdirectory("bracketgen-line-").FullName;

        private readonly FolderLock _lock;

        public Place() => _lock = FolderLock.Take(_folder);

        public CombinationFolder Combinations => new(Path.Combine(_folder, "combinations"), _lock);

        public void Dispose()
        {
            _lock.Dispose();
            Directory.Delete(_folder, recursive: true);
        }
    }
}
