namespace BracketGen.Drawing;

/// <summary>What a bracket's drawing holds beside the first sheet.</summary>
/// <remarks>Immutable, thread-safe.</remarks>
public sealed record DrawingOptions
{
    /// <summary>Everything.</summary>
    public static readonly DrawingOptions Standard = new();

    /// <summary>Whether a cut file compensated for the kerf goes with it: then a note tells the two apart.</summary>
    public bool WithKerfCompensated { get; init; }

    /// <summary>Whether the 1:1 template follows.</summary>
    public bool WithTemplate { get; init; } = true;
}
