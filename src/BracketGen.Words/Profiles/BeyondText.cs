using System.Collections.Immutable;

namespace BracketGen.Words.Profiles;

/// <summary>What people ask for in a file that the program cannot do, and what to do instead; docs/limits.md says it at length.</summary>
public static class BeyondText
{
    /// <summary>The chapter of the book.</summary>
    public const string Chapter = "docs/limits.md";

    /// <summary>What is asked for, by the words that people write, with the answer.</summary>
    public static ImmutableArray<(ImmutableArray<string> Words, string Answer)> All { get; } =
    [
        (["stop", "cable stop", "stop position"], "The program finds where the stop must sit; no key says it. To judge a bracket that is there already, use check."),
        (["drive by wire", "electronic throttle", "throttle motor", "motor"], "A throttle body that a motor opens has no cable. The program cannot help there: keep pedal and controller that belong together."),
        (["diaphragm", "vacuum actuator", "vacuum", "dashpot", "damper"], "A diaphragm or damper at the throttle shaft is not calculated: it can hold the valve open as it moves. Take it off, or have somebody judge it who knows it; give its room as a keep-out."),
        (["linkage", "rod", "link", "bellcrank", "lever linkage"], "A linkage of rods between cable and throttle shaft is not calculated. The cable must run to the quadrant itself."),
        (["progressive linkage", "secondary", "second valve", "twin valve", "staged"], "A second valve that opens later through a linkage is not calculated: the return of both rests on springs that the program does not see."),
        (["carburettor", "carburetor", "choke", "accelerator pump"], "A carburettor's own linkage, choke and pump are not calculated, and their forces are not in the return checks."),
        (["throttle bodies", "individual throttles", "bank"], "One job has one throttle body. Several throttle bodies on one shaft count as one, with all their springs; linked shafts are not calculated."),
        (["square snap in clip", "square clip", "snap in clip", "square hole"], "An end with barbs for a square hole has kind = \"square push-in end\" in [cable.outer_end]."),
        (["set screw", "grub screw", "ferrule in a bore", "bore with set screw"], "A ferrule held by a set screw needs a block with a bore, and the program makes sheet. Use a plain ferrule with an adjuster in the run of the outer."),
        (["weld", "welded", "weldment", "gusset", "tube", "casting", "milled"], "The program makes brackets of one bent sheet: no welds, no tube, no milled part. Welds beside a bend are not judged either."),
        (["exhaust", "heat shield", "heat source"], "Heat is not calculated. Give the exhaust as a keep-out, and the bracket's temperature under [life] of the job."),
        (["boat", "aircraft", "motorcycle", "twist grip", "hand lever"], "The program knows a pedal at the cable's end: a hand lever or twist grip has other forces and other rules, and is not judged."),
    ];

    /// <summary>The answer to what somebody wrote as a key or a word; null where it is no such thing.</summary>
    /// <param name="written">The key, or the word in its quotes.</param>
    public static string? For(string written)
    {
        var plain = string.Join(' ', written.Trim('"', '\'', ' ').ToLowerInvariant().Split('_', '-', ' '));
        foreach (var (words, answer) in All)
        {
            if (words.Contains(plain))
            {
                return $"{answer} See {Chapter}.";
            }
        }

        return null;
    }
}
