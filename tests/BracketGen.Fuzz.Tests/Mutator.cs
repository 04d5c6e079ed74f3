using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using BracketGen.Units;

namespace BracketGen.Fuzz.Tests;

/// <summary>Hurts an input in one of many ways, the same on every run for the same number.</summary>
public static partial class Mutator
{
    private static readonly string[] Scraps =
    [
        "\"", "'", "'''", "\"\"\"", "[", "]", "[[", "{", "}", "=", ",", ".", "#", "\n", "\r", "\r\n", "\0", "\uFEFF", "é", "\u202E", "\U0001F527", "nan", "-inf", "inf", "1e999", "0x", "0xFF", "0b1", "0o7",
        "1979-05-27T07:32:00Z", "2026-02-30", "\\u00", "\\uD800", "plus_minus", "value = 1", "[mount]", "[[keep_out]]", "a.b.c = 1", "true", "null", "-", "12 lbf", "9999999999999999999", "../", "/dev/null",
        "{serial}", "{vehicle}", "<script>", "%s", "1 1/0 in", "1/0", "+/-", "\t",
    ];

    private static readonly string[] Numbers =
    [
        "0", "-0.0", "-1", "1", "nan", "-nan", "inf", "-inf", "1e308", "-1e308", "1e-308", "4.9e-324", "1e999", "1e-999", "9223372036854775807", "-9223372036854775808",
        "9223372036854775808", "2147483648", "0.1", "1e-9", "1e-6", "0.001", "1000", "1e6", "1e15", "360", "-360", "90", "89.9999999", "180", "\"0 in\"", "\"1e308 in\"", "\"1/0 in\"", "\"0/1 in\"", "\"-1 in\"",
        "{ value = 1, plus_minus = 1e9 }", "{ value = nan, plus_minus = 0 }", "{ value = 5, plus_minus = 0 }", "{ value = 0, plus_minus = 20 }", "[]", "[0, 0, 0]", "true", "\"\"", "00", "1_000", "0.", ".5", "1e",
    ];

    /// <summary>Mutation number <paramref name="number"/> of the stream <paramref name="stream"/>.</summary>
    public static FuzzCase Make(int stream, int number)
    {
        var random = RandomOf(stream, number);
        var seed = Corpus.Seeds[random.Next(Corpus.Seeds.Count)];
        return seed with { Name = $"{stream}:{number} ({seed.Name})", Bytes = Hurt(seed.Bytes, random) };
    }

    /// <summary>The same of bytes that are none of the corpus.</summary>
    public static byte[] Make(byte[] seed, int stream, int number) => Hurt(seed, RandomOf(stream, number));

    private static Random RandomOf(int stream, int number) => new(unchecked((stream * 1_000_003) + number));

    private static byte[] Hurt(byte[] seed, Random random)
    {
        // Half of the mutations are kind to the format, so that what is read can be put through the rest of the program.
        var bytes = seed;
        var kind = random.Next(2) == 0;
        for (var hurts = random.Next(1, 5); hurts > 0; hurts--)
        {
            bytes = kind ? Kind(bytes, random) : Hurt(bytes, seed, random);
        }

        return bytes;
    }

    private static byte[] Kind(byte[] bytes, Random random) => random.Next(8) switch
    {
        0 or 1 => Edit(bytes, t => InRange(t, random)),
        2 => Edit(bytes, t => Line(t, random, repeat: false)),
        3 => Edit(bytes, t => ReplaceNumber(t, random, (_, _) => Pick(Numbers, random))),
        _ => Edit(bytes, t => ReplaceNumber(t, random, Scaled)),
    };

