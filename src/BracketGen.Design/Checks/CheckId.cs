namespace BracketGen.Design.Checks;

/// <summary>Every check the program makes, in the order a person would make them. <see cref="CheckCatalogue"/> says what each is.</summary>
public enum CheckId
{
    /// <summary>Free play at the closed stop.</summary>
    FreePlay,

    /// <summary>Number of return springs.</summary>
    ReturnSprings,

    /// <summary>Over-travel with the valve wide open.</summary>
    WideOpen,

    /// <summary>Over-travel that asks for a pedal stop.</summary>
    OverTravel,

    /// <summary>Valve plate past square at the wide-open stop.</summary>
    PlatePastSquare,

    /// <summary>Minimum moment arm over the sweep.</summary>
    MomentArm,

    /// <summary>Wrap left at the wide-open stop.</summary>
    WrapWideOpen,

    /// <summary>Groove left at the closed stop.</summary>
    GrooveLength,

    /// <summary>Groove width for the wire.</summary>
    WireInGroove,

    /// <summary>Slot width for the wire.</summary>
    WireInSlot,

    /// <summary>Pocket made for the fitting's shape.</summary>
    PocketShape,

    /// <summary>Play of the fitting in its pocket.</summary>
    PocketPlay,

    /// <summary>Fitting wider than the slot.</summary>
    PocketHold,

    /// <summary>Fitting free to turn with the wire.</summary>
    PocketTurn,

    /// <summary>Fitting below the quadrant's face.</summary>
    PocketDepth,

    /// <summary>Wire bent over the groove.</summary>
    WireBend,

    /// <summary>Groove far wider than the wire.</summary>
    GrooveLoose,

    /// <summary>Outer's bore too tight for the wire.</summary>
    OuterBoreTight,

    /// <summary>Outer's bore far wider than the wire.</summary>
    OuterBoreLoose,

    /// <summary>A cable that is left out is laid by.</summary>
    CableLaidBy,

    /// <summary>What pulls a cable that is left out is dead.</summary>
    CableActuatorDead,

    /// <summary>The gearbox whose kick-down cable is left out.</summary>
    KickDownServed,

    /// <summary>The work of another cable that is left out.</summary>
    CableWork,

    /// <summary>A cable that works something else than this throttle body.</summary>
    CableElsewhere,

    /// <summary>What holds the outer of a cable in a groove of its own.</summary>
    OtherStop,

    /// <summary>Whether the wire of such a cable runs from its groove to its seat.</summary>
    CableReach,

    /// <summary>How far such a cable opens the valve.</summary>
    CableStroke,

    /// <summary>Wire that the quadrant draws for a gearbox.</summary>
    KickDownStroke,

    /// <summary>Wire that can be drawn against wire that is drawn.</summary>
    DrawnStroke,

    /// <summary>Slack of a wire that is idle while another cable opens the valve.</summary>
    IdleSlack,

    /// <summary>Slack of the pedal's wire while another cable opens the valve.</summary>
    PedalSlack,

    /// <summary>Return with another cable alone.</summary>
    CableReturn,

    /// <summary>Return with the pedal's cable and another one.</summary>
    CablesReturn,

    /// <summary>The same with the strongest spring broken.</summary>
    CablesReturnOneFailed,

    /// <summary>Foot force with what the quadrant draws.</summary>
    DrawnFootForce,

    /// <summary>Quadrant and fitting inside casting or keep-outs.</summary>
    QuadrantOverlap,

    /// <summary>Quadrant and fitting near casting or keep-outs.</summary>
    QuadrantClearance,

    /// <summary>Straight wire through casting, keep-outs or springs.</summary>
    WireOverlap,

    /// <summary>Straight wire near casting, keep-outs or springs.</summary>
    WireClearance,

    /// <summary>Change of the wire's direction at the outer's end.</summary>
    OuterSideLoad,

    /// <summary>Whether a route with the minimum bend radius leads to the bulkhead.</summary>
    OuterRoute,

    /// <summary>Length of the outer for the shortest route.</summary>
    OuterLength,

    /// <summary>End fitting to the stop.</summary>
    FittingClearance,

    /// <summary>Fleet angle at the groove.</summary>
    FleetAngle,

    /// <summary>Adjuster travel left.</summary>
    AdjusterReserve,

    /// <summary>Whether the casting is described.</summary>
    BodyDescribed,

