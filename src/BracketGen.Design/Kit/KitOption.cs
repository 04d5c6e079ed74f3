using System.Collections.Immutable;
using BracketGen.SheetMetal.Fasteners;

namespace BracketGen.Design.Kit;

/// <summary>What is there without a list of parts.</summary>
public enum OwnPart
{
    /// <summary>The vehicle's own cable.</summary>
    VehicleCable,

    /// <summary>The throttle body's own springs.</summary>
    BodySprings,

    /// <summary>The bracket that is designed for the job.</summary>
    MadeBracket,

    /// <summary>Screws as the set-up sheet orders them.</summary>
    OrderedScrews,

    /// <summary>The position sensor that is on the throttle body.</summary>
    BodySensor,

    /// <summary>The screws of that sensor.</summary>
    BodySensorScrews,
}

/// <summary>One way to meet a need, and whether it fits.</summary>
/// <param name="Part">The part on the list; null for one that is there without a list.</param>
/// <param name="Own">What is there without a list; null for a part on the list.</param>
public sealed record KitOption(KitPart? Part, OwnPart? Own)
{
    /// <summary>What was looked at.</summary>
    public ImmutableArray<FitFinding> Findings { get; init; } = [];

    /// <summary>Whether it fits: the worst of what was looked at.</summary>
    public FitState State => Findings.Select(f => f.State).DefaultIfEmpty(FitState.NotKnown).Min();

    /// <summary>Price of as many as are needed (the shop's currency), without its bundle; null where it is not known.</summary>
    public double? Price { get; init; }

    /// <summary>Whether it is in the cheapest set of what fits.</summary>
    public bool IsTaken { get; init; }

    /// <summary>Whether it is in the set that would be cheapest if what is not known proved to fit.</summary>
    public bool WouldBeTaken { get; init; }

    /// <summary>Screws to order; null for all other options.</summary>
    public MountScrew? Screw { get; init; }

    /// <summary>Where it comes from.</summary>
    public PartSource Source => Part?.Source ?? Own switch
    {
        OwnPart.MadeBracket => PartSource.Made,
        OwnPart.OrderedScrews => PartSource.Bought,
        _ => PartSource.Kept,
    };
}

/// <summary>A need with all that may meet it.</summary>
/// <param name="Need">The need.</param>
/// <param name="Options">What may meet it, as listed; what is there without a list first.</param>
public sealed record KitAnswer(KitNeed Need, ImmutableArray<KitOption> Options)
{
    /// <summary>What is taken; null where nothing fits.</summary>
    public KitOption? Taken => Options.FirstOrDefault(o => o.IsTaken);

    /// <summary>What is known of it: it is met, something may meet it, or nothing does.</summary>
    public FitState State => Taken is not null ? FitState.Fits : Options.Any(o => o.WouldBeTaken) ? FitState.NotKnown : FitState.DoesNotFit;
}
