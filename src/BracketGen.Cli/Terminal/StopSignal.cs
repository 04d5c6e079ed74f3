using System.Runtime.InteropServices;

namespace BracketGen.Cli.Terminal;

/// <summary>Turns the signals by which a user or the system stops a program into a wish to stop at the next good place.</summary>
/// <remarks>A second signal ends the program at once, as it would have without this.</remarks>
internal sealed class StopSignal : IDisposable
{
    private readonly CancellationTokenSource _source = new();
    private readonly PosixSignalRegistration[] _registrations;

    public StopSignal() => _registrations =
    [
        PosixSignalRegistration.Create(PosixSignal.SIGINT, Handle),
        PosixSignalRegistration.Create(PosixSignal.SIGTERM, Handle),
    ];

    /// <summary>Cancelled by the first signal.</summary>
    public CancellationToken Token => _source.Token;

    public void Dispose()
    {
        foreach (var registration in _registrations)
        {
            registration.Dispose();
        }

        _source.Dispose();
    }

    private void Handle(PosixSignalContext context)
    {
        context.Cancel = !_source.IsCancellationRequested;
        _source.Cancel();
    }
}
