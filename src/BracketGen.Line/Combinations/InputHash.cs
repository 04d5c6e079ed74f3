using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using BracketGen.Profiles.Family;

namespace BracketGen.Line;

/// <summary>What a combination is made from, as hashes: the same inputs and program give the same files.</summary>
public static class InputHash
{
    /// <summary>The first 32 hexadecimal digits of SHA-256 over some texts, each ended by a zero byte.</summary>
    public static string OfTexts(IEnumerable<string> texts)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var text in texts)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(text));
            hash.AppendData([0]);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..32];
    }

    /// <summary>The first 32 hexadecimal digits of SHA-256 over bytes.</summary>
    public static string OfBytes(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes))[..32];

    /// <summary>The hash of a file's facts.</summary>
    public static string Of(ImmutableArray<Fact> facts) => OfTexts(facts.SelectMany(f => new[] { f.Key, f.Value }));
}
