using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using BracketGen.Profiles.Editing;

namespace BracketGen.Web.Desk;

/// <summary>The values of the profiles that were asked about last: an edit changes one text of a job, and the others are not read again.</summary>
/// <remarks>Thread-safe.</remarks>
internal sealed class KnownValues
{
    // A job names a handful of profiles; two that are open at once find theirs.
    private const int MaxTexts = 16;

    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly Lock _gate = new();
    private readonly Queue<string> _order = new();
    private readonly Dictionary<string, byte[]> _byText = [];

    /// <summary>Every value of a profile by its key, as JSON in UTF-8.</summary>
    /// <param name="text">The profile's text.</param>
    public byte[] Of(string text)
    {
        lock (_gate)
        {
            if (_byText.TryGetValue(text, out var known))
            {
                return known;
            }
        }

        var values = Encoding.UTF8.GetBytes(ProfileValues.Of(text).ToJsonString(Plain));
        lock (_gate)
        {
            if (_byText.TryAdd(text, values))
            {
                _order.Enqueue(text);
            }

            if (_order.Count > MaxTexts)
            {
                _byText.Remove(_order.Dequeue());
            }
        }

        return values;
    }
}
