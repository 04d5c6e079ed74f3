namespace BracketGen.Words.Terminal;

/// <summary>What the terminal says of the page on a phone.</summary>
public static class PhoneWords
{
    /// <summary>Heading of the picture.</summary>
    public const string Heading = "For one phone at the vehicle. Use this in your own network only, among people you trust.";

    /// <summary>Scanning the picture.</summary>
    public const string Scan = "1. Join the phone to the same network as this machine. Scan the picture with its camera, or type this address:";

    /// <summary>The picture does not fit.</summary>
    /// <param name="columns">Its width (columns).</param>
    public static string TooNarrow(int columns) => $"The picture needs a window {columns} columns wide. Make it wider and start again, or type the address.";

    /// <summary>Comparing fingerprints.</summary>
    public const string Compare =
        "2. The browser warns that it does not know the certificate. Show the certificate there. Go on only if its SHA-256 fingerprint is this one:";

    /// <summary>What the phone may do then, and for how long.</summary>
    /// <param name="minutes">How long the code lasts (min).</param>
    /// <param name="hours">How long the phone stays paired (h).</param>
    /// <param name="idleMinutes">How long it stays paired without asking anything (min).</param>
    public static string Lasting(double minutes, double hours, double idleMinutes) =>
        $"The code works once, within {minutes:0} minutes. The phone may then read and write the folder's profiles for {hours:0} hours, or until it has asked nothing for {idleMinutes:0} minutes. Ctrl-C ends it at once.";

    /// <summary>A phone was paired.</summary>
    /// <param name="address">Its address in the network.</param>
    public static string Paired(string address) => $"A phone is paired, at {address}. If it is not yours, press Ctrl-C.";

    /// <summary>Nobody used the code in time.</summary>
    public const string RanOut = "The code has run out. Press Enter for a new one.";

    /// <summary>There were too many wrong codes.</summary>
    /// <param name="address">Address that sent the last one.</param>
    public static string Closed(string address) => $"Too many wrong codes came, the last from {address}. None is taken any more. Press Enter for a new one.";

    /// <summary>No new code is made.</summary>
    public const string StillGood = "There is no new code while a phone is paired or a code waits.";

    /// <summary>An option that means nothing without the phone.</summary>
    public static string NeedsPhone(string option) => $"{option} goes with --phone. Add --phone, or leave {option} out.";

    /// <summary>The machine is in no private network.</summary>
    public const string NoNetwork =
        "--phone needs an address in a private network (10.…, 172.16.… to 172.31.…, 192.168.… or fc00::/7), and this machine has none. Join it to the shop's network.";

    /// <summary>There are several addresses.</summary>
    /// <param name="addresses">The addresses with their interfaces.</param>
    public static string WhichAddress(IEnumerable<string> addresses) =>
        $"This machine has several addresses: {string.Join(", ", addresses)}. Name the one of the phone's network with --address.";

    /// <summary>The address is none of this machine's private ones.</summary>
    /// <param name="given">What was given.</param>
    /// <param name="addresses">The addresses with their interfaces.</param>
    public static string OtherAddress(string given, IEnumerable<string> addresses) =>
        $"--address is {given}, and this machine has no such address in a private network. It has {string.Join(", ", addresses)}.";

    /// <summary>The address is no address.</summary>
    public static string BadAddress(string given) => $"--address is {given}. Give an address such as 192.168.1.20.";

    /// <summary>The TLS library is missing.</summary>
    public const string NoTls =
        "--phone needs the system's TLS library, OpenSSL 3 or 1.1 (libssl.so.3, libssl.so.1.1), and it is not there. Install it (Debian, Ubuntu: libssl3; Fedora: openssl-libs), or leave --phone out: everything else works without it.";
}
