using BracketGen.Profiles;
using BracketGen.Web.Desk;
using BracketGen.Web.Messages;
using BracketGen.Words.Page;
using BracketGen.Words.Terminal;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Routes;

/// <summary>Answers about what was measured in shop and vehicle: readings on the fitted bracket, test bends.</summary>
internal sealed class ShopFloorAnswers(Turns turns)
{
    /// <summary>What the readings on the fitted bracket mean.</summary>
    public async Task Fitted(HttpContext context, FittedMessage message)
    {
        if (JobDesk.Of(message.Job, message.Files) is not { } desk || message.Readings.Values.Any(t => t is null || t.Length > MostLetters))
        {
            await Exchange.Refuse(context, StatusCodes.Status400BadRequest, ServerWords.NotOfThePage);
            return;
        }

        var readings = await turns.Take(() => DeskReadings.Of(desk, message.Readings), context.RequestAborted);
        await Exchange.SendJson(context, to => FittedReply.Write(to, readings));
    }

    /// <summary>What test strips come to, and the edit that puts it into the shop's file; without strips only what can be picked.</summary>
    public static Task TestBend(HttpContext context, TestBendMessage message)
    {
        if (JobDesk.Of(message.Shop, new Dictionary<string, string> { [message.Shop] = message.Text }) is not { } file || message.Strips.Length > MostStrips
            || message.Strips.Any(s => s is not { Length: <= ValuesOfStrip } || s.Any(v => v is null || v.Length > MostLetters)))
        {
            return Exchange.Refuse(context, StatusCodes.Status400BadRequest, ServerWords.NotOfThePage);
        }

        var read = ProfileReader.ReadShop(message.Shop, MemoryFileSource.Empty.With(message.Shop, file.Files[message.Shop]));
        if (read.Value is not { } shop)
        {
            return Exchange.SendJson(context, to => Reply.Errors(to, read.Errors));
        }

        var asked = TestBendReply.Picked(shop, message.Stock, message.Tool);
        return Exchange.SendJson(context, to =>
        {
            Reply.Errors(to, []);
            TestBendReply.Choices(to, shop);
            if (message.Strips.Length == 0)
            {
                return;
            }

            var (answer, refusal) = asked is null ? (null, TestBendPageWords.NotThere) : TestBendAnswer.Of(shop, asked, [.. message.Strips.Select(Typed)]);
            to.WriteString("problem", refusal);
            if (answer is not null)
            {
                TestBendReply.Answer(to, shop, answer);
            }
        });
    }

    // The thickness may be left out.
    private static TypedStrip Typed(string[] values, int i)
    {
        string[] parts = [.. values.Select(v => v.Trim())];
        parts = parts is [.. var first, ""] && parts.Length == ValuesOfStrip ? first : parts;
        return new(TestBendPageWords.Strip(i + 1), string.Join(", ", parts), parts);
    }

    private const int MostStrips = 12, ValuesOfStrip = 6;

    // A reading is a number with its unit.
    private const int MostLetters = 80;
}
