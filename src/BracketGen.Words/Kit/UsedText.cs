using BracketGen.Design.Kit;

namespace BracketGen.Words.Kit;

/// <summary>What to look at on a used part before it is bought or fitted: common practice, no source.</summary>
public static class UsedText
{
    /// <summary>Heading.</summary>
    public const string Heading = "Before you buy or fit a used part (common practice, no source)";

    /// <summary>The sentences for a kind of part; empty where there is nothing to say.</summary>
    public static IReadOnlyList<string> Of(KitNeedKind kind) => kind switch
    {
        KitNeedKind.PositionSensor =>
        [
            "Turn it slowly from end to end with a meter on it: the reading rises or falls without a jump. A worn track jumps near the closed stop first.",
            "Its own spring brings it back from every position, and the drive has no crack.",
            "Its plug has every pin, and its supply voltage is that of the controller.",
        ],
        KitNeedKind.IdleValve =>
        [
            "Move its plunger or slide by hand: it runs free all the way. Carbon makes it stick; a valve that sticks open races the engine.",
            "Measure its coil between the pins: neither open nor shorted. Its kind of coil and its plug are those that the controller drives.",
            "Water passages are not corroded through, and its sealing face is flat and without grooves.",
        ],
        KitNeedKind.PressureSensor =>
        [
            "Its nose is clean, straight and without a groove where the O-ring sits. Fit a new O-ring.",
            "With the engine off it reads the pressure of the day; suck at it: the reading follows at once.",
            "Its pressure range and its plug are those of the controller.",
        ],
        KitNeedKind.IdleGasket or KitNeedKind.FlangeGasket => ["Never fit a used gasket: it was pressed to another face."],
        KitNeedKind.SensorScrews or KitNeedKind.IdleScrews or KitNeedKind.PressureScrews or KitNeedKind.BracketBolts =>
            ["No stretched, rusty or rounded screw, and none whose thread was sealed with paste that is still in it."],
        KitNeedKind.ReturnSprings =>
        [
            "Measure its torque at both stops on this throttle body, not on the one it came from: springs tire, and a nick breaks them.",
            "No rust, no bright rubbed place, and its ends sit in their hooks without play.",
            "Both springs close the valve each alone, cold and hot, engine off.",
        ],
        KitNeedKind.Cable =>
        [
            "No broken strand at either end, no kink, no melted outer. A cable with one broken strand is scrap.",
            "Pull it through with a spring balance: closing_drag and opening_drag are measured on this very cable.",
        ],
        KitNeedKind.PedalStop => ["It stands firm under a stamped pedal, and nothing of it can come loose under the pedal."],
        KitNeedKind.Bracket => ["Look at every bend with a lens for cracks, and lay the mount flange on a surface plate: it must not rock."],
        _ => [],
    };

    /// <summary>For a bundle that is a throttle body or comes off one.</summary>
    public const string Bundle = "Of a donor throttle body look at the bores: corrosion or a worn bore under a part that seals there makes the part worthless for this one.";
}
