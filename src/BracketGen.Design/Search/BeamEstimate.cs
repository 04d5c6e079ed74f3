using BracketGen.Design.Inputs;

namespace BracketGen.Design.Search;

/// <summary>What beam theory makes of a bracket: to compare brackets by, never to judge one.</summary>
/// <param name="Give">Give of the stop (mm).</param>
/// <param name="Stress">Bending stress at the most stressed bend (MPa).</param>
/// <param name="Mass">Mass (t).</param>
/// <param name="Yield">Yield strength of its material (MPa).</param>
/// <param name="Endurance">Endurance strength of its material (MPa).</param>
internal readonly record struct BeamEstimate(double Give, double Stress, double Mass, double Yield, double Endurance)
{
    /// <summary>The estimate of a candidate under 1 N: M / W at each bend, with W = b t²/6 and the seat's distance as lever.</summary>
    public static BeamEstimate Of(Candidate candidate)
    {
        var bracket = candidate.Bracket;
        var (flat, material) = (bracket.Flat, bracket.Stock.Material);
        var seat = bracket.FoldedSeat.Point;
        var stress = flat.Bends.Select(b =>
        {
            var middle = bracket.Folded.Fold(b.Middle, flat.Thickness / 2);
            return 6 * seat.DistanceTo(middle) / (b.Length * flat.Thickness * flat.Thickness);
        }).DefaultIfEmpty(DesignTolerance.Nothing).Max();
        return new(Math.Max(candidate.Give, DesignTolerance.Nothing), stress, bracket.Mass, material.Yield, material.Endurance);
    }
}
