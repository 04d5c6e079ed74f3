using System.Globalization;
using System.IO.Hashing;
using System.Text;
using System.Text.RegularExpressions;

namespace BracketGen.Drawing.Sheet;

/// <summary>
/// Replaces what the PDF library draws at random (font subset tags, document identifiers) by what follows from the content.
/// </summary>
/// <remarks>Every replacement is as long as what it replaces, so the cross-reference table stays true.</remarks>
internal static partial class PdfIdentity
{
    public static byte[] Settle(byte[] pdf, DateOnly date)
    {
        // Latin-1 maps every byte to one character and back.
        var text = Encoding.Latin1.GetString(pdf);
        text = SettleFontTags(text);
        text = XmpIdentifier().Replace(text, m => m.Groups[1].Value + new string('0', m.Groups[2].Length));
        text = XmpDate().Replace(text, m => m.Groups[1].Value + date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + m.Groups[3].Value);

        var hash = Convert.ToHexString(XxHash128.Hash(Encoding.Latin1.GetBytes(text)));
        text = TrailerIdentifier().Replace(text, _ => $"/ID[<{hash}><{hash}>]");
        var uuid = $"{hash[..8]}-{hash[8..12]}-{hash[12..16]}-{hash[16..20]}-{hash[20..]}".ToLowerInvariant();
        text = XmpIdentifier().Replace(text, m => m.Groups[1].Value + uuid);
        return Encoding.Latin1.GetBytes(text);
    }

    /// <summary>Tags AAAAAA, AAAAAB, ... in order of appearance: ISO 32000-1, 9.6.4 asks only that subsets of one file differ.</summary>
    private static string SettleFontTags(string text)
    {
        var tags = FontTag().Matches(text).Select(m => m.Groups[2].Value).Distinct().ToList();
        return FontTag().Replace(text, m => m.Groups[1].Value + "AAAAA" + (char)('A' + tags.IndexOf(m.Groups[2].Value)));
    }

    [GeneratedRegex(@"(/(?:BaseFont|FontName)/)([A-Z]{6})(?=\+)")]
    private static partial Regex FontTag();

    [GeneratedRegex("(<xmpMM:(?:DocumentID|InstanceID)>uuid:)([0-9a-f-]{36})")]
    private static partial Regex XmpIdentifier();

    [GeneratedRegex(@"(<xmp:(?:CreateDate|ModifyDate)>)(\d{4}-\d\d-\d\d)(T)")]
    private static partial Regex XmpDate();

    [GeneratedRegex("/ID ?\\[ ?<[0-9A-F]{32}> ?<[0-9A-F]{32}> ?\\]")]
    private static partial Regex TrailerIdentifier();
}
