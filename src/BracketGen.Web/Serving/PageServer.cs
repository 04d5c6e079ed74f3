using System.Net;
using BracketGen.Web.Folder;
using BracketGen.Web.Memory;
using BracketGen.Web.Messages;
using BracketGen.Web.Phone;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace BracketGen.Web.Serving;

/// <summary>The page, served to this machine only.</summary>
/// <remarks>
/// Listens on 127.0.0.1 and nowhere else, whatever variables, files or settings say. Keeps nothing between requests but the last outputs and the run of a product line.
/// </remarks>
public sealed class PageServer : IAsyncDisposable
{
    /// <summary>Maximum length of a request (bytes): a hundred times the profiles of a job.</summary>
    public const int MaxBody = 2 << 20;

    private readonly WebApplication _app;
    private readonly Answering _answering;

    private PageServer(WebApplication app, Answering answering, int port) => (_app, _answering, Port) = (app, answering, port);

    /// <summary>Port that is listened on.</summary>
    public int Port { get; }

    /// <summary>Address of the page.</summary>
    public string Address => $"http://127.0.0.1:{Port}/";

    /// <summary>Starts serving.</summary>
    /// <param name="folder">The folder that holds the profiles.</param>
    /// <param name="memory">What the page remembers.</param>
    /// <param name="port">Port; 0 for any that is free.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static Task<PageServer> Start(WorkFolder folder, PageMemory memory, int port) => Start(folder, memory, port, ServingLimits.ThisMachine);

    internal static async Task<PageServer> Start(WorkFolder folder, PageMemory memory, int port, ServingLimits limits)
    {
        // The empty builder reads no variables and no files: neither may open another address.
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(options =>
        {
            options.Listen(IPAddress.Loopback, port);
            limits.Set(options);
        });
        var app = builder.Build();
        var answering = new Answering(folder, memory);
        var guard = new TaskCompletionSource<RequestGuard>();
        app.Run(async context =>
        {
            var guarding = await guard.Task;
            await Responding.Handle(context, async asked => await Refused(asked, guarding) || await answering.Answer(asked));
        });
        await app.StartAsync();
        var listening = PortOf(app);
        guard.SetResult(new("http", $"127.0.0.1:{listening}", $"localhost:{listening}"));
        return new(app, answering, listening);
    }

    /// <summary>Serves the same page to one phone of the network too, over TLS: see <see cref="PhoneServer"/>.</summary>
    /// <param name="address">The machine's address in that network.</param>
    /// <param name="port">Port there; 0 for any that is free.</param>
    /// <param name="clock">The clock for code and session.</param>
    /// <param name="told">Is told when a phone is paired, or pairing closes.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public Task<PhoneServer> ServePhone(IPAddress address, int port, TimeProvider clock, Action<PairingState, IPAddress> told) =>
        PhoneServer.Start(_answering, address, port, clock, told, ServingLimits.Network);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
        _answering.Dispose();
    }

    internal static int PortOf(WebApplication app) =>
        new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single()).Port;

    internal static async Task<bool> Refused(HttpContext context, RequestGuard guard)
    {
        if (guard.Refusal(context.Request) is not { } refusal)
        {
            return false;
        }

        await Exchange.Refuse(context, StatusCodes.Status403Forbidden, refusal);
        return true;
    }
}
