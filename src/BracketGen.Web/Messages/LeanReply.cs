using System.IO.Hashing;
using System.Runtime.InteropServices;
using System.Text.Json;

namespace BracketGen.Web.Messages;

/// <summary>Leaves out of a reply what the page has from replies before it.</summary>
/// <remarks>
/// A piece is a text or a value of the job, a part of the report, or the data of a picture. The reply names each piece by a mark of its
/// content: <c>new</c> lists those that it carries, <c>same</c> those that the page takes from what it has. Each entry is the keys that lead to the
/// piece, and the mark.
/// </remarks>
internal static class LeanReply
{
    /// <summary>Maximum number of marks that a page may name.</summary>
    public const int MaxMarks = 400;

    // A mark is shorter than this.
    private const int Shortest = 200;

    // The containers whose members are pieces.
    private static readonly string[][] Containers = [["files"], ["values"], ["answer", "parts"], ["answer", "data"]];

    /// <summary>The reply without what the page has.</summary>
    /// <param name="reply">The whole reply, a JSON object.</param>
    /// <param name="has">Marks of what the page has.</param>
    public static byte[] Of(byte[] reply, IReadOnlySet<string> has)
    {
        using var whole = JsonDocument.Parse(reply);
        List<string[]> sent = [], same = [];
        return Reply.Json(to =>
        {
            Members(to, whole.RootElement, [], has, sent, same);
            List(to, "new", sent);
            List(to, "same", same);
        });
    }

    private static void Members(Utf8JsonWriter to, JsonElement of, string[] path, IReadOnlySet<string> has, List<string[]> sent, List<string[]> same)
    {
        var arePieces = Containers.Any(c => c.SequenceEqual(path));
        foreach (var member in of.EnumerateObject())
        {
            string[] here = [.. path, member.Name];
            if (arePieces && MarkOf(member.Value) is { } mark)
            {
                (has.Contains(mark) ? same : sent).Add([.. here, mark]);
                if (has.Contains(mark))
                {
                    continue;
                }
            }

            to.WritePropertyName(member.Name);
            if (member.Value.ValueKind == JsonValueKind.Object && Containers.Any(c => c.Length >= here.Length && c.Take(here.Length).SequenceEqual(here)))
            {
                to.WriteStartObject();
                Members(to, member.Value, here, has, sent, same);
                to.WriteEndObject();
            }
            else
            {
                to.WriteRawValue(JsonMarshal.GetRawUtf8Value(member.Value), skipInputValidation: true);
            }
        }
    }

    private static string? MarkOf(JsonElement piece)
    {
        var bytes = JsonMarshal.GetRawUtf8Value(piece);
        return bytes.Length < Shortest ? null : Convert.ToHexStringLower(XxHash128.Hash(bytes));
    }

    private static void List(Utf8JsonWriter to, string name, List<string[]> entries)
    {
        to.WriteStartArray(name);
        foreach (var entry in entries)
        {
            to.WriteStartArray();
            foreach (var word in entry)
            {
                to.WriteStringValue(word);
            }

            to.WriteEndArray();
        }

        to.WriteEndArray();
    }
}
