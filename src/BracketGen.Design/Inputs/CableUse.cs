using BracketGen.Geometry;

namespace BracketGen.Design.Inputs;

/// <summary>What becomes of a cable that is not the pedal's.</summary>
public enum CableFate
{
    /// <summary>The job does not say.</summary>
    NotSaid,

    /// <summary>It stays in the vehicle and is tied back dead.</summary>
    LaidBy,

    /// <summary>It is taken out of the vehicle.</summary>
    TakenOut,

    /// <summary>It works something else than this throttle body.</summary>
    HookedElsewhere,

    /// <summary>It works in a groove of its own.</summary>
    InGroove,
}

/// <summary>What a job says of one of the vehicle's other cables.</summary>
/// <param name="Name">Name of the cable, as the vehicle has it.</param>
/// <param name="Fate">What becomes of it.</param>
public sealed record CableUse(string Name, CableFate Fate) : IMirrored<CableUse>
{
    /// <summary>Whether its end at the pedal was taken off; null where nobody said.</summary>
    public bool? IsOffPedal { get; init; }

    /// <summary>Whether what pulls the cable was made dead; null where nobody said, and where nothing with a drive of its own pulls it.</summary>
    public bool? IsActuatorDead { get; init; }

    /// <summary>What does the cable's work instead, in the user's words; null where nothing does.</summary>
    public string? ServedBy { get; init; }

    /// <summary>What it is hooked to, in the user's words; null unless it is hooked elsewhere.</summary>
    public string? HookedTo { get; init; }

    /// <summary>Name of the groove that it works in; null unless it works in one.</summary>
    public string? Groove { get; init; }

    /// <summary>Where the seat of its outer is (mm); null where nobody said.</summary>
    public ThrottlePoint? Seat { get; init; }

    /// <summary>What holds its outer there, in the user's words; null where nothing does yet.</summary>
    public string? HeldBy { get; init; }

    /// <inheritdoc/>
    public CableUse Mirrored() => this with { Seat = Seat?.Mirrored() };
}
