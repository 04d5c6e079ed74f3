namespace BracketGen.Words.Worksheet;

/// <summary>Labels in the sketches of the worksheet; single letters and axis names stand with the sketches.</summary>
public static class SketchText
{
    /// <summary>Cable stop.</summary>
    public const string Stop = "stop";

    /// <summary>Axis along the shaft.</summary>
    public const string ZAxis = "z, to the viewer";

    /// <summary>Bore.</summary>
    public const string Bore = "bore";

    /// <summary>The plane of the groove.</summary>
    public const string GroovePlane = "z = 0";

    /// <summary>Pocket.</summary>
    public const string Pocket = "pocket";

    /// <summary>End of the cable at the quadrant.</summary>
    public const string FittingEnd = "fitting";

    /// <summary>End of the cable at the pedal.</summary>
    public const string PedalEnd = "pedal end";

    /// <summary>Force on the lever.</summary>
    public const string Force = "force";

    /// <summary>Length of the lever.</summary>
    public const string Lever = "lever";

    /// <summary>Sense of opening.</summary>
    public const string Opens = "opens";

    /// <summary>Outer.</summary>
    public const string Outer = "outer";

    /// <summary>Seat.</summary>
    public const string Seat = "seat";

    /// <summary>Threaded outer end.</summary>
    public const string Adjuster = "threaded adjuster";

    /// <summary>Plain outer end.</summary>
    public const string Ferrule = "plain ferrule";

    /// <summary>Clip.</summary>
    public const string Clip = "slotted clip";

    /// <summary>Cable.</summary>
    public const string Cable = "cable";

    /// <summary>Cable that works the throttle.</summary>
    public const string ToThrottle = "to the throttle";

    /// <summary>Cable that comes from something else.</summary>
    public const string OtherCable = "other cable";

    /// <summary>Floor.</summary>
    public const string Floor = "floor, carpet in";

    /// <summary>Bulkhead.</summary>
    public const string Bulkhead = "bulkhead";

    /// <summary>x to the left of the shaft.</summary>
    public const string NegativeX = "x, negative here";

    /// <summary>Pocket for a barrel or a ball.</summary>
    public const string BarrelOrBall = "barrel or ball";

    /// <summary>Pocket for a nipple.</summary>
    public const string Nipple = "nipple";

    /// <summary>Section through a pocket.</summary>
    public const string PocketSection = "section through the pocket";

    /// <summary>Position sensor.</summary>
    public const string Sensor = "sensor";

    /// <summary>The fitting seen from above.</summary>
    public const string FromAbove = "barrel from above";

    /// <summary>One spring, the others unhooked.</summary>
    public static string Alone(int number) => $"spring {number} alone";
}
