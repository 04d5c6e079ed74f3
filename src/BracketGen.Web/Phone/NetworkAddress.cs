using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace BracketGen.Web.Phone;

/// <summary>An address of this machine in a network of its owner.</summary>
/// <param name="Address">The address.</param>
/// <param name="Interface">Name of its network interface, as the system calls it.</param>
public sealed record NetworkAddress(IPAddress Address, string Interface)
{
    private const byte UniqueLocal = 0xfc, UniqueLocalMask = 0xfe;

    /// <summary>Whether an address is one that no router passes on to the internet: 10/8, 172.16/12, 192.168/16 (RFC 1918, 3), fc00::/7 (RFC 4193, 3.1).</summary>
    /// <remarks>Link-local addresses are left out: they change by themselves.</remarks>
    public static bool IsPrivate(IPAddress address)
    {
        var bytes = address.GetAddressBytes();
        return address.AddressFamily switch
        {
            AddressFamily.InterNetwork => bytes[0] == 10 || (bytes[0] == 172 && bytes[1] is >= 16 and <= 31) || (bytes[0] == 192 && bytes[1] == 168),
            AddressFamily.InterNetworkV6 => (bytes[0] & UniqueLocalMask) == UniqueLocal,
            _ => false,
        };
    }

    /// <summary>Every private address of this machine whose interface is up; IPv4 first.</summary>
    public static IReadOnlyList<NetworkAddress> OfThisMachine() =>
    [
        .. from card in NetworkInterface.GetAllNetworkInterfaces()
           where card.OperationalStatus is OperationalStatus.Up or OperationalStatus.Unknown && card.NetworkInterfaceType != NetworkInterfaceType.Loopback
           from address in card.GetIPProperties().UnicastAddresses
           where IsPrivate(address.Address)
           orderby address.Address.AddressFamily == AddressFamily.InterNetwork descending
           select new NetworkAddress(address.Address, card.Name),
    ];

    /// <summary>The address to serve on: the one that is wanted, or the only one; null where the user must choose, or can not.</summary>
    /// <param name="there">The machine's private addresses.</param>
    /// <param name="wanted">The one that the user named; null for none.</param>
    /// <remarks>IPv6 counts where there is no IPv4, or where it is named.</remarks>
    public static NetworkAddress? Chosen(IReadOnlyList<NetworkAddress> there, IPAddress? wanted)
    {
        if (wanted is not null)
        {
            return there.FirstOrDefault(a => a.Address.Equals(wanted));
        }

        var v4 = there.Where(a => a.Address.AddressFamily == AddressFamily.InterNetwork).ToList();
        return (v4.Count > 0 ? v4 : there) is [var only] ? only : null;
    }
}
