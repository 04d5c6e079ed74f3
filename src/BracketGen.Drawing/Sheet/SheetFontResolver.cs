using PdfSharp.Fonts;

namespace BracketGen.Drawing.Sheet;

/// <summary>Gives the PDF library the embedded font and no other: a machine's own fonts would make its bytes depend on it.</summary>
internal sealed class SheetFontResolver : IFontResolver
{
    private static readonly Lock Gate = new();

    public static void Install()
    {
        lock (Gate)
        {
            if (GlobalFontSettings.FontResolver is null)
            {
                GlobalFontSettings.FontResolver = new SheetFontResolver();
            }
        }
    }

    public byte[]? GetFont(string faceName) =>
        Enum.GetValues<FontWeight>().Select(SheetFont.Of).FirstOrDefault(f => f.Name == faceName)?.File;

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        familyName == SheetFont.Family ? new(SheetFont.Of(bold ? FontWeight.Bold : FontWeight.Regular).Name) : null;
}
