using System.Net;
using System.Net.Sockets;
using System.Security.Authentication;
using System.Security.Cryptography.X509Certificates;
using BracketGen.Web.Phone;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.Server.Kestrel.Https;

namespace BracketGen.Web.Serving;

/// <summary>The page, served to one paired phone of the network over TLS.</summary>
/// <remarks>
/// A server of its own beside <see cref="PageServer"/>, on one address: what the network does here cannot hold up the page on this machine. Needs the system's
/// <see cref="TlsLibrary"/>. Threats and answers: docs/phone.md.
/// </remarks>
public sealed class PhoneServer : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly X509Certificate2 _certificate;

    private PhoneServer(WebApplication app, X509Certificate2 certificate, Pairing pairing, Uri address) =>
        (_app, _certificate, Pairing, Address) = (app, certificate, pairing, address);

    /// <summary>Address of the page, without the code.</summary>
    public Uri Address { get; }

    /// <summary>Code and session.</summary>
    public Pairing Pairing { get; }

    /// <summary>The certificate's SHA-256 fingerprint as browsers show it.</summary>
    public string Fingerprint => PhoneCertificate.Fingerprint(_certificate);

    /// <summary>The address that pairs a phone: code and job stand in the fragment, which browsers do not send.</summary>
    /// <param name="job">Path of the job to open; null for none.</param>
    public string PairingAddress(string? job) => $"{Address}#pair={Pairing.Code}{(job is null ? "" : $"&job={Uri.EscapeDataString(job)}")}";

    internal static async Task<PhoneServer> Start(
        Answering answering, IPAddress address, int port, TimeProvider clock, Action<PairingState, IPAddress> told, ServingLimits limits)
    {
        var certificate = PhoneCertificate.Make(address, clock.GetUtcNow());
        var quota = new ConnectionQuota();
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(options =>
        {
            limits.Set(options);
            options.Listen(address, port, listening =>
            {
                listening.Protocols = HttpProtocols.Http1;
                listening.Use(next => connection => InQuota(quota, next, connection));
                listening.UseHttps(new HttpsConnectionAdapterOptions
                {
                    ServerCertificate = certificate,
                    SslProtocols = SslProtocols.Tls12 | SslProtocols.Tls13,
                    HandshakeTimeout = limits.Head,
                });
            });
        });
        var app = builder.Build();
        var pairing = new Pairing(clock);
        var gate = new TaskCompletionSource<PhoneGate>();
        app.Run(async context => await Responding.Handle(context, (await gate.Task).Answer));
        try
        {
            await app.StartAsync();
        }
        catch
        {
            await app.DisposeAsync();
            certificate.Dispose();
            throw;
        }

        var listens = PageServer.PortOf(app);
        var name = new UriBuilder("https", address.AddressFamily == AddressFamily.InterNetworkV6 ? $"[{address}]" : address.ToString(), listens).Uri;
        // Cookies do not know ports: two programs on one machine must not take each other's session away.
        gate.SetResult(new(pairing, new("https", name.Authority), answering, $"__Host-bracketgen-{listens}", (state, from) =>
        {
            if (state == PairingState.Paired)
            {
                quota.Keep(from);
            }

            told(state, from);
        }));
        return new(app, certificate, pairing, name);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
        _certificate.Dispose();
    }

    private static async Task InQuota(ConnectionQuota quota, ConnectionDelegate next, ConnectionContext connection)
    {
        if (connection.RemoteEndPoint is not IPEndPoint { Address: var from } || !quota.Enter(from))
        {
            connection.Abort();
            return;
        }

        try
        {
            await next(connection);
        }
        finally
        {
            quota.Leave(from);
        }
    }
}
