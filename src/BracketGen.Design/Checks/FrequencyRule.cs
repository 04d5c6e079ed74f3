namespace BracketGen.Design.Checks;

/// <summary>How a bracket's first natural frequency is judged.</summary>
public enum FrequencyRule
{
    /// <summary>It must keep clear of the firing frequency by the separation factor.</summary>
    Separation,

    /// <summary>It may be lower: what shaking does to the bracket decides. Only where no bracket keeps clear, and the shaking is given or measured.</summary>
    Response,
}
