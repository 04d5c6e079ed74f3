namespace BracketGen.Drawing.Fitted;

/// <summary>What is seen in the picture of the fitted bracket.</summary>
internal enum FittedThing
{
    /// <summary>The bracket itself.</summary>
    Bracket,

    /// <summary>The casting of the throttle body with its bosses.</summary>
    Body,

    /// <summary>The throttle shaft.</summary>
    Shaft,

    /// <summary>The quadrant with its groove and pocket.</summary>
    Quadrant,

    /// <summary>The wire from the stop to the end fitting.</summary>
    Wire,

    /// <summary>Heads of the bolts, with their washers.</summary>
    Bolts,

    /// <summary>The outer's end, and a piece of the outer.</summary>
    Outer,
}
