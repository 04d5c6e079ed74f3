namespace BracketGen.Design.Checks;

/// <summary>Whether the adapter ring bends or cracks, and what it lets the stop give.</summary>
/// <param name="YieldFactor">Its yield strength over its largest stress under the proof load.</param>
/// <param name="EnduranceFactor">Safety factor against cracking from the pedal's openings.</param>
/// <param name="EnduranceAtWorst">The same with flatness and temperature at their bad ends, where nobody measured them; null where both are known.</param>
/// <param name="StampedStress">Its largest von Mises stress under the proof load (MPa).</param>
/// <param name="OpeningStress">Its largest von Mises stress under the largest tension of an opening (MPa).</param>
/// <param name="OwnFrequency">Its lowest natural frequency with nothing on it (Hz).</param>
/// <param name="Metal">What its metal withstands.</param>
public sealed record RingReport(
    double YieldFactor, double EnduranceFactor, double? EnduranceAtWorst, double StampedStress, double OpeningStress, double OwnFrequency, StrengthMetal Metal);
