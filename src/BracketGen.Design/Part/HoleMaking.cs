using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Part;

/// <summary>How a hole of the bracket is made, and how true it comes out: drawing, cut file and probabilities use the same numbers.</summary>
/// <param name="IsDrilled">Whether the beam only marks its middle and it is drilled to size afterwards.</param>
/// <param name="Size">Limit deviation of its diameter, or of a slot's width (mm, either way).</param>
/// <param name="Position">Limit deviation of its centre along x and along y (mm, either way).</param>
public sealed record HoleMaking(bool IsDrilled, double Size, double Position)
{
    /// <summary>How far off a pilot mark a drill may start (mm; common practice, no source): mark centre-punched by hand, drill led by a smaller one.</summary>
    public const double DrillOffMark = 0.5;

    /// <summary>How a hole is made.</summary>
    /// <remarks>
    /// The beam cuts it with the deviations of ISO 9013, class 1 for laser and water jet and 2 for plasma. It is drilled at a pilot mark, to ISO 2768-1 m, where it is
    /// smaller than the process cuts clean, or where the smallest hole that the process may leave does not take what goes through it. A slot and a hole that is not round are always cut.
    /// </remarks>
    /// <param name="hole">The hole.</param>
    /// <param name="body">Diameter (mm) of what goes through it.</param>
    /// <param name="process">How the shop cuts.</param>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    public static HoleMaking Of(BracketHole hole, double body, CuttingProcess process, double thickness)
    {
        var cut = CutTolerance.Deviation(CuttingLimits.ToleranceClass(process), hole.Diameter, thickness);
        var isDrilled = !hole.IsSlot && hole.Outline is null && (hole.Diameter < CuttingLimits.SmallestHole(process, thickness) || hole.Diameter - cut <= body);
        return isDrilled
            ? new(true, GeneralTolerance.Linear(Math.Clamp(hole.Diameter, 0.5, 2000)), Math.Max(DrillOffMark, cut))
            : new(false, cut, cut);
    }

    /// <summary>The same for a hole of a bracket: a bolt's thread goes through, or the body of the outer's end.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="hole">One of its holes.</param>
    /// <param name="end">The outer's end.</param>
    /// <param name="process">How the shop cuts.</param>
    public static HoleMaking Of(Bracket bracket, BracketHole hole, OuterEnd end, CuttingProcess process) =>
        Of(hole, hole.Thread?.Diameter ?? end.BodyDiameter, process, bracket.Stock.Thickness);

    /// <summary>The holes of a job's bracket that are drilled at a pilot mark.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="job">Its job: shop and outer end.</param>
    public static IEnumerable<BracketHole> Drilled(Bracket bracket, Job job) =>
        bracket.Holes.Where(h => Of(bracket, h, job.Vehicle.Cable.OuterEnd, job.Shop.Process).IsDrilled);
}