    private static byte[] Hurt(byte[] bytes, byte[] seed, Random random) => random.Next(16) switch
    {
        0 => FlipBits(bytes, random),
        1 => Cut(bytes, random),
        2 => [.. bytes[..random.Next(bytes.Length + 1)]],
        3 => Repeat(bytes, random),
        4 => Insert(bytes, Encoding.UTF8.GetBytes(Pick(Scraps, random)), random),
        5 => Edit(bytes, t => ReplaceNumber(t, random, (_, _) => Pick(Numbers, random))),
        6 => Edit(bytes, t => SwapTokens(t, random)),
        7 => Edit(bytes, t => Line(t, random, repeat: true)),
        8 => Edit(bytes, t => SwapLines(t, random)),
        9 => Encode(bytes, random),
        10 => Insert(bytes, Encoding.UTF8.GetBytes(Deep(random)), random),
        11 => random.Next(8) == 0 ? Insert(bytes, Encoding.UTF8.GetBytes(Huge(random)), random) : Cut(bytes, random),
        12 => Splice(bytes, Corpus.Seeds[random.Next(Corpus.Seeds.Count)].Bytes, random),
        13 => Splice(bytes, seed, random),
        14 => Edit(bytes, t => Unit(t, random)),
        _ => Edit(bytes, t => InRange(t, random)),
    };

    private static byte[] Edit(byte[] bytes, Func<string, string> edit) => Encoding.UTF8.GetBytes(edit(Encoding.UTF8.GetString(bytes)));

    private static T Pick<T>(IReadOnlyList<T> items, Random random) => items[random.Next(items.Count)];

    private static byte[] FlipBits(byte[] bytes, Random random)
    {
        byte[] hurt = [.. bytes];
        for (var count = random.Next(1, 6); count > 0 && hurt.Length > 0; count--)
        {
            hurt[random.Next(hurt.Length)] ^= (byte)(1 << random.Next(8));
        }

        return hurt;
    }

    private static byte[] Cut(byte[] bytes, Random random)
    {
        var at = random.Next(bytes.Length + 1);
        return [.. bytes[..at], .. bytes[Math.Min(bytes.Length, at + random.Next(1, 60))..]];
    }

    private static byte[] Repeat(byte[] bytes, Random random)
    {
        var from = random.Next(bytes.Length + 1);
        return Insert(bytes, bytes[from..Math.Min(bytes.Length, from + random.Next(1, 400))], random);
    }

    private static byte[] Insert(byte[] bytes, byte[] what, Random random)
    {
        var at = random.Next(bytes.Length + 1);
        return [.. bytes[..at], .. what, .. bytes[at..]];
    }

    private static byte[] Splice(byte[] bytes, byte[] other, Random random) => [.. bytes[..random.Next(bytes.Length + 1)], .. other[random.Next(other.Length + 1)..]];

    private static byte[] Encode(byte[] bytes, Random random)
    {
        var text = Encoding.UTF8.GetString(bytes);
        return random.Next(8) switch
        {
            0 => [0xEF, 0xBB, 0xBF, .. bytes],
            1 => Encoding.Unicode.GetBytes(text),
            2 => Encoding.BigEndianUnicode.GetBytes('\uFEFF' + text),
            3 => Encoding.UTF32.GetBytes(text),
            4 => Encoding.Latin1.GetBytes(text + "ä"),
            5 => Insert(bytes, [0xC0, 0xAF], random),
            6 => Insert(bytes, [0xED, 0xA0, 0x80], random),
            _ => Encoding.UTF8.GetBytes(text.Replace("\n", random.Next(2) == 0 ? "\r\n" : "\r", StringComparison.Ordinal)),
        };
    }

    private static string Deep(Random random)
    {
        var depth = Pick([20, 200, 2000, 50_000], random);
        return random.Next(4) switch
        {
            0 => "deep = " + new string('[', depth) + new string(']', depth) + "\n",
            1 => "deep = " + string.Concat(Enumerable.Repeat("{a=", depth)) + "1" + new string('}', depth) + "\n",
            2 => string.Join('.', Enumerable.Repeat("a", depth)) + " = 1\n",
            _ => string.Concat(Enumerable.Repeat("{\"a\":", depth)) + "1" + new string('}', depth),
        };
    }

    private static string Huge(Random random)
    {
        var size = Pick([1000, 60_000, 1_100_000], random);
        return random.Next(5) switch
        {
            0 => "# " + new string('x', size) + "\n",
            1 => "name = \"" + new string('é', size / 2) + "\"\n",
            2 => new string('9', size),
            3 => string.Concat(Enumerable.Repeat("[[keep_out]]\n", size / 13)),
            _ => string.Concat(Enumerable.Repeat("\n", size)),
        };
    }

