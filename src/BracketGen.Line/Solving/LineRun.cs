using System.Collections.Immutable;
using BracketGen.Line.Combinations;

namespace BracketGen.Line.Solving;

/// <summary>How far a line has come.</summary>
/// <param name="Done">Combinations done, kept ones among them.</param>
/// <param name="Of">All of them.</param>
/// <param name="Kept">Unchanged since an earlier run.</param>
/// <param name="Failing">Without a passing bracket.</param>
public readonly record struct LineProgress(int Done, int Of, int Kept, int Failing);

/// <summary>Makes every combination of a line, on all processors at once.</summary>
public static class LineRun
{
    /// <summary>Solves and writes whatever is not there yet as it should be.</summary>
    /// <param name="combinations">The combinations.</param>
    /// <param name="solver">Solves them.</param>
    /// <param name="folder">Where they are kept.</param>
    /// <param name="threads">How many at once.</param>
    /// <param name="tell">Told after each, by whichever thread; it must not take long.</param>
    /// <param name="stop">Stops the run between two combinations: what is begun is finished.</param>
    /// <returns>What was made, in the order of the combinations; null for those that the stop kept from being begun.</returns>
    /// <exception cref="IOException">A file cannot be written; nothing more is begun.</exception>
    /// <exception cref="UnauthorizedAccessException">Likewise, for want of rights.</exception>
    public static ImmutableArray<Made?> Run(
        ImmutableArray<Combination> combinations, CombinationSolver solver, CombinationFolder folder, int threads,
        Action<LineProgress> tell, CancellationToken stop)
    {
        var made = new Made?[combinations.Length];
        var queue = new NumberQueue(solver.Numbers, combinations);
        var gate = new Lock();
        int next = -1, done = 0, kept = 0, failing = 0;
        Exception? problem = null;
        void Done(int index, Made what, bool isKept)
        {
            // Counted together: whoever is told sees numbers that belong to each other, rising.
            lock (gate)
            {
                made[index] = what;
                kept += isKept ? 1 : 0;
                failing += what.HasPart ? 0 : 1;
                tell(new(++done, combinations.Length, kept, failing));
            }
        }

        void Make(Numbered numbered)
        {
            var (index, answer, number, serial) = numbered;
            if (answer.Kept is { } there && there.PartNumber == number)
            {
                Done(index, there, true);
                return;
            }

            // What an interrupted run made before a change may have got another running number.
            var solved = solver.Finish(answer.Kept is null ? answer : solver.Answer(answer.Combination, null), number, serial);
            folder.Write(solved);
            Done(index, solved.Made, false);
        }

        void Work()
        {
            while (!stop.IsCancellationRequested && Volatile.Read(ref problem) is null && Interlocked.Increment(ref next) is var i && i < combinations.Length)
            {
                try
                {
                    foreach (var numbered in queue.Add(i, solver.Answer(combinations[i], folder.Find(combinations[i].Key))))
                    {
                        Make(numbered);
                    }
                }
                catch (Exception e) when (e is IOException or UnauthorizedAccessException)
                {
                    Interlocked.CompareExchange(ref problem, e, null);
                }
            }
        }

        var workers = Enumerable.Range(0, Math.Max(1, threads) - 1).Select(_ => new Thread(Work) { IsBackground = true }).ToArray();
        foreach (var worker in workers)
        {
            worker.Start();
        }

        Work();
        foreach (var worker in workers)
        {
            worker.Join();
        }

        return problem switch
        {
            IOException e => throw new IOException(e.Message, e),
            UnauthorizedAccessException e => throw new UnauthorizedAccessException(e.Message, e),
            _ => [.. made],
        };
    }
}
