using BracketGen.Drawing.Sheet;
using BracketGen.Profiles.Family;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Sheet;

public class SheetFontTests
{
    // Measured in the font file with fontTools 4.38 (2000 units per em, cap height 1500): advances H 1400, E 1200, 0 1300, full stop 600.
    [Theory]
    [InlineData("H", 1400)]
    [InlineData("E", 1200)]
    [InlineData("0.0", 1300 + 600 + 1300)]
    public void Advances(string text, double units) =>
        Assert.Equal(units / 1500 * 3.5, SheetFont.Of(FontWeight.Regular).Width(text, 3.5), 1e-9);

    // Same source: g reaches down to -517, l up to 1620, H from 0 to 1520.
    [Fact]
    public void Ink()
    {
        Assert.Equal((-517 / 1500.0, 1620 / 1500.0), SheetFont.Of(FontWeight.Regular).Ink("gl", 1));
        Assert.Equal((0, 1520 / 1500.0), SheetFont.Of(FontWeight.Regular).Ink("H", 1));
    }

    [Fact]
    public void The_marks_of_drawings_are_there()
    {
        foreach (var weight in Enum.GetValues<FontWeight>())
        {
            Assert.True(SheetFont.Of(weight).Covers("0123456789.,±°Ø×µ²³≤≥–—…“”‘’·→√ÄÖÜäöüßéèñå\u00a0()[]/+-=%#&<>"));
        }
    }
}
