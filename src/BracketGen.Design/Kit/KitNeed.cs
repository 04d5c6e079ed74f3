using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Kit;

/// <summary>What a bare throttle body needs to be complete.</summary>
public enum KitNeedKind
{
    /// <summary>The cable from the pedal.</summary>
    Cable,

    /// <summary>Springs that close the valve.</summary>
    ReturnSprings,

    /// <summary>The bracket.</summary>
    Bracket,

    /// <summary>Bolts of the bracket.</summary>
    BracketBolts,

    /// <summary>A pedal stop.</summary>
    PedalStop,

    /// <summary>The position sensor.</summary>
    PositionSensor,

    /// <summary>Screws of the position sensor.</summary>
    SensorScrews,

    /// <summary>The idle valve.</summary>
    IdleValve,

    /// <summary>Gasket under the idle valve.</summary>
    IdleGasket,

    /// <summary>Screws of the idle valve.</summary>
    IdleScrews,

    /// <summary>The pressure sensor with its O-ring.</summary>
    PressureSensor,

    /// <summary>Screws of the pressure sensor.</summary>
    PressureScrews,

    /// <summary>Gasket under the throttle body.</summary>
    FlangeGasket,
}

/// <summary>Something that is needed.</summary>
/// <param name="Kind">What.</param>
/// <param name="Count">How many.</param>
/// <param name="Thread">Thread of the screws; null for all other needs.</param>
public sealed record KitNeed(KitNeedKind Kind, int Count = 1, FastenerThread? Thread = null);
