namespace BracketGen.Words.Worksheet;

/// <summary>Words on the target that is photographed with the throttle body.</summary>
public static class TargetText
{
    /// <summary>Title.</summary>
    public const string Title = "Target to photograph with the throttle body";

    /// <summary>Above the bar.</summary>
    public const string Bar = "Measure this bar and give its length with the photograph.";

    /// <summary>Inside the dashed line.</summary>
    public const string CutOut = "Cut out along this line, or more if the throttle body needs it.";

    /// <summary>Along the arrow to the right.</summary>
    public const string AxisX = "x";

    /// <summary>Along the arrow upwards.</summary>
    public const string AxisY = "y";

    /// <summary>What to do, in order.</summary>
    public static IReadOnlyList<string> Steps { get; } =
    [
        "Engine off, key out, cable off. The throttle stays on its closed stop.",
        "Print at 100 %. Cut the window out; keep all eight marks, or at least four of which no three are in line.",
        "Lay the paper flat on the mount face, or on another face that is square to the throttle shaft. Let x point to your right as you look along the shaft. Tape it down: it must not bulge.",
        "Use the main lens, not the wide one, and no zoom. Take the whole picture: do not crop it.",
        "Stand 0.5 to 1 m away and 20° to 30° beside the shaft. All marks are in the picture and sharp. From straight above, also measure from the lens to the middle of the target.",
        "Measure with callipers how high over the paper's face lie: the end of the shaft, the front of the quadrant, the middle of its groove, the heads of the screws.",
        "Then choose \"From a photograph\" on the page of the throttle body.",
    ];
}