    /// <summary>Whether the mount face's normal points out of the casting.</summary>
    MountNormal,

    /// <summary>Whether a bracket joins mount face and stop at all.</summary>
    BracketShape,

    /// <summary>Edge distance of the bolt holes.</summary>
    BoltHoleEdge,

    /// <summary>Edge distance of the stop's hole.</summary>
    StopHoleEdge,

    /// <summary>Metal beside the open slot.</summary>
    SlotEdge,

    /// <summary>Smallest hole or slot.</summary>
    SmallestHole,

    /// <summary>Hole to bend.</summary>
    HoleBend,

    /// <summary>Inside radius of a bend.</summary>
    BendRadius,

    /// <summary>Shortest flange at a bend.</summary>
    ShortestFlange,

    /// <summary>Bend angle.</summary>
    BendAngle,

    /// <summary>An order in which the bends can be made.</summary>
    BendOrder,

    /// <summary>Legs of a bend on the die's shoulders.</summary>
    DieShoulders,

    /// <summary>Hole to the middle of a bend, over the die.</summary>
    HoleOverDie,

    /// <summary>What a bend is placed by.</summary>
    BendGauge,

    /// <summary>A layer between steel and the casting.</summary>
    Finish,

    /// <summary>Sheet thickness in a clip's neck.</summary>
    ClipNeck,

    /// <summary>Sheet thickness under the thickest that an outer end goes over.</summary>
    EndMaxSheet,

    /// <summary>Sheet thickness over the thinnest that an outer end holds on to.</summary>
    EndMinSheet,

    /// <summary>End fitting through the stop's opening.</summary>
    FittingThroughStop,

    /// <summary>Bracket to a keep-out.</summary>
    KeepOut,

    /// <summary>Bracket to the casting.</summary>
    BodyClearance,

    /// <summary>Outer to what stands and to the bracket.</summary>
    OuterClearance,

    /// <summary>Outer end to what stands.</summary>
    OuterEndClearance,

    /// <summary>Outer and outer end to quadrant and fitting.</summary>
    OuterMoving,

    /// <summary>Bracket and bolts to what moves.</summary>
    MovingParts,

    /// <summary>Room for the socket.</summary>
    BoltRoom,

    /// <summary>Room for nut or shoulder at the stop.</summary>
    StopRoom,

    /// <summary>Return lip to mount flange.</summary>
    LipApart,

    /// <summary>Stop flange to mount flange.</summary>
    FlangesApart,

    /// <summary>Sheet the job allows, for a bracket that is already made.</summary>
    SheetAllowed,

    /// <summary>Bolt pattern of a bracket that is already made.</summary>
    MountPattern,

    /// <summary>Bolt hole sizes of a bracket that is already made.</summary>
    MountThreads,

    /// <summary>Metal over bosses of a bracket that is already made.</summary>
    MountBosses,

    /// <summary>Opening of a stop that is already made.</summary>
    StopOpening,

    /// <summary>Play in the opening of a stop that is already made.</summary>
    StopPlay,

    /// <summary>Open slot of a stop that is already made.</summary>
    StopSlot,

    /// <summary>Metal round a stop that is already made.</summary>
    StopMetal,

    /// <summary>Wire off the direction of a stop that is already made.</summary>
    StopSquare,

    /// <summary>Place of a stop that is already made, without an adjuster.</summary>
    StopPlace,

    /// <summary>Minimum bend radius of the outer at its real length.</summary>
    OuterBendRadius,

    /// <summary>Bends that spare outer adds.</summary>
    OuterSpare,

    /// <summary>Whether the outer's line is known.</summary>
    OuterLine,

    /// <summary>Free play left as the engine moves.</summary>
    FreePlayMoving,

    /// <summary>Whether the outer reaches wherever the engine moves.</summary>
    OuterReach,

    /// <summary>Over-travel with lost motion taken off.</summary>
    WideOpenLoaded,

    /// <summary>Closing torque left over friction and pedal.</summary>
    ReturnMargin,

    /// <summary>The same with one spring broken.</summary>
    ReturnOneFailed,

    /// <summary>Time from wide open to closed.</summary>
    ClosingTime,

    /// <summary>Foot force.</summary>
    FootForce,

    /// <summary>Flow area gained by the first tenth of the pedal.</summary>
    Suddenness,