    private static string Line(string text, Random random, bool repeat)
    {
        var lines = text.Split('\n').ToList();
        var at = random.Next(lines.Count);
        if (repeat)
        {
            lines.Insert(random.Next(lines.Count), lines[at]);
        }
        else
        {
            lines.RemoveAt(at);
        }

        return string.Join('\n', lines);
    }

    private static string SwapLines(string text, Random random)
    {
        var lines = text.Split('\n');
        int a = random.Next(lines.Length), b = random.Next(lines.Length);
        (lines[a], lines[b]) = (lines[b], lines[a]);
        return string.Join('\n', lines);
    }

    private static string SwapTokens(string text, Random random)
    {
        var tokens = Tokens().Matches(text);
        if (tokens.Count < 2)
        {
            return text;
        }

        var one = tokens[random.Next(tokens.Count)];
        var other = tokens[random.Next(tokens.Count)];
        var (a, b) = one.Index < other.Index ? (one, other) : (other, one);
        return a == b ? text : text[..a.Index] + b.Value + text[(a.Index + a.Length)..b.Index] + a.Value + text[(b.Index + b.Length)..];
    }

    private static string ReplaceNumber(string text, Random random, Func<string, Random, string> by)
    {
        var numbers = NumberToken().Matches(text);
        if (numbers.Count == 0)
        {
            return text;
        }

        var number = numbers[random.Next(numbers.Count)];
        return text[..number.Index] + by(number.Value, random) + text[(number.Index + number.Length)..];
    }

    private static string Scaled(string written, Random random)
    {
        if (!double.TryParse(written, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
        {
            return written;
        }

        var changed = random.Next(6) switch
        {
            0 => -value,
            1 => value + random.Next(-90, 91),
            2 => value * 10,
            3 => value / 10,
            _ => value * (0.5 + (1.5 * random.NextDouble())),
        };
        return written.Contains('.') || random.Next(2) == 0
            ? changed.ToString("0.######", CultureInfo.InvariantCulture)
            : Math.Round(changed).ToString("0", CultureInfo.InvariantCulture);
    }

    // A number at, just inside or anywhere between the limits of its key.
    private static string InRange(string text, Random random)
    {
        var pairs = Pair().Matches(text).Where(m => Limits.Of(m.Groups["key"].Value).Count > 0).ToArray();
        if (pairs.Length == 0)
        {
            return text;
        }

        var pair = pairs[random.Next(pairs.Length)];
        var (least, most) = Pick(Limits.Of(pair.Groups["key"].Value), random);
        var value = random.Next(5) switch
        {
            0 => least,
            1 => most,
            2 => least + ((most - least) * 1e-6),
            _ => least + ((most - least) * random.NextDouble()),
        };
        var number = pair.Groups["number"];
        return text[..number.Index] + value.ToString("0.#########", CultureInfo.InvariantCulture) + text[(number.Index + number.Length)..];
    }

    private static string Unit(string text, Random random) => ReplaceNumber(
        text, random, (n, r) => $"\"{n} {Pick(["mm", "cm", "m", "in", "ft", "lbf", "N", "N m", "lbf in", "deg", "rad", "V", "mV", "%", "", "parsec"], r)}\"");

    [GeneratedRegex("\"[^\"\n]*\"|[A-Za-z0-9_.+-]+|[^\\s]", RegexOptions.CultureInvariant)]
    private static partial Regex Tokens();

    [GeneratedRegex(@"(?<![A-Za-z0-9_.])-?[0-9]+(\.[0-9]+)?", RegexOptions.CultureInvariant)]
    private static partial Regex NumberToken();

    [GeneratedRegex(@"(?<key>[a-z_]+) = (\{ value = )?(?<number>-?[0-9]+(\.[0-9]+)?)(?=[ ,}\n])", RegexOptions.CultureInvariant)]
    private static partial Regex Pair();
}
