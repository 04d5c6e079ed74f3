using System.Globalization;
using System.Text.Json;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles.Editing;

/// <summary>A test bend put into a shop's file: in the place of the one for the same sheet and radius, or as one more.</summary>
public static class TestBendEdit
{
    /// <summary>Key and value to be written.</summary>
    /// <param name="shop">The shop as its file is now.</param>
    /// <param name="bend">The test bend.</param>
    public static (string Key, JsonElement Value) Of(Shop shop, TestBend bend)
    {
        var known = shop.TestBends.ToList().FindIndex(
            b => b.Material == bend.Material && IsSame(b.Thickness, bend.Thickness) && IsSame(b.InsideRadius, bend.InsideRadius));
        var k = bend.K.ToString(CultureInfo.InvariantCulture);
        return known >= 0
            ? ($"test_bends[{known + 1}].k", Json(k))
            : ("test_bends[+]", Json(string.Create(
                CultureInfo.InvariantCulture,
                $$"""{"material": "{{JsonEncodedText.Encode(bend.Material)}}", "thickness": {{bend.Thickness}}, "inside_radius": {{bend.InsideRadius}}, "k": {{k}}}""")));
    }

    /// <summary>The shop's text with the test bend; null where it cannot be put in so that it is read again as it was meant.</summary>
    /// <param name="text">The text.</param>
    /// <param name="shop">The shop that it holds.</param>
    /// <param name="bend">The test bend.</param>
    public static string? Apply(string text, Shop shop, TestBend bend)
    {
        const string inMemory = "shop.toml";
        var (key, value) = Of(shop, bend);
        return ProfileEditor.Apply(text, key, value) is { } edited
            && ProfileReader.ReadShop(inMemory, MemoryFileSource.Empty.With(inMemory, edited)).Value?.TestBends.Contains(bend) == true
            ? edited : null;
    }

    private static bool IsSame(double a, double b) => Math.Abs(a - b) < Tolerance.SameSize;

    private static JsonElement Json(string text)
    {
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }
}
