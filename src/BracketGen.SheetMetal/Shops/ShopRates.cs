namespace BracketGen.SheetMetal.Shops;

/// <summary>What sheet, machines and hands cost in a shop: in money, or in minutes of work where the shop gives no money.</summary>
/// <remarks>Every default is common practice, no source: a shop puts its own numbers in. Times in s, rates for an hour.</remarks>
public sealed record ShopRates
{
    /// <summary>Where the shop gives no rates: everything in minutes of work, the usual times, and sheet at a usual worth in minutes (our judgement, no source).</summary>
    public static ShopRates InMinutes { get; } = new() { Currency = null, SheetPerKilogram = 3, CuttingRate = 60, BendingRate = 60 };

    /// <summary>Code of the currency, three letters; null where everything is in minutes.</summary>
    public string? Currency { get; init; } = "EUR";

    /// <summary>Price of sheet for a kilogram, where the sheet has no price of its own.</summary>
    public double SheetPerKilogram { get; init; } = 2.5;

    /// <summary>Cutting machine with its operator, per hour.</summary>
    public double CuttingRate { get; init; } = 90;

    /// <summary>Time to cut one metre in sheet of one millimetre (s); it grows with the thickness.</summary>
    public double CutTime { get; init; } = 6;

    /// <summary>Time to pierce sheet of one millimetre (s); it grows with the thickness.</summary>
    public double PierceTime { get; init; } = 0.4;

    /// <summary>Time to set up the cutting machine for a batch (s).</summary>
    public double CuttingSetUp { get; init; } = 600;

    /// <summary>Press brake with its operator, per hour.</summary>
    public double BendingRate { get; init; } = 70;

    /// <summary>Time for one bend (s).</summary>
    public double BendTime { get; init; } = 25;

    /// <summary>Time to set up the press brake for a batch (s), once for each bend of the part.</summary>
    public double BendingSetUp { get; init; } = 600;

    /// <summary>Time to try out an angle that is not 90° (s), once for a batch and bend.</summary>
    public double AngleSetUp { get; init; } = 240;

    /// <summary>Time to change to another die within a part (s), once for a batch.</summary>
    public double ToolChange { get; init; } = 300;

    /// <summary>Time to take off burrs, wash and pack a part (s), at the rate of the press brake.</summary>
    public double FinishingTime { get; init; } = 90;

    /// <summary>Pieces that share the set-up of a bracket that is made to a job of its own.</summary>
    public int Batch { get; init; } = 1;

    /// <summary>Price of a kilogram of a material.</summary>
    public double PerKilogram(Material material) => material.PricePerKilogram ?? SheetPerKilogram;

    /// <summary>Cost of so many seconds at the cutting machine.</summary>
    public double Cutting(double seconds) => seconds / 3600 * CuttingRate;

    /// <summary>Cost of so many seconds at the press brake, or of hands at its rate.</summary>
    public double Bending(double seconds) => seconds / 3600 * BendingRate;

    /// <summary>What a preference that is worth so many minutes of a hand's work counts.</summary>
    public double Worth(double minutes) => Bending(60 * minutes);
}
