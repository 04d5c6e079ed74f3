using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>Makes a bracket's strength report, from the mechanism with the give that was found.</summary>
public static class StrengthStudy
{
    /// <summary>The strength report of a bracket.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="travel">The travel with the stop where the bracket holds it.</param>
    /// <param name="placement">Where that is.</param>
    /// <param name="bracket">The bracket.</param>
    /// <param name="detail">How finely it is meshed.</param>
    /// <param name="rule">How the first natural frequency is judged.</param>
    public static StrengthReport Of(Job job, Travel travel, StopPlacement placement, Bracket bracket, StrengthDetail detail, FrequencyRule rule = FrequencyRule.Separation)
    {
        var tension = new StopTension(StopMechanism.Of(job, travel, placement));
        var part = BracketModel.Of(bracket, tension.Stop.EndIn(bracket.Stock.Thickness), StrengthMetal.Of(job, bracket.Stock.Material), JobFacts.Of(job).Ring?.Base);
        return SettledStrength.Of(new(tension, bracket, detail.Prepare(part), rule), detail).Report();
    }

    /// <summary>The same; null where it is not asked for, and for a bracket made elsewhere that cannot be meshed.</summary>
    /// <remarks>Edges that somebody measured may run so close to each other that the mesh has triangles without area: then strength is not known, and no pass.</remarks>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="travel">The travel with the stop where the bracket holds it.</param>
    /// <param name="placement">Where that is.</param>
    /// <param name="bracket">The bracket.</param>
    /// <param name="detail">How finely it is meshed; null where strength is not looked at.</param>
    /// <param name="rule">How the first natural frequency is judged.</param>
    public static StrengthReport? OfSome(Job job, Travel travel, StopPlacement placement, Bracket bracket, StrengthDetail? detail, FrequencyRule rule = FrequencyRule.Separation)
    {
        try
        {
            return detail is null ? null : Of(job, travel, placement, bracket, detail, rule);
        }
        catch (Exception problem) when (bracket.IsMadeElsewhere && problem is (ArgumentException or InvalidOperationException))
        {
            return null;
        }
    }

    /// <summary>Safety factor of a stress that comes and goes (MPa), by the Soderberg line.</summary>
    /// <remarks>
    /// σ_a/S_e + σ_m/S_y = 1/n with σ_a = σ_m = σ/2 (J. E. Shigley, C. R. Mischke, Mechanical Engineering Design, chapter on fatigue
    /// under fluctuating stress): the careful one of the usual lines, and the one that asks for no tensile strength.
    /// </remarks>
    public static double EnduranceFactor(double stress, double endurance, double yield) => EnduranceFactor(stress, 0, endurance, yield);

    /// <summary>The same with an alternating stress beside it (MPa) that swings to both sides: it adds to the amplitude of the one that comes and goes.</summary>
    public static double EnduranceFactor(double stress, double alternating, double endurance, double yield) => 1 / ((stress / 2 + alternating) / endurance + stress / 2 / yield);
}
