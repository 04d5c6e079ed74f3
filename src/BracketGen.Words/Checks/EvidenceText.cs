using BracketGen.Geometry;

namespace BracketGen.Words.Checks;

/// <summary>How a number is known, in one word.</summary>
public static class EvidenceText
{
    /// <summary>The word, as files name it too.</summary>
    public static string Name(Evidence evidence) => evidence switch
    {
        Evidence.Measured => "measured",
        Evidence.Given => "given",
        _ => "assumed",
    };
}
