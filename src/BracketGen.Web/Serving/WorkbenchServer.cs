using System.Net;
using BracketGen.Drawing.Dxf.Format;
using BracketGen.Web.Folder;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace BracketGen.Web.Serving;

/// <summary>The workbench page, served to this machine alone.</summary>
/// <remarks>
/// Listens on 127.0.0.1 and nowhere else: no setting, file or variable of the surroundings is looked at. Keeps no state between
/// requests but the last outputs. Thread-safe.
/// </remarks>
public sealed class WorkbenchServer : IAsyncDisposable
{
    /// <summary>Longest request (bytes): a job's profiles are a hundredth of it.</summary>
    public const int MostBody = 2 << 20;

    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; "
        + "frame-ancestors 'none'; require-trusted-types-for 'script'; trusted-types workbench";

    private readonly WebApplication _app;

    private WorkbenchServer(WebApplication app, int port) => (_app, Port) = (app, port);

    /// <summary>Port that is listened on.</summary>
    public int Port { get; }

    /// <summary>Address of the page.</summary>
    public string Address => $"http://127.0.0.1:{Port}/";

    /// <summary>Starts serving.</summary>
    /// <param name="folder">The folder that holds the profiles.</param>
    /// <param name="port">Port; 0 for any that is free.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<WorkbenchServer> Start(WorkFolder folder, int port)
    {
        // The empty builder: what stands in variables or files of the folder must not open another address.
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(options =>
        {
            options.Listen(IPAddress.Loopback, port);
            options.AddServerHeader = false;
            options.Limits.MaxRequestBodySize = MostBody;
            options.Limits.MaxConcurrentConnections = 64;
        });
        var app = builder.Build();
        var answering = new Answering(folder);
        var listening = port;
        app.Run(context => Handle(context, answering, listening));
        await app.StartAsync();
        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();
        listening = new Uri(address).Port;
        return new(app, listening);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
    }

    private static async Task Handle(HttpContext context, Answering answering, int port)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
        try
        {
            if (RequestGuard.Refusal(context.Request, port) is { } refusal)
            {
                await Answering.Tell(context, StatusCodes.Status403Forbidden, refusal);
            }
            else if (!await answering.Answer(context))
            {
                await Answering.Tell(context, StatusCodes.Status404NotFound, "There is nothing at this address.");
            }
        }
        catch (BadHttpRequestException problem)
        {
            await Answering.Tell(context, problem.StatusCode, problem.StatusCode == StatusCodes.Status413PayloadTooLarge ? "The request is too long." : "The request cannot be read.");
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The page has asked anew and does not wait for this any more.
        }
        catch (Exception problem) when (!context.Response.HasStarted)
        {
            // A mistake of the program's: whoever works with the page must be able to say what it was.
            context.Response.Headers.ContentLength = null;
            await Answering.Tell(context, StatusCodes.Status500InternalServerError, $"This is a mistake of the program: {problem.GetType().Name}: {problem.Message}");
        }
    }
}