    /// <summary>Probability that the valve can be made to close.</summary>
    ProbabilityCloses,

    /// <summary>Probability that the valve opens fully.</summary>
    ProbabilityWideOpen,

    /// <summary>Probability that the adjuster can set the free play.</summary>
    ProbabilityAdjuster,

    /// <summary>Probability that the wire does not run off the end of the groove.</summary>
    ProbabilityInGroove,

    /// <summary>Free play that may be left, over what was wanted.</summary>
    FreePlayMost,

    /// <summary>Distance of mount holes off what the play of the bolts takes up.</summary>
    MountHolesFit,

    /// <summary>Opening before the controller sees the valve move.</summary>
    DeadBand,

    /// <summary>How far open the controller takes the closed valve.</summary>
    ControllerZero,

    /// <summary>Sensor on the closed stop.</summary>
    SensorClosed,

    /// <summary>Minimum reading of the sensor.</summary>
    SensorLow,

    /// <summary>Maximum reading of the sensor.</summary>
    SensorHigh,

    /// <summary>Yield with the pedal stamped on.</summary>
    StampedYield,

    /// <summary>Cracking under every opening.</summary>
    Endurance,

    /// <summary>Give of the stop.</summary>
    StopGive,

    /// <summary>First natural frequency against the engine's.</summary>
    Resonance,

    /// <summary>Cracking from shaking of the mount and every opening together.</summary>
    ShakingEndurance,

    /// <summary>Cracking under a published vibration test that is only assumed.</summary>
    ShakingTest,

    /// <summary>First natural frequency below what the rule asks for: shaking decides.</summary>
    FrequencyByResponse,

    /// <summary>Yield of the screws.</summary>
    ScrewYield,

    /// <summary>Stripping of the bosses' threads.</summary>
    BossThread,

    /// <summary>Depth of thread in the bosses.</summary>
    ThreadDepth,

    /// <summary>Slip of the bracket on its bosses.</summary>
    JointSlip,

    /// <summary>The same with the pedal stamped on.</summary>
    StampedSlip,

    /// <summary>Lifting of the bracket off its bosses.</summary>
    JointOpening,

    /// <summary>Pressure under the washers.</summary>
    WasherPressure,

    /// <summary>Stripping of the nuts.</summary>
    NutThread,

    /// <summary>Length that the studs stand out of the mount face.</summary>
    StudLength,

    /// <summary>Depth of the studs in their bosses.</summary>
    StudDepth,

    /// <summary>Room for the nuts behind the flange.</summary>
    NutRoom,

    /// <summary>Compression of the spacers.</summary>
    SpacerPressure,

    /// <summary>Slip of the bracket along its slotted mount holes.</summary>
    SlotSlip,

    /// <summary>The same with the pedal stamped on.</summary>
    SlotSlipStamped,

    /// <summary>Wire at the ends of the slotted mount holes.</summary>
    SlotEnds,

    /// <summary>Free play left where the bracket slides along its slotted mount holes.</summary>
    SlotFreePlay,

    /// <summary>Room for the bend of the second mount flange where the two faces meet.</summary>
    SecondFaceCorner,

    /// <summary>Flat width between the holes of both faces and the bend between them.</summary>
    SecondFaceLine,

    /// <summary>Gap under the second mount flange.</summary>
    SecondFaceGap,

    /// <summary>Whether the bolts of the second face go through their holes.</summary>
    SecondFaceHoles,

    /// <summary>Stress as the bolts draw the second mount flange down.</summary>
    SecondFaceDrawn,

    /// <summary>Edge distance of the holes of an adapter ring.</summary>
    RingHoleEdge,

    /// <summary>Bore of an adapter ring clear of what stands in it.</summary>
    RingBore,

    /// <summary>Thread left in engagement of the flange bolts over an adapter ring.</summary>
    RingBoltEngagement,

    /// <summary>Depth of thread under a longer flange bolt.</summary>
    RingBoltDepth,

    /// <summary>Room for a socket on the bracket's bolts beside the heads of the flange bolts.</summary>
    RingToolRoom,

    /// <summary>Bracket beside the heads of the flange bolts.</summary>
    RingHeadRoom,

    /// <summary>Yield of an adapter ring under the proof load.</summary>
    RingYield,

    /// <summary>Cracking of an adapter ring.</summary>
    RingEndurance,
}
