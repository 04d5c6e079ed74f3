using BracketGen.Words.Page;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Serving;

/// <summary>Which requests are answered: those of this machine, by its own name, from the page itself or from no page.</summary>
/// <remarks>
/// A page of another site can send requests to any address, and can give its own name this machine's address; neither can put the
/// right name into <c>Host</c> and <c>Origin</c>. Sources: RFC 9110, 7.2; Fetch Standard, 3.1 (Origin); Fetch Metadata Request Headers
/// (Sec-Fetch-Site), W3C.
/// </remarks>
internal static class RequestGuard
{
    /// <summary>Why the request is refused; null if it is answered.</summary>
    /// <param name="request">The request.</param>
    /// <param name="port">Port that is listened on.</param>
    public static string? Refusal(HttpRequest request, int port)
    {
        string[] hosts = [$"127.0.0.1:{port}", $"localhost:{port}"];
        if (request.Headers.Host is not [{ } host] || !hosts.Contains(host, StringComparer.OrdinalIgnoreCase))
        {
            return ServerWords.OtherHost;
        }

        if (request.Headers.Origin is { Count: > 0 } origin && !(origin is [{ } from] && string.Equals(from, $"http://{host}", StringComparison.OrdinalIgnoreCase)))
        {
            return ServerWords.OtherPage;
        }

        // "none" is the address bar. An older browser sends nothing here; Origin, above, then guards every request that changes something.
        var isStart = HttpMethods.IsGet(request.Method) && request.Path == "/";
        return request.Headers["Sec-Fetch-Site"] is { Count: > 0 } site && !(site is ["same-origin"] || (isStart && site is ["none"]))
            ? ServerWords.OtherPage
            : null;
    }
}
