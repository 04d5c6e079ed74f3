using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Words.Checks;
using BracketGen.Words.Line;

namespace BracketGen.Line.Solving;

/// <summary>A part that was given out, tried on a variant as the variant is now.</summary>
public static class IssuedPart
{
    /// <summary>The part on the job: solved where it passes, or why it does not.</summary>
    /// <param name="family">The family.</param>
    /// <param name="job">The job.</param>
    /// <param name="shape">The part; null where nothing but its number is known.</param>
    /// <param name="strength">How finely it is meshed for its strength; null where that is not looked at.</param>
    /// <param name="mayBeOpen">What may be left to prove: what a part drawn anew would leave too. Null for anything.</param>
    public static (Solution? Passing, string[] Why) On(LoadedFamily family, Job job, Parts.PartShape? shape, StrengthDetail? strength, string[]? mayBeOpen)
    {
        if (shape is null)
        {
            return (null, [IssuedText.ShapeUnknown]);
        }

        if (shape.ToBracket(family, job.Vehicle.Cable, job.Preferences.StopOpening) is not { } bracket)
        {
            return (null, [IssuedText.SheetGone]);
        }

        if (job.Preferences.MountSlots is { } slots && !bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).All(h => h.Outline is SlottedHole s && Math.Abs(s.Travel - slots.Travel) <= Tolerance.SameSize))
        {
            return (null, [IssuedText.OtherSlots]);
        }

        // As it was bolted on when it was made, then in every other way in which its holes meet the face's.
        string[]? why = null;
        foreach (var mount in MountMatch.Of(bracket, job.Body.Mount).Prepend(bracket.Folded.Flanges[0]))
        {
            var quick = GivenBracket.On(job, bracket, mount);
            var solution = quick is null || strength is null || Fits.OutcomeOf(quick) is Outcome.Fails or Outcome.Unsafe ? quick : GivenBracket.On(job, bracket, mount, strength);
            if (solution is null)
            {
                continue;
            }

            var passes = Fits.OutcomeOf(solution) is Outcome.Passes or Outcome.NotProven;
            string[] open = passes ? [.. VerdictText.ToProve(solution.Verdict).Where(t => mayBeOpen?.Contains(t) == false)] : [];
            if (passes && open.Length == 0)
            {
                return (solution, []);
            }

            why ??= passes ? open : Fits.Reasons(solution);
        }

        return (null, why ?? [IssuedText.OutOfReach]);
    }
}
