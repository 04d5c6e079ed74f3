using BracketGen.Line.Solving;
using BracketGen.Words.Line;

namespace BracketGen.Cli.Terminal;

/// <summary>Shows how far a line has come: a bar that grows on a terminal, a line at every tenth elsewhere.</summary>
internal sealed class ProgressReport(TextWriter writer, bool isTerminal, int width)
{
    private readonly Lock _lock = new();
    private int _shown = -1;
    private LineProgress _latest;

    /// <summary>Called by any thread; what was overtaken is not shown.</summary>
    public void Tell(LineProgress progress)
    {
        lock (_lock)
        {
            if (progress.Done <= _latest.Done)
            {
                return;
            }

            _latest = progress;
            var steps = isTerminal ? 1000 : 10;
            var step = (int)((long)progress.Done * steps / progress.Of);
            if (step == _shown)
            {
                return;
            }

            _shown = step;
            writer.Write(isTerminal ? "\r" + Bar(progress) : Words(progress) + "\n");
            writer.Flush();
        }
    }

    /// <summary>Ends the bar, so that what comes next begins on a line of its own.</summary>
    public void End()
    {
        lock (_lock)
        {
            if (isTerminal && _shown >= 0)
            {
                writer.Write("\r" + Bar(_latest) + "\n");
                writer.Flush();
            }
        }
    }

    private string Bar(LineProgress progress)
    {
        var words = " " + Words(progress);
        var room = Math.Clamp(width - words.Length - 4, 10, 40);
        var full = (int)((long)progress.Done * room / progress.Of);
        return $"[{new string('#', full)}{new string('.', room - full)}]{words}".PadRight(Math.Max(0, width - 1));
    }

    private static string Words(LineProgress progress) => LineRunText.Progress(progress.Done, progress.Of, progress.Kept, progress.Failing);
}
