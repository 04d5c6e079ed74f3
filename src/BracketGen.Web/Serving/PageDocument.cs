using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using BracketGen.Web.Memory;
using BracketGen.Words.Page;

namespace BracketGen.Web.Serving;

/// <summary>The page's document: its words are filled in, and its scripts find theirs in it.</summary>
/// <remarks>Words stand as <c>{{section.name}}</c> in the file. The first picture waits for no further request.</remarks>
internal static partial class PageDocument
{
    /// <summary>Path of its address.</summary>
    public const string Path = "/";

    private const string Look = "{{look}}", Words = "{{words}}", Modules = "{{modules}}";

    private static readonly Lazy<byte[]> PairingFilled = new(() => Encoding.UTF8.GetBytes(Placeholder().Replace(PageAssets.Text("pairing.html"), Word)));

    private static readonly Lazy<string> Filled = new(() => Placeholder().Replace(PageAssets.Text("index.html"), Word)
        .Replace(Modules, Preloads(), StringComparison.Ordinal)
        .Replace(Words, PageWords.Json, StringComparison.Ordinal));

    /// <summary>The document with what the page remembers.</summary>
    public static byte[] With(Remembered remembered) => Encoding.UTF8.GetBytes(Filled.Value.Replace(Look, remembered.Look, StringComparison.Ordinal));

    /// <summary>The document that pairs a phone: all that one sees who is not paired.</summary>
    public static byte[] Pairing => PairingFilled.Value;

    // A module that another one imports is fetched with the document, not after it.
    private static string Preloads() => string.Join(
        '\n',
        PageAssets.Paths.Where(p => p.EndsWith(".js", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(p => $"<link rel=\"modulepreload\" href=\"{p}\">"));

    private static string Word(Match match) =>
        WebUtility.HtmlEncode(PageWords.Sections[match.Groups["section"].Value][match.Groups["name"].Value]);

    [GeneratedRegex(@"\{\{(?<section>\w+)\.(?<name>[\w-]+)\}\}")]
    private static partial Regex Placeholder();
}
