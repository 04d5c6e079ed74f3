using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace BracketGen.Web.Phone;

/// <summary>A one-time code, and the one phone that had it.</summary>
/// <remarks>
/// Code and key come from the system's random numbers without a seed. Elsewhere the program gives the same output for the same input; a secret must not.
/// Thread-safe.
/// </remarks>
/// <param name="clock">The clock.</param>
public sealed class Pairing(TimeProvider clock)
{
    /// <summary>Length of the code (bytes): 128 bits, which nobody guesses in two minutes, whatever the number of tries.</summary>
    public const int CodeBytes = 16;

    /// <summary>Length of the key of a session (bytes).</summary>
    public const int KeyBytes = 32;

    /// <summary>Wrong codes after which the right one is worth nothing either: a phone that scanned the picture sends none.</summary>
    public const int MostWrong = 5;

    /// <summary>How long a code can be used.</summary>
    public static readonly TimeSpan CodeLife = TimeSpan.FromMinutes(2);

    /// <summary>How long a phone stays paired: a working day at the vehicle.</summary>
    public static readonly TimeSpan SessionLife = TimeSpan.FromHours(8);

    /// <summary>How long a phone stays paired that asks nothing: longer than any one measurement, shorter than a lost phone stays lost.</summary>
    public static readonly TimeSpan IdleLife = TimeSpan.FromHours(1);

    private readonly Lock _turn = new();
    private byte[] _code = NewCode();
    private Moment _made = Moment.Of(clock), _paired, _heard;
    private byte[]? _key;
    private int _wrong;
    private PairingState _state;

    /// <summary>The code as it stands in the address.</summary>
    public string Code
    {
        get
        {
            lock (_turn)
            {
                return Encoding.ASCII.GetString(_code);
            }
        }
    }

    /// <summary>How far it is.</summary>
    public PairingState State
    {
        get
        {
            lock (_turn)
            {
                return Now();
            }
        }
    }

    /// <summary>Takes the code for a key, once.</summary>
    /// <param name="code">What the phone sent.</param>
    /// <returns>The key of the phone's session; null where the code is wrong, used, or no longer taken.</returns>
    public string? Pair(string code)
    {
        lock (_turn)
        {
            if (Now() != PairingState.Open)
            {
                return null;
            }

            if (!CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(code), _code))
            {
                _state = ++_wrong >= MostWrong ? PairingState.Closed : PairingState.Open;
                return null;
            }

            _state = PairingState.Paired;
            _key = Encoding.ASCII.GetBytes(Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(KeyBytes)));
            _paired = _heard = Moment.Of(clock);
            return Encoding.ASCII.GetString(_key);
        }
    }

    /// <summary>Whether a request with this key is the paired phone's; it then counts as heard.</summary>
    public bool IsPaired(string? key)
    {
        lock (_turn)
        {
            if (key is null || Now() != PairingState.Paired || !CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(key), _key))
            {
                return false;
            }

            _heard = Moment.Of(clock);
            return true;
        }
    }

    /// <summary>Makes a new code in place of one that ran out, was closed, or whose phone's time is over.</summary>
    /// <returns>Whether there is one: a phone that is paired, or a code that waits, is not pushed aside.</returns>
    public bool Renew()
    {
        lock (_turn)
        {
            if (Now() is PairingState.Open or PairingState.Paired)
            {
                return false;
            }

            (_code, _made, _key, _wrong, _state) = (NewCode(), Moment.Of(clock), null, 0, PairingState.Open);
            return true;
        }
    }

    private static byte[] NewCode() => Encoding.ASCII.GetBytes(Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(CodeBytes)));

    private PairingState Now()
    {
        if (_state == PairingState.Open && _made.Since(clock) >= CodeLife)
        {
            _state = PairingState.RanOut;
        }
        else if (_state == PairingState.Paired && (_paired.Since(clock) >= SessionLife || _heard.Since(clock) >= IdleLife))
        {
            (_state, _key) = (PairingState.Ended, null);
        }

        return _state;
    }

    /// <summary>A moment on both clocks: one that nobody sets, and one that goes on while the machine sleeps. The one that says more is believed.</summary>
    private readonly record struct Moment(long Counted, DateTimeOffset Told)
    {
        public static Moment Of(TimeProvider clock) => new(clock.GetTimestamp(), clock.GetUtcNow());

        public TimeSpan Since(TimeProvider clock)
        {
            var (counted, told) = (clock.GetElapsedTime(Counted), clock.GetUtcNow() - Told);
            return counted > told ? counted : told;
        }
    }
}
