namespace BracketGen.Design.Inputs;

/// <summary>The inputs that checks rest on.</summary>
public enum InputId
{
    /// <summary>Free inner length of the cable.</summary>
    FreeInnerLength,

    /// <summary>Free play wanted.</summary>
    FreePlay,

    /// <summary>Groove: pitch radius or shape.</summary>
    Groove,

    /// <summary>Rotation of the valve between its stops.</summary>
    Rotation,

    /// <summary>Polar angle of the pocket.</summary>
    Pocket,

    /// <summary>Arc of groove that can carry the wire.</summary>
    GrooveExtent,

    /// <summary>Width of groove and slot.</summary>
    GrooveWidth,

    /// <summary>Shape of the pocket that holds the end fitting.</summary>
    PocketShape,

    /// <summary>Outside of the quadrant.</summary>
    QuadrantSize,

    /// <summary>Return springs.</summary>
    ReturnSprings,

    /// <summary>Angle of the plate on its closed stop, bore and shaft.</summary>
    Valve,

    /// <summary>Friction coefficient of the wire in the outer.</summary>
    Friction,

    /// <summary>Drag of the cable while it closes.</summary>
    ClosingDrag,

    /// <summary>Drag of the cable while it opens.</summary>
    OpeningDrag,

    /// <summary>Drag at the throttle shaft.</summary>
    ShaftDrag,

    /// <summary>Moment of inertia at the shaft, and mass of the pedal.</summary>
    Inertia,

    /// <summary>Bends of the outer.</summary>
    OuterBends,

    /// <summary>Length of the outer.</summary>
    OuterLength,

    /// <summary>Inside diameter of the outer.</summary>
    OuterBore,

    /// <summary>Movement of the engine in its mounts.</summary>
    EngineMovement,

    /// <summary>Stiffness of the outer.</summary>
    OuterStiffness,

    /// <summary>Minimum bend radius of the outer.</summary>
    OuterBendRadius,

    /// <summary>Wire: diameter, modulus, fill.</summary>
    Wire,

    /// <summary>How the wire is stranded.</summary>
    WireConstruction,

    /// <summary>Diameter of the outer, outside and inside.</summary>
    OuterDiameter,

    /// <summary>End fitting.</summary>
    EndFitting,

    /// <summary>Outer end: adjuster, ferrule or clip.</summary>
    OuterEnd,

    /// <summary>How far the wire may lean or turn at groove and outer.</summary>
    WireAngles,

    /// <summary>Pull of the pedal.</summary>
    AvailablePull,

    /// <summary>Lever of the pedal.</summary>
    PedalLever,

    /// <summary>Weight or spring of the pedal at the pad.</summary>
    PadLoad,

    /// <summary>Cables besides the one from the pedal, and what becomes of them.</summary>
    OtherCables,

    /// <summary>Grooves of the quadrant besides the first.</summary>
    OtherGrooves,

    /// <summary>Mount face and its holes.</summary>
    Mount,

    /// <summary>Where the bore lies and how thick the casting is round it.</summary>
    BodyShape,

    /// <summary>Spaces of the return springs.</summary>
    SpringRooms,

    /// <summary>Keep-outs.</summary>
    KeepOuts,

    /// <summary>Bulkhead.</summary>
    Bulkhead,

    /// <summary>Position sensor.</summary>
    Sensor,

    /// <summary>Controller.</summary>
    Controller,

    /// <summary>Engine: cylinders and speed.</summary>
    Engine,

    /// <summary>Shaking of the mount, and damping.</summary>
    Shaking,

    /// <summary>Screws and bosses of the mount: class, friction, metal, depth of thread.</summary>
    Screws,

    /// <summary>Adapter ring and flange bolts.</summary>
    Ring,

    /// <summary>Friction of the bracket on the bosses.</summary>
    FaceFriction,

    /// <summary>Life asked for and temperature.</summary>
    Life,

    /// <summary>Sheet: material and thickness.</summary>
    Sheet,

    /// <summary>The shop's tools and process.</summary>
    Shop,
}
