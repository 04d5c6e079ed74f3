using System.Collections.Immutable;
using System.IO.Hashing;
using System.Text;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;

namespace BracketGen.Line.Combinations;

/// <summary>What a combination is made from, as hashes: the same inputs and program give the same files.</summary>
/// <remarks>XXH128 tells changes apart, and needs no library of the system; it is no seal against forgery.</remarks>
public static class InputHash
{
    /// <summary>The 32 hexadecimal digits of XXH128 over some texts, each ended by a zero byte.</summary>
    public static string OfTexts(IEnumerable<string> texts)
    {
        var hash = new XxHash128();
        foreach (var text in texts)
        {
            hash.Append(Encoding.UTF8.GetBytes(text));
            hash.Append([0]);
        }

        return Convert.ToHexStringLower(hash.GetCurrentHash());
    }

    /// <summary>The 32 hexadecimal digits of XXH128 over bytes.</summary>
    public static string OfBytes(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(XxHash128.Hash(bytes));

    /// <summary>The hash of a file's facts, by the first names of their keys: a key that is renamed changes none.</summary>
    public static string Of(ImmutableArray<Fact> facts) => OfTexts(facts.SelectMany(f => new[] { RenamedKeys.FirstPath(f.Key), f.Value }));
}
