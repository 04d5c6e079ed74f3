namespace BracketGen.Design.Checks;

/// <summary>What helps a check that is not sure enough.</summary>
public enum MeasureHelp
{
    /// <summary>A measurement: with every reading exact the check would pass.</summary>
    Measure,

    /// <summary>No measurement: the check fails with every input at its value.</summary>
    FailsAsMeasured,

    /// <summary>No measurement: the tolerances of manufacture alone are too much.</summary>
    OnlyFinerWork,
}

/// <summary>Which measurement to take again for one check, or why none helps.</summary>
/// <param name="Help">What helps.</param>
/// <param name="Input">The input with the largest part of this check's own spread; null where no measurement helps.</param>
public sealed record MeasureAgain(MeasureHelp Help, string? Input);

/// <summary>Why a check that passes as calculated is not known all the same.</summary>
public enum Doubt
{
    /// <summary>Something it rests on is assumed.</summary>
    Assumption,

    /// <summary>The samples do not prove it.</summary>
    Sampling,

    /// <summary>The ± of what was measured on the bracket reaches over the limit.</summary>
    Reading,

    /// <summary>No bracket is designed yet: its give and its tolerances are not known.</summary>
    NoBracket,
}
