namespace BracketGen.Drawing.Sheet;

/// <summary>The inks in red, green and blue (0 to 255), shared by all writers.</summary>
internal static class InkColour
{
    public static (byte Red, byte Green, byte Blue) Of(Ink ink) => ink switch
    {
        Ink.Black => (0, 0, 0),
        Ink.Grey => (90, 90, 90),
        Ink.Warning => (176, 0, 16),
        Ink.Tint => (232, 232, 232),
        Ink.White => (255, 255, 255),
        _ => throw new ArgumentOutOfRangeException(nameof(ink)),
    };
}
