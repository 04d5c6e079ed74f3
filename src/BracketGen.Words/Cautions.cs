namespace BracketGen.Words;

/// <summary>The cautions that every drawing, report and screen carries.</summary>
public static class Cautions
{
    /// <summary>The cautions, one sentence or two each, most important first.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "A throttle that sticks open can kill. This is a design aid: a competent person checks the finished installation, and the rules for vehicles where you drive decide.",
        "At least two independent return springs must each close the valve alone (49 CFR 571.124 S5).",
        "Before the first start, engine off, cold and hot: from every pedal position the valve must spring back fully shut at once.",
        "Nothing may catch the wire, the end fitting or the quadrant, also when the engine moves on its mounts.",
    ];
}
