using System.Diagnostics;
using System.Globalization;
using BracketGen.Drawing.Report.Charts;

namespace BracketGen.Fuzz.Tests;

/// <summary>What one kind of input came to in a run.</summary>
public sealed record FuzzTally
{
    /// <summary>Mutations.</summary>
    public int Cases { get; set; }

    /// <summary>Refused with words.</summary>
    public int Refused { get; set; }

    /// <summary>Taken, and only read.</summary>
    public int Taken { get; set; }

    /// <summary>Put through the whole program.</summary>
    public int Through { get; set; }

    /// <summary>The longest diagnosis of a job without a bracket (ms of processor time).</summary>
    public double LongestDiagnosis { get; set; }

    /// <summary>The longest of them, diagnosis left aside (ms of processor time).</summary>
    public double Longest { get; set; }

    /// <summary>Its name.</summary>
    public string LongestName { get; set; } = "";
}

/// <summary>Runs mutations one after another, each watched for its end.</summary>
public sealed class FuzzRun
{
    private readonly List<string> _failures = [];
    private readonly SortedDictionary<InputKind, FuzzTally> _tallies = [];
    private volatile string _now = "";
    private long _since, _spentBefore;

    /// <summary>What broke, each with its name and the exception.</summary>
    public IReadOnlyList<string> Failures => _failures;

    /// <summary>Tallies by kind.</summary>
    public IReadOnlyDictionary<InputKind, FuzzTally> Tallies => _tallies;

    /// <summary>Runs <paramref name="cases"/>; of each kind every <paramref name="wholeEvery"/>th that is taken goes through the whole program.</summary>
    /// <param name="cases">The inputs.</param>
    /// <param name="wholeEvery">1 for all of them.</param>
    /// <param name="mostWait">Longest processor time of one input before the run is given up.</param>
    /// <param name="mostProcessor">Longest processor time of one input; not looked at where null.</param>
    /// <param name="until">When to stop early.</param>
    public FuzzRun Over(IEnumerable<FuzzCase> cases, int wholeEvery, TimeSpan mostWait, TimeSpan? mostProcessor = null, CancellationToken until = default)
    {
        Exception? escaped = null;

        // A deep stack of its own would hide what the program's usual one does not bear: 8 MB is what the main thread has.
        var worker = new Thread(
            () =>
            {
                try
                {
                    Work(cases, wholeEvery, mostProcessor, until);
                }
                catch (Exception e)
                {
                    escaped = e;
                }
            },
            8 << 20)
        {
            IsBackground = true,
        };
        Volatile.Write(ref _since, Stopwatch.GetTimestamp());
        Volatile.Write(ref _spentBefore, Environment.CpuUsage.TotalTime.Ticks);
        worker.Start();
        while (!worker.Join(500))
        {
            // Processor time, because a machine that is busy with other things is no hang; and the clock, for what waits for itself.
            var spent = Environment.CpuUsage.TotalTime - new TimeSpan(Volatile.Read(ref _spentBefore));
            if (spent > mostWait || Stopwatch.GetElapsedTime(Volatile.Read(ref _since)) > 15 * mostWait)
            {
                _failures.Add($"{_now}: no end after {spent.TotalSeconds:0} s of processor time");
                return this;
            }
        }

        return escaped is null ? this : throw new InvalidOperationException($"{_now}: {escaped.Message}", escaped);
    }

    private void Work(IEnumerable<FuzzCase> cases, int wholeEvery, TimeSpan? mostProcessor, CancellationToken until)
    {
        foreach (var one in cases)
        {
            if (until.IsCancellationRequested)
            {
                return;
            }

            _now = one.Name;
            Volatile.Write(ref _since, Stopwatch.GetTimestamp());
            var tally = _tallies.TryGetValue(one.Kind, out var there) ? there : _tallies[one.Kind] = new();
            var before = Environment.CpuUsage.TotalTime;
            Volatile.Write(ref _spentBefore, before.Ticks);
            try
            {
                switch (Subject.Run(one, (tally.Taken + tally.Through) % wholeEvery == 0))
                {
                    case Depth.Refused:
                        tally.Refused++;
                        break;
                    case Depth.Taken:
                        tally.Taken++;
                        break;
                    default:
                        tally.Through++;
                        break;
                }
            }
            catch (Exception problem)
            {
                _failures.Add(string.Create(CultureInfo.InvariantCulture, $"{one.Name}: {problem}"));
            }

            tally.Cases++;
            var took = Environment.CpuUsage.TotalTime - before - Subject.Diagnosing;
            tally.LongestDiagnosis = Math.Max(tally.LongestDiagnosis, Subject.Diagnosing.TotalMilliseconds);
            if (took.TotalMilliseconds > tally.Longest)
            {
                (tally.Longest, tally.LongestName) = (took.TotalMilliseconds, one.Name);
            }

            if (took > mostProcessor)
            {
                _failures.Add(string.Create(CultureInfo.InvariantCulture, $"{one.Name}: {took.TotalMilliseconds:0} ms of processor time"));
            }
        }
    }
}
