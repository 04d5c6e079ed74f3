using BracketGen.Design.Checks;

namespace BracketGen.Words.Checks;

/// <summary>What can come too near to something else, in words.</summary>
public static class ThingText
{
    /// <summary>What it is called within a sentence.</summary>
    /// <param name="thing">What it is.</param>
    /// <param name="name">Its name, where it has one.</param>
    public static string Of(Thing thing, string? name) => thing switch
    {
        Thing.Bracket => "bracket",
        Thing.Bolt => $"head of bolt {name}",
        Thing.KeepOut => name ?? "keep-out",
        Thing.Casting => "casting round the bore",
        Thing.Boss => $"boss of hole {name}",
        Thing.Ring => "adapter ring",
        Thing.FlangeBolt => $"head of flange bolt {name}",
        Thing.Spring => $"return spring ({name})",
        Thing.Quadrant => "quadrant and fitting",
        Thing.Wire => "straight wire",
        Thing.OtherWire => $"wire and outer end of the cable \"{name}\"",
        Thing.Outer => "outer",
        _ => "outer end",
    };

    /// <summary>The same at the beginning of a sentence.</summary>
    /// <param name="thing">What it is.</param>
    /// <param name="name">Its name, where it has one.</param>
    public static string Capital(Thing thing, string? name)
    {
        var text = Of(thing, name);
        return char.ToUpperInvariant(text[0]) + text[1..];
    }
}
