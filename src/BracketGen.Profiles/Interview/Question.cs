using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Interview;

/// <summary>How an answer is written into a profile.</summary>
internal enum AnswerForm
{
    /// <summary>A number, bare or with a unit.</summary>
    Quantity,

    /// <summary>The same, with «+/-» and how well it was measured.</summary>
    Measured,

    /// <summary>Free text.</summary>
    Text,

    /// <summary>One of a few words.</summary>
    Word,

    /// <summary>Three numbers.</summary>
    Point,

    /// <summary>A number that only steers the questions and is not written.</summary>
    Count,
}

/// <summary>One question of the terminal.</summary>
/// <param name="Section">Header it is written under: «» for the top of the file, «[cable]», «[[mount.holes]] 2».</param>
/// <param name="Key">Key it is written as.</param>
/// <param name="Form">How.</param>
/// <param name="Ask">The question.</param>
/// <param name="Explain">What the number is and how to measure it.</param>
/// <param name="Default">What an empty answer means; null where an answer is wanted, empty where the key is then left out.</param>
/// <param name="Words">The words allowed, for <see cref="AnswerForm.Word"/>.</param>
internal sealed record Question(
    string Section, string Key, AnswerForm Form, string Ask, string Explain, string? Default = null, params string[] Words)
{
    /// <summary>Name among the answers.</summary>
    public string Name => $"{Section} {Key}";
}
