using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Line.Combinations;

namespace BracketGen.Line.Solving;

/// <summary>A combination that passes, with the bracket that was made for it; or a shared part, which is the best bracket of no combination.</summary>
/// <param name="Combination">The combination; of a shared part the one that it is shown on: the first that it serves.</param>
/// <param name="Made">What was made of it; of a shared part its number, revision and shape.</param>
/// <param name="Bracket">Its bracket, throttle frame as measured.</param>
/// <param name="Job">Its job, title block as made.</param>
public sealed record LinePart(Combination Combination, Made Made, Bracket Bracket, Job Job)
{
    /// <summary>What the register knows it by; empty for a shared part that has no number yet.</summary>
    public string Key { get; init; } = Combination.Key;

    /// <summary>Whether it is the best bracket of its combination.</summary>
    public bool IsOwn => Key == Combination.Key;

    /// <summary>Its folder within the line's, with slashes.</summary>
    public string Folder => (IsOwn ? CombinationsFolder : SharedFolder) + "/" + Key;

    /// <summary>Name of the folder of the combinations' folders within the line's.</summary>
    public const string CombinationsFolder = "combinations";

    /// <summary>Name of the folder of the shared parts' folders within the line's.</summary>
    public const string SharedFolder = "shared";
}

/// <summary>Which part serves a combination.</summary>
/// <param name="Served">The combination, by its own part.</param>
/// <param name="By">The part that serves it: its own or another's.</param>
/// <param name="Mount">Where that part's mount flange lies on the combination's throttle body, throttle frame as measured.</param>
/// <param name="Fit">The margins with it, every check made anew.</param>
public sealed record Service(LinePart Served, LinePart By, Frame Mount, Fit Fit)
{
    /// <summary>Whether it is served by another's part.</summary>
    public bool IsShared => Served != By;
}

/// <summary>The parts of a line, and which combination each serves.</summary>
/// <param name="Parts">The parts to make, in the order of the combinations they were made for; shared ones last.</param>
/// <param name="Services">Every passing combination, in order, with its part.</param>
/// <param name="IsCheapest">Whether of all lines with so few of the brackets tried this one is proven to need the fewest variants on shared parts, and then to move the adjusters least.</param>
/// <param name="Tried">How many brackets were checked on another's combination, every check or up to the first that fails.</param>
public sealed record PartSelection(IReadOnlyList<LinePart> Parts, IReadOnlyList<Service> Services, bool IsCheapest, int Tried)
{
    /// <summary>How many brackets were tried that are the best of no combination.</summary>
    public int Candidates { get; init; }

    /// <summary>The number of parts below which, proven, no choice of the brackets tried goes.</summary>
    public int AtLeast { get; init; } = Parts.Count;

    /// <summary>How many combinations kept the part that they had.</summary>
    public int Kept { get; init; }

    /// <summary>Why a combination could not keep the part that it had, a line each, by key.</summary>
    public IReadOnlyDictionary<string, string[]> Lost { get; init; } = new Dictionary<string, string[]>();
}
