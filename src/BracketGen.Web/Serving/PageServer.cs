using System.Net;
using BracketGen.Web.Folder;
using BracketGen.Web.Memory;
using BracketGen.Web.Messages;
using BracketGen.Words.Page;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace BracketGen.Web.Serving;

/// <summary>The page, served to this machine only.</summary>
/// <remarks>
/// Listens on 127.0.0.1 and nowhere else, whatever variables, files or settings say. Keeps nothing between requests but the last outputs.
/// </remarks>
public sealed class PageServer : IAsyncDisposable
{
    /// <summary>Maximum length of a request (bytes): a hundred times the profiles of a job.</summary>
    public const int MaxBody = 2 << 20;

    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; "
        + "frame-ancestors 'none'; require-trusted-types-for 'script'; trusted-types page";

    private readonly WebApplication _app;

    private PageServer(WebApplication app, int port) => (_app, Port) = (app, port);

    /// <summary>Port that is listened on.</summary>
    public int Port { get; }

    /// <summary>Address of the page.</summary>
    public string Address => $"http://127.0.0.1:{Port}/";

    /// <summary>Starts serving.</summary>
    /// <param name="folder">The folder that holds the profiles.</param>
    /// <param name="memory">What the page remembers.</param>
    /// <param name="port">Port; 0 for any that is free.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<PageServer> Start(WorkFolder folder, PageMemory memory, int port)
    {
        // The empty builder reads no variables and no files: neither may open another address.
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(options =>
        {
            options.Listen(IPAddress.Loopback, port);
            options.AddServerHeader = false;
            options.Limits.MaxRequestBodySize = MaxBody;
            options.Limits.MaxConcurrentConnections = 64;
        });
        var app = builder.Build();
        var answering = new Answering(folder, memory);
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
                await Exchange.Refuse(context, StatusCodes.Status403Forbidden, refusal);
            }
            else if (!await answering.Answer(context))
            {
                await Exchange.Refuse(context, StatusCodes.Status404NotFound, ServerWords.NoAddress);
            }
        }
        catch (BadHttpRequestException problem)
        {
            await Exchange.Refuse(context, problem.StatusCode, problem.StatusCode == StatusCodes.Status413PayloadTooLarge ? ServerWords.TooLong : ServerWords.Malformed);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The page has sent a newer request and no longer waits for this one.
        }
        catch (Exception problem) when (!context.Response.HasStarted)
        {
            // A defect of the program: the user must be able to say what it was.
            context.Response.Headers.ContentLength = null;
            await Exchange.Refuse(context, StatusCodes.Status500InternalServerError, ServerWords.Defect(problem.GetType().Name, problem.Message));
        }
    }
}
