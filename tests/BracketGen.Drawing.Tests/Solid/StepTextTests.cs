using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using BracketGen.Design.Checks;
using BracketGen.Drawing.Solid.Step;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Drawing.Tests.Solid;

public partial class StepTextTests
{
    // Codes from Unicode's charts; the way they are written from ISO 10303-21, clause 6.3.3.
    [Theory]
    [InlineData("", "''")]
    [InlineData("PLV-A58-01", "'PLV-A58-01'")]
    [InlineData("pedal's \\ stop", @"'pedal''s \\ stop'")]
    [InlineData("Gaszugbügel", @"'Gaszugb\X2\00FC\X0\gel'")]
    [InlineData("αβ γ", @"'\X2\03B103B2\X0\ \X2\03B3\X0\'")]
    [InlineData("支架", @"'\X2\652F67B6\X0\'")]
    [InlineData("a\nb", @"'a\X2\000A\X0\b'")]
    [InlineData("½ 🔩", @"'\X2\00BD\X0\ \X4\0001F529\X0\'")]
    public void AnyLetterHasItsCode(string text, string expected) => Assert.Equal(expected, StepText.String(text));

    [Theory]
    [InlineData(0, "0.")]
    [InlineData(-0.0, "0.")]
    [InlineData(30, "30.")]
    [InlineData(-0.125, "-0.125")]
    [InlineData(1e-7, "1.E-07")]
    [InlineData(1.5e-12, "1.5E-12")]
    [InlineData(1e20, "1.E+20")]
    public void RealsHaveAPoint(double value, string expected) => Assert.Equal(expected, StepText.Real(value));

    [Fact]
    public void RealsFollowTheGrammarAndReadBack() => Gen.Double.Where(double.IsFinite).Check(2000, value =>
    {
        var text = StepText.Real(value);
        Assert.Matches(Grammar, text);
        Assert.Equal(value, double.Parse(text, CultureInfo.InvariantCulture));
    });

    [Fact]
    public void StringsReadBack() => Gen.String.Check(500, text =>
    {
        // Half of a pair of surrogates is no character; everybody's decoders put U+FFFD in its place.
        var whole = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            whole.Append(rune);
        }

        var written = StepText.String(text);
        Assert.All(written, c => Assert.InRange(c, ' ', '~'));
        Assert.Equal(whole.ToString(), Decode(written));
    });

    [Fact]
    public void NoNumberIsNoReal() => Assert.Throws<ArgumentException>(() => StepText.Real(double.NaN));

    /// <summary>A decoder written from the standard's grammar, not from the encoder.</summary>
    internal static string Decode(string text) => Escapes.Replace(text[1..^1], match => match.Value switch
    {
        "''" => "'",
        @"\\" => @"\",
        var coded => string.Concat(coded[4..^4].Chunk(coded[2] == '2' ? 4 : 8).Select(code =>
            char.ConvertFromUtf32(int.Parse(code, NumberStyles.HexNumber, CultureInfo.InvariantCulture)))),
    });

    // REAL = [SIGN] DIGIT {DIGIT} "." {DIGIT} ["E" [SIGN] DIGIT {DIGIT}].
    [GeneratedRegex(@"^[+-]?\d+\.\d*(E[+-]?\d+)?$")]
    private static partial Regex Grammar { get; }

    [GeneratedRegex(@"''|\\\\|\\X2\\([0-9A-F]{4})+\\X0\\|\\X4\\([0-9A-F]{8})+\\X0\\")]
    private static partial Regex Escapes { get; }
}
