using BracketGen.Design.Part;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Line.Costing;

/// <summary>How long a part takes (s): for every piece, and once for a batch.</summary>
/// <param name="Cut">Cutting, each.</param>
/// <param name="Pierce">Piercing, each.</param>
/// <param name="CuttingSetUp">Setting up the cutting machine.</param>
/// <param name="Bend">Bending, each.</param>
/// <param name="BendingSetUp">Setting up the press brake, angles that are tried out and changes of the die.</param>
/// <param name="Finish">Burrs, washing and packing, each.</param>
public sealed record PartTimes(double Cut, double Pierce, double CuttingSetUp, double Bend, double BendingSetUp, double Finish)
{
    /// <summary>Those of <paramref name="bracket"/>.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="work">The rates: what a cut, a pierce and a bend take.</param>
    public static PartTimes Of(Bracket bracket, ShopRates work)
    {
        var flat = bracket.Flat;
        var bends = flat.Bends.Length;
        return new(
            flat.Blank.CutLength / 1000 * work.CutTime * flat.Thickness,
            flat.Blank.Contours.Count() * work.PierceTime * flat.Thickness,
            work.CuttingSetUp,
            bends * work.BendTime,
            bends * work.BendingSetUp + BracketCost.OddAngles(flat.Bends.AsSpan()) * work.AngleSetUp + Math.Max(0, BracketCost.Dies(flat.Bends.AsSpan()) - 1) * work.ToolChange,
            work.FinishingTime);
    }
}
