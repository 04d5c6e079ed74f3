using System.Text.Json;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Forms;
using Tomlyn;
using Tomlyn.Model;

namespace BracketGen.Profiles.Tests;

/// <summary>Single values changed in a text, the rest left alone; what is then in it is judged by the TOML library's own model.</summary>
public class ProfileEditorTests
{
    public static TheoryData<string> Files => [.. Examples.Texts.Keys];

    private static JsonElement Json(string json) => JsonDocument.Parse(json).RootElement;

    private static string Set(string text, string key, string json) =>
        ProfileEditor.Apply(text, key, Json(json)) ?? throw new InvalidOperationException($"{key} = {json} is refused.");

    private static TomlTable Model(string text) => TomlSerializer.Deserialize<TomlTable>(text)!;

    // Every value of every example set anew: exactly the lines of that value differ, and every comment is still there.
    [Theory]
    [MemberData(nameof(Files))]
    public void Any_value_can_be_set_and_nothing_else_changes(string file)
    {
        var text = Examples.Texts[file];
        var keys = Keys(ProfileValues.Of(text), "").ToList();
        Assert.True(keys.Count > 5);
        foreach (var key in keys)
        {
            var edited = Set(text, key, "\"a mark\"");
            var (before, after) = (text.Split('\n'), edited.Split('\n'));
            Assert.Equal(before.Length, after.Length);
            Assert.Equal(1, before.Zip(after).Count(l => l.First != l.Second));
            Assert.Equal(text.Count(c => c == '#'), edited.Count(c => c == '#'));
            Assert.Equal("a mark", At(ProfileValues.Of(edited), key)?.GetValue<string>());
            var (one, other) = (ProfileValues.Of(text), ProfileValues.Of(edited));
            Assert.Equal(Keys(one, "").Where(k => k != key).Select(k => At(one, k)!.ToJsonString()), Keys(other, "").Where(k => k != key).Select(k => At(other, k)!.ToJsonString()));
            _ = Model(edited);
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_value_taken_away_and_put_back_is_the_same_profile(string file)
    {
        var text = Examples.Texts[file];
        foreach (var key in Keys(ProfileValues.Of(text), "").Where(k => !k.EndsWith(']')))
        {
            var without = ProfileEditor.Apply(text, key, null)!;
            Assert.Null(At(ProfileValues.Of(without), key));
            var back = Set(without, key, At(ProfileValues.Of(text), key)!.ToJsonString());
            Assert.Equal(Sorted(ProfileValues.Of(text)), Sorted(ProfileValues.Of(back)));
        }
    }

    [Theory]
    [InlineData("a = 1 # why\n", "a", "2.50", "a = 2.50 # why\n")]
    [InlineData("a = 1", "a", "\"1.125 in\"", "a = \"1.125 in\"")]
    [InlineData("# äö° comment with signs of two units: 𝛼\na = 1\n", "a", "2", "# äö° comment with signs of two units: 𝛼\na = 2\n")]
    [InlineData("a = 1\r\n\r\n[t]\r\nb = 2 # two\r\n", "t.b", "3", "a = 1\r\n\r\n[t]\r\nb = 3 # two\r\n")]
    [InlineData("a = { value = 1, plus_minus = 0.2 } # x\n", "a.plus_minus", "0.3", "a = { value = 1, plus_minus = 0.3 } # x\n")]
    [InlineData("a = { value = 1 }\n", "a.plus_minus", "0.3", "a = { value = 1, plus_minus = 0.3 }\n")]
    [InlineData("a = [1, 2, 3] # x\n", "a[2]", "5", "a = [1, 5, 3] # x\n")]
    [InlineData("a = [1, 2, 3]\n", "a[+]", "4", "a = [1, 2, 3, 4]\n")]
    [InlineData("a = [\n  1, # one\n  2, # two\n]\n", "a[+]", "3", "a = [\n  1, # one\n  2, 3, # two\n]\n")]
    [InlineData("a = []\n", "a[+]", "4", "a = [4]\n")]
    [InlineData("a = 1\n\n[t] # table\nb = 2\n\n# next\n[u]\nc = 3\n", "t.d", "4", "a = 1\n\n[t] # table\nb = 2\nd = 4\n\n# next\n[u]\nc = 3\n")]
    [InlineData("a = 1\n\n[t]\nb = 2\n", "c", "4", "a = 1\nc = 4\n\n[t]\nb = 2\n")]
    [InlineData("a = 1", "t.b", "4", "a = 1\n\n[t]\nb = 4\n")]
    [InlineData("q.a = 1\n", "q.b", "4", "q.a = 1\nq.b = 4\n")]
    [InlineData("[[h]]\na = 1\n\n[[h]]\na = 2\n\n[t]\nb = 1\n", "h[+]", "{\"a\":3}", "[[h]]\na = 1\n\n[[h]]\na = 2\n\n[[h]]\na = 3\n\n[t]\nb = 1\n")]
    [InlineData("[[h]]\na = 1\n\n[[h]]\na = 2\n", "h[2].b", "3", "[[h]]\na = 1\n\n[[h]]\na = 2\nb = 3\n")]
    [InlineData("a = 1\n", "h[+]", "{}", "a = 1\n\n[[h]]\n")]
    [InlineData("day = 2026-03-02 # issued\n", "day", "\"2026-03-03\"", "day = 2026-03-03 # issued\n")]
    [InlineData("a = \"x\"\n", "a", "\"\\\"\\\\\\n\\u0001\"", "a = \"\\\"\\\\\\n\\u0001\"\n")]
    public void Edits_read_as_if_made_by_hand(string text, string key, string json, string expected) => Assert.Equal(expected, Set(text, key, json));

    [Theory]
    [InlineData("a = 1 # gone with it\nb = 2 # stays\n", "a", "b = 2 # stays\n")]
    [InlineData("a = [1, 2, 3]\n", "a[1]", "a = [2, 3]\n")]
    [InlineData("a = [1, 2, 3]\n", "a[3]", "a = [1, 2]\n")]
    [InlineData("a = { value = 1, plus_minus = 0.2 }\n", "a.plus_minus", "a = { value = 1 }\n")]
    [InlineData("[t]\nb = 1\n\n[u]\nc = 2\n", "t", "[u]\nc = 2\n")]
    [InlineData("[t]\nb = 1\n\n[t.v]\nc = 2\n\n[u]\nc = 2\n", "t", "[u]\nc = 2\n")]
    [InlineData("[[h]]\na = 1\n\n[[h]]\na = 2\n\n[t]\nb = 1\n", "h[1]", "[[h]]\na = 2\n\n[t]\nb = 1\n")]
    public void What_is_taken_away_takes_its_own_line_along(string text, string key, string expected) => Assert.Equal(expected, ProfileEditor.Apply(text, key, null));

    [Theory]
    [InlineData("a = \n", "a", "1")]
    [InlineData("a = 1\n", "a.b", "1")]
    [InlineData("a = 1\n", "a[1]", "1")]
    [InlineData("a = 1\n", "h[2].b", "1")]
    [InlineData("a = 1\n", "", "1")]
    [InlineData("a = 1\n", "a b", "1")]
    [InlineData("a = 1\n", "b = 2\nc", "1")]
    [InlineData("a = 1\n", "a", "true")]
    [InlineData("a = 1\n", "a", "{\"b c\":1}")]
    [InlineData("a = 1\n", "a", "[null]")]
    public void What_cannot_be_done_is_refused(string text, string key, string json) => Assert.Null(ProfileEditor.Apply(text, key, Json(json)));

    private static IEnumerable<string> Keys(JsonNode? node, string path) => node switch
    {
        JsonObject table => table.SelectMany(p => Keys(p.Value, path.Length == 0 ? p.Key : $"{path}.{p.Key}")),
        JsonArray list => list.SelectMany((n, i) => Keys(n, $"{path}[{i + 1}]")),
        _ => [path],
    };

    private static JsonNode? At(JsonNode? node, string key)
    {
        foreach (var part in key.Split('.', '['))
        {
            node = part.EndsWith(']') ? (node as JsonArray)?[int.Parse(part[..^1], System.Globalization.CultureInfo.InvariantCulture) - 1] : (node as JsonObject)?[part];
        }

        return node;
    }

    private static string Sorted(JsonNode? node) => node switch
    {
        JsonObject table => $"{{{string.Join(',', table.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => p.Key + ":" + Sorted(p.Value)))}}}",
        JsonArray list => $"[{string.Join(',', list.Select(Sorted))}]",
        _ => node?.ToJsonString() ?? "null",
    };
}
