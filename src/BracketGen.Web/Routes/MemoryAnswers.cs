using BracketGen.Web.Memory;
using BracketGen.Web.Messages;
using BracketGen.Words.Page;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Routes;

/// <summary>Keeps what the page is to remember.</summary>
internal sealed class MemoryAnswers(PageMemory memory)
{
    /// <summary>Remembers what the page sends.</summary>
    public async Task Remember(HttpContext context, Remembered message)
    {
        if (!message.IsAllowed)
        {
            await Exchange.Refuse(context, StatusCodes.Status400BadRequest, ServerWords.BadLook(Remembered.Looks));
            return;
        }

        try
        {
            memory.Save(message);
            await Exchange.SendJson(context, _ => { });
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            await Exchange.Refuse(context, StatusCodes.Status409Conflict, ServerWords.NotRemembered(problem.Message));
        }
    }
}
