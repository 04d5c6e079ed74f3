using System.Net;

namespace BracketGen.Web.Phone;

/// <summary>How many connections each address of the network may hold open, so that nobody there takes them all.</summary>
/// <remarks>The paired phone has its own share, which no other address can use up. Thread-safe.</remarks>
internal sealed class ConnectionQuota
{
    /// <summary>Connections of one address: a browser opens six to one host, and one or two ahead.</summary>
    public const int OfOne = 12;

    /// <summary>Connections of all addresses together, without the paired phone's.</summary>
    public const int OfStrangers = 48;

    private readonly Lock _turn = new();
    private readonly Dictionary<IPAddress, int> _open = [];
    private IPAddress? _phone;

    /// <summary>A connection begins; false if it may not.</summary>
    public bool Enter(IPAddress from)
    {
        lock (_turn)
        {
            var (own, strangers) = (_open.GetValueOrDefault(from), _open.Where(o => !o.Key.Equals(_phone)).Sum(o => o.Value));
            if (own >= OfOne || (!from.Equals(_phone) && strangers >= OfStrangers))
            {
                return false;
            }

            _open[from] = own + 1;
            return true;
        }
    }

    /// <summary>A connection that began has ended.</summary>
    public void Leave(IPAddress from)
    {
        lock (_turn)
        {
            if (--_open[from] == 0)
            {
                _open.Remove(from);
            }
        }
    }

    /// <summary>A phone was paired from this address.</summary>
    public void Keep(IPAddress phone)
    {
        lock (_turn)
        {
            _phone = phone;
        }
    }
}
