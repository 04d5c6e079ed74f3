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

    /// <summary>Shaft, letter I.</summary>
    public const string Shaft = "shaft I";

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

    /// <summary>x of hole 1.</summary>
    public const string FirstHole = "x of 1";

    /// <summary>Normal of the mount face.</summary>
    public const string Normal = "normal";

    /// <summary>Lower corner of a keep-out.</summary>
    public const string Minimum = "min x, y";

    /// <summary>Upper corner of a keep-out.</summary>
    public const string Maximum = "max x, y";

    /// <summary>Wire, letter B.</summary>
    public const string Wire = "wire B";

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

    /// <summary>Neck of the clip.</summary>
    public const string Neck = "neck";

    /// <summary>Cable.</summary>
    public const string Cable = "cable";

    /// <summary>Floor.</summary>
    public const string Floor = "floor, carpet in";

    /// <summary>Direction of the outer.</summary>
    public const string Direction = "direction";

    /// <summary>Point where the outer comes out.</summary>
    public const string Point = "point";

    /// <summary>Bulkhead.</summary>
    public const string Bulkhead = "bulkhead";

    /// <summary>x to the left of the shaft.</summary>
    public const string NegativeX = "x, negative here";

    /// <summary>Free play, letter A.</summary>
    public const string FreePlay = "free play A";
}
