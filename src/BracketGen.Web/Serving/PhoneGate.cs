using System.Net;
using BracketGen.Web.Messages;
using BracketGen.Web.Phone;
using BracketGen.Words.Page;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;

namespace BracketGen.Web.Serving;

/// <summary>What of the network is answered: a paired phone; before that the page that pairs one, and nothing else.</summary>
/// <param name="pairing">Code and session.</param>
/// <param name="guard">Looks at names and origins first.</param>
/// <param name="answering">Answers the paired phone as it does this machine.</param>
/// <param name="cookie">Name of the session's cookie.</param>
/// <param name="told">Is told when a phone is paired, or pairing closes.</param>
internal sealed class PhoneGate(Pairing pairing, RequestGuard guard, Answering answering, string cookie, Action<PairingState, IPAddress> told)
{
    /// <summary>Path that the code is sent to.</summary>
    public const string PairPath = "/pair";

    /// <summary>Longest request of one who is not paired (bytes): a code, and some air.</summary>
    public const int MaxBody = 1024;

    private static readonly string[] Open = ["/pairing.js", "/pairing.css", "/icon.svg"];

    /// <summary>Answers or refuses a request; false if there is no such address.</summary>
    public async Task<bool> Answer(HttpContext context)
    {
        var request = context.Request;
        var isPost = HttpMethods.IsPost(request.Method);
        if (guard.Refusal(request) is { } refusal)
        {
            return await Refuse(context, refusal);
        }

        // Every browser of today names the page that a POST comes from.
        if (isPost && request.Headers.Origin.Count == 0)
        {
            return await Refuse(context, ServerWords.OtherPage);
        }

        if (pairing.IsPaired(request.Cookies[cookie]))
        {
            return await answering.Answer(context);
        }

        context.Features.Get<IHttpMaxRequestBodySizeFeature>()!.MaxRequestBodySize = MaxBody;
        if (pairing.State != PairingState.Open)
        {
            return await Refuse(context, WhyNot(pairing.State));
        }

        var path = request.Path.Value ?? "";
        if (isPost && path == PairPath && Answering.IsJson(request))
        {
            await Exchange.Take(context, MessageContext.Default.PairMessage, Pair);
            return true;
        }

        if (!HttpMethods.IsGet(request.Method))
        {
            return await Refuse(context, PairingWords.NotPaired);
        }

        if (path == "/")
        {
            await Exchange.Send(context, PageDocument.Pairing, "text/html; charset=utf-8");
            return true;
        }

        if (Open.Contains(path) && PageAssets.Find(path) is var (bytes, type))
        {
            await Exchange.Send(context, bytes, type);
            return true;
        }

        return await Refuse(context, PairingWords.NotPaired);
    }

    private async Task Pair(HttpContext context, PairMessage message)
    {
        var from = context.Connection.RemoteIpAddress!;
        if (pairing.Pair(message.Code) is { } key)
        {
            // The browser may be closed by the telephone while it takes a picture: the cookie outlives that, and never the session.
            context.Response.Headers.SetCookie = $"{cookie}={key}; Path=/; Max-Age={(int)Pairing.SessionLife.TotalSeconds}; Secure; HttpOnly; SameSite=Strict";
            told(PairingState.Paired, from);
            await Exchange.SendJson(context, _ => { });
            return;
        }

        var state = pairing.State;
        if (state == PairingState.Closed)
        {
            told(state, from);
        }

        await Refuse(context, state == PairingState.Open ? PairingWords.WrongCode : WhyNot(state));
    }

    private static string WhyNot(PairingState state) => state switch
    {
        PairingState.Paired => PairingWords.Taken,
        PairingState.RanOut => PairingWords.RanOut,
        PairingState.Closed => PairingWords.Closed,
        PairingState.Ended => PairingWords.Ended,
        _ => PairingWords.NotPaired,
    };

    private static async Task<bool> Refuse(HttpContext context, string text)
    {
        await Exchange.Refuse(context, StatusCodes.Status403Forbidden, text);
        return true;
    }
}
