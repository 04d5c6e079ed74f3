namespace BracketGen.Web.Tests;

/// <summary>A clock that stands still until it is put on.</summary>
internal sealed class SetClock : TimeProvider
{
    private TimeSpan _counted, _told;

    /// <summary>Time passes.</summary>
    public void Pass(TimeSpan time) => (_counted, _told) = (_counted + time, _told + time);

    /// <summary>Time passes while the machine sleeps: the counting clock stands still.</summary>
    public void Sleep(TimeSpan time) => _told += time;

    /// <summary>Somebody sets the clock back.</summary>
    public void SetBack(TimeSpan time) => _told -= time;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override long GetTimestamp() => _counted.Ticks;

    public override DateTimeOffset GetUtcNow() => new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero) + _told;
}
