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

    /// <summary>Whether the lever ratio is the same over the whole travel.</summary>
    LeverKind,

    /// <summary>How many points of the pedal were measured.</summary>
    PedalPointCount,

    /// <summary>Pad travel at a point.</summary>
    PedalPad,

    /// <summary>Pull at a point.</summary>
    PedalPull,

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

    /// <summary>How many points of the groove were measured.</summary>
    GroovePointCount,

    /// <summary>Polar angle of a point of the groove.</summary>
    GroovePointAngle,

    /// <summary>Radius at a point of the groove.</summary>
    GroovePointRadius,

    /// <summary>How far the radii may be off.</summary>
    GroovePlusMinus,

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

    /// <summary>Shop name.</summary>
    ShopName,

    /// <summary>How the shop cuts.</summary>
    CuttingProcess,

    /// <summary>Kerf.</summary>
    Kerf,

    /// <summary>Published bend rule.</summary>
    BendRule,

    /// <summary>Marks at the ends of bends.</summary>
    BendMarks,

    /// <summary>Currency.</summary>
    Currency,

    /// <summary>Cutting machine an hour.</summary>
    CuttingRate,

    /// <summary>Press brake an hour.</summary>
    BendingRate,

    /// <summary>Seconds for one bend.</summary>
    BendTime,

    /// <summary>Price of sheet.</summary>
    SheetPerKilogram,

    /// <summary>Pieces made together.</summary>
    BatchSize,

    /// <summary>How many materials there are.</summary>
    MaterialCount,

    /// <summary>Designation of a material.</summary>
    Designation,

    /// <summary>Density.</summary>
    Density,

    /// <summary>Young's modulus.</summary>
    Modulus,

    /// <summary>Poisson's ratio.</summary>
    Poisson,

    /// <summary>Yield strength.</summary>
    YieldStrength,

    /// <summary>Minimum tensile strength.</summary>
    MinTensile,

    /// <summary>Maximum tensile strength.</summary>
    MaxTensile,

    /// <summary>Endurance.</summary>
    Endurance,

    /// <summary>Minimum inside radius across the grain.</summary>
    RadiusAcrossGrain,

    /// <summary>Minimum inside radius along the grain.</summary>
    RadiusAlongGrain,

    /// <summary>Bend group.</summary>
    BendGroup,

    /// <summary>Where the numbers of a material come from.</summary>
    MaterialSource,

    /// <summary>Thicknesses in stock.</summary>
    SheetThicknesses,

    /// <summary>Price of a material.</summary>
    MaterialPrice,

    /// <summary>Finish of a material.</summary>
    FinishKind,

    /// <summary>Thickness of its layer.</summary>
    FinishThickness,

    /// <summary>What the shop bends with.</summary>
    BendsWith,

    /// <summary>Whether the tools were measured.</summary>
    ToolDetail,

    /// <summary>How many V dies there are.</summary>
    DieCount,

    /// <summary>Die opening.</summary>
    DieOpening,

    /// <summary>Inside radius that a die gives.</summary>
    DieRadius,

    /// <summary>Included angle of a V.</summary>
    DieAngle,

    /// <summary>Width of a die.</summary>
    DieWidth,

    /// <summary>Height of the shoulders.</summary>
    ShoulderHeight,

    /// <summary>Radius of the shoulders.</summary>
    ShoulderRadius,

    /// <summary>Force that a die stands.</summary>
    DieForce,

    /// <summary>How many punches there are.</summary>
    PunchCount,

    /// <summary>Name of a punch.</summary>
    PunchName,

    /// <summary>Kind of a punch.</summary>
    PunchKind,

    /// <summary>Height of a punch.</summary>
    PunchHeight,

    /// <summary>Angle of a tip.</summary>
    TipAngle,

    /// <summary>Radius of a tip.</summary>
    TipRadius,

    /// <summary>Thickness of a punch.</summary>
    PunchWidth,

    /// <summary>Force that a punch stands.</summary>
    PunchForce,

    /// <summary>Open height of the press.</summary>
    OpenHeight,

    /// <summary>Stroke of the beam.</summary>
    Stroke,

    /// <summary>Force of the press.</summary>
    PressForce,

    /// <summary>Thickness of the beam.</summary>
    PressBeamWidth,

    /// <summary>Thickness of the bed.</summary>
    BedWidth,

    /// <summary>Minimum distance of the back gauge.</summary>
    GaugeMin,

    /// <summary>Maximum distance of the back gauge.</summary>
    GaugeMax,

    /// <summary>Width of a finger.</summary>
    FingerWidth,

    /// <summary>Height of a finger.</summary>
    FingerHeight,

    /// <summary>How far a finger reaches below the die.</summary>
    FingerDepth,

    /// <summary>Whether the back gauge moves back.</summary>
    GaugeInBend,

    /// <summary>Steps of the tools.</summary>
    ToolSections,

    /// <summary>Force per length that the press stands.</summary>
    PressForceOnLength,

    /// <summary>How many folders, hand brakes and bars there are.</summary>
    ClampCount,

    /// <summary>Kind of a clamp.</summary>
    ClampKind,

    /// <summary>Name of a clamp.</summary>
    ClampName,

    /// <summary>Radius of a clamp.</summary>
    ClampRadius,

    /// <summary>Depth of a clamp.</summary>
    ClampDepth,

    /// <summary>Height of a clamp.</summary>
    ClampHeight,

    /// <summary>Nose angle of a clamp.</summary>
    NoseAngle,

    /// <summary>How far it reaches down.</summary>
    ClampBelow,

    /// <summary>Width of its beam.</summary>
    ClampBeamWidth,

    /// <summary>Length of a clamp.</summary>
    ClampLength,

    /// <summary>Thickest sheet of a clamp.</summary>
    ClampMaxThickness,

    /// <summary>Minimum width that is clamped.</summary>
    MinClamped,

    /// <summary>How many test bends there are.</summary>
    TestBendCount,

    /// <summary>Sheet of a test bend.</summary>
    TestBendMaterial,

    /// <summary>Thickness of a test bend.</summary>
    TestBendThickness,

    /// <summary>Inside radius of a test bend.</summary>
    TestBendRadius,

    /// <summary>K factor of a test bend.</summary>
    KFactor,

    /// <summary>The throttle body of a job.</summary>
    JobBody,

    /// <summary>The vehicle of a job.</summary>
    JobVehicle,

    /// <summary>The shop of a job.</summary>
    JobShop,

    /// <summary>Units of the outputs.</summary>
    JobUnits,

    /// <summary>Part number.</summary>
    PartNumber,

    /// <summary>Revision.</summary>
    Revision,

    /// <summary>Title of the drawing.</summary>
    DrawingTitle,

    /// <summary>Date of issue.</summary>
    IssueDate,

    /// <summary>Who drew it.</summary>
    Creator,

    /// <summary>Who approved it.</summary>
    Approver,

    /// <summary>How the views are laid out.</summary>
    ViewLayout,

    /// <summary>Free play wanted.</summary>
    FreePlayWanted,

    /// <summary>Materials allowed.</summary>
    MaterialsAllowed,

    /// <summary>Minimum thickness of the sheet.</summary>
    MinSheetThickness,

    /// <summary>Maximum thickness of the sheet.</summary>
    MaxSheetThickness,

    /// <summary>Opening in the stop.</summary>
    StopOpening,

    /// <summary>Finish of the bracket.</summary>
    PartFinish,

    /// <summary>Thickness of its layer.</summary>
    PartFinishThickness,

    /// <summary>Whether the usual limits hold.</summary>
    Limits,

    /// <summary>Minimum free play.</summary>
    MinFreePlay,

    /// <summary>Minimum over-travel.</summary>
    MinOverTravel,

    /// <summary>Maximum over-travel.</summary>
    MaxOverTravel,

    /// <summary>Minimum wrap angle.</summary>
    MinWrap,

    /// <summary>Clearance of the end fitting.</summary>
    FittingClearance,

    /// <summary>Clearance of moving parts.</summary>
    SweepClearance,

    /// <summary>Clearance of the outer.</summary>
    OuterClearance,

    /// <summary>Clearance of the bracket.</summary>
    KeepOutClearance,

    /// <summary>How many times drag counts.</summary>
    DirtAndCold,

    /// <summary>Part of the adjuster left unused.</summary>
    AdjusterReserve,

    /// <summary>Minimum yield factor.</summary>
    MinYieldFactor,

    /// <summary>Minimum endurance factor.</summary>
    MinEnduranceFactor,

    /// <summary>Minimum frequency ratio.</summary>
    MinFrequencyRatio,

    /// <summary>Maximum give.</summary>
    MaxGive,

    /// <summary>Radius at corners.</summary>
    CornerRadius,

    /// <summary>Temperature of the bracket.</summary>
    Temperature,

    /// <summary>Pedal openings.</summary>
    Openings,

    /// <summary>Engine hours.</summary>
    EngineHours,

    /// <summary>Which way is up.</summary>
    Up,

    /// <summary>Which way the bulkhead is.</summary>
    BulkheadWay,

    /// <summary>Where the outer comes out.</summary>
    BulkheadPoint,

    /// <summary>Direction out of the bulkhead.</summary>
    BulkheadDirection,

    /// <summary>How many clips there are.</summary>
    ClipCount,

    /// <summary>Where a clip holds.</summary>
    ClipPoint,

    /// <summary>Direction of a clip.</summary>
    ClipDirection,

    /// <summary>Length of outer before a clip.</summary>
    ClipAlong,

    /// <summary>Movement along x.</summary>
    MovementX,

    /// <summary>Movement along y.</summary>
    MovementY,

    /// <summary>Movement along z.</summary>
    MovementZ,

    /// <summary>Turn about the crankshaft.</summary>
    Roll,

    /// <summary>Direction of the crankshaft.</summary>
    CrankshaftDirection,

    /// <summary>A point of the crankshaft.</summary>
    CrankshaftPoint,

    /// <summary>What becomes of another cable.</summary>
    CableBecomes,

    /// <summary>Whether its pedal end is off.</summary>
    CablePedalEnd,

    /// <summary>Whether its actuator is dead.</summary>
    CableActuator,

    /// <summary>What does its work.</summary>
    CableServedBy,

    /// <summary>What it is hooked to.</summary>
    CableTo,

    /// <summary>Groove that it works in.</summary>
    CableGroove,

    /// <summary>Where its outer is held.</summary>
    CableStopAt,

    /// <summary>What holds its outer.</summary>
    CableHeldBy,
}
