using BracketGen.Words.Page;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Serving;

/// <summary>Which requests are answered: those that use the page's own name, from the page itself or from no page.</summary>
/// <remarks>
/// A page of another site can send requests to any address, and can give its own name this machine's address; neither can put the
/// right name into <c>Host</c> and <c>Origin</c>. Sources: RFC 9110, 7.2; Fetch Standard, 3.1 (Origin); Fetch Metadata Request Headers
/// (Sec-Fetch-Site), W3C.
/// </remarks>
/// <param name="scheme">Scheme of the page's address.</param>
/// <param name="hosts">The names that the page goes by, with port.</param>
internal sealed class RequestGuard(string scheme, params string[] hosts)
{
    /// <summary>Why the request is refused; null if it is answered.</summary>
    public string? Refusal(HttpRequest request)
    {
        if (request.Headers.Host is not [{ } host] || !hosts.Contains(host, StringComparer.OrdinalIgnoreCase))
        {
            return ServerWords.OtherHost;
        }

        if (request.Headers.Origin is { Count: > 0 } origin && !(origin is [{ } from] && string.Equals(from, $"{scheme}://{host}", StringComparison.OrdinalIgnoreCase)))
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
