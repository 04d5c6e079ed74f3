namespace BracketGen.Design.Inputs;

/// <summary>What stands for the casting of the throttle body.</summary>
public enum BodyShape
{
    /// <summary>A cylinder round the bore and one under each boss, besides the keep-outs.</summary>
    BoreAndBosses,

    /// <summary>The keep-outs alone: they describe the whole casting.</summary>
    KeepOuts,
}
