using System.Net;
using BracketGen.Cli.Terminal;
using BracketGen.Web.Phone;
using BracketGen.Web.Serving;
using BracketGen.Words.Terminal;

namespace BracketGen.Cli.Commands;

/// <summary>The page's phone as the user asked for it, and what the terminal says of it.</summary>
/// <param name="Address">The machine's address in the phone's network.</param>
/// <param name="Port">Port there; 0 for any that is free.</param>
internal sealed record PhoneSide(IPAddress Address, int Port)
{
    /// <summary>Reads the wish; the problem says why it cannot be granted.</summary>
    /// <param name="there">The machine's private addresses.</param>
    /// <param name="wanted">What was given as address; null for nothing.</param>
    /// <param name="port">Port; 0 for any that is free.</param>
    /// <param name="hasTls">Whether the TLS library is there.</param>
    public static (PhoneSide? Side, string? Problem) Of(IReadOnlyList<NetworkAddress> there, string? wanted, int port, bool hasTls)
    {
        if (!hasTls)
        {
            return (null, PhoneWords.NoTls);
        }

        IPAddress? address = null;
        if (wanted is not null && !IPAddress.TryParse(wanted, out address))
        {
            return (null, PhoneWords.BadAddress(wanted));
        }

        var said = there.Select(a => $"{a.Address} ({a.Interface})");
        return there.Count == 0 ? (null, PhoneWords.NoNetwork)
            : NetworkAddress.Chosen(there, address) is { } chosen ? (new(chosen.Address, port), null)
            : (null, wanted is null ? PhoneWords.WhichAddress(said) : PhoneWords.OtherAddress(wanted, said));
    }

    /// <summary>Prints address, picture and fingerprint, and what to do with them.</summary>
    public static void Say(PhoneServer server, string? job, Screen screen)
    {
        var address = server.PairingAddress(job);
        screen.Line();
        screen.Paragraph(PhoneWords.Heading, Tone.Strong);
        screen.Line();
        screen.Paragraph(PhoneWords.Scan);
        screen.Paragraph(address);
        screen.Line();
        if (QrPicture.WidthOf(address) is var wide && wide > screen.Width)
        {
            screen.Paragraph(PhoneWords.TooNarrow(wide));
        }
        else
        {
            screen.Picture(colour => QrPicture.Of(address, colour));
        }

        screen.Line();
        screen.Paragraph(PhoneWords.Compare);
        foreach (var half in server.Fingerprint.Chunk((server.Fingerprint.Length + 1) / 2))
        {
            screen.Paragraph(new string(half).TrimEnd(':'));
        }

        screen.Line();
        screen.Paragraph(PhoneWords.Lasting(Pairing.CodeLife.TotalMinutes, Pairing.SessionLife.TotalHours, Pairing.IdleLife.TotalMinutes));
        Console.Out.Flush();
    }

    /// <summary>Prints what happens to the pairing until the program ends; Enter asks for a new code.</summary>
    public static async Task Watch(PhoneServer server, string? job, Screen screen, CancellationToken ending)
    {
        while (!Console.IsInputRedirected && await Task.Run(Console.In.ReadLine, ending) is not null)
        {
            if (server.Pairing.Renew())
            {
                Say(server, job, screen);
                _ = SayRunOut(server, screen, ending);
            }
            else
            {
                screen.Paragraph(PhoneWords.StillGood);
            }
        }
    }

    /// <summary>Says when nobody used the code in time.</summary>
    public static async Task SayRunOut(PhoneServer server, Screen screen, CancellationToken ending)
    {
        await Task.Delay(Pairing.CodeLife, ending);
        if (server.Pairing.State == PairingState.RanOut)
        {
            screen.Paragraph(PhoneWords.RanOut);
            Console.Out.Flush();
        }
    }

    /// <summary>Says that a phone was paired, or that pairing was closed.</summary>
    public static void Tell(PairingState state, IPAddress from, Screen screen)
    {
        screen.Paragraph(state == PairingState.Paired ? PhoneWords.Paired(from.ToString()) : PhoneWords.Closed(from.ToString()), Tone.Strong);
        Console.Out.Flush();
    }
}
