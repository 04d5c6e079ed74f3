using BracketGen.Web.Messages;
using BracketGen.Words.Page;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Serving;

/// <summary>What every answer carries, and what is said where there is none.</summary>
internal static class Responding
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; "
        + "frame-ancestors 'none'; require-trusted-types-for 'script'; trusted-types page";

    /// <summary>Answers a request.</summary>
    /// <param name="context">The request.</param>
    /// <param name="answer">Answers it, or refuses it; false if there is no such address.</param>
    public static async Task Handle(HttpContext context, Func<HttpContext, Task<bool>> answer)
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
            if (!await answer(context))
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
