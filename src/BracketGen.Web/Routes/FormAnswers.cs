using System.Text.Json;
using BracketGen.Drawing.Measuring;
using BracketGen.Profiles;
using BracketGen.Web.Measuring;
using BracketGen.Web.Messages;
using BracketGen.Words.Page;
using Microsoft.AspNetCore.Http;

namespace BracketGen.Web.Routes;

/// <summary>Answers about what can be entered: the profiles' schemas, and the questions of the measuring path.</summary>
internal static class FormAnswers
{
    /// <summary>The schema of each kind of profile.</summary>
    public static Task Schemas(HttpContext context) => Exchange.SendJson(context, to =>
    {
        foreach (var (file, text) in ProfileSchema.InFull)
        {
            to.WritePropertyName(file.Split('.')[0]);
            to.WriteRawValue(text);
        }
    });

    /// <summary>The worksheet to take to the vehicle.</summary>
    public static Task Worksheet(HttpContext context, PaperMessage message)
    {
        var bytes = WorksheetFile.Write(message.Paper);
        context.Response.Headers.ContentDisposition = $"attachment; filename=\"{WorksheetFile.Name}\"";
        return Exchange.Send(context, bytes, "application/octet-stream");
    }

    /// <summary>The worksheet's sketches, by what they are of: the page asks for them once.</summary>
    public static Task Sketches(HttpContext context) => Exchange.SendJson(context, to =>
    {
        foreach (var kind in new[] { ProfileKind.Vehicle, ProfileKind.ThrottleBody })
        {
            Reply.Texts(to, kind.Word, MeasuringPath.Sketches(kind.Word));
        }
    });

    /// <summary>The questions of a profile as it is so far.</summary>
    public static Task Questions(HttpContext context, TextMessage message)
    {
        if (message.Kind is not ("vehicle" or "throttle body"))
        {
            return Exchange.Refuse(context, StatusCodes.Status400BadRequest, ServerWords.NoQuestions);
        }

        var steps = MeasuringPath.Of(message.Kind, message.Text);
        return Exchange.SendJson(context, to =>
        {
            to.WritePropertyName("steps");
            JsonSerializer.Serialize(to, steps, MessageContext.Default.IReadOnlyListMeasuringStep);
            to.WritePropertyName("screens");
            JsonSerializer.Serialize(to, MeasuringPath.Screens(message.Kind, steps), MessageContext.Default.IReadOnlyListMeasuringScreen);
            var (part, place) = SoFar.Picture(message.Kind, message.Text);
            to.WriteString("part", part);
            to.WriteStartArray("place");
            foreach (var number in place is var (scale, shaft, right) ? (double[])[scale, shaft.X, shaft.Y, right] : [])
            {
                to.WriteNumberValue(number);
            }

            to.WriteEndArray();
        });
    }
}
