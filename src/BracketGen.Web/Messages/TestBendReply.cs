using System.Text.Json;
using BracketGen.Profiles.Editing;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words.Page;
using BracketGen.Words.Terminal;

namespace BracketGen.Web.Messages;

/// <summary>A test bend as the page shows it: what can be picked, every sentence that the command prints, and the edit of the shop's file.</summary>
internal static class TestBendReply
{
    /// <summary>Sheets and tools of the shop.</summary>
    public static void Choices(Utf8JsonWriter to, Shop shop)
    {
        Reply.Texts(to, "stock", shop.Stock.Select(s => TestBendWords.Stock(s.Material.Designation, s.Thickness, UnitSystem.Metric)));
        Reply.Texts(to, "tools", [.. shop.Dies.Select(d => TestBendPageWords.Die(d.Opening)), .. shop.Tools.Clamps.Select(c => c.Name)]);
    }

    /// <summary>What was picked; null where the shop has no such sheet or tool.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="stock">Number of the sheet, from 0.</param>
    /// <param name="tool">Number of the tool, from 0: dies first.</param>
    public static TestBendAsked? Picked(Shop shop, int stock, int tool)
    {
        if (stock < 0 || stock >= shop.Stock.Length || tool < 0 || tool >= shop.Dies.Length + shop.Tools.Clamps.Length)
        {
            return null;
        }

        var (sheet, clamp) = (shop.Stock[stock], tool - shop.Dies.Length);
        return new(sheet.Material.Designation, sheet.Thickness, clamp < 0 ? shop.Dies[tool].Opening : null, clamp < 0 ? null : shop.Tools.Clamps[clamp].Name);
    }

    /// <summary>What the strips come to.</summary>
    public static void Answer(Utf8JsonWriter to, Shop shop, TestBendAnswer answer)
    {
        to.WriteStartObject("answer");
        to.WriteString("state", answer.State switch { TestBendState.Good => "passes", TestBendState.OneStrip => "not-proven", _ => "fails" });
        to.WriteString("heading", answer.Heading);
        to.WriteStartArray("rows");
        foreach (var row in answer.Rows)
        {
            Reply.Texts(to, row);
        }

        to.WriteEndArray();
        Reply.Texts(to, "told", answer.Told);
        if (answer.Bend is { } bend)
        {
            var (key, value) = TestBendEdit.Of(shop, bend);
            to.WriteNumber("k", bend.K);
            to.WriteStartObject("edit");
            to.WriteString("key", key);
            to.WritePropertyName("value");
            value.WriteTo(to);
            to.WriteEndObject();
        }

        to.WriteEndObject();
    }
}
