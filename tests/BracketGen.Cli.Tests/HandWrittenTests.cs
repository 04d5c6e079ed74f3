using BracketGen.Cli.Interview;
using BracketGen.Profiles;
using BracketGen.Profiles.Interview;
using BracketGen.TestSupport;
using BracketGen.Units;
using CsCheck;

namespace BracketGen.Cli.Tests;

/// <summary>Numbers as people write them come to the value that was meant, and whatever may mean two things is asked about.</summary>
public class HandWrittenTests
{
    // Ways to write a whole number of sixty-fourths of an inch, with what must be asked.
    private static readonly (string Name, Func<int, string> Write, string[] Says)[] Sure =
    [
        ("sign", n => $"{Mixed(n)}\"", []),
        ("double prime", n => $"{Mixed(n)}″", []),
        ("unit", n => $"{Mixed(n)} in", []),
        ("no gap", n => $"{Decimal(n)}in", []),
        ("word", n => $"{Decimal(n)} inches", []),
        ("hyphen", n => $"{Mixed(n).Replace(' ', '-')} inch", []),
        ("mm", n => $"{(25.4m * n / 64m).ToString(System.Globalization.CultureInfo.InvariantCulture)}mm", []),
        ("cm", n => $"{(2.54m * n / 64m).ToString(System.Globalization.CultureInfo.InvariantCulture)} cm", []),
        ("comma", n => $"{Decimal(n).Replace('.', ',')}\"", ["1", "yes"]),
        ("bare fraction", n => $"{n}/64", ["yes"]),
    ];

    [Fact]
    public void Every_way_to_write_a_length_reads_back() => Gen.Int[1, 2500].Select(Gen.Int[0, Sure.Length - 1]).Check(2000, c =>
    {
        var (name, write, says) = Sure[c.Item2];
        var typed = write(c.Item1);
        var isAsked = typed.Contains(',') || name == "bare fraction";
        var (answer, asked) = Read(typed, says);
        Assert.Equal(isAsked, asked);
        Assert.Equal(25.4 * c.Item1 / 64, ValueOf(answer), 1e-9);

        // What is kept in a draft needs no further question and comes to the same.
        var (again, askedAgain) = Read(answer.Typed, []);
        Assert.False(askedAgain);
        Assert.Equal(answer.Toml, again.Toml);
    });

    [Fact]
    public void A_number_with_a_comma_is_never_taken_without_a_question() => Gen.Int[0, 2000].Select(Gen.Int[0, 9999]).Check(2000, c =>
    {
        foreach (var typed in new[] { $"{c.Item1},{c.Item2}", $"{c.Item1},{c.Item2} mm", $"{c.Item1},{c.Item2:D3}", $"1,{c.Item1:D3}.{c.Item2}", $"1.{c.Item1 % 1000:D3},{c.Item2} in" })
        {
            if (HandWritten.Read(typed) is not null)
            {
                Assert.True(Read(typed, ["no"]).IsAsked, typed);
            }
        }
    });

    [Theory]
    [InlineData("1½\"", 38.1)]
    [InlineData("¾ in", 19.05)]
    [InlineData("−2.5 mm", -2.5)]
    [InlineData("31.5mm", 31.5)]
    [InlineData("1 7/64\"", 28.178125)]
    [InlineData("7/64 in", 2.778125)]
    [InlineData("+5", 5)]
    public void Single_notations(string typed, double mm) => Assert.Equal(mm, ValueOf(Read(typed, []).Answer), 1e-9);

    [Theory]
    [InlineData("1,250", "1.250", "1250")]
    [InlineData("12,5", "12.5")]
    [InlineData("1,234.5", "1234.5")]
    [InlineData("1.234,5", "1234.5")]
    [InlineData("1,234,567", "1234567")]
    [InlineData("0,125", "0.125")]
    [InlineData("0125,250", "0125.250")]
    [InlineData(",5", ".5")]
    public void A_comma_has_every_reading_it_may_have(string typed, params string[] readings)
    {
        Assert.Equal(readings, HandWritten.Read(typed)!.Readings);
        Assert.False(HandWritten.Read(typed)!.IsSure);
    }

    [Fact]
    public void Two_angles_are_the_direction_that_they_say() => Gen.Double[-360, 360].Select(Gen.Double[-89, 89]).Check(500, c =>
    {
        var (polar, lean) = (Math.Round(c.Item1, 3), Math.Round(c.Item2, 3));
        using var screen = new StringWriter();
        var talk = new Conversation(TextReader.Null, screen);
        var reader = new AnswerReader(new(new(), talk), new(new(new(), talk), talk));
        var written = reader.Of(new(QuestionId.Up, "", "up", AnswerForm.Direction), FormattableString.Invariant($"{polar}, {lean}"), UnitTable.One, (_, _) => null).Toml!
            .Trim('[', ']').Split(", ").Select(n => double.Parse(n, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(Math.Sin(lean * Math.PI / 180), written[2], 1e-8);
        Assert.Equal(0, Math.IEEERemainder(Math.Atan2(written[1], written[0]) - polar * Math.PI / 180, 2 * Math.PI), 1e-6);
    });

    private static (GivenAnswer Answer, bool IsAsked) Read(string typed, string[] says)
    {
        using var lines = new StringReader(string.Concat(says.Select(s => s + "\n")));
        using var screen = new StringWriter();
        var answer = new NumberReader(new(), new(lines, screen)).Of([typed], [""], UnitTable.Millimetre, one => one[0]);
        return (answer, screen.ToString().Length > 0);
    }

    private static double ValueOf(GivenAnswer answer)
    {
        var text = answer.Toml!.Trim('"');
        var (value, error) = ReadingText.Parse(text, ReadingKind.Coordinate);
        return value ?? throw new InvalidDataException($"{text}: {error}");
    }

    private static string Mixed(int n) => n % 64 == 0 ? $"{n / 64}" : n < 64 ? $"{n}/64" : $"{n / 64} {n % 64}/64";

    private static string Decimal(int n) => (n / 64m).ToString(System.Globalization.CultureInfo.InvariantCulture);
}
