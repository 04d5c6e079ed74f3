using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using BracketGen.Words.Page;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Messages;

/// <summary>Reads a request's message and sends answers.</summary>
internal static class Exchange
{
    /// <summary>Hands the request's message to <paramref name="handle"/>; a body that is none is refused.</summary>
    public static async Task Take<T>(HttpContext context, JsonTypeInfo<T> type, Func<HttpContext, T, Task> handle)
        where T : class
    {
        T? message;
        try
        {
            message = await JsonSerializer.DeserializeAsync(context.Request.Body, type, context.RequestAborted);
        }
        catch (JsonException)
        {
            message = null;
        }

        await (message is null ? Refuse(context, StatusCodes.Status400BadRequest, ServerWords.NotOfThePage) : handle(context, message));
    }

    /// <summary>Sends a JSON object.</summary>
    public static Task SendJson(HttpContext context, Action<Utf8JsonWriter> write) => Send(context, Reply.Json(write), "application/json");

    /// <summary>Sends bytes; only their type and length if the request wants no more.</summary>
    public static Task Send(HttpContext context, byte[] bytes, string type)
    {
        context.Response.ContentType = type;
        context.Response.ContentLength = bytes.Length;
        return HttpMethods.IsHead(context.Request.Method) ? Task.CompletedTask : context.Response.Body.WriteAsync(bytes).AsTask();
    }

    /// <summary>Sends a sentence that says why there is no other answer.</summary>
    public static Task Refuse(HttpContext context, int status, string text)
    {
        context.Response.StatusCode = status;
        return Send(context, Encoding.UTF8.GetBytes(text + "\n"), "text/plain; charset=utf-8");
    }
}
