namespace BracketGen.Words.ShopDrawing;

/// <summary>The picture of the fitted bracket: on the drawing, the set-up sheet and the report.</summary>
public static class FittedText
{
    /// <summary>Heading.</summary>
    public const string Heading = "As fitted";

    /// <summary>Below the heading.</summary>
    public const string Seen = "Valve closed, seen from outside along the throttle shaft, from a little aside; the bracket in thick lines. Not to scale.";

    /// <summary>Beside the arrow that points up.</summary>
    public const string Up = "up";

    /// <summary>Beside the same arrow where nobody said which way is up.</summary>
    public const string NotUp = "y";

    private const string UpUnknown = " The job does not say which way is up: the arrow is y of the throttle frame.";

    private const string TowardsEye = " The throttle shaft stands upright, its quadrant on top: up is towards you. The arrow is y of the throttle frame.";

    private const string FromEye = " The throttle shaft stands upright, its quadrant below: up is away from you. The arrow is y of the throttle frame.";

    /// <summary>Added to what stands below the heading where the arrow does not point up.</summary>
    /// <param name="up">Which way is up along the throttle shaft, -1 to 1, 1 towards the eye; null where the job does not say.</param>
    public static string OfArrow(double? up) => up switch { null => UpUnknown, > 0 => TowardsEye, _ => FromEye };

    /// <summary>Name of the shaft.</summary>
    public const string Shaft = "throttle shaft";

    /// <summary>Name of the quadrant.</summary>
    public const string Quadrant = "quadrant";

    /// <summary>Name of the end fitting in its pocket.</summary>
    public const string Pocket = "end fitting";

    /// <summary>Name of the wire.</summary>
    public const string Wire = "wire";

    /// <summary>Name of the outer.</summary>
    public const string Outer = "outer";

    /// <summary>Name of the casting.</summary>
    public const string Body = "throttle body";

    /// <summary>Name of the stop.</summary>
    /// <param name="hole">Name of its hole.</param>
    public static string Stop(string hole) => $"stop {hole}";

    /// <summary>Caption on the page.</summary>
    public const string Caption = "The bracket in its place, valve closed, seen from outside along the throttle shaft, from a little aside. Of the casting only what was measured is shown.";

    /// <summary>The picture for people who cannot see it.</summary>
    public const string Spoken = "The bracket bolted to the throttle body, with quadrant, wire, stop and outer";
}
