namespace BracketGen.Cli.Interview;

/// <summary>What an answer came to.</summary>
/// <param name="Toml">The value as it stands in a profile; null where there is none.</param>
/// <param name="Typed">The same as it may be typed again: nothing in it needs a question. Empty where the key is left out.</param>
/// <param name="Problem">What is wrong with it; null where nothing is, or where the person has taken it back.</param>
internal readonly record struct GivenAnswer(string? Toml, string Typed, string? Problem)
{
    /// <summary>The answer was taken back; the question is asked again.</summary>
    public static GivenAnswer TakenBack => new(null, "", null);

    /// <summary>Something is wrong with it.</summary>
    public static GivenAnswer Wrong(string problem) => new(null, "", problem);
}
