namespace BracketGen.Design.Checks;

/// <summary>What can come too near to something else.</summary>
public enum Thing
{
    /// <summary>The bracket's sheet.</summary>
    Bracket,

    /// <summary>The head of a bolt that holds the bracket.</summary>
    Bolt,

    /// <summary>A keep-out.</summary>
    KeepOut,

    /// <summary>The casting round the bore.</summary>
    Casting,

    /// <summary>The boss under a mount hole.</summary>
    Boss,

    /// <summary>The adapter ring.</summary>
    Ring,

    /// <summary>The head of a flange bolt on the adapter ring.</summary>
    FlangeBolt,

    /// <summary>The space of a return spring.</summary>
    Spring,

    /// <summary>Quadrant and end fitting.</summary>
    Quadrant,

    /// <summary>The straight wire between quadrant and stop.</summary>
    Wire,

    /// <summary>Wire and outer end of another cable.</summary>
    OtherWire,

    /// <summary>The outer on its route.</summary>
    Outer,

    /// <summary>The outer end in the stop: adjuster with its nuts, ferrule or clip.</summary>
    OuterEnd,
}

/// <summary>Two things whose distance a check looks at.</summary>
/// <param name="One">What moves or hangs.</param>
/// <param name="Other">What stands.</param>
public readonly record struct Pair(Thing One, Thing Other);
