using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Line.Combinations;

namespace BracketGen.Line.Solving;

/// <summary>A combination that passes, with the bracket that was made for it.</summary>
/// <param name="Combination">The combination.</param>
/// <param name="Made">What was made of it.</param>
/// <param name="Bracket">Its bracket, throttle frame as measured.</param>
/// <param name="Job">Its job, title block as made.</param>
public sealed record LinePart(Combination Combination, Made Made, Bracket Bracket, Job Job);

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
/// <param name="Parts">The parts to make, in the order of the combinations they were made for.</param>
/// <param name="Services">Every passing combination, in order, with its part.</param>
/// <param name="IsCheapest">Whether of all lines with so few parts this one is proven to move the adjusters least.</param>
/// <param name="Tried">How many brackets were checked in full on another's combination.</param>
public sealed record PartSelection(IReadOnlyList<LinePart> Parts, IReadOnlyList<Service> Services, bool IsCheapest, int Tried);
