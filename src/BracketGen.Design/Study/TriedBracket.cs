using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;

namespace BracketGen.Design.Study;

/// <summary>A bracket that is there already, tried on a job: what the command, the page and the report tell of it.</summary>
/// <param name="Bracket">What was measured or drawn.</param>
/// <param name="Trial">What it comes to.</param>
/// <param name="Found">What corrects it; null where that was not looked for.</param>
public sealed record TriedBracket(MeasuredBracket Bracket, BracketTrial Trial, BracketRemedies.Found? Found)
{
    /// <summary>The bracket as it lies before anybody, its mount flange in its own coordinates.</summary>
    public Bracket Shape => ShapeOf(Bracket, Trial.Job);

    /// <summary>A bracket tried on a job, with what corrects it.</summary>
    /// <param name="measured">The bracket; its metal is one that the job's shop knows, or a class.</param>
    /// <param name="job">The job.</param>
    /// <param name="strength">How finely it is meshed; null where its strength is not looked at. What corrects it is tried whole all the same.</param>
    public static TriedBracket Of(MeasuredBracket measured, Job job, StrengthDetail? strength)
    {
        var bracket = ShapeOf(measured, job);
        var trial = BracketTrial.Of(job, bracket, measured.Thickness.PlusMinus, strength);
        return new(measured, trial, BracketRemedies.Of(trial, bracket, measured.Thickness.PlusMinus, strength));
    }

    /// <summary>The same as measured: without strength, without what its ± may turn, without what corrects it. It does not pass. Quick.</summary>
    /// <param name="measured">The bracket; its metal is one that the job's shop knows, or a class.</param>
    /// <param name="job">The job.</param>
    public static TriedBracket Quick(MeasuredBracket measured, Job job) =>
        new(measured, BracketTrial.AsMeasured(job, ShapeOf(measured, job)), null);

    // The reader made sure that there is one.
    private static Bracket ShapeOf(MeasuredBracket measured, Job job) => MeasuredShape.Of(measured, measured.MetalIn(job.Shop)!).Bracket!;
}
