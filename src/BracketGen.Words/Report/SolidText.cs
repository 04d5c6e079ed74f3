using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Report;

/// <summary>The solid in the report.</summary>
public static class SolidText
{
    /// <summary>The still picture for people who cannot see it.</summary>
    public const string StillSpoken = "The formed bracket seen over the corner, throttle shaft towards the right.";

    /// <summary>Caption of the still picture.</summary>
    public const string StillCaption = "The formed bracket, seen over the corner.";

    /// <summary>How to turn it.</summary>
    public const string Help = "Drag to turn the bracket, with two fingers on a touch screen, or use the arrow keys; plus and minus zoom. Quadrant and wire follow the pedal's slider above.";

    /// <summary>The picture to turn for people who cannot see it.</summary>
    public const string Spoken = "The formed bracket on its mount, with quadrant, wire and outer";

    /// <summary>Name of the buttons.</summary>
    public const string View = "View";

    /// <summary>Button to zoom in.</summary>
    public const string Nearer = "Zoom in";

    /// <summary>Button to zoom out.</summary>
    public const string Farther = "Zoom out";

    /// <summary>Legend of the choices of colour.</summary>
    public const string Sheet = "The sheet";

    /// <summary>Without colour.</summary>
    public const string Bare = "bare";

    /// <summary>Coloured by stress.</summary>
    public const string Stress = "stress, pedal stamped on";

    /// <summary>Shown in its first vibration.</summary>
    public const string Vibration = "first vibration";

    /// <summary>Name of the boxes.</summary>
    public const string ShownWithIt = "Shown with it";

    /// <summary>What moves.</summary>
    public const string Moving = "quadrant, wire and outer";

    /// <summary>What it is bolted to.</summary>
    public const string Mount = "bosses and bolts";

    /// <summary>Buttons of the views, with how far they turn it (degrees).</summary>
    public static IReadOnlyList<(string Name, int Yaw, int Pitch)> Views { get; } =
        [("Corner", -38, 28), ("Along the shaft", 0, 0), ("From above", 0, 90), ("From the right", -90, 0), ("From behind", 180, 0)];

    /// <summary>Names in the picture.</summary>
    public const string Shaft = "throttle shaft", Quadrant = "quadrant", Stop = "stop";

    /// <summary>Dimensions in the picture, of the quadrant and the shaft.</summary>
    public const string PitchRadius = "pitch radius", OuterRadius = "outer radius of the quadrant", Thickness = "thickness of the quadrant", ShaftDiameter = "diameter of the throttle shaft";

    /// <summary>Dimensions in the picture, of bore and casting.</summary>
    public const string Bore = "bore", BoreAxis = "bore's axis, z", CastingDiameter = "casting, outside diameter", CastingAhead = "casting, ahead of the shaft", CastingBehind = "casting, behind the shaft";

    /// <summary>Dimensions in the picture, of the end fitting.</summary>
    public const string FittingDiameter = "end fitting, diameter", FittingLength = "end fitting, length";

    /// <summary>Diameter of the boss of a hole.</summary>
    public static string BossOf(string hole) => $"boss of {hole}, diameter";

    /// <summary>A box's corner of minimum coordinates.</summary>
    public static string Least(string name) => $"{name}, minimum";

    /// <summary>A box's corner of maximum coordinates.</summary>
    public static string Greatest(string name) => $"{name}, maximum";

    /// <summary>The end of a cylinder that is named first.</summary>
    public static string FirstEnd(string name) => $"{name}, one end";

    /// <summary>Its other end.</summary>
    public static string OtherEnd(string name) => $"{name}, other end";

    /// <summary>Its radius.</summary>
    public static string RadiusOf(string name) => $"{name}, radius";

    /// <summary>The corner of a tilted box.</summary>
    public static string CornerOf(string name) => $"{name}, corner";

    /// <summary>The casting with its bore and valve.</summary>
    public const string Casting = "casting and valve";

    /// <summary>What of the throttle body is drawn, and what is not because nobody measured it.</summary>
    /// <param name="body">The throttle body.</param>
    public static string About(ThrottleBody body) => string.Join(" ",
    [
        body.Casting is not null ? "Of the throttle body only what was measured is drawn: the bore, and round it the casting as a plain tube as wide as its largest flange. How deep the bosses are was not measured: where the casting lies under a boss, the boss is drawn down to it, otherwise short. The valve's plate is drawn thin: nobody measured its thickness."
            : body.Shape == BodyShape.KeepOuts ? "The keep-outs describe the casting: nothing else of it is drawn. Bosses are drawn short, because their depth was not measured."
            : "Nothing is known of the casting: it is not drawn. Bosses are drawn short, because their depth was not measured.",
        .. body.Openings.Flange is null ? [] : (string[])["The holes of the flange are not drawn: on which end it is was not measured."],
    ]);

    /// <summary>The keep-outs and the springs; empty where there is none of them.</summary>
    /// <param name="body">The throttle body.</param>
    public static string KeepOuts(ThrottleBody body) => string.Join(", ",
    [
        .. body.KeepOuts.Select(k => k.Name), .. body.SpringRooms.Select(r => ThingText.Of(Thing.Spring, r.Name)),
    ]);

    /// <summary>An offer's picture for people who cannot see it.</summary>
    public static string OfferSpoken(string name) => $"{name}, formed, seen over the corner";
}
