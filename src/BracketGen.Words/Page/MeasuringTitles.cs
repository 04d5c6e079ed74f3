namespace BracketGen.Words.Page;

/// <summary>Titles of the measuring screens that the worksheet does not have.</summary>
public static class MeasuringTitles
{
    /// <summary>The first screen.</summary>
    public const string Name = "Name";

    /// <summary>The last screen.</summary>
    public const string Further = "Further numbers, from papers or common practice";
}
