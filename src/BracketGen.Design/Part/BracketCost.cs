using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Part;

/// <summary>One part of a bracket's cost.</summary>
public enum CostPart
{
    /// <summary>Sheet, by the mass of the finished bracket.</summary>
    Sheet,

    /// <summary>Cutting, by length, with the pierces and its share of the set-up.</summary>
    Cutting,

    /// <summary>Bends, each with its share of the set-up.</summary>
    Bends,

    /// <summary>Bend angles that are not 90°: each is tried out.</summary>
    Angles,

    /// <summary>Changes to another die.</summary>
    ToolChanges,

    /// <summary>Strips bent first on dies that were never tried with this sheet.</summary>
    TestStrips,

    /// <summary>Deburring, washing and packing.</summary>
    Finishing,

    /// <summary>Give of the stop under the wire's tension: no bill, a preference.</summary>
    Give,

    /// <summary>Little groove behind the wire at the closed stop: likewise.</summary>
    LittleGroove,

    /// <summary>Adjuster off mid range: likewise.</summary>
    Adjuster,
}

/// <summary>What a bracket costs to make, and what is held against it beside the bill: by their total one passing bracket is weighed against another.</summary>
/// <remarks>
/// In the shop's currency, or in minutes where the shop gives no rates (<see cref="ShopRates"/>). What a preference is worth in minutes is our
/// judgement, no source. Each part depends on the bracket and its place alone, never on what else could be made.
/// </remarks>
public readonly record struct BracketCost
{
    /// <summary>Groove behind the wire at the closed stop with which it surely stays in it (our judgement, no source): less costs, so that a margin is kept where it costs little.</summary>
    public static readonly Angle AmpleGroove = Angle.FromDegrees(5);

    /// <summary>Minutes to cut, bend and measure a test strip, shared by a batch (our judgement, no source).</summary>
    public const double TestStripMinutes = 10;

    /// <summary>Minutes that a millimetre less of give is worth.</summary>
    public const double GiveMinutes = 5;

    /// <summary>Minutes that <see cref="AmpleGroove"/> is worth against none.</summary>
    public const double GrooveMinutes = 1;

    /// <summary>Minutes that an adjuster at mid range is worth against one that is its whole range off.</summary>
    public const double AdjusterMinutes = 4;

    /// <summary>A bend within this of 90° is set without trying out (our judgement, no source).</summary>
    public static readonly Angle SquareWithin = Angle.FromDegrees(0.5);

    /// <summary>See <see cref="CostPart.Sheet"/>.</summary>
    public double Sheet { get; private init; }

    /// <summary>See <see cref="CostPart.Cutting"/>.</summary>
    public double Cutting { get; private init; }

    /// <summary>See <see cref="CostPart.Bends"/>.</summary>
    public double Bends { get; private init; }

    /// <summary>See <see cref="CostPart.Angles"/>.</summary>
    public double Angles { get; private init; }

    /// <summary>See <see cref="CostPart.ToolChanges"/>.</summary>
    public double ToolChanges { get; private init; }

    /// <summary>See <see cref="CostPart.TestStrips"/>.</summary>
    public double TestStrips { get; private init; }

    /// <summary>See <see cref="CostPart.Finishing"/>.</summary>
    public double Finishing { get; private init; }

    /// <summary>See <see cref="CostPart.Give"/>.</summary>
    public double Give { get; private init; }

    /// <summary>See <see cref="CostPart.LittleGroove"/>.</summary>
    public double LittleGroove { get; private init; }

    /// <summary>See <see cref="CostPart.Adjuster"/>.</summary>
    public double Adjuster { get; private init; }

    /// <summary>What it costs to make.</summary>
    public double Bill => Sheet + Cutting + Bends + Angles + ToolChanges + TestStrips + Finishing;

    /// <summary>What is held against it beside the bill.</summary>
    public double Preferences => Give + LittleGroove + Adjuster;

    /// <summary>Both: less is better.</summary>
    public double Total => Bill + Preferences;

    /// <summary>Every part, bill first.</summary>
    public ImmutableArray<(CostPart Part, double Cost)> Parts =>
    [
        (CostPart.Sheet, Sheet), (CostPart.Cutting, Cutting), (CostPart.Bends, Bends), (CostPart.Angles, Angles), (CostPart.ToolChanges, ToolChanges),
        (CostPart.TestStrips, TestStrips), (CostPart.Finishing, Finishing), (CostPart.Give, Give), (CostPart.LittleGroove, LittleGroove), (CostPart.Adjuster, Adjuster),
    ];

    /// <summary>Whether a part is a preference and no bill.</summary>
    public static bool IsPreference(CostPart part) => part is CostPart.Give or CostPart.LittleGroove or CostPart.Adjuster;

    /// <summary>Cost of a bracket.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="placement">Where the stop is.</param>
    /// <param name="give">Give of the stop along the wire under its largest tension (mm).</param>
    /// <param name="adjusterRange">Whole range of the adjuster (mm).</param>
    /// <param name="rates">What work and sheet cost.</param>
    public static BracketCost Of(Bracket bracket, StopPlacement placement, double give, double adjusterRange, ShopRates rates) => Of(
        new(bracket.Stock, bracket.Mass, bracket.Flat.Blank.CutLength, 1 + bracket.Flat.Blank.Holes.Length),
        bracket.Flat.Bends.AsSpan(), placement, give, adjusterRange, rates);

    /// <summary>A blank, by what it costs.</summary>
    /// <param name="Stock">The sheet.</param>
    /// <param name="Mass">Its mass (t).</param>
    /// <param name="CutLength">Length of the outline and the holes (mm).</param>
    /// <param name="Pierces">Number of contours.</param>
    internal readonly record struct Blank(Stock Stock, double Mass, double CutLength, int Pierces);

    /// <summary>The same of a bracket of which only blank and bends are known.</summary>
    internal static BracketCost Of(Blank blank, ReadOnlySpan<Bend> bends, StopPlacement placement, double give, double adjusterRange, ShopRates rates) =>
        OfWork(blank, bends.Length, OddAngles(bends), Dies(bends) - 1, rates) with
        {
            TestStrips = OfTestStrips(bends, rates),
            Give = OfGive(give, rates),
            LittleGroove = OfGroove(placement, rates),
            Adjuster = OfAdjuster(placement, adjusterRange, rates),
        };

    /// <summary>What a place of the stop counts, whatever bracket gets there.</summary>
    internal static double OfPlace(StopPlacement placement, double adjusterRange, ShopRates rates) =>
        OfGroove(placement, rates) + OfAdjuster(placement, adjusterRange, rates);

    private static double OfGroove(StopPlacement placement, ShopRates rates) =>
        rates.Worth(GrooveMinutes * Math.Clamp(1 - placement.GrooveLeft.Radians / AmpleGroove.Radians, 0, 1));

    private static double OfAdjuster(StopPlacement placement, double adjusterRange, ShopRates rates) =>
        adjusterRange > 0 ? rates.Worth(AdjusterMinutes * Math.Abs(placement.AdjusterShift) / adjusterRange) : 0;

    /// <summary>The bill.</summary>
    /// <param name="blank">The blank.</param>
    /// <param name="bends">Number of bends.</param>
    /// <param name="angles">How many of them are not of 90°.</param>
    /// <param name="toolChanges">How often the die is changed.</param>
    /// <param name="rates">What work and sheet cost.</param>
    internal static BracketCost OfWork(Blank blank, int bends, int angles, int toolChanges, ShopRates rates)
    {
        var seconds = blank.Stock.Thickness * (rates.CutTime * blank.CutLength / 1000 + rates.PierceTime * blank.Pierces);
        return new()
        {
            Sheet = OfSheet(blank.Mass, blank.Stock.Material, rates),
            Cutting = rates.Cutting(seconds + rates.CuttingSetUp / rates.Batch),
            Bends = bends * OfBend(rates),
            Angles = angles * OfAngle(rates),
            ToolChanges = Math.Max(0, toolChanges) * rates.Bending(rates.ToolChange / rates.Batch),
            Finishing = rates.Bending(rates.FinishingTime),
        };
    }

    /// <summary>Whether a bend angle is 90° without trying out.</summary>
    public static bool IsSquare(Angle turn) => Math.Abs(turn.Magnitude.Radians - Angle.Right.Radians) <= SquareWithin.Radians;

    /// <summary>How many bends are not of 90°.</summary>
    public static int OddAngles(ReadOnlySpan<Bend> bends)
    {
        var odd = 0;
        foreach (var bend in bends)
        {
            odd += IsSquare(bend.Turn) ? 0 : 1;
        }

        return odd;
    }

    /// <summary>How many dies bend it: each gives an inside radius of its own.</summary>
    public static int Dies(ReadOnlySpan<Bend> bends)
    {
        var dies = 0;
        for (var i = 0; i < bends.Length; i++)
        {
            var isNew = true;
            for (var k = 0; k < i; k++)
            {
                isNew &= Math.Abs(bends[k].InsideRadius - bends[i].InsideRadius) > Tolerance.SameSize;
            }

            dies += isNew ? 1 : 0;
        }

        return dies;
    }

    /// <summary>What a mass (t) of sheet costs.</summary>
    internal static double OfSheet(double mass, Material material, ShopRates rates) => 1000 * mass * rates.PerKilogram(material);

    /// <summary>What a bend costs.</summary>
    internal static double OfBend(ShopRates rates) => rates.Bending(rates.BendTime + rates.BendingSetUp / rates.Batch);

    /// <summary>What it costs to try out an angle.</summary>
    internal static double OfAngle(ShopRates rates) => rates.Bending(rates.AngleSetUp / rates.Batch);

    /// <summary>What strips cost on dies that were never tried with the sheet: one for each inside radius.</summary>
    internal static double OfTestStrips(ReadOnlySpan<Bend> bends, ShopRates rates)
    {
        var untested = 0;
        for (var i = 0; i < bends.Length; i++)
        {
            var isNew = !bends[i].Rule.IsTested;
            for (var k = 0; k < i; k++)
            {
                isNew &= Math.Abs(bends[k].InsideRadius - bends[i].InsideRadius) > Tolerance.SameSize;
            }

            untested += isNew ? 1 : 0;
        }

        return untested * OfTestStrip(rates);
    }

    /// <summary>What one test strip costs.</summary>
    internal static double OfTestStrip(ShopRates rates) => rates.Bending(60 * TestStripMinutes / rates.Batch);

    /// <summary>What a give (mm) counts.</summary>
    internal static double OfGive(double give, ShopRates rates) => rates.Worth(GiveMinutes * give);
}
