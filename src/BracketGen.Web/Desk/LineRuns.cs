using BracketGen.Line.Running;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Words.Line;

namespace BracketGen.Web.Desk;

/// <summary>How far a run of a product line has come.</summary>
/// <param name="IsRunning">Whether it is still at work.</param>
/// <param name="Progress">How far the variants are, in the words of the command; empty before the first.</param>
/// <param name="Done">Variants done.</param>
/// <param name="Of">All of them; 0 before the first is done.</param>
/// <param name="Output">What it said, as the command prints it.</param>
/// <param name="Errors">What went wrong.</param>
public sealed record LineRunState(bool IsRunning, string Progress, int Done, int Of, string Output, string Errors);

/// <summary>The page's one run of a product line. It goes on when the browser is closed, and is stopped with the program.</summary>
public sealed class LineRuns : IDisposable
{
    private readonly Lock _gate = new();
    private Running? _last;

    /// <summary>Begins a run; false where one is at work.</summary>
    /// <param name="path">Path of the family's file.</param>
    /// <param name="family">The family.</param>
    /// <param name="wishes">What is wanted.</param>
    /// <param name="place">Where its files go.</param>
    public bool Start(string path, LoadedFamily family, LineWishes wishes, LinePlace place)
    {
        lock (_gate)
        {
            if (_last is { Thread.IsAlive: true })
            {
                return false;
            }

            _last?.Stop.Dispose();
            var run = new Running(path);
            run.Thread = new(() => run.Work(family, wishes, place)) { IsBackground = true };
            _last = run;
            run.Thread.Start();
            return true;
        }
    }

    /// <summary>The last run of a line; null where there was none.</summary>
    /// <param name="path">Path of the family's file.</param>
    public LineRunState? StateOf(string path)
    {
        lock (_gate)
        {
            return _last is { } run && run.Path == path ? run.State() : null;
        }
    }

    /// <summary>Asks a line's run to stop between two variants.</summary>
    /// <param name="path">Path of the family's file.</param>
    public void Stop(string path)
    {
        lock (_gate)
        {
            if (_last is { } run && run.Path == path)
            {
                run.Stop.Cancel();
            }
        }
    }

    /// <summary>Stops the run and waits until what is begun is written.</summary>
    public void Dispose()
    {
        lock (_gate)
        {
            _last?.Stop.Cancel();
            _last?.Thread?.Join();
            _last?.Stop.Dispose();
            _last = null;
        }
    }

    private sealed class Running(string path)
    {
        private readonly StringWriter _output = new() { NewLine = "\n" }, _errors = new() { NewLine = "\n" };
        private readonly Lock _gate = new();
        private LineProgress _progress;

        public string Path { get; } = path;

        public CancellationTokenSource Stop { get; } = new();

        public Thread? Thread { get; set; }

        // What it says is told when it has ended: only this thread writes it.
        public void Work(LoadedFamily family, LineWishes wishes, LinePlace place) => LineWork.Run(family, wishes, place, new(_output, _errors, "", Tell, () => { }), Stop.Token);

        public LineRunState State()
        {
            var isRunning = Thread is { IsAlive: true };
            lock (_gate)
            {
                var (done, all) = (_progress.Done, _progress.Of);
                return new(
                    isRunning, all == 0 ? "" : LineRunText.Progress(done, all, _progress.Kept, _progress.Failing), done, all,
                    isRunning ? "" : _output.ToString(), isRunning ? "" : _errors.ToString());
            }
        }

        private void Tell(LineProgress progress)
        {
            lock (_gate)
            {
                _progress = progress.Done > _progress.Done ? progress : _progress;
            }
        }
    }
}
