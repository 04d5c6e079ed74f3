namespace BracketGen.Web.Phone;

/// <summary>How far the pairing of a phone is.</summary>
public enum PairingState
{
    /// <summary>The code waits for a phone.</summary>
    Open,

    /// <summary>A phone is paired.</summary>
    Paired,

    /// <summary>Nobody used the code in time.</summary>
    RanOut,

    /// <summary>There were too many wrong codes.</summary>
    Closed,

    /// <summary>A phone was paired, and its time is over.</summary>
    Ended,
}
