namespace BracketGen.Words.Page;

/// <summary>What a phone is told before it is paired, and after.</summary>
public static class PairingWords
{
    /// <summary>The device is not paired.</summary>
    public const string NotPaired = "This device is not paired. Scan the picture in the terminal of the shop's machine.";

    /// <summary>The code is wrong.</summary>
    public const string WrongCode = "This is not the code. Scan the picture again.";

    private const string NewCode = "Press Enter in the terminal of the shop's machine for a new code.";

    internal static Dictionary<string, string> All { get; } = new()
    {
        ["heading"] = "Pair this phone",
        ["asks"] = "The code is being sent.",
        ["without"] = NotPaired,
        ["silent"] = "The shop's machine does not answer. Check that the program is running there and that this phone is in the same network. Then scan the picture again.",
        ["noScript"] = "This page needs JavaScript. Allow it in the browser's settings.",
    };

    /// <summary>Another phone is paired, as is said to everybody but that phone.</summary>
    public const string Taken = "A phone is paired already: the code works once. If this is that phone, its browser has lost the session: stop the program on the shop's machine with Ctrl-C and start it again.";

    /// <summary>Nobody used the code in time.</summary>
    public const string RanOut = $"The code has run out. {NewCode}";

    /// <summary>There were too many wrong codes.</summary>
    public const string Closed = $"There were too many wrong codes: none is taken any more. {NewCode}";

    /// <summary>The time of the paired phone is over.</summary>
    public const string Ended = $"The time of this pairing is over. Keep this page open: what you typed is still here. {NewCode} Then scan it.";
}
