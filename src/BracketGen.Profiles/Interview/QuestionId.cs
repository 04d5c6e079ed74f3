namespace BracketGen.Profiles.Interview;

/// <summary>The questions of the interview.</summary>
public enum QuestionId
{
    /// <summary>Vehicle name.</summary>
    VehicleName,

    /// <summary>Wire diameter.</summary>
    WireDiameter,

    /// <summary>Outer diameter.</summary>
    OuterDiameter,

    /// <summary>Inside diameter of the outer.</summary>
    OuterBore,

    /// <summary>How the wire is stranded.</summary>
    WireConstruction,

    /// <summary>Free inner length.</summary>
    FreeInnerLength,

    /// <summary>Maximum fleet angle.</summary>
    FleetLimit,

    /// <summary>Minimum bend radius of the outer.</summary>
    MinBendRadius,

    /// <summary>Outer length.</summary>
    OuterLength,

    /// <summary>Fitting kind.</summary>
    FittingKind,

    /// <summary>Fitting diameter.</summary>
    FittingDiameter,

    /// <summary>Fitting length.</summary>
    FittingLength,

    /// <summary>Outer end kind.</summary>
    OuterEndKind,

    /// <summary>Adjuster thread.</summary>
    AdjusterThread,

    /// <summary>Nut across flats.</summary>
    NutAcrossFlats,

    /// <summary>Nut height.</summary>
    NutHeight,

    /// <summary>Adjuster range.</summary>
    AdjusterRange,

    /// <summary>Length of a bulkhead ferrule's thread.</summary>
    EndThreadLength,

    /// <summary>Nose from the shoulder to the clip.</summary>
    Grip,

    /// <summary>Length of the nose.</summary>
    NoseLength,

    /// <summary>Diameter over the clip.</summary>
    ClipDiameter,

    /// <summary>Hole that a push-in end is made for.</summary>
    EndHoleDiameter,

    /// <summary>Side of the square hole that an end is made for.</summary>
    EndHoleSide,

    /// <summary>Corners of the square hole that an end is made for.</summary>
    EndCornerRadius,

    /// <summary>Collar of a push-in end.</summary>
    EndCollarDiameter,

    /// <summary>Thinnest sheet for a push-in end.</summary>
    MinSheet,

    /// <summary>Thickest sheet for a push-in end.</summary>
    MaxSheet,

    /// <summary>How far a push-in end stands in.</summary>
    Reach,

    /// <summary>Nose diameter.</summary>
    NoseDiameter,

    /// <summary>Shoulder diameter.</summary>
    ShoulderDiameter,

    /// <summary>Range of an adjuster in the run of the outer.</summary>
    RangeElsewhere,

    /// <summary>Neck diameter.</summary>
    NeckDiameter,

    /// <summary>Collar diameter.</summary>
    CollarDiameter,

    /// <summary>Neck length.</summary>
    NeckLength,

    /// <summary>Available pull.</summary>
    AvailablePull,

    /// <summary>Lever ratio of the pedal.</summary>
    LeverRatio,

    /// <summary>The pedal's own force at the pad.</summary>
    PadLoad,

    /// <summary>Drag of the cable while it closes.</summary>
    ClosingDrag,

    /// <summary>Drag of the cable while it opens.</summary>
    OpeningDrag,

    /// <summary>Axial stiffness of the outer.</summary>
    OuterAxialStiffness,

    /// <summary>How many other cables there are.</summary>
    OtherCableCount,

    /// <summary>Name of another cable.</summary>
    OtherCableName,

    /// <summary>What another cable does.</summary>
    OtherCableDoes,

    /// <summary>Where another cable comes from.</summary>
    OtherCableFrom,

    /// <summary>Whether another cable is hooked to the pedal.</summary>
    OtherCableOnPedal,

    /// <summary>Sensor reading that the controller takes for closed.</summary>
    ZeroVolts,

    /// <summary>Throttle body name.</summary>
    ThrottleBodyName,

    /// <summary>The way the valve opens.</summary>
    Opens,

    /// <summary>Diameter of the bore.</summary>
    Bore,

    /// <summary>Shaft diameter.</summary>
    ShaftDiameter,

    /// <summary>Whether the groove is round about the shaft.</summary>
    GrooveKind,

    /// <summary>Pitch radius.</summary>
    PitchRadius,

