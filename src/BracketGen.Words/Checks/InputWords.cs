using BracketGen.Design.Inputs;

namespace BracketGen.Words.Checks;

/// <summary>The names of a job's inputs.</summary>
public static class InputWords
{
    /// <summary>An input's name, without an article and without a capital letter.</summary>
    public static string Name(InputId input) => input switch
    {
        InputId.FreeInnerLength => "free inner length",
        InputId.FreePlay => "free play",
        InputId.Groove => "groove radius or shape",
        InputId.Rotation => "rotation",
        InputId.Pocket => "pocket angle",
        InputId.GrooveExtent => "groove extent",
        InputId.GrooveWidth => "groove and slot width",
        InputId.PocketShape => "shape of the pocket",
        InputId.QuadrantSize => "outside of the quadrant",
        InputId.ReturnSprings => "return springs",
        InputId.Valve => "closed angle, bore and shaft",
        InputId.Friction => "friction coefficient of the cable",
        InputId.ClosingDrag => "closing drag of the cable",
        InputId.OpeningDrag => "opening drag of the cable",
        InputId.ShaftDrag => "drag at the throttle shaft",
        InputId.Inertia => "inertia at the shaft and mass of the pedal",
        InputId.OuterBends => "bends of the outer",
        InputId.OuterLength => "length of the outer",
        InputId.OuterBore => "inside diameter of the outer",
        InputId.EngineMovement => "movement of the engine",
        InputId.OuterStiffness => "axial stiffness of the outer",
        InputId.OuterBendRadius => "minimum bend radius of the outer",
        InputId.Wire => "wire",
        InputId.WireConstruction => "how the wire is stranded",
        InputId.OuterDiameter => "outer diameter, outside and inside",
        InputId.EndFitting => "end fitting",
        InputId.OuterEnd => "outer end",
        InputId.WireAngles => "fleet and wander limits",
        InputId.AvailablePull => "available pull",
        InputId.PedalLever => "pedal lever",
        InputId.PadLoad => "pedal's own force at the pad",
        InputId.OtherCables => "other cables of the vehicle",
        InputId.OtherGrooves => "other grooves of the quadrant",
        InputId.Mount => "mount face and holes",
        InputId.Ring => "adapter ring and flange bolts",
        InputId.BodyShape => "bore's axis and casting",
        InputId.SpringRooms => "spaces of the return springs",
        InputId.KeepOuts => "keep-outs",
        InputId.Bulkhead => "bulkhead",
        InputId.Sensor => "position sensor",
        InputId.Controller => "controller",
        InputId.Engine => "cylinders and maximum speed",
        InputId.Shaking => "shaking of the mount, damping",
        InputId.Screws => "screws and bosses of the mount",
        InputId.FaceFriction => "friction of the bracket on the bosses",
        InputId.Life => "life and temperature",
        InputId.Sheet => "sheet",
        InputId.Shop => "tools and process of the shop",
        _ => throw new ArgumentOutOfRangeException(nameof(input), input, null),
    };
}