    /// <summary>Rotation of the quadrant.</summary>
    Rotation,

    /// <summary>Pocket angle.</summary>
    PocketAngle,

    /// <summary>Groove extent.</summary>
    GrooveExtent,

    /// <summary>Groove width.</summary>
    GrooveWidth,

    /// <summary>Slot width.</summary>
    SlotWidth,

    /// <summary>The fitting that the pocket is made for.</summary>
    PocketKind,

    /// <summary>Inside diameter of the pocket.</summary>
    PocketDiameter,

    /// <summary>Width of the pocket.</summary>
    PocketWidth,

    /// <summary>Length of the pocket.</summary>
    PocketLength,

    /// <summary>Depth of the pocket.</summary>
    PocketDepth,

    /// <summary>Direction of the pocket's axis.</summary>
    PocketAxis,

    /// <summary>Outer radius.</summary>
    OuterRadius,

    /// <summary>Thickness over the rims.</summary>
    Thickness,

    /// <summary>Hub radius.</summary>
    HubRadius,

    /// <summary>Groove shape.</summary>
    GrooveShape,

    /// <summary>Groove radius.</summary>
    GrooveRadius,

    /// <summary>Groove offset.</summary>
    GrooveOffset,

    /// <summary>Groove direction.</summary>
    GrooveDirection,

    /// <summary>Torque of the springs on the closed stop.</summary>
    TorqueClosed,

    /// <summary>Torque of the springs on the wide-open stop.</summary>
    TorqueOpen,

    /// <summary>Number of springs that each close the valve alone.</summary>
    SpringCount,

    /// <summary>Closing torque of one return spring on the closed stop.</summary>
    SpringAloneClosed,

    /// <summary>Closing torque of one return spring on the wide-open stop.</summary>
    SpringAloneOpen,

    /// <summary>Drag at the throttle shaft.</summary>
    ShaftDrag,

    /// <summary>Angle of the closed valve.</summary>
    ClosedAngle,

    /// <summary>Sensor reading on the closed stop.</summary>
    ClosedVolts,

    /// <summary>Sensor reading on the wide-open stop.</summary>
    OpenVolts,

    /// <summary>How far the sensor can be turned.</summary>
    SensorSlot,

    /// <summary>Where the bore's axis crosses the shaft's.</summary>
    BoreZ,

    /// <summary>Direction of the bore's axis.</summary>
    BoreDirection,

    /// <summary>Outside diameter of the casting round the bore.</summary>
    CastingDiameter,

    /// <summary>How far the casting reaches along the bore's axis.</summary>
    CastingAhead,

    /// <summary>How far the casting reaches the other way.</summary>
    CastingBehind,

    /// <summary>Mount normal.</summary>
    MountNormal,

    /// <summary>Hole count.</summary>
    HoleCount,

    /// <summary>Hole centre.</summary>
    HoleCentre,

    /// <summary>Hole thread.</summary>
    HoleThread,

    /// <summary>Boss diameter.</summary>
    BossDiameter,

    /// <summary>Keep out count.</summary>
    KeepOutCount,

    /// <summary>Keep out name.</summary>
    KeepOutName,

    /// <summary>Keep out shape.</summary>
    KeepOutShape,

    /// <summary>Minimum corner of a keep-out.</summary>
    KeepOutMin,

    /// <summary>Maximum corner of a keep-out.</summary>
    KeepOutMax,

    /// <summary>Depth of full thread in a mount hole.</summary>
    ThreadDepth,

    /// <summary>Kind of a mount hole.</summary>
    HoleKind,

    /// <summary>Diameter of a plain mount hole.</summary>
    PlainHoleDiameter,

    /// <summary>Thickness of the flange that a bolt goes through.</summary>
    FlangeThickness,

    /// <summary>Room for a nut behind the flange.</summary>
    RoomBehind,

    /// <summary>How far a stud stands out.</summary>
    StandsOut,

    /// <summary>How much lower than the others a mount hole lies.</summary>
    SpacerLength,

    /// <summary>Flatness of the bosses.</summary>
    Flatness,

    /// <summary>Metal of the bosses.</summary>
    BossMaterial,

    /// <summary>How many cylinders the engine has.</summary>
    Cylinders,

    /// <summary>The engine's maximum speed.</summary>
    MaxSpeed,

    /// <summary>The engine's idle speed.</summary>
    IdleSpeed,
}
